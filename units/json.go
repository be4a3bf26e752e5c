package units

import (
	"bytes"
	"encoding/json"
	"math"
	"strconv"
)

// toJSON puts the text of a quantity in quotes. A quantity that is NaN is one
// that nobody knows: null.
func toJSON(x float64, text func() ([]byte, error)) ([]byte, error) {
	if math.IsNaN(x) {
		return []byte("null"), nil
	}
	b, err := text()
	if err != nil {
		return nil, err
	}
	// The symbols of units need no escape.
	quoted := make([]byte, 0, len(b)+2)
	quoted = append(quoted, '"')
	quoted = append(quoted, b...)
	return append(quoted, '"'), nil
}

// fromJSON takes the text out of its quotes, and null as unknown.
func fromJSON(b []byte, parse string, unknown func(), read func([]byte) error) error {
	b = bytes.TrimSpace(b)
	if bytes.Equal(b, []byte("null")) {
		unknown()
		return nil
	}
	if len(b) == 0 || b[0] != '"' {
		return &ParseError{Func: parse, Input: string(b), Err: ErrNoUnit, Hint: "write a text with its unit, in quotes, or null for what is not known"}
	}
	var s string
	if err := json.Unmarshal(b, &s); err != nil {
		return &ParseError{Func: parse, Input: string(b), Err: ErrSyntax, Hint: "write a text with its unit, in quotes"}
	}
	return read([]byte(s))
}

// marshalJSON and unmarshalJSON serve the proportional quantities.
func marshalJSON[Q ~float64](q Q, tab *table) ([]byte, error) {
	return toJSON(float64(q), func() ([]byte, error) { return marshal(q, tab) })
}

func unmarshalJSON[Q ~float64](q *Q, b []byte, tab *table) error {
	return fromJSON(b, tab.parse, func() { *q = Q(math.NaN()) }, func(text []byte) error { return unmarshal(q, text, tab) })
}

// MarshalJSON prints the text of [Temperature.MarshalText] in quotes, and null
// for NaN.
func (t Temperature) MarshalJSON() ([]byte, error) { return toJSON(t.c, t.MarshalText) }

// UnmarshalJSON reads what MarshalJSON prints. Null is NaN, a temperature that
// nobody knows, where other types would be left alone.
func (t *Temperature) UnmarshalJSON(b []byte) error {
	return fromJSON(b, temperatures.parse, func() { *t = Celsius(math.NaN()) }, t.UnmarshalText)
}

// A jsonNumber is a float64 that JSON can hold: null for NaN, and the ends of no
// bound as text.
type jsonNumber float64

func (x jsonNumber) MarshalJSON() ([]byte, error) {
	switch f := float64(x); {
	case math.IsNaN(f):
		return []byte("null"), nil
	case math.IsInf(f, 0):
		return strconv.AppendQuote(nil, strconv.FormatFloat(f, 'g', -1, 64)), nil
	default:
		return json.Marshal(f)
	}
}

func (x *jsonNumber) UnmarshalJSON(b []byte) error {
	switch string(b) {
	case "null":
		*x = jsonNumber(math.NaN())
	case `"+Inf"`:
		*x = jsonNumber(math.Inf(1))
	case `"-Inf"`:
		*x = jsonNumber(math.Inf(-1))
	default:
		return json.Unmarshal(b, (*float64)(x))
	}
	return nil
}
