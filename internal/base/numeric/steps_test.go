package numeric_test

import (
	"math"
	"slices"
	"testing"

	"example.org/sapreckoner/internal/base/numeric"
)

type slope = func(x float64) (y, slope float64)

// The points at which Newton asks, reckoned by hand.
func TestNewtonSteps(t *testing.T) {
	line := func(x float64) (float64, float64) { return 2*x - 3, 2 }
	for _, tc := range []struct {
		name         string
		f            slope
		lo, hi, x0   float64
		xtol         float64
		first        []float64
		whole        bool // that is all
		root, within float64
	}{
		// A step leads to the root and one of nothing ends there.
		{"line from the low end", line, 0, 4, 0, 1e-9, []float64{0, 1.5}, true, 1.5, 0},
		{"line from the high end", line, 0, 4, 4, 1e-9, []float64{4, 1.5}, true, 1.5, 0},
		{"line from outside", line, 0, 4, 5, 1e-9, []float64{2, 1.5}, true, 1.5, 0},

		// The square root of 2 from where the slope is zero: the ends are asked,
		// the middle taken, and from 1 Newton's steps are the classical fractions,
		// the first of them half the step before. The last but one is off by 2e-6.
		{
			"square", func(x float64) (float64, float64) { return x*x - 2, 2 * x }, 0, 2, 0, 1e-8,
			[]float64{0, 0, 2, 0, 1, 3. / 2, 17. / 12, 577. / 408, 665857. / 470832}, true, math.Sqrt2, 1e-8,
		},

		// At a triple root each step is two thirds of the one before, too slow
		// after the first. Inside, every second step is the middle of the bracket.
		{
			"cube", func(x float64) (float64, float64) { return x * x * x, 3 * x * x }, -6, 9, 9, 1e-9,
			[]float64{9, 6, -6, 9, 6, 4, -1, -2. / 3, 5. / 3}, false, 0, 2e-9,
		},

		// At a double root each step is half of the one before: good enough, and
		// here no change of sign would help. The 11th is as short as xtol.
		{
			"double root", func(x float64) (float64, float64) { return (x - 1) * (x - 1), 2 * (x - 1) }, 0, 3, 3, 0x1p-10,
			[]float64{3, 2, 1.5, 1.25, 1.125, 1 + 0x1p-4, 1 + 0x1p-5, 1 + 0x1p-6, 1 + 0x1p-7, 1 + 0x1p-8, 1 + 0x1p-9}, true, 1, 0x1p-10,
		},

		// The same with a change of sign: twelve steps before the ends are looked
		// at, sixty inside, then the middle of -1 and 2^-70.
		{
			"odd double root", func(x float64) (float64, float64) { return x * math.Abs(x), 2 * math.Abs(x) }, -1, 4, 4, 0,
			slices.Concat(halves(4, 12), []float64{-1, 4}, halves(0x1p-10, 61), []float64{-0.5}), false, 0, 0x1p-537, // whose square is zero
		},

		// Without a slope every step halves, from 1/4 to 2^-10 in nine.
		{
			"halving", func(x float64) (float64, float64) { return x - 1./3, 0 }, 0, 1, 0.5, 0x1p-10,
			[]float64{0.5, 0, 1, 0.5, 1. / 4, 3. / 8, 5. / 16, 11. / 32, 21. / 64, 43. / 128, 85. / 256, 171. / 512}, true, 1. / 3, 0x1p-9,
		},
	} {
		var asked []float64
		root, ok := numeric.Newton(func(x float64) (float64, float64) {
			asked = append(asked, x)
			return tc.f(x)
		}, tc.lo, tc.hi, tc.x0, tc.xtol)
		if !ok || !(math.Abs(root-tc.root) <= tc.within) {
			t.Errorf("%s: %v, %v, want %v", tc.name, root, ok, tc.root)
		}
		if len(asked) < len(tc.first) || tc.whole && len(asked) > len(tc.first) {
			t.Errorf("%s: asked at %v, want %v", tc.name, asked, tc.first)
			continue
		}
		for i, x := range tc.first {
			if math.Abs(asked[i]-x) > 1e-12*math.Abs(x) {
				t.Errorf("%s: asked at %v, want %v", tc.name, asked, tc.first)
				break
			}
		}
	}
}

// halves returns n numbers, each half of the one before.
func halves(x float64, n int) []float64 {
	list := make([]float64, n)
	for i := range list {
		list[i] = x
		x /= 2
	}
	return list
}

// How often Root asks, the two ends included.
func TestRootSteps(t *testing.T) {
	for _, tc := range []struct {
		name   string
		f      func(x float64) float64
		lo, hi float64
		xtol   float64
		root   float64
		most   int
	}{
		// The middle is 2, and a curve through three points of a line is the line.
		{"line", func(x float64) float64 { return x - 1 }, 0, 4, 1e-9, 1, 4},
		// Nothing to be learned from a jump: from a bracket of 1 to one of 2^-10,
		// no wider than xtol, in ten halvings.
		{"jump", func(x float64) float64 { return math.Copysign(1, x-1./3) }, 0, 1, 0x1p-10, 1. / 3, 12},
		// Halving would take 37 steps. The error's digits grow by a factor of 1.6
		// or better on a smooth function, so that ten and a few to start with do.
		{"square", func(x float64) float64 { return x*x - 2 }, 0, 2, 1e-11, math.Sqrt2, 14},
		{"exp", func(x float64) float64 { return math.Exp(x) - 3 }, 0, 2, 1e-11, math.Log(3), 14},
		{"falling", func(x float64) float64 { return 2 - x*x }, 0, 2, 1e-11, math.Sqrt2, 14},
	} {
		n := 0
		got, ok := numeric.Root(func(x float64) float64 { n++; return tc.f(x) }, tc.lo, tc.hi, tc.xtol)
		if !ok || !(math.Abs(got-tc.root) <= tc.xtol) {
			t.Errorf("%s: %v, %v, want %v", tc.name, got, ok, tc.root)
		}
		if n > tc.most {
			t.Errorf("%s: asked %d times, want %d at most", tc.name, n, tc.most)
		}
	}
}

// A formula may answer nothing beyond its range: neither search asks there,
// even where the root lies just beyond an end.
func TestAskedInside(t *testing.T) {
	for _, k := range known {
		for _, ends := range [][2]float64{{k.lo, k.hi}, {k.root, k.hi}, {k.lo, k.root}, {math.Nextafter(k.root, k.hi), k.hi}, {k.lo, math.Nextafter(k.root, k.lo)}} {
			lo, hi := ends[0], ends[1]
			f := func(x float64) (float64, float64) {
				if !(x >= lo && x <= hi) {
					t.Errorf("%s: asked at %v, outside %v", k.name, x, ends)
				}
				return k.f(x)
			}
			numeric.Newton(f, lo, hi, lo, 1e-10)
			numeric.Newton(f, lo, hi, hi, 1e-10)
			numeric.Root(value(f), lo, hi, 1e-10)
		}
	}
}

func same(x, y float64) bool {
	return math.Abs(x-y) <= 1e-15 || math.IsNaN(x) && math.IsNaN(y)
}

// Roots beside an end that the plain steps do not come to: the slope at the
// start tells nothing.
func TestEndWithoutASlope(t *testing.T) {
	const xtol = 0x1p-10
	at := func(root float64) slope {
		return func(x float64) (float64, float64) {
			if x == 0.5 {
				return x - root, 0
			}
			return x - root, 1
		}
	}
	square := func(x float64) (float64, float64) { return x * x, 2 * x }
	squareDown := func(x float64) (float64, float64) { return (1 - x) * (1 - x), 2 * (x - 1) }
	nan := func(x float64) (float64, float64) {
		if x > 0.9 {
			return math.NaN(), 0
		}
		return x - 0.7, 0
	}
	for _, tc := range []struct {
		name string
		f    slope
		want float64
	}{
		{"xtol below", at(-xtol), 0},
		{"xtol above", at(1 + xtol), 1},
		{"twice xtol below", at(-2 * xtol), math.NaN()},
		{"twice xtol above", at(1 + 2*xtol), math.NaN()},
		{"NaN at the high end, the root within", nan, math.NaN()},
	} {
		newton, ok := numeric.Newton(tc.f, 0, 1, 0.5, xtol)
		if ok == math.IsNaN(tc.want) || !same(newton, tc.want) {
			t.Errorf("%s: Newton = %v, %v, want %v", tc.name, newton, ok, tc.want)
		}
		root, ok := numeric.Root(value(tc.f), 0, 1, xtol)
		if ok == math.IsNaN(tc.want) || !same(root, tc.want) {
			t.Errorf("%s: Root = %v, %v, want %v", tc.name, root, ok, tc.want)
		}
	}
	if got, ok := numeric.Newton(square, 0, 1, 1, 1e-9); !ok || !same(got, 0) {
		t.Errorf("x^2 at its low end: %v, %v", got, ok)
	}
	if got, ok := numeric.Newton(squareDown, 0, 1, 0, 1e-9); !ok || !same(got, 1) {
		t.Errorf("(1-x)^2 at its high end: %v, %v", got, ok)
	}
}
