package sugar_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

var formulas = sugar.Solubilities()

// hottest is where a source ends, in C: the tables at their last row.
func hottest(s sugar.Solubility) float64 {
	if s >= sugar.Herzfeld {
		return 100
	}
	return 110
}

func TestSaturationLimits(t *testing.T) {
	for _, s := range formulas {
		saturation := func(x float64) (float64, error) {
			b, err := s.Saturation(units.Celsius(x))
			return float64(b), err
		}
		limittest.Edges(t, "sugar.Solubility.Saturation", "temperature", 0, hottest(s), 20, saturation)
		low, err := saturation(0)
		if err != nil {
			t.Fatal(err)
		}
		high, err := saturation(hottest(s))
		if err != nil {
			t.Fatal(err)
		}
		limittest.Edges(t, "sugar.Solubility.SaturationTemperature", "sugar content", low, high, 68, func(x float64) (float64, error) {
			at, err := s.SaturationTemperature(units.Brix(x))
			return at.Celsius(), err
		})
	}
	bad := sugar.Solubility(4)
	b, err := bad.Saturation(units.Celsius(20))
	limittest.Refuses(t, "sugar.Solubility.Saturation", "solubility formula", float64(b), err)
	at, err := bad.SaturationTemperature(68)
	limittest.Refuses(t, "sugar.Solubility.SaturationTemperature", "solubility formula", at.Celsius(), err)
}

func TestSaturationRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 86))
	for range 2000 {
		for _, s := range formulas {
			c := hottest(s) * rng.Float64()
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
		for c := 0.0; c <= hottest(s); c += 0.5 {
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

// At 20 C 66.60 Brix are saturated by Charles, 66.72 by Vavrinecz, 67.09 by
// Herzfeld and Sokolovsky; at 10 C Herzfeld has 190.5 g to 100 of water, 65.58
// percent; at 30 C 219.5 g, 68.70, and Vavrinecz 68.29. Practice has crystals above
// 68 (OMAFRA 2013), and 68 is counted with it, so that 66.9 on a cold shelf are above all, and not likely.
func TestCrystals(t *testing.T) {
	for _, tc := range []struct {
		b    units.Brix
		c    float64
		want sugar.CrystalRisk
	}{
		{66.9, 21.7, sugar.CrystalsPossible},
		{66.9, 22.4, sugar.CrystalsUnlikely},
		{66.9, 10, sugar.CrystalsPossible},
		{66.9, 2, sugar.CrystalsPossible},
		{66.59, 20, sugar.CrystalsUnlikely},
		{66.61, 20, sugar.CrystalsPossible},
		{67.99, 20, sugar.CrystalsPossible},
		{68, 20, sugar.CrystalsLikely}, // as Advise warns
		{68.1, 4, sugar.CrystalsLikely},
		{68.5, 30, sugar.CrystalsPossible},
		{68.1, 30, sugar.CrystalsUnlikely},
		{2, 4, sugar.CrystalsUnlikely},
	} {
		got, err := sugar.Crystals(tc.b, units.Celsius(tc.c))
		if err != nil || got != tc.want {
			t.Errorf("%v at %v C: %v, %v; want %v", tc.b, tc.c, got, err, tc.want)
		}
	}
}

// Practice, from room temperature down: likely above what OMAFRA prints, not at the
// edge that a producer gives; the older 65.5 is too low at room temperature.
func TestCrystalsInPractice(t *testing.T) {
	table, err := check.Load("crystals-practice")
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range table.Rows {
		b := units.Brix(r.Float("value"))
		want := map[string]sugar.CrystalRisk{
			"crystals likely above": sugar.CrystalsLikely, "edge of growing crystals": sugar.CrystalsPossible,
			"best mouth-feel": sugar.CrystalsPossible, "crystals above (old practice)": sugar.CrystalsUnlikely,
		}[r.Text("item")]
		if got, err := sugar.Crystals(b+0.01, units.Celsius(20)); err != nil || got != want || want == 0 {
			t.Errorf("%s: %v, %v, want %v", r.Name(), got, err, want)
		}
	}
}

// A jar that is just saturated by the source that saturates first has nothing to
// spare: the risk begins above. Above all sources, from 68 Brix on, it becomes likely.
func TestCrystalsJustSaturated(t *testing.T) {
	for c := range 90 {
		at := units.Celsius(float64(c))
		low, high := units.Brix(100), units.Brix(68-1e-6)
		for _, s := range formulas {
			most := must[units.Brix](t)(s.Saturation(at))
			low, high = min(low, most), max(high, most)
		}
		for _, tc := range []struct {
			b    units.Brix
			want sugar.CrystalRisk
		}{{low, sugar.CrystalsUnlikely}, {high, sugar.CrystalsPossible}} {
			next := units.Brix(math.Nextafter(float64(tc.b), 100))
			if tc.b == 68-1e-6 {
				next = 68
			}
			just := must[sugar.CrystalRisk](t)(sugar.Crystals(tc.b, at))
			above := must[sugar.CrystalRisk](t)(sugar.Crystals(next, at))
			if just != tc.want || above != tc.want+1 {
				t.Errorf("%v at %v C: %v and %v above, want %v", tc.b, c, just, above, tc.want)
			}
		}
	}
}

// 66.9 Brix are 66.9/33.1 = 2.0211 g to a gram of water; Herzfeld has 2.039 at 20 C
// and 1.905 at 10 C.
func TestSupersaturation(t *testing.T) {
	for c, want := range map[float64]float64{20: 2.0211 / 2.039, 10: 2.0211 / 1.905} {
		if got, err := sugar.Herzfeld.Supersaturation(66.9, units.Celsius(c)); err != nil || !within(got, want, 1e-4) {
			t.Errorf("%v C: %v, %v; want %v", c, got, err, want)
		}
	}
	limittest.Edges(t, "sugar.Solubility.Supersaturation", "sugar content", 0, 85, 66.9, func(x float64) (float64, error) {
		return sugar.Herzfeld.Supersaturation(units.Brix(x), units.Celsius(4))
	})
	limittest.Edges(t, "sugar.Solubility.Supersaturation", "temperature", 0, 100, 4, func(x float64) (float64, error) {
		return sugar.Herzfeld.Supersaturation(66.9, units.Celsius(x))
	})
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
	limittest.Edges(t, "sugar.Crystals", "temperature", 0, 100, 4, func(x float64) (float64, error) {
		return answer(sugar.Crystals(66.9, units.Celsius(x)))
	})
}

func TestSaturationNames(t *testing.T) {
	for want, s := range map[string]interface{ String() string }{
		"Vavrinecz": sugar.Vavrinecz, "Charles": sugar.Charles, "Herzfeld": sugar.Herzfeld, "Sokolovsky": sugar.Sokolovsky, "Solubility(7)": sugar.Solubility(7),
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
