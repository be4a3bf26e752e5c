package records_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/units/records"
)

// An error that a caller makes without a reason still prints.
func TestEmptyRowErrorPrints(t *testing.T) {
	if got, want := (&records.RowError{Line: 3, Column: "tree"}).Error(), "line 3, column tree"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// A table as a whole has no line.
func TestRowErrorPlaces(t *testing.T) {
	why := errors.New("it is empty")
	for want, e := range map[string]records.RowError{
		"it is empty":                       {Err: why},
		"line 1: it is empty":               {Line: 1, Err: why},
		"line 7, column max_f: it is empty": {Line: 7, Column: "max_f", Err: why},
		"line 7, column max_f":              {Line: 7, Column: "max_f"},
	} {
		if got := e.Error(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
