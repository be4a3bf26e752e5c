package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func byHand(t testing.TB, low, high float64) tapping.Reach {
	return must[tapping.Reach](t)(tapping.ReachByHand(units.Inches(low), units.Inches(high)))
}

func planner(t testing.TB, diameter, growth float64, reach tapping.Reach) tapping.Planner {
	return must[tapping.Planner](t)(tapping.NewPlanner(units.Inches(diameter), 2025, units.Inches(growth), reach, hole(t, 0.3125, 1.5), tapping.DefaultDistances()))
}

// apart measures the distances between two places without the planner: side
// round the trunk and up.
func apart(a, b tapping.Position, girth units.Length) (side, up units.Length) {
	d := math.Mod(math.Abs(a.At.In(units.Turn)-b.At.In(units.Turn)), 1)
	return units.Length(min(d, 1-d)) * girth, units.Length(math.Abs(float64(a.Height - b.Height)))
}

// keeps reports whether a new hole keeps the published distances, written out
// without the planner.
func keeps(at tapping.Position, year int, record []tapping.OldHole, girth, growth units.Length) bool {
	const slack = 1e-8 * units.Meter
	for _, old := range record {
		side, up := apart(at, old.Position, girth)
		age := year - old.Year
		if age > 0 && units.Length(age)*growth >= 1.5*units.Inch {
			continue
		}
		switch {
		case age <= 0 && side < 6*units.Inch-slack,
			age == 1 && side < 2*units.Inch-slack,
			age == 1 && side < 6*units.Inch-slack && up < 6*units.Inch-slack,
			age > 1 && side < 2*units.Inch-slack && up < 12*units.Inch-slack:
			return false
		}
	}
	return true
}

func TestPlanKeepsDistances(t *testing.T) {
	drop := must[tapping.Reach](t)(tapping.ReachByDropline(tapping.Position{At: 350 * units.Degree, Height: 40 * units.Inch}, 30*units.Inch))
	for _, c := range []struct {
		diameter, growth float64
		reach            tapping.Reach
		taps             int
	}{
		{12, 0.06, byHand(t, 24, 60), 1}, {20, 0.1, byHand(t, 24, 60), 2}, {12, 0.05, drop, 1}, {30, 0.08, drop, 2},
		{10, 0.02, byHand(t, 30, 42), 1}, {18, 0, byHand(t, 24, 60), 2}, {8, 0.1, byHand(t, 24, 30), 3},
	} {
		p := planner(t, c.diameter, c.growth, c.reach)
		plan := must[tapping.Plan](t)(p.Plan(nil, 2025, 100, c.taps))
		low, high := c.reach.Heights()
		byYear := map[int]int{}
		for i, h := range plan.Holes {
			byYear[h.Year]++
			girth := math.Pi * units.Inches(c.diameter+2*c.growth*float64(h.Year-2025))
			if !keeps(h.Position, h.Year, plan.Holes[:i], girth, units.Inches(c.growth)) {
				t.Fatalf("%+v: hole %d of %d at %+v is too near", c, i, h.Year, h.Position)
			}
			if err := p.Check(plan.Holes[:i], h.Year, h.Position); err != nil {
				t.Fatalf("%+v: hole %d: %v", c, i, err)
			}
			if h.Height < low || h.Height > high {
				t.Fatalf("%+v: hole %d lies at %v", c, i, h.Height)
			}
		}
		resting := map[int]bool{}
		for _, y := range plan.Resting {
			resting[y] = true
		}
		for y := 2025; y < 2125; y++ {
			if (byYear[y] < c.taps) != resting[y] {
				t.Fatalf("%+v: %d holes in %d, resting %v", c, byYear[y], y, resting[y])
			}
		}
	}
}

// A vigorous trunk never has to rest, and follows the pattern of Ohio State
// University Extension in its first years: 3 in over, 6 in up or down by turns.
func TestPlanFollowsThePattern(t *testing.T) {
	p := planner(t, 20, 0.1, byHand(t, 24, 60))
	plan := must[tapping.Plan](t)(p.Plan(nil, 2025, 100, 1))
	if len(plan.Resting) != 0 || len(plan.Holes) != 100 {
		t.Fatalf("%d holes, resting %v", len(plan.Holes), plan.Resting)
	}
	for i := 1; i < 15; i++ {
		girth := math.Pi * units.Inches(20+0.2*float64(i))
		side, up := apart(plan.Holes[i].Position, plan.Holes[i-1].Position, girth)
		if !near(side.Inches(), 3) || !near(up.Inches(), 6) {
			t.Errorf("year %d: %v over and %v up or down", i, side.Inches(), up.Inches())
		}
		if i > 1 && (plan.Holes[i].Height > plan.Holes[i-1].Height) == (plan.Holes[i-1].Height > plan.Holes[i-2].Height) {
			t.Errorf("year %d goes the same way up or down as the year before", i)
		}
	}
}

// Where the planner finds no room, a fine grid finds none either, and the other
// way round.
func TestNoRoomIsTrue(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	full := 0
	for range 150 {
		reach := byHand(t, 24, 28+12*r.Float64())
		if r.IntN(2) == 0 {
			reach = must[tapping.Reach](t)(tapping.ReachByDropline(tapping.Position{At: units.Angle(r.Float64()) * units.Turn, Height: 30 * units.Inch}, units.Inches(4+10*r.Float64())))
		}
		p := planner(t, 6+6*r.Float64(), 0.03, reach)
		low, high := reach.Heights()
		var record []tapping.OldHole
		for range r.IntN(25) {
			record = append(record, tapping.OldHole{Year: 2025 - r.IntN(40), Hole: hole(t, 0.3125, 1.5), Position: tapping.Position{
				At: units.Angle(r.Float64()) * units.Turn, Height: low + units.Length(r.Float64())*(high-low),
			}})
		}
		at, err := p.Next(record, 2025, 1)
		if err == nil {
			if err := p.Check(record, 2025, at[0]); err != nil {
				t.Fatalf("the planner's own place: %v", err)
			}
			continue
		}
		if !errors.Is(err, tapping.ErrNoRoom) {
			t.Fatal(err)
		}
		full++
		for i := range 150 {
			for k := range 25 {
				at := tapping.Position{At: units.Angle(float64(i)/150) * units.Turn, Height: low + units.Length(k)/24*(high-low)}
				if p.Check(record, 2025, at) == nil {
					t.Fatalf("no room was found, but %+v is free", at)
				}
			}
		}
	}
	if full < 10 {
		t.Errorf("only %d of 150 trunks were full: the test shows little", full)
	}
}

func TestMapShowsTheHoles(t *testing.T) {
	p := planner(t, 12, 0.1, byHand(t, 24, 60))
	record := []tapping.OldHole{
		{Year: 2000, Position: tapping.Position{At: 0, Height: 48 * units.Inch}, Hole: hole(t, 0.4375, 2)},
		{Year: 2024, Position: tapping.Position{At: 180 * units.Degree, Height: 40 * units.Inch}, Hole: hole(t, 0.3125, 1.5)},
	}
	next := must[[]tapping.Position](t)(p.Next(record, 2025, 1))
	m, err := p.Map(record, 2025, next)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSuffix(m, "\n"), "\n")
	body := strings.Join(lines[1:len(lines)-1], "\n")
	for mark, want := range map[string]int{"X": 1, "o": 1, "+": 1} {
		if got := strings.Count(body, mark); got != want {
			t.Errorf("%d %q in the map, want %d:\n%s", got, mark, want, m)
		}
	}
	if !strings.Contains(body, ":") || !strings.Contains(body, ".") || len(lines) != 14 {
		t.Errorf("map of %d lines:\n%s", len(lines), m)
	}
	stains, err := p.Stains(record, 2025)
	if err != nil || len(stains) != 2 || stains[0].InReach || !stains[1].InReach {
		t.Errorf("stains %+v, %v", stains, err)
	}
	if !near(stains[0].Covered.Inches(), 2.5) {
		t.Errorf("25 years of 0.1 in cover %v", stains[0].Covered)
	}
}

// Check takes the reach with its ends and nothing beyond.
func TestCheckReach(t *testing.T) {
	p := planner(t, 20, 0.02, byHand(t, 24, 60))
	for inches, want := range map[float64]bool{23.99: false, 24: true, 42: true, 60: true, 60.01: false} {
		if err := p.Check(nil, 2025, tapping.Position{Height: units.Inches(inches)}); (err == nil) != want || err != nil && !errors.Is(err, tapping.ErrNoRoom) {
			t.Errorf("%v in: %v", inches, err)
		}
	}
}

// The planner keeps its word on any record, and never fails but as documented.
func FuzzPlanner(f *testing.F) {
	f.Add(uint64(1), 12.0, 0.05, 30.0, 5, 1)
	f.Add(uint64(2), 6.0, 0.0, 4.0, 60, 3)
	f.Add(uint64(3), 40.0, 0.9, 200.0, 0, 10)
	f.Fuzz(func(t *testing.T, seed uint64, diameter, growth, height float64, holes, taps int) {
		reach, err := tapping.ReachByHand(20*units.Inch, units.Inches(20+height))
		if err != nil {
			return
		}
		p, err := tapping.NewPlanner(units.Inches(diameter), 2025, units.Inches(growth), reach, hole(t, 0.3125, 1.5), tapping.DefaultDistances())
		if err != nil {
			if !errors.Is(err, units.ErrRange) {
				t.Fatal(err)
			}
			return
		}
		r := rand.New(rand.NewPCG(seed, 1))
		low, high := reach.Heights()
		var record []tapping.OldHole
		for range min(max(holes, 0), 100) {
			record = append(record, tapping.OldHole{Year: 2030 - r.IntN(60), Hole: hole(t, 0.3125, 1.5), Position: tapping.Position{
				At: units.Angle(2*r.Float64()-1) * units.Turn, Height: low + units.Length(r.Float64())*(high-low),
			}})
		}
		at, err := p.Next(record, 2025, taps)
		if err != nil && !errors.Is(err, tapping.ErrNoRoom) && !errors.Is(err, units.ErrRange) {
			t.Fatal(err)
		}
		if err == nil && len(at) != taps {
			t.Fatalf("%d holes for %d taps", len(at), taps)
		}
		for _, a := range at {
			if err := p.Check(record, 2025, a); err != nil {
				t.Fatalf("%+v: %v", a, err)
			}
			record = append(record, tapping.OldHole{Year: 2025, Position: a, Hole: hole(t, 0.3125, 1.5)})
		}
		if m, err := p.Map(record, 2025, at); err != nil || len(m) > 1<<20 {
			t.Fatalf("map of %d bytes, %v", len(m), err)
		}
	})
}

func BenchmarkPlan100Years(b *testing.B) {
	for _, c := range []struct {
		name             string
		diameter, growth float64
		taps             int
	}{{"OneTap", 14, 0.06, 1}, {"TwoTaps", 20, 0.08, 2}, {"Crowded", 12, 0.02, 1}, {"NoGrowth", 20, 0, 2}} {
		b.Run(c.name, func(b *testing.B) {
			p := planner(b, c.diameter, c.growth, byHand(b, 24, 60))
			b.ReportAllocs()
			for b.Loop() {
				if _, err := p.Plan(nil, 2025, 100, c.taps); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
