package tapping_test

import (
	"errors"
	"fmt"
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
	a := trunk.Advise(tapping.DefaultGuideline())
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
	a := trunk.Advise(tapping.DefaultGuideline())
	fmt.Println(a.Notes[0])
	// Output: vigor was not judged: a healthy, vigorous trunk is assumed; look at crown, bark and growth first
}

func ExampleAdvice_Range() {
	trunk, _ := tapping.NewTrunk(15*units.Inch, tapping.SugarMaple, tapping.Healthy)
	a := trunk.Advise(tapping.DefaultGuideline())
	low, high := a.Range()
	fmt.Println(low, "to", high)
	// Output: 1 to 2
}

func ExampleAnswer() {
	school, _ := tapping.GuidelineByID("UVM-school")
	trunk, _ := tapping.NewTrunk(8*units.Inch, tapping.SugarMaple, tapping.Healthy)
	_, err := trunk.Taps(school)
	fmt.Println(trunk.Advise(school).Answer.Covered, errors.Is(err, tapping.ErrNotCovered))
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

func ExampleSpeciesNamed() {
	for _, name := range []string{"hard maple", "Acer rubrum", "white ash"} {
		s, err := tapping.SpeciesNamed(name)
		fmt.Println(s, err)
	}
	// Output:
	// sugar maple <nil>
	// red maple <nil>
	// other tree <nil>
}
