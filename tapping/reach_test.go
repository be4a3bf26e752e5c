package tapping_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A dropline of 30 in reaches 24 in up where it goes 18 in to the side, and
// nothing 31 in to the side.
func TestDroplineReaches(t *testing.T) {
	const girth = 75 * units.Inch
	d := must[units.Length](t)(tapping.DiameterFromGirth(girth))
	fitting := tapping.Position{At: 350 * units.Degree, Height: 40 * units.Inch}
	p := planner(t, d.Inches(), 0, must[tapping.Reach](t)(tapping.ReachByDropline(fitting, 30*units.Inch)))
	for _, c := range []struct {
		side, high float64
		ok         bool
	}{
		{0, 69.9, true}, {0, 70.1, false}, {0, 40.1, true}, {0, 39.9, false},
		{18, 63.9, true}, {18, 64.1, false}, {-18, 63.9, true}, {-18, 64.1, false},
		{29.9, 40.1, true}, {31, 40.1, false}, {31, 40, false},
	} {
		at := tapping.Position{At: fitting.At - 360*units.Degree + 360*units.Degree*units.Angle(c.side)/75, Height: units.Inches(c.high)}
		if err := p.Check(nil, 2025, at); c.ok != (err == nil) || !c.ok && !errors.Is(err, tapping.ErrNoRoom) {
			t.Errorf("%v in to the side and %v in high: %v", c.side, c.high, err)
		}
	}
}

// A trunk of a meter is a trunk, and the zero Planner says that it is none.
func TestPlannerOfAMeter(t *testing.T) {
	p := must[tapping.Planner](t)(tapping.NewPlanner(1*units.Meter, 2025, 0, byHand(t, 24, 60), hole(t, 0.3125, 1.5), tapping.DefaultDistances()))
	if at, err := p.Next(nil, 2025, 1); err != nil || len(at) != 1 {
		t.Errorf("a meter thick: %v, %v", at, err)
	}
	if _, err := (tapping.Planner{}).Next(nil, 2025, 1); err == nil || !strings.Contains(err.Error(), "make the planner first") {
		t.Errorf("zero planner: %v", err)
	}
}

// A hole an inch deep is grown over in the year in which an inch grows.
func TestGrownOverInAYear(t *testing.T) {
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2025, 1*units.Inch, byHand(t, 24, 60), hole(t, 0.3125, 1), tapping.DefaultDistances()))
	record := []tapping.OldHole{old(t, 2024, 0, 40), old(t, 2025, 0, 40)}
	stains := must[[]tapping.Stain](t)(p.Stains(record, 2025))
	if stains[0].InReach || !stains[1].InReach {
		t.Errorf("in reach of an inch after a year of an inch: %v and %v in its own year", stains[0].InReach, stains[1].InReach)
	}
}

// A message numbers holes from one.
func TestNoRoomNumbersHoles(t *testing.T) {
	p := planner(t, 8, 0.05, byHand(t, 24, 60))
	at, err := p.Next(nil, 2025, 10)
	want := []string{"hole 1 of 10", "hole 2 of 10", "hole 3 of 10", "hole 4 of 10", "hole 5 of 10"}
	if len(at) >= len(want) || err == nil || !strings.Contains(err.Error(), want[len(at)]) {
		t.Errorf("%d holes found room: %v", len(at), err)
	}
}
