package pan

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
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
	if o.End != EventFinished {
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
	if got, want := at[EventBoils].Seconds(), m*warm/float64(r.Heat); !near(got, want, 1e-6) {
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
	if o.End != EventFinished || !near(float64(o.Syrup.Brix()), 66, 1e-6) {
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
	hot, err := boil.Water(p)
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
	if !(thick[EventDrawOpens] < sap[EventDrawOpens] && sap[EventDrawOpens] < thin[EventDrawOpens]) {
		t.Errorf("first syrup from the sweet after %v, from sap %v, from water %v", thick[EventDrawOpens], sap[EventDrawOpens], thin[EventDrawOpens])
	}
}
