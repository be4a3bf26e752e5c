package money_test

import (
	"errors"
	"math"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// Decimals of any kind: an answer is a multiple of its step, an error is typed,
// and nothing panics or eats the memory.
func FuzzOffer(f *testing.F) {
	f.Add("2.50", "0.5", "11", "0.0001", "0.01", "61", 2.0, 0.0, byte(1))
	f.Add("1e30", "1e-30", "8", "1e-9", "1e9", "1e7", 30.0, 66.9, byte(0))
	f.Add("9e9999", "-1", "0", "0", "0", "1e-9999", math.Inf(1), math.NaN(), byte(255))
	f.Fuzz(func(t *testing.T, price, share, pounds, step, cent, gallons string, sap, syrup float64, rule byte) {
		var ds [6]decimal.Decimal
		for i, s := range []string{price, share, pounds, step, cent, gallons} {
			d, err := decimal.NewFromString(s)
			if err != nil {
				return
			}
			ds[i] = d
		}
		o := money.Offer{
			SyrupPerPound: ds[0], Share: ds[1], PoundsPerUSGallon: ds[2], PriceStep: ds[3], Cent: ds[4],
			Rule: yield.Rule(rule), Syrup: units.Brix(syrup),
		}
		s, err := o.Statement([]money.Delivery{{USGallons: ds[5], Sap: units.Brix(sap)}, {USGallons: ds[5], Sap: 2}})
		if err != nil {
			if !errors.Is(err, units.ErrRange) || s.Lines != nil {
				t.Errorf("%v, %v", s, err)
			}
			return
		}
		if !s.Amount.Equal(s.Lines[0].Amount.Add(s.Lines[1].Amount)) || !s.Amount.Mod(ds[4]).IsZero() || !s.Lines[0].PerUSGallon.Mod(ds[3]).IsZero() {
			t.Errorf("%+v", s)
		}
	})
}
