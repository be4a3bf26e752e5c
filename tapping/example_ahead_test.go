package tapping_test

import (
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// exampleAhead looks 20 seasons ahead of an invented trunk of 17 in that grows 0.06 in
// on the radius: 0.12 in of diameter a year, so that it is over 18 in after 9 years.
func exampleAhead() tapping.TrunkAhead {
	trunk, _ := tapping.NewTrunk(17*units.Inch, tapping.SugarMaple, tapping.Healthy)
	hole, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	a, _ := trunk.Ahead(tapping.AheadPlan{
		Guideline: tapping.DefaultGuideline(), Growth: 0.06 * units.Inch, Years: 20, Hole: hole, Band: 4 * units.Foot,
	})
	return a
}

func ExampleTrunk_Ahead() {
	a := exampleAhead()
	fmt.Println(a.Taps[0], "tap, one more in", a.Next, "years, growth enough:", a.Enough)
	// Output: 1 tap, one more in 9 years, growth enough: true
}

func ExampleTrunkAhead() {
	a := exampleAhead()
	fmt.Println(a.DBH.Text(units.Inch, 1), a.Clear > tapping.TargetConductive)
	// Output: 19.3 in true
}

func ExampleAheadPlan() {
	trunk, _ := tapping.NewTrunk(17*units.Inch, tapping.SugarMaple, tapping.Healthy)
	_, err := trunk.Ahead(tapping.AheadPlan{Growth: 3 * units.Inch})
	fmt.Println(err)
	// Output: tapping.Trunk.Ahead: growth 3 in is outside 0 to 1 in: radial growth a year: half the growth of the diameter, often 0.02 to 0.15 in
}

// The source prints 1.8 in2 a year at 10 in.
func ExampleUsualGrowth() {
	g, _ := tapping.UsualGrowth(10 * units.Inch)
	area, _ := tapping.BasalAreaGrowth(10*units.Inch, g)
	fmt.Println(area.Text(units.SquareInch, 1))
	// Output: 1.8 in2
}

// The source prints 2.6 in2 a year at 18 in.
func ExampleLeastGrowth() {
	g, _ := tapping.LeastGrowth(18 * units.Inch)
	area, _ := tapping.BasalAreaGrowth(18*units.Inch, g)
	fmt.Println(area.Text(units.SquareInch, 1))
	// Output: 2.6 in2
}

func ExampleGrowthFromGirths() {
	g, _ := tapping.GrowthFromGirths(38*units.Inch, 40*units.Inch, 5, units.Inch/4)
	fmt.Println(g.PerYear.Text(units.Inch, 3), "give or take", g.DoubtShare().Text(0))
	// Output: 0.064 in give or take 18 %
}

func ExampleGrowthRead() {
	g := tapping.GrowthRead{PerYear: units.Inch / 20, Doubt: units.Inch / 100}
	fmt.Println(g.Doubt.Text(units.Inch, 2))
	// Output: 0.01 in
}

func ExampleGrowthRead_DoubtShare() {
	fmt.Println(tapping.GrowthRead{PerYear: units.Inch / 20, Doubt: units.Inch / 100}.DoubtShare())
	// Output: 20 %
}
