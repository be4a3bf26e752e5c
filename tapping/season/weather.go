package season

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// The range of weather: colder and warmer than any station record.
const (
	minAir = -95.0
	maxAir = 60.0
)

// The years that a calendar date may have.
const (
	minYear = 1700
	maxYear = 2300
)

// Day is a day of weather: its calendar date and its lowest and highest air
// temperature. Of Date only year, month and day count.
type Day struct {
	Date     time.Time
	Min, Max units.Temperature
}

// Gap is a stretch of days without weather, both ends included.
type Gap struct {
	From, To time.Time
	Line     int // where a file shows it: the first row after the gap, or its first row without figures; else 0
}

// Days returns how many days are missing.
func (g Gap) Days() int { return dayNumber(g.To) - dayNumber(g.From) + 1 }

// Weather is a run of days in calendar order, each once, perhaps with gaps.
// Make it with [NewWeather] or [ReadWeather]. The zero Weather has no days.
type Weather struct {
	days []Day
	gaps []Gap
}

// NewWeather returns the weather of the given days.
//
// Dates ascend, in the years 1700 to 2300; temperatures lie in -95 to 60 C and
// the minimum is not above the maximum. Errors wrap [records.ErrOrder],
// [records.ErrDuplicate] or [units.ErrRange].
func NewWeather(days []Day) (Weather, error) {
	var b weatherBuilder
	for i, d := range days {
		if err := b.add(d, 0); err != nil {
			return Weather{}, ofDay("season.NewWeather", i, err)
		}
	}
	return b.w, nil
}

// Days returns the days.
func (w Weather) Days() []Day { return slices.Clone(w.days) }

// Gaps returns the stretches without weather between the first and the last
// day that were told.
func (w Weather) Gaps() []Gap { return slices.Clone(w.gaps) }

// Len returns the number of days.
func (w Weather) Len() int { return len(w.days) }

// Shift returns the same days, warmer by that much.
//
// Range: difference -10 to 10 C.
func (w Weather) Shift(by units.TempDiff) (Weather, error) {
	const most = 10.0
	if err := limit.WithinAs("season.Weather.Shift", "by", "difference", by, -most, most, 1, "C deg", "1 C shows how much a season hangs on a degree"); err != nil {
		return Weather{}, err
	}
	days := slices.Clone(w.days)
	for i := range days {
		days[i].Min, days[i].Max = days[i].Min.Add(by), days[i].Max.Add(by)
	}
	return Weather{days, w.gaps}, nil
}

// weatherBuilder takes days in order and notes the gaps between them.
type weatherBuilder struct {
	w    Weather
	last int // number of the last day told
	any  bool
}

// seen checks the date's place in the calendar and notes a gap before it.
func (b *weatherBuilder) seen(date time.Time, line int) error {
	if err := limit.InAs(dayFn, yearOf, "year", float64(date.Year()), minYear, maxYear, "", "write the year with four digits"); err != nil {
		return err
	}
	n := dayNumber(date)
	switch {
	case b.any && n == b.last:
		return fmt.Errorf("%s: %w", date.Format(time.DateOnly), records.ErrDuplicate)
	case b.any && n < b.last:
		return fmt.Errorf("%s after %s: %w", date.Format(time.DateOnly), dateOf(b.last).Format(time.DateOnly), records.ErrOrder)
	case b.any && n > b.last+1:
		b.gap(b.last+1, n-1, line)
	}
	b.last, b.any = n, true
	return nil
}

// gap adds missing days, to the last gap where they follow it.
func (b *weatherBuilder) gap(from, to, line int) {
	if k := len(b.w.gaps) - 1; k >= 0 && dayNumber(b.w.gaps[k].To)+1 == from {
		b.w.gaps[k].To = dateOf(to)
		return
	}
	b.w.gaps = append(b.w.gaps, Gap{dateOf(from), dateOf(to), line})
}

// add takes a day with figures.
func (b *weatherBuilder) add(d Day, line int) error {
	if err := checkAir(dayFn, minOf, "minimum", d.Min, airHint); err != nil {
		return err
	}
	if err := checkAir(dayFn, maxOf, "maximum", d.Max, airHint); err != nil {
		return err
	}
	if err := limit.WithinAs(dayFn, minOf, "minimum", d.Min.Celsius(), minAir, d.Max.Celsius(), 1, "C", "the minimum of a day is not above its maximum"); err != nil {
		return err
	}
	if err := b.seen(d.Date, line); err != nil {
		return err
	}
	d.Date = dateOf(b.last)
	b.w.days = append(b.w.days, d)
	return nil
}

// skip takes a day that the file has no figures for.
func (b *weatherBuilder) skip(date time.Time, line int) error {
	if err := b.seen(date, line); err != nil {
		return err
	}
	b.gap(b.last, b.last, line)
	return nil
}

// What the errors of a day name until the caller is known.
const (
	dayFn  = "season.Day"
	minOf  = "Day.Min"
	maxOf  = "Day.Max"
	yearOf = "Day.Date"
)

// ofDay gives an error of the builder the name of the caller and of the day in
// the list.
func ofDay(fn string, i int, err error) error {
	var e *units.RangeError
	if errors.As(err, &e) {
		renamed := *e
		renamed.Func, renamed.Arg = fn, limit.Item("days", i, strings.TrimPrefix(e.Arg, "Day."))
		renamed.What = fmt.Sprintf("day %d: %s", i+1, cmp.Or(e.What, "year"))
		return &renamed
	}
	return &entryError{fn, "day", i, err}
}

// An entryError is an error of a day, or a gathering, of a list.
type entryError struct {
	fn, of string
	i      int
	err    error
}

// Error tells the function, the entry and the reason.
func (e *entryError) Error() string { return e.fn + ": " + e.Text(units.Both) }

// Text tells the entry and the reason to a person.
func (e *entryError) Text(in units.System) string {
	return fmt.Sprintf("%s %d: %s", e.of, e.i+1, units.Reason(e.err, in))
}

// Unwrap returns the reason.
func (e *entryError) Unwrap() error { return e.err }

const airHint = "mind the unit; leave the cell empty where the station has no figure"

func checkAir(fn, arg, what string, t units.Temperature, hint string) error {
	return limit.WithinAs(fn, arg, what, t.Celsius(), minAir, maxAir, 1, "C", hint)
}

// dayNumber counts calendar days from 1 January 1970.
func dayNumber(t time.Time) int {
	y, m, d := t.Date()
	return int(math.Floor(float64(time.Date(y, m, d, 0, 0, 0, 0, time.UTC).Unix()) / 86400))
}

// dateOf is the inverse of dayNumber, in UTC.
func dateOf(n int) time.Time { return time.Unix(int64(n)*86400, 0).UTC() }
