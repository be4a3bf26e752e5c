// Package yield keeps the sugar's books from the first pail to the last gift:
// how much syrup the sap makes, what became of the sugar in a season, how the
// syrup fits into jars, what the sap is worth, and who gets which part.
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
// more than any table. [example.org/sapreckoner/yield/packing.LayIn] turns its high end into wood, containers, filters
// and tank. A [Tank] tells volume from depth, and where to cut its dipstick.
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
// # Filtering and packing
//
// Volumes here are at 68 F (20 C), at which labels are measured, unless the
// function takes a temperature. Syrup shrinks by 3 percent from the filler to
// the shelf:
//
//	V_hot = V_68 rho(68 F)/rho(hot)
//
// [example.org/sapreckoner/yield/packing.Container.Fill] tells the line to fill to, the weight that the scale shows
// and the headspace. Syrup and jar meet where the heat that one loses is what
// the other takes up ([example.org/sapreckoner/yield/packing.Container.AfterFilling]), and the seal needs 180 F there:
// [example.org/sapreckoner/yield/packing.Container.FillAt] goes back to how hot the syrup must be. [example.org/sapreckoner/yield/packing.PackingHeatOf]
// holds a temperature against published advice.
//
// [example.org/sapreckoner/yield/packing.FewestContainers] and [example.org/sapreckoner/yield/packing.InMix] choose containers for a lot, [example.org/sapreckoner/yield/packing.CheckNet] weighs a
// sample of them, and [Books] tie every jar to its lots, boils and days.
// [example.org/sapreckoner/yield/packing.FilterTime], [example.org/sapreckoner/yield/packing.FiltersFor] and [example.org/sapreckoner/yield/packing.CakeLoss] are the filter's part, [example.org/sapreckoner/boil/finish.ProductWeight]
// that of candy, sugar and cream: sugar/(1 - moisture), beside the weights that
// practice gets ([example.org/sapreckoner/boil/finish.ProductFigures]).
//
// # Sharing, buying and cost
//
// Prices, payments and jars are exact decimals
// ([github.com/shopspring/decimal.Decimal]) or integers, never binary
// fractions. [example.org/sapreckoner/yield/money.Divide] rounds every portion down and hands out what is left, to
// the last cent, by largest remainder, so that the parts always add up to the
// whole; [example.org/sapreckoner/yield/money.DivideJars] does it with jars. An [example.org/sapreckoner/yield/money.Offer] prices sap by its sugar,
//
//	price of a gallon of sap = share x price of a pound of syrup x pounds in it
//
// and a [example.org/sapreckoner/yield/money.Statement] rounds line by line and adds up to the cent. A decimal
// beyond 30 digits before or behind the point is refused, because money never
// needs it and memory is finite.
//
// # Cautions
//
// Hot syrup scalds in an instant and sticks. Filter aid is a dust to keep out of
// the lungs. Moldy syrup may hold toxins that boiling leaves: throw it away, and do
// not taste, skim, boil again or blend it. Infused syrups are outside this package:
// they keep otherwise. What may be sold,
// in which jar and under which label, is a matter of local law.
package yield
