package proof

import (
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// Yield binds the tables of ratios, accounts, shares, prices, packing and tanks
// to package [example.org/sapreckoner/yield].
func Yield() []check.Claim {
	return []check.Claim{
		{Table: "ratio-rules-worked", Column: "error", Func: "yield.Rule.ErrorAt", Got: ruleError},
		{Table: "sap-to-syrup-rules", Column: "constant", Func: "yield.Rule.Constants", Got: ruleConstant},
		{Table: "sap-to-syrup-published", Column: "gallons", Func: "yield.Rule.Ratio", Got: ruleRatio},
		{Table: "nass-yield-per-tap", Column: "gal_per_tap", Func: "yield.State.PerTap", Got: statePerTap},
		{Table: "nass-yield-per-tap", Column: "gal_per_tap", Func: "yield.PastSeason.PerTap", Got: seasonPerTap},
		{Table: "season-account-worked", Column: "value", Func: "yield.Season.Account", Select: when("quantity", "sugar"), Got: sugarHeld},
		{Table: "season-account-worked", Column: "value", Func: "yield.Season.Expect", Select: when("quantity", "as syrup"), Got: syrupHeld},
		{Table: "tank-worked", Column: "gallons", Func: "yield.Tank.Volume", Got: tankVolume},
		{Table: "tank-factors", Column: "factor", Func: "yield.UprightCylinder", Got: tankFactor},
	}
}

// glassJar is the jar of a row with the syrup that fills it at so many degrees
// Fahrenheit.
func glassJar(r check.Row, f float64) packing.Container {
	hot, _ := density.Solution(66.9, units.Fahrenheit(f))
	cool, _ := density.Solution(66.9, units.Celsius(20))
	return packing.Container{Label: units.Milliliters(r.Float("volume_mL") * float64(hot/cool)), Mass: units.Grams(r.Float("glass_g"))}
}

// ruleNamed finds a rule of thumb by the way it is written.
func ruleNamed(text string) (yield.Rule, error) {
	for r := yield.Jones1946; r <= yield.Revised669Less; r++ {
		if r.String() == text {
			return r, nil
		}
	}
	return 0, fmt.Errorf("no rule %q", text)
}

// ruleConstant returns the constant of a rule, or the offset that the last one
// has.
func ruleConstant(row check.Row) (float64, error) {
	if row.Text("rule") == "the same less" {
		_, less := yield.Revised669Less.Constants()
		return less, nil
	}
	r, err := ruleNamed(row.Text("rule"))
	over, _ := r.Constants()
	return over, err
}

func ruleRatio(row check.Row) (float64, error) {
	r, err := ruleNamed(row.Text("rule"))
	if err != nil {
		return 0, err
	}
	return r.Ratio(units.Brix(row.Float("sap_brix")))
}

func ruleError(row check.Row) (float64, error) {
	r, err := ruleNamed(row.Text("rule"))
	if err == nil && r.Syrup() != units.Brix(row.Float("syrup_brix")) {
		err = fmt.Errorf("%v is held against %v", r, r.Syrup())
	}
	if err != nil {
		return 0, err
	}
	off, err := r.ErrorAt(units.Brix(row.Float("sap_brix")))
	return off.Percents(), err
}

// statePerTap is the figure that the package carries.
func statePerTap(row check.Row) (float64, error) {
	for s := yield.Maine; s <= yield.UnitedStates; s++ {
		if s.String() == row.Text("state") {
			v, err := s.PerTap(int(row.Float("year")))
			return v.USGallons(), err
		}
	}
	return 0, fmt.Errorf("no state %q", row.Text("state"))
}

// seasonPerTap is production over taps.
func seasonPerTap(row check.Row) (float64, error) {
	v, err := yield.PastSeason{
		Year:  int(row.Float("year")),
		Taps:  int(1000 * row.Float("taps_thousand")),
		Syrup: units.USGallons(1000 * row.Float("production_thousand_gal")),
	}.PerTap()
	return v.USGallons(), err
}

// pans is a season that starts with what is in the pans and has nothing else.
func pans(row check.Row) (yield.Season, error) {
	lot, err := sugar.NewLot(units.USGallons(row.Float("gallons")), units.Brix(row.Float("held_brix")), units.Celsius(20))
	return yield.Season{HeldBefore: []sugar.Lot{lot}, HeldMeasured: yield.Measured{Volume: 1, Brix: 0.1}}, err
}

func sugarHeld(row check.Row) (float64, error) {
	s, err := pans(row)
	if err != nil {
		return 0, err
	}
	a, err := s.Account()
	return a.SugarIn.Pounds(), err
}

func syrupHeld(row check.Row) (float64, error) {
	s, err := pans(row)
	if err != nil {
		return 0, err
	}
	v, err := s.Expect(0, units.Brix(row.Float("syrup_brix")))
	return v.USGallons(), err
}

func tankVolume(row check.Row) (float64, error) {
	across := units.Inches(row.Float("across_in"))
	length := units.Inches(row.Float("length_in"))
	var tank yield.Tank
	var err error
	switch row.Text("shape") {
	case "horizontal cylinder":
		tank, err = yield.LyingCylinder(across, length)
	case "frustum pail":
		tank, err = yield.Pail(across, units.Inches(row.Float("bottom_in")), length)
	default:
		err = fmt.Errorf("no shape %q", row.Text("shape"))
	}
	if err != nil {
		return 0, err
	}
	v, err := tank.Volume(units.Inches(row.Float("depth_in")))
	return v.USGallons(), err
}

// tankFactor is the volume of an inch in a cylinder an inch across.
func tankFactor(check.Row) (float64, error) {
	tank, err := yield.UprightCylinder(units.Inch, units.Inch)
	return tank.Capacity().USGallons(), err
}
