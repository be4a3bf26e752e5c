package main

import (
	"bufio"
	"bytes"
	_ "embed"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
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
	csv     *csv.Reader
	source  *capped
	use     []*column                       // of each cell; nil if it is not known
	read    int                             // deliveries
	cupUnit string                          // as in the header of the sheet
	cupTemp func(float64) units.Temperature // from that unit
	column  struct{ reading, cup string }   // names, for messages
}

// at says where in the file something is wrong.
func (f *file) at(line int, column string, err error) error {
	where := fmt.Sprintf("%s:%d", f.name, line)
	if column != "" {
		where += ": column " + column
	}
	return fmt.Errorf("%s: %w", where, err)
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

// A column reads the cells of one column.
type column struct {
	kind, name string // producer, or volume and volume_us_gal
	read       func(f *file, r *reading, cell string) error
}

// columns lists every column that is known. One of each kind is needed.
var columns = []column{
	{"date", "date", func(_ *file, r *reading, cell string) (err error) {
		r.date, err = time.Parse(time.DateOnly, cell)
		if err != nil || r.date.Year() < minYear || r.date.Year() > maxYear {
			return fmt.Errorf("%q is not a day such as 2026-03-09, of the years %d to %d", clip.Text(cell), minYear, maxYear)
		}
		return nil
	}},
	{"producer", "producer", func(_ *file, r *reading, cell string) error {
		switch n := utf8.RuneCountInString(cell); {
		case n == 0:
			return errors.New("it is empty: who is to be paid?")
		case n > maxProducer:
			return fmt.Errorf("%d letters: %d is the most", n, maxProducer)
		case strings.ContainsFunc(cell, unicode.IsControl):
			return errors.New("it has a line break or another control character: remove that")
		}
		r.producer = strings.Clone(cell)
		return nil
	}},
	{"volume", "volume_us_gal", volume(usGallon)},
	{"volume", "volume_imp_gal", volume(decimal.New(454609, -5))},
	{"volume", "volume_l", volume(decimal.NewFromInt(1))},
	{"reading", "reading_brix", func(_ *file, r *reading, cell string) (err error) {
		r.read, err = plainNumber(cell)
		return err
	}},
	{"cup", "cup_f", cup},
	{"cup", "cup_c", cup},
}

// usGallon is the US gallon in liters: 231 cubic inches. The imperial gallon is
// 4.54609 L. Both are exact (NIST Handbook 44, Appendix C).
var usGallon = decimal.New(3785411784, -9)

var (
	minGallons = decimal.New(1, -2)
	maxGallons = decimal.New(1, 7)
)

// volume reads a volume in a unit of so many liters.
func volume(liters decimal.Decimal) func(*file, *reading, string) error {
	return func(_ *file, r *reading, cell string) error {
		x, err := plainNumber(cell)
		if err != nil {
			return err
		}
		r.gallons = x.Mul(liters).DivRound(usGallon, 2)
		if r.gallons.LessThan(minGallons) || r.gallons.GreaterThan(maxGallons) {
			return fmt.Errorf("%s US gal is outside %s to %s US gal: what is delivered is more than nothing", r.gallons, minGallons, maxGallons)
		}
		return nil
	}
}

func cup(_ *file, r *reading, cell string) (err error) {
	r.cup, err = plainNumber(cell)
	return err
}

// begin reads the header.
func (f *file) begin(in io.Reader) error {
	buffered := bufio.NewReader(in)
	if mark, _ := buffered.Peek(3); string(mark) == "\ufeff" {
		_, _ = buffered.Discard(3) // spreadsheet programs write it before UTF-8
	}
	f.source = &capped{in: buffered}
	f.csv = csv.NewReader(f.source)
	f.csv.ReuseRecord = true
	header, err := f.csv.Read()
	if errors.Is(err, io.EOF) {
		return f.at(1, "", errors.New("it is empty: begin with the header date,producer,volume_us_gal,reading_brix,cup_f"))
	}
	if err != nil {
		return f.broken(err)
	}
	names := make([]string, len(header))
	for i, name := range header {
		names[i] = strings.Clone(strings.TrimSpace(name))
	}
	f.use, err = f.bind(names)
	return err
}

// next reads a row. At the end it returns [io.EOF], unless there was no row.
func (f *file) next() (reading, error) {
	f.source.read = 0
	record, err := f.csv.Read()
	switch {
	case errors.Is(err, io.EOF) && f.read == 0:
		return reading{}, f.at(2, "", errors.New("no deliveries below the header"))
	case errors.Is(err, io.EOF):
		return reading{}, io.EOF
	case err != nil:
		return reading{}, f.broken(err)
	}
	line, _ := f.csv.FieldPos(0)
	if f.read == maxDeliveries {
		return reading{}, f.at(line, "", fmt.Errorf("more than %d deliveries, and a sheet has not many more lines: split the file by month or by producer", maxDeliveries))
	}
	f.read++
	row := reading{line: line}
	for i, c := range f.use {
		if c == nil {
			continue
		}
		if !utf8.ValidString(record[i]) {
			return reading{}, f.at(line, c.name, errors.New("not text in UTF-8: save the file as CSV in UTF-8"))
		}
		if err := c.read(f, &row, strings.TrimSpace(record[i])); err != nil {
			return reading{}, f.at(line, c.name, err)
		}
	}
	return row, nil
}

// bind finds out which column of the file is which. Those that are not known are
// nil.
func (f *file) bind(header []string) ([]*column, error) {
	use := make([]*column, len(header))
	found := map[string]string{}
	for i, name := range header {
		k := slices.IndexFunc(columns, func(c column) bool { return c.name == name })
		if k < 0 {
			continue
		}
		c := &columns[k]
		if other, twice := found[c.kind]; twice {
			return nil, f.at(1, name, fmt.Errorf("a second column of the %s, beside %s: keep one", c.kind, other))
		}
		found[c.kind], use[i] = name, c
	}
	for _, c := range columns {
		if _, ok := found[c.kind]; ok {
			continue
		}
		var wanted []string
		for _, d := range columns {
			if d.kind == c.kind {
				wanted = append(wanted, d.name)
			}
		}
		return nil, f.at(1, "", fmt.Errorf("no column of the %s: name it %s, with commas between columns", c.kind, strings.Join(wanted, " or ")))
	}
	f.column.reading, f.column.cup = found["reading"], found["cup"]
	f.cupUnit, f.cupTemp = "F", units.Fahrenheit
	if f.column.cup == "cup_c" {
		f.cupUnit, f.cupTemp = "C", units.Celsius
	}
	return use, nil
}

// broken words what encoding/csv found.
func (f *file) broken(err error) error {
	if errors.Is(err, errLong) {
		return fmt.Errorf("%s: %w", f.name, err)
	}
	var parse *csv.ParseError
	if !errors.As(err, &parse) {
		return fmt.Errorf("%s: %w", f.name, err)
	}
	why := parse.Err
	switch {
	case errors.Is(why, csv.ErrFieldCount):
		why = errors.New("it has more or fewer columns than the header")
	case errors.Is(why, csv.ErrQuote), errors.Is(why, csv.ErrBareQuote):
		why = errors.New(`a quotation mark that is not closed, or stands in the middle: write " inside a quoted cell twice`)
	}
	return f.at(parse.Line, "", why)
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
