package yield_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// A lot without sugar is named by its place in the call and in words.
func TestRepackedOfNothing(t *testing.T) {
	lot, err := sugar.NewLotByMass(units.Kilogram, 66, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		held, packed    sugar.Lot
		arg, what, hint string
	}{
		{sugar.Lot{}, lot, "held", "sugar held", "the lot as it was put by"},
		{lot, sugar.Lot{}, "packed", "sugar packed", "the lot as it is packed"},
	} {
		var e *units.RangeError
		got, err := yield.Repacked(tc.held, tc.packed)
		if !errors.As(err, &e) || got != (yield.Repacking{}) || e.Func != "yield.Repacked" || e.Arg != tc.arg || e.What != tc.what || e.Hint != tc.hint || e.Unit != "kg" {
			t.Errorf("%s: %+v, %+v", tc.arg, got, err)
		}
	}
}

// A cellar without a move is none, and beyond 100,000 moves it is refused before
// any of them is looked at.
func TestKeepCellarMoves(t *testing.T) {
	for _, n := range []int{0, 100_001} {
		var e *units.RangeError
		_, books, err := yield.KeepCellar(make([]yield.Move, n))
		if !errors.As(err, &e) || books != nil || e.Func != "yield.KeepCellar" || e.Arg != "moves" || math.Abs(e.Value-float64(n)) > 0 || e.Low > 1 || e.High < 100_000 {
			t.Errorf("%d moves: %v, %+v", n, books, err)
		}
	}
}
