package cookbook_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// By hand: a girth of 66 in is 66/pi = 21.0 in through, over the 18 in from which
// the cautious guideline gives a second tap (Cornell, A History of Taps and Tree
// Size), and it never gives a third.
func Example_tapsOfAMaple() {
	through := must(tapping.DiameterFromGirth(units.Inches(66)))
	fmt.Println(must(tapping.DefaultGuideline().Taps(through)), "taps")
	// Output: 2 taps
}

// By hand: 41.5/pi = 13.21.
func Example_diameter() {
	through := must(tapping.DiameterFromGirth(units.Inches(41.5)))
	fmt.Println(through.Text(units.Inch, 2))
	// Output: 13.21 in
}

// By hand: two taps are for girths over 18 pi = 56.5 in, one for 12 pi = 37.7 to
// 56.5 in. Of these 35 trunks 27 are thicker and 8 are not: 54 and 8.
func Example_holesToDrill() {
	holes := 0
	for _, girth := range []float64{41.5, 58.2, 63, 52.8, 66, 39.9, 44.3, 37.9, 84.8, 45.2, 61.3,
		57.4, 59, 60.2, 64.7, 60.1, 57.1, 67.8, 58.8, 62.2, 56.9, 72.3, 59.6, 58.1,
		61, 57.9, 40.4, 42.1, 65.2, 69.9, 57.6, 58.9, 60.7, 58.5, 59.4} {
		holes += must(tapping.DefaultGuideline().Taps(must(tapping.DiameterFromGirth(units.Inches(girth)))))
	}
	fmt.Println(holes, "holes")
	// Output: 62 holes
}

// The sizes that were read in a source: University of Vermont Extension.
func Example_bit() {
	for _, spout := range tapping.Spouts() {
		if spout.Obtained == "read" {
			fmt.Println(spout.Source)
		}
	}
	fmt.Println(tapping.Spouts()[1].Name)
	// Output:
	// University of Vermont Extension: the traditional bit
	// University of Vermont Extension: the bit of today
	// 5/16 in
}

// 1.5 to 2 in of white wood: University of Vermont Extension, Beginning Sugarmaking.
func Example_depth() {
	least, _ := tapping.DepthAdvised(tapping.Healthy)
	half := 2 * least.Inches()
	fmt.Printf("%.0f %.0f/2 in\n", (half-1)/2, half-2)
	// Output: 1 1/2 in
}

// By hand: 24.625 in of 66 in round are 24.625/66 x 360 = 134 degrees.
func Example_placeOfHole() {
	hole := must(tapping.PositionAlong(units.Inches(24.625), units.Inches(66), units.Inches(40)))
	fmt.Printf("%.0f deg\n", hole.At.Degrees())
	// Output: 134 deg
}

// -5 C is 23 F: OMAFRA report, 26 February 2015.
func Example_tooColdToDrill() {
	fmt.Println(tapping.ColdestDrilling().Text(units.ScaleFahrenheit, 0))
	// Output: 23 F
}

// By hand: February has 28 days in 2034, so that four weeks from the first run of
// February 25 end on March 25. An open hole gives 3 to 4 by a producer, 4 to 6 by
// extension advice.
func Example_holeDries() {
	first := time.Date(2034, time.February, 25, 0, 0, 0, 0, time.UTC)
	least, most := tapping.HoleLife()
	fmt.Println(first.Add(least).Format("Jan 2"), "to", first.Add(most).Format("Jan 2"))
	fmt.Println("about", first.Add(28*24*time.Hour).Format("Jan 2"))
	// Output:
	// Mar 18 to Apr 8
	// about Mar 25
}
