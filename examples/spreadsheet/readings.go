package main

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"io"
	"math/bits"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Bounds of a file of readings.
const (
	maxDeliveries = 1_000_000 // a sheet has 1,048,576 lines
	maxProducers  = 20_000
	maxProducer   = 80 // letters
	minYear       = 2000
	maxYear       = 2099
)

//go:embed testdata/coop/bought.csv
var demo []byte

// A reading is one delivery as the file has it.
type reading struct {
	line      int
	day       string // as 2026-03-09
	date      time.Time
	producer  string
	who       int        // place of the producer, in the order in which they first appear
	gallons   hundredths // US gallons
	read, cup plain      // Brix, on the hydrometer; in the unit of the file
}

// A file of readings. It is read row by row, and rows are not kept.
type file struct {
	name       string
	demo       bool
	rows       *records.Reader
	cell       struct{ date, producer, volume, reading, cup string } // of the row
	unit       struct{ volume, cup string }                          // in the header
	who        string                                                // what the header calls the producer
	read       int                                                   // deliveries
	days       map[string]time.Time                                  // as they are written
	producers  map[string]int                                        // their places
	cupUnit    string                                                // as in the header of the sheet
	cupTemp    func(float64) units.Temperature                       // from that unit
	nanoliters uint64                                                // in the unit of the volume
}

// openFile opens the file called name, standard input for -, or the demo. The
// caller closes what comes with it.
func openFile(e *cli.Env, name string) (*file, io.Closer, error) {
	f, in := &file{name: name}, io.NopCloser(bytes.NewReader(demo))
	if name == "" {
		f.name, f.demo = "demo.csv", true
	} else {
		var err error
		if in, err = e.Open("in", name); err != nil {
			return nil, nil, err
		}
		if name == "-" {
			f.name = "standard input"
		}
	}
	if err := f.begin(in); err != nil {
		return nil, nil, errors.Join(err, in.Close())
	}
	return f, in, nil
}

// begin reads the header.
func (f *file) begin(in io.Reader) (err error) {
	f.who = "producer"
	if f.rows, err = records.Open(f.name, in); err == nil && f.rows.Names("seller") {
		f.who = "seller"
	}
	cols := []records.Col{
		records.Cell("date", &f.cell.date, nil),
		records.Cell(f.who, &f.cell.producer, nil),
		records.Cell("volume", &f.cell.volume, &f.unit.volume, "us_gal", "imp_gal", "l"),
		records.Cell("reading", &f.cell.reading, nil, "brix"),
		records.Cell("cup", &f.cell.cup, &f.unit.cup, "f", "c"),
	}
	switch err {
	case nil:
		err = f.rows.Bind(cols...)
	case io.EOF: // which New words
		f.rows, err = records.New(f.name, in, cols...)
	}
	f.days, f.producers, f.nanoliters = map[string]time.Time{}, map[string]int{}, nanoliters[f.unit.volume]
	f.cupUnit, f.cupTemp = "F", units.Fahrenheit
	if f.unit.cup == "c" {
		f.cupUnit, f.cupTemp = "C", units.Celsius
	}
	return err
}

// next reads a row into r. At the end it returns [io.EOF], unless there was no row.
func (f *file) next(r *reading) error {
	switch err := f.rows.Next(); {
	case err == io.EOF && f.read == 0:
		return &records.Error{File: f.name, Line: f.rows.Line() + 1, Err: errors.New("no deliveries below the header")}
	case err != nil:
		return err
	case f.read == maxDeliveries:
		return f.rows.Fail("", fmt.Errorf("more than %d deliveries, and a sheet has not many more lines: split the file by month or by producer", maxDeliveries))
	}
	f.read++
	r.line, r.day, r.producer = f.rows.Line(), f.cell.date, f.cell.producer
	column, err := "date", f.date(r)
	if err == nil {
		column, err = f.who, f.number(r)
	}
	if err == nil {
		column, err = "volume", f.volume(r)
	}
	if err == nil {
		column = "reading"
		r.read, err = plainOf(f.cell.reading)
	}
	if err == nil {
		column = "cup"
		r.cup, err = plainOf(f.cell.cup)
	}
	if err != nil {
		return f.rows.Fail(column, err)
	}
	return nil
}

func (f *file) date(r *reading) (err error) {
	var known bool
	if r.date, known = f.days[r.day]; known {
		return nil
	}
	if r.date, err = dateOf(r.day); err == nil {
		f.days[r.day] = r.date // one of a hundred years
	}
	return err
}

// dateOf reads a day.
func dateOf(text string) (time.Time, error) {
	day, err := time.Parse(time.DateOnly, text)
	if err != nil || day.Year() < minYear || day.Year() > maxYear {
		return time.Time{}, fmt.Errorf("%q is not a day such as 2026-03-09, of the years %d to %d", clip.Text(text), minYear, maxYear)
	}
	return day, nil
}

// number finds the place of a producer.
func (f *file) number(r *reading) error {
	var known bool
	if r.who, known = f.producers[r.producer]; known {
		return nil
	}
	if err := nameOf(r.producer, "who is to be paid?"); err != nil {
		return err
	}
	if r.who = len(f.producers); r.who == maxProducers {
		return fmt.Errorf("more than %d producers: split the file", maxProducers)
	}
	f.producers[r.producer] = r.who
	return nil
}

// nameOf checks a name. An empty one is asked for.
func nameOf(name, ask string) error {
	if name == "" {
		return errors.New("it is empty: " + ask)
	}
	return plainText(name)
}

// plainText checks a text for its length and what it may hold.
func plainText(text string) error {
	switch n := utf8.RuneCountInString(text); {
	case n > maxProducer:
		return fmt.Errorf("%d letters: %d is the most", n, maxProducer)
	case strings.ContainsFunc(text, unicode.IsControl):
		return errors.New("it has a line break or another control character: remove that")
	}
	return nil
}

// nanoliters is what the units of a volume hold: 1 US gal is 231 cubic inches. All
// are exact (NIST Handbook 44, Appendix C).
var nanoliters = map[string]uint64{"us_gal": 3785411784, "imp_gal": 4546090000, "l": 1000000000}

const (
	minGallons hundredths = 1
	maxGallons hundredths = 1e9
)

// volume rounds to a hundredth of a gallon, halves up. The 18 digits of a number and
// the 10 of its unit are no more than 128 bits hold.
func (f *file) volume(r *reading) error {
	x, err := plainOf(f.cell.volume)
	if err != nil {
		return err
	}
	high, low := bits.Mul64(uint64(max(x.n, -x.n)), 100*f.nanoliters)
	per := tens[x.places] * nanoliters["us_gal"]
	n, rest := bits.Div64(high, low, per)
	if rest >= per-rest {
		n++
	}
	if r.gallons = hundredths(n); x.n < 0 {
		r.gallons = -r.gallons
	}
	if r.gallons < minGallons || r.gallons > maxGallons {
		return fmt.Errorf("%s US gal is outside %s to %s US gal: what is delivered is more than nothing", r.gallons, minGallons, maxGallons)
	}
	return nil
}
