package tapping_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// examplePlanner plans for an invented maple of 16 in in 2025 that grows
// 0.08 in a year on the radius, with pails between 2 and 5 ft.
func examplePlanner() tapping.Planner {
	reach, _ := tapping.ReachByHand(2*units.Foot, 5*units.Foot)
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	p, _ := tapping.NewPlanner(16*units.Inch, 2025, 0.08*units.Inch, reach, h, tapping.DefaultDistances())
	return p
}

// exampleRecord is one hole, of 2024: a quarter round the trunk, 42 in high.
func exampleRecord() []tapping.OldHole {
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	return []tapping.OldHole{{Year: 2024, Position: tapping.Position{At: 90 * units.Degree, Height: 42 * units.Inch}, Hole: h}}
}

// 3 in over and 6 in up.
func ExamplePlanner_Next() {
	p := examplePlanner()
	at, err := p.Next(exampleRecord(), 2025, 1)
	if err != nil {
		fmt.Println(err)
		return
	}
	girth, _ := tapping.GirthFromDiameter(16 * units.Inch)
	old := exampleRecord()[0]
	fmt.Println(at[0].Height.Text(units.Inch, 0), "high,", (at[0].Along(girth)-old.Along(girth)).Text(units.Inch, 0), "further round")
	// Output: 48 in high, 3 in further round
}

func ExamplePlanner_Plan() {
	p := examplePlanner()
	plan, _ := p.Plan(exampleRecord(), 2025, 100, 1)
	fmt.Println(len(plan.Holes), "holes,", len(plan.Resting), "years of rest")
	// Output: 100 holes, 0 years of rest
}

func ExamplePlan() {
	// A sapling's worth of trunk without growth fills up, and has to rest.
	reach, _ := tapping.ReachByHand(3*units.Foot, 4*units.Foot)
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	p, _ := tapping.NewPlanner(8*units.Inch, 2025, 0, reach, h, tapping.DefaultDistances())
	plan, _ := p.Plan(nil, 2025, 50, 1)
	fmt.Println(len(plan.Holes) < 50, len(plan.Holes)+len(plan.Resting))
	// Output: true 50
}

func ExamplePlanner() {
	var p tapping.Planner
	_, err := p.Next(nil, 2025, 1)
	fmt.Println(errors.Is(err, tapping.ErrNoRoom))
	// Output: true
}

func ExampleNewPlanner() {
	reach, _ := tapping.ReachByHand(2*units.Foot, 5*units.Foot)
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	_, err := tapping.NewPlanner(16*units.Inch, 2025, 0, reach, h, tapping.Distances{})
	fmt.Println(err)
	// Output: tapping.NewPlanner: distance to the side 0 in is outside 0.1 to 240 in: the default distances are the published ones
}

func ExamplePlanner_Check() {
	p := examplePlanner()
	near := tapping.Position{At: 90 * units.Degree, Height: 46 * units.Inch}
	fmt.Println(p.Check(exampleRecord(), 2025, near))
	far := tapping.Position{At: 270 * units.Degree, Height: 46 * units.Inch}
	fmt.Println(p.Check(exampleRecord(), 2025, far))
	// Output:
	// tapping.Planner.Check: too near the hole of 2024 at 90 deg round and 42.0 in high: no clear place within reach: rest the trunk, take fewer taps or reach further
	// <nil>
}

func ExamplePlanner_Stains() {
	p := examplePlanner()
	stains, _ := p.Stains(exampleRecord(), 2034)
	s := stains[0]
	fmt.Println(s.InReach, s.Covered.Text(units.Inch, 1), "of new wood over it")
	// Output: true 0.8 in of new wood over it
}

func ExampleStain() {
	p := examplePlanner()
	stains, _ := p.Stains(exampleRecord(), 2050)
	fmt.Println(stains[0].InReach)
	// Output: false
}

func ExamplePlanner_Map() {
	reach, _ := tapping.ReachByHand(36*units.Inch, 60*units.Inch)
	h, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	p, _ := tapping.NewPlanner(10*units.Inch, 2025, 0.08*units.Inch, reach, h, tapping.DefaultDistances())
	next := []tapping.Position{{At: 180 * units.Degree, Height: 49 * units.Inch}}
	m, _ := p.Map(nil, 2025, next)
	fmt.Print(m)
	// Output:
	// 2025, girth 31.4 in, one column 0.98 in
	//     60 in |................................|
	//     57 in |................................|
	//     54 in |................................|
	//     51 in |................X...............|
	//     48 in |................................|
	//     45 in |................................|
	//     42 in |................................|
	//     39 in |................................|
	// X new hole  o old hole, stain in reach  : wood it takes  + grown over  . clear
}

func ExampleErrNoRoom() {
	p := examplePlanner()
	_, err := p.Next(nil, 2025, 10)
	fmt.Println(errors.Is(err, tapping.ErrNoRoom))
	// Output: true
}

func ExampleDefaultDistances() {
	d := tapping.DefaultDistances()
	fmt.Println(d.Side.Text(units.Inch, 0), "to the side,", d.Up.Text(units.Inch, 0), "up or down")
	// Output: 2 in to the side, 6 in up or down
}

func ExampleDistances() {
	d := tapping.DefaultDistances()
	d.Side, d.Up = 4*units.Inch, 12*units.Inch // the far ends of the advice
	fmt.Println(d.Side.Text(units.Inch, 0), d.Up.Text(units.Inch, 0))
	// Output: 4 in 12 in
}

func ExampleReachByHand() {
	r, _ := tapping.ReachByHand(2*units.Foot, 5*units.Foot)
	fmt.Println(r.Heights())
	// Output: 0.6096 m 1.524 m
}

func ExampleReachByDropline() {
	r, _ := tapping.ReachByDropline(tapping.Position{Height: 40 * units.Inch}, 30*units.Inch)
	low, high := r.Heights()
	fmt.Println(low.Text(units.Inch, 0), "to", high.Text(units.Inch, 0))
	// Output: 40 in to 70 in
}

func ExampleReach() {
	var r tapping.Reach
	low, high := r.Heights()
	fmt.Println(low, high)
	// Output: 0 m 0 m
}

func ExampleReach_Heights() {
	r, _ := tapping.ReachByHand(24*units.Inch, 60*units.Inch)
	low, high := r.Heights()
	fmt.Println((high - low).Text(units.Inch, 0))
	// Output: 36 in
}

func ExamplePositionAlong() {
	p, _ := tapping.PositionAlong(15*units.Inch, 60*units.Inch, 4*units.Foot)
	fmt.Println(p.At.Text(units.Degree, 0))
	// Output: 90 deg
}

func ExamplePosition() {
	p := tapping.Position{At: -90 * units.Degree, Height: 4 * units.Foot}
	fmt.Println(p.Along(60*units.Inch).Text(units.Inch, 0))
	// Output: 45 in
}

func ExamplePosition_Along() {
	p := tapping.Position{At: 90 * units.Degree}
	fmt.Println(p.Along(60*units.Inch).Text(units.Inch, 0), "and, grown,", p.Along(64*units.Inch).Text(units.Inch, 0))
	// Output: 15 in and, grown, 16 in
}

func ExampleOldHole() {
	old := exampleRecord()[0]
	fmt.Println(old.Year, old.At.Text(units.Degree, 0), old.Height.Text(units.Inch, 0), old.Hole.Depth().Text(units.Inch, 1))
	// Output: 2024 90 deg 42 in 1.5 in
}
