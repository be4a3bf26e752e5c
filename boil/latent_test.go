package boil_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit/limittest"
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

// The equations of IAPWS SR1-86(1992) once more, with the critical point of the
// release, 647.096 K, 22.064 MPa and 322 kg/m3, its powers as they are printed,
// and the slope of the pressure by differences instead of by terms.
func TestLatentHeatByDifferences(t *testing.T) {
	series := func(terms [6]coef.Power, k float64) (sum float64) {
		for _, term := range terms {
			sum += term.C * math.Pow(1-k/647.096, float64(term.Sixths)/6)
		}
		return sum
	}
	pressure := func(k float64) float64 { return 22.064e6 * math.Exp(647.096/k*series(coef.VaporPressure(), k)) }
	for c := 0.0; c <= 140; c += 10 {
		k := c + 273.15
		const step = 0.01
		slope := (8*(pressure(k+step)-pressure(k-step)) - (pressure(k+2*step) - pressure(k-2*step))) / (12 * step)
		steam := 322 * math.Exp(series(coef.VaporDensity(), k))
		liquid := 322 * (1 + series(coef.LiquidDensity(), k))
		want := k * slope * (1/steam - 1/liquid)
		if h, err := boil.LatentHeat(units.Celsius(c)); err != nil || !near(float64(h)/want, 1, 1e-9) {
			t.Errorf("%v C: %v, %v; want %v J/kg", c, float64(h), err, want)
		}
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
