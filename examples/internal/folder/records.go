package folder

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Records are the rows of the folder's files, all years, as they stand there.
// What a row does not tell is NaN, a zero time or an empty text.
type Records struct {
	Days     []Day
	Batches  []Batch
	Bottled  []Jars
	Blends   []Blend
	Bought   []Delivery
	Costs    []Cost
	Seasons  []PastSeason
	Pan      []Sweet
	lastYear int // of a date of the season's work
}

// readRecords reads the CSV files once the settings are read. Mistakes are
// [records.Error], whose File is [House.Shown]. A file that has some and is not
// needed is left aside; nil needs all.
func (h *House) readRecords(needs []string) (mistakes []error) {
	if h.files == nil {
		return nil
	}
	for _, file := range []struct {
		name string
		read func() []error
	}{
		{DaysFile, h.readDays}, {BatchesFile, h.readBatches}, {BottledFile, h.readBottled}, {BlendsFile, h.readBlends},
		{BoughtFile, h.readBought}, {CostsFile, h.readCosts}, {SeasonsFile, h.readSeasons}, {PanFile, h.readPan},
		{TreesFile, nil}, {HolesFile, nil}, {StopsFile, nil}, {WeatherFile, nil}, {JarsFile, nil}, {PeopleFile, nil}, {PaidFile, nil},
	} {
		before := h.Records
		var wrong []error
		if file.read != nil {
			wrong = file.read()
		} else {
			wrong = h.check(file.name)
		}
		switch {
		case len(wrong) == 0:
		case needs == nil || slices.Contains(needs, file.name):
			mistakes = append(mistakes, wrong...)
		default:
			h.Records = before
			if h.aside == nil {
				h.aside = map[string]bool{}
			}
			h.aside[file.name] = true
		}
	}
	return mistakes
}

// Season is the year that is asked for, or that of the last date on which
// something ran, boiled or was forecast; 0 if the folder has none.
func (h *House) Season() int {
	if h.season != 0 {
		return h.season
	}
	return h.lastYear
}

// InSeason reports whether a day is of that year.
func (h *House) InSeason(day time.Time) bool { return day.Year() == h.Season() }

// File opens a file of the folder that a program reads itself, as the readers of
// the library want it: commas, plain numbers in the units of the header, dates
// as 2034-03-10. Lines keep their numbers; what is wrong was told by [Open].
func (h *House) File(name string) (io.ReadCloser, bool) {
	if h.files == nil {
		return nil, false
	}
	t, err := h.open(name)
	return t, err == nil
}

// check reads through a file that a program reads itself.
func (h *House) check(name string) []error {
	t, err := h.open(name)
	if err != nil {
		return told(err)
	}
	defer t.Close()
	if t.r == nil {
		return h.empty(name)
	}
	if _, err := io.Copy(io.Discard, t); err != nil {
		return []error{err}
	}
	h.seen(name, t)
	return t.mistakes(nil)
}

// empty tells of a file that has no header.
func (h *House) empty(name string) []error {
	return []error{&records.Error{File: h.Shown(name), Err: errors.New("the file is empty: its first line is " + h.Settings.Header(name))}}
}

// told is an error that is not about a file that is not there.
func told(err error) []error {
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	return []error{err}
}

// seen keeps the last year of a file that tells of the season's work.
func (h *House) seen(name string, t *tolerant) {
	switch name {
	case DaysFile, BatchesFile, StopsFile, WeatherFile, BoughtFile, PanFile:
		h.lastYear = max(h.lastYear, t.course.latest)
	}
}

// mostRows are read of a file: more is no sugarhouse.
const mostRows = 1_000_000

// rows reads a file row by row.
func (h *House) rows(name string, cols []records.Col, row func(*records.Reader) error) []error {
	t, err := h.open(name)
	if err != nil {
		return told(err)
	}
	defer t.Close()
	if t.r == nil {
		return h.empty(name)
	}
	r, err := records.New(t.file, t, cols...)
	if err != nil {
		return t.mistakes([]error{err})
	}
	var behind []error
	for n := 0; len(behind) < mostMistakes; n++ {
		err := r.Next()
		if err == io.EOF {
			break
		}
		if n == mostRows {
			behind = append(behind, r.Fail("", fmt.Errorf("more than %d rows: this is no record of a sugarhouse", mostRows)))
			break
		}
		if err == nil {
			err = row(r)
		}
		if err != nil {
			behind = append(behind, err)
		}
		if r.Broken() {
			break
		}
	}
	h.seen(name, t)
	return t.mistakes(behind)
}

func given[Q ~float64](q Q) bool { return !math.IsNaN(float64(q)) }

// positive refuses an amount that is less than nothing, or more than any
// sugarhouse has. Of none told it is nil.
func positive[Q ~float64](r *records.Reader, column string, q, most Q) error {
	if given(q) && !(q >= 0 && q <= most) {
		return r.Fail(column, errors.New("out of range: check the figure and its unit"))
	}
	return nil
}

const (
	mostSap    = 1e6 * units.USGallon
	mostWeight = 1e6 * units.Kilogram
	mostName   = 60 // bytes
)

// name checks a name that stands on pages.
func name(r *records.Reader, column, text string) error {
	if len(text) > mostName {
		return r.Fail(column, fmt.Errorf("a name of %d bytes, more than %d: keep notes in the column note", len(text), mostName))
	}
	return nil
}

// whole reads a count.
func whole(r *records.Reader, column string, x float64, low, high int) (int, error) {
	if !(x >= float64(low) && x <= float64(high) && x == math.Trunc(x)) {
		return 0, r.Fail(column, fmt.Errorf("not a whole number from %d to %d", low, high))
	}
	return int(x), nil
}

// day asks for the column of the date.
func day(into *time.Time) records.Col { return records.Time("date", into, time.DateOnly) }

// sameName reports whether two names are meant to be one: case and spaces do not
// count.
func sameName(a, b string) bool { return alike(a) == alike(b) }
