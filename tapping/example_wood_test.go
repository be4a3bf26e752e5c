package tapping_test

import (
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func exampleBand(diameter float64, bit, depth units.Length, taps int) tapping.TappingBand {
	h, _ := tapping.NewHole(bit, depth, 0)
	b, _ := tapping.NewTappingBand(units.Inches(diameter), 30*units.Inch, h, taps)
	return b
}

// The growth that keeps 90 % of the band clear. 1.4 in2 at 10 in is what the
// model was calibrated on; 2.6 at 18 in, with two taps, then follows.
func ExampleTappingBand_GrowthNeeded() {
	for _, c := range []struct {
		diameter float64
		taps     int
	}{{10, 1}, {18, 2}} {
		b := exampleBand(c.diameter, 5*units.Inch/16, 1.5*units.Inch, c.taps)
		g, _ := b.GrowthNeeded(tapping.TargetConductive)
		a, _ := tapping.BasalAreaGrowth(units.Inches(c.diameter), g)
		fmt.Println(a.Text(units.SquareInch, 1), "a year")
	}
	// Output:
	// 1.4 in2 a year
	// 2.6 in2 a year
}

// What bit and depth do to the wood.
func ExampleTappingBand() {
	for _, h := range []struct{ bit, depth units.Length }{
		{5 * units.Inch / 16, 1.5 * units.Inch}, {7 * units.Inch / 16, 2 * units.Inch},
	} {
		b := exampleBand(12, h.bit, h.depth, 1)
		clear, _ := b.Steady(0.06 * units.Inch)
		fmt.Println(clear.Text(0))
	}
	// Output:
	// 94 %
	// 84 %
}

func ExampleNewTappingBand() {
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	_, err := tapping.NewTappingBand(2*units.Inch, 30*units.Inch, h, 1)
	fmt.Println(err)
	// Output: tapping.NewTappingBand: diameter 2 in is outside 3 to 196.85039 in: the hole must fit into half the trunk
}

func ExampleTappingBand_Volume() {
	b := exampleBand(10, 5*units.Inch/16, 1.5*units.Inch, 1)
	fmt.Println(b.Volume().Text(units.CubicInch, 1))
	// Output: 1201.7 in3
}

func ExampleTappingBand_Conductive() {
	b := exampleBand(10, 5*units.Inch/16, 1.5*units.Inch, 1)
	for _, years := range []int{0, 10, 40} {
		c, _ := b.Conductive(0.0444*units.Inch, years, 0)
		fmt.Println(years, "years:", c.Text(1))
	}
	// Output:
	// 0 years: 100.0 %
	// 10 years: 95.0 %
	// 40 years: 90.0 %
}

func ExampleTappingBand_Steady() {
	b := exampleBand(10, 5*units.Inch/16, 1.5*units.Inch, 1)
	c, _ := b.Steady(0.0444 * units.Inch)
	fmt.Println(c.Text(0))
	// Output: 90 %
}

func ExampleTappingBand_YearsToRecover() {
	b := exampleBand(12, 7*units.Inch/16, 2*units.Inch, 1)
	n, _ := b.YearsToRecover(0.1*units.Inch, 40, 100)
	fmt.Println(n, "years until new wood lies over every stain")
	// Output: 20 years until new wood lies over every stain
}

func ExampleBasalAreaGrowth() {
	a, _ := tapping.BasalAreaGrowth(10*units.Inch, 0.04436*units.Inch)
	fmt.Println(a.Text(units.SquareInch, 3))
	// Output: 1.400 in2
}

func ExampleRadialGrowth() {
	g, _ := tapping.RadialGrowth(10*units.Inch, 1.4*units.SquareInch)
	fmt.Println(g.Text(units.Inch, 4))
	// Output: 0.0444 in
}

func ExampleStainRatio() {
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	fmt.Println((tapping.StainRatio*h.Volume()).Text(units.CubicInch, 1), "of wood behind a hole")
	// Output: 6.9 in3 of wood behind a hole
}

func ExampleTargetConductive() {
	fmt.Println(tapping.TargetConductive)
	// Output: 90 %
}
