package pan

import (
	"math"
	"slices"

	"example.org/sapreckoner/units"
)

// resume starts anew after the state or the regime has changed.
func (s *simulation) resume() {
	s.changed = true
	s.chain.order, s.chain.stiff = 0, 0
	if s.banked || s.ended {
		return
	}
	s.glowAt(s.now)
	now := s.flows(s.y)
	for i := s.n - 1; i >= 0; i-- {
		boils := s.boils[i]
		if s.boils[i] {
			boils = now.spare[i] >= 0
		} else if s.y[s.lack(i)] <= 0 {
			s.y[s.lack(i)] = 0
			boils = now.spare[i] > 0
		}
		if boils != s.boils[i] {
			s.boils[i] = boils
			s.tellBoil(i)
			now = s.flows(s.y)
		}
	}
	s.settle()
	now.rates(s.slope[0])
	s.seen = now
}

// settle leaves out of the steps what no compartment lacks to boil, once all boil.
func (s *simulation) settle() {
	s.all = !slices.Contains(s.boils, false)
	s.live = s.size()
	if s.all {
		s.live = s.lack(0)
		for _, row := range [][]float64{s.y, s.next, s.mid} {
			clear(row[s.live:])
		}
	}
}

func (s *simulation) tellBoil(i int) {
	if s.boils[i] {
		s.tell(EventBoils, i)
	} else {
		s.tell(EventOffBoil, i)
	}
}

// handle does what event e calls for.
func (s *simulation) handle(e int) {
	switch {
	case e < s.n:
		// The heat is spent to rounding; resume decides whether it boils.
		s.y[s.lack(e)] = 0
	case e < 2*s.n:
		s.tell(EventTooThick, e-s.n)
		s.end(EventTooThick)
	case e == s.tankEmpty():
		s.emptyTank()
	case e == s.levelDown():
		s.lowLevel()
	default:
		s.turnValve()
	}
	s.resume()
}

// emptyTank pours the last drop, which is what rounding has left, and ends the
// feed.
func (s *simulation) emptyTank() {
	rest := s.y[s.inTank()]
	s.y[0] += rest * s.tank.w
	s.y[s.water(0)] += rest * (1 - s.tank.w)
	s.y[s.inTank()] = 0
	s.fed = false
	s.tell(EventSapOut, -1)
	if s.n == 1 && s.valve != shut {
		s.kettleReady()
	}
}

// kettleReady empties a kettle that is at its strength with nothing to follow,
// or lets the fire wait for what is still to come.
func (s *simulation) kettleReady() {
	if s.pending() && !s.coals {
		s.bank()
		return
	}
	s.emptyKettle()
}

func (s *simulation) emptyKettle() {
	s.openValve(open)
	for _, p := range [2][2]int{{0, s.drawnSugar()}, {s.water(0), s.drawnWater()}} {
		s.y[p[1]] += s.y[p[0]]
		s.y[p[0]] = 0
	}
	s.y[s.lack(0)] = 0
	s.shutValve()
	s.tell(EventFinished, -1)
	s.end(EventFinished)
}

// lowLevel pours as many pails as there is room for, or ends the fire.
func (s *simulation) lowLevel() {
	if s.pail > 0 && s.y[s.inTank()] > 0 {
		for s.y[s.inTank()] > 0 && s.holds(s.y, 0) < s.full[0]-s.pail {
			s.pourPail()
		}
		return
	}
	s.tell(EventLow, 0)
	if !s.out.WasLow {
		s.out.WasLow, s.out.LowAt = true, s.clock(s.now)
	}
	if s.pending() && !s.coals {
		s.bank()
		return
	}
	s.end(EventLow)
}

func (s *simulation) turnValve() {
	last := s.n - 1
	switch s.valve {
	case open:
		s.shutValve()
		return
	case holding:
		if last == 0 && !s.fed {
			s.kettleReady()
			return
		}
		s.valve = wide
		return
	case wide:
		s.valve = holding
		return
	}
	switch {
	case last == 0 && !s.fed && !(s.y[s.inTank()] > 0):
		s.kettleReady()
	case s.until > 0:
		s.openValve(open)
	case math.Abs(s.fraction(s.y, last)-s.strength) < 1e-9:
		s.openValve(holding)
	default:
		s.openValve(wide)
	}
}

// openValve begins a draw, if none is under way.
func (s *simulation) openValve(v valve) {
	if s.valve == shut {
		s.drawing = Drawn{From: s.clock(s.now), Liquid: s.drawn()}
		s.tell(EventDrawOpens, -1)
	}
	s.valve = v
}

// shutValve ends a draw, if one is under way.
func (s *simulation) shutValve() {
	if s.valve == shut {
		return
	}
	s.valve = shut
	d, all := s.drawing, s.drawn()
	d.To = s.clock(s.now)
	d.Sugar, d.Water = all.Sugar-d.Sugar, all.Water-d.Water
	d.Temperature = s.syrupPoint(d.Liquid)
	if d.Mass() > 0 {
		s.out.Draws = append(s.out.Draws, d)
	}
	s.tell(EventDrawShuts, -1)
}

// drawn returns what was drawn so far.
func (s *simulation) drawn() Liquid {
	return Liquid{Sugar: units.Mass(s.y[s.drawnSugar()]), Water: units.Mass(s.y[s.drawnWater()])}
}
