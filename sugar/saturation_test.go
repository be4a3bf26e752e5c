package sugar_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

var formulas = []sugar.Solubility{sugar.Vavrinecz, sugar.Charles}

func TestSaturationLimits(t *testing.T) {
	for _, s := range formulas {
		saturation := func(x float64) (float64, error) {
			b, err := s.Saturation(units.Celsius(x))
			return float64(b), err
		}
		limittest.Edges(t, "sugar.Solubility.Saturation", "temperature", 0, 110, 20, saturation)
		low, err := saturation(0)
		if err != nil {
			t.Fatal(err)
		}
		high, err := saturation(110)
		if err != nil {
			t.Fatal(err)
		}
		limittest.Edges(t, "sugar.Solubility.SaturationTemperature", "sugar content", low, high, 68, func(x float64) (float64, error) {
			at, err := s.SaturationTemperature(units.Brix(x))
			return at.Celsius(), err
		})
	}
	bad := sugar.Solubility(2)
	b, err := bad.Saturation(units.Celsius(20))
	limittest.Refuses(t, "sugar.Solubility.Saturation", "solubility formula", float64(b), err)
	at, err := bad.SaturationTemperature(68)
	limittest.Refuses(t, "sugar.Solubility.SaturationTemperature", "solubility formula", at.Celsius(), err)
}

func TestSaturationRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 86))
	for range 2000 {
		c := 110 * rng.Float64()
		for _, s := range formulas {
			b, err := s.Saturation(units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			back, err := s.SaturationTemperature(b)
			if err != nil || !within(back.Celsius(), c, 1e-10) {
				t.Fatalf("%v: %v C saturates at %v and back %v, off by %g, %v", s, c, b, back, back.Celsius()-c, err)
			}
		}
	}
}

func TestSaturationGrows(t *testing.T) {
	for _, s := range formulas {
		last := 0.0
		for c := 0.0; c <= 110; c += 0.5 {
			b, err := s.Saturation(units.Celsius(c))
			if err != nil {
				t.Fatal(err)
			}
			if float64(b) <= last {
				t.Fatalf("%v: %v at %v C is not above %v", s, b, c, last)
			}
			last = float64(b)
		}
	}
}

// The doc says how far the two formulas lie apart.
func TestFormulasDiffer(t *testing.T) {
	for _, tc := range []struct{ c, want float64 }{{20, 0.12}, {100, 0.53}} {
		v, err := sugar.Vavrinecz.Saturation(units.Celsius(tc.c))
		if err != nil {
			t.Fatal(err)
		}
		c, err := sugar.Charles.Saturation(units.Celsius(tc.c))
		if err != nil || !within(math.Abs(float64(v-c)), tc.want, 0.005) {
			t.Errorf("at %v C they differ by %v, documented %v, %v", tc.c, v-c, tc.want, err)
		}
	}
}

// By the published figures 66.9 Brix is saturated at 21.3 or 22.1 C, and 68 at
// 28.3 or 28.9; at 20 C 66.72 Brix is saturated by one formula, and 66.60 by the
// other. Likely begins a Brix above both.
func TestCrystals(t *testing.T) {
	for _, tc := range []struct {
		b    units.Brix
		c    float64
		want sugar.CrystalRisk
	}{
		{66.9, 21.7, sugar.CrystalsPossible},
		{66.9, 22.4, sugar.CrystalsUnlikely},
		{68, 28.6, sugar.CrystalsPossible},
		{68, 29.3, sugar.CrystalsUnlikely},
		{66.59, 20, sugar.CrystalsUnlikely},
		{66.61, 20, sugar.CrystalsPossible},
		{66.9, 20, sugar.CrystalsPossible},
		{67.71, 20, sugar.CrystalsPossible},
		{67.73, 20, sugar.CrystalsLikely},
		{2, 4, sugar.CrystalsUnlikely},
	} {
		got, err := sugar.Crystals(tc.b, units.Celsius(tc.c))
		if err != nil || got != tc.want {
			t.Errorf("%v at %v C: %v, %v; want %v", tc.b, tc.c, got, err, tc.want)
		}
	}
}

// A jar that is just saturated by the formula that saturates first has nothing to
// spare: the risk begins above. A Brix above both it becomes likely.
func TestCrystalsJustSaturated(t *testing.T) {
	for c := range 90 {
		at := units.Celsius(float64(c))
		v := must[units.Brix](t)(sugar.Vavrinecz.Saturation(at))
		h := must[units.Brix](t)(sugar.Charles.Saturation(at))
		for _, tc := range []struct {
			b    units.Brix
			want sugar.CrystalRisk
		}{{min(v, h), sugar.CrystalsUnlikely}, {max(v, h) + 1, sugar.CrystalsPossible}} {
			just := must[sugar.CrystalRisk](t)(sugar.Crystals(tc.b, at))
			above := must[sugar.CrystalRisk](t)(sugar.Crystals(units.Brix(math.Nextafter(float64(tc.b), 100)), at))
			if just != tc.want || above != tc.want+1 {
				t.Errorf("%v at %v C: %v and %v above, want %v", tc.b, c, just, above, tc.want)
			}
		}
	}
}

func TestCrystalsLimits(t *testing.T) {
	answer := func(r sugar.CrystalRisk, err error) (float64, error) {
		if err != nil {
			if r != sugar.CrystalsUnknown {
				t.Errorf("%v beside %v", r, err)
			}
			return math.NaN(), err
		}
		return float64(r), nil
	}
	limittest.Edges(t, "sugar.Crystals", "sugar content", 0, 85, 66.9, func(x float64) (float64, error) {
		return answer(sugar.Crystals(units.Brix(x), units.Celsius(4)))
	})
	limittest.Edges(t, "sugar.Crystals", "temperature", 0, 110, 4, func(x float64) (float64, error) {
		return answer(sugar.Crystals(66.9, units.Celsius(x)))
	})
}

func TestSaturationNames(t *testing.T) {
	for want, s := range map[string]interface{ String() string }{
		"Vavrinecz": sugar.Vavrinecz, "Charles": sugar.Charles, "Solubility(7)": sugar.Solubility(7),
		"unknown": sugar.CrystalsUnknown, "unlikely": sugar.CrystalsUnlikely, "possible": sugar.CrystalsPossible,
		"likely": sugar.CrystalsLikely, "CrystalRisk(9)": sugar.CrystalRisk(9),
	} {
		if got := s.String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func FuzzSaturationTemperature(f *testing.F) {
	f.Add(66.9, uint8(0))
	f.Add(68.0, uint8(1))
	f.Add(85.0, uint8(2))
	f.Add(math.NaN(), uint8(0))
	f.Fuzz(func(t *testing.T, b float64, formula uint8) {
		s := sugar.Solubility(formula)
		at, err := s.SaturationTemperature(units.Brix(b))
		if err != nil {
			if !errors.Is(err, units.ErrRange) || !math.IsNaN(at.Celsius()) {
				t.Errorf("%v beside %v", at, err)
			}
			return
		}
		back, err := s.Saturation(at)
		if err != nil || !within(float64(back), b, 1e-10) {
			t.Errorf("%v: %v Brix at %v and back %v, %v", s, b, at, back, err)
		}
	})
}

func BenchmarkSaturationTemperature(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := sugar.Vavrinecz.SaturationTemperature(66.9); err != nil {
			b.Fatal(err)
		}
	}
}
