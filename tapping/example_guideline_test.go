package tapping_test

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// One tap at 12 in, a second above 18 in.
func ExampleGuideline() {
	g := tapping.DefaultGuideline()
	for _, inches := range []float64{11.9, 12, 18, 18.1} {
		n, _ := g.Taps(units.Inches(inches))
		fmt.Println(inches, n)
	}
	// Output:
	// 11.9 0
	// 12 1
	// 18 1
	// 18.1 2
}

func ExampleGuideline_ID() {
	fmt.Println(tapping.DefaultGuideline().ID())
	// Output: NAMSPM-conservative
}

func ExampleGuideline_String() {
	fmt.Println(tapping.DefaultGuideline(), tapping.Guideline{})
	// Output: NAMSPM-conservative (none)
}

func ExampleGuideline_Info() {
	g, _ := tapping.GuidelineByID("QC-private-plan-2023")
	i := g.Info()
	fmt.Println(i.Jurisdiction)
	fmt.Println(i.Kind, i.Date)
	fmt.Println(i.Source)
	// Output:
	// Quebec, private land
	// planning norm version of 20 September 2023
	// Quebec, regulation M-35.1 r. 8.1, s. 6
}

func ExampleGuideline_Taps() {
	school, _ := tapping.GuidelineByID("UVM-school")
	_, err := school.Taps(9 * units.Inch)
	fmt.Println(err)
	// Output: tapping: guideline UVM-school does not cover a trunk of 9 in (22.86 cm): its classes are 10 to 17, 18 to 24 in; measure to its printed digit, or ask another guideline
}

// A stricter rule of one's own.
func ExampleNewGuideline() {
	mine, err := tapping.NewGuideline(tapping.GuidelineInfo{
		ID: "our woods", Kind: "house rule", Unit: units.Inch,
		Steps: []tapping.Step{{From: 0, To: 14, Before: true, Taps: 0}, {From: 14, To: math.Inf(1), Taps: 1}},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	n, _ := mine.Taps(30 * units.Inch)
	fmt.Println(n)
	// Output: 1
}

func ExampleGuidelineInfo() {
	i := tapping.DefaultGuideline().Info()
	fmt.Println(i.Height.Text(units.Foot, 1), i.Kind)
	// Output: 4.5 ft advice, conservative
}

func ExampleStep() {
	last := tapping.Step{From: 18, After: true, To: math.Inf(1), Taps: 2} // more than 18
	fmt.Println(last.Taps)
	// Output: 2
}

func ExampleGuidelines() {
	for _, g := range tapping.Guidelines() {
		fmt.Println(g.ID())
	}
	// Output:
	// NAMSPM-conservative
	// UVM-school
	// NAMSPM-traditional
	// QC-private-plan-2023
	// QC-public-2018to2022
	// QC-public-2004
}

func ExampleGuidelineByID() {
	g, _ := tapping.GuidelineByID("QC-public-2004")
	n, _ := g.Taps(80 * units.Centimeter)
	fmt.Println(n)
	// Output: 4
}

func ExampleDefaultGuideline() {
	n, _ := tapping.DefaultGuideline().Taps(40 * units.Inch)
	fmt.Println(n, "at most")
	// Output: 2 at most
}

func ExampleNotCoveredError() {
	g, _ := tapping.GuidelineByID("UVM-school")
	_, err := g.Taps(25 * units.Inch)
	var e *tapping.NotCoveredError
	if errors.As(err, &e) {
		fmt.Println(e.Guideline, e.DBH.Text(units.Inch, 0))
	}
	// Output: UVM-school 25 in
}
