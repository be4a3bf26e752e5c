package tapping_test

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A tape round the trunk shows 47 1/8 in: 15 in through.
func ExampleDiameterFromGirth() {
	girth, _ := units.ParseLength("47 1/8 in")
	d, _ := tapping.DiameterFromGirth(girth)
	fmt.Println(d.Text(units.Inch, 1))
	// Output: 15.0 in
}

func ExampleGirthFromDiameter() {
	g, _ := tapping.GirthFromDiameter(12 * units.Inch)
	fmt.Println(g.Text(units.Inch, 3))
	// Output: 37.699 in
}

func ExampleNewTrunk() {
	trunk, err := tapping.NewTrunk(15*units.Inch, tapping.SugarMaple, tapping.Healthy)
	if err != nil {
		fmt.Println(err)
		return
	}
	n, _ := trunk.Taps(tapping.DefaultGuideline())
	fmt.Println(n, "tap")
	// Output: 1 tap
}

func ExampleTrunk() {
	trunk, _ := tapping.NewTrunk(12*units.Inch, tapping.RedMaple, tapping.Slow)
	fmt.Println(trunk.Species(), trunk.Vigor(), trunk.DBH().Text(units.Inch, 0))
	// Output: red maple slow 12 in
}

func ExampleTrunk_DBH() {
	trunk, _ := tapping.NewTrunk(1*units.Foot, tapping.SugarMaple, tapping.Healthy)
	fmt.Println(trunk.DBH().Text(units.Inch, 0))
	// Output: 12 in
}

func ExampleTrunk_Species() {
	trunk, _ := tapping.NewTrunk(1*units.Foot, tapping.Boxelder, tapping.Healthy)
	fmt.Println(trunk.Species())
	// Output: boxelder
}

func ExampleTrunk_Vigor() {
	var trunk tapping.Trunk
	fmt.Println(trunk.Vigor())
	// Output: not judged
}

func ExampleTrunk_BasalArea() {
	trunk, _ := tapping.NewTrunk(12*units.Inch, tapping.SugarMaple, tapping.Healthy)
	fmt.Println(trunk.BasalArea().Text(units.SquareFoot, 4))
	// Output: 0.7854 ft2
}

// Slow growth counts more than girth.
func ExampleTrunk_Taps() {
	for _, v := range []tapping.Vigor{tapping.Healthy, tapping.Slow, tapping.Unhealthy} {
		trunk, _ := tapping.NewTrunk(20*units.Inch, tapping.SugarMaple, v)
		n, _ := trunk.Taps(tapping.DefaultGuideline())
		fmt.Println(v, n)
	}
	// Output:
	// healthy 2
	// slow 1
	// unhealthy 0
}

// The answer names its guideline, and shows what the others say.
func ExampleTrunk_Advise() {
	trunk, _ := tapping.NewTrunk(26*units.Inch, tapping.SugarMaple, tapping.Healthy)
	a, _ := trunk.Advise(tapping.DefaultGuideline())
	fmt.Println(a.Taps, "by", a.Guideline.ID())
	for _, o := range a.Others {
		if o.Covered {
			fmt.Println(o.Taps, "by", o.Guideline.ID())
		} else {
			fmt.Println(o.Guideline.ID(), "does not say")
		}
	}
	// Output:
	// 2 by NAMSPM-conservative
	// UVM-school does not say
	// 4 by NAMSPM-traditional
	// 2 by QC-private-plan-2023
	// 3 by QC-public-2018to2022
	// 3 by QC-public-2004
}

func ExampleAdvice() {
	trunk, _ := tapping.NewTrunk(14*units.Inch, tapping.SugarMaple, tapping.NotJudged)
	a, _ := trunk.Advise(tapping.DefaultGuideline())
	fmt.Println(a.Notes[0])
	// Output: vigor was not judged: a healthy, vigorous trunk is assumed; look at crown, bark and growth first
}

func ExampleAdvice_Range() {
	trunk, _ := tapping.NewTrunk(15*units.Inch, tapping.SugarMaple, tapping.Healthy)
	a, _ := trunk.Advise(tapping.DefaultGuideline())
	low, high := a.Range()
	fmt.Println(low, "to", high)
	// Output: 1 to 2
}

func ExampleAnswer() {
	school, _ := tapping.GuidelineByID("UVM-school")
	trunk, _ := tapping.NewTrunk(8*units.Inch, tapping.SugarMaple, tapping.Healthy)
	a, err := trunk.Advise(school)
	fmt.Println(a.Answer.Covered, errors.Is(err, tapping.ErrNotCovered))
	// Output: false true
}

// Two stems that part at the knee are two trunks.
func ExampleTree() {
	a, _ := tapping.NewTrunk(13*units.Inch, tapping.SugarMaple, tapping.Healthy)
	b, _ := tapping.NewTrunk(19*units.Inch, tapping.SugarMaple, tapping.Healthy)
	tree := tapping.Tree{Label: "by the gate", Stems: []tapping.Trunk{a, b}}
	n, _ := tree.Taps(tapping.DefaultGuideline())
	fmt.Println(n)
	// Output: 3
}

func ExampleTree_Taps() {
	n, _ := tapping.Tree{}.Taps(tapping.DefaultGuideline())
	fmt.Println(n)
	// Output: 0
}

func ExampleVigor() {
	fmt.Println(tapping.Healthy, tapping.Slow, tapping.Unhealthy)
	// Output: healthy slow unhealthy
}

func ExampleVigor_String() {
	fmt.Println(tapping.Slow.String())
	// Output: slow
}

func ExampleVigor_MarshalText() {
	text, _ := tapping.Unhealthy.MarshalText()
	fmt.Printf("%s\n", text)
	// Output: unhealthy
}

func ExampleVigor_UnmarshalText() {
	var v tapping.Vigor
	fmt.Println(v.UnmarshalText([]byte("Healthy")), v)
	// Output: <nil> healthy
}

func ExampleSpecies() {
	fmt.Println(tapping.SugarMaple, tapping.NorwayMaple)
	// Output: sugar maple Norway maple
}

func ExampleSpecies_String() {
	fmt.Println(tapping.SilverMaple.String())
	// Output: silver maple
}

func ExampleSpecies_MarshalText() {
	text, _ := tapping.RedMaple.MarshalText()
	fmt.Printf("%s\n", text)
	// Output: red maple
}

func ExampleSpecies_UnmarshalText() {
	var s tapping.Species
	fmt.Println(s.UnmarshalText([]byte("sugar maple")), s)
	// Output: <nil> sugar maple
}

func ExampleSpecies_IsMaple() {
	fmt.Println(tapping.Boxelder.IsMaple(), tapping.Birch.IsMaple())
	// Output: true false
}

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
	// Output: tapping: guideline UVM-school does not cover a trunk of 9.00 in (22.86 cm): its classes are 10 to 17, 18 to 24 in; measure to its printed digit, or ask another guideline
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

func ExampleReadStand() {
	trees, err := tapping.ReadStand(strings.NewReader(`tree,girth_in,species,vigor
# invented trees
A1,42.5,sugar maple,healthy
A2,38,sugar maple,healthy
A2,57,sugar maple,slow
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, t := range trees {
		fmt.Println(t.Label, len(t.Stems))
	}
	// Output:
	// A1 1
	// A2 2
}

func ExampleRowError() {
	_, err := tapping.ReadStand(strings.NewReader("tree,dbh_in\nA1,14\nA2,14 in\n"))
	fmt.Println(err)
	var e *tapping.RowError
	fmt.Println(errors.As(err, &e), errors.Is(err, tapping.ErrSyntax))
	// Output:
	// line 3, column dbh_in: cannot be read: want a plain number, the unit stands in the header; have "14 in"
	// true true
}
