package records_test

import (
	"errors"
	"fmt"
	"strings"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units/records"
)

func ExampleRowError() {
	_, err := tapping.ReadStand(strings.NewReader("tree,dbh_in\nA1,14\nA2,14 in\n"))
	fmt.Println(err)
	var e *records.RowError
	fmt.Println(errors.As(err, &e), e.Line)
	// Output:
	// line 3, column dbh_in: "14 in" is not a plain number (the unit stands in the header)
	// true 3
}
