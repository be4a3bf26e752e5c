package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// Tapping binds the published figures on trees, holes and season to package
// tapping.
func Tapping() []check.Claim {
	return []check.Claim{
		{Table: "tap-guidelines", Column: "taps", Func: "tapping.Guideline.Taps", Got: guidelineTaps},
		{Table: "hole-worked", Column: "volume_in3", Func: "tapping.Hole.Volume", Got: holeVolume},
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
