package density

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// disagreeAbove is the value that chi-squared of one degree of freedom passes
// in 5 of 100 cases when the stated uncertainties are right.
const disagreeAbove = 3.84

// A Combination is what two instruments that agree say together.
type Combination struct {
	Brix        units.Brix
	Uncertainty units.Brix // expanded, k = 2
	// ChiSquared is the squared difference over its own variance: about 1 when
	// the stated uncertainties are right.
	ChiSquared float64
	Caveats
}

// ErrDisagree is what every [*DisagreeError] unwraps to: two instruments are
// further apart than chance explains.
var ErrDisagree = errors.New("the instruments disagree")

// A DisagreeError says that two measurements have no mean worth the name: one of
// them is off, or its doubt was stated too small. It unwraps to [ErrDisagree].
type DisagreeError struct {
	A, B       units.Brix
	ChiSquared float64
}

// Error tells both and the way out.
func (e *DisagreeError) Error() string {
	return fmt.Sprintf("density.Combine: %s and %s are further apart than chance explains in 95 of 100 cases: read both again, a hydrometer first, and check them in plain water; a mean of the two means nothing",
		e.A.Text(1), e.B.Text(1))
}

// Unwrap returns [ErrDisagree].
func (e *DisagreeError) Unwrap() error { return ErrDisagree }

// Combine returns the mean of two measurements, each weighted by the inverse
// square of its uncertainty. They must not share an error: a hydrometer and a
// refractometer do not, two readings of one stem do.
//
// Two that are further apart than chance explains in 95 of 100 cases, by
// chi-squared over 3.84, are never averaged: the answer is empty and a
// [*DisagreeError]. Five honest pairs of 100 are refused as well; reading again
// costs a minute.
//
// Range: uncertainties from 0.000001 to 85 Brix, as [Hydrometer.Measure] and
// the others give; otherwise a [*units.RangeError]. A caveat of either is a
// caveat of both.
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
	chi := float64(diff * diff / (va + vb))
	if chi > disagreeAbove {
		return Combination{}, &DisagreeError{A: a.Brix, B: b.Brix, ChiSquared: chi}
	}
	return Combination{
		Brix:        (a.Brix*vb + b.Brix*va) / (va + vb),
		Uncertainty: Coverage * units.Brix(math.Sqrt(float64(va*vb/(va+vb)))),
		ChiSquared:  chi,
		Caveats: Caveats{
			Extrapolated:   a.Extrapolated || b.Extrapolated,
			Supersaturated: a.Supersaturated || b.Supersaturated,
			DensityMaximum: a.DensityMaximum || b.DensityMaximum,
		},
	}, nil
}

var uncertaintyRange = limit.Range{Arg: "uncertainty", Low: 1e-6, High: float64(maxBrix), Unit: "Brix",
	Below: "combine what Measure returned", Above: "combine what Measure returned"}
