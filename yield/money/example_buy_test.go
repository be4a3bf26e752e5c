package money_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// The worked example of Farming Magazine, Boiling it down: 2.50 dollars per pound in
// bulk, 2 Brix, half share: 0.32 per gallon (0.3198).
func ExampleOffer_PerUSGallon() {
	offer := money.Offer{
		SyrupPerPound:     decimal.RequireFromString("2.50"),
		Share:             decimal.RequireFromString("0.5"),
		Rule:              yield.Jones1946,
		PoundsPerUSGallon: decimal.NewFromInt(11),
		PriceStep:         decimal.RequireFromString("0.0001"),
		Cent:              decimal.RequireFromString("0.01"),
	}
	price, err := offer.PerUSGallon(2)
	fmt.Println(price, err)

	offer.PriceStep = offer.Cent
	price, err = offer.PerUSGallon(2)
	fmt.Println(price, err)
	// Output:
	// 0.3198 <nil>
	// 0.32 <nil>
}

// By the exact balance every pound of sugar has one price: half of 2.50 over
// 0.669.
func ExampleOffer_PerPoundOfSugar() {
	offer := money.Offer{
		SyrupPerPound: decimal.RequireFromString("2.50"),
		Share:         decimal.RequireFromString("0.5"),
		Syrup:         66.9,
		PriceStep:     decimal.RequireFromString("0.001"),
		Cent:          decimal.RequireFromString("0.01"),
	}
	thin, _ := offer.PerPoundOfSugar(1.8)
	thick, err := offer.PerPoundOfSugar(12)
	fmt.Println(thin, thick, err)
	// Output: 1.868 1.868 <nil>
}

// Half of 2.50 per pound and 11 lb over 86/X: 0.159884 for each Brix.
func ExampleOffer_Prices() {
	offer := money.Offer{
		SyrupPerPound:     decimal.RequireFromString("2.50"),
		Share:             decimal.RequireFromString("0.5"),
		Rule:              yield.Jones1946,
		PoundsPerUSGallon: decimal.NewFromInt(11),
		PriceStep:         decimal.RequireFromString("0.001"),
		Cent:              decimal.RequireFromString("0.01"),
	}
	table, err := offer.Prices(nil, 1.5, 3, 0.5)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range table {
		fmt.Println(p.Sap.Text(1), p.PerUSGallon)
	}
	// Output:
	// 1.5 Brix 0.24
	// 2.0 Brix 0.32
	// 2.5 Brix 0.4
	// 3.0 Brix 0.48
}

// Invented deliveries at 0.3198, 0.3517 and 0.3837 for 2.0, 2.2 and 2.4 Brix.
func ExampleOffer_Statement() {
	offer := money.Offer{
		SyrupPerPound:     decimal.RequireFromString("2.50"),
		Share:             decimal.RequireFromString("0.5"),
		Rule:              yield.Jones1946,
		PoundsPerUSGallon: decimal.NewFromInt(11),
		MinBrix:           1.5,
		PriceStep:         decimal.RequireFromString("0.0001"),
		Cent:              decimal.RequireFromString("0.01"),
	}
	s, err := offer.Statement([]money.Delivery{
		{Slip: "14 March", Seller: "Creek lot", USGallons: decimal.NewFromInt(61), Sap: 2.0},
		{Slip: "14 March", Seller: "Hill house", USGallons: decimal.NewFromInt(35), Sap: 2.4},
		{Slip: "16 March", Seller: "Creek lot", USGallons: decimal.NewFromInt(48), Sap: 2.2},
		{Slip: "17 March", Seller: "Hill house", USGallons: decimal.NewFromInt(20), Sap: 1.2},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range s.Lines {
		fmt.Println(l.Slip, l.Seller, l.Bought, l.Amount.StringFixed(2))
	}
	for _, p := range s.Payments {
		fmt.Println(p.Seller, p.Amount.StringFixed(2))
	}
	fmt.Println("all", s.Amount.StringFixed(2))
	// Output:
	// 14 March Creek lot true 19.51
	// 14 March Hill house true 13.43
	// 16 March Creek lot true 16.88
	// 17 March Hill house false 0.00
	// Creek lot 36.39
	// Hill house 13.43
	// all 49.82
}
