package yield_test

import (
	"fmt"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// 48 x 24 x 12/231 = 59.84 US gal.
func ExampleRectangularTank() {
	tank, err := yield.RectangularTank(48*units.Inch, 24*units.Inch, 12*units.Inch)
	fmt.Println(tank.Capacity().Text(units.USGallon, 2), err)
	// Output: 59.84 US gal <nil>
}

// 0.0034 D^2 US gal for an inch: 13.6 for 20 inches of 14 in across, with the
// 0.0034 not rounded 13.33.
func ExampleUprightCylinder() {
	tank, err := yield.UprightCylinder(14*units.Inch, 20*units.Inch)
	fmt.Println(tank.Capacity().Text(units.USGallon, 2), err)
	// Output: 13.33 US gal <nil>
}

func ExampleLyingCylinder() {
	tank, err := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, depth := range []units.Length{9 * units.Inch, 18 * units.Inch, 36 * units.Inch} {
		v, err := tank.Volume(depth)
		fmt.Println(v.Text(units.USGallon, 3), err)
	}
	// Output:
	// 51.687 US gal <nil>
	// 132.192 US gal <nil>
	// 264.383 US gal <nil>
}

// pi/4 x 48 x 30 x 60/231 = 293.76 US gal.
func ExampleLyingEllipse() {
	tank, err := yield.LyingEllipse(48*units.Inch, 30*units.Inch, 60*units.Inch)
	fmt.Println(tank.Capacity().Text(units.USGallon, 2), err)
	// Output: 293.76 US gal <nil>
}

// Half of the ellipse above.
func ExampleHalfEllipseTrough() {
	tank, err := yield.HalfEllipseTrough(48*units.Inch, 15*units.Inch, 60*units.Inch)
	fmt.Println(tank.Capacity().Text(units.USGallon, 2), err)
	// Output: 146.88 US gal <nil>
}

func ExamplePail() {
	pail, err := yield.Pail(11*units.Inch, 10*units.Inch, 10.5*units.Inch)
	fmt.Println(pail.Capacity().Text(units.USGallon, 3), err)
	// Output: 3.939 US gal <nil>
}

func ExampleTank_Height() {
	trough, _ := yield.HalfEllipseTrough(48*units.Inch, 15*units.Inch, 60*units.Inch)
	fmt.Println(trough.Height().Text(units.Inch, 0))
	// Output: 15 in
}

func ExampleTank_Capacity() {
	pail, _ := yield.Pail(11*units.Inch, 10*units.Inch, 10.5*units.Inch)
	fmt.Printf("%.1f L\n", pail.Capacity().Liters())
	// Output: 14.9 L
}

func ExampleTank_Volume() {
	tank, _ := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
	v, err := tank.Volume(9 * units.Inch)
	fmt.Println(v.Text(units.USGallon, 3), err)

	_, err = tank.Volume(units.Feet(4))
	fmt.Println(err)
	// Output:
	// 51.687 US gal <nil>
	// yield.Tank.Volume: depth 1.2192 m is outside 0 to 0.9144 m: the tank is no deeper: check the unit and where the stick stood
}

func ExampleTank_Depth() {
	tank, _ := yield.LyingCylinder(36*units.Inch, 60*units.Inch)
	h, err := tank.Depth(units.USGallons(132.192))
	fmt.Println(h.Text(units.Inch, 2), err)
	// Output: 18.00 in <nil>
}

// A stock tank 40 by 20 in: 3.463 US gal for each inch.
func ExampleTank_Dipstick() {
	tank, _ := yield.RectangularTank(40*units.Inch, 20*units.Inch, 14*units.Inch)
	var room [16]yield.DipstickMark
	stick, err := tank.Dipstick(room[:0], 4*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range stick {
		fmt.Println(m.Depth.Text(units.Inch, 0), m.Volume.Text(units.USGallon, 1))
	}
	// Output:
	// 4 in 13.9 US gal
	// 8 in 27.7 US gal
	// 12 in 41.6 US gal
	// 14 in 48.5 US gal
}

func ExampleTank_DipstickByVolume() {
	tank, _ := yield.RectangularTank(40*units.Inch, 20*units.Inch, 14*units.Inch)
	stick, err := tank.DipstickByVolume(nil, 20*units.USGallon)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range stick {
		fmt.Println(m.Volume.Text(units.USGallon, 1), m.Depth.Text(units.Inch, 3))
	}
	// Output:
	// 20.0 US gal 5.775 in
	// 40.0 US gal 11.550 in
	// 48.5 US gal 14.000 in
}
