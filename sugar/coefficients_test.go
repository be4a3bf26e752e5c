package sugar

import (
	"fmt"
	"testing"

	"example.org/sapreckoner/internal/check"
)

func TestWaterCoefficients(t *testing.T) {
	named := func(constants map[string]float64) func(check.Row) (float64, error) {
		return func(r check.Row) (float64, error) {
			v, ok := constants[r.Text("name")]
			if !ok {
				return 0, fmt.Errorf("no constant named %q", r.Text("name"))
			}
			return v, nil
		}
	}
	check.Run(t,
		check.Claim{Table: "water-activity-constants", Column: "value", Func: "sugar.WaterActivity",
			// The Antoine constants belong to a closed form that is not this package's.
			Select: func(r check.Row) bool { return r.Text("unit") != "K" },
			Got: named(map[string]float64{
				"Q": activityQ, "a": activityA, "b": activityB,
				"molar mass of sucrose": molarSucrose, "molar mass of water": molarWater,
			})},
		check.Claim{Table: "saturation-coefficients", Column: "c", Func: "sugar.Solubility.Saturation",
			Got: func(r check.Row) (float64, error) {
				for s := range solubilities {
					if Solubility(s).String() == r.Text("author") {
						return solubilities[s][int(r.Float("i"))], nil
					}
				}
				return 0, fmt.Errorf("no formula by %q", r.Text("author"))
			}},
		check.Claim{Table: "viscosity-coefficients", Column: "value", Func: "sugar.Viscosity",
			Got: named(map[string]float64{
				"slope with n": viscositySlope, "offset": viscosityOffset,
				"temperature, numerator": viscosityWarm, "temperature, denominator": viscosityZero,
				"factor, constant": viscosityFactor, "factor, power of n": viscosityPower, "exponent": viscosityRaised,
			})},
	)
}
