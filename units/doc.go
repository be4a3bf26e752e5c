// Package units holds the quantities of the sugarhouse, their exact factors,
// and the way they are read and printed.
//
// # Two kinds of quantity
//
// A [Temperature] is a point on a scale and a [TempDiff] is a difference of two
// points, as time.Time and time.Duration are. A boiling point rise of 7.1 F and
// a reading of 7.1 F on the thermometer are two types, and only the sums that
// make sense compile:
//
//	syrup := water.Add(7.1 * units.FahrenheitDegree)
//	rise := syrup.Sub(water)
//
// Everything else is proportional: a float64 type that counts one stated SI
// unit, with a constant for each unit of the trade, a constructor for numbers
// that are not constants, and a getter for the way back:
//
//	sap := 40 * units.USGallon    // a constant
//	sap = units.USGallons(n)      // a variable n
//	n = sap.USGallons()           // the number again
//	n = sap.In(units.ImperialGallon)
//
// Products that the job needs are methods: [Density.Mass], [Mass.Volume],
// [VolumeRate.Over], [Flux.Through].
//
// # No bare gallon, ton or Btu
//
// A gallon is a [USGallon] or an [ImperialGallon], 20 percent apart. Btu in
// text means [BtuIT], the International Table Btu, and therm means [ThermUS].
// Ounces of mass and fluid ounces are spelled apart. A number of Brix is
// percent of sugar by mass; specific gravity and Baume live in package
// [example.org/sapreckoner/density], where each names its convention.
//
// # Text
//
// Every quantity has Parse, String, Text, MarshalText and UnmarshalText, so that
// flag.TextVar, encoding/json and CSV cells work. The unit is mandatory when
// parsing, and gal, qt, pt and fl oz are refused until they say US or imp. A
// difference of temperature is written "7.1 F deg". Fractions such as
// "7/16 in" and "1 1/2 in" are read. NaN and infinity are never read and never
// marshaled. MarshalText loses nothing: it prints the shortest number that
// reads back as the same float64, in the base unit. String keeps 12
// significant digits. Text prints in the unit and with the decimals that the
// reader of a page wants.
//
// In JSON a quantity is that text in quotes, and NaN, which nobody knows, is
// null both ways. A field that was not sent keeps what it held, and zero is an
// amount, 0 C a cup of ice water: set it to NaN before it is decoded, and the
// function that uses it refuses what is missing.
//
// # Carriers
//
// Quantities are carriers: arithmetic on them is plain float64 arithmetic and
// is never checked. Functions that use them check their documented range at
// the door and answer with a [*RangeError].
//
// Source of every factor: NIST Special Publication 811 (2008), Appendix B;
// NIST SP 1038 (2006); NIST Handbook 44, Appendix C. The legal definition
// stands beside each constant.
//
// Cites nist-sp811, nist-sp1038, nist-hb44.
//
// In the book: docs/theory/units.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package units
