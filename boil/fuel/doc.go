// Package fuel reckons what a boil burns: wood by the cord and its moisture,
// oil, gas and electricity, what share of their heat gets into the sap, and the
// water that a fire boils off in an hour.
//
// # Fuel
//
// A heat value means little without its [Basis]: gross, less the moisture of
// the fuel, net, or delivered. An [Efficiency] belongs to one of them, and one
// that does not fit its fuel is refused with a [*BasisError]. [Fuel.Needed] and
// [Fuel.Makes] are
//
//	fuel = heat/(heat value x efficiency)
//
// Wood is bought by the cord and burned by its moisture M, as a part of its wet
// weight ([WoodHeat], [Firewood]):
//
//	net heat = 8600 (1-M) - 1050 (M + 0.54 (1-M))   Btu/lb
//
// There is no safe default for the efficiency. [LearnEfficiency] takes it from
// past boils; [HomeBuiltPan] and [BuiltEvaporator] are the published ranges, and
// an answer from a range is a [units.Span].
// [example.org/sapreckoner/boil.PanRate],
// [example.org/sapreckoner/boil.LevelRate] and [HeatRate] tell how much water
// goes off in an hour: by rule, by a dipstick, or by the fire.
//
// # Numbers
//
// What ends in By is a standard uncertainty, two times of three. The text of a
// moisture names its basis: "20 % wet basis".
//
// Outside the range that its documentation gives, and for NaN, a function answers
// NaN or the zero value and a [*units.RangeError] that names the argument, its
// range and the way out; the documentation does not repeat this. NaN for one
// argument alone asks for its range.
//
// # Cautions
//
// Burn only where smoke and carbon monoxide go outdoors, with the clearances of
// local code. Keep wood and dry grass clear of the fire and the stack.
//
// In the book: docs/theory/fuel.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package fuel
