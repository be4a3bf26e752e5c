package money

import (
	"cmp"
	"math"
	"strconv"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// maxDigits bounds a decimal on both sides of the point. One with an exponent of
// a million is short until somebody adds one to it.
const maxDigits = 30

// maxCoefficientBits holds 10^(2 maxDigits).
const maxCoefficientBits = 200

// A DecimalError says which decimal a function could not use, and why. It
// unwraps to [units.ErrRange].
type DecimalError struct {
	Func   string // the function called, such as "money.Divide"
	Arg    string // the argument by its stable name, such as "whole" or "among[3].Weight"
	What   string // the argument in words; empty if Arg says it
	Value  string // what was given; empty if it has too many digits to print
	Reason string // what is allowed, and the way out
}

// Error tells the function, the argument, the value and the reason.
func (e *DecimalError) Error() string {
	return e.Func + ": " + e.Text(units.Both)
}

// Text tells the argument, the value and the reason to a person.
func (e *DecimalError) Text(units.System) string {
	s := cmp.Or(e.What, e.Arg)
	if e.Value != "" {
		s += " " + e.Value
	}
	return s + ": " + e.Reason
}

// Unwrap returns [units.ErrRange].
func (e *DecimalError) Unwrap() error { return units.ErrRange }

// bounded reports whether d is small enough to reckon with.
func bounded(d decimal.Decimal) bool {
	e := d.Exponent()
	return e >= -maxDigits && e <= maxDigits && d.Coefficient().BitLen() <= maxCoefficientBits
}

// exactly checks a decimal against its documented range, both ends included.
func exactly(fn, arg, what string, d, low, high decimal.Decimal, hint string) error {
	if !bounded(d) {
		return &DecimalError{Func: fn, Arg: arg, What: what, Reason: "it has more than " + strconv.Itoa(maxDigits) + " digits before or behind the point: round it first"}
	}
	if d.LessThan(low) || d.GreaterThan(high) {
		return &DecimalError{Func: fn, Arg: arg, What: what, Value: d.String(), Reason: "it is outside " + low.String() + " to " + high.String() + ": " + hint}
	}
	return nil
}

// item is [exactly] for a field of an entry of a list. The names are made only
// when they are needed.
func item(fn, list string, i int, field, what string, d, low, high decimal.Decimal, hint string) error {
	if bounded(d) && !d.LessThan(low) && !d.GreaterThan(high) {
		return nil
	}
	return exactly(fn, limit.Item(list, i, field), limit.Entry(i, what), d, low, high, hint)
}

// toDecimal rounds x, which must be finite, to the given number of decimals,
// halves away from zero.
func toDecimal(x float64, places int32) decimal.Decimal {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return decimal.Zero // callers check first; a panic would be worse
	}
	return decimal.NewFromFloat(x).Round(places)
}

// toStep returns num/den rounded to a multiple of step, halves away from zero.
// Both den and step must be positive.
func toStep(num, den, step decimal.Decimal) decimal.Decimal {
	return num.DivRound(den.Mul(step), 0).Mul(step)
}
