package finish

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// maxMoisture is that of a product; wetter, it is syrup.
const maxMoisture = 35.0

// ProductWeight returns the weight of candy, sugar or cream made of a lot of
// syrup at the given moisture, when nothing sticks to the pan: the lot's sugar
// over one less the moisture. It is a ceiling.
//
// Weights are as a scale in air shows the syrup; the product's own buoyancy
// changes them by 0.02 percent.
//
// Range: a lot with 1 mg to 1e9 kg of sugar in it, moisture from 0 to 35
// percent of the product. Uncertainty: 1 percent for each percent of moisture.
//
// Source: conservation of mass. Check values: a US gallon of 66.9 Brix holds 7.41
// lb of solids; boiled to 32 F above water it makes 8.45 lb, to 23 F 8.8 lb
// (computed).
//
// Caution: boiling sugar is hotter than boiling syrup, up to 260 F, and sticks.
func ProductWeight(lot sugar.Lot, moisture units.Share) (units.Mass, error) {
	const fn = "finish.ProductWeight"
	solids, err := solids(fn, lot)
	if err != nil {
		return nan[units.Mass](), err
	}
	if err := limit.In(fn, "moisture", moisture.Percents(), 0, maxMoisture, "%", "water in the product; above 35 percent it is syrup"); err != nil {
		return nan[units.Mass](), err
	}
	return solids / units.Mass(1-moisture.Fraction()), nil
}

// solids returns the sugar of a lot as a share of its weight in air.
func solids(fn string, lot sugar.Lot) (units.Mass, error) {
	w := lot.Brix().Sugar(lot.WeightInAir()) // NaN if the lot is empty
	return w, limit.WithinAs(fn, "lot", "sugar in the lot", w.Kilograms(), leastMass, mostMass, 1, "kg", "there is nothing to boil down")
}

// ProductMoisture returns the moisture of a product that weighs so much and was
// made of the lot: the inverse of [ProductWeight]. What stuck to the pan counts
// as water boiled off, so that the figure is too low by as much.
//
// Range: weight from that of the solids to 1/0.65 of it. Check value: 12.3
// percent in 8.45 lb of a US gallon of 66.9 Brix (computed).
func ProductMoisture(lot sugar.Lot, weight units.Mass) (units.Share, error) {
	const fn = "finish.ProductMoisture"
	solids, err := solids(fn, lot)
	if err != nil {
		return nan[units.Share](), err
	}
	least := solids.Kilograms()
	if err := limit.In(fn, "weight", weight.Kilograms(), least, least/(1-maxMoisture/100), "kg", "lighter, product was lost; heavier, it is syrup or something was added"); err != nil {
		return nan[units.Share](), err
	}
	return units.FractionShare(max(0, 1-float64(solids/weight))), nil
}

// A ProductFigure is what practice gets of a further product from a US gallon of
// syrup, as it was published. It lies below the ceiling of [ProductWeight] by what
// stays in pans and molds. Points at which the products are done are
// [ConfectionFinishes], and syrup that suits them is
// told by [example.org/sapreckoner/sugar.Confection].
type ProductFigure struct {
	Product   string
	Low, High units.Mass // from a US gallon of syrup
	Obtained  string     // read or memory
	Source    string
}

// ProductFigures returns the published weights of further products. Check value:
// 7.5 lb of molded soft sugar (Cornell Maple Bulletin 208).
func ProductFigures() []ProductFigure {
	return []ProductFigure{
		{"molded soft sugar", 7.5 * units.Pound, 7.5 * units.Pound, "read", "Cornell Maple Bulletin 208; Ohio State University Extension"},
		{"granulated sugar", 6.5 * units.Pound, 7 * units.Pound, "memory", "producers manuals"},
		{"cream", 7.5 * units.Pound, 8 * units.Pound, "memory", "producers manuals"},
	}
}
