package pan

import (
	"math"
	"time"

	"example.org/sapreckoner/units"
)

// Coals give off their heat by halves: with P the full fire and H the half-life,
// what is still to come after the last wood is the integral of P 2^(-t/H), which
// is P H/ln 2.

// The coals are followed for so many half-lives: a part in 10^12 of their heat is
// left then, and counted as none.
const deadCoals = 40

// When the coals have done their work: a hundredth of them is left, or a kettle
// is so near to its strength, as a mass fraction. No hydrometer tells less.
const (
	lastCoals = 0.01
	nearSyrup = 0.001
)

// planStep is to how many seconds the last wood is found.
const planStep = 1e-3

// follow is run, with the last wood as late as the coals allow.
func (r *Rig) follow(fn string, d Day, every time.Duration, see func(Moment) bool) (Outcome, error) {
	if r.Coals == 0 {
		return r.run(fn, d, stepError, every, see)
	}
	plain := *r
	plain.Coals = 0
	o, err := plain.run(fn, d, stepError, 0, nil)
	if err != nil {
		return Outcome{}, err
	}
	overruns := func(out time.Duration) bool {
		then := d
		then.Out = out
		var o Outcome
		if err == nil {
			o, err = r.run(fn, then, stepError, 0, nil)
		}
		return o.ToCome > 0 && o.End != EventFireOut
	}
	// The coals give as much as a full fire gives in H/ln 2: about that long
	// before a fire without coals would have to be out.
	late := min(o.Ended, d.Out)
	if overruns(late) {
		ahead := 1.001 * r.Coals.Seconds() / math.Ln2
		early := max(d.Light, late-time.Duration(ahead*1e9))
		for overruns(early) && early > d.Light {
			ahead *= 2
			late, early = early, max(d.Light, early-time.Duration(ahead*1e9))
		}
		for (late-early).Seconds() > planStep && err == nil {
			if middle := early + (late-early)/2; overruns(middle) {
				late = middle
			} else {
				early = middle
			}
		}
		late = early
	}
	if err != nil {
		return Outcome{}, err
	}
	d.Out = late
	return r.run(fn, d, stepError, every, see)
}

// glowAt tells what the coals give at a time.
func (s *simulation) glowAt(t float64) {
	if s.coals {
		s.glow = math.Exp2((s.burnt() - t) / s.half)
	}
}

// burnt is when the last wood went on, in seconds since the lighting.
func (s *simulation) burnt() float64 { return s.over - deadCoals*s.half }

// lastWood leaves the fire to its coals, or ends the day if there are none that
// still give heat. It reports whether the day goes on.
func (s *simulation) lastWood() bool {
	switch {
	case s.coals:
		s.coalsOut()
		return false
	case s.half == 0 || s.banked:
		s.end(EventFireOut)
		return false
	}
	s.out.LastWood = s.clock(s.now)
	s.tell(EventLastWood, -1)
	s.coals = true
	s.over = s.now + deadCoals*s.half
	s.resume()
	return !s.ended
}

// coalsOut ends a day on coals, which may have finished a kettle: they bring it
// to its strength in the limit.
func (s *simulation) coalsOut() {
	s.dead = true
	m := s.y[0] + s.y[s.water(0)]
	finished := s.n == 1 && s.strength > 0 && s.y[s.inTank()] <= nearSyrup*m && s.fraction(s.y, 0) >= s.strength-nearSyrup
	share := lastCoals
	if finished {
		// So much more water is in it while it is near: it keeps its sugar.
		water := s.y[0] * (1/(s.strength-nearSyrup) - 1/s.strength)
		share = min(1, water*s.hot.at(s.strength).latent/s.coalHeat())
	}
	s.now = max(s.told, s.burnt()-s.half*math.Log2(share))
	if finished && s.y[s.inTank()] > 0 {
		s.emptyTank()
	}
	if finished && !s.ended {
		s.emptyKettle()
	}
	s.end(EventFireOut)
}

// wholeFire returns the heat of the full fire in watts, and coalHeat that of all
// coals in joules.
func (s *simulation) wholeFire() (sum float64) {
	for _, q := range s.q {
		sum += q
	}
	return sum
}

func (s *simulation) coalHeat() float64 { return s.wholeFire() * s.half / math.Ln2 }

// sumHeat tells what the fire has given, and what is still to come.
func (s *simulation) sumHeat() {
	o, left := &s.out, 0.0
	switch {
	case !s.coals:
		o.LastWood = o.Ended
		if o.End != EventFireOut {
			left = 1
		}
	case !s.dead:
		s.glowAt(s.now)
		left = s.glow
	}
	gave := 0.0
	if s.coals {
		gave = 1 - left
	}
	o.Heat = units.Energy(s.wholeFire()*s.burned + s.coalHeat()*gave)
	o.ToCome = units.Energy(s.coalHeat() * left)
}
