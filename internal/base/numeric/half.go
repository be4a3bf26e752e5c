package numeric

import "math"

// flatShare is the part of the whole standard deviation below which a flat
// distribution counts as a normal one: its fourth power is what that costs.
const flatShare = 0.05

// Half95 returns the half-width that holds 95 of 100 values of a sum of
// independent errors around zero: normal ones with the standard deviation sigma
// together, and flat ones, each as likely anywhere within plus or minus its
// limit. At most eight flat ones are told apart; sigma may be zero.
//
// Two standard deviations hold more as soon as a flat error is a large one: a
// single flat error is never more than 1.73 of them away.
func Half95(sigma float64, limits ...float64) float64 {
	variance := sigma * sigma
	for _, a := range limits {
		variance += a * a / 3
	}
	if !(variance > 0) || math.IsInf(variance, 0) {
		return math.Sqrt(variance)
	}
	u := math.Sqrt(variance)
	var kept [8]float64
	n := 0
	rest := sigma * sigma
	for _, a := range limits {
		if a < flatShare*u*math.Sqrt(3) || n == len(kept) {
			rest += a * a / 3
			continue
		}
		kept[n] = a
		n++
	}
	// A normal part of a ten-thousandth keeps the steps out of the sum.
	s := math.Max(math.Sqrt(rest), 1e-4*u)
	low, high := 0.0, 3*u
	for high-low > 1e-9*u {
		mid := (low + high) / 2
		if below(mid, s, kept[:n]) < 0.975 {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

// below returns the chance that the sum of a normal error and of flat ones is
// less than x: the n-th integral of the normal distribution, differenced over
// the ends of every flat one.
func below(x, sigma float64, limits []float64) float64 {
	sum, scale := 0.0, 1.0
	for _, a := range limits {
		scale *= 2 * a
	}
	for signs := range 1 << len(limits) {
		t, sign := x, 1.0
		for i, a := range limits {
			if signs>>i&1 == 0 {
				t += a
			} else {
				t, sign = t-a, -sign
			}
		}
		sum += sign * integrated(t, sigma, len(limits))
	}
	return sum / scale
}

// integrated returns the n-th integral of the normal distribution from far
// below to t: n I(n) = t I(n-1) + sigma^2 I(n-2).
func integrated(t, sigma float64, n int) float64 {
	z := t / sigma
	last := math.Exp(-z*z/2) / (sigma * math.Sqrt(2*math.Pi))
	now := math.Erfc(-z/math.Sqrt2) / 2
	for k := 1; k <= n; k++ {
		last, now = now, (t*now+sigma*sigma*last)/float64(k)
	}
	return now
}
