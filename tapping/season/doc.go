// Package season reads the weather and tells when the sap runs, when to tap, how
// much comes and when it ends.
//
// # Season
//
// [ReadWeather] reads daily or hourly temperatures; gaps and days given twice
// are told with their line. A [Criterion] says which days run, each named by
// its paper. [History] makes a window of a station's past: the median and
// spread of the first and the last run. A hole dries in weeks: [TapTiming]
// tells which date catches the most running days within its life, and on a day
// of the season whether to tap now, wait, or leave it. A [DegreeDayRule] sums
// warmth by the method of the calendar to compare with, such as [BloomRule].
// [LookAhead] reads a forecast, [LookForEnd] joins the signs of the season's end
// into a warning window, and [ProducingWeeks] runs the equation of Houle and others:
//
//	logit p = -5.09 + 0.722 N - 0.014 N^2 - 0.07 G      producing if p > 0.51
//
// Seasons are half-years, so that both hemispheres' calendars work, and dates
// of different years are compared without 29 February.
//
// # Sap
//
// [SapModel] makes an honest, wide band of the published yields: by gravity
// unless a vacuum is given, and then with the disagreement of the sources as a
// range ([VacuumGain]). [SapRecord] learns from one's own gatherings, and tells the
// sap of a week as likely and 8 in 10. [CompareGear] reckons a season with pails,
// tubing and a pump, by [SapByDepth] and [CleaningFigures] too. A line full of falling sap draws its own vacuum, 1 inHg
// for 1.125 ft ([NaturalVacuum]). [PailRound] tells which pails overflow before
// the next round, and [SapSugar] what sugar was published for a species.
//
// # Numbers
//
// Outside its range a function answers NaN, or the zero value, and a
// [*units.RangeError]; a rule without a criterion is a [*CriterionError]. Readers of
// tables answer with a [*records.RowError].
//
// Weather, criteria, rules of degree-days and methods go out as JSON and come back by
// their constructors. A [SapModel], a [SapRecord] and a [TapTiming] do not: keep
// what they are made of.
//
// # Cautions
//
// A forecast of sap is a guess from the weather. Look up before you stand under a
// tree in wind and thaw, pull the spouts when the season ends, and taste no sap
// that is cloudy, ropy or sour.
//
// In the book: docs/theory/season.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package season
