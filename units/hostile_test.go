package units_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// A number of decimals without end is not a text without end.
func TestTextManyDecimals(t *testing.T) {
	for _, got := range []string{units.Brix(66.9).Text(math.MaxInt), units.Celsius(3).Text(units.ScaleCelsius, math.MaxInt)} {
		if len(got) > 1200 {
			t.Errorf("a text of %d bytes", len(got))
		}
	}
	if got, want := units.Brix(66.9).Text(math.MinInt), "67 Brix"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// An error that a caller makes without a reason still prints.
func TestEmptyErrorsPrint(t *testing.T) {
	if got, want := (&units.ParseError{Func: "f", Input: "x"}).Error(), `f: "x"`; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
