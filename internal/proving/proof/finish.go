package proof

import (
	"fmt"
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Finish returns the claims of package finish.
func Finish() []check.Claim {
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
		{Table: "confection-ceilings", Column: "value", Func: "finish.ProductWeight", Got: productCeiling},
		{Table: "confections", Column: "low_F", Func: "finish.ConfectionFinishes", Got: end(func(f finish.Finish) units.TempDiff { return f.Low })},
		{Table: "confections", Column: "high_F", Func: "finish.ConfectionFinishes", Got: end(func(f finish.Finish) units.TempDiff { return f.High })},
		{Table: "confections", Column: "boils_F", Func: "finish.Finish.At", Got: func(r check.Row) (float64, error) {
			_, high, err := finish.Finish{High: units.FahrenheitDegrees(r.Float("high_F"))}.At(units.Atmosphere)
			return high.Fahrenheit(), err
		}},
		grain("low_F", func(g finish.Graining) units.Temperature { return g.Low }),
		grain("high_F", func(g finish.Graining) units.Temperature { return g.High }),
		grain("least_F", func(g finish.Graining) units.Temperature { return g.Least }),
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

// grain looks up to what a product cools.
func grain(column string, get func(finish.Graining) units.Temperature) check.Claim {
	return check.Claim{Table: "confection-graining", Column: column, Func: "finish.Grainings", Got: func(r check.Row) (float64, error) {
		for _, g := range finish.Grainings() {
			if g.Product == r.Text("product") && g.Source == r.Text("source") && g.Obtained == r.Text("obtained") {
				return printed(get(g).Fahrenheit()), nil
			}
		}
		return math.NaN(), fmt.Errorf("no graining of %q", r.Text("product"))
	}}
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

// productCeiling is the weight of a gallon's solids, or of those solids at the
// strength that boils at the row's rise.
func productCeiling(row check.Row) (float64, error) {
	lot, err := sugar.NewLot(units.USGallon, brix(row), units.Celsius(20))
	if err != nil {
		return 0, err
	}
	moisture := units.Share(0)
	if row.Text("quantity") == "product" {
		b, err := boil.BrixFromRise(units.FahrenheitDegrees(row.Float("rise_F")), units.Atmosphere)
		if err != nil {
			return 0, err
		}
		moisture = 100 - units.Share(b)
	}
	w, err := finish.ProductWeight(lot, moisture)
	return w.Pounds(), err
}
