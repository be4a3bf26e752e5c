package sugar_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestLotLimits(t *testing.T) {
	type limit struct {
		name            string
		volume, brix, c float64
		ok              bool
	}
	tests := []limit{
		{"inside", 1, 66, 20, true},
		{"nothing", 0, 66, 20, true},
		{"least of all", 1e-9, 0, 0, true},
		{"most of all", 1e6, 85, 110, true},
		{"volume below", -1e-9, 66, 20, false},
		{"volume above", 1.000001e6, 66, 20, false},
		{"Brix below", 1, -0.001, 20, false},
		{"Brix above", 1, 85.001, 20, false},
		{"cold", 1, 66, -0.001, false},
		{"hot", 1, 66, 110.001, false},
	}
	for _, x := range notNumbers {
		tests = append(tests,
			limit{"volume not a number", x, 66, 20, false},
			limit{"Brix not a number", 1, x, 20, false},
			limit{"temperature not a number", 1, 66, x, false})
	}
	for _, tt := range tests {
		byVolume, err1 := sugar.NewLot(units.Volume(tt.volume), units.Brix(tt.brix), units.Celsius(tt.c))
		byMass, err2 := sugar.NewLotByMass(1000*units.Mass(tt.volume), units.Brix(tt.brix), units.Celsius(tt.c))
		for fn, got := range map[string]struct {
			l   sugar.Lot
			err error
		}{"sugar.NewLot": {byVolume, err1}, "sugar.NewLotByMass": {byMass, err2}} {
			var re *units.RangeError
			if tt.ok != (got.err == nil) || !tt.ok && (!errors.Is(got.err, units.ErrRange) || !errors.As(got.err, &re) || re.Func != fn || !got.l.Empty()) {
				t.Errorf("%s, %s: %v, %v", tt.name, fn, got.l, got.err)
			}
		}
	}
}

func TestEmptyLot(t *testing.T) {
	var l sugar.Lot
	if !l.Empty() || l.Mass() != 0 || l.Sugar() != 0 || l.Water() != 0 || l.Volume() != 0 || l.WeightInAir() != 0 {
		t.Errorf("the zero lot is not empty: %+v", l)
	}
	if !math.IsNaN(float64(l.Brix())) || !math.IsNaN(l.Temperature().Celsius()) || !math.IsNaN(float64(l.Density())) {
		t.Errorf("nothing has strength %v, temperature %v, density %v", l.Brix(), l.Temperature(), l.Density())
	}
	if v, err := l.VolumeAt(units.Celsius(50)); err != nil || v != 0 {
		t.Errorf("nothing fills %v, %v", v, err)
	}
	if made := must[sugar.Lot](t)(sugar.NewLot(0, 66, units.Celsius(20))); made != l {
		t.Errorf("a lot of no volume is %+v", made)
	}
}

func TestLotHoldsWhatWasMeasured(t *testing.T) {
	r := newDraw()
	for range draws {
		v := units.Liters(math.Pow(10, between(r, -3, 6)))
		b, at := units.Brix(between(r, 0, 85)), units.Celsius(between(r, 0, 110))
		l := must[sugar.Lot](t)(sugar.NewLot(v, b, at))
		if !near(float64(l.Volume()), float64(v), closes*float64(v)) || !near(float64(l.Brix()), float64(b), closes*85) || l.Temperature() != at {
			t.Errorf("%v of %v at %v became %v of %v at %v", v, b, at, l.Volume(), l.Brix(), l.Temperature())
		}
		if sum := l.Sugar() + l.Water(); !near(float64(sum), float64(l.Mass()), closes*float64(l.Mass())) {
			t.Errorf("sugar and water of %v: %v of %v", b, sum, l.Mass())
		}
		u := units.Celsius(between(r, 0, 110))
		warm := must[sugar.Lot](t)(l.At(u))
		conserved(t, []sugar.Lot{l}, []sugar.Lot{warm})
		rho := must[units.Density](t)(density.Solution(b, u))
		moved := must[units.Volume](t)(l.VolumeAt(u))
		if want := l.Mass().Volume(rho); warm.Temperature() != u || !near(float64(moved), float64(want), closes*float64(want)) {
			t.Errorf("%v of %v from %v at %v fills %v, want %v", v, b, at, u, moved, want)
		}
		if air := float64(l.WeightInAir() / l.Mass()); !(air < 0.9994 && air > 0.9988) {
			t.Errorf("%v weighs %v of its mass in air", b, air)
		}
	}
}

func TestLotAtLimits(t *testing.T) {
	full := must[sugar.Lot](t)(sugar.NewLot(units.Liter, 85, units.Celsius(20)))
	for _, l := range []sugar.Lot{full, {}} {
		for _, c := range []float64{0, 60, 110} {
			if _, err := l.VolumeAt(units.Celsius(c)); err != nil {
				t.Errorf("at %v C: %v", c, err)
			}
		}
		for _, c := range append([]float64{-0.001, 110.001}, notNumbers...) {
			var re *units.RangeError
			if v, err := l.VolumeAt(units.Celsius(c)); !math.IsNaN(float64(v)) || !errors.As(err, &re) || re.Func != "sugar.Lot.VolumeAt" {
				t.Errorf("VolumeAt %v C: %v, %v", c, v, err)
			}
			if moved, err := l.At(units.Celsius(c)); !moved.Empty() || !errors.As(err, &re) || re.Func != "sugar.Lot.At" {
				t.Errorf("At %v C: %v, %v", c, moved, err)
			}
		}
	}
}
