package folder

import (
	"fmt"
	"strings"
	"time"

	"example.org/sapreckoner/units/records"
)

// A spring watches the days of a weather file for Celsius under a Fahrenheit
// header: from January to April some day goes above 30 F wherever sap runs. The
// bounds are our own.
type spring struct {
	year, line, days int
	highest          float64
	week
}

// A week is what few days tell: lows and highs as Celsius has them where sap runs.
type week struct {
	days, late        int // with both; of them from March on
	high, low         [2]float64
	swings            float64 // from low to high, all together
	beyond, confirmed bool    // a day that is not like that; a cell with its unit
}

const (
	fewDays = 20 // of figures, or nothing is said
	noThaw  = 30 // F

	fewLike  = 7   // days that look like Celsius
	coldest  = -20 // of such lows
	mildest  = 5
	coldHigh = -10 // of such highs
	mildHigh = 25
	// A week of hard frost in F lies in that span too. In January and February it is
	// told by its swing: from night to day it is seldom under 11 degrees of F for a week,
	// nor over 10 of C.
	mostSwing = 10
)

func (s *spring) told(file string) error {
	const way = "for Celsius name the columns tmin_c and tmax_c; if it was so cold, write one high with its unit, as %s F"
	fail := func(format string, args ...any) error {
		return &records.Error{File: file, Line: s.line, Err: fmt.Errorf(format, args...)}
	}
	switch w := &s.week; {
	case s.days >= fewDays && s.highest < noThaw:
		return fail("no day of the spring of %d goes above %d F: "+way, s.year, noThaw, digits(s.highest))
	case w.beyond || w.confirmed || w.days < fewLike || !(w.high[1] > 0):
		return nil
	case w.late < fewLike && w.swings > mostSwing*float64(w.days):
		return nil
	default:
		return fail("all lows of the spring of %d lie from %s to %s F and all highs from %s to %s F: "+way,
			s.year, digits(w.low[0]), digits(w.low[1]), digits(w.high[0]), digits(w.high[1]), digits(s.highest))
	}
}

// day adds a day.
func (w *week) day(low, high float64, month time.Month) {
	if w.days == 0 {
		w.low, w.high = [2]float64{low, low}, [2]float64{high, high}
	}
	w.low = [2]float64{min(w.low[0], low), max(w.low[1], low)}
	w.high = [2]float64{min(w.high[0], high), max(w.high[1], high)}
	w.days++
	if month >= time.March {
		w.late++
	}
	w.swings += high - low
	w.beyond = w.low[0] < coldest || w.low[1] > mildest || w.high[0] < coldHigh || w.high[1] > mildHigh
}

// thaw watches the lows and highs of a spring. The row was read: what it wrote is
// looked at again for the units in its cells.
func (t *tolerant) thaw(on time.Time, written []string) {
	month, runs := early(on, t.s.South)
	if t.spring == nil || !runs {
		return
	}
	high, ok, bare := t.figure(t.highest, written)
	if t.cells[t.highest] == "" {
		return
	}
	if t.spring.year != on.Year() {
		t.tell(t.spring.told(t.file))
		*t.spring = spring{year: on.Year(), line: t.r.Line(), highest: -1e9}
	}
	if !ok || !bare {
		high = noThaw // its unit stands in the cell: there is no doubt
		t.spring.confirmed = true
	}
	t.spring.days++
	t.spring.highest = max(t.spring.highest, high)
	if t.lowest < 0 || t.cells[t.lowest] == "" {
		return
	}
	low, ok, bare := t.figure(t.lowest, written)
	if !ok || !bare {
		t.spring.confirmed = true
		return
	}
	t.spring.week.day(low, high, month)
}

// figure is a cell of the row, whether it is a number, and whether without a unit.
func (t *tolerant) figure(i int, written []string) (x float64, ok, bare bool) {
	x, ok = quick(t.cells[i])
	_, bare = plain(strings.TrimSpace(written[i]))
	return x, ok, bare
}
