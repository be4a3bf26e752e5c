package numeric

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// Sources: the normal distribution's 1.959964; a flat distribution holds 95 of
// 100 within 0.95 of its limit; the sum of two alike is a triangle, of which 1 -
// (1 - h/2a)^2 lies within h; JCGM 101:2008, 9.2.3 and 9.2.4 (from memory): four
// flat errors with a standard deviation of 1 each hold 95 of 100 within 3.88, and
// with one of 10 beside three of 1 within 17.0.
func TestHalf95(t *testing.T) {
	one := math.Sqrt(3)
	for _, tc := range []struct {
		name      string
		sigma     float64
		limits    []float64
		want, off float64
	}{
		{"normal", 2, nil, 2 * 1.959964, 1e-5},
		{"flat", 0, []float64{1}, 0.95, 1e-4},
		{"triangle", 0, []float64{1, 1}, 2 * (1 - math.Sqrt(0.05)), 1e-4},
		{"four alike", 0, []float64{one, one, one, one}, 3.88, 0.005},
		{"one rules", 0, []float64{10 * one, one, one, one}, 17.0, 0.05},
		{"nothing", 0, nil, 0, 0},
		// More than are told apart: nine of limit 1 have a standard deviation of sqrt 3
		// and an excess of -1.2/9, so that 1.960 + (1.960^3 - 3 x 1.960)(-1.2/9)/24 =
		// 1.951 of it hold 95 of 100 (Cornish and Fisher).
		{"nine alike", 0, []float64{1, 1, 1, 1, 1, 1, 1, 1, 1}, 1.951 * one, 0.01},
	} {
		if got := Half95(tc.sigma, tc.limits...); !(math.Abs(got-tc.want) <= tc.off) {
			t.Errorf("%s: %.5f, want %.5f", tc.name, got, tc.want)
		}
	}
}

// A draw of the same errors: of n values a share of 0.05 plus or minus four of
// its own standard deviations lies outside.
func TestHalf95Draws(t *testing.T) {
	rng := rand.New(rand.NewPCG(95, 100))
	const n = 100_000
	for range 30 {
		sigma := math.Pow(10, 2*rng.Float64()-1.5)
		limits := make([]float64, rng.IntN(5))
		for i := range limits {
			limits[i] = math.Pow(10, 2*rng.Float64()-1.5)
		}
		half, out := Half95(sigma, limits...), 0
		for range n {
			x := sigma * rng.NormFloat64()
			for _, a := range limits {
				x += a * (2*rng.Float64() - 1)
			}
			if math.Abs(x) > half {
				out++
			}
		}
		if share := float64(out) / n; math.Abs(share-0.05) > 4*math.Sqrt(0.05*0.95/n) {
			t.Errorf("normal %.3f, flat %.3f: %.4f lie outside %.4f", sigma, limits, share, half)
		}
	}
}

// Errors that are all a million times as large, or as small, are so much wider.
func TestHalf95Scale(t *testing.T) {
	for _, limits := range [][]float64{nil, {1}, {1, 1}, {0.3, 1.2, 0.7}} {
		for _, sigma := range []float64{0, 0.4, 2} {
			one := Half95(sigma, limits...)
			for _, by := range []float64{1e-6, 1e6} {
				scaled := make([]float64, len(limits))
				for i, a := range limits {
					scaled[i] = by * a
				}
				if got := Half95(by*sigma, scaled...); !(math.Abs(got-by*one) <= 1e-8*by*one) {
					t.Errorf("normal %v, flat %v: %v, and %v times that %v", sigma, limits, one, by, got)
				}
			}
		}
	}
}

// The order of the flat errors does not matter, and one that hardly counts moves
// nothing: the fold to a normal error is no step.
func TestHalf95Smooth(t *testing.T) {
	limits := []float64{0.3, 1.2, 0.7}
	a := Half95(0.4, limits...)
	slices.Reverse(limits)
	if b := Half95(0.4, limits...); math.Abs(a-b) > 1e-8 {
		t.Errorf("%v one way, %v the other", a, b)
	}
	u := math.Hypot(1, 0.5)
	edge := flatShare * u * math.Sqrt(3)
	if under, over := Half95(1, 0.5*math.Sqrt(3), edge*0.999), Half95(1, 0.5*math.Sqrt(3), edge*1.004); math.Abs(over-under) > 3e-5*u {
		t.Errorf("%v below the fold, %v above", under, over)
	}
}
