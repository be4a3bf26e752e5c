package records

import (
	"encoding/json"
	"errors"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// placeJSON is an error of a file as JSON holds it.
type placeJSON struct {
	File   string            `json:"file,omitempty"`
	Line   int               `json:"line"`
	Column string            `json:"column,omitempty"`
	Reason string            `json:"reason"`
	Range  *units.RangeError `json:"range,omitempty"`
	Text   string            `json:"text"`
}

// written is an error at a place with the text that tells both.
func written(file string, line int, column string, err error, text string) ([]byte, error) {
	out := placeJSON{File: file, Line: line, Column: column, Reason: units.Reason(err, units.Both), Text: text}
	errors.As(err, &out.Range)
	return json.Marshal(out)
}

// reason is what was written of the reason: a range error, a reason of this
// package, or words.
func (p *placeJSON) reason() error {
	for _, known := range []error{ErrDuplicate, ErrOrder} {
		if known.Error() == p.Reason {
			return known
		}
	}
	switch {
	case p.Range != nil:
		return p.Range
	case p.Reason == "":
		return nil
	}
	return errors.New(p.Reason)
}

// MarshalJSON gives an object with line, column, reason, text that tells all of
// it, and range where a number is out of range.
func (e *RowError) MarshalJSON() ([]byte, error) {
	return written("", e.Line, e.Column, e.Err, e.Text(units.Both))
}

// UnmarshalJSON reads what MarshalJSON gives.
func (e *RowError) UnmarshalJSON(b []byte) error {
	var in placeJSON
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*e = RowError{in.Line, in.Column, in.reason()}
	return nil
}

// MarshalJSON gives an object with file, line, column, reason, text that tells
// all of it, and range where a number is out of range.
func (e *Error) MarshalJSON() ([]byte, error) {
	return written(e.File, e.Line, e.Column, e.Err, e.Text(units.Both))
}

// UnmarshalJSON reads what MarshalJSON gives.
func (e *Error) UnmarshalJSON(b []byte) error {
	var in placeJSON
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*e = Error{in.File, in.Line, in.Column, in.reason()}
	return nil
}

const readerParts = "encode what was read"

// String names the file.
func (r *Reader) String() string { return "reader of " + r.file }

// MarshalJSON refuses: a reader is a place in a file.
func (r *Reader) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("records.Reader.MarshalJSON", readerParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (r *Reader) UnmarshalJSON([]byte) error {
	return object.Refuse("records.Reader.UnmarshalJSON", readerParts)
}

// String tells what the header must have.
func (c Col) String() string { return c.suffixes }

// MarshalJSON refuses: a column leads into a variable.
func (c Col) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("records.Col.MarshalJSON", readerParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (c *Col) UnmarshalJSON([]byte) error {
	return object.Refuse("records.Col.UnmarshalJSON", readerParts)
}
