package boil_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestLatentHeatLimits(t *testing.T) {
	limittest.Edges(t, "boil.LatentHeat", "boiling point", 0, 140, 100, func(x float64) (float64, error) {
		h, err := boil.LatentHeat(units.Celsius(x))
		return h.KilojoulesPerKilogram(), err
	})
}

// The table grants the difference of two formulations; this formulation alone
// must give its own figure to the digit.
func TestLatentHeatAtOneAtmosphere(t *testing.T) {
	water, err := boil.Water(units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	h, err := boil.LatentHeat(water)
	if err != nil || !near(h.KilojoulesPerKilogram(), 2256.67, 0.005) {
		t.Errorf("got %v, %v, want 2256.67 kJ/kg", h, err)
	}
}

func TestLatentHeatFalls(t *testing.T) {
	last := math.Inf(1)
	for c := 0.0; c <= 140; c += 0.5 {
		h, err := boil.LatentHeat(units.Celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		if float64(h) >= last {
			t.Fatalf("at %v C the latent heat %v is not below %v J/kg", c, h, last)
		}
		last = float64(h)
	}
}

func BenchmarkLatentHeat(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(99.974)
	for b.Loop() {
		if _, err := boil.LatentHeat(t); err != nil {
			b.Fatal(err)
		}
	}
}
