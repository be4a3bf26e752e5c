package pan

import (
	"math"
	"slices"
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
	o, err := r.run(fn, d, stepError, 0, nil)
	if err == nil && o.overruns() {
		if o, err = r.lastWood(fn, d); err == nil {
			d.Out = o.LastWood
		}
	}
	if err != nil || see == nil && every == 0 {
		return o, err
	}
	return r.run(fn, d, stepError, every, see)
}

// overruns reports whether the coals did more than they should.
func (o *Outcome) overruns() bool { return o.ToCome > 0 && o.End != EventFireOut }

// lastWood finds the latest wood after which the coals do not overrun, or no wood
// after the lighting if they do so whatever is done, and what comes of it.
func (r *Rig) lastWood(fn string, d Day) (Outcome, error) {
	plain := *r
	plain.Coals = 0
	o, err := plain.run(fn, d, stepError, 0, nil)
	if err != nil {
		return Outcome{}, err
	}
	// The coals give as much as a full fire gives in H/ln 2: about that long
	// before a fire without coals would have to be out.
	late := min(o.Ended, d.Out)
	ahead := 1.001 * r.Coals.Seconds() / math.Ln2
	for {
		early := max(d.Light, late-time.Duration(ahead*1e9))
		// What comes before is the same whenever the wood stops after it.
		d.Out = late
		before, err := r.start(fn, d, stepError, 0, nil)
		if err != nil {
			return Outcome{}, err
		}
		if err := before.burn(fn, before.since(early)); err != nil {
			return Outcome{}, err
		}
		stopWood := before.stopWood
		if slices.ContainsFunc(d.Sap, func(l Sap) bool { return l.At >= early && l.At <= late }) {
			// Whether the fire waits for it hangs on when the wood stops.
			stopWood = func(fn string, out time.Duration) (Outcome, error) {
				d.Out = out
				return r.run(fn, d, stepError, 0, nil)
			}
		}
		best, err := stopWood(fn, early)
		if err != nil {
			return Outcome{}, err
		}
		if best.overruns() && early > d.Light {
			ahead *= 2
			late = early
			continue
		}
		for !best.overruns() && (late-early).Seconds() > planStep {
			middle := early + (late-early)/2
			then, err := stopWood(fn, middle)
			if err != nil {
				return Outcome{}, err
			}
			if then.overruns() {
				late = middle
			} else {
				early, best = middle, then
			}
		}
		return best, nil
	}
}

// stopWood goes on from where the day stands, with the last wood at a time, and
// leaves the day itself as it is.
func (s *simulation) stopWood(fn string, out time.Duration) (Outcome, error) {
	c := s.clone()
	day := *s.day
	day.Out = out
	c.day, c.over = &day, c.since(out)
	if err := c.burn(fn, math.Inf(1)); err != nil {
		return Outcome{}, err
	}
	if err := c.close(fn); err != nil {
		return Outcome{}, err
	}
	return c.out, nil
}

// clone returns a simulation that goes on from the same state by itself.
func (s *simulation) clone() *simulation {
	c := *s
	k := *s.kernel
	for _, row := range []*[]float64{&k.q, &k.full, &k.safe, &k.w, &k.m, &k.in, &k.off, &k.spare, &k.warm} {
		*row = slices.Clone(*row)
	}
	k.boils, k.l = slices.Clone(k.boils), slices.Clone(k.l)
	c.kernel, c.seen.kernel = &k, &k
	c.stepper = newStepper(k.size(), c.derive)
	c.live, c.chain = s.live, chain{}
	copy(c.y, s.y)
	c.seen.y = c.y
	copy(c.slope[0], s.slope[0])
	c.out.Draws = slices.Clone(s.out.Draws)
	return &c
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
