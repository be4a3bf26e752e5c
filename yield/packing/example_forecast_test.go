package packing_test

import (
	"fmt"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// 60 taps and 15 US gal of syrup in pints, 5 percent spare, 10 US gal to a cord:
// 1.5 cords, 120 and 6 pints, 5 filters of 3 gal, and 120 gal of tank for a day
// at 2 gal of each tap.
func ExampleLayIn() {
	s, err := packing.LayIn(60, units.USGallons(15), packing.Container{Label: units.USPint}, packing.Habits{
		SyrupPerCord: units.USGallons(10),
		Spare:        5,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Wood.Text(units.Cord, 1), s.Containers, s.Filters, s.Tank.Text(units.USGallon, 0), s.PeakRemembered)
	// Output: 1.5 cord 126 5 120 US gal true
}

// 150 US gal on the best of three invented days, of 60 taps.
func ExamplePeakPerTap() {
	v, err := packing.PeakPerTap([]units.Volume{units.USGallons(40), units.USGallons(150), units.USGallons(90)}, 60)
	fmt.Println(v.Text(units.USGallon, 1), err)
	// Output: 2.5 US gal <nil>
}
