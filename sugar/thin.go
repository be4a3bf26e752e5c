package sugar

import (
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// addedMass is the mass of an addition whose strength is asked: a milligram and
// more, so that there is something to be strong.
var addedMass = limit.Range{Arg: "mass", What: "mass to add", Low: 1e-6, High: 1e9, Unit: "kg", Below: "give a mass above nothing", Above: "check its unit"}

// An Addition is what to pour into a lot, and what it becomes.
type Addition struct {
	Added  Lot
	Result Lot
}

// Thin returns how much water, sap or lighter syrup brings an over-dense lot
// down to the target, and the lot that results.
//
// Arguments: the lot; the strength of what is added, 0 Brix for water and about
// 2 for sap; its temperature; the target. Range: 0 to 85 Brix, 0 to 110 C, and
// the target between the strengths of the two liquids. A target at the lot's
// own strength needs nothing, whatever is at hand. A target that the two
// liquids cannot reach, or an empty lot, is an [*InfeasibleError]; an argument
// outside its range is a [*units.RangeError].
//
// Measure the lot cold, or corrected for temperature: 0.1 Brix in the reading is
// 5 percent of the water for a lot two Brix too dense. After thinning, bring
// the syrup back to packing temperature (180 F or above) and put it through the
// filter again: cold water or sap spoils the seal, sap may carry live yeast,
// and heating brings new niter. Hot syrup burns; add in small pours, stirring.
//
// An addition beyond a million tonnes, from a strength too near the target, is
// an [*InfeasibleError].
//
// Method: mass balance, m_add = m (B - B_target)/(B_target - B_add). Check
// value: 1 US gal of 68.9 Brix to 66.9 takes 0.3345 lb of water, 5.139 US fl
// oz, and makes 1.03951 US gal, all at 20 C (computed).
func Thin(lot Lot, with units.Brix, at units.Temperature, target units.Brix) (Addition, error) {
	const fn = "sugar.Thin"
	if err := checkAddition(fn, lot, with, at, target); err != nil {
		return Addition{}, err
	}
	switch {
	case lot.has(target):
		return Addition{Result: lot}, nil
	case target > lot.Brix():
		return Addition{}, &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("the lot has %s Brix and thinning to %s would thicken it", strength(lot.Brix()), strength(target)),
			Hint: "boil it down or add heavier syrup"}
	case !(with < target):
		return Addition{}, &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("what is added has %s Brix, no less than the target of %s", strength(with), strength(target)),
			Hint: "thin with something thinner than the target"}
	}
	return add(fn, lot, with, at, target)
}

// Thicken returns how much heavier syrup brings an over-thin lot up to the
// target, and the lot that results: [Thin] turned round. Boiling does the same
// without the syrup: see [Concentrate].
//
// Arguments, range and errors as for [Thin]. Check value: 10 kg of 64 Brix and
// 14.5 kg of 68.9 make 24.5 kg of 66.9 (computed: mass parts 2.0 and 2.9).
func Thicken(lot Lot, with units.Brix, at units.Temperature, target units.Brix) (Addition, error) {
	const fn = "sugar.Thicken"
	if err := checkAddition(fn, lot, with, at, target); err != nil {
		return Addition{}, err
	}
	switch {
	case lot.has(target):
		return Addition{Result: lot}, nil
	case target < lot.Brix():
		return Addition{}, &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("the lot has %s Brix, more than the target of %s", strength(lot.Brix()), strength(target)),
			Hint: "thin it"}
	case !(with > target):
		return Addition{}, &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("what is added has %s Brix, no more than the target of %s", strength(with), strength(target)),
			Hint: "add something heavier than the target, or boil it down"}
	}
	return add(fn, lot, with, at, target)
}

func checkAddition(fn string, l Lot, with units.Brix, at units.Temperature, target units.Brix) error {
	if err := checkBrix(fn, "with", "sugar content", with); err != nil {
		return err
	}
	if _, err := NewLotByMass(0, with, at); err != nil {
		return units.Under(fn, err)
	}
	if err := checkBrix(fn, "target", "target", target); err != nil {
		return err
	}
	if l.Empty() {
		return nothing(fn)
	}
	return nil
}

// add is [Thin] and [Thicken], their arguments checked.
func add(fn string, l Lot, with units.Brix, at units.Temperature, target units.Brix) (Addition, error) {
	over := float64(l.sugar) - float64(l.mass)*target.Fraction()
	mass := units.Mass(over / (target.Fraction() - with.Fraction()))
	if !(mass <= units.Mass(lotMass.High)) {
		return Addition{}, &InfeasibleError{Func: fn,
			Why:  "it would take more than a million tonnes",
			Hint: "what is added lies too near the target: take something further from it"}
	}
	added := lot(mass, with, at)
	result, _ := Blend(l, added) // never empty
	return Addition{Added: added, Result: result}, nil
}

// AdditionBrix returns the strength that an addition of the given mass must have
// to bring the lot to the target: for the jug of sap that is at hand, or for a
// result of a wanted mass, which is the lot's and the addition's together.
//
// Range: mass 1e-6 to 1e9 kg, target 0 to 85 Brix. If the answer falls outside
// 0 to 85 Brix, no such liquid exists and the error is an [*InfeasibleError],
// as it is for an empty lot.
//
// Method: mass balance. Check value: 3.1 kg that bring 64.9 kg of 70 Brix down
// to 66.9 must have 2 Brix (computed).
func AdditionBrix(lot Lot, mass units.Mass, target units.Brix) (units.Brix, error) {
	const fn = "sugar.AdditionBrix"
	none := units.Brix(math.NaN())
	if err := addedMass.Check(fn, float64(mass)); err != nil {
		return none, err
	}
	if err := checkBrix(fn, "target", "target", target); err != nil {
		return none, err
	}
	if lot.Empty() {
		return none, nothing(fn)
	}
	if lot.has(target) { // a sip in a tank would be lost in the rounding
		return min(max(target, thinnest), strongest), nil
	}
	sugar := (float64(lot.mass)+float64(mass))*target.Fraction() - float64(lot.sugar)
	b := units.Brix(100 * sugar / float64(mass))
	const rounding = 1e-9 // of Brix: plain water must not fail as -1e-14
	switch {
	case b < thinnest-rounding:
		return none, &InfeasibleError{Func: fn, Why: "even plain water in that amount leaves the lot too strong", Hint: "add more, or ask for a higher target"}
	case b > strongest+rounding:
		return none, &InfeasibleError{Func: fn, Why: "even 85 Brix in that amount leaves the lot too thin", Hint: "add more, ask for a lower target, or boil it down"}
	}
	return min(max(b, thinnest), strongest), nil
}

// SquareParts returns the parts of two strengths that make the target: the
// square rule, each part being the distance of the other from the target.
//
//	68.9        2.9 parts of 68.9 (66.9 - 64)
//	     66.9
//	64          2.0 parts of 64   (68.9 - 66.9)
//
// The parts are parts by mass, not by volume. With neighbors such as these the
// difference is small; taking the 64.9 parts of 70 Brix syrup and 3.1 parts of
// 2 Brix sap as volumes gives 67.66 Brix in place of 66.9, since a gallon of
// syrup outweighs a gallon of sap by a third. For volumes make lots:
// see [Recipe].
//
// Range: 0 to 85 Brix. A target outside the two strengths, or two equal
// strengths, is an [*InfeasibleError]. Check value: 2.9 and 2.0 for 68.9 and 64
// to 66.9 (computed).
func SquareParts(a, b, target units.Brix) (partsA, partsB float64, err error) {
	const fn = "sugar.SquareParts"
	nan := math.NaN()
	if err := checkSquare(fn, "target", a, b, target); err != nil {
		return nan, nan, err
	}
	if limit.Same(target, a) {
		target = a
	} else if limit.Same(target, b) {
		target = b
	}
	return math.Abs(float64(target - b)), math.Abs(float64(a - target)), nil
}

func checkSquare(fn, arg string, a, b, target units.Brix) error {
	if err := checkBrix(fn, "a", "first strength", a); err != nil {
		return err
	}
	if err := checkBrix(fn, "b", "second strength", b); err != nil {
		return err
	}
	if err := checkBrix(fn, arg, "target", target); err != nil {
		return err
	}
	if limit.Same(a, b) {
		return &InfeasibleError{Func: fn, Why: "the two strengths are the same", Hint: "use either alone, or find a third liquid"}
	}
	if !limit.Holds(target, min(a, b), max(a, b)) {
		return &InfeasibleError{Func: fn,
			Why:  fmt.Sprintf("the target of %s Brix lies outside the ingredients, %s to %s", strength(target), strength(min(a, b)), strength(max(a, b))),
			Hint: "no blend leaves the range of its parts: boil it down, or add water"}
	}
	return nil
}

// Recipe returns the lots of two strengths that together make the wanted lot:
// how much of each to measure out for ten gallons of 66.9. Both come at the
// temperature of the wanted lot.
//
// Range: 0 to 85 Brix. A wanted strength outside the two, two equal strengths,
// or an empty wanted lot, is an [*InfeasibleError].
//
// Method: mass balance. Check value: 4.9 kg of 66.9 Brix from 68.9 and 64 take
// 2.9 and 2.0 kg (computed).
func Recipe(want Lot, a, b units.Brix) (lotA, lotB Lot, err error) {
	const fn = "sugar.Recipe"
	if want.Empty() {
		return Lot{}, Lot{}, nothing(fn)
	}
	if err := checkSquare(fn, "want", a, b, want.Brix()); err != nil {
		return Lot{}, Lot{}, err
	}
	massA := units.Mass(float64(want.mass) * float64(want.Brix()-b) / float64(a-b))
	switch massA = min(max(massA, 0), want.mass); {
	case want.has(a):
		massA = want.mass
	case want.has(b):
		massA = 0
	}
	return lot(massA, a, want.at), lot(want.mass-massA, b, want.at), nil
}
