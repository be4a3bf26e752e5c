package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"github.com/google/go-cmp/cmp"
)

func TestNextTellsHowManyFit(t *testing.T) {
	p := planner(t, 8, 0.05, byHand(t, 24, 60))
	at, err := p.Next(nil, 2025, 10) // a girth of 25 in holds no more than four holes 6 in apart
	if len(at) < 2 || len(at) > 4 || !errors.Is(err, tapping.ErrNoRoom) {
		t.Errorf("%d holes, error %v", len(at), err)
	}
}

func TestFirstHolesStandEvenly(t *testing.T) {
	p := planner(t, 20, 0.05, byHand(t, 24, 60))
	at := must[[]tapping.Position](t)(p.Next(nil, 2025, 2))
	side, up := apart(at[0], at[1], math.Pi*20*units.Inch)
	if !near(side.Inches(), 10*math.Pi) || !near(up.Inches(), 0) || !near(at[0].Height.Inches(), 42) {
		t.Errorf("first holes at %+v", at)
	}
}

// Old holes all round the top of the reach leave its bottom free, and the other
// way round.
func TestNextBesideAFullBelt(t *testing.T) {
	p := planner(t, 6, 0, byHand(t, 24, 60))
	for height, free := range map[float64][2]float64{60: {24, 48}, 24: {36, 60}} {
		var record []tapping.OldHole
		for i := range 5 { // 3.8 in apart, each keeping 2 in to either side
			record = append(record, old(t, 2000+i, units.Angle(i)/5*units.Turn, height))
		}
		at, err := p.Next(record, 2025, 1)
		if err != nil || !(at[0].Height.Inches() >= free[0]-1e-6 && at[0].Height.Inches() <= free[1]+1e-6) {
			t.Errorf("holes at %v in: %+v, %v", height, at, err)
		}
	}
}

// A dropline of 5 in is all there is, one hole sits at its fitting and another
// bars one side: what is left begins just where the first hole's distance ends,
// 2 in away for an old one. From one that is open, the new one goes as far as the
// dropline reaches.
func TestNextBesideOneHole(t *testing.T) {
	const girth = 60 * units.Inch
	d := must[units.Length](t)(tapping.DiameterFromGirth(girth))
	fitting := tapping.Position{At: 180 * units.Degree, Height: 30 * units.Inch}
	reach := must[tapping.Reach](t)(tapping.ReachByDropline(fitting, 5*units.Inch))
	keep := tapping.DefaultDistances()
	keep.Open, keep.Step = 3*units.Inch, girth // no pattern to go on by
	p := must[tapping.Planner](t)(tapping.NewPlanner(d, 2025, 0, reach, hole(t, 0.3125, 1.5), keep))
	for year, away := range map[int]float64{2000: 2, 2025: 3} {
		for _, sign := range []float64{1, -1} {
			at := func(inches float64) units.Angle { return fitting.At + units.Angle(sign*inches/60)*units.Turn }
			record := []tapping.OldHole{old(t, year, at(0), 30), old(t, year, at(1.9*away), 30)}
			next, err := p.Next(record, 2025, 1)
			want, within := away, 1e-9
			if year == 2025 {
				want, within = 5, 1e-3
			}
			if err != nil || !(math.Abs(next[0].At.In(units.Turn)-at(-want).In(units.Turn))*60 < within) {
				t.Errorf("holes of %d at the fitting and %v in beyond: %v, %v", year, sign*1.9*away, next, err)
			}
		}
	}
}

// A dropline of 10 in on a trunk 100 in round: two holes are farthest apart where it
// just reaches to either side, 20 in, wherever round the trunk its fitting is.
func TestNextAtTheEndsOfADropline(t *testing.T) {
	const girth = 100 * units.Inch
	d := must[units.Length](t)(tapping.DiameterFromGirth(girth))
	keep := tapping.DefaultDistances()
	keep.Step = girth // no pattern to go on by
	for _, turn := range []float64{0, 0.05, 0.25, 0.5, 0.95} {
		fitting := tapping.Position{At: units.Angle(turn) * units.Turn, Height: 30 * units.Inch}
		reach := must[tapping.Reach](t)(tapping.ReachByDropline(fitting, 10*units.Inch))
		p := must[tapping.Planner](t)(tapping.NewPlanner(d, 2025, 0, reach, hole(t, 0.3125, 1.5), keep))
		at, err := p.Next(nil, 2025, 2)
		if err != nil || !(closest(at, nil, 2025, girth) > 19.99*units.Inch) {
			t.Errorf("fitting at %v of a turn: %+v, %v", turn, at, err)
		}
	}
}

// What is drilled later than the year asked about does not lead the pattern.
func TestNextPassesLaterHoles(t *testing.T) {
	p := planner(t, 20, 0.1, byHand(t, 24, 60))
	last := old(t, 2024, 90*units.Degree, 42)
	alone := must[[]tapping.Position](t)(p.Next([]tapping.OldHole{last}, 2025, 1))
	for _, record := range [][]tapping.OldHole{{last, old(t, 2030, 270*units.Degree, 42)}, {old(t, 2030, 270*units.Degree, 42), last}} {
		if got := must[[]tapping.Position](t)(p.Next(record, 2025, 1)); !cmp.Equal(got, alone) {
			t.Errorf("beside a hole of 2030 the next is %+v, without it %+v", got, alone)
		}
	}
}

// A plan is what the planner would answer year after year, also where the trunk
// does not grow and nothing ever heals.
func TestPlanIsNextEveryYear(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	for range 60 {
		p := planner(t, 8+20*r.Float64(), []float64{0, 0.02, 0.1}[r.IntN(3)], byHand(t, 24, 30+30*r.Float64()))
		var record []tapping.OldHole
		for range r.IntN(20) {
			record = append(record, tapping.OldHole{Year: 2000 + r.IntN(25), Hole: hole(t, 0.3125, 1.5), Position: tapping.Position{
				At: units.Angle(r.Float64()) * units.Turn, Height: units.Inches(20 + 50*r.Float64()),
			}})
		}
		old, taps := len(record), 1+r.IntN(2)
		plan := must[tapping.Plan](t)(p.Plan(record, 2025, 60, taps))
		var resting []int
		for year := 2025; year < 2085; year++ {
			at, err := p.Next(record, year, taps)
			if err != nil {
				resting = append(resting, year)
			}
			for _, a := range at {
				record = append(record, tapping.OldHole{Year: year, Position: a, Hole: hole(t, 0.3125, 1.5)})
			}
		}
		made := record[old:]
		for i, h := range plan.Holes {
			if len(made) != len(plan.Holes) || made[i].Year != h.Year || !near(float64(made[i].At), float64(h.At)) || !near(float64(made[i].Height), float64(h.Height)) {
				t.Fatalf("%+v: hole %d of the plan is %+v", p, i, h)
			}
		}
		if d := cmp.Diff(resting, plan.Resting); d != "" {
			t.Fatalf("%+v: resting years: %s", p, d)
		}
	}
}
