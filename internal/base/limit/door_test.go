package limit_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Every door passes on what it is given, each to its own place: the seven parts of
// the error differ.
func TestDoors(t *testing.T) {
	const fn, hint = "trade.Door", "knock first"
	for name, tc := range map[string]struct {
		door func(x float64) error
		want units.RangeError // for 9 where 2 to 3 is the range
	}{
		"Number": {func(x float64) error { return limit.Number(fn, "n", x, 2, 3, hint) },
			units.RangeError{Arg: "n"}},
		"Count": {func(x float64) error { return limit.Count(fn, "n", int(x), 2, 3, hint) },
			units.RangeError{Arg: "n"}},
		"In": {func(x float64) error { return limit.In(fn, "b", x, 2, 3, "Brix", hint) },
			units.RangeError{Arg: "b", Unit: "Brix"}},
		"InAs": {func(x float64) error { return limit.InAs(fn, "b", "sap", x, 2, 3, "Brix", hint) },
			units.RangeError{Arg: "b", What: "sap", Unit: "Brix"}},
		"Liters": {func(x float64) error {
			return limit.Liters(fn, "v", units.Liters(x), 2*units.Liter, 3*units.Liter, hint)
		}, units.RangeError{Arg: "v", Unit: "L"}},
		"InItem": {func(x float64) error { return limit.InItem(fn, "lots", 3, "Brix", "sap", x, 2, 3, "Brix", hint) },
			units.RangeError{Arg: "lots[3].Brix", What: "entry 4: sap", Unit: "Brix"}},
	} {
		for _, x := range []float64{2, 3} {
			if err := tc.door(x); err != nil {
				t.Errorf("%s: %v at its end is refused: %v", name, x, err)
			}
		}
		for _, x := range []float64{1, 9} {
			want := tc.want
			want.Func, want.Value, want.Low, want.High, want.Hint = fn, x, 2, 3, hint
			var e *units.RangeError
			if err := tc.door(x); !errors.As(err, &e) {
				t.Errorf("%s lets %v pass: %v", name, x, err)
			} else if near := *e; !limit.Same(e.Value, x) || !limit.Same(e.Low, 2) || !limit.Same(e.High, 3) {
				t.Errorf("%s of %v tells %v in %v to %v", name, x, e.Value, e.Low, e.High)
			} else if near.Value, near.Low, near.High = x, 2, 3; near != want {
				t.Errorf("%s of %v: %+v, want %+v", name, x, near, want)
			}
		}
	}
}

// A list of none and one of more than 100,000 are refused.
func TestEntries(t *testing.T) {
	for _, n := range []int{1, limit.MaxEntries} {
		if err := limit.Entries("f", "lots", n); err != nil {
			t.Errorf("%d entries: %v", n, err)
		}
	}
	for _, n := range []int{0, limit.MaxEntries + 1} {
		var e *units.RangeError
		err := limit.Entries("f", "lots", n)
		if !errors.As(err, &e) || e.Func != "f" || e.Arg != "lots" || e.Unit != "" || e.Hint != "give at least one entry" || e.Low != 1 || e.High != 100_000 {
			t.Errorf("%d entries: %+v", n, err)
		}
	}
}

// What is outside comes to the nearer end, and what is inside stays.
func TestClip(t *testing.T) {
	r := limit.Range{Low: 2, High: 3}
	for x, want := range map[float64]float64{1: 2, 2.5: 2.5, 9: 3, math.Inf(-1): 2} {
		if got := r.Clip(x); got != want {
			t.Errorf("%v comes to %v, want %v", x, got, want)
		}
	}
	if !math.IsNaN(r.Clip(math.NaN())) {
		t.Error("NaN does not stay")
	}
}

// What goes with an error is NaN throughout, so that nobody reckons with it.
func TestNoAnswer(t *testing.T) {
	s, m := limit.NoSpan[float64](), limit.NoMiss()
	for _, x := range []float64{s.Low, s.Middle, s.High, float64(m.Brix), float64(m.Syrup)} {
		if !math.IsNaN(x) {
			t.Errorf("%v, %v", s, m)
		}
	}
}

// All that is finite has no upper end to tell.
func TestNoUpperEnd(t *testing.T) {
	r := limit.Range{Arg: "n", Low: 1, High: math.MaxFloat64}
	var e *units.RangeError
	if err := r.Check("f", 0); !errors.As(err, &e) || !math.IsInf(e.High, 1) {
		t.Errorf("%v", err)
	}
}

// On the way to a good answer no name is made.
func TestInItemCostsNothing(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() {
		if err := limit.InItem("f", "lots", 3, "Brix", "sap", 2, 1, 3, "Brix", "hint"); err != nil {
			t.Error(err)
		}
	}); n != 0 {
		t.Errorf("a good entry allocates %v times", n)
	}
}
