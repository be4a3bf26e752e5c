package yield_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// An invented blend: of 18 lb in batch B after 8 lb of A were poured into it, 8/18 is
// of A, and pints that were filled before hold A alone.
func ExampleKeepCellar() {
	day := func(d int) time.Time { return time.Date(2034, time.March, d, 0, 0, 0, 0, time.UTC) }
	cellar, books, err := yield.KeepCellar([]yield.Move{
		{Kind: yield.Drawn, Day: day(3), Into: "A", Mass: units.Pounds(30), Brix: 66},
		{Kind: yield.Drawn, Day: day(9), Into: "B", Mass: units.Pounds(10), Brix: 68},
		{Kind: yield.Bottled, Day: day(10), From: "A", Into: "pints", Mass: units.Pounds(6)},
		{Kind: yield.Poured, Day: day(11), From: "A", Into: "B", Mass: units.Pounds(8)},
		{Kind: yield.Bottled, Day: day(12), From: "B", Into: "quarts", Mass: units.Pounds(9)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, h := range cellar.Held {
		fmt.Println(h.Vessel, h.Stage.Syrup.Text(units.Pound, 1), "left")
	}
	runs := map[string]yield.Run{}
	for _, r := range cellar.Runs {
		runs[r.Packing.ID] = r
	}
	hit, _ := books.Recall("A")
	for _, r := range hit {
		of := units.Mass(r.Share.Fraction()) * runs[r.Packing.ID].Stage.Syrup
		fmt.Println(r.Packing.ID, r.Share.Text(1), of.Text(units.Pound, 1))
	}
	// Output:
	// A 16.0 lb left
	// B 9.0 lb left
	// pints 100.0 % 6.0 lb
	// quarts 44.4 % 4.0 lb
}

func ExampleBooks_Recall() {
	books, err := invented()
	if err != nil {
		fmt.Println(err)
		return
	}
	hit, err := books.Recall("first")
	for _, r := range hit {
		fmt.Println(r.Packing.ID, r.Share.Text(2), err)
	}
	// Output: quarts in May 56.25 % <nil>
}

func ExampleMoveKind_UnmarshalText() {
	fmt.Println(yield.MoveKinds())
	var k yield.MoveKind
	fmt.Println(k.UnmarshalText([]byte("Poured")), k.String())
	text, _ := k.MarshalText()
	fmt.Println(string(text))
	fmt.Println(units.Reason(k.UnmarshalText([]byte("pored")), units.US))
	// Output:
	// [drawn poured bottled thrown]
	// <nil> poured
	// poured
	// "pored": not one of the names: did you mean "poured"? Use one of: drawn, poured, bottled, thrown
}

// A drum of 11.0759 lb net on the scale has a mass of 11.0843.
func ExampleWeighed() {
	lot, err := yield.Weighed(units.Pounds(51.0759), units.Pounds(40), 66.9, units.Celsius(20))
	fmt.Println(lot.Mass().Text(units.Pound, 4), err)
	// Output: 11.0843 lb <nil>
}
