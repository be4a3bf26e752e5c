// Package object reads a value that guards its fields from a JSON object: whole
// or not at all.
//
// A type presets the quantities of a struct to NaN, reads into it, and makes
// itself by its constructor: what is missing or null is then refused there, as
// out of range.
package object

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"

	"example.org/sapreckoner/units"
)

// ErrObject is that a text is no JSON object.
var ErrObject = errors.New("not an object: write its fields in braces")

// ErrMore is that something follows the object.
var ErrMore = errors.New("something follows the object")

// An Error says which function could not read an object, and why.
type Error struct {
	Func string
	Err  error
}

// Error tells the function and the reason.
func (e *Error) Error() string { return e.Func + ": " + e.Err.Error() }

// Text tells the reason to a person.
func (e *Error) Text(in units.System) string { return units.Reason(e.Err, in) }

// Unwrap returns the reason.
func (e *Error) Unwrap() error { return e.Err }

// Read reads the one object that b holds into the struct that into points to, in
// the name of fn. A field that the struct does not have is an error, and so is
// anything behind the object. After an error the struct is worth nothing.
func Read(fn string, b []byte, into any) error {
	b = bytes.TrimSpace(b)
	if len(b) == 0 || b[0] != '{' {
		return &Error{fn, ErrObject}
	}
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	if err := d.Decode(into); err != nil {
		return &Error{fn, err}
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return &Error{fn, ErrMore}
	}
	return nil
}
