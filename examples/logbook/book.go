package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/lookagain"
)

// What a season may hold. Rows are counted and forgotten; these are kept, so
// they are bounded.
const (
	reach       = 182 // days before and after the first gathering
	mostSources = 500
	mostBoils   = 5_000
	mostLots    = 5_000
	mostSizes   = 100
	longestName = 60
	shownWrong  = 20 // rows to mend on the page
)

// A total adds up lots: what boiling and pouring do not change.
type total struct {
	rows        int
	mass, sugar units.Mass
}

func (t *total) add(l sugar.Lot) {
	t.rows++
	t.mass += l.Mass()
	t.sugar += l.Sugar()
}

// lot returns the total as one lot at the label temperature.
func (t *total) lot() (sugar.Lot, error) {
	if t.mass == 0 {
		return sugar.Lot{}, nil
	}
	return sugar.NewLotByMass(t.mass, units.Brix(100*float64(t.sugar)/float64(t.mass)), label)
}

// label is the temperature at which a page counts volumes: 68 F.
var label = units.Celsius(20)

// day is what came in and went out on a day.
type day struct{ sap, syrup total }

// packed is what was drawn and packed of a lot of syrup.
type packed struct {
	drawn  total
	unlike int          // draws that are hardly syrup
	volume units.Volume // packed, by the labels
}

// size is the containers of one size.
type size struct {
	label units.Volume
	count int
}

// wrong is the rows that are left out.
type wrong struct {
	rows  int
	first []string
}

// A book is a season read from its files.
type book struct {
	given    *setup
	reads    func(fs.File) // tells what must not be replaced
	progress *cli.Progress
	wrong    wrong
	again    wrong          // rows that count, and are to be looked at again
	unseen   int            // rows that were not
	syrups   lookagain.List // of draws and packing
	lacks    []string       // files that are not there

	begun   bool
	origin  int // day of the first gathering, counted from 1970
	days    [2*reach + 1]day
	sources map[string]*total

	boils  []firing
	learns map[burnt][]fuel.Firing
	laid   map[stock]*laid
	boiled total

	lots  map[string]*packed
	sizes map[int64]*size
}

func newBook(s *setup, e *cli.Env) *book {
	return &book{given: s, reads: e.Reads, progress: e.Progress(), sources: map[string]*total{}, learns: map[burnt][]fuel.Firing{},
		laid: map[stock]*laid{}, lots: map[string]*packed{}, sizes: map[int64]*size{}, syrups: lookagain.List{Most: mostLooked}}
}

// read reads all files, the gatherings first: they tell which season it is.
func (b *book) read() error {
	for _, read := range []func() error{b.readGatherings, b.readBoils, b.readDraws, b.readPacking, b.readFuel} {
		if err := read(); err != nil {
			return err
		}
	}
	b.look(&b.syrups)
	b.syrups = lookagain.List{}
	return nil
}

// tooMany ends the reading of a file: what must be kept in memory would grow
// without bound.
type tooMany struct{ error }

func isTooMany(err error) bool {
	var limit tooMany
	return errors.As(err, &limit)
}

func full(what string, most int, hint string) error {
	return tooMany{fmt.Errorf("more than %d %s: %s", most, what, hint)}
}

// A sheet is one file to read.
type sheet struct {
	name   string
	needed bool
	cols   []records.Col
	one    []string // of these columns at least one must be there
	row    func(*records.Reader) error
}

// file reads a file. A row that is wrong is told and left out; what makes the
// file as a whole useless is returned.
func (b *book) file(f sheet) error {
	open, err := b.given.open(f.name, f.needed)
	if err != nil {
		return err
	}
	if open == nil {
		b.lacks = append(b.lacks, f.name)
		return nil
	}
	defer open.Close()
	b.reads(open)
	var bytes int64
	if info, err := open.Stat(); err == nil {
		bytes = info.Size()
	}
	shown := b.given.shown(f.name)
	r, err := records.New(shown, b.progress.Reader(shown, bytes, open), f.cols...)
	if err != nil {
		return clean(err)
	}
	if len(f.one) > 0 && !slices.ContainsFunc(f.one, r.Has) {
		return r.Fail("", fmt.Errorf("neither a column for %s: name one with its unit, -h lists them", strings.Join(f.one, " nor for ")))
	}
	for {
		err := r.Next()
		if err == io.EOF {
			return nil
		}
		if err == nil {
			err = f.row(r)
		}
		if err != nil {
			if r.Broken() || isTooMany(err) {
				return clean(err)
			}
			b.leaveOut(clean(err))
		}
	}
}

// leaveOut tells a row that is wrong, on standard error at once and on the page
// if it is among the first.
func (b *book) leaveOut(err error) {
	b.wrong.rows++
	if len(b.wrong.first) < shownWrong {
		b.wrong.first = append(b.wrong.first, err.Error())
	}
	// Where standard error cannot be written the exit status still tells.
	_, _ = fmt.Fprintln(b.progress, err)
}

// clean words an error for a person and takes out what would upset a terminal.
func clean(err error) error { return errors.New(cli.Line(err)) }

// named checks a name that is kept.
func named(r *records.Reader, column, name string) error {
	if len(name) > longestName {
		return r.Fail(column, fmt.Errorf("a name of %d bytes, more than %d: keep notes in a column of their own", len(name), longestName))
	}
	return nil
}

// dayOf counts days from 1970 by the clock on the wall.
func dayOf(t time.Time) int {
	const day = 24 * 60 * 60
	s := t.Unix()
	if s < 0 {
		s -= day - 1
	}
	return int(s / day)
}

// on returns the day of a time within the season.
func (b *book) on(r *records.Reader, column string, t time.Time) (*day, error) {
	n := dayOf(t)
	if !b.begun {
		b.begun, b.origin = true, n
	}
	if off := n - b.origin; off >= -reach && off <= reach {
		return &b.days[off+reach], nil
	}
	first := time.Unix(int64(b.origin)*24*60*60, 0).UTC()
	return nil, r.Fail(column, fmt.Errorf("%s is more than half a year from %s, the first gathering of the file: check the year",
		t.Format(time.DateOnly), first.Format(time.DateOnly)))
}

// date returns the day of an index into days.
func (b *book) date(i int) time.Time {
	return time.Unix(int64(b.origin+i-reach)*24*60*60, 0).UTC()
}

// A firing is one boil.
type firing struct {
	lit        time.Time
	fired      time.Duration
	sap, water units.Mass
	volume     units.Volume
	heat       units.Energy
	efficiency units.Share
	burnt
}

// burnt is a fuel with the basis of its heat: efficiencies on different ones do
// not compare.
type burnt struct {
	fuel string
	of   fuel.Basis
}

// stock is a fuel as it is laid in, by volume or by weight.
type stock struct {
	kind    string
	weighed bool
}

// laid is what came in and burned of a stock, in cubic meters or kilograms.
type laid struct{ in, burned float64 }

func (b *book) stock(k stock) *laid {
	l := b.laid[k]
	if l == nil {
		l = new(laid)
		b.laid[k] = l
	}
	return l
}
