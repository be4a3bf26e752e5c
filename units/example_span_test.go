package units_test

import (
	"fmt"

	"example.org/sapreckoner/units"
)

// Two cords on hand, one needed, give or take a half.
func ExampleSpan_Left() {
	need := units.Span[units.Volume]{Low: 0.5 * units.Cord, Middle: units.Cord, High: 1.5 * units.Cord}
	left := need.Left(2 * units.Cord)
	fmt.Println(left.Low.Text(units.Cord, 1), left.High.Text(units.Cord, 1))
	// Output: 0.5 cord 1.5 cord
}

func ExampleSpan() {
	s := units.Span[units.Share]{Low: 15, Middle: 27.5, High: 40}
	fmt.Println(s.Low, s.High)
	// Output: 15 % 40 %
}
