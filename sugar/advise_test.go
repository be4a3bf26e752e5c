package sugar_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By hand: 66 + 0.36 = 66.36 and 68.9 - 0.36 = 68.54 are the ends of what is
// clearly inside the rule; 65.64 and 69.26 those of what is clearly outside; and
// 66.54 and 67.26 of what cannot be told from 66.9.
func TestAdvise(t *testing.T) {
	us := must[sugar.Standard](t)(sugar.UnitedStates.Standard())
	vermont := must[sugar.Standard](t)(sugar.Vermont.Standard())
	ontario := must[sugar.Standard](t)(sugar.Ontario.Standard())
	for _, tt := range []struct {
		rule             sugar.Standard
		measured, target units.Brix
		want             sugar.Remedy
		crystals         bool
	}{
		{us, 67.0, 0, sugar.Leave, false},
		{us, 67.0, 66.9, sugar.Leave, false},
		{us, 65.63, 0, sugar.BoilOn, false},
		{us, 65.65, 0, sugar.ReadAgain, false},
		{us, 66.35, 0, sugar.ReadAgain, false},
		{us, 66.37, 0, sugar.Leave, false},
		{us, 68.53, 0, sugar.Leave, true},
		{us, 68.55, 0, sugar.ReadAgain, true},
		{us, 69.25, 0, sugar.ReadAgain, true},
		{us, 69.27, 0, sugar.ThinDown, true},
		{us, 67.99, 0, sugar.Leave, false},
		{us, 68, 0, sugar.Leave, true},
		// A target of one's own parts what the rule leaves.
		{us, 66.53, 66.9, sugar.BoilOn, false},
		{us, 66.55, 66.9, sugar.Leave, false},
		{us, 67.25, 66.9, sugar.Leave, false},
		{us, 67.27, 66.9, sugar.ThinDown, false},
		{us, 66.1, 66.9, sugar.BoilOn, false},
		{us, 66.1, 66, sugar.ReadAgain, false},
		{us, 68.8, 68.9, sugar.ReadAgain, true},
		// At the least that a rule allows, no reading of 66.9 is clear.
		{vermont, 66.9, 0, sugar.ReadAgain, false},
		{vermont, 67.3, 0, sugar.Leave, false},
		// A rule without an upper limit leaves what grows crystals.
		{ontario, 75, 0, sugar.Leave, true},
		{ontario, 75, 67, sugar.ThinDown, true},
	} {
		got, err := tt.rule.Advise(tt.measured, 0.36, tt.target)
		if err != nil || got.Do != tt.want || got.Crystals != tt.crystals {
			t.Errorf("%s: %v to %v: %+v, %v; want %v, crystals %v", tt.rule.Place, tt.measured, tt.target, got, err, tt.want, tt.crystals)
		}
		if v, err := tt.rule.Judge(tt.measured, 0.36); err != nil || v != got.Verdict {
			t.Errorf("%s: %v: verdict %v, judged %v, %v", tt.rule.Place, tt.measured, got.Verdict, v, err)
		}
	}
}

func TestAdviseLimits(t *testing.T) {
	us := must[sugar.Standard](t)(sugar.UnitedStates.Standard())
	for _, x := range append([]float64{-0.001, 85.001}, notNumbers...) {
		if a, err := us.Advise(units.Brix(x), 0.2, 0); !errors.Is(err, units.ErrRange) || a != (sugar.Advice{}) {
			t.Errorf("measured %v: %+v, %v", x, a, err)
		}
	}
	for _, x := range append([]float64{0, 0.009, 10.001}, notNumbers...) {
		if a, err := us.Advise(67, units.Brix(x), 0); !errors.Is(err, units.ErrRange) || a != (sugar.Advice{}) {
			t.Errorf("uncertainty %v: %+v, %v", x, a, err)
		}
	}
	for _, x := range append([]float64{65.999, 68.901, -66}, notNumbers...) {
		want := sugar.ErrInfeasible
		if x != x { // asks for the range
			want = units.ErrRange
		}
		if a, err := us.Advise(67, 0.2, units.Brix(x)); !errors.Is(err, want) || a != (sugar.Advice{}) {
			t.Errorf("target %v: %+v, %v", x, a, err)
		}
	}
	for _, x := range []units.Brix{66, 68.9} {
		if _, err := us.Advise(67, 0.2, x); err != nil {
			t.Errorf("target %v: %v", x, err)
		}
	}
	if s := sugar.Remedy(9).String(); s != "Remedy(9)" {
		t.Errorf("an unknown remedy prints as %q", s)
	}
}

// What may be right is not mended, however unsure the reading: by the ends of
// its span alone, a hair apart.
func TestAdviseNeverMendsWhatMayBeRight(t *testing.T) {
	us := must[sugar.Standard](t)(sugar.UnitedStates.Standard())
	const hair = 1e-6
	for i := range 1200 {
		measured := units.Brix(60 + float64(i)/100)
		for _, u := range []units.Brix{0.1, 0.2, 0.36, 1, 2} {
			a, err := us.Advise(measured, u, 0)
			if err != nil {
				t.Fatal(err)
			}
			thin, thick := measured+u < 66+hair, measured-u > 68.9-hair
			if a.Do == sugar.BoilOn && !thin || a.Do == sugar.ThinDown && !thick {
				t.Errorf("%v within %v: %v", measured, u, a.Do)
			}
		}
	}
}

// No rule in force allows thinner syrup than what is said to keep, and some allow
// as thin: 66 Brix (USDA 2015, s. 52.5962).
func TestKeepsFromTheLeastOfRules(t *testing.T) {
	least := units.Brix(100)
	for j := sugar.UnitedStates; j <= sugar.NewHampshire; j++ {
		least = min(least, must[sugar.Standard](t)(j.Standard()).Min)
	}
	if least != sugar.KeepsFrom || sugar.KeepsFrom != 66 {
		t.Errorf("kept from %v, allowed from %v", sugar.KeepsFrom, least)
	}
}
