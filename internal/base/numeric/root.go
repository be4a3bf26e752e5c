package numeric

import "math"

// curvedSteps is the number of steps of [Root] that may follow a curve through
// three points. Beyond it every step halves the bracket, so that the search ends
// whatever the function does.
const curvedSteps = 100

// Root returns a root of f between lo and hi, both included, and whether it
// found one. f must be continuous between lo and hi and differ in sign there.
// The answer lies within xtol of a change of sign. An xtol below four units in
// the last place of x, zero included, is taken as that.
//
// A root that lies outside the bracket by no more than xtol, judged by the
// slope at the end, is taken to be at that end: rounding puts it there when a
// forward formula was evaluated at its limit.
//
// Otherwise the answer is NaN and false if f has the same sign at both ends, if
// f gives NaN where it is asked, if lo > hi, if an end is infinite, or if any of
// lo, hi and xtol is NaN.
//
// Method, from memory: T. R. Chandrupatla, A new hybrid quadratic/bisection
// algorithm for finding the zero of a nonlinear function without using
// derivatives, Advances in Engineering Software 28 (1997) 145-149.
func Root(f func(x float64) float64, lo, hi, xtol float64) (float64, bool) {
	if !bracket(lo, hi, xtol) {
		return math.NaN(), false
	}
	// The root lies between x1, the newest point, and x2; x3 is the point that
	// one of them replaced.
	x1, x2 := lo, hi
	y1, y2 := f(lo), f(hi)
	switch {
	case math.IsNaN(y1) || math.IsNaN(y2):
		return math.NaN(), false
	case y1 == 0:
		return lo, true
	case y2 == 0:
		return hi, true
	case math.Signbit(y1) == math.Signbit(y2):
		// A value that doubles within xtol of an end comes from a root within
		// xtol beyond it.
		if math.Abs(f(min(lo+tolerance(xtol, lo), hi))) >= 2*math.Abs(y1) {
			return lo, true
		}
		if math.Abs(f(max(hi-tolerance(xtol, hi), lo))) >= 2*math.Abs(y2) {
			return hi, true
		}
		return math.NaN(), false
	}
	share := 0.5 // of the way from x1 to x2
	for n := 0; ; n++ {
		x := x1 + share*(x2-x1)
		if share == 0.5 {
			x = middle(x1, x2) // x2-x1 may overflow
		}
		y := f(x)
		if math.IsNaN(y) {
			return math.NaN(), false
		}
		x3, y3 := x1, y1
		if math.Signbit(y) != math.Signbit(y1) {
			x3, y3 = x2, y2
			x2, y2 = x1, y1
		}
		x1, y1 = x, y

		best, ybest := x1, y1
		if math.Abs(y2) < math.Abs(y1) {
			best, ybest = x2, y2
		}
		least := tolerance(xtol, best) / math.Abs(x2-x1)
		if ybest == 0 || least >= 1 {
			return best, true
		}
		share = 0.5
		if n < curvedSteps {
			if s := curve(x1, x2, x3, y1, y2, y3); s > 0 && s < 1 {
				share = min(max(s, min(least, 0.5)), max(1-least, 0.5))
			}
		}
	}
}

// curve returns how far on the way from x1 to x2 inverse quadratic
// interpolation through three points puts the root, or NaN where the points do
// not lie so that the interpolation can be trusted.
func curve(x1, x2, x3, y1, y2, y3 float64) float64 {
	xi := (x1 - x2) / (x3 - x2)
	phi := (y1 - y2) / (y3 - y2)
	if !(phi*phi < xi && (1-phi)*(1-phi) < 1-xi) {
		return math.NaN()
	}
	return y1/(y2-y1)*y3/(y2-y3) + (x3-x1)/(x2-x1)*y1/(y3-y1)*y2/(y3-y2)
}
