package proof

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// Fuel returns the claims of package fuel.
func Fuel() []check.Claim {
	kentucky := func(r check.Row) (fuel.Firewood, error) { return species(fuel.FirewoodKentucky(), r) }
	missouri := func(r check.Row) (fuel.Firewood, error) { return species(fuel.FirewoodMissouri(), r) }
	claim := func(table, column string, wood func(check.Row) (fuel.Firewood, error), get func(fuel.Firewood) float64) check.Claim {
		return check.Claim{Table: table, Column: column, Func: "fuel.Firewood", Got: func(r check.Row) (float64, error) {
			w, err := wood(r)
			if err != nil {
				return math.NaN(), err
			}
			return printed(get(w)), nil
		}}
	}
	million := func(e units.Energy) float64 { return e.MillionBtusIT() }
	return []check.Claim{
		claim("cordwood-kentucky", "MMBtu_per_cord", kentucky, func(w fuel.Firewood) float64 { return million(w.Heat) }),
		claim("cordwood-kentucky", "living_tree_mc_pct", kentucky, func(w fuel.Firewood) float64 { return float64(w.Green) }),
		claim("cordwood-kentucky", "lb_per_cord", kentucky, func(w fuel.Firewood) float64 { return w.OvenDry().Pounds() }),
		claim("cordwood-missouri", "green_lb_per_cord", missouri, func(w fuel.Firewood) float64 { return cordPounds(w, w.Green) }),
		claim("cordwood-missouri", "dry20_lb_per_cord", missouri, func(w fuel.Firewood) float64 { return cordPounds(w, 20) }),
		claim("cordwood-missouri", "MMBtu_per_cord", missouri, func(w fuel.Firewood) float64 { return million(w.Heat) }),
		claim("cordwood-missouri", "kansas_MMBtu_per_cord", missouri, func(w fuel.Firewood) float64 { return million(w.OtherHeat) }),
		// The source says 7,000 Btu to the pound at 20 percent, and prints tenths.
		{Table: "cordwood-missouri", Column: "MMBtu_per_cord", Func: "fuel.Fuel.Of", Exact: true, Got: func(r check.Row) (float64, error) {
			pound := fuel.Fuel[units.Mass]{Heat: units.BtusITPerPound(7000).Energy(units.Pound), Per: units.Pound, Basis: fuel.LessMoisture}
			h, err := pound.Of(units.Pounds(r.Float("dry20_lb_per_cord")))
			return math.Round(10*million(h.Energy)) / 10, err
		}},
		{Table: "boiling-heat-worked", Column: "value", Func: "fuel.LearnEfficiency", Select: when("quantity", "efficiency at 22 gal of syrup per cord"),
			Got: func(r check.Row) (float64, error) {
				l, err := fuel.LearnEfficiency(fuel.Firing{
					Into:   units.BtusIT(22 * 400000),
					Burned: fuel.Heat{Energy: units.MillionBtusIT(r.Float("given")), Basis: fuel.Gross},
				})
				return l.Middle().Percents(), err
			}},
		{Table: "fuel-heat", Column: "btu", Func: "fuel.ByVolume and others", Got: fuelHeat},
		{Table: "wood-net-heat", Column: "net", Func: "fuel.WoodHeat",
			Got: func(r check.Row) (float64, error) {
				h, err := fuel.WoodHeat(fuel.WetMoisture(r.Float("wet")))
				return h.Energy(units.Kilogram).In(units.Megajoule), err
			}},
		{Table: "wood-heat-published", Column: "value", Func: "fuel.WoodHeat",
			Got: func(r check.Row) (float64, error) {
				h, err := fuel.WoodHeat(fuel.WetMoisture(r.Float("wet")))
				return h.Energy(units.Kilogram).In(units.Megajoule), err
			}},
		{Table: "wood-net-heat", Column: "dry", Func: "fuel.WetMoisture.Dry",
			Got: func(r check.Row) (float64, error) { return float64(fuel.WetMoisture(r.Float("wet")).Dry()), nil }},
		{Table: "firewood-net-constants", Column: "value", Func: "fuel.WoodHeat", Got: woodConstant},
	}
}

func species(table []fuel.Firewood, r check.Row) (fuel.Firewood, error) {
	for _, w := range table {
		if w.Species == r.Text("species") {
			return w, nil
		}
	}
	return fuel.Firewood{}, fmt.Errorf("no species %q", r.Text("species"))
}

// cordPounds gives NaN for a moisture that is not in the range.
func cordPounds(w fuel.Firewood, m fuel.DryMoisture) float64 {
	mass, _ := w.CordWeight(m)
	return mass.Pounds()
}

// fuelHeat finds the fuel of a row among the lists by the unit it is sold in.
func fuelHeat(r check.Row) (float64, error) {
	switch r.Text("unit") {
	case "US gallon", "cubic foot", "cord":
		return heatOf(r, fuel.ByVolume())
	case "short ton":
		return heatOf(r, fuel.ByMass())
	case "therm":
		// The Btu of the US therm is that at 59 F, whose printed value is rounded.
		v, err := heatOf(r, fuel.ByEnergy())
		return math.Round(v * float64(units.BtuIT/units.Btu59F)), err
	case "kWh":
		// A kilowatt hour is 3412.14 Btu; the table prints four digits.
		v, err := heatOf(r, fuel.ByEnergy())
		return math.Round(v), err
	}
	return math.NaN(), fmt.Errorf("no unit %q", r.Text("unit"))
}

func heatOf[Q units.Volume | units.Mass | units.Energy](r check.Row, fuels []fuel.Fuel[Q]) (float64, error) {
	basis := map[string]fuel.Basis{"gross": fuel.Gross, "net": fuel.Delivered}[r.Text("basis")]
	for _, f := range fuels {
		obtained := strings.HasPrefix(r.Text("obtained"), f.Obtained)
		if f.Name == r.Text("fuel") && f.Basis == basis && obtained {
			return printed(f.Heat.BtusIT()), nil
		}
	}
	return math.NaN(), fmt.Errorf("no fuel %q, %s, %s", r.Text("fuel"), r.Text("basis"), r.Text("obtained"))
}

// woodConstant finds the constants of the net form a (1-M) - b (M + c (1-M)) by
// what they do: a - b c is the heat at no moisture, and the slope with moisture
// is b c - a - b.
func woodConstant(r check.Row) (float64, error) {
	dry, err := fuel.WoodHeat(0)
	if err != nil {
		return math.NaN(), err
	}
	half, err := fuel.WoodHeat(50)
	if err != nil {
		return math.NaN(), err
	}
	// At half water the heat is (a - b - b c)/2, so that b falls out; a and c
	// stand in one sum, and each is found with the other as printed.
	b := dry.BtusITPerPound() - 2*half.BtusITPerPound()
	sum := dry.BtusITPerPound()
	switch r.Text("name") {
	case "a":
		return printed(sum + 0.54*b), nil
	case "b":
		return printed(b), nil
	case "c":
		return printed((8600 - sum) / b), nil
	}
	return math.NaN(), fmt.Errorf("no constant %q", r.Text("name"))
}
