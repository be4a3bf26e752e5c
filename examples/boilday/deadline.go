package main

import (
	"errors"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A deadline is when the day's boil is to be done, and on what wood, and what that
// leaves.
type deadline struct {
	by   time.Time    // zero if none was given
	wood units.Volume // zero if there is enough
	all  units.Volume // sap that there is; of it the plan boils what fits
	late bool         // the pan is empty by then, and the pot ends later
	pot  units.Volume // sap that would be syrup by then, if late
}

// meet moves the lighting so that the boil is done by the time that was asked for,
// or takes as much sap as that allows if the lighting was given too, or there is
// not day enough, or not wood enough.
func (p *plan) meet(s *setup, f *cli.Flags) error {
	if f.Given("wood-left") {
		if s.fuel != "wood" {
			return cli.For("wood-left", errors.New("it goes with -fuel wood"))
		}
		if err := cli.Within("wood-left", "wood", s.woodLeft, units.Cord/10000, 1000*units.Cord, units.Cord, "cord", "a face cord of 16 in pieces is a third"); err != nil {
			return err
		}
		p.deadline.wood = s.woodLeft
	}
	if !f.Given("done-by") {
		return p.spareWood(s)
	}
	by, err := time.Parse("15:04", s.doneBy)
	if err != nil {
		return cli.For("done-by", errors.New("write a time of the day as 22:00"))
	}
	if !by.After(p.start) {
		by = by.Add(24 * time.Hour)
	}
	p.deadline.by = by
	if p.runsAway() {
		return nil // no clock holds a fire that is not to be lit
	}
	if p.flags.Source("start").Kind == cli.Assumed {
		switch done, err := p.lightFor(s, by); {
		case err != nil:
			return err
		case done:
			if err := p.spareWood(s); err != nil || p.deadline.all == 0 {
				return err
			}
			_, err := p.lightFor(s, by) // less sap is lit later
			return err
		}
	}
	return p.fit(s, "done-by")
}

// spareWood boils what the wood that is left allows.
func (p *plan) spareWood(s *setup) error {
	if p.deadline.wood == 0 || p.runsAway() {
		return nil
	}
	return p.fit(s, "wood-left")
}

// fitting tells that the plan keeps within time and wood.
func (p *plan) fitting(s *setup) bool { return p.keeps(s, p.ends()) }

// offInTime tells that the pan does, whatever the pot takes after it.
func (p *plan) offInTime(s *setup) bool { return p.small && !p.alone && p.keeps(s, p.done) }

// keeps tells that what ends so long after lighting keeps within time and wood.
func (p *plan) keeps(s *setup, end time.Duration) bool {
	d := &p.deadline
	late := !d.by.IsZero() && (p.start.Add(end).After(d.by) || p.sapStays())
	if late || p.runsAway() {
		return false
	}
	return d.wood == 0 || p.fire(s) == nil && p.burn.cords <= d.wood
}

// ends is when the boil is done, from lighting the fire.
func (p *plan) ends() time.Duration {
	if p.run != nil && !p.small {
		return p.run.Ended
	}
	return p.potDone()
}

// sapStays tells that a pan of compartments did not take all of the sap.
func (p *plan) sapStays() bool { return p.run != nil && p.run.SapLeft > units.Gram }

// lightFor lights the fire in time, if the same day is long enough.
func (p *plan) lightFor(s *setup, by time.Time) (bool, error) {
	light := by.Add(-p.ends()).Truncate(time.Minute)
	if p.run != nil {
		rig, day, err := p.rig(s)
		if err != nil {
			return false, err
		}
		day.Sap = p.loads(s, midnight)
		after, _, err := rig.LightBy(day, by.Sub(midnight)-p.pot.heating-p.pot.boiling)
		if errors.Is(err, pan.ErrNoRoom) {
			return false, nil
		}
		if err != nil {
			return false, cli.For("done-by", err)
		}
		light = midnight.Add(after).Truncate(time.Minute)
	}
	if light.Before(midnight) {
		return false, nil
	}
	p.start = light
	p.comes = p.lastComes()
	return true, p.down(s)
}

// midnight is that before the day that is planned, as its times are read.
var midnight = time.Date(0, 1, 1, 0, 0, 0, 0, time.UTC)

// fits is how finely the sap that fits is looked for.
const fits = 400

// fit takes the most sap that is done by the time and on the wood. Less sap is not
// always done sooner, as when it no longer covers the pan, and so every share is
// tried.
func (p *plan) fit(s *setup, flag string) error {
	if p.fitting(s) {
		return nil
	}
	q, ok := p.most(s, (*plan).fitting)
	if !p.deadline.by.IsZero() {
		// A slow pot is no reason to leave sap that the pan takes.
		if off, suits := p.most(s, (*plan).offInTime); suits && off.gathered.Volume() > 2*q.gathered.Volume() {
			off.deadline.late, off.deadline.pot = true, q.gathered.Volume()
			q, ok = off, true
		}
	}
	if ok {
		if q.gathered.Volume() < p.gathered.Volume() {
			q.deadline.all = p.gathered.Volume()
		}
		*p = q
		return nil
	}
	why := "not even a twentieth of the sap is syrup by then: light earlier, or hold it cold for another day"
	if flag == "wood-left" {
		why = "it does not boil down even a twentieth of the sap: get wood first"
	}
	return cli.For(flag, errors.New(why))
}

// most is the plan with the most of the sap that suits.
func (p *plan) most(s *setup, suits func(*plan, *setup) bool) (plan, bool) {
	for i := fits; i >= fits/20; i-- { // less is not worth a fire
		q, err := p.part(float64(i) / fits)
		if err == nil {
			err = q.down(s)
		}
		if err == nil && suits(&q, s) {
			return q, true
		}
	}
	return plan{}, false
}

// part is the plan with a share of its sap, and all of its sweet.
func (p *plan) part(share float64) (q plan, err error) {
	q = *p
	some := func(l sugar.Lot) (sugar.Lot, error) {
		return sugar.NewLotByMass(l.Mass()*units.Mass(share), l.Brix(), l.Temperature())
	}
	q.gatherings = make([]gathering, len(p.gatherings))
	for i, g := range p.gatherings {
		q.gatherings[i] = g
		if q.gatherings[i].lot, err = some(g.lot); err != nil {
			return q, err
		}
	}
	if q.gathered, err = some(p.gathered); err == nil {
		q.tank, err = some(p.tank)
	}
	if err != nil {
		return q, err
	}
	q.firing, q.run = firing{}, nil
	return q, q.pour(p.given)
}

// sapWords tells the sap of the day, and of how much it is what fits.
func (p page) sapWords() string {
	if all := p.deadline.all; all > 0 {
		return p.In(cli.Gallons(p.pooled().Volume(), cli.Down)) + " of the " + p.In(cli.Gallons(all, cli.Nearest)) + " of sap"
	}
	return p.In(cli.Gallons(p.pooled().Volume(), cli.Nearest)) + " of sap"
}

// potWords tells what becomes of what the pot does not end in time.
func (p page) potWords() string {
	if !p.deadline.late {
		return ""
	}
	words := "Off the pan by " + p.deadline.by.Format("15:04") + "; the pot ends later. Or cool what comes off, keep it below " + p.AtMost(units.Fahrenheit(40)) +
		" and end it the next day."
	if p.deadline.pot > 0 {
		words += " Syrup by then: from no more than " + p.In(cli.Gallons(p.deadline.pot, cli.Down)) + " of sap."
	}
	return words
}

// deadlineRow tells what is left for another day.
func (p page) deadlineRow(part *cli.Part) {
	if all := p.deadline.all; all > 0 {
		what := "more than that wood boils"
		if !p.deadline.by.IsZero() {
			what = "does not fit until " + p.deadline.by.Format("15:04")
			if p.deadline.wood > 0 {
				what += " and on that wood"
			}
		}
		part.Row("later", "Sap for another day", cli.Volume(all-p.pooled().Volume()), what+": keep it cold, and boil it first")
	}
}
