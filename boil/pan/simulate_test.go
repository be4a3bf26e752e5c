package pan

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

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
