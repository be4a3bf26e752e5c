package records

import (
	"errors"
	"fmt"
	"strings"

	"example.org/sapreckoner/units"
)

// What may be wrong with rows that can each be read.
var (
	ErrDuplicate = errors.New("given twice")
	ErrOrder     = errors.New("out of order")
)

// RowError says which cell of a table could not be used, and why:
// [ErrDuplicate], [ErrOrder], [example.org/sapreckoner/units.ErrRange], the
// error of the reader, or what is wrong with the table and how to write it.
type RowError struct {
	Line   int    // from 1; 0 where the table as a whole is meant
	Column string // as the header names it; empty where the whole line is meant
	Err    error
}

// Error tells line, column, reason and the way out.
func (e *RowError) Error() string { return e.say(func(err error) string { return err.Error() }) }

// Text tells the same to a person, in the given units.
func (e *RowError) Text(in units.System) string {
	return e.say(func(err error) string { return units.Reason(err, in) })
}

func (e *RowError) say(reason func(error) string) string {
	var parts []string
	if e.Line > 0 {
		place := fmt.Sprintf("line %d", e.Line)
		if e.Column != "" {
			place += ", column " + e.Column
		}
		parts = append(parts, place)
	}
	if e.Err != nil {
		parts = append(parts, reason(e.Err))
	}
	return strings.Join(parts, ": ")
}

// Unwrap returns the reason.
func (e *RowError) Unwrap() error { return e.Err }

// Row gives an error of the reader the face that callers see.
func Row(err error) error {
	var e *Error
	if errors.As(err, &e) {
		return &RowError{e.Line, e.Column, e.Err}
	}
	return err
}
