package density

import (
	"errors"
	"fmt"
	"math"
	"strconv"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// disagreeBelow is the chance below which honest instruments are taken to
// disagree.
const disagreeBelow = 0.05

// A Combination is what instruments that agree say together.
type Combination struct {
	Brix        units.Brix
	Uncertainty units.Brix // expanded, k = 2
	// ChiSquared is the sum of the squared distances from the mean, each over its
	// own variance: about Free when the stated uncertainties are right.
	ChiSquared float64
	Free       int // degrees of freedom: one less than there are instruments
	Caveats
}

// String prints the strength and its uncertainty, to the digit that it leaves.
func (c Combination) String() string {
	return measure.PlusMinus(float64(c.Brix), float64(c.Uncertainty), "Brix")
}

// ErrDisagree is what every [*DisagreeError] unwraps to: instruments are further
// apart than chance explains.
var ErrDisagree = errors.New("the instruments disagree")

// A DisagreeError says that measurements have no mean worth the name: one of
// them is off, or its doubt was stated too small. It unwraps to [ErrDisagree].
type DisagreeError struct {
	A, B       units.Brix // the two that are furthest apart for their uncertainty
	ChiSquared float64    // of all, as in [Combination]
	Free       int        // degrees of freedom: one less than there are instruments
}

// Error tells the two and the way out.
func (e *DisagreeError) Error() string { return "density.Combine: " + e.Text(units.Both) }

// Text tells what [DisagreeError.Error] tells, without the function.
func (e *DisagreeError) Text(units.System) string {
	if e.Free > 1 {
		return fmt.Sprintf("%d instruments lie further apart than chance explains in 95 of 100 cases, %s and %s the furthest: read all again, a hydrometer first, and check them in plain water; a mean of them means nothing",
			e.Free+1, e.A.Text(1), e.B.Text(1))
	}
	return fmt.Sprintf("%s and %s are further apart than chance explains in 95 of 100 cases: read both again, a hydrometer first, and check them in plain water; a mean of the two means nothing",
		e.A.Text(1), e.B.Text(1))
}

// Unwrap returns [ErrDisagree].
func (e *DisagreeError) Unwrap() error { return ErrDisagree }

// Combine returns the mean of measurements, each weighted by the inverse square
// of its uncertainty. They must not share an error: a hydrometer and a
// refractometer do not, two readings of one stem do.
//
// Measurements that are further apart than chance explains in 95 of 100 cases
// are never averaged: the answer is empty and a [*DisagreeError]. The test is
// chi-squared with one degree of freedom less than there are measurements: over
// 3.841 for two, 5.991 for three, 7.815 for four. Five honest sets of 100 are
// refused as well; reading again costs a minute. A single one is returned as it
// is.
//
// Range: 1 to 1000 measurements; uncertainties from 0.000001 to 85 Brix, as
// [Hydrometer.Measure] and the others give. A caveat of one is a caveat of all.
//
// Check value: 66.9 plus or minus 0.4 and 66.5 plus or minus 0.2 give 66.58 plus
// or minus 0.179, chi-squared 3.2 (computed).
func Combine(measurements ...Measurement) (Combination, error) {
	const fn = "density.Combine"
	if err := countRange.Check(fn, float64(len(measurements))); err != nil {
		return Combination{}, err
	}
	var weights, sum float64
	c := Combination{Free: len(measurements) - 1}
	for i := range measurements {
		m := &measurements[i]
		if err := m.check(fn, i); err != nil {
			return Combination{}, err
		}
		w := m.weight()
		weights += w
		sum += float64(w * float64(m.Brix))
		c.Extrapolated = c.Extrapolated || m.Extrapolated
		c.Supersaturated = c.Supersaturated || m.Supersaturated
		c.DensityMaximum = c.DensityMaximum || m.DensityMaximum
	}
	c.Brix = units.Brix(sum / weights)
	c.Uncertainty = Coverage / units.Brix(math.Sqrt(weights))
	for i := range measurements {
		d := float64(measurements[i].Brix - c.Brix)
		c.ChiSquared += float64(measurements[i].weight() * d * d)
	}
	if c.Free > 0 && numeric.ChiSquaredBeyond(c.ChiSquared, c.Free) < disagreeBelow {
		a, b := furthest(measurements)
		return Combination{}, &DisagreeError{A: a, B: b, ChiSquared: c.ChiSquared, Free: c.Free}
	}
	return c, nil
}

// furthest returns the two strengths that are furthest apart for their
// uncertainty, in the order in which they came.
func furthest(all []Measurement) (a, b units.Brix) {
	most := -1.0
	for i := range all {
		for j := i + 1; j < len(all); j++ {
			d := float64(all[i].Brix - all[j].Brix)
			if apart := d * d / (1/all[i].weight() + 1/all[j].weight()); apart > most {
				most, a, b = apart, all[i].Brix, all[j].Brix
			}
		}
	}
	return a, b
}

// weight is the inverse of the variance.
func (m *Measurement) weight() float64 {
	u := float64(m.Uncertainty / Coverage)
	return 1 / (u * u)
}

// check guards the i-th of the measurements.
func (m *Measurement) check(fn string, i int) error {
	x := snap(float64(m.Brix), stemRounding, &liquidRange)
	if uncertaintyRange.Check(fn, float64(m.Uncertainty)) == nil && liquidRange.Check(fn, x) == nil {
		return nil
	}
	name := "measurements[" + strconv.Itoa(i) + "]"
	if err := uncertaintyRange.CheckAs(fn, name+".Uncertainty", float64(m.Uncertainty)); err != nil {
		return err
	}
	return liquidRange.CheckAs(fn, name+".Brix", x)
}

var (
	countRange = limit.Range{Arg: "measurements", What: "number of measurements", Low: 1, High: 1000,
		Below: "measure with one instrument at least", Above: "combine what independent instruments say, not every reading"}
	uncertaintyRange = limit.Range{Arg: "Measurement.Uncertainty", What: "uncertainty", Low: 1e-6, High: float64(maxBrix), Unit: "Brix",
		Below: "combine what was measured with an uncertainty", Above: "combine what was measured with an uncertainty"}
)
