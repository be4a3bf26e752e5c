package density

import (
	"math"

	"example.org/sapreckoner/units"
)

// disagreeAbove is the value that chi-squared of one degree of freedom passes
// in 5 of 100 cases when the stated uncertainties are right.
const disagreeAbove = 3.84

// A Combination is what two instruments say together.
type Combination struct {
	Brix        units.Brix
	Uncertainty units.Brix // expanded, k = 2
	// ChiSquared is the squared difference over its own variance: about 1 when
	// the stated uncertainties are right.
	ChiSquared float64
	// Disagree warns that the two are further apart than chance explains in 95
	// of 100 cases. One of them is off, or its doubt was stated too small:
	// check both before the syrup is packed. The uncertainty is widened so that
	// it covers the disagreement.
	Disagree bool
	Caveats
}

// Combine returns the mean of two measurements, each weighted by the inverse
// square of its uncertainty. They must not share an error: a hydrometer and a
// refractometer do not, two readings of one stem do.
//
// Range: uncertainties above zero and finite, as [Hydrometer.Measure] and the
// others give; otherwise a [units.RangeError]. A caveat of either is a caveat
// of both. When they disagree the uncertainty is multiplied by the root of
// chi-squared (Birge's ratio).
//
// Check value: 66.9 plus or minus 0.4 and 66.5 plus or minus 0.2 give 66.58 plus
// or minus 0.179, chi-squared 3.2 (computed).
func Combine(a, b Measurement) (Combination, error) {
	const fn = "density.Combine"
	for _, m := range [...]Measurement{a, b} {
		if !(m.Uncertainty > 0 && m.Uncertainty <= maxUncertainty) {
			return Combination{}, &units.RangeError{Func: fn, Arg: "uncertainty", Value: float64(m.Uncertainty), Low: 0, High: float64(maxUncertainty), Unit: "Brix",
				Hint: "combine what Measure returned"}
		}
		if !(m.Brix >= minReading && m.Brix <= maxBrix) {
			return Combination{}, readingError(fn, "strength", m.Brix)
		}
	}
	ua, ub := a.Uncertainty/Coverage, b.Uncertainty/Coverage
	va, vb := ua*ua, ub*ub
	diff := a.Brix - b.Brix
	c := Combination{
		Brix:        (a.Brix*vb + b.Brix*va) / (va + vb),
		Uncertainty: Coverage * units.Brix(math.Sqrt(float64(va*vb/(va+vb)))),
		ChiSquared:  float64(diff * diff / (va + vb)),
		Caveats: Caveats{
			Extrapolated:   a.Extrapolated || b.Extrapolated,
			Supersaturated: a.Supersaturated || b.Supersaturated,
			DensityMaximum: a.DensityMaximum || b.DensityMaximum,
		},
	}
	if c.Disagree = c.ChiSquared > disagreeAbove; c.Disagree {
		c.Uncertainty *= units.Brix(math.Sqrt(c.ChiSquared))
	}
	return c, nil
}

// maxUncertainty is more than any measurement here can have.
const maxUncertainty units.Brix = 85
