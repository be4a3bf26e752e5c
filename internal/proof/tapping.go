package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/internal/coef"
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
		{Table: "natural-vacuum-worked", Column: "column_ft", Func: "season.NaturalVacuum", Got: vacuumColumn},
		{Table: "natural-vacuum-worked", Column: "column_ft", Func: "density.Solution times g", Got: columnByWeight},
		{Table: "producing-week-coefficients", Column: "value", Func: "season.HouleProbability", Got: houleCoefficient},
		{Table: "producing-week-worked", Column: "p", Func: "season.HouleProbability", Got: houleProbability},
		{Table: "degree-day-methods", Column: "mean", Func: "season.GrowingDegreeDays", Got: meanDegreeDays},
		{Table: "degree-day-methods", Column: "mean", Func: "season.DegreeDayRule.Day", Got: degreeDays(season.DailyMean)},
		{Table: "degree-day-methods", Column: "single_sine", Func: "season.DegreeDayRule.Day", Got: degreeDays(season.SingleSine)},
		{Table: "sap-sugar", Column: "low", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.Low })},
		{Table: "sap-sugar", Column: "high", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.High })},
		{Table: "sap-sugar", Column: "mean", Func: "season.SugarFigures", Got: sapSugar(func(f season.SugarFigure) units.Brix { return f.Mean })},
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

// vacuumColumn is the drop in feet that draws the vacuum of the row: the
// vacuum is in proportion to the drop.
func vacuumColumn(r check.Row) (float64, error) {
	p, err := season.NaturalVacuum(1 * units.Foot)
	return r.Float("vacuum_inHg") / p.InchesMercury(), err
}

// columnByWeight is the column whose weight draws the vacuum of the row.
func columnByWeight(r check.Row) (float64, error) {
	d, err := density.Solution(units.Brix(r.Float("sap_brix")), celsius(r))
	vacuum := units.InchesMercury(r.Float("vacuum_inHg"))
	return units.Meters(vacuum.Pascals() / (d.KilogramsPerCubicMeter() * units.StandardGravity)).Feet(), err
}

func houleCoefficient(r check.Row) (float64, error) {
	if r.Text("name") == "threshold of p" {
		return season.HouleThreshold, nil
	}
	return listed(coef.Houle(), r.Text("name"))
}

func houleProbability(r check.Row) (float64, error) {
	return season.HouleProbability(int(r.Float("N")), season.DegreeDays(r.Float("G")))
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

func sapSugar(figure func(season.SugarFigure) units.Brix) func(check.Row) (float64, error) {
	return func(r check.Row) (float64, error) {
		for _, f := range season.SugarFigures() {
			if f.What == r.Text("what") && f.Source == r.Text("source") {
				return float64(figure(f)), nil
			}
		}
		return math.NaN(), fmt.Errorf("no figure %q of %q", r.Text("what"), r.Text("source"))
	}
}
