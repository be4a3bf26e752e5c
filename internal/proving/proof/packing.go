package proof

import (
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
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
	}
}
