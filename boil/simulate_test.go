package boil

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// partitioned is an invented pan of five compartments.
func partitioned() Rig {
	c := func(squareFeet float64) Compartment {
		return Compartment{Area: units.SquareFeet(squareFeet), Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch}
	}
	return Rig{
		Compartments: []Compartment{c(8), c(8), c(3), c(3), c(2)},
		Heat:         100 * units.Kilowatt,
		Draw:         DrawOff{At: 66.9},
	}
}

// longDay is twelve hours of fire with more sap than they take.
func longDay() Day {
	return Day{
		Pressure: 98 * units.Kilopascal,
		Out:      12 * time.Hour,
		Sap:      []Sap{{Volume: 800 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}},
	}
}

// randomRig and randomDay draw from all that a rig and a day may be.
func randomRig(r *rand.Rand) Rig {
	var rig Rig
	n := 1 + r.IntN(6)
	size := math.Exp(r.Float64()*8 - 4)
	for range n {
		depth := units.Inches(0.5 + 10*r.Float64()*r.Float64())
		rig.Compartments = append(rig.Compartments, Compartment{
			Area:      units.SquareFeet(size * (0.3 + r.Float64())),
			Depth:     depth,
			SafeDepth: depth * units.Length(0.05+0.8*r.Float64()),
		})
	}
	area := 0.0
	for _, c := range rig.Compartments {
		area += float64(c.Area)
	}
	rig.Heat = units.Watts(area * 5e4 * r.Float64())
	if r.IntN(3) == 0 {
		left := 100.0
		for i := range rig.Compartments {
			share := left * r.Float64()
			if i == n-1 {
				share = left
			}
			rig.Compartments[i].Fire = units.Share(share)
			left -= share
		}
	}
	if r.IntN(3) == 0 {
		rig.Feed = PailFeed
		rig.Pail = units.Volume(math.Inf(1))
		for _, c := range rig.Compartments {
			rig.Pail = min(rig.Pail, c.Area.Volume(c.Depth-c.SafeDepth))
		}
		rig.Pail *= units.Volume(0.5 + 0.5*r.Float64())
	}
	if r.IntN(3) == 0 {
		rig.PreheatTo = units.Celsius(100 * r.Float64())
	}
	if r.IntN(8) > 0 {
		rig.Draw.At = units.Brix(10 + 60*r.Float64())
		if r.IntN(2) == 0 || rig.Feed == PailFeed {
			rig.Draw.Until = rig.Draw.At * units.Brix(0.9+0.09*r.Float64())
		}
		if r.IntN(2) == 0 {
			least := units.Volume(math.Inf(1))
			for _, c := range rig.Compartments {
				least = min(least, c.Area.Volume(c.Depth))
			}
			rig.Draw.Rate = least.Per(time.Duration(10+600*r.Float64()) * time.Second)
		}
	}
	return rig
}

func randomDay(r *rand.Rand, rig Rig) Day {
	hours := func(n float64) time.Duration { return time.Duration(n * r.Float64() * float64(time.Hour)) }
	d := Day{Pressure: units.Kilopascals(60 + 45*r.Float64()), Light: hours(4)}
	d.Out = d.Light + hours(14)
	perHour := float64(rig.Heat) * 3600 / boilAway
	for range r.IntN(5) {
		d.Sap = append(d.Sap, Sap{
			At:          hours(12),
			Volume:      units.Volume(perHour * 8 * r.Float64() * r.Float64()),
			Brix:        units.Brix(12 * r.Float64() * r.Float64()),
			Temperature: units.Celsius(30 * r.Float64()),
		})
	}
	if r.IntN(2) == 0 {
		start, err := rig.Fill(units.Brix(40*r.Float64()*r.Float64()), units.Celsius(100*r.Float64()), d.Pressure)
		if err == nil {
			d.Start = start
		}
	}
	for range r.IntN(3) {
		d.Reverse = append(d.Reverse, hours(14))
	}
	return d
}

// brought returns the sugar and the water of a day.
func brought(t testing.TB, d Day) (sugar, water float64) {
	t.Helper()
	for _, s := range d.Sap {
		rho, err := density.Solution(s.Brix, s.Temperature)
		if err != nil {
			t.Fatal(err)
		}
		m := rho.Mass(s.Volume)
		sugar += float64(s.Brix.Sugar(m))
		water += float64(m - s.Brix.Sugar(m))
	}
	for _, l := range d.Start {
		sugar += float64(l.Sugar)
		water += float64(l.Water)
	}
	return sugar, water
}

// checkConserved holds the outcome of a day to what the day brought.
func checkConserved(t testing.TB, d Day, o Outcome) {
	t.Helper()
	sugar, water := brought(t, d)
	gotSugar := float64(o.Syrup.Sugar + o.Held.Sugar() + o.Sweet)
	gotWater := float64(o.Syrup.Water + o.Held.Mass() - o.Held.Sugar() + o.Evaporated + o.SapLeft - o.Sweet)
	if !(math.Abs(gotSugar-sugar) <= 1e-9*sugar) {
		t.Errorf("sugar %v, brought %v", gotSugar, sugar)
	}
	if !(math.Abs(gotWater-water) <= 1e-9*water) {
		t.Errorf("water %v, brought %v", gotWater, water)
	}
}

func TestConserved(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	ends := map[Event]int{}
	days := 2000
	if testing.Short() {
		days = 300
	}
	for i := range days {
		rig := randomRig(r)
		day := randomDay(r, rig)
		last, most := math.NaN(), units.Mass(0)
		o, err := rig.Trace(day, 20*time.Minute, func(m Moment) bool {
			all := float64(m.Drawn().Mass() + m.Evaporated() + m.SapLeft())
			for i := range m.Len() {
				all += float64(m.Liquid(i).Mass())
			}
			if m.Event != SapIn && !(math.Abs(all-last) <= 1e-9*all) && !math.IsNaN(last) {
				t.Errorf("%d: %v kg at %v (%v), %v before", i, all, m.At, m.Event, last)
			}
			last = all
			switch m.Event {
			case Boils, OffBoil, Low, TooThick:
				if m.Compartment < 0 || m.Compartment >= m.Len() {
					t.Errorf("%d: %v of compartment %d", i, m.Event, m.Compartment)
				} else if b := m.Liquid(m.Compartment).Brix(); m.Event == TooThick && !near(float64(b), 75, 1e-6) {
					t.Errorf("%d: too thick at %v", i, b)
				}
			default:
				if m.Compartment != -1 {
					t.Errorf("%d: %v speaks of compartment %d", i, m.Event, m.Compartment)
				}
			}
			if m.Event == SapIn {
				most = max(most, m.SapLeft())
			}
			if m.Event == SapOut && m.SapLeft() > 1e-9 {
				t.Errorf("%d: sap out with %v left", i, m.SapLeft())
			}
			if m.Event == Finished && m.Len() != 1 { // only a kettle is emptied
				t.Errorf("%d: %d compartments finish", i, m.Len())
			}
			return true
		})
		if err != nil {
			// The smallest pail of a random rig may be too small for its largest pan.
			if !errors.Is(err, units.ErrRange) || rig.Feed != PailFeed {
				t.Errorf("%d: %v", i, err)
			}
			continue
		}
		ends[o.End]++
		checkConserved(t, day, o)
		if !(o.Backlog >= most*(1-1e-12)) {
			t.Errorf("%d: a backlog of %v at most, yet %v stood in the tank", i, o.Backlog, most)
		}
		if t.Failed() {
			t.Fatalf("%d: %+v\n%+v\n%+v", i, rig, day, o)
		}
		if o.Burned < 0 || o.Burned > day.Out-day.Light || o.Evaporated < 0 {
			t.Errorf("%d: %+v", i, o)
		}
	}
	for _, e := range []Event{FireOut, Low, Finished, TooThick} {
		if ends[e] == 0 {
			t.Errorf("no day ended with %v: %v", e, ends)
		}
	}
	t.Log(ends)
}

// Compartments without fire pass the sap on as cold as it comes, and the last
// has to warm it: once all runs evenly, the fire makes of its heat what the
// balance in the doc of [Backlog.Plan] says, 353.22 lb of water off for 404,680
// Btu, at 1 atm from sap of 2 Brix and 40 F.
func TestColdCompartments(t *testing.T) {
	rig, day := partitioned(), longDay()
	rig.Draw.At = 66
	day.Pressure = 1 * units.Atmosphere
	for i := range rig.Compartments {
		rig.Compartments[i].Fire = 0
	}
	rig.Compartments[len(rig.Compartments)-1].Fire = 100 * units.Percent
	var gone []float64 // lb of water, by the hour
	if _, err := rig.Trace(day, time.Hour, func(m Moment) bool {
		if m.Event == Reading {
			gone = append(gone, m.Evaporated().Pounds())
		}
		return true
	}); err != nil || len(gone) != 13 {
		t.Fatal(gone, err)
	}
	perHour := rig.Heat.Over(time.Hour).BtusIT() / 404680 * 353.22
	for i := 9; i < len(gone); i++ {
		if got := gone[i] - gone[i-1]; !near(got, perHour, 5e-3) {
			t.Errorf("hour %d: %v lb of water, want %v", i, got, perHour)
		}
	}
}

// TestStepIndependent takes a hundredth of the error, and so shorter steps.
func TestStepIndependent(t *testing.T) {
	for _, draw := range []DrawOff{{At: 66.9}, {At: 66.9, Until: 66}} {
		rig, day := partitioned(), longDay()
		rig.Draw = draw
		a, err := rig.run("test", day, stepError, 0, nil)
		if err != nil {
			t.Fatal(err)
		}
		b, err := rig.run("test", day, stepError/1000, 0, nil)
		if err != nil {
			t.Fatal(err)
		}
		if len(a.Draws) != len(b.Draws) || len(a.Draws) == 0 {
			t.Fatalf("%d and %d draws", len(a.Draws), len(b.Draws))
		}
		for i := range a.Draws {
			if d := a.Draws[i].From - b.Draws[i].From; d.Abs() > 20*time.Millisecond {
				t.Errorf("draw %d of %+v: times differ by %v", i, draw, d)
			}
		}
		for _, p := range [][2]float64{
			{float64(a.Syrup.Sugar), float64(b.Syrup.Sugar)},
			{float64(a.Evaporated), float64(b.Evaporated)},
			{float64(a.Held.Sugar()), float64(b.Held.Sugar())},
		} {
			if math.Abs(p[0]-p[1]) > 1e-6*math.Abs(p[1]) {
				t.Errorf("%+v: %v and %v", draw, p[0], p[1])
			}
		}
	}
}

// TestTooBusy asks for more than a step can do.
func TestTooBusy(t *testing.T) {
	rig := partitioned()
	_, err := rig.run("test", longDay(), 1e-30, 0, nil)
	if !errors.Is(err, ErrTooBusy) || !strings.HasPrefix(err.Error(), "test: ") {
		t.Error(err)
	}
}

func BenchmarkDay(b *testing.B) {
	for _, bm := range []struct {
		name string
		draw DrawOff
	}{{"stream", DrawOff{At: 66.9}}, {"valve", DrawOff{At: 66.9, Until: 66}}} {
		b.Run(bm.name, func(b *testing.B) {
			b.ReportAllocs()
			rig, day := partitioned(), longDay()
			rig.Draw = bm.draw
			for b.Loop() {
				if _, err := rig.Run(day); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
