package units

import (
	"encoding/json"
	"errors"
	"math"
	"strconv"
	"strings"
)

// endless is from where on the high end of a range bounds nothing that a person
// would type.
const endless = math.MaxInt32

// Text tells what [RangeError.Error] tells to a person: without the function,
// and in US customary units, metric ones, or both.
func (e *RangeError) Text(in System) string {
	s := e.prose()
	say := e.saying(in)
	open := e.High >= endless && e.Value < e.High
	shut := !open && finite(e.Low) && finite(e.High)
	switch {
	case math.IsNaN(e.Value) && shut:
		s += " is not a number; it must lie in " + say.span(e.Low, e.High)
	case math.IsNaN(e.Value):
		s += " is not a number"
	case e.Value == e.Low && !shut:
		s += " must be more than " + say.one(e.Low)
	case e.Value == e.Low:
		s += " must be more than " + say.one(e.Low) + " and at most " + say.one(e.High)
	case e.Value == e.High && shut:
		s += " must be less than " + say.one(e.High) + " and at least " + say.one(e.Low)
	case e.Value == e.High:
		s += " must be less than " + say.one(e.High)
	case open && finite(e.Low):
		s += " " + say.one(e.Value) + " is less than " + say.one(e.Low)
	case shut:
		s += " " + say.one(e.Value) + " is outside " + say.span(e.Low, e.High)
	case finite(e.High):
		s += " " + say.one(e.Value) + " is more than " + say.one(e.High)
	default:
		s += " " + say.one(e.Value) + " is out of range"
	}
	if e.Hint != "" {
		s += ": " + e.Hint
	}
	return s
}

// saying takes as few digits as tell the value from the ends of the range.
func (e *RangeError) saying(in System) saying {
	say := sayingOf(in, e.Unit, plainDigits)
	say.low, say.high = e.Low, e.High
	const most = 15
	same := func(end float64) bool {
		if e.Value == end || !finite(e.Value) || !finite(end) {
			return false
		}
		p := say.pair(end)
		return say.number(p.us, e.Value) == say.number(p.us, end) || say.number(p.metric, e.Value) == say.number(p.metric, end)
	}
	// A narrow range must not close or turn round when its ends are rounded.
	shut := func(m measure) bool {
		low, _ := strconv.ParseFloat(say.number(m, e.Low), 64)
		high, _ := strconv.ParseFloat(say.number(m, e.High), 64)
		return e.Low < e.High && low >= high
	}
	for say.digits < most && (same(e.Low) || same(e.High) || shut(say.pair(e.High).us) || shut(say.pair(e.High).metric)) {
		say.digits++
	}
	return say
}

// Text tells what [ParseError.Error] tells, without the function.
func (e *ParseError) Text(System) string { return e.text() }

// A texter is an error that words itself for a person.
type texter interface {
	error
	Text(System) string
}

// Reason words an error for a person at a keyboard or before a form: without
// names of Go, and with amounts in the given units. Words that a caller has put
// around an error of this module stay.
func Reason(err error, in System) string {
	if err == nil {
		return ""
	}
	s := err.Error()
	var t texter
	if errors.As(err, &t) {
		s = strings.Replace(s, t.Error(), t.Text(in), 1)
	}
	return s
}

// rangeJSON is a range error as JSON holds it.
type rangeJSON struct {
	Arg   string     `json:"arg"`
	Value jsonNumber `json:"value"`
	Low   jsonNumber `json:"low"`
	High  jsonNumber `json:"high"`
	Unit  string     `json:"unit,omitempty"`
	Text  string     `json:"text"`
	Func  string     `json:"func,omitempty"`
	What  string     `json:"what,omitempty"`
	Hint  string     `json:"hint,omitempty"`
}

// MarshalJSON gives an object with arg, value, low, high, unit, text, func, what
// and hint. A number that is NaN is null; infinity is the text "+Inf" or "-Inf".
// Text is [RangeError.Text] in both systems of units.
func (e *RangeError) MarshalJSON() ([]byte, error) {
	return json.Marshal(rangeJSON{
		e.Arg, jsonNumber(e.Value), jsonNumber(e.Low), jsonNumber(e.High), e.Unit, e.Text(Both), e.Func, e.What, e.Hint,
	})
}

// UnmarshalJSON reads what MarshalJSON gives.
func (e *RangeError) UnmarshalJSON(b []byte) error {
	r := rangeJSON{Value: jsonNumber(math.NaN()), Low: jsonNumber(math.NaN()), High: jsonNumber(math.NaN())}
	if err := json.Unmarshal(b, &r); err != nil {
		return err
	}
	*e = RangeError{Func: r.Func, Arg: r.Arg, What: r.What, Value: float64(r.Value), Low: float64(r.Low), High: float64(r.High), Unit: r.Unit, Hint: r.Hint}
	return nil
}

// parseJSON is a parse error as JSON holds it.
type parseJSON struct {
	Input  string `json:"input"`
	Reason string `json:"reason"`
	Text   string `json:"text"`
	Func   string `json:"func,omitempty"`
	Hint   string `json:"hint,omitempty"`
}

// MarshalJSON gives an object with input, reason, text, func and hint. Text is
// [ParseError.Text].
func (e *ParseError) MarshalJSON() ([]byte, error) {
	p := parseJSON{Input: e.Input, Text: e.Text(Both), Func: e.Func, Hint: e.Hint}
	if e.Err != nil {
		p.Reason = e.Err.Error()
	}
	return json.Marshal(p)
}

// UnmarshalJSON reads what MarshalJSON gives. A reason of this package is itself
// again.
func (e *ParseError) UnmarshalJSON(b []byte) error {
	var p parseJSON
	if err := json.Unmarshal(b, &p); err != nil {
		return err
	}
	*e = ParseError{Func: p.Func, Input: p.Input, Hint: p.Hint}
	for _, reason := range []error{ErrSyntax, ErrUnit, ErrNoUnit, ErrAmbiguous, ErrName, ErrRange} {
		if reason.Error() == p.Reason {
			e.Err = reason
		}
	}
	if e.Err == nil && p.Reason != "" {
		e.Err = errors.New(p.Reason)
	}
	return nil
}
