package main

import (
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// heatingTime is how long the first filling takes to boil over a fire that
// boils off the given rate afterwards.
func (p *plan) heatingTime(l sugar.Lot, rate units.MassRate) (time.Duration, error) {
	latent, err := boil.LatentHeat(p.waterBoils)
	if err != nil {
		return 0, err
	}
	warm, err := boil.Heat(l, l.Brix(), p.pressure)
	return rate.Time(warm.Sensible.Divide(latent)), err
}
