package pan

import (
	"testing"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What warms a liquid is the gain of its enthalpy, at its own strength.
func TestHeatBetween(t *testing.T) {
	for _, b := range []units.Brix{2, 60} {
		cold, err := sugar.Enthalpy(b, units.Celsius(10))
		hot, err2 := sugar.Enthalpy(b, units.Celsius(90))
		got, err3 := heatBetween(b.Fraction(), 10, 90)
		if err != nil || err2 != nil || err3 != nil || !near(got, float64(hot-cold), 1e-12) {
			t.Errorf("%v: %v J/kg, want %v; %v %v %v", b, got, float64(hot-cold), err, err2, err3)
		}
	}
}

// Half a kilogram that stands cold in the pot is warmed before it boils: by hand,
// 0.5 kg times 80 K times 4.1 kJ/(kg K) are 164 kJ, which 500 W bring in 328 s.
func TestColdStart(t *testing.T) {
	r := Rig{Compartments: []Compartment{{Area: 0.01, Depth: 0.09, SafeDepth: 0.002}}, Heat: 500 * units.Watt}
	d := Day{Pressure: units.Atmosphere, Out: time.Hour,
		Start: Contents{{Sugar: 0.02 * units.Kilogram, Water: 0.48 * units.Kilogram, Temperature: units.Celsius(20)}}}
	if _, at := times(t, r, d); !near(at[EventBoils].Seconds(), 328, 0.02) {
		t.Errorf("boils after %v", at[EventBoils])
	}
	_, err := r.Trace(d, time.Hour, func(m Moment) bool {
		if l := m.Liquid(0); m.Event == EventLit && (!near(l.Temperature.Celsius(), 20, 1e-6) || !near(m.Volume(0).Liters(), 0.52, 0.02)) {
			t.Errorf("%v in the pot at %v", m.Volume(0), l.Temperature)
		}
		return false
	})
	if err != nil {
		t.Fatal(err)
	}
}

// Where the flow turns, what is cold stays in its place.
func TestReversedStaysCold(t *testing.T) {
	c := Compartment{Area: units.SquareFeet(4), Depth: 3 * units.Inch, SafeDepth: 1 * units.Inch}
	r := Rig{Compartments: []Compartment{c, c, c}, Heat: 1 * units.Kilowatt}
	d := Day{Pressure: units.Atmosphere, Out: time.Hour, Reverse: []time.Duration{7 * time.Second}}
	mass := units.Mass(1000 * float64(c.Area.Volume(c.Depth))) // more than full when it is hot: nothing flows
	temps := []float64{40, 60, 80}
	for _, at := range temps {
		d.Start = append(d.Start, Liquid{Sugar: mass / 10, Water: mass - mass/10, Temperature: units.Celsius(at)})
	}
	turned := false
	_, err := r.Trace(d, time.Hour, func(m Moment) bool {
		if m.Event != EventReversed {
			return true
		}
		turned = true
		if m.At != 7*time.Second {
			t.Errorf("turned after %v", m.At)
		}
		for i, want := range temps {
			if got := m.Liquid(i).Temperature.Celsius(); !near(got, want, 0.01) {
				t.Errorf("compartment %d is at %v C after the turn, want %v", i, got, want)
			}
		}
		return false
	})
	if err != nil || !turned {
		t.Errorf("turned: %v, %v", turned, err)
	}
}
