package cli

import (
	"errors"
	"fmt"
	"io"
	"math"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Input declares a flag that names a file to read, or standard input, which only one of
// them can take: see [Env.Open].
func (f *Flags) Input(p *string, name, help string) {
	f.String(p, name, "", help)
	f.checks = append(f.checks, func() error {
		switch {
		case *p == "" && f.Given(name):
			return For(name, errors.New("name the file, or leave this out"))
		case *p != "-":
			return nil
		case f.standard != "":
			return For(name, fmt.Errorf("-%s reads standard input already: name a file", f.standard))
		}
		f.standard = name
		return nil
	})
}

// Drawing declares a flag that names the file of a drawing: see [Env.Draw].
func (f *Flags) Drawing(p *string, name, help string) {
	f.String(p, name, "", help+"; - prints it instead of the page. A file that is there is replaced only if this program drew it")
	f.checks = append(f.checks, func() error {
		switch {
		case *p == "" && f.Given(name):
			return For(name, errors.New("name the file to write, or - for standard output"))
		case *p != "-":
			return nil
		case f.json:
			return For(jsonFlag, fmt.Errorf("-%s - takes the place of the page: give one of them", name))
		case f.printed != "":
			return For(name, fmt.Errorf("-%s - is on standard output already: name a file", f.printed))
		}
		f.printed = name
		return nil
	})
}

// ErrNoRows tells that a file has a header and no more.
var ErrNoRows = errors.New("nothing below the header")

// Or is the number of a cell, or what an empty one is taken for.
func Or[Q ~float64](x, empty Q) Q {
	if math.IsNaN(float64(x)) {
		return empty
	}
	return x
}

// OrAt is [Or] for a temperature.
func OrAt(t, empty units.Temperature) units.Temperature {
	if math.IsNaN(t.Celsius()) {
		return empty
	}
	return t
}

// Rows calls row for each record of a file, and tells the first 20 mistakes at once. A
// file of more rows than most is refused; why says what to do then.
func Rows(r *records.Reader, most int, why string, row func() error) error {
	var wrong []error
	for n := 0; len(wrong) < 20; n++ {
		err := r.Next()
		ends := r.Broken()
		switch {
		case err == io.EOF && n == 0:
			return r.Fail("", ErrNoRows)
		case err == io.EOF:
			return errors.Join(wrong...)
		case err == nil && n == most:
			err = r.Fail("", fmt.Errorf("more than %d rows%s", most, why))
			ends = true
		case err == nil:
			// What is not about a cell is about the whole file, and ends it.
			err = row()
			var cell *records.Error
			ends = !errors.As(err, &cell) || cell.Column == ""
		}
		if err == nil {
			continue
		}
		if wrong = append(wrong, err); ends {
			break
		}
	}
	return errors.Join(wrong...)
}
