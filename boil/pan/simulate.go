package pan

import (
	"cmp"
	"errors"
	"math"
	"slices"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// ErrTooBusy is what a simulation ends with when it would take more than some
// 200,000 steps or 50,000 events: a compartment too small for its fire over too long a
// time, or a valve that opens and shuts without end.
var ErrTooBusy = errors.New("too much happens on this day to follow it: check areas, depths, pail and rate of the draw")

// Bounds of the work.
const (
	maxSteps  = 200_000
	maxEvents = 50_000
)

// stepError is the error that a step may make, as a share of the mass in a
// compartment: 1e-6 Brix.
const stepError = 1e-8

// longestStep bounds a step in seconds, so that no event hides inside it.
const longestStep = 1800.0

// Run boils through a day.
//
// Sugar and water come out as they went in, to 1e-9 of themselves; strengths and
// times do not depend on the steps of the method. Totals and the sugar drawn
// plus held move continuously with everything that the rig and the day are made
// of; the number and the times of draws between two strengths may jump.
//
// With [Rig.Coals] the last wood goes on as late as the day and the coals allow:
// after it they still give Heat times half-life over ln 2, which must not take a
// pan below its safe depth, a kettle past its strength, or anything to 75 Brix.
// Where they do so whenever the wood stops, the answer is what one charge of wood
// does, and [Outcome.ToCome] is over zero: pour in sap before the level is low. The
// coals have done their work when a hundredth of them is left, or a kettle is
// within 0.1 Brix. Those of a banked fire are not counted.
//
// Range: 1 to 100 compartments that the whole fire would take 10 seconds or more
// to boil away, 1 W to 100 MW, a fire of up to 14 days, 50 to 110 kPa, sap and
// contents of 0 to 75 Brix; the rest at the fields. Uncertainty: that of Heat
// above all, which is in proportion to the rate; foam, spatter and the warming of
// the arch are not in it. A day that cannot be followed gives [ErrTooBusy].
//
// Method: mass and heat balances of each compartment, see [Rig], by a
// Runge-Kutta method of order 5 with controlled error and located events, and by
// backward differentiation where many small parts would keep its steps short. Check
// value: 43.389 US gallons of sap of 2.0 Brix are 1.000 of syrup of 66.0, both at
// 20 C (computed).
func (r Rig) Run(d Day) (Outcome, error) {
	return r.follow("pan.Rig.Run", d, 0, nil)
}

// Trace boils through a day as [Rig.Run] does and shows it to the caller: every
// event, and a [EventReading] at the lighting of the fire and every so often after it
// if every is more than zero, which is then a second or more. Nothing is kept, so
// that a long series takes no memory. Sap that arrives before the fire is lit is
// in the tank without an event. The day ends early when see returns false.
func (r Rig) Trace(d Day, every time.Duration, see func(Moment) bool) (Outcome, error) {
	return r.follow("pan.Rig.Trace", d, every, see)
}

// traceEvery is how often a series may be asked for.
var traceEvery = limit.Range{Arg: "every", What: "time between readings", Low: 1, High: longestDay.Seconds(), Unit: "s",
	Below: "leave it zero to see the events alone"}

// simulation is one day under way.
type simulation struct {
	*kernel
	*stepper
	chain chain
	day   *Day
	pail  float64 // m3; zero under a float
	until float64 // strength at which the valve shuts; zero for a thin stream
	now   float64 // seconds since the lighting

	sap      []Sap // still to come, in order of time
	reverses []time.Duration
	reversed bool
	banked   bool
	ended    bool
	burned   float64 // seconds of full fire
	over     float64 // when the last wood goes on
	half     float64 // half-life of the coals in seconds; zero without any
	coals    bool    // no more wood goes on
	dead     bool    // and they have given all they had
	told     float64 // time of the last event
	preheat  units.Temperature
	sapTemp  float64 // of the tank, in C

	every   float64
	reading float64 // time of the next one
	see     func(Moment) bool
	changed bool    // since the events were looked at
	seen    flowing // what was derived last

	tolerance float64
	wish      [wide + 1]float64 // length of the next step, by the state of the valve

	drawing Drawn
	out     Outcome
}

func (r *Rig) run(fn string, d Day, tolerance float64, every time.Duration, see func(Moment) bool) (Outcome, error) {
	s, err := r.start(fn, d, tolerance, every, see)
	if err == nil {
		err = s.burn(fn, math.Inf(1))
	}
	if err == nil {
		err = s.close(fn)
	}
	if err != nil {
		return Outcome{}, err
	}
	return s.out, nil
}

// start goes from the first load of sap to the lighting of the fire.
func (r *Rig) start(fn string, d Day, tolerance float64, every time.Duration, see func(Moment) bool) (*simulation, error) {
	if err := r.check(fn, len(d.Reverse) > 0); err != nil {
		return nil, err
	}
	if err := d.check(fn, len(r.Compartments)); err != nil {
		return nil, err
	}
	if every != 0 {
		if err := traceEvery.Check(fn, every.Seconds()); err != nil {
			return nil, err
		}
	}
	h, err := newHot(fn, "Day.Pressure", d.Pressure)
	if err != nil {
		return nil, err
	}
	k := newKernel(h, r)
	s := &simulation{
		kernel: k, day: &d, tolerance: tolerance, half: r.Coals.Seconds(),
		until: r.Draw.Until.Fraction(), preheat: r.PreheatTo, wish: [wide + 1]float64{10, 10, 10, 10},
		every: every.Seconds(), see: see,
		sap: slices.Clone(d.Sap), reverses: slices.Clone(d.Reverse),
	}
	s.stepper = newStepper(k.size(), s.derive)
	s.over = s.since(d.Out)
	if r.Feed == PailFeed {
		s.pail = float64(r.Pail)
	}
	slices.SortStableFunc(s.sap, func(a, b Sap) int { return cmp.Compare(a.At, b.At) })
	slices.Sort(s.reverses)
	for len(s.sap) > 0 && s.sap[0].At <= s.day.Light {
		if err := s.unload(fn); err != nil {
			return nil, err
		}
	}
	return s, s.light(fn)
}

// clock turns seconds since the lighting into the time of the day.
func (s *simulation) clock(x float64) time.Duration {
	return s.day.Light + time.Duration(math.Round(x*1e9))
}

// since is the reverse of clock.
func (s *simulation) since(t time.Duration) float64 { return (t - s.day.Light).Seconds() }

// tell shows an event to the caller.
func (s *simulation) tell(e Event, i int) { s.show(e, i, s.now, s.y) }

// show is tell for a state of the past.
func (s *simulation) show(e Event, i int, at float64, y []float64) {
	if e != EventReading {
		s.told = at
	}
	if s.see == nil || s.ended && e != EventFireOut {
		return
	}
	if i >= 0 && s.reversed {
		i = s.n - 1 - i
	}
	if !s.see(Moment{At: s.clock(at), Event: e, Compartment: i, k: s.kernel, y: y, reversed: s.reversed}) {
		s.end(EventReading)
	}
}

// end ends the day, for the first reason given.
func (s *simulation) end(why Event) {
	if !s.ended {
		s.ended, s.out.End = true, why
	}
}

// derive sets dy to the rate of change of state y, so long after now.
func (s *simulation) derive(after float64, y, dy []float64) {
	s.glowAt(s.now + after)
	s.seen = s.flows(y)
	s.seen.rates(dy)
}

// burn is the loop over steps and events until the end of the fire, or until a
// pause.
func (s *simulation) burn(fn string, pause float64) error {
	patience := 4*s.n + 8
	events, instant := 0, 0
	for steps := 0; !s.ended && s.now < pause; steps++ {
		if steps > maxSteps || events > maxEvents {
			return &followError{fn, ErrTooBusy}
		}
		if s.now >= s.over && !s.lastWood() {
			break
		}
		if done, err := s.scheduled(fn); err != nil {
			return err
		} else if done {
			events++
			continue
		}
		stop := min(s.nextScheduled(s.over), pause)
		if s.banked {
			s.wait(stop)
			continue
		}
		// Several events may be due at one instant. Should they call for each
		// other without end, one step is taken regardless.
		blind := instant > patience
		e := none
		if s.changed && !blind {
			e = s.due()
		}
		if e == none {
			before := s.now
			var err error
			if e, err = s.step(stop, blind); err != nil {
				return &followError{fn, err}
			}
			if s.now > before {
				instant = 0
				if !s.coals {
					s.burned += s.now - before
				}
			}
		}
		if e != none {
			s.handle(e)
			events++
			instant++
		}
	}
	return nil
}

// readings shows the series up to time stop.
func (s *simulation) readings(stop float64, at func(t float64) []float64) {
	if s.coals {
		stop = min(stop, s.burnt()-s.half*math.Log2(lastCoals))
	}
	for s.every > 0 && s.reading <= stop && !s.ended {
		s.show(EventReading, -1, s.reading, at(s.reading))
		s.reading += s.every
	}
}
