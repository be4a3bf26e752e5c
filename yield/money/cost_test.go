package money_test

import (
	"errors"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

func TestCostLimits(t *testing.T) {
	cent, good := dec("0.01"), []money.Cost{{Item: "wood", Amount: dec("10")}}
	for name, try := range map[string]func() (decimal.Decimal, error){
		"none": func() (decimal.Decimal, error) { return money.CostPerUSGallon(nil, dec("1"), cent) },
		"negative": func() (decimal.Decimal, error) {
			return money.CostPerUSGallon([]money.Cost{{Amount: dec("-1")}}, dec("1"), cent)
		},
		"hostile": func() (decimal.Decimal, error) {
			return money.CostPerUSGallon([]money.Cost{{Amount: decimal.New(1, 1_000_000)}}, dec("1"), cent)
		},
		"no syrup":    func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, dec("0"), cent) },
		"little":      func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, dec("0.0009"), cent) },
		"much":        func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, dec("10000000.1"), cent) },
		"hostile gal": func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, decimal.New(1, -1_000_000), cent) },
		"no step":     func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, dec("1"), decimal.Zero) },
		"below step":  func() (decimal.Decimal, error) { return money.CostPerUSGallon(good, dec("1"), dec("-0.01")) },
	} {
		if c, err := try(); !errors.Is(err, units.ErrRange) || !c.IsZero() {
			t.Errorf("%s: %v, %v", name, c, err)
		}
	}
	if c, err := money.CostPerUSGallon(good, dec("3"), cent); err != nil || !c.Equal(dec("3.33")) {
		t.Errorf("%v, %v", c, err)
	}
	if c, err := money.CostPerUSGallon([]money.Cost{{Amount: dec("0.125")}}, dec("1"), cent); err != nil || !c.Equal(dec("0.13")) {
		t.Errorf("half a cent: %v, %v", c, err)
	}
}
