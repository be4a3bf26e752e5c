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
// [Contents.Overnight] cools what stays in the pans, [Rig.Levels] and
// [Rig.FromLevels] write it down by depths and read it again, and [Rig.Chase]
// saves it with water at the end of the season. [Compare] boils one day on two rigs.
// [Rig.Fits] and [Rig.LightBy] turn a day round, from when it is to be done, and
// [Rig.FeedStopped] tells how long a pan lasts that nobody feeds.
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
// # What is left out
//
// Seen from the simulation, real pans differ so. What is estimated here was not
// measured on a pan of sap:
//
//   - The arch warms first: a cold one comes to the boil later, by a quarter of an
//     hour for 200 kg of brick and iron 300 K hotter, 54 MJ, under a fire of 60
//     kW (computed for an invented arch). It gives back a part after the last wood,
//     as coals do.
//   - The sides and the surface radiate and the wind takes more: up to 0.8 kW/m2,
//     3 percent of a flat pan's 25 (computed, black surface into frost). It is in a
//     Heat that was measured as a rate, and not in one from the wood.
//   - Foam stands for less than its depth: the pan holds less than its level, and
//     is low sooner. No figure was found.
//   - Spatter and what sticks take sugar: less syrup, under 1 percent (a guess).
//   - Fire comes and goes with each firing, every 10 to 20 minutes (common
//     practice): the clock of a single draw is off by minutes, the day's is not.
//   - Liquid mixes less in a long channel than in a compartment: strengths lie
//     between those of [Rig] and [PlugFlow]. A passage of 45 minutes was printed
//     for a flue pan (Ohio State University Extension, which has 2 inches stand in
//     it) where plug flow gives 135 at 2 inches and 2 US gal/ft2/h: it stood lower,
//     or boiled faster, or the figure is off.
//   - Heat of concentrating, and that of the climbing boiling point: under 0.1
//     percent.
//
// A measured maple pan would have to show the rate by section, the passage, the
// depth under foam, the half-life of its coals, and the sugar that goes missing.
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
