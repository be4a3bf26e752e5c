package tapping_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func isNotCovered(err error) bool {
	var e *tapping.NotCoveredError
	return errors.As(err, &e) && errors.Is(err, tapping.ErrNotCovered) && e.Hint != ""
}

const silent = -1

// The ends of a step belong to it unless it says otherwise: "16 to less than 17"
// and "more than 18" hold neither 17 nor 18.
func TestOpenEnds(t *testing.T) {
	g := must[tapping.Guideline](t)(tapping.NewGuideline(tapping.GuidelineInfo{ID: "open", Unit: units.Inch, Steps: []tapping.Step{
		{From: 10, To: 15, Taps: 1}, {From: 16, To: 17, Before: true, Taps: 2}, {From: 18, After: true, To: math.Inf(1), Taps: 3},
	}}))
	for inches, want := range map[float64]int{10: 1, 15: 1, 15.5: silent, 16: 2, 16.9: 2, 17: silent, 17.5: silent, 18: silent, 18.1: 3} {
		got, err := g.Taps(units.Inches(inches))
		if want == silent {
			if !isNotCovered(err) {
				t.Errorf("%v in: %d taps, %v", inches, got, err)
			}
		} else if err != nil || got != want {
			t.Errorf("%v in: %d taps, %v, want %d", inches, got, err, want)
		}
	}
}

// Every boundary of every guideline, below, on and above, in the unit that the
// rule prints. A step below or above is 2e-6 of that unit.
func TestBoundaries(t *testing.T) {
	const step = 2e-6
	for _, c := range []struct {
		id               string
		unit             units.Length
		at               float64
		below, on, above int
	}{
		{"NAMSPM-conservative", units.Inch, 12, 0, 1, 1},
		{"NAMSPM-conservative", units.Inch, 18, 1, 1, 2},
		{"NAMSPM-traditional", units.Inch, 10, 0, 1, 1},
		{"NAMSPM-traditional", units.Inch, 15, 1, 2, 2},
		{"NAMSPM-traditional", units.Inch, 20, 2, 3, 3},
		{"NAMSPM-traditional", units.Inch, 25, 3, 4, 4},
		{"UVM-school", units.Inch, 10, silent, 1, 1},
		{"UVM-school", units.Inch, 17, 1, 1, 1},
		{"UVM-school", units.Inch, 18, 1, 2, 2},
		{"UVM-school", units.Inch, 24, 2, 2, 2},
		{"UVM-school", units.Inch, 25, 2, silent, silent},
		{"QC-public-2004", units.Centimeter, 20, 0, 1, 1},
		{"QC-public-2004", units.Centimeter, 39, 1, 1, 1},
		{"QC-public-2004", units.Centimeter, 40, 1, 2, 2},
		{"QC-public-2004", units.Centimeter, 60, 2, 3, 3},
		{"QC-public-2004", units.Centimeter, 80, 3, 4, 4},
		{"QC-public-2018to2022", units.Centimeter, 19.1, 0, 1, 1},
		{"QC-public-2018to2022", units.Centimeter, 39, 1, 1, silent},
		{"QC-public-2018to2022", units.Centimeter, 39.1, silent, 2, 2},
		{"QC-public-2018to2022", units.Centimeter, 59, 2, 2, silent},
		{"QC-public-2018to2022", units.Centimeter, 59.1, silent, 3, 3},
		{"QC-public-2018to2022", units.Centimeter, 79, 3, 3, silent},
		{"QC-public-2018to2022", units.Centimeter, 79.1, silent, 4, 4},
		{"QC-private-plan-2023", units.Centimeter, 23, 0, 0, silent},
		{"QC-private-plan-2023", units.Centimeter, 23.1, silent, 1, 1},
		{"QC-private-plan-2023", units.Centimeter, 39, 1, 1, silent},
		{"QC-private-plan-2023", units.Centimeter, 39.1, silent, 2, 2},
	} {
		g := must[tapping.Guideline](t)(tapping.GuidelineByID(c.id))
		for _, p := range []struct {
			x    float64
			want int
		}{{c.at - step, c.below}, {c.at, c.on}, {c.at + step, c.above}} {
			n, err := g.Taps(units.Length(p.x) * c.unit)
			switch {
			case p.want == silent && (n != 0 || !isNotCovered(err)):
				t.Errorf("%s at %v: %d taps, error %v; want not covered", c.id, p.x, n, err)
			case p.want != silent && (err != nil || n != p.want):
				t.Errorf("%s at %v: %d taps, error %v; want %d", c.id, p.x, n, err, p.want)
			}
		}
	}
}

// A diameter that came over another unit lies on the same side of a boundary:
// 12 in is 0.30479999999999996 m when computed.
func TestBoundariesSurviveUnits(t *testing.T) {
	g := tapping.DefaultGuideline()
	var tenths units.Length
	for range 120 {
		tenths += units.Inch / 10
	}
	girth := must[units.Length](t)(tapping.GirthFromDiameter(12 * units.Inch))
	over := must[units.Length](t)(tapping.DiameterFromGirth(girth))
	for _, d := range []units.Length{12 * units.Inch, 1 * units.Foot, 30.48 * units.Centimeter, 304.8 * units.Millimeter, 0.30479999999999996, tenths, over} {
		if n := must[int](t)(g.Taps(d)); n != 1 {
			t.Errorf("%.17g m takes %d taps, want 1", float64(d), n)
		}
	}
}

func TestGuidelineRange(t *testing.T) {
	g := tapping.DefaultGuideline()
	checkRange(t, "Taps", 0, 5, func(x float64) error { _, err := g.Taps(units.Length(x)); return err })
	var zero tapping.Guideline
	if n, err := zero.Taps(1 * units.Foot); n != 0 || !isNotCovered(err) {
		t.Errorf("the zero guideline allows %d taps, error %v", n, err)
	}
	if zero.ID() != "" || len(zero.Info().Steps) != 0 {
		t.Error("the zero guideline has an ID or steps")
	}
}

// The default asks for the thickest trunk before the first and the second tap,
// covers every diameter and never gives more than two.
func TestDefaultIsCareful(t *testing.T) {
	d := tapping.DefaultGuideline()
	for mm := range 5000 {
		dbh := units.Millimeters(float64(mm))
		n := must[int](t)(d.Taps(dbh))
		if n > 2 {
			t.Fatalf("%v: %d taps", dbh, n)
		}
		for _, g := range tapping.Guidelines() {
			if other, err := g.Taps(dbh); err == nil && other < n {
				t.Fatalf("%v: %d taps by default and %d by %s", dbh, n, other, g.ID())
			}
		}
	}
}

func TestGuidelinesSayWhatTheyAre(t *testing.T) {
	for _, g := range tapping.Guidelines() {
		i := g.Info()
		if i.Kind == "" || i.Source == "" || i.Unit == 0 || i.Height == 0 {
			t.Errorf("%s: incomplete: %+v", g.ID(), i)
		}
		if strings.HasPrefix(i.ID, "QC") && (i.Jurisdiction == "" || i.Date == "") {
			t.Errorf("%s: a rule of law without place or date", g.ID())
		}
		if _, err := tapping.NewGuideline(i); err != nil {
			t.Errorf("%s does not pass its own constructor: %v", g.ID(), err)
		}
		i.Steps[0].Taps = 9
		if g.Info().Steps[0].Taps == 9 {
			t.Errorf("%s: a caller can change it", g.ID())
		}
	}
	if _, err := tapping.GuidelineByID("nobody's"); err == nil {
		t.Error("an unknown guideline was found")
	}
}

func TestNewGuidelineRefuses(t *testing.T) {
	inf := math.Inf(1)
	good := func() tapping.GuidelineInfo {
		return tapping.GuidelineInfo{ID: "house rule", Unit: units.Inch, Steps: []tapping.Step{{From: 0, To: 14, Before: true}, {From: 14, To: inf, Taps: 1}}}
	}
	if g, err := tapping.NewGuideline(good()); err != nil || g.ID() != "house rule" {
		t.Fatalf("a good guideline: %v", err)
	}
	for name, spoil := range map[string]func(*tapping.GuidelineInfo){
		"no ID":        func(i *tapping.GuidelineInfo) { i.ID = "" },
		"no unit":      func(i *tapping.GuidelineInfo) { i.Unit = 0 },
		"NaN unit":     func(i *tapping.GuidelineInfo) { i.Unit = units.Length(math.NaN()) },
		"no steps":     func(i *tapping.GuidelineInfo) { i.Steps = nil },
		"many steps":   func(i *tapping.GuidelineInfo) { i.Steps = make([]tapping.Step, 101) },
		"minus taps":   func(i *tapping.GuidelineInfo) { i.Steps[0].Taps = -1 },
		"many taps":    func(i *tapping.GuidelineInfo) { i.Steps[1].Taps = 11 },
		"NaN from":     func(i *tapping.GuidelineInfo) { i.Steps[0].From = math.NaN() },
		"inf from":     func(i *tapping.GuidelineInfo) { i.Steps[1].From = inf },
		"NaN to":       func(i *tapping.GuidelineInfo) { i.Steps[0].To = math.NaN() },
		"descending":   func(i *tapping.GuidelineInfo) { i.Steps[1].From = 13 },
		"empty":        func(i *tapping.GuidelineInfo) { i.Steps[0].To = 0 },
		"shared point": func(i *tapping.GuidelineInfo) { i.Steps[0].Before = false },
	} {
		info := good()
		spoil(&info)
		if g, err := tapping.NewGuideline(info); err == nil || g != (tapping.Guideline{}) {
			t.Errorf("%s: accepted", name)
		}
	}
}

func TestAdviceShowsTheRange(t *testing.T) {
	trunk := must[tapping.Trunk](t)(tapping.NewTrunk(26*units.Inch, tapping.SugarMaple, tapping.Healthy))
	a := trunk.Advise(tapping.DefaultGuideline())
	if a.Taps != 2 || a.Guideline.ID() != "NAMSPM-conservative" || len(a.Others) != len(tapping.Guidelines())-1 {
		t.Errorf("advice %+v", a)
	}
	if low, high := a.Range(); low != 2 || high != 4 {
		t.Errorf("range %d to %d, want 2 to 4", low, high)
	}
	school := must[tapping.Guideline](t)(tapping.GuidelineByID("UVM-school"))
	a = trunk.Advise(school)
	if a.Covered || a.Taps != 0 || len(a.Others) == 0 {
		t.Errorf("not covered, but %+v", a)
	}
	if low, high := a.Range(); low != 2 || high != 4 {
		t.Errorf("range of the others %d to %d, want 2 to 4", low, high)
	}
	if low, high := (tapping.Advice{}).Range(); low != 0 || high != 0 {
		t.Errorf("no answers, range %d to %d", low, high)
	}
	for _, v := range []tapping.Vigor{tapping.NotJudged, tapping.Slow, tapping.Unhealthy} {
		trunk := must[tapping.Trunk](t)(tapping.NewTrunk(26*units.Inch, tapping.Maple, v))
		a := trunk.Advise(tapping.DefaultGuideline())
		if len(a.Notes) < 3 {
			t.Errorf("%v: notes %q", v, a.Notes)
		}
	}
	// The depth of Cornell 2005.
	slow := must[tapping.Trunk](t)(tapping.NewTrunk(26*units.Inch, tapping.SugarMaple, tapping.Slow))
	a = slow.Advise(tapping.DefaultGuideline())
	if want := "slow growth: at most one tap, near 1 in deep into the wood, bark not counted;"; !strings.HasPrefix(a.Notes[0], want) {
		t.Errorf("of a slow trunk: %q, want %q", a.Notes[0], want)
	}
}

// A guideline is fixed when it is made: neither the table that it was made of nor
// the one that it shows is its own, and writing over them changes no advice.
func TestGuidelineKeepsItsOwnTable(t *testing.T) {
	steps := []tapping.Step{{From: 0, To: 14, Before: true}, {From: 14, To: math.Inf(1), Taps: 1}}
	g, err := tapping.NewGuideline(tapping.GuidelineInfo{ID: "house rule", Unit: units.Inch, Steps: steps})
	if err != nil {
		t.Fatal(err)
	}
	advised := func(when string) {
		if a, err := g.Taps(15 * units.Inch); err != nil || a != 1 {
			t.Errorf("%s: %d taps, %v, want 1", when, a, err)
		}
	}
	advised("made")
	steps[1].Taps = 9
	advised("the table given was written over")
	g.Info().Steps[1].Taps = 9
	advised("the table shown was written over")
}
