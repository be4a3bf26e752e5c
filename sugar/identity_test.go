package sugar_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// To the strength that it has already a lot needs nothing: for every strength of
// two decimals, and any amount and temperature, what comes out is the lot, and
// nothing was added or taken off.
func TestToItsOwnStrength(t *testing.T) {
	rng := rand.New(rand.NewPCG(66, 9))
	for hundredths := range 8501 {
		b := units.Brix(float64(hundredths) / 100)
		volume := units.Volume(math.Exp(12*rng.Float64() - 6))
		at := units.Celsius(110 * rng.Float64())
		l, err := sugar.NewLot(volume, b, at)
		if err != nil {
			t.Fatal(err)
		}
		thinner, thicker := b/2, min(b+3, 85)
		same := func(name string, got, other sugar.Lot, err error) {
			if err != nil || got != l || !other.Empty() {
				t.Errorf("%s of %v Brix: %v beside %v, %v", name, float64(b), got, other, err)
			}
		}
		a, err := sugar.Thin(l, thinner, at, b)
		same("Thin", a.Result, a.Added, err)
		a, err = sugar.Thicken(l, thicker, at, b)
		same("Thicken", a.Result, a.Added, err)
		s, err := sugar.Concentrate(l, b)
		same("Concentrate", s.Concentrate, s.Removed, err)
		s, err = sugar.Membrane{Passage: 2}.Concentrate(l, b)
		same("Membrane.Concentrate", s.Concentrate, s.Removed, err)
		if at.Celsius() <= 50 { // a pump that is too weak is not needed
			s, err = sugar.Membrane{Pump: 10 * units.Kilopascal}.Concentrate(l, b)
			same("Membrane.Concentrate with a pump", s.Concentrate, s.Removed, err)
		}
		if b <= 60 {
			s, err = sugar.IceToReach(l, b, sugar.CleanIce)
			same("IceToReach", s.Concentrate, s.Removed, err)
		}
		if got, err := sugar.AdditionBrix(l, 1e-6, b); err != nil || math.Abs(float64(got-b)) > 1e-9 {
			t.Errorf("a milligram that keeps %v Brix has %v, %v", float64(b), float64(got), err)
		}
		if b > 0 {
			first, second, err := sugar.Recipe(l, b, thinner)
			if err != nil || !second.Empty() || first.Mass() != l.Mass() {
				t.Errorf("Recipe of %v Brix: %v and %v, %v", float64(b), first, second, err)
			}
			if x, y, err := sugar.SquareParts(l.Brix(), thinner, b); err != nil || y != 0 || !(x > 0) {
				t.Errorf("square of %v Brix: %v and %v, %v", float64(b), x, y, err)
			}
			// Ice as strong as the sap takes nothing out of it, however its
			// strength was rounded.
			if _, err := sugar.IceToReach(l, 60, b); !errors.Is(err, sugar.ErrInfeasible) {
				t.Errorf("ice of %v Brix off sap as strong: %v", float64(b), err)
			}
		}
	}
}

// What one operation made, another takes at the end of its range.
func TestMadeAtTheLimit(t *testing.T) {
	rng := rand.New(rand.NewPCG(60, 1))
	for range 2000 {
		l, err := sugar.NewLot(units.Volume(math.Exp(6*rng.Float64()-3)), units.Brix(0.1+10*rng.Float64()), units.Celsius(5))
		if err != nil {
			t.Fatal(err)
		}
		s, err := sugar.IceToReach(l, 60, sugar.CleanIce)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := sugar.TakeIce(l, s.Removed.Mass(), sugar.CleanIce); err != nil {
			t.Errorf("the ice that leaves 60 Brix: %v", err)
		}
		m := sugar.Membrane{Pump: units.Pressure(1e5 + 5e6*rng.Float64())}
		most, err := m.Limit(units.Celsius(5))
		if err != nil || most < l.Brix() {
			continue
		}
		if _, err := m.Concentrate(l, most*(1+1e-13)); err != nil {
			t.Errorf("to the limit of the pump: %v", err)
		}
	}
}

// A message names the ends of what suits a confection, from the manuals: molded
// sugar 0.5 to 1.5 percent, cream up to 4.
func TestConfectionMessageTellsTheEnds(t *testing.T) {
	for _, tc := range []struct {
		c           sugar.Confection
		have, other units.Share
		says        string
	}{
		{sugar.MoldedSugar, 2, 3, "0.5 to 1.5 percent of molded sugar"},
		{sugar.MapleCream, 5, 6, "0 to 4 percent of maple cream"},
	} {
		_, _, err := tc.c.Blend(tc.have, tc.other)
		wantText(t, err, tc.says)
	}
	// The ends of the meter, 20 to 600 mg/dL, and which way to dilute.
	_, err := sugar.InvertedFromMeter(19, 10)
	wantText(t, err, "19 mg/dL is outside 20 to 600 mg/dL", "dilute less")
	_, err = sugar.InvertedFromMeter(601, 10)
	wantText(t, err, "601 mg/dL is outside 20 to 600 mg/dL", "dilute more")
	_, err = sugar.InvertedFromMeter(100, 51)
	wantText(t, err, "51 is outside 1 to 50")
}

func wantText(t *testing.T, err error, parts ...string) {
	t.Helper()
	for _, part := range parts {
		if err == nil || !strings.Contains(err.Error(), part) {
			t.Errorf("%v does not tell %q", err, part)
		}
	}
}
