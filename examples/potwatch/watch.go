package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Limits on what is read.
const (
	mostReadings = 10000
	mostStops    = 1000
	longest      = 24 * time.Hour
)

// watch is the timed readings and what comes of them.
type watch struct {
	readings []finish.WatchReading
	start    time.Time // of the clock; zero if minutes were counted
	clock    bool

	passed int // readings of liquid too thin to tell, before the boil

	finish.Outlook
	tooFew bool // since the last setback
	fire   fire // if it climbs and there are coals
}

// readings reads the readings and looks out.
func (p *evening) readings(e *cli.Env) (*watch, error) {
	s, t := p.given, p.thermometer
	file, err := e.Open("readings", s.readings)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	w, err := readReadings(s.readings, file)
	if err != nil {
		return nil, err
	}
	w.pass(t)
	boils := slices.Clone(w.readings)
	for i, r := range boils {
		boils[i].Shown = t.surface(r.Shown)
	}
	w.Outlook, err = finish.Watch{Target: s.target, Water: t.water, WaterBy: s.waterBy, ProbeBy: s.probeBy, Sugar: t.sugar(), Learned: t.learned != nil}.Outlook(boils...)
	if errors.Is(err, finish.ErrFewReadings) {
		w.tooFew, err = true, nil
	}
	if err != nil {
		return nil, cli.For("readings", err)
	}
	if s.coals > 0 && w.ahead() {
		w.fire, err = w.watchFire(s, t)
	}
	return w, err
}

// ahead tells that it climbs to a target which is not reached yet.
func (w *watch) ahead() bool { return w.Climbs && w.Left >= 0 && w.Left <= longest }

// thinnest is the strength from which a watch goes by a thermometer.
const thinnest units.Brix = 30

// pass leaves out the readings before the boil, too cold for a strength that a
// thermometer tells, and those before two that were as cold since: sap was
// poured in. One cold reading among warm ones is a dip, which the watch finds.
func (w *watch) pass(t *thermometer) {
	cold := func(r finish.WatchReading) bool {
		b, err := t.strength(t.surface(r.Shown))
		return err == nil && b < thinnest
	}
	for i, r := range w.readings {
		if cold(r) && (i == w.passed || cold(w.readings[i-1])) {
			w.passed = i + 1
		}
	}
	w.readings = w.readings[w.passed:]
}

// either opens a file that has one of two columns, and tells whether it is the first.
// Columns are what its first line is like, and none tells that neither is there.
func either(path string, file io.Reader, columns, a, b, none string) (r *records.Reader, first bool, err error) {
	if r, err = records.Open(path, file); err != nil {
		if err == io.EOF {
			err = fmt.Errorf("%s: the file is empty: the first line names the columns, such as %s", path, columns)
		}
		return nil, false, err
	}
	switch first = r.Names(a); {
	case !first && !r.Names(b):
		err = r.Fail("", errors.New(none))
	case first && r.Names(b):
		err = r.Fail("", fmt.Errorf("%s and %s say the same: leave one of the columns out", a, b))
	}
	return r, first, err
}

func readReadings(path string, file io.Reader) (*watch, error) {
	w := new(watch)
	var (
		when  time.Time
		after time.Duration
		shown units.Temperature
	)
	r, clock, err := either(path, file, "time,shown_f", "time", "after", "no column for the time of a reading: name it time or after_min")
	if err != nil {
		return nil, err
	}
	at, column := records.Hours("after", &after), "after"
	if w.clock = clock; clock {
		at, column = records.Time("time", &when, "15:04", "15:04:05"), "time"
	}
	if err := r.Bind(at, records.Temperature("shown", &shown)); err != nil {
		return nil, err
	}
	err = cli.Rows(r, mostReadings, "", func() error {
		if w.clock {
			if len(w.readings) == 0 {
				w.start = when
			}
			// Past midnight the clock begins anew.
			if after = when.Sub(w.start); after < 0 {
				after += longest
			}
		}
		if n := len(w.readings); n > 0 && !(after > w.readings[n-1].At && after < w.readings[n-1].At+longest/2) {
			return r.Fail(column, errors.New("not after the reading above it, or 12 hours after it: sort the readings of one boil by time"))
		}
		const low, high = 0, 150
		if c := shown.Celsius(); !(c >= low && c <= high) {
			return r.Fail("shown", &units.RangeError{Arg: "temperature", Value: c, Low: low, High: high, Unit: "C", Hint: "a pot of syrup boils near 219 F"})
		}
		w.readings = append(w.readings, finish.WatchReading{At: after, Shown: shown})
		return nil
	})
	return w, err
}

// at shows a time since the first reading, or by the clock.
func (w *watch) at(d time.Duration) cli.Value {
	if w.clock {
		return cli.Clock(w.start, w.start.Add(d))
	}
	return minutes(d)
}

// minutes shows a stretch of time to a tenth of a minute.
func minutes(d time.Duration) cli.Value { return cli.Number(d.Minutes(), 1, "min") }
