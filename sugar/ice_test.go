package sugar_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestIceConserves(t *testing.T) {
	r := newDraw()
	frozen := 0
	for range draws {
		sap := drawLot(t, r, 0.5, 10)
		b := float64(sap.Brix())
		ice := units.Brix(between(r, 0, 0.9*b))
		target := units.Brix(between(r, b, 60))
		s := must[sugar.Separation](t)(sugar.IceToReach(sap, target, ice))
		conserved(t, []sugar.Lot{sap}, []sugar.Lot{s.Concentrate, s.Removed})
		if !near(float64(s.Concentrate.Brix()), float64(target), 1e-10*60) || !s.Removed.Empty() && !near(float64(s.Removed.Brix()), float64(ice), 1e-11) {
			t.Errorf("%v to %v with ice of %v: %v and ice of %v", b, target, ice, s.Concentrate.Brix(), s.Removed.Brix())
		}
		if target < 59.999 {
			again := must[sugar.Separation](t)(sugar.TakeIce(sap, s.Removed.Mass(), ice))
			conserved(t, []sugar.Lot{s.Concentrate}, []sugar.Lot{again.Concentrate})
		}
		at := units.Celsius(-between(r, 0, 10))
		s = must[sugar.Separation](t)(sugar.FreezeTo(sap, at, ice))
		conserved(t, []sugar.Lot{sap}, []sugar.Lot{s.Concentrate, s.Removed})
		if s.Removed.Empty() {
			if f := must[units.Temperature](t)(sugar.FreezingPoint(sap.Brix())); f.Compare(at) > 0 {
				t.Errorf("%v at %v gives no ice and freezes at %v", b, at, f)
			}
			continue
		}
		frozen++
		if f := must[units.Temperature](t)(sugar.FreezingPoint(s.Concentrate.Brix())); !near(f.Celsius(), at.Celsius(), 1e-6) {
			t.Errorf("the liquid at %v freezes at %v", at, f)
		}
	}
	if frozen < draws/4 {
		t.Errorf("ice in %d cases only", frozen)
	}
}

func TestIceLimits(t *testing.T) {
	sap := must[sugar.Lot](t)(sugar.NewLotByMass(100, 2, units.Celsius(1)))
	var errs []error
	keep := func(s sugar.Separation, err error) {
		if s != (sugar.Separation{}) {
			t.Errorf("an answer beside %v", err)
		}
		errs = append(errs, err)
	}
	for _, x := range append([]float64{-1, 1.0001e9}, notNumbers...) {
		keep(sugar.TakeIce(sap, units.Mass(x), 0))
	}
	for _, x := range append([]float64{-0.001, 85.001}, notNumbers...) {
		keep(sugar.TakeIce(sap, 10, units.Brix(x)))
		keep(sugar.IceToReach(sap, 4, units.Brix(x)))
		keep(sugar.FreezeTo(sap, units.Celsius(-1), units.Brix(x)))
	}
	for _, x := range append([]float64{-0.001, 60.001}, notNumbers...) {
		keep(sugar.IceToReach(sap, units.Brix(x), 0))
	}
	for _, x := range append([]float64{-10.001, 0.001}, notNumbers...) {
		keep(sugar.FreezeTo(sap, units.Celsius(x), 0))
	}
	for i, err := range errs {
		if !errors.Is(err, units.ErrRange) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	var e *units.RangeError
	_, err := sugar.FreezeTo(sap, units.Celsius(0.001), 0)
	if !errors.As(err, &e) || e.Func != "sugar.FreezeTo" || e.Low != -10 || e.High != 0 {
		t.Errorf("above 0 C: %v", err)
	}
	errs = nil
	keep(sugar.TakeIce(sugar.Lot{}, 0, 0))
	keep(sugar.TakeIce(sap, 100.1, 0))
	keep(sugar.TakeIce(sap, 100, 0))
	keep(sugar.TakeIce(sap, 97, 0)) // 67 Brix
	keep(sugar.TakeIce(sap, 10, 2))
	keep(sugar.IceToReach(sugar.Lot{}, 4, 0))
	keep(sugar.IceToReach(sap, 1.9, 0))
	keep(sugar.IceToReach(sap, 4, 3))
	keep(sugar.IceToReach(must[sugar.Lot](t)(sugar.NewLotByMass(100, 0.5, units.Celsius(1))), 4, 0.6))
	keep(sugar.FreezeTo(sugar.Lot{}, units.Celsius(-1), 0))
	keep(sugar.FreezeTo(sap, units.Celsius(-1), 2))
	for i, err := range errs {
		if !errors.Is(err, sugar.ErrInfeasible) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	for _, ice := range []units.Mass{0, 96} {
		if _, err := sugar.TakeIce(sap, ice, 0); err != nil {
			t.Errorf("%v of ice: %v", ice, err)
		}
	}
	for _, target := range []units.Brix{2, 60} {
		if _, err := sugar.IceToReach(sap, target, 0); err != nil {
			t.Errorf("to %v: %v", target, err)
		}
	}
	// Three of four kilograms of 15 Brix leave one of 60, the most.
	strong := must[sugar.Lot](t)(sugar.NewLotByMass(4, 15, units.Celsius(1)))
	if s, err := sugar.TakeIce(strong, 3, 0); err != nil || !near(float64(s.Concentrate.Brix()), 60, 1e-12) {
		t.Errorf("to 60 Brix: %v, %v", s.Concentrate.Brix(), err)
	}
	// Plain water gives clean ice and stays plain water.
	water := must[sugar.Lot](t)(sugar.NewLotByMass(4, 0, units.Celsius(1)))
	if s, err := sugar.TakeIce(water, 3, sugar.CleanIce); err != nil || !near(float64(s.Concentrate.Mass()), 1, 1e-12) || s.Concentrate.Brix() > 0 {
		t.Errorf("ice off plain water: %v of %v, %v", s.Concentrate.Mass(), s.Concentrate.Brix(), err)
	}
	for _, c := range []float64{-10, 0} {
		if _, err := sugar.FreezeTo(sap, units.Celsius(c), 0); err != nil {
			t.Errorf("at %v C: %v", c, err)
		}
	}
}
