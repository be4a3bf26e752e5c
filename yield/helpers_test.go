package yield_test

import (
	"strconv"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

func glass(label units.Volume, m units.Mass) packing.Container {
	return packing.Container{Label: label, Mass: m}
}

func jar(label units.Volume) packing.Container { return packing.Container{Label: label} }

// lotOf makes a lot or fails the test.
func lotOf(t testing.TB, v units.Volume, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// byBalance is the same bargain by the exact balance.
func byBalance() money.Offer {
	o := byRule()
	o.Rule, o.PoundsPerUSGallon, o.Syrup = 0, decimal.Zero, 66.9
	return o
}

// byRule is the worked example of the source.
func byRule() money.Offer {
	return money.Offer{
		SyrupPerPound: dec("2.50"), Share: dec("0.5"),
		Rule: yield.Jones1946, PoundsPerUSGallon: dec("11"),
		PriceStep: dec("0.0001"), Cent: dec("0.01"),
	}
}

func dec(s string) decimal.Decimal { return decimal.RequireFromString(s) }

func weights(ws ...string) []money.Contribution {
	out := make([]money.Contribution, len(ws))
	for i, w := range ws {
		out[i] = money.Contribution{Name: strconv.Itoa(i), Weight: dec(w)}
	}
	return out
}
