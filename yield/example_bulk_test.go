package yield_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// An invented season: two boils in a drum, topped up from a third for packing.
func invented() (*yield.Books, error) {
	day := func(d int) time.Time { return time.Date(2031, time.March, d, 0, 0, 0, 0, time.UTC) }
	return yield.NewBooks(
		[]yield.Boil{{ID: "first", Day: day(12)}, {ID: "second", Day: day(15)}, {ID: "third", Day: day(21)}},
		[]yield.BulkLot{
			{ID: "drum 1", Parts: []yield.Part{{From: "first", Mass: units.Pounds(300)}, {From: "second", Mass: units.Pounds(100)}}},
			{ID: "blend", Parts: []yield.Part{{From: "drum 1", Mass: units.Pounds(60)}, {From: "third", Mass: units.Pounds(20)}}},
		},
		[]yield.Packing{{ID: "quarts in May", Lot: "blend", Day: day(21).AddDate(0, 2, 0)}},
	)
}

// The blend is three parts of drum 1, which is three parts of the first boil to
// one of the second: 9/16, 3/16, 1/4.
func ExampleBooks_Trace() {
	books, err := invented()
	if err != nil {
		fmt.Println(err)
		return
	}
	trace, err := books.Trace("quarts in May")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(trace.Lots)
	for _, o := range trace.Boils {
		fmt.Println(o.Boil.Day.Format("2 January"), o.Boil.ID, o.Share.Text(2))
	}
	// Output:
	// [blend drum 1]
	// 12 March first 56.25 %
	// 15 March second 18.75 %
	// 21 March third 25.00 %
}

func ExampleBooks_Affected() {
	books, err := invented()
	if err != nil {
		fmt.Println(err)
		return
	}
	jars, err := books.Affected("second")
	for _, p := range jars {
		fmt.Println(p.ID, err)
	}
	// Output: quarts in May <nil>
}

func ExampleNewBooks() {
	_, err := yield.NewBooks(nil, []yield.BulkLot{{ID: "drum 1", Parts: []yield.Part{{From: "fourth", Mass: 1}}}}, nil)
	fmt.Println(err)
	// Output: yield.NewBooks: "drum 1": no such record: "fourth"
}

func ExampleTraceError() {
	books, _ := invented()
	_, err := books.Trace("pints in June")
	var e *yield.TraceError
	fmt.Println(errors.As(err, &e), e.ID)
	// Output: true pints in June
}

func ExampleTraceError_Error() {
	err := &yield.TraceError{Func: "yield.NewBooks", ID: "drum 1", Err: yield.ErrCircular}
	fmt.Println(err.Error())
	// Output: yield.NewBooks: "drum 1": a lot made of itself
}

func ExampleTraceError_Unwrap() {
	err := &yield.TraceError{Err: yield.ErrDuplicateID}
	fmt.Println(errors.Is(err, yield.ErrDuplicateID))
	// Output: true
}

// A drum of 400 lb at 66.9 Brix came out as 390 lb at 67.5: 0.675 x 390 = 263.25
// of 267.6 lb of sugar, so that 4.35/0.675 = 6.4 lb of syrup are missing and 3.6
// lb of water.
func ExampleRepacked() {
	r, err := yield.Repacked(byMass(units.Pounds(400), 66.9), byMass(units.Pounds(390), 67.5))
	fmt.Println(r.Lost.Text(units.Pound, 1), r.WaterLost.Text(units.Pound, 1), err)
	// Output: 6.4 lb 3.6 lb <nil>
}
