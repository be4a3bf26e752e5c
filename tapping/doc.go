// Package tapping is the job in the woods: how many taps a trunk can bear,
// where this year's hole goes, what the wood behind it has left, when the sap
// runs, and how much comes.
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
// # Season
//
// [example.org/sapreckoner/tapping/season.ReadWeather] reads daily or hourly temperatures; gaps and days given twice
// are told with their line. A [example.org/sapreckoner/tapping/season.Criterion] says which days run, each named by
// its paper. [example.org/sapreckoner/tapping/season.History] makes a window of a station's past: the median and
// spread of the first and the last run. A hole dries in weeks: [example.org/sapreckoner/tapping/season.TapTiming] tells
// which date catches the most running days within its life, and on a day of the
// season whether to tap now, wait, or leave it. Warmth is summed by the method of
// the calendar that it is held against: [example.org/sapreckoner/tapping/season.DegreeDayRule], [example.org/sapreckoner/tapping/season.BloomRule].
// [example.org/sapreckoner/tapping/season.LookAhead] reads a forecast, and
// [example.org/sapreckoner/tapping/season.ProducingWeeks] runs the equation of Houle and others:
//
//	logit p = -5.09 + 0.722 N - 0.014 N^2 - 0.07 G      producing if p > 0.51
//
// Seasons are half-years, so that both hemispheres' calendars work, and dates
// of different years are compared without 29 February.
//
// # Sap
//
// [example.org/sapreckoner/tapping/season.SapModel] makes an honest, wide band of the published yields: by gravity
// unless a vacuum is given, and then with the disagreement of the sources as a
// range ([example.org/sapreckoner/tapping/season.VacuumGain]). A line full of falling sap draws its own vacuum, 1 inHg
// for 1.125 ft ([example.org/sapreckoner/tapping/season.NaturalVacuum]). [example.org/sapreckoner/tapping/season.PailRound] tells which pails overflow before
// the next round, and [example.org/sapreckoner/tapping/season.SapSugar] what sugar was published for a species.
//
// # Numbers
//
// Functions test their documented range and answer with a
// [*example.org/sapreckoner/units.RangeError]; readers of tables answer with a
// [*records.RowError]. Nothing here is a setting, and everything is safe for
// concurrent use.
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
package tapping
