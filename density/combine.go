package density

import (
	"math"

	"example.org/sapreckoner/internal/limit"
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
// Range: uncertainties from 0.000001 to 85 Brix, as [Hydrometer.Measure] and the
// others give; otherwise a [units.RangeError]. A caveat of either is a caveat
// of both. When they disagree the uncertainty is multiplied by the root of
// chi-squared (Birge's ratio).
//
// Check value: 66.9 plus or minus 0.4 and 66.5 plus or minus 0.2 give 66.58 plus
// or minus 0.179, chi-squared 3.2 (computed).
func Combine(a, b Measurement) (Combination, error) {
	const fn = "density.Combine"
	for _, m := range [...]Measurement{a, b} {
		if err := uncertaintyRange.Check(fn, float64(m.Uncertainty)); err != nil {
			return Combination{}, err
		}
		if err := checkStem(fn, m.Brix, &liquidRange); err != nil {
			return Combination{}, err
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

var uncertaintyRange = limit.Range{Arg: "uncertainty", Low: 1e-6, High: float64(maxBrix), Unit: "Brix",
	Below: "combine what Measure returned", Above: "combine what Measure returned"}
