package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// Packing returns the claims of package packing.
func Packing() []check.Claim {
	return []check.Claim{
		{Table: "capping-temperature", Column: "value_F", Func: "packing.Container.AfterFilling", Select: when("quantity", "once warmed"),
			Got: func(r check.Row) (float64, error) {
				t, err := glassJar(r, r.Float("given_F")).AfterFilling(66.9, units.Fahrenheit(r.Float("given_F")), units.Celsius(20))
				return t.Fahrenheit(), err
			}},
		{Table: "capping-temperature", Column: "value_F", Func: "packing.Container.FillAt", Select: when("quantity", "poured at"),
			Got: func(r check.Row) (float64, error) {
				t, err := glassJar(r, r.Float("value_F")).FillAt(66.9, units.Fahrenheit(r.Float("given_F")), units.Celsius(20))
				return t.Fahrenheit(), err
			}},
		{Table: "net-contents-canada", Column: "tolerance_pct", Func: "packing.CanadianTolerance", Got: func(r check.Row) (float64, error) {
			label := bandEnd(r)
			t, err := packing.CanadianTolerance(label)
			return 100 * float64(t/label), err
		}},
		{Table: "net-contents-canada", Column: "tolerance_abs", Func: "packing.CanadianTolerance", Got: func(r check.Row) (float64, error) {
			t, err := packing.CanadianTolerance(bandEnd(r))
			return t.Milliliters(), err
		}},
		{Table: "net-contents-canada-lot", Column: "t", Func: "packing.CanadianLotRule", Got: func(r check.Row) (float64, error) {
			rule, err := packing.CanadianLotRule(int(r.Float("n")))
			return rule.T, err
		}},
		// Beyond 31 containers the regulation prints a little else than Student's factor.
		{Table: "net-contents-canada-lot", Column: "t", Func: "Student's distribution by numeric.BetaBelow",
			Select: func(r check.Row) bool { return r.Float("n") < 32 }, Got: student},
		{Table: "net-contents-canada-sample", Column: "sample", Func: "packing.CanadianSample", Got: func(r check.Row) (float64, error) {
			n, err := packing.CanadianSample(int(r.Float("lot")))
			return float64(n), err
		}},
		{Table: "net-contents-canada-lot", Column: "t_over_sqrt_n", Func: "packing.CanadianLotRule", Got: func(r check.Row) (float64, error) {
			rule, err := packing.CanadianLotRule(int(r.Float("n")))
			return rule.T / math.Sqrt(r.Float("n")), err
		}},
		{Table: "net-contents-canada-lot", Column: "short_units_that_fail", Func: "packing.CanadianLotRule", Got: func(r check.Row) (float64, error) {
			rule, err := packing.CanadianLotRule(int(r.Float("n")))
			return float64(rule.ShortFails), err
		}},
	}
}

// student is the factor within which Student's distribution holds 99 percent, both
// sides together, of n measurements.
func student(r check.Row) (float64, error) {
	free := r.Float("n") - 1
	t, ok := numeric.Root(func(t float64) float64 {
		return numeric.BetaBelow(free/(free+t*t), free/2, 0.5) - 0.01
	}, 1, 100, 1e-9)
	if !ok {
		return math.NaN(), fmt.Errorf("no factor for %v", free)
	}
	return t, nil
}

// bandEnd is the largest label of a band, and a label within the last, which has
// no end.
func bandEnd(r check.Row) units.Volume {
	if r.Text("up_to") == "" {
		return 2 * units.Milliliters(r.Float("above"))
	}
	return units.Milliliters(r.Float("up_to"))
}
