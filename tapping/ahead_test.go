package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func aheadPlan(t testing.TB, growth float64, years int) tapping.AheadPlan {
	t.Helper()
	return tapping.AheadPlan{
		Guideline: tapping.DefaultGuideline(), Growth: units.Inches(growth), Years: years, Hole: hole(t, 0.3125, 1.5), Band: 30 * units.Inch,
	}
}

func healthy(t testing.TB, inches float64) tapping.Trunk {
	t.Helper()
	return must[tapping.Trunk](t)(tapping.NewTrunk(units.Inches(inches), tapping.SugarMaple, tapping.Healthy))
}

// By NAMSPM-conservative a trunk takes a tap from 12 in on and a second over 18. One
// of 11 in that grows 0.1 in on the radius is 11.2, 11.4, 11.6, 11.8 and 12.0 in
// thick after five years, and 14.8 in the twentieth season; one of 17.9 in is over
// 18 after one.
func TestAheadCountsTaps(t *testing.T) {
	for _, tc := range []struct {
		dbh           float64
		next          int
		first, twenty int
		thick         float64
	}{{11, 5, 0, 1, 14.8}, {17.9, 1, 1, 2, 21.7}, {13, 0, 1, 1, 16.8}, {30, 0, 2, 2, 33.8}} {
		a := must[tapping.TrunkAhead](t)(healthy(t, tc.dbh).Ahead(aheadPlan(t, 0.1, 20)))
		if len(a.Taps) != 20 || a.Next != tc.next || a.Taps[0] != tc.first || a.Taps[19] != tc.twenty || !near(a.DBH.Inches(), tc.thick) {
			t.Errorf("%v in: %+v", tc.dbh, a)
		}
	}
}

// While the count stays, the wood is that of the belt of the last thickness.
func TestAheadAgreesWithTheBelt(t *testing.T) {
	r := rand.New(rand.NewPCG(20, 19))
	for range 2000 {
		dbh, growth, years, before := 12+6*r.Float64(), 0.15*r.Float64(), 1+r.IntN(40), r.IntN(30)
		if r.IntN(4) == 0 {
			growth = 0
		}
		p := aheadPlan(t, growth, years)
		p.Before = before
		a := must[tapping.TrunkAhead](t)(healthy(t, dbh).Ahead(p))
		belt := must[tapping.TappingBand](t)(tapping.NewTappingBand(a.DBH, p.Band, p.Hole, 1))
		want := must[units.Share](t)(belt.Conductive(p.Growth, years+before, 0))
		if a.Taps[years-1] == 1 && !near(float64(a.Clear), float64(want)) {
			t.Fatalf("%v in, %v a year, %d and %d years: %v, the belt has %v", dbh, growth, years, before, a.Clear, want)
		}
		// A second tap on the way spoils more, and no more than two all along.
		two := must[tapping.TappingBand](t)(tapping.NewTappingBand(a.DBH, p.Band, p.Hole, 2))
		if least := must[units.Share](t)(two.Conductive(p.Growth, years+before, 0)); !(a.Clear <= want+1e-12 && a.Clear >= least-1e-12) {
			t.Fatalf("%v in, %v a year: %v is not between %v and %v", dbh, growth, a.Clear, least, want)
		}
	}
}

// A trunk too thin for a tap keeps all its wood.
func TestAheadUntapped(t *testing.T) {
	a := must[tapping.TrunkAhead](t)(healthy(t, 2).Ahead(aheadPlan(t, 0.05, 20)))
	if a.Clear != units.Whole || a.Next != 0 || a.Taps[19] != 0 {
		t.Errorf("%+v", a)
	}
}

// The published least stands at its two ends; a hair under it is not enough.
func TestEnoughGrowth(t *testing.T) {
	for _, dbh := range []float64{10, 14, 18, 25} {
		least := must[units.Length](t)(tapping.LeastGrowth(units.Inches(dbh)))
		for times, want := range map[float64]bool{0.999: false, 1: true, 1.1: true} {
			p := aheadPlan(t, times*least.Inches(), 3)
			if a := must[tapping.TrunkAhead](t)(healthy(t, max(dbh, 12)).Ahead(p)); dbh >= 12 && a.Enough != want {
				t.Errorf("%v in, %v of the least: %+v", dbh, times, a)
			}
		}
	}
	// Half way between the ends basal area is half way: 2.0 in2 at 14 in. Beyond them
	// the ring stays.
	middle := must[units.Length](t)(tapping.LeastGrowth(14 * units.Inch))
	if area := must[units.Area](t)(tapping.BasalAreaGrowth(14*units.Inch, middle)); !near(area.SquareInches(), 2) {
		t.Errorf("14 in needs %v", area)
	}
	for in, end := range map[float64]float64{4: 10, 40: 18} {
		got, want := must[units.Length](t)(tapping.UsualGrowth(units.Inches(in))), must[units.Length](t)(tapping.UsualGrowth(units.Inches(end)))
		if !near(float64(got), float64(want)) {
			t.Errorf("%v in grows %v, %v in %v", in, got, end, want)
		}
	}
}

// The usual trunk grows more than the least; the model of the belt asks for about
// the published least.
func TestGrowthOrder(t *testing.T) {
	for dbh := units.Inch; dbh < 60*units.Inch; dbh += units.Inch {
		least, usual := must[units.Length](t)(tapping.LeastGrowth(dbh)), must[units.Length](t)(tapping.UsualGrowth(dbh))
		if !(least > 0 && usual > least) {
			t.Errorf("%v: %v of %v", dbh, usual, least)
		}
	}
}

// 38 and 40 in five years apart: 2/(10 pi) = 0.0637 in. A quarter inch twice is
// 0.3536 in of 2: 17.7 percent. Without growth nothing is known.
func TestGrowthFromGirths(t *testing.T) {
	g := must[tapping.GrowthRead](t)(tapping.GrowthFromGirths(38*units.Inch, 40*units.Inch, 5, units.Inch/4))
	if !(math.Abs(g.PerYear.Inches()-0.0637) < 5e-5) || !(math.Abs(g.DoubtShare().Percents()-17.7) < 0.05) {
		t.Errorf("%v, %v", g.PerYear, g.DoubtShare())
	}
	g = must[tapping.GrowthRead](t)(tapping.GrowthFromGirths(38*units.Inch, 38*units.Inch, 5, units.Inch/4))
	if g.PerYear != 0 || g.DoubtShare() != units.Whole {
		t.Errorf("%+v", g)
	}
	// A trunk grown by so much is read back.
	r := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		dbh, growth, years := units.Inches(4+40*r.Float64()), units.Inches(0.2*r.Float64()), 1+r.IntN(60)
		first := must[units.Length](t)(tapping.GirthFromDiameter(dbh))
		second := must[units.Length](t)(tapping.GirthFromDiameter(dbh + 2*growth*units.Length(years)))
		if g := must[tapping.GrowthRead](t)(tapping.GrowthFromGirths(first, second, years, 0)); !(math.Abs(float64(g.PerYear-growth)) < 1e-13) || g.Doubt != 0 {
			t.Fatalf("%v of %v", g, growth)
		}
	}
}

func TestAheadRefuses(t *testing.T) {
	trunk := healthy(t, 15)
	change := func(f func(*tapping.AheadPlan)) error {
		p := aheadPlan(t, 0.05, 20)
		f(&p)
		_, err := trunk.Ahead(p)
		return err
	}
	checkRange(t, "growth", 0, float64(units.Inch), func(x float64) error {
		return change(func(p *tapping.AheadPlan) { p.Growth = units.Length(x) })
	})
	checkRange(t, "band", float64(units.Inch), float64(20*units.Foot), func(x float64) error {
		return change(func(p *tapping.AheadPlan) { p.Band = units.Length(x) })
	})
	for _, years := range []int{0, 101} {
		if err := change(func(p *tapping.AheadPlan) { p.Years = years }); !errors.Is(err, units.ErrRange) {
			t.Errorf("%d years: %v", years, err)
		}
	}
	for _, before := range []int{-1, 201} {
		if err := change(func(p *tapping.AheadPlan) { p.Before = before }); !errors.Is(err, units.ErrRange) {
			t.Errorf("%d years before: %v", before, err)
		}
	}
	if err := change(func(p *tapping.AheadPlan) { p.Hole = tapping.Hole{} }); !errors.Is(err, units.ErrRange) {
		t.Errorf("no hole: %v", err)
	}
	if err := change(func(p *tapping.AheadPlan) { p.Guideline = tapping.Guideline{} }); !errors.Is(err, tapping.ErrNotCovered) {
		t.Errorf("no guideline: %v", err)
	}
	first := float64(38 * units.Inch)
	checkRange(t, "second", first, first+2*math.Pi*3*float64(units.Inch), func(x float64) error {
		_, err := tapping.GrowthFromGirths(units.Length(first), units.Length(x), 3, 0)
		return err
	})
	checkRange(t, "first", float64(units.Inch), 5*math.Pi, func(x float64) error {
		_, err := tapping.GrowthFromGirths(units.Length(x), units.Length(x), 3, 0)
		return err
	})
	checkRange(t, "tape", 0, float64(2*units.Inch), func(x float64) error {
		_, err := tapping.GrowthFromGirths(units.Length(first), units.Length(first), 3, units.Length(x))
		return err
	})
	for _, years := range []int{0, 201} {
		if _, err := tapping.GrowthFromGirths(units.Length(first), units.Length(first), years, 0); !errors.Is(err, units.ErrRange) {
			t.Errorf("%d years: %v", years, err)
		}
	}
	checkRange(t, "dbh", 0, 5, func(x float64) error {
		_, err := tapping.UsualGrowth(units.Length(x))
		return err
	})
	checkRange(t, "dbh", 0, 5, func(x float64) error {
		_, err := tapping.LeastGrowth(units.Length(x))
		return err
	})
}

// A stain is 15 to 150 times its hole, about 50 by the later source; the ratio of the
// belt lies near it, and one of 220, which a birch has, outside.
func TestStainRatioLiesInTheSpread(t *testing.T) {
	for _, r := range must[*check.Table](t)(check.Load("tree-growth-facts")).Rows {
		if r.Name() != "wood spoilt by one hole over the hole" {
			continue
		}
		if low, high := r.Float("low"), r.Float("high"); !(tapping.StainRatio >= low && tapping.StainRatio <= high) {
			t.Errorf("%v is not %v to %v", tapping.StainRatio, low, high)
		}
		return
	}
	t.Error("the table has lost its row")
}

// Ten thousand trunks for twenty years: the goal is 10 s.
func BenchmarkAhead10000(b *testing.B) {
	p := aheadPlan(b, 0.06, 20)
	trunks := make([]tapping.Trunk, 10_000)
	for i := range trunks {
		trunks[i] = healthy(b, 8+float64(i%200)/10)
	}
	for b.Loop() {
		for _, trunk := range trunks {
			if _, err := trunk.Ahead(p); err != nil {
				b.Fatal(err)
			}
		}
	}
}
