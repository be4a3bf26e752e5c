package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// TestValve holds a draw between two strengths to its rate and its limits.
func TestValve(t *testing.T) {
	r, d := partitioned(), longDay()
	r.Draw = DrawOff{At: 66.9, Until: 65, Rate: 0.5 * units.USGallonPerMinute}
	o := mustRun(t, r, d)
	if len(o.Draws) < 2 {
		t.Fatalf("%d draws", len(o.Draws))
	}
	h, err := newHot("test", "pressure", d.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	for _, x := range o.Draws[:len(o.Draws)-1] {
		if b := x.Brix(); b < 65 || b > 66.9 {
			t.Errorf("drawn at %v", b)
		}
		volume := float64(x.Mass()) * h.at(x.Brix().Fraction()).volume
		if got := volume / (x.To - x.From).Seconds(); !near(got, float64(r.Draw.Rate), 1e-4) {
			t.Errorf("flow %v m3/s, want %v", got, float64(r.Draw.Rate))
		}
	}
}

// TestValveAlone holds the valve to the rate that it has when none is given.
func TestValveAlone(t *testing.T) {
	r, d := partitioned(), longDay()
	r.Draw = DrawOff{At: 66.9, Until: 65}
	plain := mustRun(t, r, d)
	last := r.Compartments[4]
	r.Draw.Rate = (last.Area.Volume(last.Depth) / 12).Per(time.Minute)
	given := mustRun(t, r, d)
	if len(plain.Draws) == 0 || !near(float64(plain.Syrup.Sugar), float64(given.Syrup.Sugar), 1e-9) {
		t.Errorf("%v of sugar drawn, %v at the rate given", plain.Syrup.Sugar, given.Syrup.Sugar)
	}
}

// TestThickFeed sends the sweet end of the pan through the draw: a thin stream
// cannot hold the strength against thicker liquid, and the valve opens wide.
func TestThickFeed(t *testing.T) {
	r, d := partitioned(), longDay()
	r.Draw.At, r.Draw.Rate = 40, 1*units.USGallonPerMinute
	start, err := r.Fill(60, units.Celsius(95), d.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	d.Start = start
	o := mustRun(t, r, d)
	if len(o.Draws) != 1 || o.Syrup.Brix() < 40 {
		t.Errorf("%d draws of %v", len(o.Draws), o.Syrup.Brix())
	}
	if got := o.Held[4].Brix(); !near(float64(got), 40, 1e-6) {
		t.Errorf("%v at the end of the day", got)
	}
}

// TestContinuous nudges every input of a day. With a thin stream nothing steps;
// with a valve the sugar drawn and held together does not.
func TestContinuous(t *testing.T) {
	const nudge = 1e-6
	type pan struct {
		rig Rig
		day Day
	}
	nudges := map[string]func(p *pan){
		"heat":     func(p *pan) { p.rig.Heat *= 1 + nudge },
		"area":     func(p *pan) { p.rig.Compartments[1].Area *= 1 + nudge },
		"depth":    func(p *pan) { p.rig.Compartments[4].Depth *= 1 + nudge },
		"safe":     func(p *pan) { p.rig.Compartments[0].SafeDepth *= 1 + nudge },
		"preheat":  func(p *pan) { p.rig.PreheatTo = units.Celsius(50 * (1 + nudge)) },
		"draw":     func(p *pan) { p.rig.Draw.At *= 1 + nudge },
		"volume":   func(p *pan) { p.day.Sap[0].Volume *= 1 + nudge },
		"brix":     func(p *pan) { p.day.Sap[0].Brix *= 1 + nudge },
		"warmth":   func(p *pan) { p.day.Sap[1].Temperature = units.Celsius(5 * (1 + nudge)) },
		"arrival":  func(p *pan) { p.day.Sap[1].At += 10 * time.Millisecond },
		"pressure": func(p *pan) { p.day.Pressure *= 1 + nudge },
		"out":      func(p *pan) { p.day.Out += 10 * time.Millisecond },
		"reverse":  func(p *pan) { p.day.Reverse[0] += 10 * time.Millisecond },
	}
	base := func(until units.Brix) *pan {
		p := &pan{partitioned(), longDay()}
		p.rig.Draw.Until = until
		p.rig.PreheatTo = units.Celsius(50)
		p.day.Sap = []Sap{
			{Volume: 200 * units.USGallon, Brix: 2, Temperature: units.Celsius(5)},
			{At: 4 * time.Hour, Volume: 250 * units.USGallon, Brix: 2.5, Temperature: units.Celsius(5)},
		}
		p.day.Reverse = []time.Duration{7 * time.Hour}
		return p
	}
	for _, until := range []units.Brix{0, 66} {
		p := base(until)
		was := mustRun(t, p.rig, p.day)
		for name, change := range nudges {
			p := base(until)
			change(p)
			is := mustRun(t, p.rig, p.day)
			for _, q := range []struct {
				what   string
				a, b   units.Mass
				valves bool // continuous with a valve too
			}{
				{"sugar", was.Syrup.Sugar + was.Held.Sugar() + was.Sweet, is.Syrup.Sugar + is.Held.Sugar() + is.Sweet, true},
				{"water", was.Evaporated + was.SapLeft + was.Held.Mass() + was.Syrup.Water, is.Evaporated + is.SapLeft + is.Held.Mass() + is.Syrup.Water, true},
				{"heat", units.Mass(was.Heat), units.Mass(is.Heat), true},
				{"drawn", was.Syrup.Sugar, is.Syrup.Sugar, false},
				{"evaporated", was.Evaporated, is.Evaporated, false},
			} {
				// No total answers to a nudge with more than a hundred times as much.
				if (until == 0 || q.valves) && !near(float64(q.a), float64(q.b), 100*nudge) {
					t.Errorf("until %v, %s nudged: %s %v, was %v", until, name, q.what, q.b, q.a)
				}
			}
		}
	}
}
