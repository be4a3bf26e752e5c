package boil_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestWaterLimits(t *testing.T) {
	low, err := boil.PressureFromWater(units.Celsius(0))
	if err != nil {
		t.Fatal(err)
	}
	// The least pressure of the source: 611.213 Pa at 273.15 K (R7-97, eq. 31, from memory).
	if !near(low.Pascals(), 611.213, 0.0005) {
		t.Errorf("at 0 C the vapor has %v, want 611.213 Pa", low)
	}
	limittest.Edges(t, "boil.Water", "pressure", low.Kilopascals(), 3000, 100, func(x float64) (float64, error) {
		v, err := boil.Water(units.Kilopascals(x))
		return v.Celsius(), err
	})
	high, err := boil.Water(units.Kilopascals(3000))
	if err != nil {
		t.Fatal(err)
	}
	if !near(high.Celsius(), 233.86, 0.005) {
		t.Errorf("the range ends at %v, documented 233.86 C", high)
	}
	limittest.Edges(t, "boil.PressureFromWater", "boiling point of water", 0, high.Celsius(), 100, func(x float64) (float64, error) {
		v, err := boil.PressureFromWater(units.Celsius(x))
		return v.Pascals(), err
	})
}

func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

func TestWaterRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 97))
	for range 2000 {
		kPa := 0.6113 * math.Pow(3000/0.6113, rng.Float64())
		at, err := boil.Water(units.Kilopascals(kPa))
		if err != nil {
			t.Fatal(err)
		}
		back, err := boil.PressureFromWater(at)
		if err != nil || !near(back.Kilopascals(), kPa, 1e-10*kPa) {
			t.Fatalf("%v kPa boils at %v, which gives %v kPa, %v", kPa, at, back.Kilopascals(), err)
		}
	}
	for _, kPa := range []float64{0.611213, 3000} {
		at, err := boil.Water(units.Kilopascals(kPa))
		if err != nil {
			t.Fatal(err)
		}
		p, err := boil.PressureFromWater(at)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := boil.Water(p); err != nil {
			t.Errorf("the end of the range does not survive the way there and back: %v", err)
		}
	}
}

func TestWaterRises(t *testing.T) {
	last := math.Inf(-1)
	for kPa := 0.6113; kPa <= 3000; kPa *= 1.001 {
		at, err := boil.Water(units.Kilopascals(kPa))
		if err != nil {
			t.Fatal(err)
		}
		if at.Celsius() <= last {
			t.Fatalf("at %v kPa the boiling point %v is not above %v C", kPa, at, last)
		}
		last = at.Celsius()
	}
}

func FuzzPressureFromWater(f *testing.F) {
	for _, c := range []float64{99.974, 98.28, 6.97, 233.86, 0, -0.1, 400, math.Inf(1), math.NaN()} {
		f.Add(c)
	}
	f.Fuzz(func(t *testing.T, c float64) {
		p, err := boil.PressureFromWater(units.Celsius(c))
		if err != nil {
			limittest.Refuses(t, "boil.PressureFromWater", "boiling point of water", p.Pascals(), err)
			return
		}
		back, err := boil.Water(p)
		if err != nil || !near(back.Celsius(), c, 1e-9) {
			t.Errorf("%v C gives %v and back %v, %v", c, p, back, err)
		}
	})
}

func BenchmarkWater(b *testing.B) {
	b.ReportAllocs()
	p := units.Atmosphere
	for b.Loop() {
		if _, err := boil.Water(p); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPressureFromWater(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(98)
	for b.Loop() {
		if _, err := boil.PressureFromWater(t); err != nil {
			b.Fatal(err)
		}
	}
}
