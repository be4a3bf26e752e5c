package tapping_test

import (
	"errors"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A trunk is told to four digits, finer than any tape is read, in the units that
// are asked for: 9.2468 in are 0.2349 m (2.54 cm to the inch).
func TestNotCoveredTells(t *testing.T) {
	e := &tapping.NotCoveredError{Guideline: "our woods", DBH: units.Inches(9.2468), Hint: "from 10 in on"}
	for in, want := range map[units.System]string{
		units.US:     "guideline our woods does not cover a trunk of 9.247 in: from 10 in on",
		units.Metric: "guideline our woods does not cover a trunk of 23.49 cm: from 10 in on",
		units.Both:   "guideline our woods does not cover a trunk of 9.247 in (23.49 cm): from 10 in on",
	} {
		if got := e.Text(in); got != want {
			t.Errorf("%v: %s, want %s", in, got, want)
		}
	}
	if got, want := e.Error(), "tapping: "+e.Text(units.Both); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := (&tapping.NotCoveredError{DBH: units.Inches(9), Hint: "none"}).Text(units.US); got != "guideline (none) does not cover a trunk of 9 in: none" {
		t.Error(got)
	}
	if !errors.Is(e, tapping.ErrNotCovered) {
		t.Error("it is not what callers ask for")
	}
}
