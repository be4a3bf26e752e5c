package main

import (
	"cmp"
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// pot is how a small batch is finished: from the take-off, or from the sap.
type pot struct {
	heating time.Duration // to the boil; nothing for what comes hot off the pan
	boiling time.Duration // then to syrup
	climbs  units.Brix    // a minute, at the end
}

// potDone is when it is syrup, from lighting the fire.
func (f *firing) potDone() time.Duration { return f.done + f.pot.heating + f.pot.boiling }

// intoPot gives up the pan: the sap does not cover it to the safe depth, or not long.
func (p *plan) intoPot(s *setup) error {
	if err := cmp.Or(p.together(), p.amounts(s)); err != nil {
		return err
	}
	p.small, p.alone, p.takeoff = true, true, p.sap
	return nil
}

// takeOff parts what is in a pan into what drains and what stays behind.
func (p *plan) takeOff(s *setup, in sugar.Lot) (err error) {
	if p.left, err = sugar.NewLot(s.pan.Area.Volume(s.heel), in.Brix(), in.Temperature()); err != nil {
		return err
	}
	drains := in.Mass() - p.left.Mass()
	if drains < units.Gram { // also a hair below nothing
		return cli.For("heel", errors.New("as much stays behind as the pan then holds, and nothing drains: give less, or a larger -safe-depth"))
	}
	p.takeoff, err = sugar.NewLotByMass(drains, in.Brix(), in.Temperature())
	return err
}

// finishInPot lets the burner under the pot run.
func (p *plan) finishInPot(s *setup) error {
	if !p.small {
		return nil
	}
	water, err := density.Water(label)
	if err != nil {
		return err
	}
	rate := water.MassRate(s.pot)
	if p.alone {
		if p.pot.heating, err = p.heatingTime(p.takeoff, rate); err != nil {
			return cli.For("pot-rate", err)
		}
	}
	batch := finish.Batch{Mass: p.takeoff.Mass(), Brix: p.takeoff.Brix(), Evaporation: rate}
	if p.pot.boiling, err = batch.Time(s.target); err != nil {
		return cli.For("pot-rate", err)
	}
	batch.Mass, batch.Brix = s.target.Of(p.takeoff.Sugar()), s.target
	p.pot.climbs, err = batch.PerMinute()
	return cli.For("pot-rate", err)
}

// potTitle heads the part of the pot.
func (p page) potTitle() string {
	if p.alone {
		return "Too little for this pan: boil it in a pot"
	}
	return "Too little for this pan: finish in a pot"
}

func (p page) potPart(part *cli.Part) {
	safe := p.In(cli.Length(p.given.safe))
	if p.alone {
		deep := units.Length(p.takeoff.Volume() / units.Volume(p.given.pan.Area))
		why := "under the least safe depth of %s, and scorch"
		if deep >= p.given.safe {
			why = "too little to light a fire under: it would soon be under the least safe depth of %s, and scorch"
		}
		part.Remark(fmt.Sprintf("The sap would lie %s deep in this pan, "+why+". Boil it in a pot from the start, poured in as the level falls, or hold it cold until there is more.", p.In(cli.Rough(cli.Length(deep))), safe))
		part.Row("lit", "Fire lit", cli.Clock(p.start, p.start))
	} else {
		part.Remark(fmt.Sprintf("As syrup it would lie under the least safe depth of %s and scorch. Take it off while it still covers the pan:", safe))
		part.Row("brix", "Take off at", cli.Brix(p.takeoff.Brix(), 1))
		part.Row("temperature", "It then boils at", cli.Temperature(p.takeoff.Temperature()))
		part.Row("volume", "Volume, hot", cli.Volume(p.takeoff.Volume()))
		part.Row("left", "Sugar that stays behind", cli.Mass(p.left.Sugar()), "rinse it out with the next sap")
	}
	part.Row("off", "Water left for the pot", cli.Mass(p.takeoff.Mass()-p.given.target.Of(p.takeoff.Sugar())))
	part.Row("rate", "The pot boils off", cli.Flow(p.given.pot), "give -pot-rate as measured on your own burner")
	part.If(p.alone).Row("boils", "It boils", cli.Clock(p.start, p.start.Add(p.pot.heating)), "after "+p.In(cli.Hours(p.pot.heating)))
	if inPot := p.pot.heating + p.pot.boiling; p.overrun && !p.alone {
		part.Row("takes", "In the pot it takes", cli.Hours(inPot))
	} else {
		part.Row("done", "It is syrup", cli.Clock(p.start, p.start.Add(p.potDone())), p.In(cli.Hours(inPot))+" in the pot")
	}
	watch := "stay with it"
	switch {
	case p.pot.climbs > 10:
		watch = "nobody can watch that: keep the sap cold until there is more"
	case p.pot.climbs > 2:
		watch = "faster than a reading follows: turn the fire down well before"
	}
	part.Row("climbs", "It then climbs in a minute", cli.Rough(cli.Brix(p.pot.climbs, 1)), watch)
	part.Row("syrup", "Syrup from the pot, at "+p.cool(), cli.Volume(units.Volume(float64(p.syrup.Volume())*float64(p.takeoff.Sugar())/float64(p.sap.Sugar()))))
}

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
