package sugar_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func within(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

func TestWaterActivityLimits(t *testing.T) {
	limittest.Edges(t, "sugar.WaterActivity", "sugar content", 0, 92, 66.9, func(x float64) (float64, error) {
		return sugar.WaterActivity(units.Brix(x), units.Celsius(25))
	})
	limittest.Edges(t, "sugar.WaterActivity", "temperature", -20, 140, 25, func(x float64) (float64, error) {
		return sugar.WaterActivity(66.9, units.Celsius(x))
	})
	limittest.Edges(t, "sugar.Solute.WaterActivity", "inverted share", 0, 100, 5, func(x float64) (float64, error) {
		return sugar.Solute{Inverted: units.Percents(x)}.WaterActivity(66.9, units.Celsius(25))
	})
	limittest.Edges(t, "sugar.Solute.BrixFromWaterActivity", "inverted share", 0, 100, 5, func(x float64) (float64, error) {
		b, err := sugar.Solute{Inverted: units.Percents(x)}.BrixFromWaterActivity(0.9, units.Celsius(25))
		return float64(b), err
	})
	limittest.Edges(t, "sugar.BrixFromWaterActivity", "temperature", -20, 140, 25, func(x float64) (float64, error) {
		b, err := sugar.BrixFromWaterActivity(0.9, units.Celsius(x))
		return float64(b), err
	})
	for _, c := range []float64{-20, 140} {
		at := units.Celsius(c)
		for _, s := range []sugar.Solute{{}, {Inverted: 100}} {
			least, err := s.WaterActivity(92, at)
			if err != nil {
				t.Fatal(err)
			}
			limittest.Edges(t, "sugar.Solute.BrixFromWaterActivity", "water activity", least, 1, 0.9, func(x float64) (float64, error) {
				b, err := s.BrixFromWaterActivity(x, at)
				return float64(b), err
			})
		}
	}
}

func TestWaterActivityRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 86))
	for range 3000 {
		b := units.Brix(92 * rng.Float64())
		at := units.Celsius(-20 + 160*rng.Float64())
		s := sugar.Solute{Inverted: units.Percents(100 * rng.Float64())}
		a, err := s.WaterActivity(b, at)
		if err != nil {
			t.Fatal(err)
		}
		back, err := s.BrixFromWaterActivity(a, at)
		if err != nil || !within(float64(back), float64(b), 1e-10) {
			t.Fatalf("%+v at %v: %v has %v and back %v, off by %g, %v", s, at, b, a, back, float64(back-b), err)
		}
	}
}

func TestWaterActivityFalls(t *testing.T) {
	for _, c := range []float64{-20, 0, 25, 105, 140} {
		for _, s := range []sugar.Solute{{}, {Inverted: 100}} {
			last := 1.0 + 1e-15
			for b := 0.0; b <= 92; b += 0.25 {
				a, err := s.WaterActivity(units.Brix(b), units.Celsius(c))
				if err != nil {
					t.Fatal(err)
				}
				if a >= last {
					t.Fatalf("%+v at %v C: the activity %v of %v Brix is not below %v", s, c, a, b, last)
				}
				last = a
			}
		}
	}
}

// Plain functions mean pure sucrose.
func TestPlainActivityIsSucrose(t *testing.T) {
	at := units.Celsius(25)
	plain, err := sugar.WaterActivity(66.9, at)
	if err != nil {
		t.Fatal(err)
	}
	zero, err := sugar.Solute{}.WaterActivity(66.9, at)
	if err != nil || !within(plain, zero, 1e-15) {
		t.Errorf("%v against %v, %v", plain, zero, err)
	}
	b, err := sugar.BrixFromWaterActivity(plain, at)
	if err != nil || !within(float64(b), 66.9, 1e-10) {
		t.Errorf("back %v, %v", b, err)
	}
}

// A fully inverted sugar is twice the molecules but for the water it took up:
// in thin solution it lowers the activity by 342.3/180.16 of what sucrose does.
func TestInvertedSugarCountsByTheMolecule(t *testing.T) {
	at := units.Celsius(25)
	sucrose, err := sugar.WaterActivity(0.01, at)
	if err != nil {
		t.Fatal(err)
	}
	hexose, err := sugar.Solute{Inverted: units.Whole}.WaterActivity(0.01, at)
	if err != nil {
		t.Fatal(err)
	}
	if got := (1 - hexose) / (1 - sucrose); !within(got, 342.3/180.16, 1e-4) {
		t.Errorf("the depressions are as %v to 1, want %v", got, 342.3/180.16)
	}
}

func FuzzBrixFromWaterActivity(f *testing.F) {
	f.Add(0.852, 25.0, 0.0)
	f.Add(1.0, -20.0, 100.0)
	f.Add(0.3, 140.0, 50.0)
	f.Add(math.NaN(), math.Inf(1), -1.0)
	f.Fuzz(func(t *testing.T, a, c, share float64) {
		s := sugar.Solute{Inverted: units.Percents(share)}
		b, err := s.BrixFromWaterActivity(a, units.Celsius(c))
		if err != nil {
			if !math.IsNaN(float64(b)) {
				t.Errorf("%v beside %v", b, err)
			}
			return
		}
		back, err := s.WaterActivity(b, units.Celsius(c))
		if err != nil || !within(back, a, 1e-12) {
			t.Errorf("%v at %v C, %v %%: %v and back %v, %v", a, c, share, b, back, err)
		}
	})
}

func BenchmarkWaterActivity(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(104)
	for b.Loop() {
		if _, err := sugar.WaterActivity(66.9, t); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBrixFromWaterActivity(b *testing.B) {
	b.ReportAllocs()
	t := units.Celsius(104)
	for b.Loop() {
		if _, err := sugar.BrixFromWaterActivity(0.86, t); err != nil {
			b.Fatal(err)
		}
	}
}
