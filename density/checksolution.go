package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What a check solution may be made of.
var (
	checkTotal = limit.Range{Arg: "total", What: "mass of the solution", Low: 0.01, High: 100, Unit: "kg",
		Below: "a kitchen scale weighs no such amount closely: make more",
		Above: "a cup takes less: check its unit"}
	checkStrength = limit.Range{Arg: "brix", What: "strength of the solution", Low: 0, High: 70, Unit: "Brix",
		Below: "plain water is 0", Above: "so much sugar does not stay dissolved as it cools"}
	checkSugar = limit.Range{Arg: "CheckSolution.Sugar", What: "sugar in the solution", Low: 0, High: checkTotal.High, Unit: "kg",
		Below: "a mass cannot be negative", Above: checkTotal.Above}
)

// CheckSolution is white sugar and water by weight, to hold an instrument
// against: 669 g and 331 g for 66.9 Brix, 20 g and 980 g for sap. Dissolve it
// warm and covered, let it cool, and make it up with water to the same weight
// again; then [Hydrometer.CheckedIn] or [Refractometer.CheckedIn] takes what the
// instrument shows in it.
type CheckSolution struct {
	Sugar, Water units.Mass
}

// NewCheckSolution returns what to weigh out for a solution of a strength.
//
// Range: 10 g to 100 kg, 0 to 70 Brix. Uncertainty: 0.1 Brix for 1 g of 1,000,
// and 0.05 for damp sugar (common practice: white sugar holds under 0.1 percent
// of water). Weights in air differ by 0.01.
//
// Source: the definition of Brix. Check value: 669 g of sugar and 331 g of water
// for a kilogram of 66.9 Brix.
func NewCheckSolution(total units.Mass, brix units.Brix) (CheckSolution, error) {
	const fn = "density.NewCheckSolution"
	if err := checkTotal.Check(fn, total.Kilograms()); err != nil {
		return CheckSolution{}, err
	}
	if err := checkStrength.Check(fn, float64(brix)); err != nil {
		return CheckSolution{}, err
	}
	s := brix.Sugar(total)
	return CheckSolution{Sugar: s, Water: total - s}, nil
}

// Brix returns the strength after so much water has steamed off and was not made
// up for.
//
// Range: 0 to 100 kg of sugar; a loss of none of the water to what leaves 85 Brix
// and half a gram. Check value: 5 g lost of a kilogram of 66.9 Brix leave 67.24, 0.34
// more: 669/995.
func (c CheckSolution) Brix(lost units.Mass) (units.Brix, error) {
	const fn = "density.CheckSolution.Brix"
	if err := checkSugar.Check(fn, c.Sugar.Kilograms()); err != nil {
		return nan[units.Brix](), err
	}
	spare := maxBrix.Of(c.Sugar) - c.Sugar // what water it must keep
	if err := limit.WithinAs(fn, "CheckSolution.Water", "water in the solution", c.Water, spare+leastWater, units.Mass(checkTotal.High), units.Kilogram, "kg", "weigh sugar and water"); err != nil {
		return nan[units.Brix](), err
	}
	if err := limit.WithinAs(fn, "lost", "water lost", lost, 0, c.Water-spare-leastWater/2, units.Kilogram, "kg", "weigh the solution before and after"); err != nil {
		return nan[units.Brix](), err
	}
	all := c.Sugar + c.Water - lost
	return units.Brix(100 * float64(c.Sugar) / float64(all)), nil
}

// leastWater is what a solution has over that at least.
const leastWater = units.Gram
