package tapping

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/internal/records"
)

// What may be wrong with rows that can each be read.
var (
	ErrDuplicate = errors.New("given twice")
	ErrOrder     = errors.New("out of order")
)

// RowError says which cell of a table could not be used, and why: [ErrDuplicate],
// [ErrOrder], [example.org/sapreckoner/units.ErrRange], the error of the reader, or what is wrong with
// the table and how to write it.
type RowError struct {
	Line   int    // from 1; 0 where the table as a whole is meant
	Column string // as the header names it; empty where the whole line is meant
	Err    error
}

// Error tells line, column, reason and the way out.
func (e *RowError) Error() string {
	s := ""
	if e.Line > 0 {
		s = fmt.Sprintf("line %d", e.Line)
		if e.Column != "" {
			s += ", column " + e.Column
		}
	}
	if e.Err == nil {
		return s
	}
	if s != "" {
		s += ": "
	}
	return s + e.Err.Error()
}

// Unwrap returns the reason.
func (e *RowError) Unwrap() error { return e.Err }

// rowError gives an error of the reader the face that callers see.
func rowError(err error) error {
	var e *records.Error
	if errors.As(err, &e) {
		return &RowError{e.Line, e.Column, e.Err}
	}
	return err
}
