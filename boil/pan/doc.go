// Package pan boils on paper: a rig of compartments over a fire, through a day,
// the night and the next morning, and over the days that sap waits.
//
// # A pan through the day
//
// A [Rig] is a row of compartments over one fire, from kettle to partitioned
// pan, and a [Day] is what comes to it. [Rig.Run] boils through the day by the
// balances of each compartment,
//
//	d(sugar)/dt = sugar in - sugar out
//	d(water)/dt = water in - water out - (heat - warming)/L
//
// and tells syrup, hours, heat and what is left; [Rig.Trace] shows each moment.
// A fire of wood is not out when the wood is: with P its full heat and H the
// half-life of its coals ([Rig.Coals]), they still give
//
//	integral of P 2^(-t/H) dt = P H/ln 2
//
// and the last wood goes on so much earlier. After hours of one sap it comes to
// [Rig.Steady]: the same flow S of sugar runs through every compartment, which
// then stands at B = 100 S/outflow. Without any mixing it is [PlugFlow], a
// share f of the way along:
//
//	B = B0/(1 - f (1 - B0/Bs))
//
// [Contents.Overnight] cools what stays in the pans, [Rig.Chase] saves it with
// water at the end of the season, and [Compare] boils one day on two rigs.
// [Backlog] is about many days: tanks, hours of fire, and sap that waits too
// long.
//
// # Numbers
//
// Amounts of sap are cold ones at the temperature given; levels, depths and
// volumes in a pan are hot.
//
// Outside the range that its documentation gives, and for NaN, a function answers
// NaN or the zero value and a [*units.RangeError] that names the argument, its
// range and the way out; the documentation does not repeat this. NaN for one
// argument alone asks for its range.
//
// # Cautions
//
// A simulation does not watch the pan. Boiling sap scalds and foams over: keep
// children and animals away, never leave the pan, and keep its level above the
// least safe depth. A pan cleaned with acid is rinsed and never meets bleach:
// together they give off chlorine.
//
// In the book: docs/theory/pan.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package pan
