package main

import (
	"cmp"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// pour puts the sweet of a single pan to its sap: it is no sap of the tank, but all
// goes one way.
func (p *plan) pour(s *setup) error {
	if len(s.compartments) == 0 {
		return p.together()
	}
	p.sap = p.tank
	return nil
}

// together counts the sweet as sap.
func (p *plan) together() (err error) {
	p.sap, err = sugar.Blend(p.tank, p.sweet.Lot)
	return err
}

// down boils the sap down.
func (p *plan) down(s *setup) error {
	err := cmp.Or(p.pour(s), p.amounts(s))
	if err != nil {
		return err
	}
	if p.coals, err = p.coalsWater(s); err != nil {
		return err
	}
	atPan := p.clock
	switch {
	case p.tank.Volume()+p.sweet.Volume() < s.pan.Area.Volume(s.safe):
		atPan = p.intoPot
	case len(s.compartments) > 0:
		atPan = p.simulate
	}
	return cmp.Or(atPan(s), p.finishInPot(s))
}

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
