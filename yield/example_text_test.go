package yield_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// A tank is kept by its shape and its sides, and checked when it is read.
func ExampleTank_UnmarshalJSON() {
	var tank yield.Tank
	err := json.Unmarshal([]byte(`{"shape":"lying cylinder","diameter":"36 in","length":"60 in"}`), &tank)
	fmt.Println(tank.Text(units.US), err)
	fmt.Println(tank.Capacity().Text(units.USGallon, 1), tank.String() != "")
	out, _ := tank.MarshalJSON()
	fmt.Println(string(out))
	err = tank.UnmarshalJSON([]byte(`{"shape":"lying cylinder","diameter":"36 in"}`))
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// lying cylinder, diameter 36 in, length 60 in <nil>
	// 264.4 US gal true
	// {"diameter":"0.9144 m","length":"1.524 m","shape":"lying cylinder"}
	// length is not a number; it must lie in 0.3938 in to 98.42 ft: the inner side, from 1 cm to 30 m
}

// The loss of a season is printed with the digits that its limits leave. By hand:
// 1000 US gal of 2 Brix weigh 8395 lb and hold 168 lb of sugar, to 2 percent of it
// and 0.1 percent of the weight, 11.8 lb; the syrup holds 140 lb, to 1.8.
func ExampleAccount_Text() {
	sap, _ := sugar.NewLot(1000*units.USGallon, 2, units.Celsius(20))
	syrup, _ := sugar.NewLotByMass(140*units.Pound/0.66, 66, units.Celsius(20))
	a, err := yield.Season{
		Sap: []sugar.Lot{sap}, SapMeasured: yield.Measured{Volume: 2, Brix: 0.1},
		Syrup: []sugar.Lot{syrup}, SyrupMeasured: yield.Measured{Volume: 1, Brix: 0.2},
	}.Account()
	fmt.Println(a.Text(units.US), err)
	fmt.Println(a.String() == a.Text(units.US))
	out, _ := a.MarshalJSON()
	fmt.Println(a.UnmarshalJSON(out))
	// Output:
	// lost 28 +/- 12 lb of 168 +/- 12 lb of sugar <nil>
	// true
	// <nil>
}

// Books are not kept: what they are made of is.
func ExampleBooks_MarshalJSON() {
	var books yield.Books
	_, err := books.MarshalJSON()
	fmt.Println(books.String())
	fmt.Println(units.Reason(err, units.US))
	fmt.Println(books.UnmarshalJSON([]byte("{}")) != nil)
	// Output:
	// no books
	// it has no JSON: encode the boils, the lots and the packings that they are made of
	// true
}

// A record that does not hang together is told without names of Go.
func ExampleTraceError_Text() {
	_, err := yield.NewBooks(nil, []yield.BulkLot{{ID: "drum 1", Parts: []yield.Part{{From: "march 9", Mass: units.Kilogram}}}}, nil)
	var trace *yield.TraceError
	if errors.As(err, &trace) {
		fmt.Println(trace.Text(units.US))
		out, _ := trace.MarshalJSON()
		fmt.Println(string(out))
		fmt.Println(trace.UnmarshalJSON(out), errors.Is(trace, yield.ErrUnknownID))
	}
	// Output:
	// "drum 1": no such record: "march 9"
	// {"id":"drum 1","ref":"march 9","reason":"no such record","text":"\"drum 1\": no such record: \"march 9\"","func":"yield.NewBooks"}
	// <nil> true
}

// The names of enumerations are read in any case, and a slip is told with the
// nearest name.
func ExampleRule_UnmarshalText() {
	fmt.Println(yield.Rules())
	fmt.Println(yield.States())
	var (
		rule  yield.Rule
		state yield.State
		basis yield.Basis
	)
	fmt.Println(rule.UnmarshalText([]byte("86/x")), state.UnmarshalText([]byte("vermont")), basis.UnmarshalText([]byte("own past seasons")))
	for _, e := range []interface{ MarshalText() ([]byte, error) }{rule, state, basis} {
		text, _ := e.MarshalText()
		fmt.Println(string(text))
	}
	fmt.Println(units.Reason(state.UnmarshalText([]byte("Vermnot")), units.US))
	// Output:
	// [86/X 87.1/X 88.2/X 87.1/X - 0.32 88.2/X - 0.32]
	// [Maine Michigan New Hampshire New York Pennsylvania Vermont Wisconsin United States]
	// <nil> <nil> <nil>
	// 86/X
	// Vermont
	// own past seasons
	// "Vermnot": not one of the names: did you mean "Vermont"? Use one of: Maine, Michigan, New Hampshire, New York, Pennsylvania, Vermont, Wisconsin, United States
}

// A forecast prints the digits that its range leaves: 11.5 to 34.6 US gal for 100
// taps by gravity.
func ExampleForecast_Text() {
	f, err := yield.ForecastFromGravity(100, 2, 66)
	fmt.Println(f.Text(units.US), err)
	fmt.Println(f.String() == f.Text(units.Both))
	// Output:
	// 12 US gal to 35 US gal, 23 US gal in the middle, by gravity figures, from memory of extension leaflets <nil>
	// true
}
