package main

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// The finger on the trunk: places all over it, against the planner.
func TestFingerNumbers(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("tree")
	p.ask("taps", fields{"girth": "60"})
	girth := 60 * units.Inch
	d := must(tapping.DiameterFromGirth(girth))
	hole := must(tapping.NewHole(0.3125*units.Inch, 1.5*units.Inch, 0))
	reach := must(tapping.ReachByHand(30*units.Inch, 54*units.Inch))
	year := time.Now().Year()
	planner := must(tapping.NewPlanner(d, year, 0, reach, hole, tapping.DefaultDistances()))
	record := []tapping.OldHole{
		{Position: must(tapping.PositionAlong(10*units.Inch, girth, 40*units.Inch)), Year: year - 1, Hole: hole},
		{Position: must(tapping.PositionAlong(48*units.Inch, girth, 46*units.Inch)), Year: year - 3, Hole: hole},
	}
	eval[bool](p, fmt.Sprintf("(state.holes = [{year: %d, along: '10 in', height: '40 in'}, {year: %d, along: '48 in', height: '46 in'}], true)", year-1, year-3))
	r := rand.New(rand.NewPCG(3, 4))
	clear := 0
	for range 60 {
		x, y := r.Float64(), r.Float64()
		got := eval[shown](p, fmt.Sprintf("%s; state.finger = {x: %g, y: %g}; answer(open); tRead('hole')", helpers, x, y))
		// The drawing shows 6 in more than the reach, above and below.
		at := tapping.Position{At: units.Turn * units.Angle(x), Height: 60*units.Inch - 36*units.Inch*units.Length(y)}
		err := planner.Check(record, year, at)
		if (err == nil) != (got.Level == "good") || err != nil && !errors.Is(err, tapping.ErrNoRoom) {
			t.Fatalf("%v: %v, shown %+v", at, err, got)
		}
		if err == nil {
			clear++
		} else if want := "Not here: " + units.Reason(err, units.US); got.Verdict != want {
			t.Errorf("%q, want %q", got.Verdict, want)
		}
		if want := at.Along(girth).Text(units.Inch, 1); got.Rows["along"] != want {
			t.Errorf("along %s, want %s", got.Rows["along"], want)
		}
		// The nearest by hand: over the bark, the shorter way round.
		least, side, up := math.Inf(1), 0.0, 0.0
		for _, h := range record {
			a := math.Abs(at.Along(girth).Inches() - h.Along(girth).Inches())
			a = min(a, 60-a)
			b := math.Abs(at.Height.Inches() - h.Height.Inches())
			if math.Hypot(a, b) < least {
				least, side, up = math.Hypot(a, b), a, b
			}
		}
		if got.Rows["side"] != fmt.Sprintf("%.1f in", side) || got.Rows["up"] != fmt.Sprintf("%.1f in", up) {
			t.Errorf("%v, want %.1f and %.1f", got.Rows, side, up)
		}
	}
	if clear == 0 || clear == 60 {
		t.Errorf("%d of 60 places clear: the test tells nothing", clear)
	}
	p.fine()
}

func TestBookNumbers(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("book")
	r := rand.New(rand.NewPCG(5, 6))
	var s yield.Season
	s.SapMeasured, s.SyrupMeasured = yield.Measured{Volume: 5, Brix: 0.2}, yield.Measured{Volume: 2, Brix: 0.5}
	h := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	for range 20 {
		sapText, sap := gallons(r, units.US, 20, 90)
		readsText, reads := strength(r, 1.5, 3)
		coldText, cold := degrees(r, units.US, 33, 60)
		syrupText, syrup := gallons(r, units.US, 0.3, 2)
		p.ask("line", fields{"sap": sapText, "reads": readsText, "cold": coldText, "syrup": syrupText, "wood": "3"})
		eval[bool](p, "(document.getElementById('write').click(), true)")
		s.Sap = append(s.Sap, must(sugar.NewLot(sap, must(h.Brix(reads, cold)), units.Celsius(20))))
		s.Syrup = append(s.Syrup, must(sugar.NewLot(syrup, 66.9, units.Celsius(20))))
		a := must(s.Account())
		got := p.ask("season", nil).Rows
		wanted := want{"sap": a.Sap.TextIn(units.US, 3), "brix": a.SapBrix.Text(2), "sugar": with(a.SugarIn.TextIn(units.US, 3), a.SugarInLimits, units.US, 2),
			"syrup": a.Syrup.TextIn(units.US, 3), "ratio": fmt.Sprintf("%.1f to 1", a.Ratio), "loads": fmt.Sprint(3 * len(s.Sap))}
		for key, text := range wanted {
			if got[key] != text {
				t.Fatalf("%s is %q, the library says %q", key, got[key], text)
			}
		}
	}
	p.fine()
}
