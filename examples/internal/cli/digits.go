package cli

import (
	"math"
	"strconv"
	"strings"
)

// digits is how many digits a page shows of a measured quantity: one more than
// an instrument of the trade gives.
const digits = 4

// significant prints x to n digits and never in powers of ten. A whole number
// prints as one: 60 and not 60.00.
func significant(x float64, n int) string {
	decimals := 0
	if a := math.Abs(x); a > 0 && !math.IsInf(x, 0) {
		decimals = n - 1 - magnitude(a)
	}
	if decimals < 0 {
		tens := math.Pow10(-decimals)
		x = math.Round(x/tens) * tens
	}
	s := decimal(x, min(decimals, 6))
	if whole, zeros, ok := strings.Cut(s, "."); ok && strings.Trim(zeros, "0") == "" {
		return whole
	}
	return s
}

func decimal(x float64, decimals int) string {
	s := strconv.FormatFloat(x, 'f', max(decimals, 0), 64)
	if math.Signbit(x) && s[1:] == strconv.FormatFloat(0, 'f', max(decimals, 0), 64) {
		return s[1:]
	}
	return s
}

// Rough shows a quantity to two digits, since no more is known of it.
func Rough(v Value) Value { return Digits(v, 2) }

// Digits shows a quantity to n digits.
func Digits(v Value, n int) Value {
	return Value{v.us.digits(n), v.metric.digits(n)}
}

// Known shows a quantity no closer than it is known, and so to the second digit
// of its limits.
func Known(v, limits Value) Value {
	as := func(v, limits view) view {
		x, known := v.json.(float64)
		off, limited := limits.json.(float64)
		if !known || !limited || off == 0 {
			return v
		}
		return v.digits(2 + magnitude(x) - magnitude(off))
	}
	return Value{as(v.us, limits.us), as(v.metric, limits.metric)}
}

// magnitude is the power of ten of the first digit.
func magnitude(x float64) int { return int(math.Floor(math.Log10(math.Abs(x)))) }

// digits returns the view with its number to n digits, 0 where that is none.
func (v view) digits(n int) view {
	if x, ok := v.json.(float64); ok {
		_, unit, _ := strings.Cut(v.text, " ")
		number := "0"
		if x != 0 && n > 0 {
			number = significant(x, n)
		}
		v.text = number + " " + unit
	}
	return v
}
