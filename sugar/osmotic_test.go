package sugar_test

import (
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestOsmoticLimits(t *testing.T) {
	limittest.Edges(t, "sugar.OsmoticPressure", "sugar content", 0, 70, 8, func(x float64) (float64, error) {
		p, err := sugar.OsmoticPressure(units.Brix(x), units.Celsius(10))
		return p.Bars(), err
	})
	limittest.Edges(t, "sugar.OsmoticPressure", "temperature", 0, 110, 10, func(x float64) (float64, error) {
		p, err := sugar.OsmoticPressure(8, units.Celsius(x))
		return p.Bars(), err
	})
	limittest.Edges(t, "sugar.BrixFromOsmoticPressure", "temperature", 0, 110, 10, func(x float64) (float64, error) {
		b, err := sugar.BrixFromOsmoticPressure(30*units.Bar, units.Celsius(x))
		return float64(b), err
	})
	for _, c := range []float64{0, 20, 110} {
		high, err := sugar.OsmoticPressure(70, units.Celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		limittest.Edges(t, "sugar.BrixFromOsmoticPressure", "osmotic pressure", 0, high.Bars(), 30, func(x float64) (float64, error) {
			b, err := sugar.BrixFromOsmoticPressure(units.Bars(x), units.Celsius(c))
			return float64(b), err
		})
	}
}

func TestOsmoticRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 86))
	for range 2000 {
		b := units.Brix(70 * rng.Float64())
		at := units.Celsius(110 * rng.Float64())
		p, err := sugar.OsmoticPressure(b, at)
		if err != nil {
			t.Fatal(err)
		}
		back, err := sugar.BrixFromOsmoticPressure(p, at)
		if err != nil || !within(float64(back), float64(b), 1e-10) {
			t.Fatalf("%v at %v presses with %v and back %v, %v", b, at, p, back, err)
		}
	}
}

func TestOsmoticPressureGrows(t *testing.T) {
	last := -1.0
	for b := 0.0; b <= 70; b += 0.5 {
		p, err := sugar.OsmoticPressure(units.Brix(b), units.Celsius(10))
		if err != nil {
			t.Fatal(err)
		}
		if p.Pascals() <= last {
			t.Fatalf("the pressure %v of %v Brix is not above %v Pa", p, b, last)
		}
		last = p.Pascals()
	}
}

func FuzzBrixFromOsmoticPressure(f *testing.F) {
	f.Add(18.9, 12.8)
	f.Add(0.0, 0.0)
	f.Add(-1.0, 200.0)
	f.Fuzz(func(t *testing.T, bar, c float64) {
		b, err := sugar.BrixFromOsmoticPressure(units.Bars(bar), units.Celsius(c))
		if err != nil {
			if b == b {
				t.Errorf("%v beside %v", b, err)
			}
			return
		}
		back, err := sugar.OsmoticPressure(b, units.Celsius(c))
		if err != nil || !within(back.Bars(), bar, 1e-9) {
			t.Errorf("%v bar at %v C: %v and back %v, %v", bar, c, b, back, err)
		}
	})
}

func BenchmarkOsmoticPressure(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(10)
	for b.Loop() {
		if _, err := sugar.OsmoticPressure(8, t); err != nil {
			b.Fatal(err)
		}
	}
}
