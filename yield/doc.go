// Package yield keeps the sugar's books from the first pail to the last gift:
// how much syrup the sap makes, what became of the sugar in a season, how the
// syrup fits into jars, what the sap is worth, and who gets which part.
//
// # Sugar in is sugar out
//
// Boiling takes off water and leaves the sugar. Whatever is asked here, a
// ratio, a forecast, a season's account, the weight of candy, rests on that one
// balance of mass:
//
//	sugar = volume * density * Brix/100
//
// [Ratio] is that balance for a gallon; a [Rule] is what people use in its
// place, with its error. [Season] closes the balance over a whole season and
// takes the losses as what is missing.
//
// # Volumes and temperatures
//
// Syrup shrinks by 3 percent from the filler to the shelf, and a label speaks
// of 68 F (20 C). Volumes here are at 20 C unless the function takes a
// temperature. [example.org/sapreckoner/density.HotVolume] and
// [example.org/sapreckoner/density.VolumeAt] lead from one to the other.
//
// # Money and counted things
//
// Prices, payments and jars are exact decimals
// ([github.com/shopspring/decimal.Decimal]) or integers, never binary
// fractions. [Divide] hands out the last cent or jar by largest remainder, so
// that the parts always add up to the whole; a [Statement] adds up to the cent.
// A decimal beyond 30 digits before or behind the point is refused, because
// money never needs it and memory is finite.
//
// # Cautions
//
// Hot syrup scalds in an instant and sticks. Filter aid is a dust to keep out of
// the lungs. Moldy syrup may hold toxins that boiling leaves. What may be sold,
// in which jar and under which label, is a matter of local law.
package yield
