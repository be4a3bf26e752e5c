package finish

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/units"
)

// A PotReading is a pot weighed once while its sap was half way to syrup, and
// the strength read at the same moment from a cup cooled to where the
// instrument is at home. From there on no thermometer is needed, at any altitude
// and in any weather: the pot holds a fixed mass of sugar, and its weight tells
// the strength.
//
// Pour in nothing and spill nothing from the reading on; what the cup took goes
// back. All that ends in By is a standard uncertainty: half of what
// [example.org/sapreckoner/density.Measurement] gives.
//
// A full pot of boiling syrup scalds: hang the scale, or weigh with the fire
// out and two pairs of hands.
type PotReading struct {
	Gross units.Mass // pot and sap together
	Tare  units.Mass // the empty pot
	Brix  units.Brix
	// ScaleBy is that of any one weighing, BrixBy that of the one reading.
	ScaleBy units.Mass
	BrixBy  units.Brix
}

// A PotTarget is the weight at which a pot is done.
type PotTarget struct {
	Gross units.Mass // what the scale shows, pot included
	Off   units.Mass // still to boil off from the reading on
	// GrossBy is the standard uncertainty of the weight as a target, and BrixBy
	// that of the strength of a pot boiled to it, the scale's last reading
	// included.
	GrossBy units.Mass
	BrixBy  units.Brix
}

// String prints the weight with its uncertainty, to the digit that it leaves;
// [PotTarget.Text] takes one system of units.
func (t PotTarget) String() string { return t.Text(units.Both) }

// Text prints the weight in one system of units, or both: "15.0 +/- 0.2 lb".
func (t PotTarget) Text(in units.System) string {
	return measure.Either(in,
		measure.PlusMinus(t.Gross.Pounds(), t.GrossBy.Pounds(), "lb"),
		measure.PlusMinus(t.Gross.Kilograms(), t.GrossBy.Kilograms(), "kg"))
}

// What the pot may be.
var (
	potBrix = limit.Range{Arg: "PotReading.Brix", What: "reading", Low: 5, High: 80, Unit: "Brix",
		Below: "too thin: an error of the reading grows as the pot boils down; read it at 30 to 50",
		Above: "too late to finish by weight"}
	potTarget = limit.Range{Arg: "to", What: "target", Low: 5, High: 100, Unit: "Brix",
		Below: "boiling never thins",
		Above: "a product is no more than all sugar: take its moisture from 100"}
	potMass = limit.Range{Arg: "PotReading.Gross", What: "weight", Low: 0, High: 1e5, Unit: "kg",
		Below: "a weight is not negative",
		Above: "check the unit of the weight"}
	potSigma = limit.Range{Arg: "PotReading.BrixBy", What: "standard uncertainty of the reading", Low: 0, High: 10, Unit: "Brix",
		Below: "an uncertainty is not negative",
		Above: "with that the reading tells nothing"}
)

// Target returns the weight at which the pot is syrup or candy of a strength:
// 100 less its moisture.
//
// Range: readings of 5 to 80 Brix, best at 30 to 50; targets from the reading to
// 100; weights to 1e5 kg, the gross over the tare. Uncertainty: GrossBy, of the
// reading for the most part: 0.2 Brix at 40 are half a percent of the weight and
// 0.33 Brix at 66. A scale in air shows 0.1 percent less of thin sap than its
// mass and 0.08 of syrup; the difference is left out.
//
// Source: conservation of sugar, m1 = m B/B1. Check value: 25 lb gross
// at 33.45 Brix in a pot of 5 lb are 66.9 Brix at 15 lb gross (by arithmetic).
func (r PotReading) Target(to units.Brix) (PotTarget, error) {
	const fn = "finish.PotReading.Target"
	if err := r.check(fn); err != nil {
		return PotTarget{}, err
	}
	if err := potTarget.Check(fn, float64(to)); err != nil {
		return PotTarget{}, err
	}
	if limit.Same(to, r.Brix) {
		to = r.Brix
	}
	if !(to >= r.Brix) {
		return PotTarget{}, &units.RangeError{Func: fn, Arg: potTarget.Arg, What: potTarget.What, Value: float64(to), Low: float64(r.Brix), High: potTarget.High, Unit: "Brix",
			Hint: "the pot is stronger already: boiling never thins"}
	}
	net := float64(r.Gross - r.Tare)
	left := float64(r.Brix / to)
	scale := float64(r.ScaleBy)
	// The tare counts with what is boiled off only: it is in both weighings.
	by := math.Hypot(left*scale, math.Hypot((1-left)*scale, net*float64(r.BrixBy/to)))
	return PotTarget{
		Gross:   r.Tare + units.Mass(net*left),
		Off:     units.Mass(net * (1 - left)),
		GrossBy: units.Mass(by),
		BrixBy:  units.Brix(float64(to) / (net * left) * math.Hypot(by, scale)),
	}, nil
}

// At returns the strength of the pot when the scale shows a weight: the inverse
// of [PotReading.Target].
//
// Range: weights from that of 100 Brix to the gross of the reading; the rest as
// there. Check value: 66.9 Brix at 15 lb gross, where 25 lb gross were 33.45 in
// a pot of 5 lb (by arithmetic).
func (r PotReading) At(gross units.Mass) (units.Brix, error) {
	const fn = "finish.PotReading.At"
	if err := r.check(fn); err != nil {
		return units.Brix(math.NaN()), err
	}
	solids := r.Brix.Sugar(r.Gross - r.Tare)
	low := float64(r.Tare + solids)
	if !limit.Holds(float64(gross), low, float64(r.Gross)) {
		return units.Brix(math.NaN()), &units.RangeError{Func: fn, Arg: "gross", What: potMass.What, Value: float64(gross), Low: low, High: float64(r.Gross), Unit: "kg",
			Hint: "between all sugar and the weight of the reading: was something poured in or spilled?"}
	}
	return min(units.Brix(100*float64(solids)/float64(gross-r.Tare)), 100), nil
}

func (r PotReading) check(fn string) error {
	for _, m := range [...]named{
		{"PotReading.Gross", float64(r.Gross)}, {"PotReading.Tare", float64(r.Tare)}, {"PotReading.ScaleBy", float64(r.ScaleBy)},
	} {
		if err := potMass.CheckAs(fn, m.arg, m.value); err != nil {
			return err
		}
	}
	if !(r.Gross > r.Tare) {
		return &units.RangeError{Func: fn, Arg: potMass.Arg, What: potMass.What, Value: float64(r.Gross), Low: float64(r.Tare), High: potMass.High, Unit: "kg",
			Hint: "the full pot weighs more than the empty one: gross and tare are the wrong way round, or not set"}
	}
	if err := potSigma.Check(fn, float64(r.BrixBy)); err != nil {
		return err
	}
	return potBrix.Check(fn, float64(r.Brix))
}
