package main

import (
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
)

// fire is how a batch that loses so much water in an hour goes on.
type fire struct {
	past bool          // it is stronger than the target
	left time.Duration // under a full fire

	coasts units.Brix        // where it ends if no more wood goes on now
	last   units.Brix        // strength at the last firing; 0 if it is too late for one
	shows  units.Temperature // what the thermometer then shows, if it was said where water boils
}

// watchFire finds the time left and the last firing.
func watchFire(b boil.Batch, s *setup, t *thermometer) (w fire, err error) {
	if w.past = b.Brix > s.target; !w.past {
		if w.left, err = b.Time(s.target); err != nil {
			return w, cli.For("boils-off", err)
		}
	}
	if s.coals == 0 {
		return w, nil
	}
	if w.coasts, err = b.Coast(s.coals); err != nil {
		return w, cli.For("coals", err)
	}
	if w.coasts >= s.target {
		return w, nil
	}
	if w.last, err = b.LastFiring(s.target, s.coals); err != nil {
		return w, cli.For("coals", err)
	}
	if t != nil {
		w.shows, err = t.sap.SyrupPoint(w.last, t.pressure)
	}
	return w, err
}
