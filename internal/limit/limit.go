// Package limit holds the documented range of an argument in one place, so that
// the guard of a function and its error cannot disagree.
package limit

import (
	"math"

	"example.org/sapreckoner/units"
)

// A Range is what an argument may be, both ends included.
type Range struct {
	Arg       string  // the argument, such as "sugar content"
	Low, High float64 // in Unit, or in the base unit if Per is set
	Unit      string  // empty for pure numbers
	Per       float64 // base units in one Unit, for messages; 0 if x is in Unit
	Below     string  // the way out for a value under Low
	Above     string  // the way out for a value over High
}

// Check returns nil if x lies in the range and a [*units.RangeError] in the name
// of fn otherwise. NaN lies in no range.
func (r *Range) Check(fn string, x float64) error {
	if x >= r.Low && x <= r.High {
		return nil
	}
	return r.outside(fn, x)
}

// Within is [Range.Check] for a range that is made at the call, with one way out
// on either side. Value and limits are in the base unit, and told in the given
// one.
func Within[Q ~float64](fn, arg string, x, low, high, unit Q, symbol, hint string) error {
	r := Range{
		Arg: arg, Low: float64(low), High: float64(high), Unit: symbol, Per: float64(unit),
		Below: hint, Above: hint,
	}
	return r.Check(fn, float64(x))
}

// outside is kept out of line, so that a guard costs its caller two comparisons
// and no room.
//
//go:noinline
func (r *Range) outside(fn string, x float64) error {
	per := r.Per
	if per == 0 { // not set: x/1 is x
		per = 1
	}
	e := &units.RangeError{Func: fn, Arg: r.Arg, Value: x / per, Low: r.Low / per, High: r.High / per, Unit: r.Unit}
	if r.High == math.MaxFloat64 { // all that is finite
		e.High = math.Inf(1)
	}
	switch {
	case x < r.Low:
		e.Hint = r.Below
	case x > r.High:
		e.Hint = r.Above
	}
	return e
}
