package main

import (
	"bytes"
	_ "embed"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"github.com/shopspring/decimal"

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

//go:embed testdata/demo.csv
var demo []byte

// A reading is one delivery as the file has it.
type reading struct {
	line     int
	date     time.Time
	producer string
	gallons  decimal.Decimal // to a hundredth
	read     decimal.Decimal // Brix, on the hydrometer
	cup      decimal.Decimal // in the unit of the file
}

// A file of readings. It is read row by row, and rows are not kept.
type file struct {
	name    string
	demo    bool
	rows    *records.Reader
	cell    struct{ date, producer, volume, reading, cup string } // of the row
	unit    struct{ volume, cup string }                          // in the header
	who     string                                                // what the header calls the producer
	read    int                                                   // deliveries
	cupUnit string                                                // as in the header of the sheet
	cupTemp func(float64) units.Temperature                       // from that unit
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
	f.cupUnit, f.cupTemp = "F", units.Fahrenheit
	if f.unit.cup == "c" {
		f.cupUnit, f.cupTemp = "C", units.Celsius
	}
	return err
}

// next reads a row. At the end it returns [io.EOF], unless there was no row.
func (f *file) next() (reading, error) {
	switch err := f.rows.Next(); {
	case err == io.EOF && f.read == 0:
		return reading{}, &records.Error{File: f.name, Line: f.rows.Line() + 1, Err: errors.New("no deliveries below the header")}
	case err != nil:
		return reading{}, err
	case f.read == maxDeliveries:
		return reading{}, f.rows.Fail("", fmt.Errorf("more than %d deliveries, and a sheet has not many more lines: split the file by month or by producer", maxDeliveries))
	}
	f.read++
	r := reading{line: f.rows.Line()}
	for _, cell := range []struct {
		column string
		read   func(*reading) error
	}{
		{"date", f.date}, {f.who, f.producer}, {"volume", f.volume},
		{"reading", func(r *reading) (err error) { r.read, err = plainNumber(f.cell.reading); return err }},
		{"cup", func(r *reading) (err error) { r.cup, err = plainNumber(f.cell.cup); return err }},
	} {
		if err := cell.read(&r); err != nil {
			return reading{}, f.rows.Fail(cell.column, err)
		}
	}
	return r, nil
}

func (f *file) date(r *reading) (err error) {
	r.date, err = dateOf(f.cell.date)
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

func (f *file) producer(r *reading) error {
	r.producer = f.cell.producer
	return nameOf(r.producer, "who is to be paid?")
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

// liters is what the units of a volume hold: 1 US gal is 231 cubic inches. All
// are exact (NIST Handbook 44, Appendix C).
var liters = map[string]decimal.Decimal{
	"us_gal":  decimal.New(3785411784, -9),
	"imp_gal": decimal.New(454609, -5),
	"l":       decimal.NewFromInt(1),
}

var (
	minGallons = decimal.New(1, -2)
	maxGallons = decimal.New(1, 7)
)

func (f *file) volume(r *reading) error {
	x, err := plainNumber(f.cell.volume)
	if err != nil {
		return err
	}
	r.gallons = x.Mul(liters[f.unit.volume]).DivRound(liters["us_gal"], 2)
	if r.gallons.LessThan(minGallons) || r.gallons.GreaterThan(maxGallons) {
		return fmt.Errorf("%s US gal is outside %s to %s US gal: what is delivered is more than nothing", r.gallons, minGallons, maxGallons)
	}
	return nil
}

var plainPattern = regexp.MustCompile(`^[+-]?[0-9]{1,9}(\.[0-9]{1,9})?$`)

// plainNumber reads digits with a point, and no more of them than anybody needs.
func plainNumber(text string) (decimal.Decimal, error) {
	text = strings.TrimSpace(text)
	if !plainPattern.MatchString(text) {
		return decimal.Decimal{}, fmt.Errorf("%q is not a plain number such as 2.1", clip.Text(text))
	}
	return decimal.NewFromString(text)
}
