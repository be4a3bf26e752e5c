package money_test

import (
	"fmt"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

func usd(text string) decimal.Decimal { return decimal.RequireFromString(text) }

// An invented seller: 36.39 of sap, less 4.00 of trucking and 20.00 in advance, is
// 12.39, and what was paid is not paid again.
func ExampleSettle() {
	day := func(d int) time.Time { return time.Date(2034, time.March, d, 0, 0, 0, 0, time.UTC) }
	record := []money.Posting{
		{Day: day(2), Payee: "Creek lot", Kind: money.Advanced, Category: "advance", Amount: usd("20.00")},
		{Day: day(14), Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: usd("36.39")},
		{Day: day(15), Payee: "Creek lot", Kind: money.Deducted, Category: "trucking", Amount: usd("4.00")},
	}
	first, err := money.Settle(record, day(1), day(15), usd("0.01"))
	fmt.Println(first.All.Due, err)

	record = append(record, first.Payouts(day(16), "cheque")...)
	second, _ := money.Settle(record, day(16), day(31), usd("0.01"))
	b := second.Balances[0]
	fmt.Println(b.Payee, "carried", b.Carried, "paid", b.Paid, "due", b.Due)
	// Output:
	// 12.39 <nil>
	// Creek lot carried 12.39 paid 12.39 due 0
}

func ExampleLedger() {
	day := time.Date(2034, time.March, 14, 0, 0, 0, 0, time.UTC)
	lines, err := money.Ledger([]money.Posting{
		{Day: day, Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: usd("19.51")},
		{Day: day, Payee: "Creek lot", Kind: money.Earned, Category: "sap", Amount: usd("16.88")},
		{Day: day, Payee: "Creek lot", Kind: money.Deducted, Category: "trucking", Amount: usd("4")},
	}, day, day, usd("0.01"))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range lines {
		fmt.Println(l.Category, l.Payee, l.Kind, l.Count, l.Amount.StringFixed(2))
	}
	// Output:
	// sap Creek lot earned 2 36.39
	// trucking Creek lot deducted 1 4.00
}

func ExamplePostingKind_UnmarshalText() {
	fmt.Println(money.PostingKinds())
	var k money.PostingKind
	fmt.Println(k.UnmarshalText([]byte("Advanced")), k.String())
	text, _ := k.MarshalText()
	fmt.Println(string(text))
	fmt.Println(units.Reason(k.UnmarshalText([]byte("advnced")), units.US))
	// Output:
	// [carried earned deducted advanced paid]
	// <nil> advanced
	// advanced
	// "advnced": not one of the names: did you mean "advanced"? Use one of: carried, earned, deducted, advanced, paid
}

// Sap boiled on halves: half to the house, half by the sugar of 30 and 10 kg.
func ExampleTogether() {
	among, err := money.Together(
		money.Measure{Part: usd("0.5"), Among: []money.Contribution{{Name: "House", Weight: usd("1")}}},
		money.Measure{Part: usd("0.5"), Among: []money.Contribution{{Name: "Creek lot", Weight: usd("30")}, {Name: "Hill house", Weight: usd("10")}}},
	)
	if err != nil {
		fmt.Println(err)
		return
	}
	portions, _ := money.Divide(usd("12"), 2, among)
	for _, p := range portions {
		fmt.Println(p.Name, p.Amount)
	}
	// Output:
	// House 6
	// Creek lot 4.5
	// Hill house 1.5
}

// Ten pints are left of sixteen, and the first of two already took six.
func ExampleDivideJarsAfter() {
	baskets, err := money.DivideJarsAfter(
		[]money.Jars{{Label: units.USPint, Count: 10}},
		[]money.Contribution{{Name: "Mill lane", Weight: usd("1")}, {Name: "The twins", Weight: usd("1")}},
		[]units.Volume{6 * units.USPint, 0})
	fmt.Println(baskets, err)
	// Output: [{Mill lane [2]} {The twins [8]}] <nil>
}

func ExampleStraightLine() {
	parts, err := money.StraightLine(usd("100"), 3, usd("0.01"))
	fmt.Println(parts, err)
	// Output: [33.34 33.33 33.33] <nil>
}

// 150 of costs and 40 hours at 15 for 12 gallons: 750/12 is 62.50.
func ExampleVenture_Reckon() {
	r, err := money.Venture{
		Costs:     []money.Cost{{Item: "jars", Amount: usd("100")}, {Item: "pan, this year", Amount: usd("50")}},
		USGallons: usd("12"), Hours: usd("40"), Wage: usd("15"), Price: usd("60"), Step: usd("0.01"),
	}.Reckon()
	fmt.Println(r.PerUSGallon, r.PerUSGallonWithWages, r.BreakEven.Decimal, r.Hourly.Decimal, err)
	var empty money.Result
	fmt.Println(empty.Hourly.Valid)
	// Output:
	// 12.5 62.5 2.5 14.25 <nil>
	// false
}

// Sendak and Bennink 1985: 15.93 a gallon for 3000 taps and oil in 1984.
func ExamplePublishedCosts() {
	for _, p := range money.PublishedCosts() {
		if p.Year == 1984 {
			fmt.Println(p.What, p.PerUSGallon)
		}
	}
	// Output: 3000 taps, oil 15.93
}
