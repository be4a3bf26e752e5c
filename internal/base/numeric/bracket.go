package numeric

import "math"

// bracket reports whether lo, hi and xtol make a search possible.
func bracket(lo, hi, xtol float64) bool {
	return lo <= hi && !math.IsInf(lo, 0) && !math.IsInf(hi, 0) && !math.IsNaN(xtol)
}

// middle returns the middle of a and b. It does not overflow, and for two
// neighboring numbers it is one of them.
func middle(a, b float64) float64 { return a/2 + b/2 }

// tolerance returns xtol, or what the spacing of numbers near x allows if that
// is more. The smallest normal number keeps a search for a root at zero from
// going down through the subnormal numbers.
func tolerance(xtol, x float64) float64 {
	const ulps, normal = 0x1p-50, 0x1p-1022
	return max(xtol, ulps*math.Abs(x), normal)
}
