// Package tapping is the job at the trunk: how many taps it can bear, where this
// year's hole goes, and what the wood behind it has left.
//
// # Trunks and taps
//
// Measure the girth at breast height; the diameter is girth/pi
// ([DiameterFromGirth]). A [Guideline] is a printed table of diameters and taps
// with its place, date and source; [Trunk.Advise] gives the count by one of
// them and shows what the others say. Boundaries are exact, compared in the
// printed unit, and where a guideline is silent the answer is
// [ErrNotCovered]. The guidelines assume a healthy, vigorous trunk: a slow one
// gets one tap at most here, an unhealthy one none. [ReadStand] and [CountStand]
// do a whole stand.
//
//	trunk, err := tapping.NewTrunk(15*units.Inch, tapping.SugarMaple, tapping.Healthy)
//	...
//	advice := trunk.Advise(tapping.DefaultGuideline())
//
// # Holes
//
// A [Hole] is a bit and a depth into the wood; it takes pi/4 d^2 h out of the
// tree, and the tree walls off many times that. [Spouts] lists the sizes in use,
// [HoleLimits] the legal limits known here, [TooColdToDrill] when bark splits.
//
// # Where this year's hole goes
//
// Keep a record of the holes of a trunk as angle, height and year: [OldHole]. A
// [Planner] finds the next place: [DefaultDistances] from last year's hole to
// the side and up or down, out of the stained columns of older holes, within
// reach of the hand or the dropline, for one year or for a hundred.
// [Planner.Map] draws the trunk unrolled; [Planner.Stains] gives the data for a
// finer drawing.
//
// # Wood
//
// [TappingBand] reckons what share of the wood still conducts sap:
//
//	Z = H pi (D - h) h                          the band's volume
//	V = ratio x pi/4 d^2 h                      the stain of one hole
//	f = (N V/Z) sum of max(0, 1 - k g/h)        stained, k = 0, 1, 2, ... years of age
//
// and the chance of clear wood is 1 - f. The ratio is calibrated on one
// published figure, and the second figure that then follows is weak support and
// no proof: see [StainRatio]. A stained share is uncertain by a fifth of itself.
//
// # Years ahead
//
// [GrowthFromGirths] reads the growth off two girths, [UsualGrowth] is what was
// published, and [LeastGrowth] what tapping asks for. [Trunk.Ahead] looks at a trunk
// for twenty years: its taps, whether it grows enough, and its clear wood then.
//
// # Rooms
//
// Weather, running days and the sap to come have a room of their own,
// [example.org/sapreckoner/tapping/season].
//
// # Numbers
//
// Outside its range a function answers NaN, or the zero value, and a
// [*example.org/sapreckoner/units.RangeError]; readers of tables answer with a
// [*example.org/sapreckoner/units/records.RowError]. Nothing here is a setting,
// and everything is safe for concurrent use.
//
// Trunks, holes, reaches, bands and guidelines go out as JSON and come back by
// their constructors. A [Planner] does not: keep what it is made of.
//
// # Cautions
//
// Over-tapping does its harm slowly: small, slow and unhealthy trees are left alone, and
// growth counts more than girth. Be sure of the species before drilling; mark
// the trees while they are in leaf. Look up before you stand under a tree: dead
// limbs fall, most of all in wind and thaw. Clean the bit, drill once, and pull
// the spouts when the season ends. Ask the owner of the land; trees on public
// land need a permit. A local rule comes before every guideline here, and a
// forester of the place before this package.
//
// In the book: docs/theory/tapping.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package tapping
