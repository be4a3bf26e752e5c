package tapping_test

import (
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func plain[Q ~float64](x Q, err error) (float64, error) { return float64(x), err }

// A greater tree grows more wood, and never bears fewer taps.
func TestMonotone(t *testing.T) {
	inch := func(x float64) units.Length { return units.Length(x) * units.Inch }
	for _, tc := range []struct {
		name      string
		up        bool
		low, high float64
		f         func(x float64) (float64, error)
	}{
		{"diameter against girth", true, 0, 600, func(x float64) (float64, error) { return plain(tapping.DiameterFromGirth(inch(x))) }},
		{"basal area against growth", true, 0, 1, func(x float64) (float64, error) { return plain(tapping.BasalAreaGrowth(inch(20), inch(x))) }},
		{"basal area against diameter", true, 1, 100, func(x float64) (float64, error) { return plain(tapping.BasalAreaGrowth(inch(x), inch(0.1))) }},
		{"growth against diameter", false, 1, 100, func(x float64) (float64, error) { return plain(tapping.RadialGrowth(inch(x), units.SquareInch)) }},
	} {
		t.Run(tc.name, func(t *testing.T) { limittest.Rises(t, tc.name, tc.up, tc.low, tc.high, tc.f) })
	}
	for _, g := range tapping.Guidelines() {
		last := 0
		for d := 0.0; d < 60; d += 0.05 {
			n, err := g.Taps(inch(d))
			if err == nil && n < last {
				t.Errorf("%s: %d taps at %v in, %d before", g.ID(), n, d, last)
			}
			last = max(n, last)
		}
	}
}

// Every trunk of a stand is counted once: by taps, by class, and in pieces.
func TestStandIsWhole(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for range 100 {
		trees := make([]tapping.Tree, 1+rng.IntN(60))
		trunks := 0
		for i := range trees {
			for range 1 + rng.IntN(3) {
				d := units.Length(4+36*rng.Float64()) * units.Inch
				trees[i].Stems = append(trees[i].Stems, must[tapping.Trunk](t)(tapping.NewTrunk(d, tapping.SugarMaple, tapping.Healthy)))
				trunks++
			}
		}
		count := func(trees []tapping.Tree) tapping.StandCount {
			return must[tapping.StandCount](t)(tapping.CountStand(trees, tapping.DefaultGuideline(), 2*units.Inch))
		}
		all := count(trees)
		byTaps, taps, byClass, classTaps := 0, 0, 0, 0
		for n, c := range all.ByTaps {
			byTaps, taps = byTaps+c, taps+n*c
		}
		for _, c := range all.Classes {
			byClass, classTaps = byClass+c.Trunks, classTaps+c.Taps
		}
		if all.Trunks != trunks || byTaps != trunks || byClass != trunks || taps != all.Taps || classTaps != all.Taps {
			t.Fatalf("%d trunks: %+v", trunks, all)
		}
		cut := rng.IntN(len(trees))
		a, b := count(trees[:cut]), count(trees[cut:])
		if a.Taps+b.Taps != all.Taps || a.Trunks+b.Trunks != all.Trunks || !near(float64(a.BasalArea+b.BasalArea), float64(all.BasalArea)) {
			t.Fatalf("in two pieces %+v and %+v, whole %+v", a, b, all)
		}
	}
}
