package pan

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Three compartments that stand between their safe level and the full one are
// filled when the fire is lit, each from the one before and the first from the
// tank.
func TestFilledFromBefore(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(4), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c, c}, Heat: 40 * units.Kilowatt, Draw: DrawOff{At: 66}}
	full := c.Area.Volume(c.Depth)
	d := longDay()
	before := make([]units.Mass, 3)
	for i, b := range []units.Brix{5, 20, 40} {
		mass := units.Mass(1080 * 0.6 * float64(full)) // between half and two thirds full
		before[i] = b.Sugar(mass)
		d.Start = append(d.Start, Liquid{Sugar: before[i], Water: mass - before[i], Temperature: units.Celsius(90)})
	}
	_, err := r.Trace(d, time.Hour, func(m Moment) bool {
		if m.Event != EventLit {
			return true
		}
		for i := range m.Len() {
			if !near(float64(m.Volume(i)/full), 1, 1e-6) {
				t.Errorf("compartment %d stands at %v of full", i, float64(m.Volume(i)/full))
			}
		}
		// The second spares 0.267 of the full volume at 20 Brix; then it gets as much
		// of 5 Brix from the first, and the last the 0.133 that it still lacks at
		// 13.3: 0.178 on the whole, where the tank has 0.02.
		last, own := m.Liquid(2), d.Start[2].Mass()
		if got := float64((last.Sugar - before[2]) / (last.Mass() - own)); !near(got, 0.178, 0.01) {
			t.Errorf("the last was filled with liquid of %v sugar, want 0.178", got)
		}
		return false
	})
	if err != nil {
		t.Fatal(err)
	}
}

// A pan that stands above its safe level is lit without any sap.
func TestLitAboveSafe(t *testing.T) {
	r := kettle()
	r.Compartments[0].SafeDepth = 1 * units.Inch
	mass := units.Mass(1000 * float64(r.Compartments[0].Area.Volume(1.5*units.Inch)))
	d := Day{Pressure: units.Atmosphere, Out: time.Hour, Start: Contents{{Sugar: mass / 10, Water: mass - mass/10, Temperature: units.Celsius(90)}}}
	o, at := times(t, r, d)
	if _, banked := at[EventBanked]; banked || o.Evaporated <= 0 {
		t.Errorf("%v boiled off, %v", o.Evaporated, at)
	}
}

// A pot of a liter boils down like a pan.
func TestSmallPot(t *testing.T) {
	r := Rig{Compartments: []Compartment{{Area: 0.01, Depth: 0.09, SafeDepth: 0.002}}, Heat: 500 * units.Watt, Draw: DrawOff{At: 66}}
	d := Day{Pressure: units.Atmosphere, Out: 24 * time.Hour, Sap: []Sap{{Volume: 0.8 * units.Liter, Brix: 20, Temperature: units.Celsius(5)}}}
	if o := mustRun(t, r, d); o.End != EventFinished || !near(float64(o.Syrup.Brix()), 66, 1e-6) {
		t.Errorf("%v, %v Brix", o.End, o.Syrup.Brix())
	}
}

// A compartment that is filled leaves the one before it at its safe level.
func TestFillingLeavesTheSafeLevel(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(4), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c}, Heat: 20 * units.Kilowatt}
	d := Day{Pressure: units.Atmosphere, Out: time.Hour}
	for _, depth := range []units.Length{1.2 * units.Inch, 1.5 * units.Inch} {
		mass := units.Mass(1000 * float64(c.Area.Volume(depth)))
		d.Start = append(d.Start, Liquid{Sugar: mass / 10, Water: mass - mass/10, Temperature: units.Celsius(90)})
	}
	_, err := r.Trace(d, time.Hour, func(m Moment) bool {
		if first := m.Volume(0); m.Event == EventLit && !near(float64(first/c.Area.Volume(c.SafeDepth)), 1, 1e-6) {
			t.Errorf("the first was left with %v, its safe level is %v", first, c.Area.Volume(c.SafeDepth))
		}
		return m.Event != EventLit
	})
	if err != nil {
		t.Fatal(err)
	}
}

// A pail takes its volume of sap from the tank, at the density of the sap, and
// the tank is told to be empty when it is.
func TestPailIsAVolume(t *testing.T) {
	r := kettle()
	r.Feed, r.Pail, r.Draw.Until = PailFeed, 2*units.USGallon, 60
	sap := Sap{Volume: 30 * units.USGallon, Brix: 20, Temperature: units.Celsius(5)}
	rho, err := density.Solution(sap.Brix, sap.Temperature)
	if err != nil {
		t.Fatal(err)
	}
	left, pails := units.Mass(math.NaN()), 0
	_, err = r.Trace(Day{Pressure: units.Atmosphere, Out: 48 * time.Hour, Sap: []Sap{sap}}, time.Hour, func(m Moment) bool {
		if m.Event == EventSapOut && m.SapLeft() != 0 {
			t.Errorf("the tank is called empty with %v in it", m.SapLeft())
		}
		if m.Event == EventPailIn && pails > 0 && m.SapLeft() > 0 && !near(float64(left-m.SapLeft()), float64(rho.Mass(r.Pail)), 1e-9) {
			t.Errorf("a pail of %v, want %v", left-m.SapLeft(), rho.Mass(r.Pail))
		}
		if m.Event == EventPailIn {
			left = m.SapLeft()
			pails++
		}
		return true
	})
	if err != nil || pails < 3 {
		t.Errorf("%d pails, %v", pails, err)
	}
}
