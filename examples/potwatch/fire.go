package main

import (
	"errors"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// fire is how a batch that loses so much water in an hour goes on.
type fire struct {
	past bool          // it is stronger than the target
	left time.Duration // under a full fire

	coasts units.Brix        // where it ends if no more wood goes on now; 0 without coals
	burns  bool              // it ends beyond all that is syrup or candy
	last   units.Brix        // strength at the last firing; 0 if it is too late for one
	until  time.Duration     // time to it
	there  time.Duration     // time until the coals have brought it to the target but for aside
	shows  units.Temperature // what the thermometer then shows, if it was said where water boils
}

// aside is as close to a strength as a hydrometer tells.
const aside units.Brix = 0.1

// watchFire finds the time left and the last firing. The flag is where the rate
// comes from.
func watchFire(b finish.Batch, flag string, s *setup, t *thermometer) (w fire, err error) {
	if w.past = b.Brix > s.target; !w.past {
		if w.left, err = b.Time(s.target); err != nil {
			return w, cli.For(flag, err)
		}
	}
	if s.coals == 0 {
		return w, nil
	}
	if w.coasts, err = b.Coast(s.coals); errors.Is(err, finish.ErrBurns) {
		w.burns = true
		return w, nil
	}
	if err != nil {
		return w, cli.For("coals", err)
	}
	if w.past {
		return w, nil
	}
	last, err := b.LastFiring(s.target, s.coals)
	if errors.Is(err, finish.ErrCoalsFinish) {
		return w, nil
	}
	if err != nil {
		return w, cli.For("coals", err)
	}
	w.last = last
	if w.until, err = b.Time(max(w.last, b.Brix)); err != nil {
		return w, cli.For(flag, err)
	}
	take, err := finish.CoalsTime(w.last, s.target, s.coals)
	if err != nil {
		return w, cli.For("coals", err)
	}
	if w.there = w.until + take; t != nil {
		w.shows, err = t.shows(w.last)
	}
	return w, err
}

// fire is that of the readings: how fast the strength climbs tells what share of
// its mass the pot loses, whatever the mass.
func (w *watch) watchFire(s *setup, t *thermometer) (fire, error) {
	const any = 10 * units.Kilogram
	lost := any * units.Mass(w.PerMinute/w.Now)
	return watchFire(finish.Batch{Mass: any, Brix: w.Now, Evaporation: units.MassRate(lost.Kilograms()/time.Minute.Seconds()) * units.KilogramPerSecond}, "readings", s, t)
}

// tooLate tells what to do about coals that give too much: common practice.
const tooLate = "beyond the target: take the pot off when it is syrup, or pour in sap; shut the ash door but leave the flue damper open, against carbon monoxide, and never rake out live coals"

// fireRows tells when the last wood goes on, and when the coals have done. When
// tells what a time counts from.
func (p page) fireRows(part *cli.Part, f fire, when func(time.Duration) string) {
	switch {
	case f.past:
	case f.burns:
		part.Row("coasts", "Without more wood it goes to", cli.Words("burnt sugar"), tooLate)
	case f.coasts == 0:
	case f.last == 0:
		part.Row("coasts", "Without more wood it goes to", cli.Brix(f.coasts, 1), tooLate)
	default:
		notes := []string{"the coals bring it the rest of the way"}
		if p.thermometer != nil {
			notes = append([]string{"the thermometer at " + p.In(cli.Temperature(f.shows))}, notes...)
		}
		part.Row("last_firing", "Stop firing at", cli.Brix(f.last, 1), notes...)
		part.Row("last_firing_min", "Last wood in", minutes(f.until), when(f.until))
		part.Row("there_min", "Syrup, but for "+aside.Text(1)+", in", minutes(f.there), when(f.there), "over coals alone; read it before then, and take it off when it is syrup")
		part.Row("coasts", "Stopped now it would end at", cli.Brix(f.coasts, 1))
	}
}
