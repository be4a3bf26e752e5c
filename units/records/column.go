package records

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"
	"unicode"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// A Col asks for one column of a file. It is named without its unit: Volume("sap",
// &v) finds sap_us_gal as well as sap_l.
type Col struct {
	name     string
	want     string // an example header, for messages
	optional bool   // the column may be missing
	blank    bool   // its cells may be empty
	number   bool   // its cells are numbers
	bind     func(suffix string) (set func(cell string) error, ok bool)
	clear    func()
	suffixes string // what may follow the name, for messages
}

// Optional returns the column as one that may be missing, or whose cells may be
// empty: the value is then, in each row anew, the zero of its type (NaN for
// numbers and quantities).
func (c Col) Optional() Col { c.optional = true; return c.Blank() }

// Blank returns the column as one that must be there, but whose cells may be
// empty: the value is then as of [Col.Optional].
func (c Col) Blank() Col { c.blank = true; return c }

// field is a column bound to its place in the header.
type field struct {
	name   string
	at     int // -1 if the header lacks it
	blank  bool
	number bool
	set    func(string) error
	clear  func()
}

// Names reports whether the header has a column of that name, with or without a
// unit.
func (r *Reader) Names(name string) bool {
	return slices.ContainsFunc(r.header, func(h string) bool { return called(h, name) })
}

// called reports whether a column of the header has the name, with or without
// a unit.
func called(h, name string) bool { return h == name || strings.HasPrefix(h, name+"_") }

// Unasked returns the columns of the header that nothing was asked of, for a
// file in which a misspelled name must not be lost.
func (r *Reader) Unasked() []string {
	var unasked []string
	for i, h := range r.header {
		if !slices.ContainsFunc(r.fields, func(f field) bool { return f.at == i }) {
			unasked = append(unasked, h)
		}
	}
	return unasked
}

// Bind finds every asked column in the header.
func (r *Reader) Bind(cols ...Col) error {
	for _, c := range cols {
		f := field{name: c.name, at: -1, blank: c.blank, number: c.number, clear: c.clear}
		for i, h := range r.header {
			if !called(h, c.name) {
				continue
			}
			set, ok := c.bind(strings.TrimPrefix(h[len(c.name):], "_"))
			if !ok {
				continue
			}
			if f.at >= 0 {
				return r.fail(h, fmt.Errorf("a second column for %s, beside %s", c.name, r.header[f.at]))
			}
			f.at, f.set = i, set
		}
		if f.at < 0 {
			if i := slices.IndexFunc(r.header, func(h string) bool { return called(h, c.name) }); i >= 0 {
				return r.fail(r.header[i], fmt.Errorf("no unit that is known: name the column %s", c.suffixes))
			}
			if !c.optional {
				return r.fail("", fmt.Errorf("no column for %s: name it %s", c.name, c.suffixes))
			}
		}
		r.fields = append(r.fields, f)
	}
	return nil
}

func example(cols []Col) string {
	var names []string
	for _, c := range cols {
		names = append(names, c.want)
	}
	return strings.Join(names, ",")
}

// Text asks for a column of words that can be printed.
func Text(name string, into *string) Col {
	return Col{name: name, want: name, suffixes: name,
		clear: func() { *into = "" },
		bind: func(suffix string) (func(string) error, bool) {
			known := names{}
			return func(cell string) error {
				if cell == "" {
					return errors.New("empty")
				}
				if _, seen := known[cell]; !seen && strings.ContainsFunc(cell, unprintable) {
					return fmt.Errorf("%q has a character that cannot be printed", clip.Text(cell))
				}
				*into = known.keep(cell)
				return nil
			}, suffix == ""
		}}
}

// Number asks for a column of plain numbers without unit, such as 12 or 0.5.
func Number(name string, into *float64) Col {
	return Col{name: name, want: name, suffixes: name, number: true,
		clear: func() { *into = math.NaN() },
		bind: func(suffix string) (func(string) error, bool) {
			return func(cell string) error { return number(cell, into) }, suffix == ""
		}}
}

// Time asks for a column of times in the given layouts, the first of which is
// shown in messages.
func Time(name string, into *time.Time, layouts ...string) Col {
	return Col{name: name, want: name, suffixes: name,
		clear: func() { *into = time.Time{} },
		bind: func(suffix string) (func(string) error, bool) {
			return func(cell string) error {
				if t, layout, ok := plainTime(cell); ok && slices.Contains(layouts, layout) {
					*into = t
					return nil
				}
				for _, layout := range layouts {
					if t, err := time.Parse(layout, cell); err == nil {
						*into = t
						return nil
					}
				}
				return fmt.Errorf("%q is not a time such as %s", clip.Text(cell), layouts[0])
			}, suffix == ""
		}}
}

func unprintable(r rune) bool { return !unicode.IsPrint(r) }

func number(cell string, into *float64) error {
	if x, ok := plainNumber(cell); ok {
		*into = x
		return nil
	}
	x, err := strconv.ParseFloat(cell, 64)
	if err != nil || strings.ContainsAny(cell, "xX_") || math.IsNaN(x) || math.IsInf(x, 0) {
		return fmt.Errorf("%q is not a plain number (the unit stands in the header)", clip.Text(cell))
	}
	*into = x
	return nil
}

// A named unit is a suffix of a header with what it means.
type named[Q any] struct {
	suffix string
	from   func(float64) Q
}

// quantity makes a column of a quantity with its unit in the header.
func quantity[Q any](name string, into *Q, none Q, units []named[Q]) Col {
	var all []string
	for _, u := range units {
		all = append(all, name+"_"+u.suffix)
	}
	return Col{name: name, want: all[0], suffixes: strings.Join(all, " or "), number: true,
		clear: func() { *into = none },
		bind: func(suffix string) (func(string) error, bool) {
			for _, u := range units {
				if u.suffix == suffix {
					return func(cell string) error {
						var x float64
						if err := number(cell, &x); err != nil {
							return err
						}
						*into = u.from(x)
						return nil
					}, true
				}
			}
			return nil, false
		}}
}

func times[Q ~float64](unit Q) func(float64) Q { return func(x float64) Q { return Q(x) * unit } }

func noQuantity[Q ~float64]() Q { return Q(math.NaN()) }

// Volume asks for a column such as volume_us_gal: behind the name us_gal, imp_gal, l,
// ml, us_qt, us_fl_oz, cord or m3.
func Volume(name string, into *units.Volume) Col {
	return quantity(name, into, noQuantity[units.Volume](), []named[units.Volume]{
		{"us_gal", times(units.USGallon)}, {"imp_gal", times(units.ImperialGallon)},
		{"l", times(units.Liter)}, {"ml", times(units.Milliliter)},
		{"us_qt", times(units.USQuart)}, {"us_fl_oz", times(units.USFluidOunce)},
		{"cord", times(units.Cord)}, {"m3", times(units.CubicMeter)},
	})
}

// Mass asks for a column such as weight_lb: in lb, kg, oz or g.
func Mass(name string, into *units.Mass) Col {
	return quantity(name, into, noQuantity[units.Mass](), []named[units.Mass]{
		{"lb", times(units.Pound)}, {"kg", times(units.Kilogram)},
		{"oz", times(units.Ounce)}, {"g", times(units.Gram)},
	})
}

// Length asks for a column such as girth_in: in in, cm, ft, m or mm.
func Length(name string, into *units.Length) Col {
	return quantity(name, into, noQuantity[units.Length](), []named[units.Length]{
		{"in", times(units.Inch)}, {"cm", times(units.Centimeter)},
		{"ft", times(units.Foot)}, {"m", times(units.Meter)}, {"mm", times(units.Millimeter)},
	})
}

// Angle asks for a column such as bearing_deg.
func Angle(name string, into *units.Angle) Col {
	return quantity(name, into, noQuantity[units.Angle](), []named[units.Angle]{{"deg", times(units.Degree)}})
}

// Brix asks for a column such as reading_brix.
func Brix(name string, into *units.Brix) Col {
	return quantity(name, into, noQuantity[units.Brix](), []named[units.Brix]{{"brix", times(units.DegreeBrix)}})
}

// Share asks for a column such as moisture_pct.
func Share(name string, into *units.Share) Col {
	return quantity(name, into, noQuantity[units.Share](), []named[units.Share]{{"pct", times(units.Percent)}})
}

// Pressure asks for a column such as barometer_inhg: in inhg, hpa or kpa.
func Pressure(name string, into *units.Pressure) Col {
	return quantity(name, into, noQuantity[units.Pressure](), []named[units.Pressure]{
		{"inhg", times(units.InchMercury)}, {"hpa", times(units.Hectopascal)}, {"kpa", times(units.Kilopascal)},
	})
}

// Temperature asks for a column such as temp_f: in f or c.
func Temperature(name string, into *units.Temperature) Col {
	return quantity(name, into, units.Celsius(math.NaN()), []named[units.Temperature]{
		{"f", units.Fahrenheit}, {"c", units.Celsius},
	})
}

// maxHours bounds a stretch of time in a file: a year.
const maxHours = 366 * 24

// Hours asks for a column such as fired_h or fired_min. An empty cell of a [Col.Blank]
// one is 0, since a duration has no NaN: where that matters, look at [Reader.Cells].
func Hours(name string, into *time.Duration) Col {
	var x float64
	col := quantity(name, &x, 0, []named[float64]{{"h", times(1.0)}, {"min", times(1.0 / 60)}})
	clear, bind := col.clear, col.bind
	col.clear = func() { clear(); *into = 0 }
	col.bind = func(suffix string) (func(string) error, bool) {
		set, ok := bind(suffix)
		return func(cell string) error {
			if err := set(cell); err != nil {
				return err
			}
			if !(x >= 0 && x <= maxHours) {
				return fmt.Errorf("%q is not a stretch of time between 0 and a year", clip.Text(cell))
			}
			*into = time.Duration(x * float64(time.Hour))
			return nil
		}, ok
	}
	return col
}
