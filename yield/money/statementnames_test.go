package money_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// The second delivery of a list is named so, by its field and in words.
func TestStatementNames(t *testing.T) {
	good := money.Delivery{USGallons: dec("1"), Sap: 2}
	_, err := byRule().Statement([]money.Delivery{good, {USGallons: dec("-1"), Sap: 2}})
	want := money.DecimalError{Func: "money.Offer.Statement", Arg: "deliveries[1].USGallons", What: "entry 2: US gallons", Value: "-1",
		Reason: "it is outside 0 to 10000000: what is delivered is not negative"}
	var d *money.DecimalError
	if !errors.As(err, &d) || *d != want {
		t.Errorf("gallons: %+v", err)
	}
	_, err = byRule().Statement([]money.Delivery{good, {USGallons: dec("1"), Sap: 31}})
	var e *units.RangeError
	if !errors.As(err, &e) || e.Func != "money.Offer.Statement" || e.Arg != "deliveries[1].Sap" || e.What != "entry 2: strength of the sap" {
		t.Errorf("strength: %+v", err)
	}
}

// So are the amount and the step of a thing that is written off.
func TestStraightLineNames(t *testing.T) {
	for arg, tc := range map[string]struct{ paid, cent, what, reason string }{
		"paid": {"-1", "0.01", "amount paid", "what was paid"},
		"cent": {"100", "0", "step of payments", "0.01 for cents"},
	} {
		var d *money.DecimalError
		_, err := money.StraightLine(dec(tc.paid), 5, dec(tc.cent))
		if !errors.As(err, &d) || d.Func != "money.StraightLine" || d.Arg != arg || d.What != tc.what || !strings.HasSuffix(d.Reason, ": "+tc.reason) {
			t.Errorf("%s: %+v", arg, err)
		}
	}
}
