package tapping_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func ExampleErrNotCovered() {
	school, _ := tapping.GuidelineByID("UVM-school")
	_, err := school.Taps(30 * units.Inch)
	fmt.Println(errors.Is(err, tapping.ErrNotCovered))
	// Output: true
}

func ExampleNotCoveredError_Error() {
	var none tapping.Guideline
	_, err := none.Taps(12 * units.Inch)
	fmt.Println(err)
	// Output: tapping: guideline (none) does not cover a trunk of 12 in (30.48 cm): no guideline was chosen: take a published one, a careful one to start with
}

func ExampleNotCoveredError_Unwrap() {
	err := &tapping.NotCoveredError{Guideline: "our woods"}
	fmt.Println(err.Unwrap())
	// Output: not covered
}
