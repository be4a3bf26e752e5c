package tapping_test

import (
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// invented is a stand of 11, 12, 18 and 19 in trunks.
func invented() []tapping.Tree {
	var trees []tapping.Tree
	for _, inches := range []float64{11, 12, 18, 19} {
		t, _ := tapping.NewTrunk(units.Inches(inches), tapping.SugarMaple, tapping.Healthy)
		trees = append(trees, tapping.Tree{Stems: []tapping.Trunk{t}})
	}
	return trees
}

func ExampleCountStand() {
	c, _ := tapping.CountStand(invented(), tapping.DefaultGuideline(), 2*units.Inch)
	fmt.Println(c.Trees, "trees,", c.Taps, "taps,", c.BasalArea.Text(units.SquareFoot, 2))
	for _, o := range c.Others[:2] {
		fmt.Println(o.Taps, "by", o.Guideline.ID())
	}
	// Output:
	// 4 trees, 4 taps, 5.18 ft2
	// 6 by UVM-school
	// 6 by NAMSPM-traditional
}

func ExampleStandCount() {
	c, _ := tapping.CountStand(invented(), tapping.DefaultGuideline(), 2*units.Inch)
	for taps, trunks := range c.ByTaps {
		fmt.Println(trunks, "trunks take", taps)
	}
	// Output:
	// 1 trunks take 0
	// 2 trunks take 1
	// 1 trunks take 2
}

func ExampleStandClass() {
	c, _ := tapping.CountStand(invented(), tapping.DefaultGuideline(), 6*units.Inch)
	for _, class := range c.Classes {
		fmt.Printf("%2.0f to %2.0f in: %d\n", class.From.Inches(), class.To.Inches(), class.Trunks)
	}
	// Output:
	//  0 to  6 in: 0
	//  6 to 12 in: 1
	// 12 to 18 in: 1
	// 18 to 24 in: 2
}

func ExampleGuidelineTotal() {
	school, _ := tapping.GuidelineByID("UVM-school")
	young, _ := tapping.NewTrunk(6*units.Inch, tapping.SugarMaple, tapping.Healthy)
	trees := append(invented(), tapping.Tree{Stems: []tapping.Trunk{young}})
	c, _ := tapping.CountStand(trees, school, 2*units.Inch)
	fmt.Println(c.Tapped, "trunks tapped,", c.NotCovered, "not covered")
	// Output: 4 trunks tapped, 1 not covered
}

func ExampleStandCount_TapsPer() {
	c := tapping.StandCount{GuidelineTotal: tapping.GuidelineTotal{Taps: 360}}
	acre, _ := c.TapsPer(units.Acre, 4*units.Acre)
	hectare, _ := c.TapsPer(units.Hectare, 4*units.Acre)
	fmt.Printf("%.0f an acre, %.1f a hectare\n", acre, hectare)
	// Output: 90 an acre, 222.4 a hectare
}

func ExampleStandCount_BasalAreaPer() {
	c := tapping.StandCount{BasalArea: 400 * units.SquareFoot}
	a, _ := c.BasalAreaPer(units.Acre, 4*units.Acre)
	fmt.Println(a.Text(units.SquareFoot, 0), "an acre")
	// Output: 100 ft2 an acre
}
