package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// closest is the least distance round the trunk among the holes of a year and
// from those already open.
func closest(at []tapping.Position, record []tapping.OldHole, year int, girth units.Length) units.Length {
	d := units.Length(math.Inf(1))
	for i, a := range at {
		for _, b := range at[:i] {
			side, _ := apart(a, b, girth)
			d = min(d, side)
		}
		for _, h := range record {
			if h.Year >= year {
				side, _ := apart(a, h.Position, girth)
				d = min(d, side)
			}
		}
	}
	return d
}

// bruteSpread tries every pair or three of the free places of a grid round the
// trunk.
func bruteSpread(p tapping.Planner, record []tapping.OldHole, year, taps int, reach tapping.Reach, girth units.Length) units.Length {
	const n = 120
	low, high := reach.Heights()
	var free []tapping.Position
	for i := range n {
		for k := range 25 {
			at := tapping.Position{At: units.Angle(i) / n * units.Turn, Height: low + units.Length(k)/24*(high-low)}
			if p.Check(record, year, at) == nil {
				free = append(free, at)
				break
			}
		}
	}
	best := units.Length(0)
	try := func(at ...tapping.Position) {
		if d := closest(at, record, year, girth); d >= 6*units.Inch {
			best = max(best, d)
		}
	}
	for i, a := range free {
		if taps == 1 {
			try(a)
			continue
		}
		for k, b := range free[:i] {
			if taps == 2 {
				try(a, b)
				continue
			}
			if side, _ := apart(a, b, girth); side <= best {
				continue
			}
			for _, c := range free[:k] {
				try(a, b, c)
			}
		}
	}
	return best
}

// The holes of a year never stand closer together than 0.8 of what brute force
// finds on the grid, and keep every published distance. Where brute force finds
// room, so does the planner.
func TestHolesOfAYearAreSpread(t *testing.T) {
	r := rand.New(rand.NewPCG(51, 52))
	spreadWorst, full := 1.0, 0
	for n := range 150 {
		reach := byHand(t, 24, 30+30*r.Float64())
		if n%3 == 0 {
			reach = must[tapping.Reach](t)(tapping.ReachByDropline(tapping.Position{At: units.Angle(r.Float64()) * units.Turn, Height: 30 * units.Inch}, units.Inches(10+30*r.Float64())))
		}
		growth := []float64{0, 0.03, 0.1}[r.IntN(3)]
		diameter := 12 + 18*r.Float64()
		p, girth := planner(t, diameter, growth, reach), units.Inches(math.Pi*diameter)
		low, high := reach.Heights()
		var record []tapping.OldHole
		for range r.IntN(30) {
			record = append(record, tapping.OldHole{Year: 2025 - r.IntN(12), Hole: hole(t, 0.3125, 1.5), Position: tapping.Position{
				At: units.Angle(r.Float64()) * units.Turn, Height: low + units.Length(r.Float64())*(high-low),
			}})
		}
		taps := 1 + r.IntN(3)
		at, err := p.Next(record, 2025, taps)
		best := bruteSpread(p, record, 2025, taps, reach, girth)
		if err != nil {
			if full++; !errors.Is(err, tapping.ErrNoRoom) || best > 0 {
				t.Errorf("%d holes: %v, but brute force finds %v", taps, err, best.Text(units.Inch, 2))
			}
			continue
		}
		for i, a := range at {
			all := record
			for k, b := range at {
				if k != i {
					all = append(all[:len(all):len(all)], tapping.OldHole{Year: 2025, Position: b, Hole: hole(t, 0.3125, 1.5)})
				}
			}
			if !keeps(a, 2025, all, girth, units.Inches(growth)) {
				t.Errorf("%+v does not keep its distances", a)
			}
		}
		if got := closest(at, record, 2025, girth); !math.IsInf(float64(got), 1) && best > 0 {
			if share := float64(got / best); share < 0.8 {
				t.Errorf("%d holes %v apart, brute force %v", taps, got.Text(units.Inch, 2), best.Text(units.Inch, 2))
			} else {
				spreadWorst = min(spreadWorst, share)
			}
		}
	}
	t.Logf("the worst spread is %.2f of brute force, %d trunks had no room", spreadWorst, full)
}

// A trunk 60 in round had two holes last year, 10 in apart, and 50 in of clean
// bark beside them. Going on from both, the second would stand 10 in from the
// first again. Spread, the least distance is half of the girth, less what keeps
// the two off the old ones: at least 0.8 of 30 in.
func TestSecondHoleUsesTheCleanBark(t *testing.T) {
	const girth = 60 * units.Inch
	d := must[units.Length](t)(tapping.DiameterFromGirth(girth))
	p := planner(t, d.Inches(), 0.05, byHand(t, 24, 60))
	record := []tapping.OldHole{old(t, 2024, 0, 42), old(t, 2024, 60*units.Degree, 42)}
	at := must[[]tapping.Position](t)(p.Next(record, 2025, 2))
	if got := closest(at, record, 2025, girth); !(got >= 24*units.Inch) {
		t.Errorf("%v apart, want 24 in or more: %+v", got.Text(units.Inch, 1), at)
	}
	// One is drilled already: the other goes to the far side.
	record = append(record, old(t, 2025, 10*units.Degree, 48))
	at = must[[]tapping.Position](t)(p.Next(record, 2025, 1))
	if got := closest(at, record, 2025, girth); !(got >= 24*units.Inch) {
		t.Errorf("%v from the open hole, want 24 in or more: %+v", got.Text(units.Inch, 1), at)
	}
}
