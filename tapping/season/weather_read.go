package season

import (
	"errors"
	"fmt"
	"io"
	"math"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// hoursNeeded is how many hourly readings make a day: with fewer its minimum
// and maximum are not known.
const hoursNeeded = 20

// ReadWeather reads daily or hourly temperatures from a CSV table whose header
// carries the unit:
//
//	date,tmin_c,tmax_c        time,temp_f
//	2024-03-01,-6.1,4.4       2024-03-01T00:00,21
//	2024-03-02,,              2024-03-01T01:00,20.5
//
// Daily: date, one of tmin_c and tmin_f, one of tmax_c and tmax_f. Hourly: time
// and one of temp_c and temp_f, in standard time all year; of a day with fewer
// than 20 readings the extremes are not known, and it counts as missing. Other
// columns are passed over. An empty cell is a missing figure. Rows ascend.
// Missing days do no harm: see [Weather.Gaps], which tells them with their
// line. A day or an hour given twice is an error.
//
// It reads row by row, rows of up to 64 KiB. Errors are [*records.RowError].
func ReadWeather(r io.Reader) (Weather, error) {
	var b weatherBuilder
	t, err := records.Open("", r)
	switch {
	case err == io.EOF:
		err = &records.RowError{Err: errors.New("the table is empty: " + weatherHeader)}
	case err != nil:
	case t.Names("tmin") || t.Names("tmax"):
		err = b.readDaily(t)
	case t.Names("temp"):
		err = b.readHourly(t)
	default:
		err = t.Fail("", errors.New(weatherHeader))
	}
	if err != nil {
		return Weather{}, records.Row(err)
	}
	return b.w, nil
}

const weatherHeader = "the first line names date, tmin_c, tmax_c (or tmin_f, tmax_f) for days, time, temp_c (or temp_f) for hours"

func (b *weatherBuilder) readDaily(t *records.Reader) error {
	var day Day
	err := t.Bind(
		records.Time("date", &day.Date, time.DateOnly),
		records.Temperature("tmin", &day.Min).Blank(),
		records.Temperature("tmax", &day.Max).Blank(),
	)
	if err != nil {
		return err
	}
	for {
		switch err := t.Next(); {
		case err == io.EOF:
			return nil
		case err != nil:
			return err
		}
		if missing(day.Min) || missing(day.Max) {
			err = b.skip(day.Date, t.Line())
		} else {
			err = b.add(day, t.Line())
		}
		if err != nil {
			return t.Fail(dayColumn(err), err)
		}
	}
}

// missing reports whether the cell of a temperature was empty: one that is
// written is never NaN.
func missing(t units.Temperature) bool { return math.IsNaN(t.Celsius()) }

// dayColumn returns the column that an error of the builder is about.
func dayColumn(err error) string {
	var re *units.RangeError
	if errors.As(err, &re) {
		switch re.Arg {
		case minOf:
			return "tmin"
		case maxOf:
			return "tmax"
		}
	}
	return "date"
}

// An hourDay gathers the readings of one day.
type hourDay struct {
	day  Day
	n    int // readings
	line int // first row of the day
}

// into gives the day to the builder, as missing where the readings are too few.
func (h *hourDay) into(b *weatherBuilder) error {
	var err error
	switch {
	case h.line == 0:
		return nil
	case h.n < hoursNeeded:
		err = b.skip(h.day.Date, h.line)
	default:
		err = b.add(h.day, h.line)
	}
	if err != nil {
		return &records.RowError{Line: h.line, Column: "time", Err: err}
	}
	return nil
}

func (h *hourDay) take(temp units.Temperature) {
	if h.n == 0 || temp.Compare(h.day.Min) < 0 {
		h.day.Min = temp
	}
	if h.n == 0 || temp.Compare(h.day.Max) > 0 {
		h.day.Max = temp
	}
	h.n++
}

func (b *weatherBuilder) readHourly(t *records.Reader) error {
	var (
		at, last time.Time
		temp     units.Temperature
		h        hourDay
	)
	err := t.Bind(
		records.Time("time", &at, "2006-01-02T15:04", "2006-01-02 15:04", "2006-01-02T15:04:05", "2006-01-02 15:04:05"),
		records.Temperature("temp", &temp).Blank(),
	)
	if err != nil {
		return err
	}
	for {
		switch err := t.Next(); {
		case err == io.EOF:
			return h.into(b)
		case err != nil:
			return err
		}
		if h.line != 0 && !at.After(last) {
			reason := records.ErrOrder
			if at.Equal(last) {
				reason = records.ErrDuplicate
			}
			return t.Fail("time", fmt.Errorf("%s: %w: hours ascend, in standard time all year", at.Format("2006-01-02T15:04"), reason))
		}
		if h.line == 0 || dayNumber(at) != dayNumber(last) {
			if err := h.into(b); err != nil {
				return err
			}
			h = hourDay{day: Day{Date: at}, line: t.Line()}
		}
		last = at
		if missing(temp) {
			continue
		}
		if err := checkAir("season.ReadWeather", "temp", "temperature", temp, airHint); err != nil {
			return t.Fail("temp", err)
		}
		h.take(temp)
	}
}
