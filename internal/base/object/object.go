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
	"fmt"
	"io"
	"reflect"
	"strings"

	"example.org/sapreckoner/units"
)

// ErrObject is that a text is no JSON object.
var ErrObject = errors.New("not an object: write its fields in braces")

// ErrMore is that something follows the object.
var ErrMore = errors.New("something follows the object")

// ErrMissing is that a field is missing.
var ErrMissing = errors.New("missing")

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

// Whole is [Read] into a struct of which no field may be missing, for what the
// constructor would take for something: a count, a name, a yes or no. Null is
// left to types that read it themselves.
func Whole(fn string, b []byte, into any) error {
	if err := Read(fn, b, into); err != nil {
		return err
	}
	var given map[string]json.RawMessage
	if err := json.Unmarshal(b, &given); err != nil {
		return &Error{fn, err}
	}
	return missing(fn, reflect.TypeOf(into).Elem(), given, map[string]bool{})
}

// missing tells the first field of the struct that is not given. What is seen
// stands before a field of that name in an embedded struct.
func missing(fn string, typ reflect.Type, given map[string]json.RawMessage, seen map[string]bool) error {
	var within []reflect.Type
	for i := range typ.NumField() {
		f := typ.Field(i)
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if f.Anonymous && name == "" {
			within = append(within, f.Type)
			continue
		}
		if name == "" {
			name = f.Name
		}
		if seen[name] {
			continue
		}
		seen[name] = true
		found := false
		for key, raw := range given {
			if strings.EqualFold(key, name) {
				found = string(raw) != "null" || reflect.PointerTo(f.Type).Implements(reader)
			}
		}
		if !found {
			return &Error{fn, fmt.Errorf("%s: %w", name, ErrMissing)}
		}
	}
	for _, typ := range within {
		if err := missing(fn, typ, given, seen); err != nil {
			return err
		}
	}
	return nil
}

var reader = reflect.TypeFor[json.Unmarshaler]()

// Refuse is the error of a type that has no JSON, in the name of fn. Instead
// tells what to encode, or to make it of.
func Refuse(fn, instead string) error { return &Error{fn, errors.New("it has no JSON: " + instead)} }
