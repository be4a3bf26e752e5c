package packing_test

import (
	"errors"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// A figure that misses its limit by less than a hair gets the answer of the
// limit. Expected by hand.
func TestHairBeyondTheLimit(t *testing.T) {
	const less, more = 1 - 5e-12, 1 + 5e-12
	if b, err := yield.BrixFromRatio(less, 66.9); err != nil || !(b > 66.8999999 && b < 66.9000001) {
		t.Errorf("one volume of sap for one of syrup is syrup: %v, %v", b, err)
	}
	thinnest, err := yield.Ratio(0.1, 66.9)
	if err != nil {
		t.Fatal(err)
	}
	for _, ratio := range []float64{thinnest, thinnest * more} {
		if b, err := yield.BrixFromRatio(ratio, 66.9); err != nil || !(b > 0.0999999 && b < 0.1000001) {
			t.Errorf("%v volumes are of 0.1 Brix: %v, %v", ratio, b, err)
		}
	}

	// Three pounds of cake are one of aid and two of niter, in tenths too.
	lost, err := packing.CakeLoss(0.3*units.Kilogram, 0.1*units.Kilogram, 0.2*units.Kilogram, 66.9, units.Celsius(20))
	if err != nil || lost.Mass() > 1e-12 {
		t.Errorf("nothing but aid and niter: %v, %v", lost, err)
	}

	// Just what is ordered fills what is ordered, even where the lot lies on the
	// part in a billion that may be short.
	quart := packing.Container{Label: units.USQuart}
	for _, part := range []float64{1, 1 - 1e-9, (1 - 1e-9) * less} {
		plan, err := packing.FewestContainers(syrupLot(t, 4*units.USQuart*units.Volume(part)), 0, packing.Supply{Container: quart, OnHand: 9, AtLeast: 4})
		if err != nil || len(plan.Lines) != 1 || plan.Lines[0].Count != 4 {
			t.Errorf("%v of four quarts: %+v, %v", part, plan, err)
		}
	}

	// A lot made of itself is found, whatever the masses are.
	_, err = yield.NewBooks(nil, []yield.BulkLot{
		{ID: "a", Parts: []yield.Part{{From: "b", Mass: 1e9 * units.Kilogram * more}}},
		{ID: "b", Parts: []yield.Part{{From: "a", Mass: units.Kilogram}}},
	}, nil)
	if !errors.Is(err, yield.ErrCircular) {
		t.Errorf("a circle: %v", err)
	}

	// All that came in is held: no syrup, and not less.
	lot := syrupLot(t, 10*units.Liter)
	held, err := sugar.NewLotByMass(lot.Mass()*more, 66.9, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	measured := yield.Measured{Volume: 2 * units.Percent, Brix: 0.1}
	season := yield.Season{Sap: []sugar.Lot{lot}, SapMeasured: measured, HeldAfter: []sugar.Lot{held}, HeldMeasured: measured}
	if v, err := season.Expect(0, 66.9); err != nil || v < 0 || v > 1e-12 {
		t.Errorf("all is held: %v, %v", v, err)
	}
	season.HeldAfter = nil
	if v, err := season.Expect(units.Whole*more, 66.9); err != nil || v < 0 || v > 0 {
		t.Errorf("all is lost: %v, %v", v, err)
	}
	solids, err := finish.ProductWeight(lot, 0)
	if err != nil {
		t.Fatal(err)
	}
	if s, err := finish.ProductMoisture(lot, solids*less); err != nil || s < 0 || s > 1e-9 {
		t.Errorf("dry sugar: %v, %v", s, err)
	}
}

// Jars that hold what their label says pass, at every label and strength: the
// weight is that of [packing.NetCheck], and back from it the volume is the label.
func TestFullJarsPass(t *testing.T) {
	for ml := 50.0; ml < 5000; ml += 37.3 {
		for b := units.Brix(60); b <= 70; b += 0.7 {
			label := units.Milliliters(ml)
			first, err := packing.CheckNet(label, b, 0, 0, []units.Mass{units.Pound})
			if err != nil {
				t.Fatal(err)
			}
			for n := 1; n <= 7; n += 2 {
				net := make([]units.Mass, n)
				for i := range net {
					net[i] = first.LabelWeight
				}
				if got, err := packing.CheckNet(label, b, 0, 0, net); err != nil || !got.Passes || got.Short != 0 {
					t.Fatalf("%d jars of %v at %v, each of its label's weight: %+v, %v", n, label, b, got, err)
				}
			}
		}
	}
	// A part in a billion short is short.
	first, err := packing.CheckNet(units.Liter, 66.9, 0, 0, []units.Mass{units.Pound})
	if err != nil {
		t.Fatal(err)
	}
	if got, err := packing.CheckNet(units.Liter, 66.9, 0, 0, []units.Mass{first.LabelWeight * (1 - 1e-9)}); err != nil || got.Passes || got.Short != 1 {
		t.Errorf("%+v, %v", got, err)
	}
	if d, err := packing.FilterTime(1000*time.Hour, 66, units.Celsius(80), units.Celsius(80)); err != nil || d != 1000*time.Hour {
		t.Errorf("%v, %v", d, err)
	}
}
