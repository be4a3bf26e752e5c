package sugar_test

import (
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestHeatLimits(t *testing.T) {
	for fn, f := range map[string]func(units.Brix, units.Temperature) (float64, error){
		"sugar.SpecificHeat": func(b units.Brix, at units.Temperature) (float64, error) {
			c, err := sugar.SpecificHeat(b, at)
			return float64(c), err
		},
		"sugar.Enthalpy": func(b units.Brix, at units.Temperature) (float64, error) {
			h, err := sugar.Enthalpy(b, at)
			return float64(h), err
		},
	} {
		limittest.Edges(t, fn, "sugar content", 0, 85, 2, func(x float64) (float64, error) { return f(units.Brix(x), units.Celsius(60)) })
		limittest.Edges(t, fn, "temperature", 0, 120, 60, func(x float64) (float64, error) { return f(66, units.Celsius(x)) })
	}
	limittest.Edges(t, "sugar.TemperatureFromEnthalpy", "sugar content", 0, 85, 2, func(x float64) (float64, error) {
		at, err := sugar.TemperatureFromEnthalpy(units.Brix(x), 50*units.KilojoulePerKilogram)
		return at.Celsius(), err
	})
	for _, b := range []units.Brix{0, 66, 85} {
		high, err := sugar.Enthalpy(b, units.Celsius(120))
		if err != nil {
			t.Fatal(err)
		}
		limittest.Edges(t, "sugar.TemperatureFromEnthalpy", "enthalpy", 0, high.KilojoulesPerKilogram(), 50, func(x float64) (float64, error) {
			at, err := sugar.TemperatureFromEnthalpy(b, units.KilojoulesPerKilogram(x))
			return at.Celsius(), err
		})
	}
}

func TestEnthalpyRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 86))
	for range 2000 {
		b := units.Brix(85 * rng.Float64())
		c := 120 * rng.Float64()
		h, err := sugar.Enthalpy(b, units.Celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		back, err := sugar.TemperatureFromEnthalpy(b, h)
		if err != nil || !within(back.Celsius(), c, 1e-10) {
			t.Fatalf("%v at %v C holds %v and back %v, %v", b, c, h, back, err)
		}
	}
}

// The slope of the enthalpy is the specific heat; the enthalpy is a parabola, of
// which a central difference is exact.
func TestEnthalpyIsTheIntegral(t *testing.T) {
	for _, b := range []units.Brix{0, 2, 30, 66, 85} {
		for _, c := range []float64{5, 40, 104, 115} {
			low, err := sugar.Enthalpy(b, units.Celsius(c-2))
			if err != nil {
				t.Fatal(err)
			}
			high, err := sugar.Enthalpy(b, units.Celsius(c+2))
			if err != nil {
				t.Fatal(err)
			}
			cp, err := sugar.SpecificHeat(b, units.Celsius(c))
			if err != nil || !within(float64(high-low)/4, float64(cp), 1e-8) {
				t.Errorf("%v at %v C: slope %v, specific heat %v, %v", b, c, float64(high-low)/4, cp, err)
			}
		}
	}
}

func BenchmarkSpecificHeat(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(60)
	for b.Loop() {
		if _, err := sugar.SpecificHeat(2, t); err != nil {
			b.Fatal(err)
		}
	}
}
