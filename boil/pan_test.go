package boil

import (
	"math"
	"slices"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// near tells whether a and b agree within a share of b.
func near(a, b, share float64) bool { return math.Abs(a-b) <= share*math.Abs(b) }

func mustRun(t testing.TB, r Rig, d Day) Outcome {
	t.Helper()
	o, err := r.Run(d)
	if err != nil {
		t.Fatal(err)
	}
	checkConserved(t, d, o)
	return o
}

// times returns when each event first happened.
func times(t testing.TB, r Rig, d Day) (Outcome, map[Event]time.Duration) {
	t.Helper()
	at := map[Event]time.Duration{}
	o, err := r.Trace(d, 0, func(m Moment) bool {
		if _, seen := at[m.Event]; !seen {
			at[m.Event] = m.At
		}
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	checkConserved(t, d, o)
	return o, at
}

// kettle is an invented pan of one compartment, deep enough to finish in.
func kettle() Rig {
	return Rig{
		Compartments: []Compartment{{Area: 4 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: 0.2 * units.Inch}},
		Heat:         20 * units.Kilowatt,
		Draw:         DrawOff{At: 66},
	}
}

// TestKettle follows a kettle by a way of its own: the heat that warms the sap,
// and then the integral of the latent heat over the water that leaves, as the
// strength climbs.
func TestKettle(t *testing.T) {
	p := 1 * units.Atmosphere
	r := kettle()
	fill := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	sap := Sap{Volume: fill * 0.9, Brix: 3, Temperature: units.Fahrenheit(40)}
	d := Day{Pressure: p, Sap: []Sap{sap}, Out: 48 * time.Hour}
	o, at := times(t, r, d)
	if o.End != Finished {
		t.Fatalf("the day ended with %v", o.End)
	}
	rho, err := density.Solution(sap.Brix, sap.Temperature)
	if err != nil {
		t.Fatal(err)
	}
	m := float64(rho.Mass(sap.Volume))
	sugar := m * sap.Brix.Fraction()
	h := func(b float64) boiling {
		l, err := solveBoiling(units.Brix(100*b), p)
		if err != nil {
			t.Fatal(err)
		}
		return l
	}
	warm, err := heatBetween(sap.Brix.Fraction(), sap.Temperature.Celsius(), h(sap.Brix.Fraction()).point)
	if err != nil {
		t.Fatal(err)
	}
	// Simpson's rule over the strength: the mass is sugar/b.
	const n = 2000
	latent := 0.0
	b0, b1 := sap.Brix.Fraction(), r.Draw.At.Fraction()
	for i := range n + 1 {
		b := b0 + (b1-b0)*float64(i)/n
		w := 2.0
		switch {
		case i == 0 || i == n:
			w = 1
		case i%2 == 1:
			w = 4
		}
		latent += w * (b1 - b0) / n / 3 * h(b).latent * sugar / (b * b)
	}
	if got, want := o.Heat.Joules(), m*warm+latent; !near(got, want, 1e-6) {
		t.Errorf("heat %v J, want %v", got, want)
	}
	if got, want := at[Boils].Seconds(), m*warm/float64(r.Heat); !near(got, want, 1e-6) {
		t.Errorf("boils after %v s, want %v", got, want)
	}
	if got, want := float64(o.Syrup.Mass()), sugar/b1; !near(got, want, 1e-8) {
		t.Errorf("syrup %v kg, want %v", got, want)
	}
	if o.Held.Mass() != 0 || len(o.Draws) != 1 {
		t.Errorf("held %v kg after %d draws", o.Held.Mass(), len(o.Draws))
	}
}

// TestToppedUp fills a kettle three times over: the level holds until the sap is
// gone, and all of it comes off as syrup.
func TestToppedUp(t *testing.T) {
	r := kettle()
	full := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	d := Day{Pressure: 98 * units.Kilopascal, Out: 48 * time.Hour,
		Sap: []Sap{{Volume: 3 * full, Brix: 2, Temperature: units.Celsius(5)}}}
	o, err := r.Trace(d, 10*time.Minute, func(m Moment) bool {
		if m.SapLeft() > 0 && !near(float64(m.Volume(0)), float64(full), 1e-6) {
			t.Errorf("%v: level %v, want %v", m.At, m.Volume(0), full)
		}
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	checkConserved(t, d, o)
	if o.End != Finished || !near(float64(o.Syrup.Brix()), 66, 1e-6) {
		t.Errorf("%v with syrup of %v", o.End, o.Syrup.Brix())
	}
}

// TestSteadyReached holds a long day to the steady state, and that to the
// balances.
func TestSteadyReached(t *testing.T) {
	r, d := partitioned(), longDay()
	d.Sap[0].Volume *= 10
	d.Out = 96 * time.Hour
	o := mustRun(t, r, d)
	s, err := r.Steady(d.Sap[0], d.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	for i, b := range s.Brix {
		if !near(float64(o.Held[i].Brix()), float64(b), 1e-6) {
			t.Errorf("compartment %d: %v after a long day, steady %v", i, o.Held[i].Brix(), b)
		}
		flow := float64(s.Feed) * float64(d.Sap[0].Brix) / float64(s.Outflow[i])
		if !near(float64(b), flow, 1e-12) {
			t.Errorf("compartment %d: %v, sugar over outflow %v", i, b, flow)
		}
	}
	if got := float64(s.Syrup + s.Evaporation); !near(got, float64(s.Feed), 1e-12) {
		t.Errorf("out %v, in %v", got, s.Feed)
	}
	if !near(float64(s.Brix[len(s.Brix)-1]), float64(r.Draw.At), 1e-12) {
		t.Errorf("drawn at %v", s.Brix)
	}
	q, err := r.HeatFor(s.Evaporation, d.Sap[0], d.Pressure)
	if err != nil || !near(float64(q), float64(r.Heat), 1e-12) {
		t.Errorf("heat for %v: %v, %v, want %v", s.Evaporation, q, err, r.Heat)
	}
}

// TestPlugFlowLimit holds many even compartments to the formula, which few
// compartments meet at their outlets alone.
func TestPlugFlowLimit(t *testing.T) {
	p := 1 * units.Atmosphere
	hot, err := Water(p)
	if err != nil {
		t.Fatal(err)
	}
	sap := Sap{Brix: 2, Temperature: hot}
	worst := map[int]float64{}
	for _, n := range []int{1, 4, 25, 100} {
		r := Rig{Heat: 100 * units.Kilowatt, Draw: DrawOff{At: 66}}
		for range n {
			r.Compartments = append(r.Compartments, Compartment{Area: 1 * units.SquareMeter, Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch})
		}
		s, err := r.Steady(sap, p)
		if err != nil {
			t.Fatal(err)
		}
		before := float64(s.Feed)
		done := 0.0
		for i, b := range s.Brix {
			done += before - float64(s.Outflow[i])
			before = float64(s.Outflow[i])
			share := units.FractionShare(min(1, done/float64(s.Evaporation)))
			at, err := PlugFlow(sap.Brix, r.Draw.At, share)
			if err != nil || !near(float64(b), float64(at), 1e-9) {
				t.Errorf("%d compartments: %v at the outlet of %d, plug flow %v, %v", n, b, i, at, err)
			}
			// In the middle of a compartment plug flow is thinner than its mix.
			mid, err := PlugFlow(sap.Brix, r.Draw.At, units.FractionShare((float64(i)+0.5)/float64(n)))
			if err != nil {
				t.Fatal(err)
			}
			worst[n] = max(worst[n], float64(b-mid)/float64(b))
		}
	}
	if !(worst[1] > worst[4] && worst[4] > worst[25] && worst[25] > worst[100]) {
		t.Errorf("not approached: %v", worst)
	}
}

func TestHistory(t *testing.T) {
	fromSap := longDay()
	_, sap := times(t, partitioned(), fromSap)

	fromWater := longDay()
	water, err := partitioned().Fill(0, units.Fahrenheit(60), fromWater.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	fromWater.Start = water
	_, thin := times(t, partitioned(), fromWater)

	sweet := longDay()
	sweet.Start = mustRun(t, partitioned(), fromSap).Held
	_, thick := times(t, partitioned(), sweet)
	if !(thick[DrawOpens] < sap[DrawOpens] && sap[DrawOpens] < thin[DrawOpens]) {
		t.Errorf("first syrup from the sweet after %v, from sap %v, from water %v", thick[DrawOpens], sap[DrawOpens], thin[DrawOpens])
	}
}

// TestLowLevel holds the moment of the low level to the balance: what the pan
// holds between full and safe, and the sap.
func TestLowLevel(t *testing.T) {
	r, d := partitioned(), longDay()
	d.Sap[0].Volume = 100 * units.USGallon
	o, at := times(t, r, d)
	if o.End != Low || !o.WasLow || o.LowAt != at[Low] || at[SapOut] >= at[Low] {
		t.Fatalf("%+v at %v", o, at)
	}
	h, err := newHot("test", d.Pressure)
	if err != nil {
		t.Fatal(err)
	}
	for i, l := range o.Held {
		c := r.Compartments[i]
		want := float64(c.Area.Volume(c.Depth))
		if i == 0 {
			want = float64(c.Area.Volume(c.SafeDepth))
		}
		if got := float64(l.Mass()) * h.at(l.Brix().Fraction()).volume; !near(got, want, 1e-5) {
			t.Errorf("compartment %d holds %v m3, want %v", i, got, want)
		}
	}

	// With more sap to come the fire waits for it.
	d.Sap = append(d.Sap, Sap{At: 9 * time.Hour, Volume: 100 * units.USGallon, Brix: 2})
	o, at = times(t, r, d)
	if at[Banked] != at[Low] || at[Rekindled] != 9*time.Hour {
		t.Errorf("banked at %v, low at %v, rekindled at %v", at[Banked], at[Low], at[Rekindled])
	}
	if idle := o.Ended - o.Burned; !near(idle.Seconds(), (9*time.Hour - at[Banked]).Seconds(), 1e-9) {
		t.Errorf("idle for %v", idle)
	}
}

func TestPails(t *testing.T) {
	r := kettle()
	r.Feed = PailFeed
	r.Pail = 2 * units.USGallon
	r.Draw.Until = 60
	full := r.Compartments[0].Area.Volume(r.Compartments[0].Depth)
	d := Day{Pressure: 98 * units.Kilopascal, Out: 48 * time.Hour,
		Sap: []Sap{{Volume: full + 21*units.USGallon, Brix: 2, Temperature: units.Celsius(5)}}}
	var least, most units.Volume = 1, 0
	o, err := r.Trace(d, time.Minute, func(m Moment) bool {
		if m.SapLeft() > 0 {
			least, most = min(least, m.Volume(0)), max(most, m.Volume(0))
		}
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	checkConserved(t, d, o)
	// Cold sap swells by 4.8 percent on the way to the boil: the first filling
	// takes 19 of the 20 gallons that the kettle holds, and 22 are left for pails.
	if o.Pails != 11 {
		t.Errorf("%d pails", o.Pails)
	}
	// In the minute between two readings half a liter boils off.
	if low := full - r.Pail; least < low || least > low+0.6*units.Liter || most > full*1.01 {
		t.Errorf("level between %v and %v", least, most)
	}
}

func TestReverse(t *testing.T) {
	r, d := partitioned(), longDay()
	d.Reverse = []time.Duration{8 * time.Hour}
	o := mustRun(t, r, d)
	if first, last := o.Held[0].Brix(), o.Held[4].Brix(); !(first > last) {
		t.Errorf("sweet end %v, sap end %v", first, last)
	}
	// Two changes at once are none.
	d.Reverse = append(d.Reverse, 8*time.Hour)
	twice := mustRun(t, r, d)
	d.Reverse = nil
	never := mustRun(t, r, d)
	if !near(float64(twice.Held.Sugar()), float64(never.Held.Sugar()), 1e-6) {
		t.Errorf("held %v and %v", twice.Held.Sugar(), never.Held.Sugar())
	}
	// A rig turned round from the first is a rig built the other way.
	d.Reverse = []time.Duration{0}
	turned := mustRun(t, r, d)
	d.Reverse = nil
	built := partitioned()
	slices.Reverse(built.Compartments)
	mirror := mustRun(t, built, d)
	if !near(float64(turned.Syrup.Sugar), float64(mirror.Syrup.Sugar), 1e-6) {
		t.Errorf("drawn %v and %v", turned.Syrup.Sugar, mirror.Syrup.Sugar)
	}
}

func TestPreheater(t *testing.T) {
	r, d := partitioned(), longDay()
	plain := mustRun(t, r, d)
	r.PreheatTo = units.Fahrenheit(190)
	warm := mustRun(t, r, d)
	gain := float64(warm.Evaporated/plain.Evaporated) - 1
	// The ceiling is the sensible share of the heat, about 15 percent, of which
	// 190 F instead of 212 leaves seven eighths.
	if !(gain > 0.10 && gain < 0.18) {
		t.Errorf("a preheater brings %.1f percent", 100*gain)
	}
}

// TestValve holds a draw between two strengths to its rate and its limits.
func TestValve(t *testing.T) {
	r, d := partitioned(), longDay()
	r.Draw = DrawOff{At: 66.9, Until: 65, Rate: 0.5 * units.USGallonPerMinute}
	o := mustRun(t, r, d)
	if len(o.Draws) < 2 {
		t.Fatalf("%d draws", len(o.Draws))
	}
	h, err := newHot("test", d.Pressure)
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

func TestTraceStops(t *testing.T) {
	n := 0
	o, err := partitioned().Trace(longDay(), time.Hour, func(m Moment) bool {
		n++
		return m.At < 3*time.Hour || m.Event == FireOut
	})
	if err != nil || o.End != Reading || o.Ended > 4*time.Hour {
		t.Errorf("%v after %v, %v", o.End, o.Ended, err)
	}
	checkConserved(t, longDay(), o)
}

func TestTraceReadings(t *testing.T) {
	d := longDay()
	d.Light = 90 * time.Minute
	d.Out = d.Light + 6*time.Hour
	want := d.Light
	_, err := partitioned().Trace(d, 7*time.Minute, func(m Moment) bool {
		if m.Event != Reading {
			return true
		}
		if (m.At - want).Abs() > time.Microsecond {
			t.Errorf("reading at %v, want %v", m.At, want)
		}
		want += 7 * time.Minute
		return true
	})
	if err != nil || want != d.Light+52*7*time.Minute {
		t.Errorf("next reading %v, %v", want, err)
	}
}

func TestZeroMoment(t *testing.T) {
	var m Moment
	if m.Len() != 0 || m.Liquid(0) != (Liquid{}) || m.Volume(1) != 0 || m.Drawn() != (Liquid{}) || m.Evaporated() != 0 || m.SapLeft() != 0 {
		t.Errorf("the zero moment holds something: %+v", m)
	}
}

func TestEventNames(t *testing.T) {
	seen := map[string]bool{}
	for e := Reading; e <= FireOut; e++ {
		if s := e.String(); s == "" || seen[s] {
			t.Errorf("event %d is called %q", e, s)
		} else {
			seen[s] = true
		}
	}
	if s := (FireOut + 1).String(); s != "event 16" {
		t.Errorf("%q", s)
	}
}
