package pan

import "example.org/sapreckoner/internal/base/numeric"

// The events of a simulation of n compartments are numbered: 0 to n-1 for a
// compartment that starts or ceases to boil, n to 2n-1 for one that becomes too
// thick, and then these.
func (k *kernel) tankEmpty() int  { return 2 * k.n }
func (k *kernel) levelDown() int  { return 2*k.n + 1 }
func (k *kernel) valveTurns() int { return 2*k.n + 2 }

const none = -1

// gauge is positive while event e is not due. Where asksFlows says so, flows must
// have seen y.
func (s *simulation) gauge(e int, y []float64) float64 {
	n := s.n
	switch {
	case e < n && s.boils[e]:
		return s.spare[e]
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
	case e == s.valveTurns():
		return s.valveGauge(y)
	}
	return 1
}

func (s *simulation) valveGauge(y []float64) float64 {
	last := s.n - 1
	b := s.fraction(y, last)
	switch s.valve {
	case open:
		return b - s.until
	case holding:
		if last == 0 && !s.fed {
			return -1 // nothing flows in that could hold the strength
		}
		return min(s.cap()-s.demand, -s.richer)
	case wide:
		return max(b-s.strength, s.demand-s.cap(), s.richer)
	}
	if s.strength == 0 || !s.boils[last] {
		return 1
	}
	return s.strength - b
}

// asksFlows reports whether the gauge of event e depends on the flows.
func (s *simulation) asksFlows(e int) bool {
	return e < s.n && s.boils[e] || e == s.valveTurns() && s.valve >= holding
}

// due returns an event that is due at the present state, which flows has seen.
func (s *simulation) due() int {
	for e := range s.valveTurns() + 1 {
		if s.gauge(e, s.y) < 0 {
			return e
		}
	}
	s.changed = false
	return none
}

// step takes one step, at most to the time stop, and returns the event that cut
// it short. A blind step looks for no events.
func (s *simulation) step(stop float64, blind bool) (int, error) {
	s.allow()
	wish := &s.wish[s.valve]
	h := min(*wish, longestStep)
	for tries := 0; ; tries++ {
		full := h
		if left := stop - s.now; h >= left*(1-1e-12) {
			h = left
		}
		e := s.try(h)
		if !(e <= 1) {
			h *= min(0.9, factor(e))
			if tries == 100 || s.now+h <= s.now {
				return none, ErrTooBusy
			}
			continue
		}
		*wish = h * factor(e)
		if h < full {
			*wish = max(*wish, full)
		}
		break
	}
	cut, x := none, 1.0
	if !blind {
		cut, x = s.firstEvent(h)
	}
	end := s.now + h
	switch {
	case cut == none && h == stop-s.now:
		end = stop
	case cut != none:
		end = s.now + x*h
	}
	s.readings(end, func(t float64) []float64 {
		return s.between((t-s.now)/h, h)
	})
	if cut == none {
		s.accept()
	} else {
		s.land(x, h)
	}
	s.now = end
	return cut, nil
}

// allow sets the error that a step may make.
func (s *simulation) allow() {
	const joules = 4e5 // to warm a kilogram of sap to the boil, about
	total := 0.0
	for i := range s.n {
		m := s.y[i] + s.y[s.water(i)]
		total += m
		s.scale[i], s.scale[s.water(i)], s.scale[s.lack(i)] = s.tolerance*m, s.tolerance*m, s.tolerance*m*joules
	}
	for i := s.inTank(); i < s.size(); i++ {
		s.scale[i] = s.tolerance * total
	}
}

// Shares of a step: from where on events are looked for, since a compartment
// that went off the boil just now lacks nothing at the start itself; and how far
// an event is overstepped.
const (
	lookFrom = 1e-6
	overstep = 1e-9
)

// firstEvent returns the first event within the step of length h that try has
// taken, and the share of the step at which it comes.
func (s *simulation) firstEvent(h float64) (int, float64) {
	var room [4]int
	found, end := s.overdue(s.next, room[:0]), 1.0
	if s.unsteady() {
		// A compartment may cease to boil and start again within the step.
		y := s.between(0.5, h)
		s.glowAt(s.now + h/2)
		s.flows(y)
		var room [4]int
		if early := s.overdue(y, room[:0]); len(early) > 0 {
			found, end = early, 0.5
		}
	}
	first, x := none, end
	for _, e := range found {
		root, ok := numeric.Root(func(x float64) float64 {
			y := s.between(x, h)
			if s.asksFlows(e) {
				s.glowAt(s.now + x*h)
				s.flows(y)
			}
			return s.gauge(e, y)
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

// overdue appends the events that are past due in state y, which flows has seen.
func (s *simulation) overdue(y []float64, found []int) []int {
	for e := range s.valveTurns() + 1 {
		if s.gauge(e, y) < 0 {
			found = append(found, e)
		}
	}
	return found
}

// unsteady reports whether a compartment is off the boil or not far from it.
func (s *simulation) unsteady() bool {
	for i, boils := range s.boils {
		if !boils || s.spare[i] < s.q[i]*s.glow/2 {
			return true
		}
	}
	return false
}
