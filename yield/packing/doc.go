// Package packing brings syrup into jars: how hot to fill and how far, which
// containers for a lot, what the filter takes, and what to lay in before the
// season.
//
// # Filtering and packing
//
// Volumes here are at 68 F (20 C), at which labels are measured, unless the
// function takes a temperature. Syrup shrinks by 3 percent from the filler to
// the shelf:
//
//	V_hot = V_68 rho(68 F)/rho(hot)
//
// [Container.Fill] tells the line to fill to, the weight that the scale shows
// and the headspace. Syrup and jar meet where the heat that one loses is what
// the other takes up ([Container.AfterFilling]), and the seal needs 180 F there:
// [Container.FillAt] goes back to how hot the syrup must be. [PackingHeatOf]
// holds a temperature against published advice.
//
// [FewestContainers] and [InMix] choose containers for a lot, [CheckNet] weighs
// a sample of them, [CheckCanadianLot] holds a lot against Canada's rule, [LabelUS]
// and [LabelCanada] word the line of the label, and [example.org/sapreckoner/yield.Books] tie every jar to
// its lots, boils and days. [FilterTime], [FiltersFor] and [CakeLoss] are the
// filter's part, [example.org/sapreckoner/boil/finish.ProductWeight] that of
// candy, sugar and cream: sugar/(1 - moisture), beside the weights that practice
// gets ([example.org/sapreckoner/boil/finish.ProductFigures]).
//
// # Numbers
//
// Outside its range a function answers NaN, or its zero value, and a
// [*units.RangeError] that tells the way out.
//
// # Cautions
//
// Hot syrup scalds in an instant and sticks. Filter aid is a dust to keep out of
// the lungs. Moldy syrup may hold toxins that boiling leaves. What may be sold, in
// which jar and under which label, is a matter of local law.
//
// In the book: docs/theory/packing.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package packing
