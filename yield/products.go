package yield

import (
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
// Outside the range the answer is NaN and a [units.RangeError].
//
// Source: conservation of mass. Check values: a US gallon of 66.9 Brix holds 7.41
// lb of solids; boiled to 32 F above water it makes 8.45 lb, to 23 F 8.8 lb
// (computed).
//
// Caution: boiling sugar is hotter than boiling syrup, up to 260 F, and sticks.
func ProductWeight(lot sugar.Lot, moisture units.Share) (units.Mass, error) {
	const fn = "yield.ProductWeight"
	solids, err := solids(fn, lot)
	if err != nil {
		return nan[units.Mass](), err
	}
	if err := within(fn, "moisture", moisture.Percents(), 0, maxMoisture, "%", "water in the product; above 35 percent it is syrup"); err != nil {
		return nan[units.Mass](), err
	}
	return solids / units.Mass(1-moisture.Fraction()), nil
}

// solids returns the sugar of a lot as a share of its weight in air.
func solids(fn string, lot sugar.Lot) (units.Mass, error) {
	w := lot.Brix().Sugar(lot.WeightInAir()) // NaN if the lot is empty
	return w, within(fn, "sugar in the lot", w.Kilograms(), leastMass, mostMass, "kg", "there is nothing to boil down")
}

// ProductMoisture returns the moisture of a product that weighs so much and was
// made of the lot: the inverse of [ProductWeight]. What stuck to the pan counts
// as water boiled off, so that the figure is too low by as much.
//
// Range: weight from that of the solids to 1/0.65 of it. Outside the range the
// answer is NaN and a [units.RangeError]. Check value: 12.3 percent in 8.45 lb of
// a US gallon of 66.9 Brix (computed).
func ProductMoisture(lot sugar.Lot, weight units.Mass) (units.Share, error) {
	const fn = "yield.ProductMoisture"
	solids, err := solids(fn, lot)
	if err != nil {
		return nan[units.Share](), err
	}
	least := solids.Kilograms()
	if err := within(fn, "weight", weight.Kilograms(), least, least/(1-maxMoisture/100), "kg", "lighter, product was lost; heavier, it is syrup or something was added"); err != nil {
		return nan[units.Share](), err
	}
	return units.FractionShare(1 - float64(solids/weight)), nil
}

// A Product is something made of syrup.
type Product uint8

// The products whose yield is published.
const (
	noProduct       Product = iota
	MoldedSugar             // soft candy, poured into molds
	GranulatedSugar         // dry sugar, stirred
	MapleCream              // spread, cooled and stirred
)

// products holds published yields in lb per US gal of syrup.
var products = [...]struct {
	name      string
	low, high float64
	source    string
}{
	noProduct:       {name: "no product"},
	MoldedSugar:     {"molded soft sugar", 7.5, 7.5, "Cornell Maple Bulletin 208; Ohio State University Extension"},
	GranulatedSugar: {"granulated sugar", 6.5, 7, "producers' manuals, from memory"},
	MapleCream:      {"cream", 7.5, 8, "producers' manuals, from memory"},
}

// String returns the name of the product.
func (p Product) String() string {
	if int(p) >= len(products) {
		p = noProduct
	}
	return products[p].name
}

// Published returns what practice gets of a product from a US gallon of syrup,
// least and most, and where that is said. It lies below the ceiling of
// [ProductWeight] by what stays in pans and molds.
//
// Range: the products named here; for any other value the answer is NaN and a
// [units.RangeError]. Check value: 7.5 lb of molded soft sugar (Cornell Maple
// Bulletin 208).
func (p Product) Published() (low, high units.Mass, source string, err error) {
	if err := within("yield.Product.Published", "product", float64(p), float64(MoldedSugar), float64(MapleCream), "", "choose one, such as yield.MoldedSugar"); err != nil {
		return nan[units.Mass](), nan[units.Mass](), "", err
	}
	d := products[p]
	return units.Pounds(d.low), units.Pounds(d.high), d.source, nil
}
