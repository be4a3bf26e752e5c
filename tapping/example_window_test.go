package tapping_test

import (
	"fmt"

	"example.org/sapreckoner/tapping"
)

func ExampleLifeFigures() {
	for _, f := range tapping.LifeFigures() {
		fmt.Println(f.How, f.Low.Hours()/24, "to", f.High.Hours()/24, "days,", f.Obtained)
	}
	// Output:
	// open spout and pail or bag 21 to 28 days, read (practice)
	// open spout and pail or bag 28 to 42 days, memory
	// tubing with vacuum 56 to 63 days, read, second-hand
}
