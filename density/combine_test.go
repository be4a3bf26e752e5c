package density_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func TestCombine(t *testing.T) {
	// By hand: variances 0.04 and 0.01, weights 1 to 4; chi-squared 0.16/0.05.
	a, b := density.Measurement{Brix: 66.9, Uncertainty: 0.4}, density.Measurement{Brix: 66.5, Uncertainty: 0.2}
	got, err := density.Combine(a, b)
	if err != nil || !(math.Abs(float64(got.Brix)-66.58) <= 1e-12) || !(math.Abs(float64(got.Uncertainty)-2*math.Sqrt(0.008)) <= 1e-12) ||
		!(math.Abs(got.ChiSquared-3.2) <= 1e-9) {
		t.Errorf("%+v, %v", got, err)
	}
	swapped, err := density.Combine(b, a)
	if err != nil || !(math.Abs(float64(swapped.Brix-got.Brix)) <= 1e-12) {
		t.Errorf("the other way round: %+v, %v", swapped, err)
	}

	// A full Brix apart: 1 over 0.05 is 20, and there is no mean.
	b.Brix = 65.9
	refused := func(a, b density.Measurement, chi float64) {
		t.Helper()
		got, err := density.Combine(a, b)
		var apart *density.DisagreeError
		if !errors.As(err, &apart) || !errors.Is(err, density.ErrDisagree) || errors.Is(err, units.ErrRange) || got != (density.Combination{}) {
			t.Fatalf("%+v, %v", got, err)
		}
		if !(math.Abs(apart.ChiSquared-chi) <= 1e-9) || math.Abs(float64(apart.A-a.Brix)) > 0 || math.Abs(float64(apart.B-b.Brix)) > 0 {
			t.Errorf("%+v, want chi-squared %v of %v and %v", apart, chi, a.Brix, b.Brix)
		}
	}
	refused(a, b, 20)
	refused(b, a, 20)

	// Chi-squared of one degree of freedom passes 3.84 in 5 of 100 cases.
	for _, chi := range []float64{3.83, 3.85} {
		x := density.Measurement{Brix: 60, Uncertainty: 2}
		y := density.Measurement{Brix: 60 + bx(math.Sqrt(2*chi)), Uncertainty: 2}
		if chi > 3.84 {
			refused(x, y, chi)
		} else if got, err := density.Combine(x, y); err != nil || !(math.Abs(got.ChiSquared-chi) <= 1e-9) {
			t.Errorf("chi-squared %v: %+v, %v", chi, got, err)
		}
	}

	for _, u := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		b.Uncertainty = bx(u)
		if got, err := density.Combine(a, b); err == nil || got != (density.Combination{}) {
			t.Errorf("uncertainty %v is accepted: %+v", u, got)
		}
	}
	if got, err := density.Combine(a, density.Measurement{Brix: bx(math.NaN()), Uncertainty: 1}); err == nil || got != (density.Combination{}) {
		t.Errorf("a strength of NaN is accepted: %+v", got)
	}
}

// A caveat of either is a caveat of both, and of none but its own kind.
func TestCombineCaveats(t *testing.T) {
	for _, c := range []density.Caveats{{Extrapolated: true}, {Supersaturated: true}, {DensityMaximum: true}} {
		with := density.Measurement{Brix: 66, Uncertainty: 0.2, Caveats: c}
		without := density.Measurement{Brix: 66, Uncertainty: 0.2}
		for _, pair := range [][2]density.Measurement{{with, without}, {without, with}, {with, with}} {
			if got, err := density.Combine(pair[0], pair[1]); err != nil || got.Caveats != c {
				t.Errorf("%+v: %+v, %v", c, got.Caveats, err)
			}
		}
	}
}

// 5 of 100 pairs of honest instruments are refused, as documented.
func TestDisagreeRate(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 77))
	const n = 20000
	warned := 0
	for range n {
		a := density.Measurement{Brix: 66.9 + bx(0.15*rng.NormFloat64()), Uncertainty: 0.3}
		b := density.Measurement{Brix: 66.9 + bx(0.05*rng.NormFloat64()), Uncertainty: 0.1}
		_, err := density.Combine(a, b)
		if errors.Is(err, density.ErrDisagree) {
			warned++
		} else if err != nil {
			t.Fatal(err)
		}
	}
	// Five standard deviations of a count of 1000.
	if rate := float64(warned) / n; !(math.Abs(rate-0.05) <= 0.008) {
		t.Errorf("%v of honest pairs are refused", rate)
	}
}
