package proof

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// BoilHeat returns the claims of package boil about heat, fuel and finishing.
func BoilHeat() []check.Claim {
	claims := append(fuelClaims(), heatClaims()...)
	return append(claims, finishClaims()...)
}

func heatClaims() []check.Claim {
	return []check.Claim{
		// boil.Heat follows the climb of the boiling point: 0.03 percent more.
		{Table: "evaporation-heat-worked", Column: "heat_Btu", Func: "boil.LatentHeat on the masses of boil.Heat", Got: plainBalance},
		{Table: "evaporation-published", Column: "heat_Btu", Func: "boil.LatentHeat on the masses of boil.Heat", Got: plainBalance},
		{Table: "evaporation-worked", Column: "value", Func: "boil.Heat", Select: when("quantity", "water boiled off"),
			Got: func(r check.Row) (float64, error) {
				h, err := gallonFrom40F(r)
				return h.Water.Pounds(), err
			}},
		{Table: "evaporation-worked", Column: "value", Func: "boil.Heat", Select: when("quantity", "sap"),
			Got: func(r check.Row) (float64, error) {
				h, err := gallonFrom40F(r)
				if err != nil {
					return math.NaN(), err
				}
				rho, err := density.Solution(h.From, units.Celsius(20))
				return h.From.Of(h.Sugar).Volume(rho).USGallons(), err
			}},
		{Table: "boiling-heat-worked", Column: "value", Func: "boil.HeatDemand.PreheaterCeiling", Select: when("quantity", "share of a plain preheater"),
			Got: func(r check.Row) (float64, error) {
				h, err := boilDown(2, 66, units.Fahrenheit(r.Float("given")))
				return h.PreheaterCeiling().Percents(), err
			}},
		{Table: "boiling-heat-worked", Column: "value", Func: "units.Share", Select: when("quantity", "open pan by steam equivalent"),
			Got: func(r check.Row) (float64, error) { return units.FractionShare(1 / r.Float("given")).Percents(), nil }},
		{Table: "boiling-heat-worked", Column: "value", Func: "fuel.LearnEfficiency", Select: when("quantity", "efficiency at 22 gal of syrup per cord"),
			Got: func(r check.Row) (float64, error) {
				l, err := fuel.LearnEfficiency(fuel.Firing{
					Into:   units.BtusIT(22 * 400000),
					Burned: fuel.Heat{Energy: units.MillionBtusIT(r.Float("given")), Basis: fuel.Gross},
				})
				return l.Middle().Percents(), err
			}},
		{Table: "boiling-heat-worked", Column: "value", Func: "units.Area.Volume", Select: when("quantity", "level drop"),
			Got: func(r check.Row) (float64, error) {
				return units.SquareFoot.Volume(units.Inches(r.Float("given"))).USGallons(), nil
			}},
	}
}

// plainBalance is the balance as it is printed: sap from 40 F warmed by one
// specific heat, and all water boiled at 99.974 C.
func plainBalance(r check.Row) (float64, error) {
	h, err := gallonFrom40F(r)
	if err != nil {
		return math.NaN(), err
	}
	at := units.Celsius(99.974)
	steam, err := boil.LatentHeat(at)
	warm := units.KilojoulesPerKilogramKelvin(4.145).Energy(h.From.Of(h.Sugar), at.Sub(units.Fahrenheit(40)))
	return (warm + steam.Energy(h.Water)).BtusIT(), err
}

func finishClaims() []check.Claim {
	end := func(get func(finish.Finish) units.TempDiff) func(check.Row) (float64, error) {
		return func(r check.Row) (float64, error) {
			for _, f := range finish.ConfectionFinishes() {
				if f.Product == r.Text("product") && f.Source == r.Text("source") && f.Obtained == r.Text("obtained") {
					return printed(get(f).FahrenheitDegrees()), nil
				}
			}
			return math.NaN(), fmt.Errorf("no %q of %q", r.Text("product"), r.Text("source"))
		}
	}
	return []check.Claim{
		{Table: "confections", Column: "low_F", Func: "finish.ConfectionFinishes", Got: end(func(f finish.Finish) units.TempDiff { return f.Low })},
		{Table: "confections", Column: "high_F", Func: "finish.ConfectionFinishes", Got: end(func(f finish.Finish) units.TempDiff { return f.High })},
		{Table: "syrup-finish-rise", Column: "rise_F", Func: "finish.SyrupFinishes and boil.Rise", Got: publishedStop},
		{Table: "boiling-errors-worked", Column: "value", Func: "finish.ErrorCost",
			Select: func(r check.Row) bool { return r.Text("quantity") == "strength at the stop" && r.Text("of") == "F" },
			Got: func(r check.Row) (float64, error) {
				b, err := finish.ErrorCost(66, units.Atmosphere, units.FahrenheitDegrees(r.Float("change")))
				return float64(b), err
			}},
		{Table: "boiling-errors-worked", Column: "value", Func: "finish.ThermometerStop.Parts",
			Select: func(r check.Row) bool { return r.Text("quantity") == "strength at the stop" && r.Text("of") == "inHg" },
			Got: func(r check.Row) (float64, error) {
				d, err := finish.ThermometerStop{Target: 66, Pressure: units.Atmosphere, BarometerBy: units.InchesMercury(r.Float("change"))}.Parts()
				return float64(d.Barometer), err
			}},
		{Table: "boiling-errors-worked", Column: "value", Func: "finish.ThermometerStop.Parts", Select: when("quantity", "strength under syrup"),
			Got: func(r check.Row) (float64, error) {
				d, err := finish.ThermometerStop{Target: 66, Pressure: units.Atmosphere, DepthBy: units.Inches(r.Float("change"))}.Parts()
				return float64(d.Depth), err
			}},
	}
}

// publishedStop finds the source among the published stops, and gives the rise
// of pure sucrose at the strength that it prints.
func publishedStop(r check.Row) (float64, error) {
	for _, f := range finish.SyrupFinishes() {
		if f.Source == r.Text("source") && math.Abs(float64(f.Printed)-r.Float("brix")) < 1e-9 {
			// The table holds how far pure sucrose lies off what is printed.
			if math.Abs(f.Low.FahrenheitDegrees()-r.Float("rise_F")) > 1e-9 {
				return math.NaN(), fmt.Errorf("%s has %v", f.Source, f.Low)
			}
			d, err := boil.Rise(f.Printed, units.Atmosphere)
			return d.FahrenheitDegrees(), err
		}
	}
	return math.NaN(), fmt.Errorf("no stop of %q", r.Text("source"))
}

// boilDown returns the demand of 100 kg of sap at 1 atm.
func boilDown(from, to units.Brix, at units.Temperature) (boil.HeatDemand, error) {
	lot, err := sugar.NewLotByMass(100, from, at)
	if err != nil {
		return boil.HeatDemand{}, err
	}
	return boil.Heat(lot, to, units.Atmosphere)
}

// gallonFrom40F returns the demand of the sap for a US gallon of syrup at 20 C.
func gallonFrom40F(r check.Row) (boil.HeatDemand, error) {
	from, to := units.Brix(r.Float("sap_brix")), units.Brix(r.Float("syrup_brix"))
	rho, err := density.Solution(to, units.Celsius(20))
	if err != nil {
		return boil.HeatDemand{}, err
	}
	lot, err := sugar.NewLotByMass(from.Of(to.Sugar(rho.Mass(units.USGallon))), from, units.Fahrenheit(40))
	if err != nil {
		return boil.HeatDemand{}, err
	}
	return boil.Heat(lot, to, units.Atmosphere)
}

func fuelClaims() []check.Claim {
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
		{Table: "fuel-heat", Column: "btu", Func: "fuel.ByVolume and others", Got: fuelHeat},
		{Table: "firewood-net-constants", Column: "value", Func: "fuel.WoodHeat", Got: woodConstant},
	}
}

// printed undoes the last bits of a conversion of units, which no table prints.
func printed(x float64) float64 { return math.Round(x*1e6) / 1e6 }

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
