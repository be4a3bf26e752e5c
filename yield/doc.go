// Package yield keeps the sugar's books: how much syrup the sap makes, what became
// of the sugar in a season, and which jar came from which boil.
//
// # Sugar in is sugar out
//
// Boiling takes off water and leaves the sugar. Whatever is asked here, a
// ratio, a forecast, a season's account, the weight of candy, rests on that one
// balance of mass, with rho the density of the liquid and B its Brix:
//
//	sugar = volume rho B/100
//	sap per syrup = B_syrup rho(B_syrup)/(B_sap rho(B_sap))
//
// The second line is [Ratio]: 43.4 gallons of 2 Brix sap for one of 66 Brix
// syrup. A [Rule] such as 86/X is what people use in its place, and [Rule.ErrorAt]
// tells how far it is off.
//
// # Before the season
//
// A [Forecast] says on what [Basis] it stands: one's own past seasons are worth
// more than any table. [example.org/sapreckoner/yield/packing.LayIn] turns its
// high end into wood, containers, filters and tank. A [Tank] tells volume from
// depth, and where to cut its dipstick.
//
// # The season's account
//
// [Season] lists the lots that came in, went out and were held over, as
// [example.org/sapreckoner/sugar.Lot], and [Season.Account] closes the balance:
//
//	lost = sap + held before - syrup - held after - chased
//
// Nobody measures a loss. It is what remains, and carries the errors of all the
// rest: state them in a [Measured], and read the loss with its Uncertainty. Two
// percent of loss that is uncertain by four says that nothing is known to be
// missing. [Season.Expect] is the way forward, from sap to syrup.
//
// # The cellar
//
// [KeepCellar] follows syrup from the fire through vessels into jars and out, and
// makes the [Books] that tell what is in a jar ([Books.Trace]) and in which jars a
// boil stands, with its share ([Books.Recall]). [Weighed] makes a lot of a drum's
// gross and tare.
//
// # Numbers
//
// Outside its range a function answers NaN, or its zero value, and a
// [*example.org/sapreckoner/units.RangeError] that tells the way out; so does a value that was not made. Records
// that do not hang together are a [*TraceError]. A [Tank] goes out as JSON by its
// shape and its sides and comes back by its constructor; [Books] do not: keep what
// they are made of.
//
// # Rooms
//
// Containers, filling and filters have a room of their own,
// [example.org/sapreckoner/yield/packing], as have buying, sharing and cost,
// [example.org/sapreckoner/yield/money], and the rows of a record to look at
// again, [example.org/sapreckoner/yield/lookagain].
//
// # Cautions
//
// Hot syrup scalds in an instant and sticks. Filter aid is a dust to keep out of
// the lungs. Moldy syrup may hold toxins that boiling leaves: throw it away, and do
// not taste, skim, boil again or blend it. Infused syrups are outside this package:
// they keep otherwise. What may be sold,
// in which jar and under which label, is a matter of local law.
//
// In the book: docs/theory/yield.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package yield
