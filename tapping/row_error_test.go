package tapping_test

import (
	"testing"

	"example.org/sapreckoner/tapping"
)

// An error that a caller makes without a reason still prints.
func TestEmptyRowErrorPrints(t *testing.T) {
	if got, want := (&tapping.RowError{Line: 3, Column: "tree"}).Error(), "line 3, column tree"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
