package pan

import (
	"slices"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// unload takes the next load of sap into the tank.
func (s *simulation) unload(fn string) error {
	load := s.sap[0]
	s.sap = s.sap[1:]
	rho, err := density.Solution(load.Brix, load.Temperature)
	if err != nil {
		return units.Under(fn, err)
	}
	was, m := s.y[s.inTank()], float64(rho.Mass(load.Volume))
	if !(was+m > 0) {
		return nil
	}
	w := (s.tank.w*was + load.Brix.Fraction()*m) / (was + m)
	s.sapTemp = (s.sapTemp*was + load.Temperature.Celsius()*m) / (was + m)
	if s.tank, err = newFeed(s.hot, w, s.sapTemp, s.preheat.Celsius()); err != nil {
		return units.Under(fn, err)
	}
	s.y[s.inTank()] = was + m
	s.out.Backlog = max(s.out.Backlog, units.Mass(was+m))
	return nil
}

// newFeed returns what sap of mass fraction w and temperature t brings behind a
// preheater. Sap hotter than water boils comes to that point on the way.
func newFeed(h *hot, w, t, preheat float64) (stream, error) {
	plain := h.at(0).point
	lack, err := heatBetween(w, min(max(t, preheat), plain), plain)
	return stream{w: w, lack: lack, point: plain, heat: h.at(w).heat}, err
}

// heatBetween returns the heat that warms a kilogram of mass fraction w from
// temperature a to b.
func heatBetween(w, a, b float64) (float64, error) {
	brix := units.Brix(100 * w)
	h, err := sugar.Enthalpy(brix, units.Celsius(a))
	if err != nil {
		return 0, err
	}
	high, err := sugar.Enthalpy(brix, units.Celsius(b))
	return float64(high - h), err
}

// light sets what stands in the pans, fills them and lights the fire.
func (s *simulation) light(fn string) error {
	for i, c := range s.day.Start {
		s.y[i], s.y[s.water(i)] = float64(c.Sugar), float64(c.Water)
		if m := float64(c.Mass()); m > 0 {
			w := float64(c.Sugar) / m
			lack, err := heatBetween(w, c.Temperature.Celsius(), s.hot.at(w).point)
			if err != nil {
				return units.Under(fn, err)
			}
			s.y[s.lack(i)] = m * max(0, lack)
		}
	}
	s.fill()
	s.tell(EventLit, -1)
	s.fed = s.pail == 0 && s.y[s.inTank()] > 0
	if !s.ready() {
		s.bank()
	}
	s.resume()
	return nil
}

// nextScheduled returns the time of the next load of sap, the next change of
// direction, or the end of the fire.
func (s *simulation) nextScheduled(over float64) float64 {
	if len(s.sap) > 0 {
		over = min(over, s.since(s.sap[0].At))
	}
	if len(s.reverses) > 0 {
		over = min(over, s.since(s.reverses[0]))
	}
	return over
}

// scheduled does what is due by the clock at this moment, and reports whether
// anything was.
func (s *simulation) scheduled(fn string) (bool, error) {
	switch {
	case len(s.sap) > 0 && s.since(s.sap[0].At) <= s.now:
		if err := s.unload(fn); err != nil {
			return true, err
		}
		s.tell(EventSapIn, -1)
		if !s.fed || s.banked {
			s.fill()
		}
	case len(s.reverses) > 0 && s.since(s.reverses[0]) <= s.now:
		s.reverses = s.reverses[1:]
		s.reverse()
		s.fill()
		s.tell(EventReversed, -1)
	default:
		return false, nil
	}
	s.fed = s.pail == 0 && s.y[s.inTank()] > 0
	if s.banked && s.ready() {
		s.banked = false
		s.tell(EventRekindled, -1)
	}
	s.resume()
	return true, nil
}

// reverse turns the rig round: the state, and everything that belongs to a
// place along the flow.
func (s *simulation) reverse() {
	s.shutValve()
	n := s.n
	for _, row := range [][]float64{s.y[:n], s.y[n : 2*n], s.y[s.lack(0):], s.q, s.full, s.safe} {
		slices.Reverse(row)
	}
	slices.Reverse(s.boils)
	s.reversed = !s.reversed
}

// pending reports whether sap is still to come while the fire may burn.
func (s *simulation) pending() bool {
	return slices.ContainsFunc(s.sap, func(l Sap) bool { return l.Volume > 0 && l.At < s.day.Out })
}

// bank lets the fire wait for sap.
func (s *simulation) bank() {
	s.shutValve()
	s.banked = true
	s.tell(EventBanked, -1)
}

// wait passes the time until stop with the fire banked.
func (s *simulation) wait(stop float64) {
	s.readings(stop, func(float64) []float64 { return s.y })
	s.now = stop
}
