package money_test

import (
	"errors"
	"math"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

// Lists and decimals on and beyond their limits.
func TestExactLimits(t *testing.T) {
	long := make([]money.Contribution, 100_000)
	for i := range long {
		long[i].Weight = decimal.NewFromInt(1)
	}
	if _, err := money.Divide(dec("1"), 0, long); err != nil {
		t.Error(err)
	}
	if _, err := money.Divide(dec("1"), 0, append(long, long[0])); !errors.Is(err, units.ErrRange) {
		t.Errorf("100,001 contributors: %v", err)
	}
	offered := func(set func(o *money.Offer, d decimal.Decimal)) func(d decimal.Decimal) error {
		return func(d decimal.Decimal) error {
			o := byRule()
			set(&o, d)
			_, err := o.PerUSGallon(2)
			return err
		}
	}
	for name, tt := range map[string]struct {
		low, high, below, above string
		try                     func(d decimal.Decimal) error
	}{
		"price of syrup": {"0", "1000000000", "-1e-30", "1000000000.000001", offered(func(o *money.Offer, d decimal.Decimal) { o.SyrupPerPound = d })},
		"share":          {"0", "1", "-1e-30", "1.000000000000000000000000000001", offered(func(o *money.Offer, d decimal.Decimal) { o.Share = d })},
		"pounds":         {"8", "15", "7.999", "15.001", offered(func(o *money.Offer, d decimal.Decimal) { o.PoundsPerUSGallon = d })},
		"price step":     {"1e-9", "1e9", "9e-10", "1000000001", offered(func(o *money.Offer, d decimal.Decimal) { o.PriceStep = d })},
		"cent":           {"1e-9", "1e9", "9e-10", "1000000001", offered(func(o *money.Offer, d decimal.Decimal) { o.Cent = d })},
		"weight": {"1e-30", "1e30", "1e-31", "1000000000000000000000000000001", func(d decimal.Decimal) error {
			_, err := money.Divide(dec("1"), 0, []money.Contribution{{Weight: d}})
			return err
		}},
		"delivery": {"0", "10000000", "-0.001", "10000000.001", func(d decimal.Decimal) error {
			_, err := byRule().Statement([]money.Delivery{{USGallons: d, Sap: 2}})
			return err
		}},
		"cost": {"0", "1e9", "-0.01", "1000000000.01", func(d decimal.Decimal) error {
			_, err := money.CostPerUSGallon([]money.Cost{{Amount: d}}, dec("1"), dec("0.01"))
			return err
		}},
		"gallons of a cost": {"0.001", "1e7", "0.00099", "10000000.001", func(d decimal.Decimal) error {
			_, err := money.CostPerUSGallon([]money.Cost{{Amount: dec("1")}}, d, dec("0.01"))
			return err
		}},
	} {
		for _, s := range []string{tt.low, tt.high} {
			if err := tt.try(dec(s)); err != nil {
				t.Errorf("%s of %s: %v", name, s, err)
			}
		}
		for _, s := range []string{tt.below, tt.above} {
			if err := tt.try(dec(s)); !errors.Is(err, units.ErrRange) {
				t.Errorf("%s of %s: %v", name, s, err)
			}
		}
		for _, exp := range []int32{31, -31, 1_000_000_000, -1_000_000_000, math.MaxInt32, math.MinInt32} {
			if err := tt.try(decimal.New(1, exp)); !errors.Is(err, units.ErrRange) {
				t.Errorf("%s of 1e%d: %v", name, exp, err)
			}
		}
	}
}
