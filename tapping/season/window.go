package season

import (
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// Spread is how a date of the season lies over many years.
type Spread struct {
	Years    int // how many there are
	Earliest CalendarDay
	Lower    CalendarDay // a quarter of the years is earlier
	Median   CalendarDay
	Upper    CalendarDay // a quarter is later
	Latest   CalendarDay
}

// CalendarDay is a date without a year.
type CalendarDay struct {
	Month time.Month
	Day   int
}

// In returns the date in the given year.
func (c CalendarDay) In(year int) time.Time {
	return time.Date(year, c.Month, c.Day, 0, 0, 0, 0, time.UTC)
}

// String prints month and day as "March 9".
func (c CalendarDay) String() string { return c.In(commonYear).Format("January 2") }

// commonYear is a year of 365 days: dates of all years are compared on its
// calendar, where 29 February stands with 28 February.
const commonYear = 2023

func commonDay(date time.Time) int {
	_, m, d := date.Date()
	if m == time.February && d == 29 {
		d = 28
	}
	return dayNumber(time.Date(commonYear, m, d, 0, 0, 0, 0, time.UTC))
}

// spreadOf sorts the days in place. Between two days it takes the nearer one,
// the earlier at a tie: no run is missed by half a day.
func spreadOf(days []int) Spread {
	if len(days) == 0 {
		return Spread{}
	}
	slices.Sort(days)
	at := func(share float64) CalendarDay {
		d := dateOf(int(math.Ceil(quantile(days, share) - 0.5)))
		return CalendarDay{d.Month(), d.Day()}
	}
	return Spread{len(days), at(0), at(0.25), at(0.5), at(0.75), at(1)}
}

// quantile interpolates between sorted values.
func quantile(sorted []int, share float64) float64 {
	x := share * float64(len(sorted)-1)
	i := int(x)
	if i+1 == len(sorted) {
		return float64(sorted[i])
	}
	return float64(sorted[i]) + (x-float64(i))*float64(sorted[i+1]-sorted[i])
}

// Window is what a station's past tells about the season to come.
type Window struct {
	First    Spread // first run
	Last     Spread // last run
	FlowDays float64
	Years    int   // seasons used, with or without a run
	Skipped  []int // years left out, with more than a tenth of the half-year missing
}

// missingAllowed is the share of a season that may be missing.
const missingAllowed = 0.1

// History returns when the runs began and ended in the seasons of a station's
// weather, and the median number of running days. Seasons with more than a
// tenth of their days missing are left out and named. Taps that are in before
// First.Lower miss no first run in three years of four, but a hole dries:
// [TapTiming] says when to drill.
//
// It refuses a rule that [Seasons] refuses.
func History(w Weather, rule Rule) (Window, error) {
	if err := rule.check("season.History"); err != nil {
		return Window{}, err
	}
	return history(w, rule), nil
}

func history(w Weather, rule Rule) Window {
	var (
		out               Window
		first, last, flow []int
	)
	for _, s := range w.seasons(rule) {
		if float64(s.Missing) > missingAllowed*float64(s.Days+s.Missing) {
			out.Skipped = append(out.Skipped, s.Year)
			continue
		}
		out.Years++
		flow = append(flow, s.FlowDays)
		if !s.First.IsZero() {
			first = append(first, commonDay(s.First))
			last = append(last, commonDay(s.Last))
		}
	}
	out.First, out.Last = spreadOf(first), spreadOf(last)
	if len(flow) > 0 {
		slices.Sort(flow)
		out.FlowDays = quantile(flow, 0.5)
	}
	return out
}

// Sensitivity returns the [History] of the same weather so much colder and warmer,
// and as it was: how much the window hangs on a degree, or on a thermometer in
// the wrong place.
//
// Range: difference -10 to 10 C, of which the size counts; 1 C is a good
// measure. The rule as in [History].
func Sensitivity(w Weather, rule Rule, by units.TempDiff) (colder, asRead, warmer Window, err error) {
	const fn = "season.Sensitivity"
	if err := rule.check(fn); err != nil {
		return Window{}, Window{}, Window{}, err
	}
	up, err := w.Shift(by.Abs())
	if err != nil {
		return Window{}, Window{}, Window{}, units.Under(fn, err)
	}
	down, err := w.Shift(-by.Abs())
	if err != nil {
		return Window{}, Window{}, Window{}, units.Under(fn, err)
	}
	return history(down, rule), history(w, rule), history(up, rule), nil
}

// Outlook is what a forecast of the weather of some days tells of its sap.
type Outlook struct {
	FlowDays []time.Time // days on which sap runs by the criterion
	DrillOn  []time.Time // days up to the first of them, or all, that warm up to [tapping.ColdestDrilling] or more
}

// LookAhead reads a forecast: which days run, and on which day before the first
// of them the bark is not too cold to drill. A zero criterion gives the zero
// Outlook. Beyond the days of a forecast, see [History].
func LookAhead(forecast Weather, c Criterion) Outlook {
	var o Outlook
	if c == (Criterion{}) {
		return o
	}
	for _, d := range forecast.days {
		if len(o.FlowDays) == 0 && !tapping.TooColdToDrill(d.Max) {
			o.DrillOn = append(o.DrillOn, d.Date)
		}
		if c.Met(d) {
			o.FlowDays = append(o.FlowDays, d.Date)
		}
	}
	return o
}
