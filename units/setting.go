package units

import (
	"encoding"
	"errors"
)

// Setting is a quantity, or anything else that text can hold, as the value of a
// command-line flag. The help of package flag then shows a default as it was
// written, "29.92 inHg" and not pascals:
//
//	barometer := 29.92 * units.InchMercury
//	flag.Var(units.AsFlag(&barometer, "29.92 inHg"), "barometer", "station pressure")
type Setting struct {
	into    encoding.TextUnmarshaler
	written string
	err     error
}

// AsFlag sets what p points to from the text def and returns it as the value of
// a flag. An empty def leaves it alone. A def that cannot be read is an error of
// the program: [Setting.Err] tells it, and the flag has no default.
func AsFlag(p encoding.TextUnmarshaler, def string) *Setting {
	s := &Setting{into: p}
	if def != "" {
		s.err = s.Set(def)
	}
	return s
}

// Err returns why the default could not be read.
func (s *Setting) Err() error { return s.err }

// String returns the text as it was written.
func (s *Setting) String() string { return s.written }

// MarshalJSON refuses: a setting is a way into a quantity. Encode the quantity.
func (s *Setting) MarshalJSON() ([]byte, error) {
	return nil, errors.New("the setting of a flag has no JSON: encode what it sets")
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (s *Setting) UnmarshalJSON([]byte) error {
	return errors.New("the setting of a flag has no JSON: decode what it sets")
}

// Set reads the text of the flag. The reason of a refusal is worded for a
// person: [Reason].
func (s *Setting) Set(text string) error {
	if s.into == nil {
		return errors.New("this flag holds nothing")
	}
	if err := s.into.UnmarshalText([]byte(text)); err != nil {
		return reasoned{err, Both}
	}
	s.written = text
	return nil
}

// reasoned is an error that words itself for a person and is still itself.
type reasoned struct {
	error
	in System
}

func (r reasoned) Error() string { return Reason(r.error, r.in) }
func (r reasoned) Unwrap() error { return r.error }
