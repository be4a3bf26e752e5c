package sugar_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestThinAndThickenReachTheTarget(t *testing.T) {
	r := newDraw()
	for range draws {
		l := drawLot(t, r, 0, 85)
		with := between(r, 0, 85)
		// Near the added strength the addition outgrows any tank.
		target := with + (float64(l.Brix())-with)*between(r, 0.01, 1)
		at := units.Celsius(between(r, 0, 110))
		change := sugar.Thin
		if with > float64(l.Brix()) {
			change = sugar.Thicken
		}
		a := must[sugar.Addition](t)(change(l, units.Brix(with), at, units.Brix(target)))
		conserved(t, []sugar.Lot{l, a.Added}, []sugar.Lot{a.Result})
		if !near(float64(a.Result.Brix()), target, closes*85) || !near(float64(a.Added.Brix()), with, closes*85) && !a.Added.Empty() {
			t.Errorf("%v with %v to %v: added %v, result %v", l.Brix(), with, target, a.Added.Brix(), a.Result.Brix())
		}
		if a.Added.Mass() <= 1e-9*l.Mass() {
			continue
		}
		// Round trip: the strength from the mass.
		b := must[units.Brix](t)(sugar.AdditionBrix(l, a.Added.Mass(), units.Brix(target)))
		spread := float64(a.Result.Mass() / a.Added.Mass())
		if !near(float64(b), with, closes*85*spread) {
			t.Errorf("an addition of %v Brix came back as %v", with, b)
		}
		// Round trip: the recipe of the result gives lot and addition.
		lotA, lotB, err := sugar.Recipe(a.Result, l.Brix(), units.Brix(with))
		if err != nil {
			t.Errorf("recipe of %v from %v and %v: %v", a.Result.Brix(), l.Brix(), with, err)
			continue
		}
		conserved(t, []sugar.Lot{a.Result}, []sugar.Lot{lotA, lotB})
		if d := math.Abs(float64(l.Brix()) - with); d > 1 && !near(float64(lotA.Mass()), float64(l.Mass()), 1e-11*float64(a.Result.Mass())) {
			t.Errorf("recipe takes %v of %v, want %v", lotA.Mass(), l.Brix(), l.Mass())
		}
		pa, pb, err := sugar.SquareParts(l.Brix(), units.Brix(with), a.Result.Brix())
		if err != nil || !near(pa*float64(a.Added.Mass()), pb*float64(l.Mass()), 1e-9*85*float64(a.Result.Mass())) {
			t.Errorf("square %v to %v: %v parts for %v, %v for %v, %v", l.Brix(), with, pa, l.Mass(), pb, a.Added.Mass(), err)
		}
	}
}

func TestThinAtItsOwnStrength(t *testing.T) {
	l := must[sugar.Lot](t)(sugar.NewLotByMass(10, 66.9, units.Celsius(20)))
	for name, change := range map[string]func() (sugar.Addition, error){
		"Thin":    func() (sugar.Addition, error) { return sugar.Thin(l, 0, units.Celsius(20), l.Brix()) },
		"Thicken": func() (sugar.Addition, error) { return sugar.Thicken(l, 70, units.Celsius(20), l.Brix()) },
	} {
		a := must[sugar.Addition](t)(change())
		if a.Added.Mass() > 1e-12 || a.Result.Empty() {
			t.Errorf("%s: added %v", name, a.Added.Mass())
		}
	}
}

func TestInfeasible(t *testing.T) {
	at := units.Celsius(20)
	lot := func(b units.Brix) sugar.Lot { return must[sugar.Lot](t)(sugar.NewLotByMass(10, b, at)) }
	thin := func(l sugar.Lot, with, target units.Brix) error {
		_, err := sugar.Thin(l, with, at, target)
		return err
	}
	thicken := func(l sugar.Lot, with, target units.Brix) error {
		_, err := sugar.Thicken(l, with, at, target)
		return err
	}
	addition := func(l sugar.Lot, m units.Mass, target units.Brix) error {
		b, err := sugar.AdditionBrix(l, m, target)
		if (err == nil) == math.IsNaN(float64(b)) {
			t.Errorf("AdditionBrix gives %v with error %v", b, err)
		}
		return err
	}
	square := func(a, b, target units.Brix) error {
		_, _, err := sugar.SquareParts(a, b, target)
		return err
	}
	recipe := func(want sugar.Lot, a, b units.Brix) error {
		_, _, err := sugar.Recipe(want, a, b)
		return err
	}
	boil := func(l sugar.Lot, target units.Brix) error {
		_, err := sugar.Concentrate(l, target)
		return err
	}
	saved := func(s sugar.Separation, syrup units.Brix) error {
		_, err := s.EvaporationSaved(syrup)
		return err
	}
	sap8 := must[sugar.Separation](t)(sugar.Concentrate(lot(2), 8))
	for name, err := range map[string]error{
		"thin to thicker":                     thin(lot(65), 0, 66.9),
		"thin with the target's own strength": thin(lot(68.9), 66.9, 66.9),
		"thin with heavier":                   thin(lot(68.9), 67, 66.9),
		"thin to water with water":            thin(lot(68.9), 0, 0),
		"thin nothing":                        thin(sugar.Lot{}, 0, 66.9),
		"thicken to thinner":                  thicken(lot(68), 70, 66.9),
		"thicken with the target's own":       thicken(lot(65), 66.9, 66.9),
		"thicken with thinner":                thicken(lot(65), 60, 66.9),
		"thicken nothing":                     thicken(sugar.Lot{}, 70, 66.9),
		"addition below water":                addition(lot(70), 0.1, 66.9),
		"addition above candy":                addition(lot(60), 0.1, 66.9),
		"addition to nothing":                 addition(sugar.Lot{}, 1, 66.9),
		"square above":                        square(68.9, 64, 69),
		"square below":                        square(64, 68.9, 63.9),
		"square of equals":                    square(66.9, 66.9, 66.9),
		"recipe above":                        recipe(lot(69), 68.9, 64),
		"saving on syrup":                     saved(sugar.Separation{Concentrate: lot(66)}, lot(66).Brix()),
		"recipe of equals":                    recipe(lot(66), 66, 66),
		"recipe of nothing":                   recipe(sugar.Lot{}, 68.9, 64),
		"boil to thinner":                     boil(lot(66.9), 66),
		"boil water":                          boil(lot(0), 66.9),
		"boil water to a little":              boil(lot(0), 0.5),
		"boil nothing":                        boil(sugar.Lot{}, 66.9),
		"save on thinner syrup":               saved(sap8, 7.9),
		"save on nothing":                     saved(sugar.Separation{}, 66),
	} {
		var ie *sugar.InfeasibleError
		if !errors.Is(err, sugar.ErrInfeasible) || errors.Is(err, units.ErrRange) || !errors.As(err, &ie) || ie.Hint == "" || ie.Why == "" {
			t.Errorf("%s: %v", name, err)
		}
	}
	for name, err := range map[string]error{
		"plain water itself":  addition(lot(68.9), 0.3, 68.9*10/10.3),
		"candy itself":        addition(lot(60), 5, (60*10+85*5)/15.0),
		"square at one end":   square(68.9, 64, 64),
		"square at the other": square(68.9, 64, 68.9),
		"recipe at one end":   recipe(lot(64), 68.9, 64),
		"boil to itself":      boil(lot(66.9), lot(66.9).Brix()),
		"boil water to 0":     boil(lot(0), 0),
		"save all":            saved(sap8, 8.0000001),
	} {
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Two refusals of one kind, each with its own way out: what is as strong as the
// target is not merely near it.
func TestThinHints(t *testing.T) {
	at := units.Celsius(20)
	l := must[sugar.Lot](t)(sugar.NewLotByMass(10, 68.9, at))
	for with, want := range map[units.Brix]string{66.9: "thin with something thinner", 66.9 - 1e-9: "lies too near"} {
		_, err := sugar.Thin(l, with, at, 66.9)
		var e *sugar.InfeasibleError
		if !errors.As(err, &e) || !strings.Contains(e.Hint, want) {
			t.Errorf("thinned with %v: %v, want %q", float64(with), err, want)
		}
	}
}

// A lot that has its target already comes back as it is, and not a grain less.
func TestNothingToTake(t *testing.T) {
	r := newDraw()
	for range draws {
		l := drawLot(t, r, 0.5, 60)
		b := l.Brix()
		for name, take := range map[string]func() (sugar.Separation, error){
			"Concentrate": func() (sugar.Separation, error) { return sugar.Concentrate(l, b) },
			"Membrane":    func() (sugar.Separation, error) { return sugar.Membrane{Passage: 1}.Concentrate(l, b) },
			"IceToReach":  func() (sugar.Separation, error) { return sugar.IceToReach(l, b, 0) },
		} {
			if s, err := take(); err != nil || s != (sugar.Separation{Concentrate: l}) {
				t.Errorf("%s: %v to itself: %+v, %v", name, float64(b), s, err)
			}
		}
	}
}

func TestThinLimits(t *testing.T) {
	at := units.Celsius(20)
	l := must[sugar.Lot](t)(sugar.NewLotByMass(10, 68.9, at))
	light := must[sugar.Lot](t)(sugar.NewLotByMass(10, 2, at))
	var errs []error
	keep := func(err error) { errs = append(errs, err) }
	for _, b := range append([]float64{-0.001, 85.001}, notNumbers...) {
		x := units.Brix(b)
		_, err := sugar.Thin(l, x, at, 66.9)
		keep(err)
		_, err = sugar.Thin(l, 0, at, x)
		keep(err)
		_, err = sugar.Thicken(light, x, at, 66.9)
		keep(err)
		_, err = sugar.Thicken(light, 70, at, x)
		keep(err)
		_, err = sugar.AdditionBrix(l, 1, x)
		keep(err)
		_, err = sugar.Concentrate(light, x)
		keep(err)
		_, err = sugar.Separation{Concentrate: light}.EvaporationSaved(x)
		keep(err)
		_, _, err = sugar.SquareParts(x, 64, 66)
		keep(err)
		_, _, err = sugar.SquareParts(64, x, 66)
		keep(err)
		_, _, err = sugar.SquareParts(64, 68, x)
		keep(err)
		_, _, err = sugar.Recipe(l, x, 64)
		keep(err)
		_, _, err = sugar.Recipe(l, 85, x)
		keep(err)
	}
	for _, c := range append([]float64{-0.001, 110.001}, notNumbers...) {
		_, err := sugar.Thin(l, 0, units.Celsius(c), 66.9)
		keep(err)
	}
	for _, m := range append([]float64{-1, 0, 0.9999e-6, 1.0001e9}, notNumbers...) {
		_, err := sugar.AdditionBrix(l, units.Mass(m), 66.9)
		keep(err)
	}
	for i, err := range errs {
		if !errors.Is(err, units.ErrRange) {
			t.Errorf("case %d: %v, want a range error", i, err)
		}
	}
	for _, c := range []float64{0, 110} {
		if _, err := sugar.Thin(l, 0, units.Celsius(c), 66.9); err != nil {
			t.Errorf("water at %v C: %v", c, err)
		}
	}
	drop := must[sugar.Lot](t)(sugar.NewLotByMass(1e-6, 60, at))
	if _, err := sugar.AdditionBrix(drop, 1e-6, 66); err != nil {
		t.Errorf("the least addition: %v", err)
	}
	if _, err := sugar.AdditionBrix(l, 1e9, 66); err != nil {
		t.Errorf("the largest addition: %v", err)
	}
	if _, err := sugar.Concentrate(light, 85); err != nil {
		t.Errorf("to 85 Brix: %v", err)
	}
}

func TestConcentrateConserves(t *testing.T) {
	r := newDraw()
	for range draws {
		l := drawLot(t, r, 0.1, 85)
		target := units.Brix(between(r, float64(l.Brix()), 85))
		s := must[sugar.Separation](t)(sugar.Concentrate(l, target))
		conserved(t, []sugar.Lot{l}, []sugar.Lot{s.Concentrate, s.Removed})
		if s.Removed.Sugar() != 0 || !near(float64(s.Concentrate.Brix()), float64(target), closes*85) {
			t.Errorf("%v to %v: %v left, %v of sugar gone", l.Brix(), target, s.Concentrate.Brix(), s.Removed.Sugar())
		}
		syrup := units.Brix(between(r, float64(s.Concentrate.Brix()), 85))
		if got := must[units.Share](t)(s.EvaporationSaved(syrup)); !(got >= -1e-9 && got <= 100+1e-9) && syrup > l.Brix()+1e-6 {
			t.Errorf("%v to %v to %v saves %v", l.Brix(), target, syrup, got)
		}
	}
}

func TestNoAllocations(t *testing.T) {
	at := units.Celsius(20)
	l := must[sugar.Lot](t)(sugar.NewLotByMass(10, 68.9, at))
	sap := must[sugar.Lot](t)(sugar.NewLotByMass(10, 2, at))
	rule := must[sugar.Standard](t)(sugar.Vermont.Standard())
	for name, f := range map[string]func(){
		"NewLot":             func() { _, _ = sugar.NewLot(1, 66.9, at) },
		"At":                 func() { _, _ = l.At(units.Celsius(90)) },
		"Thin":               func() { _, _ = sugar.Thin(l, 0, at, 66.9) },
		"AdditionBrix":       func() { _, _ = sugar.AdditionBrix(l, 10, 40) },
		"Recipe":             func() { _, _, _ = sugar.Recipe(l, 70, 60) },
		"Concentrate":        func() { _, _ = sugar.Concentrate(sap, 66.9) },
		"Membrane":           func() { _, _ = sugar.Membrane{Pump: 30 * units.Bar, Passage: 1}.Concentrate(sap, 8) },
		"IceToReach":         func() { _, _ = sugar.IceToReach(sap, 4, 0.5) },
		"FreezeTo":           func() { _, _ = sugar.FreezeTo(sap, units.Celsius(-1), 0) },
		"TransmissionAtBrix": func() { _, _ = sugar.TransmissionAtBrix(50, 68.9, 66.9) },
		"LightShare":         func() { _, _ = sugar.LightShare(46, 82, 50.5) },
		"Judge":              func() { _, _ = rule.Judge(66.9, 0.2) },
		"Confection.Blend":   func() { _, _, _ = sugar.MoldedSugar.Blend(3, 0.5) },
		"FlowFactor":         func() { _, _ = sugar.FlowFactor(at, units.Celsius(5)) },
	} {
		if n := testing.AllocsPerRun(20, f); n != 0 {
			t.Errorf("%s allocates %v times", name, n)
		}
	}
}

// A strength below one is told as it is.
func TestWeakLotsAreTold(t *testing.T) {
	l := must[sugar.Lot](t)(sugar.NewLotByMass(10, 2, units.Celsius(20)))
	_, err := sugar.Concentrate(l, 0.5)
	var e *sugar.InfeasibleError
	if !errors.As(err, &e) || !strings.Contains(e.Why, "2 Brix") || !strings.Contains(e.Why, "target of 0.5") {
		t.Error(err)
	}
}
