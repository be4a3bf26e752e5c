package sugar_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestFreezingLimits(t *testing.T) {
	limittest.Edges(t, "sugar.FreezingPoint", "sugar content", 0, 60, 2, func(x float64) (float64, error) {
		at, err := sugar.FreezingPoint(units.Brix(x))
		return at.Celsius(), err
	})
	low, err := sugar.FreezingPoint(60)
	if err != nil {
		t.Fatal(err)
	}
	if !within(low.Celsius(), -11.9, 0.05) {
		t.Errorf("60 Brix freezes at %v, documented -11.9 C", low)
	}
	limittest.Edges(t, "sugar.BrixFromFreezingPoint", "freezing point", low.Celsius(), 0, -1, func(x float64) (float64, error) {
		b, err := sugar.BrixFromFreezingPoint(units.Celsius(x))
		return float64(b), err
	})
}

func TestFreezingRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 86))
	for range 2000 {
		b := units.Brix(60 * rng.Float64())
		at, err := sugar.FreezingPoint(b)
		if err != nil {
			t.Fatal(err)
		}
		back, err := sugar.BrixFromFreezingPoint(at)
		// 273 K is held to 6e-14 K, and thin sap falls by 0.055 K a Brix.
		if err != nil || !within(float64(back), float64(b), 1e-10) {
			t.Fatalf("%v freezes at %v and back %v, off by %g, %v", b, at, back, float64(back-b), err)
		}
	}
}

func TestFreezingPointFalls(t *testing.T) {
	last := math.Inf(1)
	for b := 0.0; b <= 60; b += 0.25 {
		at, err := sugar.FreezingPoint(units.Brix(b))
		if err != nil {
			t.Fatal(err)
		}
		if at.Celsius() >= last || at.Celsius() > 1e-12 {
			t.Fatalf("%v Brix freezes at %v, not below %v C", b, at, last)
		}
		last = at.Celsius()
	}
}

func FuzzBrixFromFreezingPoint(f *testing.F) {
	f.Add(-0.63)
	f.Add(0.0)
	f.Add(-12.1)
	f.Add(math.Inf(-1))
	f.Fuzz(func(t *testing.T, c float64) {
		b, err := sugar.BrixFromFreezingPoint(units.Celsius(c))
		if err != nil {
			limittest.Refuses(t, "sugar.BrixFromFreezingPoint", "freezing point", float64(b), err)
			return
		}
		back, err := sugar.FreezingPoint(b)
		if err != nil || !within(back.Celsius(), c, 1e-10) {
			t.Errorf("%v C: %v and back %v, %v", c, b, back, err)
		}
	})
}

func BenchmarkFreezingPoint(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := sugar.FreezingPoint(8); err != nil {
			b.Fatal(err)
		}
	}
}
