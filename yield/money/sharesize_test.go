package money_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// The answer holds contributors times sizes counts of 8 bytes: 5,000,000 of them
// are 40 MB, and 8,000 by 8,000 were 512 MB.
func TestDivideJarsSize(t *testing.T) {
	many := func(people, sizes int) ([]money.Jars, []money.Contribution) {
		jars, among := make([]money.Jars, sizes), make([]money.Contribution, people)
		for k := range jars {
			jars[k] = money.Jars{Label: units.Milliliters(float64(k + 1)), Count: 1}
		}
		for i := range among {
			among[i].Weight = decimal.NewFromInt(1)
		}
		return jars, among
	}
	if _, err := money.DivideJars(many(5_000, 1_000)); err != nil {
		t.Error(err)
	}
	for _, c := range [][2]int{{5_000, 1_001}, {5_001, 1_000}, {8_000, 8_000}, {100_000, 100_000}} {
		got, err := money.DivideJars(many(c[0], c[1]))
		var re *units.RangeError
		if got != nil || !errors.As(err, &re) || re.Arg != "jars" || !strings.Contains(err.Error(), "divide among groups") {
			t.Errorf("%v: %v", c, err)
		}
	}
}
