package tapping_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// Trees go out and come back whole. What a constructor refuses is refused here.
func ExampleTrunk_UnmarshalJSON() {
	var trunk tapping.Trunk
	err := json.Unmarshal([]byte(`{"dbh":"20 in","species":"sugar maple","vigor":"healthy"}`), &trunk)
	fmt.Println(trunk, err)
	fmt.Println(trunk.Text(units.Metric))
	err = json.Unmarshal([]byte(`{"dbh":"20 m","species":"sugar maple","vigor":"healthy"}`), &trunk)
	fmt.Println(units.Reason(err, units.US))
	out, _ := trunk.MarshalJSON()
	fmt.Println(string(out))
	// Output:
	// sugar maple of 20 in (50.8 cm), healthy <nil>
	// sugar maple of 50.8 cm, healthy
	// diameter 787.4 in is outside 0 to 196.8 in: a diameter at breast height, not a girth
	// {"dbh":"0.508 m","species":"sugar maple","vigor":"healthy"}
}

func ExampleHole_MarshalJSON() {
	hole, _ := tapping.NewHole(8*units.Millimeter, 4*units.Centimeter, 0)
	out, _ := hole.MarshalJSON()
	fmt.Println(string(out))
	fmt.Println(hole.Text(units.Metric))
	fmt.Println(hole.UnmarshalJSON(out), hole.String() != "")
	// Output:
	// {"bit":"0.008 m","depth":"0.04 m","bark":"0 m"}
	// 0.8 cm bit, 4 cm deep
	// <nil> true
}

func ExampleReach_MarshalJSON() {
	byHand, _ := tapping.ReachByHand(0.5*units.Meter, 1.5*units.Meter)
	byLine, _ := tapping.ReachByDropline(tapping.Position{Height: units.Meter}, 0.75*units.Meter)
	for _, r := range []tapping.Reach{byHand, byLine} {
		out, _ := r.MarshalJSON()
		fmt.Println(string(out))
		fmt.Println(r.Text(units.Metric), r.UnmarshalJSON(out), r.String() != "")
	}
	// Output:
	// {"low":"0.5 m","high":"1.5 m"}
	// 50 cm to 150 cm high <nil> true
	// {"fitting_angle":"0 rad","fitting_height":"1 m","dropline":"0.75 m"}
	// a dropline of 75 cm from 100 cm high at 0 deg <nil> true
}

func ExampleTappingBand_MarshalJSON() {
	hole, _ := tapping.NewHole(8*units.Millimeter, 4*units.Centimeter, 0)
	band, _ := tapping.NewTappingBand(0.25*units.Meter, 1.5*units.Meter, hole, 1)
	out, _ := band.MarshalJSON()
	fmt.Println(string(out))
	fmt.Println(band.Text(units.Metric), band.UnmarshalJSON(out), band.String() != "")
	// Output:
	// {"diameter":"0.25 m","height":"1.5 m","hole":{"bit":"0.008 m","depth":"0.04 m","bark":"0 m"},"taps":1}
	// 25 cm through, 150 cm high, 1 hole a year: 0.8 cm bit, 4 cm deep <nil> true
}

// A local rule lives in a file, and is checked when it is read.
func ExampleGuideline_UnmarshalJSON() {
	const rule = `{"id":"our town","jurisdiction":"","kind":"advice","date":"","source":"","reading":"","height":"4.5 ft","unit":"1 in","whole":false,
		"steps":[{"from":12,"to":"+Inf","after":false,"before":false,"taps":1}]}`
	var town tapping.Guideline
	fmt.Println(json.Unmarshal([]byte(rule), &town))
	fmt.Println(town.Taps(14 * units.Inch))
	out, _ := town.MarshalJSON()
	fmt.Println(town.UnmarshalJSON(out))

	var step tapping.Step
	fmt.Println(step.UnmarshalJSON([]byte(`{"from":12,"to":18,"after":false,"before":false,"taps":1}`)))
	one, _ := step.MarshalJSON()
	fmt.Println(string(one))
	// Output:
	// <nil>
	// 1 <nil>
	// <nil>
	// <nil>
	// {"from":12,"to":18,"after":false,"before":false,"taps":1}
}

// A planner is not kept: what it is made of is.
func ExamplePlanner_MarshalJSON() {
	var p tapping.Planner
	_, err := p.MarshalJSON()
	fmt.Println(p.String(), "|", units.Reason(err, units.US))
	fmt.Println(p.UnmarshalJSON([]byte("{}")) != nil)
	// Output:
	// no room | it has no JSON: encode the diameter, the year, the growth, the reach, the hole and the distances that it is made of
	// true
}

func ExampleAllSpecies() {
	fmt.Println(tapping.AllSpecies())
	fmt.Println(tapping.Vigors())
	_, err := tapping.SpeciesNamed("suger maple")
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// [maple sugar maple red maple silver maple Norway maple boxelder black walnut birch other tree]
	// [not judged healthy slow unhealthy]
	// "suger maple": not one of the names: did you mean "sugar maple"?
}

func ExampleLegality_MarshalText() {
	text, _ := tapping.OverLimit.MarshalText()
	var l tapping.Legality
	fmt.Println(string(text), l.UnmarshalText(text), l)
	// Output: over the limit <nil> over the limit
}

// Where a guideline is silent, the reason can be told in the units of the reader.
func ExampleNotCoveredError_Text() {
	g, _ := tapping.GuidelineByID("UVM-school")
	_, err := g.Taps(9 * units.Inch)
	var silent *tapping.NotCoveredError
	if errors.As(err, &silent) {
		fmt.Println(silent.Text(units.US))
		out, _ := silent.MarshalJSON()
		fmt.Println(len(out) > 0, silent.UnmarshalJSON(out), silent.Guideline)
	}
	_, err = tapping.NewGuideline(tapping.GuidelineInfo{})
	var steps *tapping.GuidelineError
	if errors.As(err, &steps) {
		fmt.Println(steps.Text(units.US), "|", steps.Error())
	}
	// Output:
	// guideline UVM-school does not cover a trunk of 9 in: its classes are 10 to 17, 18 to 24 in; measure to its printed digit, or ask another guideline
	// true <nil> UVM-school
	// a guideline without an ID: answers name it | tapping.NewGuideline: a guideline without an ID: answers name it
}
