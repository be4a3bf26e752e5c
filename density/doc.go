// Package density tells what a sugar solution weighs, and what an instrument
// that floats in it, shines through it or weighs it reads.
//
// # Density
//
// Everything here rests on one formula: the density of a sucrose solution by
// strength and temperature, [Solution], on that of water, [Water]. With w the
// mass fraction and t in degrees Celsius,
//
//	rho(w, t) = water(t) + sum of c[k][i] w^i ((t-20)/100)^k   kg/m3
//
// Syrup of 66.9 Brix weighs 1328.19 kg/m3 at 20 C, 6.2 more for each Brix and
// 0.51 less for each kelvin. [BrixFromDensity] goes back, at a known
// temperature. A temperature is never found from a density: below about 8 C a
// thin sap has the same one twice.
//
// A scale weighs in air, which lifts: [InAir], [WeightInAir]. What is packed
// hot shrinks, 2.9 percent from 185 F: [Contraction], [VolumeAt], [HotVolume].
//
// # Numbers that name their convention
//
// [SG2020] is the apparent specific gravity 20/20 C of the sugar tables,
// [TrueSG2020] the one in vacuo, [Baume145] the Baume of the US sugar scale,
// [ND20] a refractive index at 20 C. Their text names it too: "36
// Be145". Two tables relate density and strength, 0.045 Brix apart at 66: a
// [Scale] is [ICUMSA], which is meant where nothing is said, or [NBSC440].
//
// # Instruments
//
// Each instrument has Brix, from what it shows to the truth; a way back, from
// the truth to what it will show; CheckedIn, where its error can be found in
// water or a known syrup; and Measure, the truth with its uncertainty.
//
// A [Hydrometer] is true at the temperature printed on it and reads elsewhere
// what
//
//	rho(reading, t0) = rho(b, t) (1 + gamma (t - t0))
//
// says, gamma being the expansion of its glass. [Hydrometer.FillCupTable] is the
// table to hang beside the pan, and a [Mark] is a line on a stem without a scale.
//
// A [Refractometer] that does not compensate reads elsewhere than at 20 C what
// the refraction of Lorentz and Lorenz makes of the density, compared from 10 to
// 30 C with the corrections of 1936.
//
// A [Flask] is a known volume on a good scale.
//
// # Plus or minus
//
// A reading without its uncertainty is half a reading. State in a [Doubt] what
// is known of the instrument, and Measure answers with a [Measurement]: strength,
// expanded uncertainty (k = 2, about 95 in 100) by the law of propagation of the
// GUM, the [Parts] it is made of, and [Caveats]. With a sound hydrometer of half
// Brix marks 66.9 is 66.9 plus or minus 0.3. [Combine] joins two instruments and
// refuses those that disagree.
//
// # Edges
//
// Strength goes from 0 to 85 Brix and temperature from 0 to 110 C. Outside, and
// for NaN, a function answers NaN or the zero value and a [*units.RangeError]
// that names the argument, its range and the way out; the documentation of a
// function gives its range and does not repeat this. NaN for one argument alone
// asks for its range.
//
// Inside, three things are flagged in [Caveats] and not refused: above 90
// C the formula is extrapolated ([Extrapolated]) and the uncertainty grows;
// syrup beyond saturation holds only while it is clear; near the density
// maximum the temperature hardly matters. Sap that is freezing is not one
// liquid: let it thaw and mix.
//
// Formulas are for sucrose. Maple sap and syrup are near enough; saps of glucose
// and fructose, such as birch, are not.
//
// Syrup hot enough to float a hot mark scalds.
//
// In the book: docs/theory/density.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package density
