package sugar_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestJudge(t *testing.T) {
	us := must[sugar.Standard](t)(sugar.UnitedStates.Standard())
	ontario := must[sugar.Standard](t)(sugar.Ontario.Standard())
	for _, tt := range []struct {
		rule                  sugar.Standard
		measured, uncertainty units.Brix
		want                  sugar.Verdict
	}{
		{us, 66.9, 0.2, sugar.Inside},
		{us, 66.1, 0.2, sugar.TooCloseToCall},
		{us, 65.9, 0.2, sugar.TooCloseToCall},
		{us, 65.7, 0.2, sugar.TooThin},
		{us, 68.8, 0.2, sugar.TooCloseToCall},
		{us, 69.2, 0.2, sugar.TooDense},
		// Ends of the span on the limits: kept below Max and above Min.
		{us, 66.2, 0.2, sugar.Inside},
		{us, 68.7, 0.2, sugar.Inside},
		{us, 65.8, 0.2, sugar.TooCloseToCall},
		{us, 69.1, 0.2, sugar.TooCloseToCall},
		// A span wider than the rule.
		{us, 67.5, 5, sugar.TooCloseToCall},
		{ontario, 80, 0.2, sugar.Inside},
		{ontario, 85, 10, sugar.Inside},
		{ontario, 0, 0.01, sugar.TooThin},
	} {
		if got, err := tt.rule.Judge(tt.measured, tt.uncertainty); err != nil || got != tt.want {
			t.Errorf("%s: %v within %v is %v, %v; want %v", tt.rule.Place, tt.measured, tt.uncertainty, got, err, tt.want)
		}
	}
}

func TestJudgeLimits(t *testing.T) {
	us := must[sugar.Standard](t)(sugar.UnitedStates.Standard())
	var errs []error
	keep := func(v sugar.Verdict, err error) {
		if v != sugar.TooCloseToCall {
			t.Errorf("verdict %v with %v", v, err)
		}
		errs = append(errs, err)
	}
	for _, x := range append([]float64{-0.001, 85.001}, notNumbers...) {
		keep(us.Judge(units.Brix(x), 0.2))
		keep(sugar.Standard{Min: 66, Max: units.Brix(x)}.Judge(66, 0.2))
	}
	for _, x := range append([]float64{-0.2, 0, 0.009, 10.001}, notNumbers...) {
		keep(us.Judge(66, units.Brix(x)))
	}
	for _, x := range append([]float64{0, 0.999, 85.001}, notNumbers...) {
		keep(sugar.Standard{Min: units.Brix(x)}.Judge(66, 0.2))
	}
	for i, err := range errs {
		if !errors.Is(err, units.ErrRange) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	for _, rule := range []sugar.Standard{{Min: 1}, {Min: 85}, {Min: 85, Max: 85}} {
		for _, u := range []units.Brix{0.01, 10} {
			if _, err := rule.Judge(66, u); err != nil {
				t.Errorf("%v to %v: %v", rule.Min, rule.Max, err)
			}
		}
	}
	if v, err := (sugar.Standard{Min: 66, Max: 65}).Judge(66, 0.2); v != sugar.TooCloseToCall || !errors.Is(err, sugar.ErrInfeasible) {
		t.Errorf("a rule turned round: %v, %v", v, err)
	}
}

func TestStandards(t *testing.T) {
	for j := sugar.UnitedStates; j <= sugar.UnitedStates1967; j++ {
		s, err := j.Standard()
		if err != nil || s.Place != j.String() || s.Source == "" || !strings.HasPrefix(s.Obtained, "read") || !(s.Min >= 65) || s.Max != 0 && !(s.Max > s.Min) {
			t.Errorf("%v: %+v, %v", j, s, err)
		}
		if c := s.At.Celsius(); !math.IsNaN(c) && !(c > 15 && c <= 20.000001) {
			t.Errorf("%v measures at %v", j, s.At)
		}
	}
	for j, why := range map[sugar.Jurisdiction]string{0: "no place is given", sugar.UnitedStates1967 + 1: "Jurisdiction(9) is not listed", 255: "Jurisdiction(255) is not listed"} {
		if s, err := j.Standard(); !errors.Is(err, sugar.ErrInfeasible) || s.Place != "" || !strings.Contains(err.Error(), why) {
			t.Errorf("%v: %+v, %v", j, s, err)
		}
	}
	if s := sugar.Verdict(9).String(); s != "Verdict(9)" {
		t.Errorf("an unknown verdict prints as %q", s)
	}
}
