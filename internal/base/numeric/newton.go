package numeric

import "math"

const (
	// openSteps is the number of plain Newton steps taken before the ends of the
	// bracket are looked at. A smooth formula started nearby needs two to four.
	openSteps = 12
	// closedSteps is the number of steps inside the bracket that may still be
	// Newton steps. Beyond it every step halves the bracket, so that the search
	// ends whatever the function does.
	closedSteps = 60
)

// Newton returns a root of f between lo and hi, both included, and whether it
// found one. f gives the value and the slope at x and must be continuous
// between lo and hi. The search starts at x0, or in the middle if x0 lies
// outside the bracket or is NaN. It ends when a step is no longer than xtol;
// that last step is still taken, so that on a smooth function the answer is
// usually far closer than xtol; at a root of multiplicity m, where the slope
// vanishes too, it may be m-1 times xtol away. An xtol below four units in the
// last place of x, zero included, is taken as that.
//
// While the steps shrink by half or better and stay between lo and hi, f is not
// evaluated at the ends. Otherwise the search falls back on Newton steps kept
// inside a bracket whose ends differ in sign, and on bisection where such a step
// would leave it or would shrink too slowly. A root that lies outside the
// bracket by no more than xtol is taken to be at that end: rounding puts it
// there when a forward formula was evaluated at its limit.
//
// The answer is NaN and false if the steps do not settle and f has the same
// sign at both ends, if f gives NaN where it is asked, if lo > hi, if an end is
// infinite, or if any of lo, hi and xtol is NaN.
func Newton(f func(x float64) (y, slope float64), lo, hi, x0, xtol float64) (float64, bool) {
	if !bracket(lo, hi, xtol) {
		return math.NaN(), false
	}
	x := x0
	if !(x >= lo && x <= hi) {
		x = middle(lo, hi)
	}
	last := math.Inf(1)
	for range openSteps {
		y, slope := f(x)
		down := step(y, slope)
		if !(math.Abs(down) <= last/2) {
			break
		}
		last = math.Abs(down)
		next := min(max(x-down, lo), hi)
		if last <= tolerance(xtol, x) {
			return next, true
		}
		x = next
	}
	return newtonInside(f, lo, hi, x, xtol)
}

// newtonInside is the careful half of [Newton]: it asks for a change of sign
// between lo and hi and keeps it between neg and pos from then on.
func newtonInside(f func(x float64) (y, slope float64), lo, hi, x, xtol float64) (float64, bool) {
	ylo, slopelo := f(lo)
	yhi, slopehi := f(hi)
	switch {
	case math.IsNaN(ylo) || math.IsNaN(yhi):
		return math.NaN(), false
	case ylo == 0 || math.Abs(step(ylo, slopelo)) <= tolerance(xtol, lo):
		return lo, true
	case yhi == 0 || math.Abs(step(yhi, slopehi)) <= tolerance(xtol, hi):
		return hi, true
	case math.Signbit(ylo) == math.Signbit(yhi):
		return math.NaN(), false
	}
	neg, pos := lo, hi
	if ylo > 0 {
		neg, pos = hi, lo
	}
	last := math.Inf(1)
	for n := 0; ; n++ {
		y, slope := f(x)
		switch {
		case math.IsNaN(y):
			return math.NaN(), false
		case y == 0:
			return x, true
		case y < 0:
			neg = x
		default:
			pos = x
		}
		next := x - step(y, slope)
		inside := next > min(neg, pos) && next < max(neg, pos)
		if n >= closedSteps || !inside || !(math.Abs(next-x) <= last/2) {
			next = middle(neg, pos)
		}
		last = math.Abs(next - x)
		if last <= tolerance(xtol, x) {
			return next, true
		}
		x = next
	}
}

// step returns how far the tangent puts the root below x, or NaN where the
// tangent tells nothing: at a slope of zero, or an infinite one, which would
// make any point look like a root.
func step(y, slope float64) float64 {
	if slope == 0 || math.IsInf(slope, 0) {
		return math.NaN()
	}
	return y / slope
}
