package tapping

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"time"

	"example.org/sapreckoner/units"
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
// It reads line by line, lines of up to 64 KiB. Errors are [*RowError].
func ReadWeather(r io.Reader) (Weather, error) {
	t, err := newRows(r)
	if err != nil {
		return Weather{}, err
	}
	date, err := t.column("date")
	if err != nil {
		return Weather{}, err
	}
	low, errLow := t.column("tmin_c", "tmin_f")
	high, errHigh := t.column("tmax_c", "tmax_f")
	hour, errHour := t.column("time")
	temp, errTemp := t.column("temp_c", "temp_f")
	if err := cmp.Or(errLow, errHigh, errHour, errTemp); err != nil {
		return Weather{}, err
	}
	switch {
	case date >= 0 && low >= 0 && high >= 0:
		return readDaily(t, date, low, high)
	case hour >= 0 && temp >= 0:
		return readHourly(t, hour, temp)
	}
	return Weather{}, &RowError{Line: t.line, Hint: "want date, tmin_c, tmax_c (or tmin_f, tmax_f) for days, time, temp_c (or temp_f) for hours; the unit stands in the header", Err: ErrColumns}
}

func readDaily(t *rows, date, low, high int) (Weather, error) {
	var b weatherBuilder
	for {
		ok, err := t.next()
		if err != nil || !ok {
			return finish(b, err)
		}
		d, err := t.date(date)
		if err != nil {
			return Weather{}, err
		}
		if len(t.cells[low]) == 0 || len(t.cells[high]) == 0 {
			if err := b.skip(d, t.line); err != nil {
				return Weather{}, t.dayError(date, date, date, err)
			}
			continue
		}
		day := Day{Date: d}
		if day.Min, err = t.temperature(low); err != nil {
			return Weather{}, err
		}
		if day.Max, err = t.temperature(high); err != nil {
			return Weather{}, err
		}
		if err := b.add(day, t.line); err != nil {
			return Weather{}, t.dayError(date, low, high, err)
		}
	}
}

// finish gives the weather, or nothing where reading failed.
func finish(b weatherBuilder, err error) (Weather, error) {
	if err != nil {
		return Weather{}, err
	}
	return b.w, nil
}

// dayError puts the builder's error under the cell that it is about.
func (t *rows) dayError(date, low, high int, err error) error {
	i := date
	var re *units.RangeError
	if errors.As(err, &re) {
		switch re.Arg {
		case "minimum":
			i = low
		case "maximum":
			i = high
		}
	}
	return t.fail(i, "", err)
}

// temperature reads cell i on the scale that the column's name ends in.
func (t *rows) temperature(i int) (units.Temperature, error) {
	x, err := t.number(i)
	if name := t.names[i]; name[len(name)-1] == 'f' {
		return units.Fahrenheit(x), err
	}
	return units.Celsius(x), err
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
		return &RowError{Line: h.line, Column: "time", Err: err}
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

func readHourly(t *rows, hour, temp int) (Weather, error) {
	var (
		b    weatherBuilder
		h    hourDay
		last time.Time
	)
	for {
		ok, err := t.next()
		if err != nil {
			return Weather{}, err
		}
		if !ok {
			return finish(b, h.into(&b))
		}
		at, err := t.time(hour)
		if err != nil {
			return Weather{}, err
		}
		if h.line != 0 && !at.After(last) {
			reason := ErrOrder
			if at.Equal(last) {
				reason = ErrDuplicate
			}
			return Weather{}, t.fail(hour, "hours ascend, in standard time all year", fmt.Errorf("%s: %w", at.Format("2006-01-02T15:04"), reason))
		}
		if h.line == 0 || at.YearDay() != last.YearDay() || at.Year() != last.Year() {
			if err := h.into(&b); err != nil {
				return Weather{}, err
			}
			h = hourDay{day: Day{Date: at}, line: t.line}
		}
		last = at
		if len(t.cells[temp]) == 0 {
			continue
		}
		v, err := t.temperature(temp)
		if err != nil {
			return Weather{}, err
		}
		if err := checkAir("temperature", v); err != nil {
			return Weather{}, t.fail(temp, "", err)
		}
		h.take(v)
	}
}

// time reads cell i as 2024-03-01T14:00, with a space for the T and with
// seconds if need be.
func (t *rows) time(i int) (time.Time, error) {
	cell := string(t.cells[i])
	for _, layout := range []string{"2006-01-02T15:04", "2006-01-02 15:04", "2006-01-02T15:04:05", "2006-01-02 15:04:05"} {
		if len(layout) != len(cell) || layout[10] != cell[10] {
			continue
		}
		if at, err := time.Parse(layout, cell); err == nil {
			return at, nil
		}
	}
	return time.Time{}, t.fail(i, "want a time such as 2024-03-01T14:00; have "+quote(t.cells[i]), ErrSyntax)
}
