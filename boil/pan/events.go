package pan

import (
	"math"

	"example.org/sapreckoner/internal/base/numeric"
)

// The events of a simulation of n compartments are numbered: 0 to n-1 for a
// compartment that starts or ceases to boil, n to 2n-1 for one that becomes too
// thick, and then these.
func (k *kernel) tankEmpty() int  { return 2 * k.n }
func (k *kernel) levelDown() int  { return 2*k.n + 1 }
func (k *kernel) valveTurns() int { return 2*k.n + 2 }

const none = -1

// gauge is positive while event e is not due.
func (s *simulation) gauge(e int, f flowing) float64 {
	if s.asksFlows(e) {
		return s.flowGauge(e, f)
	}
	return s.stateGauge(e, f.y)
}

// asksFlows reports whether the gauge of event e depends on the flows.
func (s *simulation) asksFlows(e int) bool {
	return e < s.n && s.boils[e] || e == s.valveTurns() && s.valve >= holding
}

// stateGauge is the gauge of an event that the state alone tells.
func (s *simulation) stateGauge(e int, y []float64) float64 {
	n := s.n
	switch {
	case e < n:
		return y[s.lack(e)]
	case e < 2*n:
		return thickest/100 - s.fraction(y, e-n)
	case s.fed && e == s.tankEmpty():
		return y[s.inTank()]
	case !s.fed && e == s.levelDown():
		if s.pail > 0 && y[s.inTank()] > 0 {
			return s.holds(y, 0) - (s.full[0] - s.pail)
		}
		return s.holds(y, 0) - s.safe[0]
	case e == s.valveTurns() && s.valve == open:
		return s.fraction(y, n-1) - s.until
	case e == s.valveTurns() && s.strength != 0 && s.boils[n-1]:
		return s.strength - s.fraction(y, n-1)
	}
	return 1
}

// flowGauge is the gauge of an event that depends on the flows.
func (s *simulation) flowGauge(e int, f flowing) float64 {
	if e < s.n {
		return f.spare[e]
	}
	last := s.n - 1
	room := f.cap(&f.l[last]) - f.demand
	if s.valve == wide {
		return max(f.fraction(f.y, last)-s.strength, -room, f.richer)
	}
	if last == 0 && !s.fed {
		return -1 // nothing flows in that could hold the strength
	}
	return min(room, -f.richer)
}

// due returns an event that is due at the present state, from which the simulation
// was resumed.
func (s *simulation) due() int {
	var room [4]int
	if found := s.overdue(s.seen, room[:0]); len(found) > 0 {
		return found[0]
	}
	s.changed = false
	return none
}

// step takes one step, at most to the time stop, and returns the event that cut
// it short. A blind step looks for no events.
func (s *simulation) step(stop float64, blind bool) (int, error) {
	s.allow()
	next := s.explicit
	if s.chain.order > 0 {
		next = s.implicit
	}
	taken, err := next(stop)
	if err != nil {
		return none, err
	}
	h := taken.h
	cut, x := none, 1.0
	if !blind {
		cut, x = s.firstEvent(taken, s.seen)
	}
	end := s.now + h
	switch {
	case cut == none && h == stop-s.now:
		end = stop
	case cut != none:
		end = s.now + x*h
	}
	s.readings(end, func(t float64) []float64 {
		return taken.between((t - s.now) / h)
	})
	if cut == none {
		taken.accept()
		if taken.chain == nil {
			s.watch(h)
		}
	} else {
		taken.land(x)
	}
	s.now = end
	return cut, nil
}

// explicit takes a step of at most to the time stop, and returns it.
func (s *simulation) explicit(stop float64) (leg, error) {
	wish := &s.wish[s.valve]
	h := min(*wish, longestStep)
	for tries := 0; ; tries++ {
		full := h
		if left := stop - s.now; h >= left*(1-1e-12) {
			h = left
		}
		taken, e := s.try(h)
		if !(e <= 1) {
			h *= min(0.9, factor(e))
			if tries == 100 || s.now+h <= s.now {
				return leg{}, ErrTooBusy
			}
			continue
		}
		*wish = h * factor(e)
		if h < full {
			*wish = max(*wish, full)
		}
		return taken, nil
	}
}

// allow sets the error that a step may make.
func (s *simulation) allow() {
	const joules = 4e5 // to warm a kilogram of sap to the boil, about
	total := 0.0
	for i := range s.n {
		m := s.y[i] + s.y[s.water(i)]
		total += m
		each := 1 / (s.tolerance * m)
		s.scale[i], s.scale[s.water(i)], s.scale[s.lack(i)] = each, each, each/joules
	}
	for i := s.inTank(); i <= s.drawnWater(); i++ {
		s.scale[i] = 1 / (s.tolerance * total)
	}
}

// Shares of a step: from where on events are looked for, since a compartment
// that went off the boil just now lacks nothing at the start itself; and how far
// an event is overstepped.
const (
	lookFrom = 1e-6
	overstep = 1e-9
)

// firstEvent returns the first event within a step, at the end of which the pan is
// last, and the share of the step at which it comes.
func (s *simulation) firstEvent(taken leg, last flowing) (int, float64) {
	var room [4]int
	found, end := s.overdue(last, room[:0]), 1.0
	if s.unsteady(taken, last) {
		// A compartment may cease to boil and start again within the step.
		y := taken.between(0.5)
		s.glowAt(s.now + taken.h/2)
		var room [4]int
		if early := s.overdue(s.flows(y), room[:0]); len(early) > 0 {
			found, end = early, 0.5
		}
	}
	first, x := none, end
	for _, e := range found {
		root, ok := numeric.Root(func(x float64) float64 {
			if !s.asksFlows(e) {
				return s.stateGauge(e, s.part(taken, x, e))
			}
			s.glowAt(s.now + x*taken.h)
			return s.flowGauge(e, s.flows(taken.between(x)))
		}, lookFrom, end, 1e-10)
		if ok {
			root = min(root+overstep, end) // where the event is beyond doubt
		} else {
			root = lookFrom // it was due all along
		}
		if root < x || first == none {
			first, x = e, root
		}
	}
	return first, x
}

// part returns the state at the share x of a step as far as the gauge of event e
// looks at it.
func (s *simulation) part(taken leg, x float64, e int) []float64 {
	i := 0
	switch {
	case e < 2*s.n:
		i = e % s.n
	case e == s.valveTurns():
		i = s.n - 1
	}
	for _, at := range [...]int{i, s.water(i), s.lack(i), s.inTank()} {
		if at < s.live {
			taken.number(x, at)
		}
	}
	return s.mid
}

// overdue appends the events that are past due, of which most are gauged here as
// [simulation.gauge] does it, with what the flows have found.
func (s *simulation) overdue(f flowing, found []int) []int {
	for i, boils := range s.boils {
		if boils && f.spare[i] < 0 || !boils && f.y[s.lack(i)] < 0 {
			found = append(found, i)
		}
	}
	for i, w := range f.w {
		if w > thickest/100 {
			found = append(found, s.n+i)
		}
	}
	for e := s.tankEmpty(); e <= s.valveTurns(); e++ {
		if s.gauge(e, f) < 0 {
			found = append(found, e)
		}
	}
	return found
}

// unsteady reports whether a compartment is near to going on or off the boil within a
// step.
func (s *simulation) unsteady(taken leg, last flowing) bool {
	for i, boils := range s.boils {
		if boils {
			if last.spare[i] < s.q[i]*last.glow/2 {
				return true
			}
			continue
		}
		at := s.lack(i)
		most := taken.h * max(math.Abs(s.slope[0][at]), math.Abs(s.slope[6][at]))
		if min(s.y[at], last.y[at]) < 2*most {
			return true
		}
	}
	return false
}
