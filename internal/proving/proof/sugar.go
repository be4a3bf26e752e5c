package proof

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Sugar returns the claims of package sugar about batches. The tables speak of
// volumes at 20 C.
func Sugar() []check.Claim {
	return []check.Claim{
		{Table: "thinning-examples", Column: "value", Func: "sugar.Thin", Select: thinned, Got: thinning},
		{Table: "thinning-examples", Column: "value", Func: "sugar.Concentrate", Select: boiledDown, Got: boilingDown},
		{Table: "thinning-examples", Column: "value", Func: "sugar.SquareParts", Exact: true, Select: partsByMass, Got: squareParts},
		{Table: "thinning-examples", Column: "value", Func: "sugar.Blend", Select: when("quantity", "strength when the parts are taken as volumes"), Got: volumeTrap},
		{Table: "syrup-standards", Column: "min", Func: "sugar.Jurisdiction.Standard", Got: func(r check.Row) (float64, error) {
			s, err := standardOf(r)
			return float64(s.Min), err
		}},
		{Table: "syrup-standards", Column: "max", Func: "sugar.Jurisdiction.Standard", Got: func(r check.Row) (float64, error) {
			s, err := standardOf(r)
			return float64(s.Max), err
		}},
		{Table: "color-classes", Column: "min_T", Func: "sugar.ColorClass.Limits", Got: func(r check.Row) (float64, error) {
			c, err := colorClassOf(r)
			low, _ := c.Limits()
			return float64(low), err
		}},
		{Table: "color-classes", Column: "below_T", Func: "sugar.ColorClass.Limits", Got: func(r check.Row) (float64, error) {
			c, err := colorClassOf(r)
			_, below := c.Limits()
			return float64(below), err
		}},
		{Table: "color-blend", Column: "value", Func: "sugar.AbsorbanceOf", Select: when("quantity", "absorbance"), Got: func(r check.Row) (float64, error) {
			a, err := sugar.AbsorbanceOf(units.Percents(r.Float("a_T")))
			return float64(a), err
		}},
		{Table: "color-blend", Column: "value", Func: "sugar.BlendTransmission", Select: when("quantity", "transmission of the blend"), Got: func(r check.Row) (float64, error) {
			share := r.Float("b_share")
			t, err := sugar.BlendTransmission(
				sugar.Tinted{Volume: units.Liters(1 - share), Transmission: units.Percents(r.Float("a_T"))},
				sugar.Tinted{Volume: units.Liters(share), Transmission: units.Percents(r.Float("b_T"))})
			return t.Percents(), err
		}},
		{Table: "color-blend", Column: "value", Func: "sugar.LightShare", Select: when("quantity", "share of the second lot"), Got: func(r check.Row) (float64, error) {
			s, err := sugar.LightShare(units.Percents(r.Float("a_T")), units.Percents(r.Float("b_T")), units.Percents(r.Float("target_T")))
			return s.Fraction(), err
		}},
		{Table: "invert-by-glucose-meter", Column: "inverted", Func: "sugar.InvertedFromMeter", Exact: true, Got: func(r check.Row) (float64, error) {
			s, err := sugar.InvertedFromMeter(sugar.Glucose(r.Float("reading")), 10)
			return s.Percents(), err
		}},
		{Table: "flue-pan-worked", Column: "water_gal", Func: "sugar.Concentrate", Got: waterToGo},
		{Table: "ro-worked", Column: "value", Func: "sugar.Membrane.Concentrate", Select: separated, Got: separation},
		{Table: "ro-worked", Column: "value", Func: "sugar.Separation.EvaporationSaved", Select: when("quantity", "share of the evaporation saved"), Got: evaporationSaved},
		{Table: "ro-flow-factor", Column: "factor", Func: "sugar.FlowFactor", Got: func(r check.Row) (float64, error) {
			f, err := sugar.FlowFactor(units.Fahrenheit(r.Float("rated_F")), units.Fahrenheit(r.Float("t_F")))
			return f.Fraction(), err
		}},
	}
}

func standardOf(r check.Row) (sugar.Standard, error) {
	for j := sugar.UnitedStates; j <= sugar.UnitedStates1967; j++ {
		if j.String() == r.Text("jurisdiction") {
			return j.Standard()
		}
	}
	return sugar.Standard{}, fmt.Errorf("no jurisdiction %q", r.Text("jurisdiction"))
}

func colorClassOf(r check.Row) (sugar.ColorClass, error) {
	for c := sugar.Golden; c <= sugar.VeryDark; c++ {
		if c.String() == r.Text("class") {
			return c, nil
		}
	}
	return 0, fmt.Errorf("no color class %q", r.Text("class"))
}

// thinned selects the rows of volumes that are too dense, boiledDown those that
// are too thin.
func thinned(r check.Row) bool {
	return !math.IsNaN(r.Float("gallons")) && r.Float("from_brix") > r.Float("target_brix")
}

func boiledDown(r check.Row) bool { return r.Float("from_brix") < r.Float("target_brix") }

func thinning(r check.Row) (float64, error) {
	l, err := lotOfGallons(r.Float("gallons"), r.Float("from_brix"))
	if err != nil {
		return math.NaN(), err
	}
	a, err := sugar.Thin(l, units.Brix(r.Float("with_brix")), volumesAt, units.Brix(r.Float("target_brix")))
	switch r.Text("quantity") {
	case "mass of water to add":
		return a.Added.Mass().Pounds(), err
	case "water to add":
		return a.Added.Volume().USFluidOunces(), err
	case "final volume":
		return a.Result.Volume().USGallons(), err
	}
	return math.NaN(), fmt.Errorf("no quantity %q", r.Text("quantity"))
}

func boilingDown(r check.Row) (float64, error) {
	l, err := lotOfGallons(r.Float("gallons"), r.Float("from_brix"))
	if err != nil {
		return math.NaN(), err
	}
	s, err := sugar.Concentrate(l, units.Brix(r.Float("target_brix")))
	switch r.Text("quantity") {
	case "water to boil off":
		return s.Removed.Mass().Pounds(), err
	case "final volume":
		return s.Concentrate.Volume().USGallons(), err
	}
	return math.NaN(), fmt.Errorf("no quantity %q", r.Text("quantity"))
}

// waterToGo is the water that leaves sap on its way to a gallon of syrup of 66
// Brix, in gallons of water.
func waterToGo(r check.Row) (float64, error) {
	syrup, err := lotOfGallons(1, 66)
	if err != nil {
		return math.NaN(), err
	}
	sap, err := sugar.NewLotByMass(brix(r).Of(syrup.Sugar()), brix(r), volumesAt)
	if err != nil {
		return math.NaN(), err
	}
	s, err := sugar.Concentrate(sap, 66)
	return s.Removed.Volume().USGallons(), err
}

func partsByMass(r check.Row) bool { return strings.HasPrefix(r.Text("quantity"), "mass parts") }

func squareParts(r check.Row) (float64, error) {
	denser, thinner, err := sugar.SquareParts(units.Brix(r.Float("from_brix")), units.Brix(r.Float("with_brix")), units.Brix(r.Float("target_brix")))
	if r.Text("quantity") == "mass parts of the denser" {
		return denser, err
	}
	return thinner, err
}

// volumeTrap takes the mass parts for volumes.
func volumeTrap(r check.Row) (float64, error) {
	from, with := r.Float("from_brix"), r.Float("with_brix")
	a, b, err := sugar.SquareParts(units.Brix(from), units.Brix(with), units.Brix(r.Float("target_brix")))
	if err != nil {
		return math.NaN(), err
	}
	denser, err := lotOfGallons(a, from)
	if err != nil {
		return math.NaN(), err
	}
	thinner, err := lotOfGallons(b, with)
	if err != nil {
		return math.NaN(), err
	}
	both, err := sugar.Blend(denser, thinner)
	return float64(both.Brix()), err
}

// separated selects the rows of the membrane's own balance.
func separated(r check.Row) bool { return math.IsNaN(r.Float("syrup_brix")) }

func separation(r check.Row) (float64, error) {
	s, err := separate(r)
	switch r.Text("quantity") {
	case "concentrate of 1 US gal":
		return s.Concentrate.Volume().USGallons(), err
	case "permeate of 1 US gal":
		return s.Removed.Volume().USGallons(), err
	case "share of the water taken off", "share of the sap mass removed":
		return 100 * float64(s.Removed.Mass()/(s.Concentrate.Mass()+s.Removed.Mass())), err
	}
	return math.NaN(), fmt.Errorf("no quantity %q", r.Text("quantity"))
}

func evaporationSaved(r check.Row) (float64, error) {
	s, err := separate(r)
	if err != nil {
		return math.NaN(), err
	}
	share, err := s.EvaporationSaved(units.Brix(r.Float("syrup_brix")))
	return share.Percents(), err
}

// separate runs a gallon of sap through a membrane that holds all the sugar.
func separate(r check.Row) (sugar.Separation, error) {
	sap, err := lotOfGallons(1, r.Float("from_brix"))
	if err != nil {
		return sugar.Separation{}, err
	}
	return sugar.Membrane{}.Concentrate(sap, units.Brix(r.Float("to_brix")))
}

var volumesAt = units.Celsius(20)

func lotOfGallons(n, b float64) (sugar.Lot, error) {
	return sugar.NewLot(units.USGallons(n), units.Brix(b), volumesAt)
}
