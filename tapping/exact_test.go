package tapping_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// As its sources say: 1.5 to 2 in (University of Vermont Extension), 1 in for a
// slow tree (Cornell 2005).
func TestDepthAdvisedAsPublished(t *testing.T) {
	for v, want := range map[tapping.Vigor][2]float64{
		tapping.NotJudged: {1.5, 2}, tapping.Healthy: {1.5, 2}, tapping.Slow: {1, 1}, tapping.Unhealthy: {0, 0},
	} {
		if low, high := tapping.DepthAdvised(v); !near(low.Inches(), want[0]) || !near(high.Inches(), want[1]) {
			t.Errorf("%v: %v to %v in, want %v", v, low.Inches(), high.Inches(), want)
		}
	}
}

// Breast height is 4.5 ft in the United States and 1.30 m in Quebec.
func TestBreastHeights(t *testing.T) {
	for _, g := range tapping.Guidelines() {
		want := 1.3716 // 4.5 ft
		if strings.Contains(g.Info().Jurisdiction, "Quebec") {
			want = 1.30
		}
		if got := g.Info().Height.Meters(); !near(got, want) {
			t.Errorf("%s: breast height %v m, want %v", g.ID(), got, want)
		}
	}
}

// 1 to 100 steps, as documented.
func TestGuidelineSteps(t *testing.T) {
	for n, ok := range map[int]bool{0: false, 1: true, 100: true, 101: false} {
		info := tapping.GuidelineInfo{ID: "by the inch", Unit: units.Inch}
		for i := range n {
			info.Steps = append(info.Steps, tapping.Step{From: float64(i), To: float64(i + 1), Before: true})
		}
		_, err := tapping.NewGuideline(info)
		var e *units.RangeError
		if ok != (err == nil) || !ok && (!errors.As(err, &e) || e.Low != 1 || e.High != 100) {
			t.Errorf("%d steps: %v", n, err)
		}
	}
}

// No taps beside an error, as documented.
func TestNoTapsBesideAnError(t *testing.T) {
	g := tapping.DefaultGuideline()
	for name, call := range map[string]func() (int, error){
		"out of range": func() (int, error) { return g.Taps(6 * units.Meter) },
		"no guideline": func() (int, error) { return tapping.Guideline{}.Taps(20 * units.Inch) },
		"no guideline, of a trunk": func() (int, error) {
			return must[tapping.Trunk](t)(tapping.NewTrunk(20*units.Inch, tapping.Maple, tapping.Healthy)).Taps(tapping.Guideline{})
		},
	} {
		if n, err := call(); n != 0 || err == nil {
			t.Errorf("%s: %d taps, %v", name, n, err)
		}
	}
}

// A refused step is told by its number, counted from one.
func TestGuidelineNamesTheStep(t *testing.T) {
	good := tapping.Step{From: 10, To: 20, Before: true}
	for says, second := range map[string]tapping.Step{
		"step 2 from":        {From: 5, To: 30},
		"step 2 to":          {From: 20, To: 20},
		"steps 1 and 2 both": {From: 20, To: 30},
	} {
		first := good
		first.Before = says != "steps 1 and 2 both"
		_, err := tapping.NewGuideline(tapping.GuidelineInfo{ID: "by the inch", Unit: units.Inch, Steps: []tapping.Step{first, second}})
		if err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%v, want an error that says %q", err, says)
		}
	}
}

// Plans of 1 to 1000 years that end by the year 10000, as documented.
func TestPlanYears(t *testing.T) {
	reach, h := byHand(t, 24, 60), hole(t, 0.3125, 1.5)
	for _, c := range []struct {
		from, years int
		ok          bool
	}{
		{2025, 0, false}, {2025, 1, true}, {2025, 1000, true}, {2025, 1001, false},
		{10000, 1, true}, {9999, 2, true}, {9999, 3, false},
	} {
		p := must[tapping.Planner](t)(tapping.NewPlanner(1*units.Foot, min(c.from, 2025), 0, reach, h, tapping.DefaultDistances()))
		if _, err := p.Plan(nil, c.from, c.years, 1); c.ok != (err == nil) || !c.ok && !errors.Is(err, units.ErrRange) {
			t.Errorf("%d years from %d: %v", c.years, c.from, err)
		}
	}
}

// The map has a character for an inch of girth, and 72 where there are more.
func TestMapWidth(t *testing.T) {
	for girth, want := range map[float64]int{37.5: 38, 71.5: 72, 120: 72} {
		p := must[tapping.Planner](t)(tapping.NewPlanner(must[units.Length](t)(tapping.DiameterFromGirth(units.Inches(girth))),
			2025, 0, byHand(t, 24, 60), hole(t, 0.3125, 1.5), tapping.DefaultDistances()))
		m := must[string](t)(p.Map(nil, 2025, nil))
		widest := 0
		for line := range strings.Lines(m) {
			widest = max(widest, strings.Count(line, "."))
		}
		if widest != want {
			t.Errorf("girth of %v in: %d characters, want %d\n%s", girth, widest, want, m)
		}
	}
}

// A guideline that is silent answers 0, as documented.
func TestSilenceIsZero(t *testing.T) {
	silent := 0
	for _, d := range []units.Length{5 * units.Inch, 20 * units.Inch} {
		trunk := must[tapping.Trunk](t)(tapping.NewTrunk(d, tapping.Birch, tapping.Healthy))
		if d < 10*units.Inch {
			trunk = must[tapping.Trunk](t)(tapping.NewTrunk(d, tapping.Maple, tapping.Healthy))
		}
		a := trunk.Advise(tapping.Guideline{})
		for _, answer := range append(a.Others, a.Answer) {
			if !answer.Covered {
				silent++
				if answer.Taps != 0 {
					t.Errorf("%s is silent about %v and answers %d", answer.Guideline.ID(), d, answer.Taps)
				}
			}
		}
	}
	if silent == 0 {
		t.Error("no guideline is silent")
	}
}

// A message repeats 48 bytes of a text that it does not understand.
func TestMessagesAreShort(t *testing.T) {
	for n, want := range map[int]string{
		48: `"` + strings.Repeat("x", 48) + `": not one of the names`,
		49: `"` + strings.Repeat("x", 48) + `...": not one of the names`,
	} {
		_, err := tapping.ReadStand(strings.NewReader("dbh_in,species\n12," + strings.Repeat("x", n) + "\n"))
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("a species of %d letters: %v, want %s", n, err, want)
		}
	}
}
