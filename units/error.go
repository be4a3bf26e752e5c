package units

import (
	"errors"
	"math"
	"strconv"

	"example.org/sapreckoner/internal/base/clip"
)

// ErrRange is what every [*RangeError] unwraps to: an argument lies outside the
// documented range of a function.
var ErrRange = errors.New("out of range")

// RangeError says which argument of which function lies outside its documented
// range, what that range is, and what to do about it.
//
// Arg is a parameter by its name in the signature, a receiver that is a number by
// its type, a field as Type.Field, an entry of a list as list[2] or
// list[2].Field, and "answer" where every argument is good and what comes out is
// not. What says the same to a person and may change.
//
// A function that gets NaN for one argument and good values for all others
// answers with the range of that argument: a form can ask it for its domain. An
// argument for which the function has no use is not looked at.
//
// It unwraps to [ErrRange].
type RangeError struct {
	Func  string  // the function called, such as "density.Solution"; empty if a program checks its own input
	Arg   string  // the argument by its stable name, to branch on: see below
	What  string  // what the argument is, in words, such as "temperature of the cup"; empty if Arg says it
	Value float64 // what was given, in Unit
	Low   float64 // least value allowed, in Unit
	High  float64 // greatest value allowed, in Unit
	Unit  string  // unit of the three numbers; empty for pure numbers
	Hint  string  // the way out, when the range alone does not tell it
}

// Error tells the function, the argument, the value, the range and the way out.
// A value that is an end of the range was refused because the range is open
// there, and the message says so. An end that is NaN or infinite bounds nothing
// and is left out.
func (e *RangeError) Error() string {
	unit := ""
	if e.Unit != "" {
		unit = " " + e.Unit
	}
	value, low, high := bare(e.Value, 8), bare(e.Low, 8), bare(e.High, 8)
	if value == low || value == high { // just outside, and must be seen to be
		value = bare(e.Value, -1)
		if value == low || value == high { // the end itself has more digits
			low, high = bare(e.Low, -1), bare(e.High, -1)
		}
	}
	s := e.prefix() + e.prose()
	switch above, below := finite(e.Low), finite(e.High); {
	case above && below && e.Value == e.Low:
		s += " must be more than " + low + " and at most " + high + unit
	case above && below && e.Value == e.High:
		s += " must be less than " + high + unit + " and at least " + low
	case above && below && e.Value == e.Value:
		s += " " + value + unit + " is outside " + low + " to " + high + unit
	case above && below: // and the value is NaN
		s += " is not a number; it must lie in " + low + " to " + high + unit
	case above && e.Value == e.Low:
		s += " must be more than " + low + unit
	case below && e.Value == e.High:
		s += " must be less than " + high + unit
	default:
		if e.Value == e.Value {
			s += " " + value + unit + " is out of range"
		} else {
			s += " is not a number"
		}
		if above {
			s += "; it must be at least " + low + unit
		}
		if below {
			s += "; it must be at most " + high + unit
		}
	}
	if e.Hint != "" {
		s += ": " + e.Hint
	}
	return s
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// prose names the argument in words.
func (e *RangeError) prose() string {
	if e.What != "" {
		return e.What
	}
	return e.Arg
}

// bare prints a number without its unit. The sign of zero tells nothing.
func bare(x float64, digits int) string {
	if x == 0 {
		return "0"
	}
	return strconv.FormatFloat(x, 'g', digits, 64)
}

func (e *RangeError) prefix() string {
	if e.Func == "" {
		return ""
	}
	return e.Func + ": "
}

// Unwrap returns [ErrRange].
func (e *RangeError) Unwrap() error { return ErrRange }

// Under returns err with the name of the function that the caller called. A
// function that relies on another package's check uses it, so that the error
// names what the user wrote:
//
//	rho, err := density.Solution(b, t)
//	if err != nil {
//		return 0, units.Under("sugar.NewLot", err)
//	}
//
// Errors that are not a [*RangeError] are returned as they are.
func Under(fn string, err error) error { return UnderArg(fn, "", err) }

// UnderArg is [Under] for a function that calls the argument by another name.
func UnderArg(fn, arg string, err error) error {
	if err == nil {
		return nil // before there is room to be made for an error
	}
	var e *RangeError
	if !errors.As(err, &e) {
		return err
	}
	renamed := *e
	renamed.Func = fn
	if arg != "" {
		renamed.Arg, renamed.What = arg, e.prose()
	}
	return &renamed
}

// Reasons why a text is not a quantity. Every [*ParseError] unwraps to one of
// them, or to [ErrRange] when the number is too large for a float64.
var (
	ErrSyntax    = errors.New("not a number with a unit")
	ErrUnit      = errors.New("unknown unit")
	ErrNoUnit    = errors.New("no unit")
	ErrAmbiguous = errors.New("ambiguous unit")
	ErrName      = errors.New("not one of the names")
)

// ParseError says which text could not be read as a quantity and why.
type ParseError struct {
	Func  string // the function called, such as "units.ParseVolume"
	Input string // the text as given
	Hint  string // the way out
	Err   error  // ErrSyntax, ErrUnit, ErrNoUnit, ErrAmbiguous, ErrName or ErrRange
}

// Error tells the function, the text, the reason and the way out.
func (e *ParseError) Error() string { return e.Func + ": " + e.text() }

func (e *ParseError) text() string {
	s := strconv.Quote(clip.Text(e.Input))
	if e.Err != nil {
		s += ": " + e.Err.Error()
	}
	if e.Hint != "" {
		s += ": " + e.Hint
	}
	return s
}

// Unwrap returns the reason.
func (e *ParseError) Unwrap() error { return e.Err }
