package records

import (
	"errors"
	"fmt"
	"strings"
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
func (e *RowError) Error() string {
	var parts []string
	if e.Line > 0 {
		place := fmt.Sprintf("line %d", e.Line)
		if e.Column != "" {
			place += ", column " + e.Column
		}
		parts = append(parts, place)
	}
	if e.Err != nil {
		parts = append(parts, e.Err.Error())
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
