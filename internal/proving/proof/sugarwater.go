package proof

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// SugarWater returns the claims of package sugar about what sugar does to water.
func SugarWater() []check.Claim {
	return []check.Claim{
		{Table: "water-activity-constants", Column: "value", Func: "sugar.WaterActivity",
			Got: func(r check.Row) (float64, error) { return listed(coef.Activity(), r.Text("name")) }},
		{Table: "saturation-coefficients", Column: "c", Func: "sugar.Solubility.Saturation",
			Got: func(r check.Row) (float64, error) {
				c, err := listed(coef.Saturation(), r.Text("author"))
				return c[int(r.Float("i"))], err
			}},
		{Table: "viscosity-coefficients", Column: "value", Func: "sugar.Viscosity",
			Got: func(r check.Row) (float64, error) { return listed(coef.Viscosity(), r.Text("name")) }},
		{Table: "inversion-constants", Column: "value", Func: "sugar.Inversion",
			Got: func(r check.Row) (float64, error) { return listed(coef.Inversion(), r.Text("name")) }},
		{Table: "inversion-worked", Column: "inverted", Func: "sugar.Inversion",
			Got: func(r check.Row) (float64, error) {
				s, err := sugar.Inversion(brix(r), celsius(r), r.Float("pH"), time.Hour)
				return s.Percents(), err
			}},
		{Table: "water-activity-worked", Column: "a_w", Func: "sugar.WaterActivity",
			Got: func(r check.Row) (float64, error) {
				return sugar.WaterActivity(brix(r), celsius(r))
			}},
		{Table: "osmotic-worked", Column: "osmotic_bar", Func: "sugar.OsmoticPressure",
			Got: func(r check.Row) (float64, error) {
				p, err := sugar.OsmoticPressure(brix(r), units.Fahrenheit(r.Float("t_F")))
				return p.Bars(), err
			}},
		{Table: "osmotic-pressure", Column: "osmotic_atm", Func: "sugar.OsmoticPressure",
			Got: func(r check.Row) (float64, error) {
				// Moles in a kilogram of water, at 342.3 g/mol.
				grams := 342.3 * r.Float("molality")
				p, err := sugar.OsmoticPressure(units.Brix(100*grams/(1000+grams)), units.Celsius(20))
				return p.In(units.Atmosphere), err
			}},
		{Table: "isopiestic-sucrose", Column: "osmotic_coefficient", Func: "sugar.WaterActivity",
			Got: func(r check.Row) (float64, error) {
				grams := 342.3 * r.Float("molality")
				a, err := sugar.WaterActivity(units.Brix(100*grams/(1000+grams)), units.Celsius(25))
				return -math.Log(a) / (r.Float("molality") * 18.015268e-3), err
			}},
		{Table: "freezing-worked", Column: "depression_K", Func: "sugar.FreezingPoint", Got: depression},
		{Table: "freezing-point", Column: "depression_K", Func: "sugar.FreezingPoint", Got: depression},
		{Table: "saturation", Column: "value", Func: "sugar.Solubility.Saturation", Select: when("quantity", "percent at a temperature in C"),
			Got: func(r check.Row) (float64, error) {
				s, err := solubility(r)
				if err != nil {
					return math.NaN(), err
				}
				b, err := s.Saturation(units.Celsius(r.Float("given")))
				return float64(b), err
			}},
		{Table: "saturation", Column: "value", Func: "sugar.Solubility.SaturationTemperature", Select: when("quantity", "temperature at a percent"),
			Got: func(r check.Row) (float64, error) {
				s, err := solubility(r)
				if err != nil {
					return math.NaN(), err
				}
				t, err := s.SaturationTemperature(units.Brix(r.Float("given")))
				return t.Celsius(), err
			}},
		{Table: "saturation-herzfeld", Column: "g_per_100g_water", Func: "sugar.Solubility.Saturation",
			Got: func(r check.Row) (float64, error) {
				b, err := sugar.Herzfeld.Saturation(units.Celsius(r.Float("t_C")))
				return float64(100 * b / (100 - b)), err
			}},
		{Table: "saturation-sokolovsky", Column: "percent", Func: "sugar.Solubility.Saturation",
			Got: func(r check.Row) (float64, error) {
				b, err := sugar.Sokolovsky.Saturation(units.Celsius(r.Float("t_C")))
				return float64(b), err
			}},
		// The grams of the one and the percent of the other stand in one book, each
		// rounded in its own way. At 90 C Sokolovsky's is Herzfeld's.
		{Table: "saturation-herzfeld", Column: "g_per_100g_water", Func: "sugar.Solubility.Saturation by the other author",
			Select: func(r check.Row) bool { t := int(r.Float("t_C")); return t%10 == 0 && t != 90 },
			Got: func(r check.Row) (float64, error) {
				b, err := sugar.Sokolovsky.Saturation(celsius(r))
				return float64(100 * b / (100 - b)), err
			}},
		{Table: "saturation-sokolovsky", Column: "percent", Func: "sugar.Solubility.Saturation by the other author",
			Got: func(r check.Row) (float64, error) {
				b, err := sugar.Herzfeld.Saturation(celsius(r))
				return float64(b), err
			}},
		{Table: "iapws-viscosity-check", Column: "viscosity", Func: "sugar.WaterViscosity",
			Got: func(r check.Row) (float64, error) {
				v, err := sugar.WaterViscosity(units.Kelvin(r.Float("T_K")))
				return v.MillipascalSeconds(), err
			}},
		{Table: "water-heat-published", Column: "value", Func: "sugar.SpecificHeat", Select: when("quantity", "at a temperature"),
			Got: func(r check.Row) (float64, error) {
				c, err := sugar.SpecificHeat(0, celsius(r))
				return c.KilojoulesPerKilogramKelvin(), err
			}},
		{Table: "water-heat-published", Column: "value", Func: "sugar.Enthalpy", Select: when("quantity", "mean from 0 C"),
			Got: func(r check.Row) (float64, error) {
				h, err := sugar.Enthalpy(0, celsius(r))
				return h.KilojoulesPerKilogram() / r.Float("t_C"), err
			}},
		{Table: "viscosity-worked", Column: "viscosity", Func: "sugar.Viscosity", Got: viscosity},
		{Table: "viscosity-crc", Column: "viscosity", Func: "sugar.Viscosity", Got: viscosity},
		{Table: "specific-heat-read", Column: "specific_heat", Func: "sugar.SpecificHeat",
			Got: func(r check.Row) (float64, error) {
				c, err := sugar.SpecificHeat(brix(r), celsius(r))
				return c.JoulesPerKilogramKelvin(), err
			}},
		{Table: "water-activity-published", Column: "a_w", Func: "sugar.WaterActivity",
			Got: func(r check.Row) (float64, error) { return sugar.WaterActivity(brix(r), celsius(r)) }},
		{Table: "specific-heat-worked", Column: "specific_heat", Func: "sugar.SpecificHeat",
			Select: func(r check.Row) bool { return r.Float("purity") >= 100 },
			Got: func(r check.Row) (float64, error) {
				c, err := sugar.SpecificHeat(brix(r), celsius(r))
				return c.KilojoulesPerKilogramKelvin(), err
			}},
	}
}

func depression(r check.Row) (float64, error) {
	t, err := sugar.FreezingPoint(brix(r))
	return -t.Celsius(), err
}

func solubility(r check.Row) (sugar.Solubility, error) {
	for _, s := range sugar.Solubilities() {
		if s.String() == r.Text("author") {
			return s, nil
		}
	}
	return 0, fmt.Errorf("no formula by %q", r.Text("author"))
}

// listed finds what a list of coefficients has under a name.
func listed[V any](list map[string]V, name string) (V, error) {
	v, ok := list[name]
	if !ok {
		return v, fmt.Errorf("nothing is listed as %q", name)
	}
	return v, nil
}

func viscosity(r check.Row) (float64, error) {
	v, err := sugar.Viscosity(brix(r), celsius(r))
	return v.MillipascalSeconds(), err
}
