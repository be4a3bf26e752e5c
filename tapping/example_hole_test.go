package tapping_test

import (
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// The hole of today and the traditional one.
func ExampleHole_Volume() {
	today, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	old, _ := tapping.NewHole(7*units.Inch/16, 2*units.Inch, 0)
	fmt.Printf("%.4f and %.4f in3\n", today.Volume().CubicInches(), old.Volume().CubicInches())
	// Output: 0.1150 and 0.3007 in3
}

func ExampleNewHole() {
	_, err := tapping.NewHole(5*units.Inch/16, 15*units.Inch, 0)
	fmt.Println(err)
	// Output: tapping.NewHole: depth 15 in is outside 0.19685039 to 4 in: into the wood, without the bark
}

func ExampleHole() {
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0.4*units.Inch)
	fmt.Println("set the stop to", h.DepthWithBark().Text(units.Inch, 1))
	// Output: set the stop to 1.9 in
}

func ExampleHole_Bit() {
	h, _ := tapping.NewHole(units.Inch/4, 1.5*units.Inch, 0)
	fmt.Println(h.Bit().Text(units.Millimeter, 2))
	// Output: 6.35 mm
}

func ExampleHole_Depth() {
	h, _ := tapping.NewHole(units.Inch/4, 1.5*units.Inch, 0)
	fmt.Println(h.Depth().Text(units.Centimeter, 2))
	// Output: 3.81 cm
}

func ExampleHole_Bark() {
	h, _ := tapping.NewHole(units.Inch/4, 1.5*units.Inch, 10*units.Millimeter)
	fmt.Println(h.Bark().Text(units.Centimeter, 0))
	// Output: 1 cm
}

func ExampleHole_DepthWithBark() {
	h, _ := tapping.NewHole(units.Inch/4, 5*units.Centimeter, 1*units.Centimeter)
	fmt.Println(h.DepthWithBark().Text(units.Centimeter, 0))
	// Output: 6 cm
}

func ExampleDepthAdvised() {
	low, high := tapping.DepthAdvised(tapping.Healthy)
	fmt.Println(low.Text(units.Inch, 1), "to", high.Text(units.Inch, 1))
	// Output: 1.5 in to 2.0 in
}

func ExampleSpouts() {
	for _, s := range tapping.Spouts() {
		fmt.Println(s.Name, s.Bit.Text(units.Millimeter, 2))
	}
	// Output:
	// 7/16 in 11.11 mm
	// 5/16 in 7.94 mm
	// 19/64 in 7.54 mm
	// 1/4 in 6.35 mm
	// 3/16 in 4.76 mm
}

func ExampleSpout() {
	s := tapping.Spouts()[1]
	fmt.Println(s.Name, s.Obtained)
	// Output: 5/16 in read
}

func ExampleColdestDrilling() {
	fmt.Println(tapping.ColdestDrilling().Text(units.ScaleFahrenheit, 0))
	// Output: 23 F
}

func ExampleTooColdToDrill() {
	fmt.Println(tapping.TooColdToDrill(units.Celsius(-8)), tapping.TooColdToDrill(units.Celsius(-5)))
	// Output: true false
}

func ExampleHoleLife() {
	low, high := tapping.HoleLife()
	fmt.Println(low.Hours()/24, "to", high.Hours()/24, "days")
	// Output: 21 to 42 days
}

// 7/16 in is 11.11 mm, and 11 mm in whole millimeters.
func ExampleHoleLimit_Compare() {
	quebec := tapping.HoleLimits()[0]
	for _, s := range tapping.Spouts()[:2] {
		h, _ := tapping.NewHole(s.Bit, 2*units.Inch, 1.2*units.Centimeter)
		bit, depth := quebec.Compare(h)
		fmt.Println(s.Name, bit, "-", depth)
	}
	// Output:
	// 7/16 in nominal size at the limit - over the limit
	// 5/16 in within the limit - over the limit
}

func ExampleHoleLimits() {
	for _, l := range tapping.HoleLimits() {
		fmt.Println(l.Jurisdiction, l.Bit.Text(units.Millimeter, 0), l.DepthWithBark.Text(units.Centimeter, 0))
	}
	// Output: Quebec, public land 11 mm 6 cm
}

func ExampleHoleLimit() {
	local := tapping.HoleLimit{Jurisdiction: "a rule of your own", Bit: 5 * units.Inch / 16}
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	fmt.Println(local.Compare(h))
	// Output: within the limit not compared
}

func ExampleLegality() {
	fmt.Println(tapping.OverLimit)
	// Output: over the limit
}

func ExampleLegality_String() {
	fmt.Println(tapping.WithinLimit.String())
	// Output: within the limit
}
