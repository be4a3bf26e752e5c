package pan

import (
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Shares of a volume that count as none: when a level is compared with the full
// one, and with the safe one, below which an event may lie by a moment.
const (
	fullRounding = 1e-9
	safeRounding = 1e-5
)

// ready reports whether every compartment is above its safe depth.
func (s *simulation) ready() bool {
	for i := range s.n {
		if s.holds(s.y, i) < s.safe[i]*(1-safeRounding) {
			return false
		}
	}
	return true
}

// fill brings the levels up: compartments that stand empty straight from the
// tank, as by hand, then every level from the compartment before, and the first
// from the tank.
func (s *simulation) fill() {
	for i := s.n - 1; i >= 0; i-- {
		if s.holds(s.y, i) < s.safe[i]*(1-safeRounding) {
			s.fromTank(i, s.full[i])
		}
	}
	for range s.n {
		done := true
		for i := s.n - 1; i > 0; i-- {
			if s.holds(s.y, i) < s.full[i]*(1-fullRounding) && s.fromBefore(i) {
				done = false
			}
		}
		if s.pail == 0 {
			s.fromTank(0, s.full[0])
		}
		if done {
			return
		}
	}
}

// fromTank fills place i up to a volume, as far as the sap lasts.
func (s *simulation) fromTank(i int, volume float64) {
	m := min(s.y[s.inTank()], s.wants(i, s.tank.w, volume))
	if !(m > 0) {
		return
	}
	s.y[s.inTank()] = max(0, s.y[s.inTank()]-m)
	s.pour(i, m, s.tank)
}

// fromBefore fills place i from the one before it, as far as that one stays
// above its safe depth, and reports whether anything flowed.
func (s *simulation) fromBefore(i int) bool {
	j := i - 1
	spare := 1 - s.safe[j]/s.holds(s.y, j)
	if !(spare > fullRounding) {
		return false
	}
	mass := s.y[j] + s.y[s.water(j)]
	a := s.y[j] / mass
	m := min(spare*mass, s.wants(i, a, s.full[i]))
	if !(m > fullRounding*mass) {
		return false
	}
	l := s.hot.at(a)
	from := stream{a, s.y[s.lack(j)] / mass, l.point, l.heat}
	s.y[j] -= m * a
	s.y[s.water(j)] -= m * (1 - a)
	s.y[s.lack(j)] -= m * from.lack
	s.pour(i, m, from)
	return true
}

// wants returns how much liquid of mass fraction a brings place i to a volume.
func (s *simulation) wants(i int, a, volume float64) float64 {
	sugar, water := s.y[i], s.y[s.water(i)]
	x := max(0, volume-s.holds(s.y, i)) / s.hot.at(a).volume
	for range 6 {
		m := sugar + water + x
		if !(m > 0) {
			return 0
		}
		b := (sugar + x*a) / m
		l := s.hot.at(b)
		x -= (m*l.volume - volume) / (a*l.sugarVolume(b) + (1-a)*l.waterVolume(b))
	}
	return max(0, x)
}

// pour adds a mass of a liquid to place i. What it lacks to boil the fire has to
// make up; what it has too much, coming from a thicker liquid, flashes off.
func (s *simulation) pour(i int, m float64, from stream) {
	s.y[i] += m * from.w
	s.y[s.water(i)] += m * (1 - from.w)
	l := s.hot.at(s.y[i] / (s.y[i] + s.y[s.water(i)]))
	lack := s.y[s.lack(i)] + m*from.warm(l.point)
	if lack < 0 {
		s.y[s.water(i)] += lack / l.latent
		s.y[s.steam()] -= lack / l.latent
		lack = 0
	}
	s.y[s.lack(i)] = lack
	if lack > 0 && s.boils[i] {
		s.boils[i] = false
		s.tell(EventOffBoil, i)
	}
}

// pourPail pours a pail, or the rest of the sap, into the first compartment.
func (s *simulation) pourPail() {
	m := s.y[s.inTank()]
	rho, err := density.Solution(units.Brix(100*s.tank.w), units.Celsius(s.sapTemp))
	if err == nil { // the tank was filled with what has a density
		m = min(m, s.pail*float64(rho))
	}
	s.y[s.inTank()] = max(0, s.y[s.inTank()]-m)
	s.pour(0, m, s.tank)
	s.out.Pails++
	s.tell(EventPailIn, -1)
	if !(s.y[s.inTank()] > 0) {
		s.tell(EventSapOut, -1)
	}
}
