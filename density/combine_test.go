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

// By hand, three of them: weights 25, 100 and 100; the mean is 14992.5/225, its
// uncertainty 2/15, and chi-squared 25 (4/15)^2 + 100 (2/15)^2 + 100 (1/15)^2 = 4,
// under 5.991 of two degrees of freedom.
func TestCombineThree(t *testing.T) {
	a, b, c := density.Measurement{Brix: 66.9, Uncertainty: 0.4}, density.Measurement{Brix: 66.5, Uncertainty: 0.2}, density.Measurement{Brix: 66.7, Uncertainty: 0.2}
	got, err := density.Combine(a, b, c)
	if err != nil || !(math.Abs(float64(got.Brix)-14992.5/225) <= 1e-12) || !(math.Abs(float64(got.Uncertainty)-2.0/15) <= 1e-12) ||
		!(math.Abs(got.ChiSquared-4) <= 1e-9) || got.Free != 2 {
		t.Errorf("%+v, %v", got, err)
	}
	one, err := density.Combine(a)
	if err != nil || !(math.Abs(float64(one.Brix-a.Brix)) <= 1e-12) || !(math.Abs(float64(one.Uncertainty-a.Uncertainty)) <= 1e-12) || one.Free != 0 {
		t.Errorf("one alone: %+v, %v", one, err)
	}
	// Two that agree do not hide a third that is a Brix off: weights 100, the mean
	// 1/3 off, chi-squared 100 (1/9 + 1/9 + 4/9) = 66.7.
	c.Brix, a = b.Brix+1, b
	var apart *density.DisagreeError
	if _, err := density.Combine(a, b, c); !errors.As(err, &apart) || apart.Free != 2 || !(math.Abs(apart.ChiSquared-200.0/3) <= 1e-9) ||
		math.Abs(float64(apart.A-b.Brix)) > 0 || math.Abs(float64(apart.B-c.Brix)) > 0 {
		t.Errorf("%+v", apart)
	}
	for _, n := range []int{0, 1001} {
		var e *units.RangeError
		if _, err := density.Combine(make([]density.Measurement, n)...); !errors.As(err, &e) || e.Arg != "measurements" {
			t.Errorf("%d of them: %v", n, err)
		}
	}
	var e *units.RangeError
	c.Uncertainty = 0
	if _, err := density.Combine(a, b, c); !errors.As(err, &e) || e.Arg != "measurements[2].Uncertainty" {
		t.Errorf("a third without uncertainty: %v", err)
	}
	if n := testing.AllocsPerRun(20, func() {
		if _, err := density.Combine(a, b, b); err != nil {
			t.Error(err)
		}
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}

// Chi-squared passes 3.841, 5.991, 7.815 and 9.488 in 5 of 100 cases (tables of
// statistics, from memory): honest instruments, two to five, are refused as often.
func TestDisagreeRateOfMany(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 4))
	const n = 20000
	for count := 2; count <= 5; count++ {
		refused := 0
		for range n {
			all := make([]density.Measurement, count)
			for i := range all {
				u := bx(0.1 + 0.4*rng.Float64())
				all[i] = density.Measurement{Brix: 66.9 + u/2*bx(rng.NormFloat64()), Uncertainty: u}
			}
			_, err := density.Combine(all...)
			if errors.Is(err, density.ErrDisagree) {
				refused++
			} else if err != nil {
				t.Fatal(err)
			}
		}
		// Five standard deviations of a count of 1000.
		if rate := float64(refused) / n; !(math.Abs(rate-0.05) <= 0.008) {
			t.Errorf("%d instruments: %v of honest sets are refused", count, rate)
		}
	}
	for free, most := range map[int]float64{1: 3.841, 2: 5.991, 3: 7.815, 4: 9.488} {
		for _, chi := range []float64{most - 0.001, most + 0.001} {
			// One lies d beside all others: chi-squared is d^2 free/(free+1).
			all := make([]density.Measurement, free+1)
			for i := range all {
				all[i] = density.Measurement{Brix: 60, Uncertainty: 2}
			}
			all[free].Brix += bx(math.Sqrt(chi * float64(free+1) / float64(free)))
			if _, err := density.Combine(all...); errors.Is(err, density.ErrDisagree) != (chi > most) {
				t.Errorf("chi-squared %v of %d: %v", chi, free, err)
			}
		}
	}
}
