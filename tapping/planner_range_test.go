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

func TestPlannerRefuses(t *testing.T) {
	reach, h, keep := byHand(t, 24, 60), hole(t, 0.3125, 1.5), tapping.DefaultDistances()
	checkRange(t, "diameter", float64(3*units.Inch), 5, func(x float64) error {
		_, err := tapping.NewPlanner(units.Length(x), 2025, 0, reach, h, keep)
		return err
	})
	checkRange(t, "growth", 0, float64(units.Inch), func(x float64) error {
		_, err := tapping.NewPlanner(1*units.Foot, 2025, units.Length(x), reach, h, keep)
		return err
	})
	for name, set := range map[string]func(*tapping.Distances, units.Length){
		"Side": func(d *tapping.Distances, x units.Length) { d.Side = x },
		"Step": func(d *tapping.Distances, x units.Length) { d.Step = x },
	} {
		checkRange(t, name, float64(units.Inch/10), float64(20*units.Foot), func(x float64) error {
			k := keep
			k.Open, k.Column = 20*units.Foot, 20*units.Foot
			set(&k, units.Length(x))
			_, err := tapping.NewPlanner(1*units.Foot, 2025, 0, reach, h, k)
			return err
		})
	}
	for name, k := range map[string]tapping.Distances{
		"zero":               {},
		"column below up":    {Side: 2 * units.Inch, Up: 6 * units.Inch, Open: 6 * units.Inch, Column: 5 * units.Inch, Step: 3 * units.Inch},
		"open below side":    {Side: 2 * units.Inch, Up: 6 * units.Inch, Open: 1 * units.Inch, Column: 12 * units.Inch, Step: 3 * units.Inch},
		"up is not a number": {Side: 2 * units.Inch, Up: units.Length(math.NaN()), Open: 6 * units.Inch, Column: 12 * units.Inch, Step: 3 * units.Inch},
	} {
		if _, err := tapping.NewPlanner(1*units.Foot, 2025, 0, reach, h, k); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := tapping.NewPlanner(1*units.Foot, 2025, 0, tapping.Reach{}, h, keep); !errors.Is(err, units.ErrRange) {
		t.Errorf("zero reach: %v", err)
	}
	if _, err := tapping.NewPlanner(1*units.Foot, 2025, 0, reach, tapping.Hole{}, keep); !errors.Is(err, units.ErrRange) {
		t.Errorf("zero hole: %v", err)
	}
	if _, err := tapping.NewPlanner(1*units.Foot, 10001, 0, reach, h, keep); !errors.Is(err, units.ErrRange) {
		t.Errorf("year 10001: %v", err)
	}
	var zero tapping.Planner
	if _, err := zero.Next(nil, 2025, 1); !errors.Is(err, tapping.ErrNoRoom) {
		t.Errorf("zero planner: %v", err)
	}
	p := planner(t, 12, 0.05, reach)
	for name, bad := range map[string]tapping.OldHole{
		"no hole":   {Year: 2024, Position: tapping.Position{Height: 1}},
		"far year":  {Year: 20000, Position: tapping.Position{Height: 1}, Hole: h},
		"NaN angle": {Year: 2024, Position: tapping.Position{At: units.Angle(math.NaN()), Height: 1}, Hole: h},
		"two turns": {Year: 2024, Position: tapping.Position{At: 2 * units.Turn, Height: 1}, Hole: h},
		"in space":  {Year: 2024, Position: tapping.Position{Height: 7}, Hole: h},
	} {
		if _, err := p.Next([]tapping.OldHole{bad}, 2025, 1); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: %v", name, err)
		}
		if _, err := p.Map([]tapping.OldHole{bad}, 2025, nil); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s in the map: %v", name, err)
		}
	}
	for _, c := range [][3]int{{20000, 1, 1}, {2025, 0, 1}, {2025, 1001, 1}, {2025, 1, 0}, {2025, 1, 11}, {9999, 10, 1}} {
		if _, err := p.Plan(nil, c[0], c[1], c[2]); !errors.Is(err, units.ErrRange) {
			t.Errorf("Plan%v: %v", c, err)
		}
	}
	if _, err := p.Next(nil, 2025, 0); !errors.Is(err, units.ErrRange) {
		t.Errorf("no taps: %v", err)
	}
}

func TestReachRange(t *testing.T) {
	checkRange(t, "low", 0, float64(20*units.Foot-units.Inch), func(x float64) error {
		_, err := tapping.ReachByHand(units.Length(x), 20*units.Foot)
		return err
	})
	checkRange(t, "high", float64(24*units.Inch+units.Inch), float64(20*units.Foot), func(x float64) error {
		_, err := tapping.ReachByHand(24*units.Inch, units.Length(x))
		return err
	})
	checkRange(t, "dropline", float64(units.Inch), float64(20*units.Foot), func(x float64) error {
		_, err := tapping.ReachByDropline(tapping.Position{}, units.Length(x))
		return err
	})
	checkRange(t, "fitting", 0, float64(20*units.Foot-30*units.Inch), func(x float64) error {
		_, err := tapping.ReachByDropline(tapping.Position{Height: units.Length(x)}, 30*units.Inch)
		return err
	})
	for _, a := range []units.Angle{units.Angle(math.NaN()), 2 * units.Turn, -2 * units.Turn} {
		if _, err := tapping.ReachByDropline(tapping.Position{At: a}, 30*units.Inch); !errors.Is(err, units.ErrRange) {
			t.Errorf("angle %v: %v", a, err)
		}
	}
}

func TestPositionAlong(t *testing.T) {
	const girth = 60 * units.Inch
	checkRange(t, "along", 0, float64(girth), func(x float64) error {
		_, err := tapping.PositionAlong(units.Length(x), girth, 1*units.Foot)
		return err
	})
	checkRange(t, "girth", float64(units.Inch), 5*math.Pi, func(x float64) error {
		_, err := tapping.PositionAlong(0, units.Length(x), 1*units.Foot)
		return err
	})
	checkRange(t, "height", 0, float64(20*units.Foot), func(x float64) error {
		_, err := tapping.PositionAlong(0, girth, units.Length(x))
		return err
	})
	r := rand.New(rand.NewPCG(13, 14))
	for range 500 {
		along := units.Length(r.Float64()) * girth
		p := must[tapping.Position](t)(tapping.PositionAlong(along, girth, 1*units.Foot))
		if back := p.Along(girth); !near(float64(back), float64(along)) {
			t.Fatalf("%v came back as %v", along, back)
		}
	}
	west := tapping.Position{At: -90 * units.Degree}
	if got := west.Along(girth); !near(got.Inches(), 45) {
		t.Errorf("a quarter turn back lies %v along", got)
	}
	tiny := tapping.Position{At: -1e-300}
	if got := tiny.Along(girth); got != 0 {
		t.Errorf("just before the mark lies %v along", got)
	}
}

func TestRecordLimits(t *testing.T) {
	p, h := planner(t, 12, 0.05, byHand(t, 24, 60)), hole(t, 0.3125, 1.5)
	next := func(record ...tapping.OldHole) error {
		_, err := p.Next(record, 2025, 1)
		return err
	}
	// Either way round, as far as a turn.
	for _, degrees := range []float64{-360, 360} {
		if err := next(tapping.OldHole{Year: 2000, Hole: h, Position: tapping.Position{At: units.Degrees(degrees), Height: 1}}); err != nil {
			t.Errorf("%v degrees: %v", degrees, err)
		}
		var re *units.RangeError
		err := next(tapping.OldHole{Year: 2000, Hole: h, Position: tapping.Position{At: units.Degrees(degrees * 1.0001), Height: 1}})
		if !errors.As(err, &re) || !near(re.Low, -360) || !near(re.High, 360) {
			t.Errorf("more than %v degrees: %v", degrees, err)
		}
	}
	for year, ok := range map[int]bool{-10000: true, -10001: false, 10000: true, 10001: false} {
		err := next(tapping.OldHole{Year: year, Hole: h, Position: tapping.Position{Height: 1}})
		if errors.Is(err, units.ErrRange) == ok {
			t.Errorf("a hole of %d: %v", year, err)
		}
	}
	many := make([]tapping.OldHole, 10001)
	for i := range many {
		many[i] = tapping.OldHole{Year: 1900, Hole: h, Position: tapping.Position{Height: 1}}
	}
	if err := next(many[:10000]...); err != nil {
		t.Errorf("10000 holes: %v", err)
	}
	if err := next(many...); !errors.Is(err, units.ErrRange) {
		t.Errorf("10001 holes: %v", err)
	}
}

// A place that is none is refused, where it was a panic of the map once, and a
// hole that nothing forbade.
func TestPlaceIsNone(t *testing.T) {
	reach := must[tapping.Reach](t)(tapping.ReachByHand(units.Foot, 5*units.Foot))
	hole := must[tapping.Hole](t)(tapping.NewHole(units.Inch*5/16, 1.5*units.Inch, 0))
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, hole, tapping.DefaultDistances()))
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e300} {
		at := tapping.Position{At: units.Angle(x), Height: 3 * units.Foot}
		if err := p.Check(nil, 2024, at); !errors.Is(err, units.ErrRange) {
			t.Errorf("check of %v: %v", at, err)
		}
		if text, err := p.Map(nil, 2024, []tapping.Position{at}); !errors.Is(err, units.ErrRange) || text != "" {
			t.Errorf("map of %v: %q, %v", at, text, err)
		}
		at = tapping.Position{Height: units.Length(x)}
		if text, err := p.Map(nil, 2024, []tapping.Position{at}); !errors.Is(err, units.ErrRange) || text != "" {
			t.Errorf("map of %v: %q, %v", at, text, err)
		}
	}
	if g, err := tapping.RadialGrowth(0, math.SmallestNonzeroFloat64); g != 0 || err != nil {
		t.Errorf("next to no growth of nothing: %v, %v", g, err)
	}
	_, err := tapping.TappingBand{}.GrowthNeeded(90)
	if !errors.Is(err, units.ErrRange) || strings.Contains(err.Error(), "NaN") {
		t.Errorf("of a band that was not made: %v", err)
	}
	info := tapping.DefaultGuideline().Info()
	info.Steps[0].To = math.NaN()
	if _, err := tapping.NewGuideline(info); !errors.Is(err, units.ErrRange) || strings.Contains(err.Error(), "to +Inf") {
		t.Errorf("a step without an end: %v", err)
	}
}

// A plan keeps clear of holes that the record holds for years to come.
func TestPlanAroundTheFuture(t *testing.T) {
	reach, h, keep := byHand(t, 24, 60), hole(t, 0.3125, 1.5), tapping.DefaultDistances()
	p := must[tapping.Planner](t)(tapping.NewPlanner(12*units.Inch, 2024, units.Inch/10, reach, h, keep))
	rng := rand.New(rand.NewPCG(24, 8))
	for range 50 {
		var record []tapping.OldHole
		for year := 2022; year < 2030; year += 1 + rng.IntN(3) {
			at := tapping.Position{At: units.Turn * units.Angle(rng.Float64()), Height: (24 + 36*units.Length(rng.Float64())) * units.Inch}
			record = append(record, tapping.OldHole{Year: year, Position: at, Hole: h})
		}
		plan := must[tapping.Plan](t)(p.Plan(record, 2024, 6, 1))
		for i, at := range plan.Holes {
			if err := p.Check(append(record, plan.Holes[:i]...), at.Year, at.Position); err != nil {
				t.Errorf("%v: %v", at, err)
			}
		}
	}
}
