package numeric_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/numeric"
)

// known holds functions whose root in the bracket has a closed form, or is
// tabulated where the source says.
var known = []struct {
	name   string
	f      func(x float64) (y, slope float64)
	lo, hi float64
	root   float64
	source string
}{
	{"x^2-2", func(x float64) (float64, float64) { return x*x - 2, 2 * x }, 0, 2, math.Sqrt2, "square root of 2"},
	{"x^3-27", func(x float64) (float64, float64) { return x*x*x - 27, 3 * x * x }, -10, 100, 3, "cube root of 27"},
	{"exp(x)-10", func(x float64) (float64, float64) { return math.Exp(x) - 10, math.Exp(x) }, -5, 5, math.Ln10, "natural logarithm of 10"},
	{"ln(x)-1", func(x float64) (float64, float64) { return math.Log(x) - 1, 1 / x }, 0.1, 10, math.E, "definition of e"},
	{"sin(x)", func(x float64) (float64, float64) { return math.Sin(x), math.Cos(x) }, 2, 4, math.Pi, "definition of pi"},
	{"cos(x)", func(x float64) (float64, float64) { return math.Cos(x), -math.Sin(x) }, 0, 3, math.Pi / 2, "half of pi"},
	{"atan(x-1)", func(x float64) (float64, float64) { return math.Atan(x - 1), 1 / (1 + (x-1)*(x-1)) }, -100, 1000, 1, "arc tangent is zero at zero; Newton alone runs away"},
	{"cos(x)-x", func(x float64) (float64, float64) { return math.Cos(x) - x, -math.Sin(x) - 1 }, 0, 1, 0.7390851332151607, "Dottie number, OEIS A003957"},
	{"x*exp(x)-1", func(x float64) (float64, float64) { return x*math.Exp(x) - 1, (1 + x) * math.Exp(x) }, 0, 1, 0.5671432904097838, "omega constant, OEIS A030178"},
	{"x^2-x-1", func(x float64) (float64, float64) { return x*x - x - 1, 2*x - 1 }, 1, 2, math.Phi, "golden ratio"},
	{"x^3-x-1", func(x float64) (float64, float64) { return x*x*x - x - 1, 3*x*x - 1 }, 1, 2, 1.324717957244746, "plastic ratio, OEIS A060006"},
	{"x^3-2x-5", func(x float64) (float64, float64) { return x*x*x - 2*x - 5, 3*x*x - 2 }, 2, 3, 2.0945514815423265, "Wallis's equation, OEIS A007493"},
	{"sqrt(x)-1", func(x float64) (float64, float64) { return math.Sqrt(x) - 1, 0.5 / math.Sqrt(x) }, 0, 9, 1, "infinite slope at an end"},
	{"cbrt(x)", func(x float64) (float64, float64) { return math.Cbrt(x), 1 / (3 * math.Cbrt(x) * math.Cbrt(x)) }, -1, 8, 0, "infinite slope at the root; Newton alone runs away"},
	{"(x-1)^3", func(x float64) (float64, float64) { d := x - 1; return d * d * d, 3 * d * d }, -4, 7, 1, "triple root"},
	{"1-x", func(x float64) (float64, float64) { return 1 - x, -1 }, -math.MaxFloat64, math.MaxFloat64, 1, "bracket wider than the largest number"},
	{"1e-300(x-3)", func(x float64) (float64, float64) { return 1e-300 * (x - 3), 1e-300 }, 0, 10, 3, "tiny values"},
	{"1e300(x-3)", func(x float64) (float64, float64) { return 1e300 * (x - 3), 1e300 }, 0, 10, 3, "huge values"},
}

// value drops the slope of f.
func value(f func(x float64) (y, slope float64)) func(float64) float64 {
	return func(x float64) float64 { y, _ := f(x); return y }
}

func TestKnownRoots(t *testing.T) {
	const xtol = 1e-10
	for _, k := range known {
		t.Run(k.name, func(t *testing.T) {
			starts := []float64{k.lo, k.hi, k.root, k.lo/2 + k.hi/2, math.NaN(), math.Inf(1), k.lo - 1}
			for _, x0 := range starts {
				got, ok := numeric.Newton(k.f, k.lo, k.hi, x0, xtol)
				within := xtol
				if k.name == "(x-1)^3" {
					within = 2 * xtol // one less than the multiplicity, as documented
				}
				if !ok || !(math.Abs(got-k.root) <= within) {
					t.Errorf("Newton from %v = %v, %v; want %v (%s)", x0, got, ok, k.root, k.source)
				}
			}
			got, ok := numeric.Root(value(k.f), k.lo, k.hi, xtol)
			if !ok || !(math.Abs(got-k.root) <= xtol) {
				t.Errorf("Root = %v, %v; want %v (%s)", got, ok, k.root, k.source)
			}
		})
	}
}

// The tightest search ends, and ends within a few units in the last place.
func TestZeroTolerance(t *testing.T) {
	for _, k := range known {
		if k.name == "(x-1)^3" {
			continue // its values underflow to zero before x reaches the root
		}
		// Four units in the last place of the answer, as documented, and as much
		// again for the rounding of the function itself.
		within := 0x1p-49 * math.Max(math.Abs(k.root), 0x1p-900)
		for _, xtol := range []float64{0, -1} {
			if got, ok := numeric.Newton(k.f, k.lo, k.hi, k.lo, xtol); !ok || !(math.Abs(got-k.root) <= within) {
				t.Errorf("%s: Newton with xtol %v = %v, %v; want %v", k.name, xtol, got, ok, k.root)
			}
			if got, ok := numeric.Root(value(k.f), k.lo, k.hi, xtol); !ok || !(math.Abs(got-k.root) <= within) {
				t.Errorf("%s: Root with xtol %v = %v, %v; want %v", k.name, xtol, got, ok, k.root)
			}
		}
	}
}

func TestRefused(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	line := func(x float64) (float64, float64) { return x - 1, 1 }
	flat := func(x float64) (float64, float64) { return math.Atan(x - 1), 1 / (1 + (x-1)*(x-1)) }
	tests := []struct {
		name         string
		f            func(x float64) (y, slope float64)
		lo, hi, xtol float64
	}{
		{"no root", func(x float64) (float64, float64) { return x*x + 1, 2 * x }, -3, 4, 1e-9},
		{"root below", line, 2, 3, 1e-9},
		{"root above", line, -3, 0.5, 1e-9},
		{"constant", func(float64) (float64, float64) { return 2, 0 }, -1, 1, 1e-9},
		{"constant, infinite slope", func(float64) (float64, float64) { return 2, inf }, -1, 1, 1e-9},
		{"NaN everywhere", func(float64) (float64, float64) { return nan, nan }, -1, 1, 1e-9},
		{"NaN at the low end", func(x float64) (float64, float64) { return math.Log(x), 0 }, -1, 3, 1e-9},
		{"NaN at the high end", func(x float64) (float64, float64) { return math.Log(-x), 0 }, -3, 1, 1e-9},
		{"NaN within", func(x float64) (float64, float64) { return math.Sqrt(x*x-1) * x, 0 }, -2, 3, 1e-9},
		{"ends exchanged", line, 3, -3, 1e-9},
		{"one point, not a root", line, 3, 3, 1e-9},
		{"lo NaN", line, nan, 3, 1e-9},
		{"hi NaN", line, -3, nan, 1e-9},
		{"lo infinite", line, -inf, 3, 1e-9},
		{"hi infinite", line, -3, inf, 1e-9},
		{"lo infinite, a value there", flat, -inf, 3, 1e-9},
		{"hi infinite, a value there", flat, -3, inf, 1e-9},
		{"constant, slope of minus infinity", func(float64) (float64, float64) { return 2, -inf }, -1, 1, 1e-9},
		{"xtol NaN", line, -3, 3, nan},
	}
	for _, tt := range tests {
		if got, ok := numeric.Newton(tt.f, tt.lo, tt.hi, 0.25, tt.xtol); ok || !math.IsNaN(got) {
			t.Errorf("%s: Newton = %v, %v; want NaN, false", tt.name, got, ok)
		}
		if got, ok := numeric.Root(value(tt.f), tt.lo, tt.hi, tt.xtol); ok || !math.IsNaN(got) {
			t.Errorf("%s: Root = %v, %v; want NaN, false", tt.name, got, ok)
		}
	}
}

// A root at an end of the bracket is found although rounding may have put it
// just outside.
func TestRootAtEnd(t *testing.T) {
	const xtol = 1e-9
	for _, root := range []float64{0, 1, 85} {
		for _, beyond := range []float64{0, 1e-12, -1e-12} {
			f := func(x float64) (float64, float64) {
				d := x - (root + beyond)
				return d * (d + 400), 2*d + 400
			}
			for _, ends := range [][2]float64{{root, root + 90}, {root - 90, root}, {root, root}} {
				for _, x0 := range []float64{ends[0], ends[1], (ends[0] + ends[1]) / 2} {
					got, ok := numeric.Newton(f, ends[0], ends[1], x0, xtol)
					if !ok || !(math.Abs(got-root) <= 2*xtol) || got < ends[0] || got > ends[1] {
						t.Errorf("Newton in %v from %v, root %v%+g: %v, %v", ends, x0, root, beyond, got, ok)
					}
				}
				if ends[0] == ends[1] && beyond != 0 {
					continue // one point has no chord
				}
				got, ok := numeric.Root(value(f), ends[0], ends[1], xtol)
				if !ok || !(math.Abs(got-root) <= 2*xtol) || got < ends[0] || got > ends[1] {
					t.Errorf("Root in %v, root %v%+g: %v, %v", ends, root, beyond, got, ok)
				}
			}
		}
	}
}

// Polynomials with drawn real roots: what is found is one of them, and it lies in
// the bracket.
func TestRandomPolynomials(t *testing.T) {
	const xtol = 1e-9
	rng := rand.New(rand.NewPCG(1, 2))
	found := 0
	for range 20000 {
		roots := make([]float64, 1+rng.IntN(6))
		for i := range roots {
			// A grid keeps simple roots a tenth apart, so that the values near a
			// root are well above their rounding.
			roots[i] = float64(rng.IntN(200)-100) / 10
		}
		f := func(x float64) (y, slope float64) {
			y = 1
			for _, r := range roots {
				slope = slope*(x-r) + y
				y *= x - r
			}
			return y, slope
		}
		lo, hi := -11+2*rng.Float64(), 0.05+10*rng.Float64()
		ylo, _ := f(lo)
		yhi, _ := f(hi)
		bracketed := math.Signbit(ylo) != math.Signbit(yhi)
		check := func(name string, got float64, ok bool) {
			if !ok {
				if bracketed {
					t.Errorf("%s found nothing in [%v, %v] for roots %v", name, lo, hi, roots)
				}
				return
			}
			nearest := math.Inf(1)
			for _, r := range roots {
				nearest = min(nearest, math.Abs(got-r))
			}
			// A root of multiplicity m is blurred by rounding to the m-th root of
			// the error of the value; 1e-2 holds for six, 1e-9 for one.
			blur := 1e-2
			if len(roots) == 1 {
				blur = xtol
			}
			if !(got >= lo && got <= hi && nearest <= blur) {
				t.Errorf("%s = %v in [%v, %v] for roots %v", name, got, lo, hi, roots)
			}
			found++
		}
		x0 := lo + (hi-lo)*rng.Float64()
		got, ok := numeric.Newton(f, lo, hi, x0, xtol)
		check("Newton", got, ok)
		got, ok = numeric.Root(value(f), lo, hi, xtol)
		if ok != bracketed {
			t.Errorf("Root in [%v, %v] for roots %v: ok %v with a change of sign %v", lo, hi, roots, ok, bracketed)
		}
		check("Root", got, ok)
	}
	if found < 10000 {
		t.Errorf("only %d searches had a root to find", found)
	}
}

// The number of evaluations is bounded, whatever the function does.
func TestEvaluations(t *testing.T) {
	for _, k := range known {
		n := 0
		counted := func(x float64) (float64, float64) { n++; return k.f(x) }
		numeric.Newton(counted, k.lo, k.hi, k.lo, 0)
		newton := n
		n = 0
		numeric.Root(value(counted), k.lo, k.hi, 0)
		// Halving 2^1025 down to 2^-1022 takes 2047 steps; the rest is the
		// documented number of faster tries and the two ends.
		if newton > 12+60+2+2047 || n > 100+2+2047 {
			t.Errorf("%s: Newton asked %d times, Root %d times", k.name, newton, n)
		}
	}

	// Each step leaves e^2/(2 sqrt 2) of an error e: from 1.4, steps of 1.4e-2,
	// 7e-5 and 2e-9, the third of which is short enough.
	n := 0
	smooth := func(x float64) (float64, float64) { n++; return x*x - 2, 2 * x }
	if _, ok := numeric.Newton(smooth, 0, 2, 1.4, 1e-8); !ok || n != 3 {
		t.Errorf("Newton on a smooth function asked %d times, want 3", n)
	}
}

func TestNoAllocation(t *testing.T) {
	target := 2.0
	allocs := testing.AllocsPerRun(100, func() {
		target += 1e-3 // captured, so that f is a true closure
		f := func(x float64) (float64, float64) { return x*x - target, 2 * x }
		g := func(x float64) float64 { return x*x - target }
		_, ok1 := numeric.Newton(f, 0, 2, 1, 1e-12)
		_, ok2 := numeric.Newton(f, 0, 2, 0, 1e-12) // the slope of zero leads into the bracketed half
		_, ok3 := numeric.Root(g, 0, 2, 1e-12)
		if !ok1 || !ok2 || !ok3 {
			t.Error("no root of x^2-target")
		}
	})
	if allocs != 0 {
		t.Errorf("%v allocations, want none", allocs)
	}
}

func FuzzRoots(f *testing.F) {
	f.Add(1.0, -3.0, 0.5, -10.0, 10.0, 0.0, 1e-9)
	f.Add(0.0, 0.0, 1.0, -1.0, 1.0, 5.0, 0.0)
	f.Add(math.Inf(1), 1.0, math.NaN(), -math.MaxFloat64, math.MaxFloat64, 0.0, -1.0)
	f.Fuzz(func(t *testing.T, a, b, c, lo, hi, x0, xtol float64) {
		cubic := func(x float64) (float64, float64) {
			return ((x+a)*x+b)*x + c, (3*x+2*a)*x + b
		}
		if got, ok := numeric.Newton(cubic, lo, hi, x0, xtol); ok != (got >= lo && got <= hi) {
			t.Errorf("Newton(x^3%+gx^2%+gx%+g, %v, %v, %v, %v) = %v, %v", a, b, c, lo, hi, x0, xtol, got, ok)
		}
		if got, ok := numeric.Root(value(cubic), lo, hi, xtol); ok != (got >= lo && got <= hi) {
			t.Errorf("Root(x^3%+gx^2%+gx%+g, %v, %v, %v) = %v, %v", a, b, c, lo, hi, xtol, got, ok)
		}
	})
}
