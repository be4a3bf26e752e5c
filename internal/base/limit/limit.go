// Package limit holds the documented range of an argument in one place, so that
// the guard of a function and its error cannot disagree, and the hair by which
// two figures may differ and still be one.
package limit

import (
	"math"

	"example.org/sapreckoner/units"
)

// A Range is what an argument may be, both ends included.
type Range struct {
	Arg       string  // the argument by its stable name: a parameter, or Type.Field
	What      string  // the argument in words, such as "sugar content"; empty if Arg says it
	Low, High float64 // in Unit, or in the base unit if Per is set
	Unit      string  // empty for pure numbers
	Per       float64 // base units in one Unit, for messages; 0 if x is in Unit
	Below     string  // the way out for a value under Low
	Above     string  // the way out for a value over High
}

// Hair is the part of itself by which a figure may miss another and still be
// the same one. A limit that is written in another unit, and a strength that is
// reckoned back from sugar and mass, miss by a few units of the last bit; a
// quantity that was printed with its 12 digits and read again, by 5e-12 of
// itself. No instrument of the trade sees it.
const Hair = 1e-11

// HairC is the hair of a temperature near 0 C, in degrees Celsius, where a part
// of itself is nothing: that of the 32 F there.
const HairC = 32 * Hair

// Same reports whether x and y differ by no more than a hair. NaN is never the
// same.
func Same[Q ~float64](x, y Q) bool {
	apart := math.Abs(float64(x - y))
	return x == y || apart <= Hair*min(math.Abs(float64(x)), math.Abs(float64(y))) && !math.IsInf(apart, 0)
}

// Holds reports whether x lies between low and high or misses them by no more
// than a hair. NaN lies nowhere.
func Holds[Q ~float64](x, low, high Q) bool {
	return x >= low && x <= high || x < low && Same(x, low) || x > high && Same(x, high)
}

// Check returns nil if x lies in the range, or outside by no more than a [Hair]
// of the end, and a [*units.RangeError] in the name of fn otherwise. NaN lies in
// no range. The caller goes on with x as it is: what cannot take a hair beyond
// the range, such as a bracket of roots or a lot, draws it to the end itself.
func (r *Range) Check(fn string, x float64) error {
	if x >= r.Low && x <= r.High {
		return nil
	}
	return r.outside(fn, r.Arg, x)
}

// CheckAs is [Range.Check] for one of several arguments that share a range: arg
// is its stable name.
func (r *Range) CheckAs(fn, arg string, x float64) error {
	if x >= r.Low && x <= r.High {
		return nil
	}
	return r.outside(fn, arg, x)
}

// CheckItem is [Range.Check] for a field of an entry of a list: see [Item]. The
// name of the entry is made only when it is needed.
func (r *Range) CheckItem(fn, list string, i int, field string, x float64) error {
	if r.Check(fn, x) == nil {
		return nil
	}
	return r.CheckAs(fn, Item(list, i, field), x)
}

// Clip draws x to the nearer end of the range if it lies outside. NaN stays.
func (r *Range) Clip(x float64) float64 { return min(max(x, r.Low), r.High) }

// grazes reports whether x misses an end by no more than a hair.
func (r *Range) grazes(x float64) bool {
	least := 0.0
	if r.Unit == "C" {
		least = HairC
	}
	return x < r.Low && r.Low-x <= max(Hair*math.Abs(r.Low), least) ||
		x > r.High && x-r.High <= max(Hair*math.Abs(r.High), least)
}

// Within is [Range.Check] for a range that is made at the call, with one way out
// on either side. Value and limits are in the base unit, and told in the given
// one.
func Within[Q ~float64](fn, arg string, x, low, high, unit Q, symbol, hint string) error {
	return WithinAs(fn, arg, "", x, low, high, unit, symbol, hint)
}

// WithinAs is [Within] with the argument in words besides.
func WithinAs[Q ~float64](fn, arg, what string, x, low, high, unit Q, symbol, hint string) error {
	r := Range{
		Arg: arg, What: what, Low: float64(low), High: float64(high), Unit: symbol, Per: float64(unit),
		Below: hint, Above: hint,
	}
	return r.Check(fn, float64(x))
}

// outside is kept out of line, so that a guard costs its caller two comparisons
// and no room.
//
//go:noinline
func (r *Range) outside(fn, arg string, x float64) error {
	if r.grazes(x) {
		return nil
	}
	per := r.Per
	if per == 0 { // not set: x/1 is x
		per = 1
	}
	e := &units.RangeError{Func: fn, Arg: arg, What: r.What, Value: x / per, Low: r.Low / per, High: r.High / per, Unit: r.Unit}
	if r.High == math.MaxFloat64 { // all that is finite
		e.High = math.Inf(1)
	}
	switch {
	case x < r.Low, r.Below == r.Above: // what serves both sides serves NaN too
		e.Hint = r.Below
	case x > r.High:
		e.Hint = r.Above
	}
	return e
}
