// Package finish tells when it is syrup, and when candy: the batch in the last
// pan and its minutes left, where to stop by thermometer, hydrometer or scale,
// and what an error of each does.
//
// # The finish
//
// A [Batch] stands in the finishing pan with nothing poured in. Its
// sugar stays, so with m the mass and E the water that goes off in a time
//
//	dB/dt = B E/m        1/B falls along a straight line in time
//
// and the strength climbs ever faster. A [Watch] fits that line to readings of
// the thermometer and tells the minutes left and their uncertainty. A batch
// climbs on after the last firing: [Batch.Coast], [Batch.LastFiring], [CoalsTime].
//
// [ThermometerStop.Parts] and [HydrometerStop.Parts] tell how uncertain a stop by
// each instrument is, [ErrorCost] and [DepthCost] what an error does to the syrup,
// and [LearnOffset] what one's own rig shows. [PotReading] needs neither: a pot
// weighed half way to syrup is done at mass x B/B1. [SyrupFinishes] and
// [ConfectionFinishes] are published points, and [Finish.At] takes one to the
// pressure of the day.
//
// # Numbers
//
// What ends in By is a standard uncertainty, two times of three, where package
// density reports an expanded one of twice that. A result that has one prints the
// digits that it leaves: "15.0 +/- 0.2 lb".
//
// Outside the range that its documentation gives, and for NaN, a function
// answers NaN or the zero value and a [*units.RangeError] that names the
// argument, its range and the way out; the documentation does not repeat this.
// NaN for one argument alone asks for its range. [ErrBurns], [ErrCoalsFinish]
// and [ErrFewReadings] tell what is no mistake and has no number.
//
// # Cautions
//
// Syrup scalds and sticks: it burns through the skin at once, and candy more so.
// Keep children and animals away, never leave the pan, and keep defoamer at hand.
//
// In the book: docs/theory/finish.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package finish
