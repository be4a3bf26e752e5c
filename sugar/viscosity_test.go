package sugar_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestViscosityLimits(t *testing.T) {
	limittest.Edges(t, "sugar.Viscosity", "sugar content", 0, 85, 66, func(x float64) (float64, error) {
		v, err := sugar.Viscosity(units.Brix(x), units.Celsius(20))
		return float64(v), err
	})
	limittest.Edges(t, "sugar.Viscosity", "temperature", 0, 110, 20, func(x float64) (float64, error) {
		v, err := sugar.Viscosity(66, units.Celsius(x))
		return float64(v), err
	})
}

func TestViscosityGrowsWithSugarAndFallsWithHeat(t *testing.T) {
	for c := 0.0; c <= 110; c += 10 {
		last := 0.0
		for b := 0.0; b <= 85; b++ {
			v, err := sugar.Viscosity(units.Brix(b), units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			if float64(v) <= last {
				t.Fatalf("%v at %v Brix and %v C is not above %v Pa s", v, b, c, last)
			}
			last = float64(v)
		}
	}
	for b := 0.0; b <= 85; b += 5 {
		last := math.Inf(1)
		for c := 0.0; c <= 110; c++ {
			v, err := sugar.Viscosity(units.Brix(b), units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			if float64(v) >= last {
				t.Fatalf("%v at %v Brix and %v C is not below %v Pa s", v, b, c, last)
			}
			last = float64(v)
		}
	}
}

// The doc says how far the formula misses water at 20 C, 1.002 mPa s (IAPWS
// R12-08, from memory).
func TestViscosityOfWater(t *testing.T) {
	v, err := sugar.Viscosity(0, units.Celsius(20))
	if err != nil || !within(v.MillipascalSeconds(), 0.966, 0.0005) {
		t.Errorf("%v, %v, documented 0.966 mPa s", v, err)
	}
}

func BenchmarkViscosity(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(80)
	for b.Loop() {
		if _, err := sugar.Viscosity(66, t); err != nil {
			b.Fatal(err)
		}
	}
}
