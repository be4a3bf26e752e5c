package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// Tapping binds the published figures on trees, holes and season to package
// tapping.
func Tapping() []check.Claim {
	return []check.Claim{
		{Table: "tap-guidelines", Column: "taps", Func: "tapping.Guideline.Taps", Got: guidelineTaps},
		{Table: "hole-worked", Column: "volume_in3", Func: "tapping.Hole.Volume", Got: holeVolume},
		{Table: "conductive-wood", Column: "least_growth", Func: "tapping.TappingBand.GrowthNeeded", Got: leastGrowth},
		{Table: "growth-two-taps", Column: "growth", Func: "tapping.TappingBand.GrowthNeeded", Got: twoTapGrowth},
		{Table: "tree-growth", Column: "mean", Func: "tapping.UsualGrowth", Got: publishedGrowth(tapping.UsualGrowth)},
		{Table: "tree-growth", Column: "least", Func: "tapping.LeastGrowth", Got: publishedGrowth(tapping.LeastGrowth)},
	}
}

// guidelineTaps asks at both ends of the printed class and in the middle; the
// three answers must agree. An end that does not belong to the class is asked
// a hundredth of the unit inside it.
func guidelineTaps(r check.Row) (float64, error) {
	g, err := tapping.GuidelineByID(r.Text("guideline"))
	if err != nil {
		return math.NaN(), err
	}
	unit, ok := map[string]units.Length{"in": units.Inch, "cm": units.Centimeter}[r.Text("unit")]
	if !ok {
		return math.NaN(), fmt.Errorf("unknown unit %q", r.Text("unit"))
	}
	const inside = 0.01
	low, high := r.Float("lower"), r.Float("upper")
	if r.Text("lower_included") == "no" {
		low += inside
	}
	switch {
	case math.IsNaN(high):
		high = 2 * low
	case r.Text("upper_included") == "no":
		high -= inside
	}
	taps := -1
	for _, x := range []float64{low, (low + high) / 2, high} {
		n, err := g.Taps(units.Length(x) * unit)
		if err != nil {
			return math.NaN(), err
		}
		if taps >= 0 && n != taps {
			return math.NaN(), fmt.Errorf("%d taps at %v and %d at %v", taps, low, n, x)
		}
		taps = n
	}
	return float64(taps), nil
}

func holeVolume(r check.Row) (float64, error) {
	h, err := tapping.NewHole(units.Inches(r.Float("bit_in")), units.Inches(r.Float("depth_in")), 0)
	return h.Volume().CubicInches(), err
}

// growthNeeded is the growth on the radius that keeps the target in a band 30 in
// high with holes of 5/16 by 1.5 in, as the model was calibrated.
func growthNeeded(dbh units.Length, taps int) (units.Length, error) {
	h, err := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	if err != nil {
		return 0, err
	}
	band, err := tapping.NewTappingBand(dbh, 30*units.Inch, h, taps)
	if err != nil {
		return 0, err
	}
	return band.GrowthNeeded(tapping.TargetConductive)
}

// leastGrowth assumes one tap at 10 in and two at 18 in: the abstract does not
// tell the counts.
func leastGrowth(r check.Row) (float64, error) {
	dbh, taps := units.Inches(r.Float("dbh_in")), 1
	if dbh >= 18*units.Inch {
		taps = 2
	}
	g, err := growthNeeded(dbh, taps)
	if err != nil {
		return math.NaN(), err
	}
	area, err := tapping.BasalAreaGrowth(dbh, g)
	return area.SquareInches(), err
}

func twoTapGrowth(r check.Row) (float64, error) {
	g, err := growthNeeded(units.Centimeters(r.Float("dbh_cm")), 2)
	return 2 * g.Millimeters(), err
}

// publishedGrowth is what the growth on the radius adds to the cross section.
func publishedGrowth(of func(dbh units.Length) (units.Length, error)) func(check.Row) (float64, error) {
	return func(r check.Row) (float64, error) {
		dbh := units.Inches(r.Float("dbh_in"))
		g, err := of(dbh)
		if err != nil {
			return math.NaN(), err
		}
		area, err := tapping.BasalAreaGrowth(dbh, g)
		return area.SquareInches(), err
	}
}

func dayOf(r check.Row) season.Day {
	return season.Day{Min: units.Fahrenheit(r.Float("Tmin_F")), Max: units.Fahrenheit(r.Float("Tmax_F"))}
}

func meanDegreeDays(r check.Row) (float64, error) {
	return season.GrowingDegreeDays(dayOf(r), units.Fahrenheit(50)).Fahrenheit(), nil
}

// degreeDays is the warmth of the row over 50 F, without an upper limit.
func degreeDays(m season.DegreeDayMethod) func(check.Row) (float64, error) {
	return func(r check.Row) (float64, error) {
		rule, err := season.NewDegreeDayRule(m, units.Fahrenheit(50), units.Celsius(math.Inf(1)))
		return rule.Day(dayOf(r)).Fahrenheit(), err
	}
}
