package pan

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// parted is one pan of 24 ft2 in so many compartments.
func parted(n int) Rig {
	r := partitioned()
	r.Compartments = nil
	for range n {
		r.Compartments = append(r.Compartments, Compartment{Area: 24 * units.SquareFoot / units.Area(n), Depth: 2 * units.Inch, SafeDepth: 1 * units.Inch})
	}
	return r
}

// powers is a simulation of no compartments, whose four numbers grow as t^2 to t^5.
func powers(order int, from, h float64) *simulation {
	s := &simulation{kernel: &kernel{in: []float64{0}}}
	s.stepper = newStepper(4, func(after float64, _, dy []float64) {
		for i := range dy {
			q := float64(i + 2)
			dy[i] = q * math.Pow(from+after, q-1)
		}
	})
	for i := range s.scale {
		s.scale[i] = 1
	}
	c := &s.chain
	*c = chain{order: order, h: h, d: make([]float64, 4), psi: make([]float64, 4), move: make([]float64, 4)}
	for j := range c.diff {
		c.diff[j] = make([]float64, 4)
		for i := range 4 {
			c.diff[j][i] = difference(j, from, h, i+2)
		}
	}
	return s
}

// difference is the j-th backward difference of t^q by its definition: the binomial
// coefficients with changing signs.
func difference(j int, t, h float64, q int) (sum float64) {
	binomial := 1.0
	for m := 0; m <= j; m++ {
		sum += binomial * math.Pow(t-float64(m)*h, float64(q))
		binomial *= -float64(j-m) / float64(m+1)
	}
	return sum
}

// Backward differentiation of order k is exact for polynomials of degree k, and so is
// the course between the states; of t^(k+1) its error is h^(k+1) k!, the next
// difference (k+1)! h^(k+1) over k+1 (E. Hairer and G. Wanner, Solving Ordinary
// Differential Equations II, V.1: the constant of the error is 1/(k+1)), and over the
// sum of 1/j, by which the slope at the end counts.
func TestBackwardDifferences(t *testing.T) {
	const from, h = 0.7, 0.3
	for k := 1; k <= mostOrder; k++ {
		s := powers(k, from, h)
		if e := s.solve(); math.IsNaN(e) || e == 2 && k < 3 {
			t.Fatalf("order %d: error %v", k, e)
		}
		factorial := math.Gamma(float64(k + 1))
		for i, got := range s.next {
			want := math.Pow(from+h, float64(i+2))
			switch q := i + 2; {
			case q <= k && !near(got, want, 1e-12):
				t.Errorf("order %d, t^%d: %v, want %v", k, q, got, want)
			case q == k+1 && !near(math.Abs(got-want), factorial*math.Pow(h, float64(q))/harmonic[k], 1e-9):
				t.Errorf("order %d, t^%d: off by %v", k, q, got-want)
			}
		}
		// The differences of the end, in which the last state counts once, and the course
		// from the start to there.
		c := &s.chain
		c.took = k
		c.learn(s)
		for i, got := range s.next {
			off := got - math.Pow(from+h, float64(i+2))
			for j := range k + 3 {
				if got, want := c.diff[j][i], difference(j, from+h, h, i+2)+off; math.Abs(got-want) > 1e-12 {
					t.Errorf("order %d, t^%d: difference %d is %v, want %v", k, i+2, j, got, want)
				}
			}
		}
		for i := 0; i+2 <= k; i++ {
			for x := 0.0; x <= 1; x += 0.125 {
				row := make([]float64, 4)
				c.between(x, row)
				want := math.Pow(from+x*h, float64(i+2))
				if !near(row[i], want, 1e-12) || !near(c.number(x, i), want, 1e-12) {
					t.Errorf("order %d, t^%d at %v: %v and %v, want %v", k, i+2, x, row[i], c.number(x, i), want)
				}
			}
		}
	}
}

// Steps of another length go through the same polynomial.
func TestStretch(t *testing.T) {
	const from, h = 0.7, 0.3
	for k := 2; k <= mostOrder; k++ {
		for _, by := range []float64{0.2, 0.7, 1, 1.9, 10} {
			s := powers(k, from, h)
			s.chain.stretch(by, 4)
			for i := 0; i+2 <= k; i++ {
				for j := range k + 1 {
					want := difference(j, from, by*h, i+2)
					if got := s.chain.diff[j][i]; math.Abs(got-want) > 1e-11*max(1, math.Pow(by, float64(k))) {
						t.Errorf("order %d, by %v, t^%d: difference %d is %v, want %v", k, by, i+2, j, got, want)
					}
				}
			}
			if !near(s.chain.h, by*h, 1e-15) {
				t.Errorf("by %v: %v", by, s.chain.h)
			}
		}
	}
}

// The sweep solves its system: x less part of how the rates change along x, by a
// central difference with the flows held, is r. Nothing is lost on the way.
func TestSweepOfParts(t *testing.T) {
	g := rand.New(rand.NewPCG(40, 1))
	rig := parted(12)
	s, err := rig.start("test", longDay(), stepError, 0, nil)
	if err != nil {
		t.Fatal(err)
	}
	if err := s.burn("test", 3600); err != nil {
		t.Fatal(err)
	}
	for _, valve := range []valve{shut, open} {
		s.valve = valve
		if s.all {
			t.Fatal("all compartments boil")
		}
		r := make([]float64, s.size())
		for i := range r {
			r[i] = g.NormFloat64()
		}
		for i := range s.n {
			if r[s.lack(i)] *= 4e5; s.boils[i] {
				r[s.lack(i)] = 0
			}
		}
		const part = 137.0
		s.seen = s.flows(s.y)
		x := append([]float64(nil), r...)
		s.sweep(part, x)
		rates := func(by float64) []float64 {
			y, dy := make([]float64, s.size()), make([]float64, s.size())
			for i := range y {
				y[i] = s.y[i] + by*x[i]
			}
			for i := range s.n {
				s.m[i] = y[i] + y[s.water(i)]
				s.w[i] = y[i] / s.m[i]
				if i > 0 && !s.boils[i-1] { // and the feed as much colder
					s.warm[i] = s.warmed(i, y)
				}
			}
			flowing{s.kernel, y}.rates(dy)
			return dy
		}
		const by = 1e-5
		more, less := rates(by), rates(-by)
		var was, is [2]float64
		for i := range x {
			got, size := x[i]-part*(more[i]-less[i])/(2*by), 1.0
			if i >= s.lack(0) {
				size = 4e5
			}
			if math.Abs(got-r[i]) > 1e-5*size {
				t.Errorf("valve %v, number %d: %v, want %v", valve, i, got, r[i])
			}
		}
		for i := range s.n {
			was[0], was[1], is[0], is[1] = was[0]+r[i], was[1]+r[s.water(i)], is[0]+x[i], is[1]+x[s.water(i)]
		}
		for i, at := range []int{s.drawnSugar(), s.drawnWater()} {
			if math.Abs(was[i]+r[at]-is[i]-x[at]) > 1e-12 {
				t.Errorf("valve %v: %v comes to %v", valve, was[i]+r[at], is[i]+x[at])
			}
		}
	}
}

// warmed is the heat that brings a kilogram of the feed of place i to the boil, by the
// definition: what it lacks, and from its boiling point to the one there.
func (s *simulation) warmed(i int, y []float64) float64 {
	from := &s.l[i-1]
	return y[s.lack(i-1)]/(y[i-1]+y[s.water(i-1)]) + from.heat*(s.l[i].point-from.point)
}

// A pan of many parts takes implicit steps. Empty pails that come every minute
// interrupt them before there are any, so that explicit ones tell the same day: both
// come to the same, within what many steps of 1e-6 Brix add up to.
func TestManyParts(t *testing.T) {
	for _, n := range []int{40, 100} {
		rig, day := parted(n), longDay()
		run := func(d Day) (Outcome, bool) {
			s, err := rig.start("test", d, stepError, 0, nil)
			if err == nil {
				err = s.burn("test", math.Inf(1))
			}
			if err == nil {
				err = s.close("test")
			}
			if err != nil {
				t.Fatal(err)
			}
			checkConserved(t, d, s.out)
			return s.out, s.chain.d != nil
		}
		a, implicit := run(day)
		pails := day
		for at := time.Minute; at < day.Out; at += time.Minute {
			pails.Sap = append(pails.Sap, Sap{At: at, Brix: 2, Temperature: units.Celsius(5)})
		}
		b, too := run(pails)
		if !implicit || too {
			t.Errorf("%d parts: implicit steps %v, interrupted %v", n, implicit, too)
		}
		if len(a.Draws) != 1 || len(b.Draws) != 1 || (a.Draws[0].From-b.Draws[0].From).Abs() > time.Millisecond {
			t.Errorf("%d parts: drawn %v and %v", n, a.Draws, b.Draws)
		}
		for i := range a.Held {
			if d := float64(a.Held[i].Brix() - b.Held[i].Brix()); math.Abs(d) > 5e-6 {
				t.Errorf("%d parts: no. %d off by %v Brix", n, i, d)
			}
		}
		for _, p := range [][2]float64{{float64(a.Syrup.Sugar), float64(b.Syrup.Sugar)}, {float64(a.Evaporated), float64(b.Evaporated)}} {
			if !near(p[0], p[1], 1e-7) {
				t.Errorf("%d parts: %v and %v", n, p[0], p[1])
			}
		}
	}
}

// Sugar and water close over random pans of many parts too, whatever is drawn, and over
// the last wood.
func TestManyPartsConserved(t *testing.T) {
	g := rand.New(rand.NewPCG(40, 2))
	implicit := 0
	for range 25 {
		rig, day := parted(25+g.IntN(60)), longDay()
		rig.Heat *= units.Power(0.3 + 2*g.Float64())
		for i := range rig.Compartments {
			rig.Compartments[i].Area *= units.Area(0.5 + g.Float64())
		}
		rig.Draw = DrawOff{At: units.Brix(20 + 45*g.Float64())}
		if g.IntN(2) == 0 {
			rig.Draw.Until = rig.Draw.At * 0.98
		}
		if g.IntN(3) == 0 {
			rig.PreheatTo = units.Celsius(90)
		}
		day.Sap[0].Volume *= units.Volume(0.2 + g.Float64())
		if rig.check("", false) != nil { // parts that would flash dry
			continue
		}
		s, err := rig.start("test", day, stepError, 0, nil)
		if err == nil {
			err = s.burn("test", math.Inf(1))
		}
		if err != nil {
			t.Fatal(err)
		}
		if s.chain.d != nil {
			implicit++
		}
		if g.IntN(8) == 0 {
			rig.Coals = 10 * time.Minute
		}
		mustRun(t, rig, day)
	}
	if implicit < 8 {
		t.Errorf("%d pans took implicit steps", implicit)
	}
}
