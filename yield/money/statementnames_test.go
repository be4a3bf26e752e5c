package money_test

import (
	"errors"
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
