package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// rated is the temperature at which membranes are rated: 55 F, Ohio State
// University Extension.
var rated = units.Fahrenheit(55)

func (s *setup) declareMembrane(f *cli.Flags) {
	f.Group("A membrane before the fire")
	f.Quantity(&s.membraneTo, "membrane-to", "", "strength to which a reverse osmosis machine concentrates the sap first")
	f.Quantity(&s.membrane.Flow, "membrane-flow", "", "permeate flow that its maker rates at 55 F")
	f.Quantity(&s.membrane.Pump, "membrane-pump", "", "pressure of its pump: what it cannot do is then refused")
}

func (s *setup) declareDoubt(f *cli.Flags) {
	f.Quantity(&s.doubt.Division, "division", "0.5 Brix", "smallest step that you read on the syrup hydrometer")
	f.Quantity(&s.doubt.Thermometer, "thermometer", "2 F deg", "how far the thermometer in the cup may be off")
	f.Quantity(&s.doubt.Calibration, "calibration", "0.2 Brix", "how far the scale of the hydrometer may be off (k = 2)")
}

func (s *setup) declareBottles(f *cli.Flags) {
	f.Quantity(&s.bottle, "bottle", "", "label volume of your bottles, to see how many to have clean")
	f.Quantity(&s.pack, "pack", "185 F", "temperature of the syrup when it is filled")
}

// concentrate runs the pooled sap through the membrane, if there is one.
func (p *plan) concentrate(s *setup, f *cli.Flags) error {
	if !f.Given("membrane-to") {
		if f.Given("membrane-flow") || f.Given("membrane-pump") {
			return cli.For("membrane-to", errors.New("say how far the membrane concentrates, such as \"8 Brix\""))
		}
		return nil
	}
	if err := cli.Within("membrane-to", "strength", s.membraneTo, p.sap.Brix(), 40, 1, "Brix", "it lies above that of the sap; membranes reach 6 to 16 Brix, some 40"); err != nil {
		return err
	}
	sep, err := s.membrane.Concentrate(p.sap, s.membraneTo)
	if err != nil {
		return cli.For(flagOf(err, "membrane-to", "Membrane.Pump", "membrane-pump"), err)
	}
	p.membrane = &membraneRun{before: p.sap, Separation: sep}
	if s.membrane.Flow > 0 {
		factor, err := sugar.FlowFactor(rated, p.sap.Temperature())
		if err != nil {
			return cli.For("sap-temp", err)
		}
		if p.membrane.time, err = s.membrane.Time(sep.Removed.Volume(), factor); err != nil {
			return cli.For("membrane-flow", err)
		}
		p.membrane.factor = factor
	}
	if p.membrane.saved, err = sep.EvaporationSaved(s.target); err != nil {
		return cli.For("membrane-to", err)
	}
	p.sap = sep.Concentrate
	return nil
}

// membraneRun is what the membrane did before the fire was lit.
type membraneRun struct {
	before sugar.Lot
	sugar.Separation
	saved  units.Share
	factor units.Share
	time   time.Duration
}

func (p page) membranePart(part *cli.Part) {
	m := p.membrane
	part.Row("to", "Concentrated to", cli.Brix(m.Concentrate.Brix(), 1), "from "+m.before.Brix().Text(2))
	part.Row("concentrate", "Concentrate for the pan", cli.Volume(m.Concentrate.Volume()))
	part.Row("permeate", "Water taken out", cli.Volume(m.Removed.Volume()))
	part.Row("saved", "Evaporation saved", cli.Share(m.saved, 1))
	if m.time > 0 {
		part.Row("time", "Time at the membrane", cli.Hours(m.time), "at least; cold sap runs at "+m.factor.Text(0)+" of the flow at "+p.whole(rated))
	}
	part.Remark("Concentrate spoils within hours and not days (from memory): boil it the same day.")
}

// sure finds how well a reading at the mark tells the strength.
func (p *plan) sure(s *setup) error {
	h := density.Hydrometer{GraduatedAt: s.stem}
	var err error
	p.measured, err = h.Measure(p.reads, s.cup, s.doubt)
	return cli.For("cup", err)
}

// bottles counts what to have clean.
func (p *plan) bottles(s *setup, f *cli.Flags) error {
	if !f.Given("bottle") {
		return nil
	}
	// A hair of rounding must not fail 190 F.
	if most := packing.PourMost(); s.pack.Celsius() > most.Celsius()+1e-9 {
		return cli.For("pack", fmt.Errorf("no source read fills hotter than %s (%s): let the syrup cool to that, or it darkens and throws niter",
			most.Text(units.ScaleFahrenheit, 0), most.Text(units.ScaleCelsius, 1)))
	}
	c := packing.Container{Label: s.bottle}
	fill, err := c.Fill(s.target, s.pack, 0)
	if err != nil {
		return cli.For(flagOf(err, "bottle", "at", "pack"), err)
	}
	p.filling = fill
	mass, brix := p.bottled()
	if !(mass > 0) {
		return nil
	}
	hot, err := sugar.NewLotByMass(mass, brix, s.pack)
	if err != nil {
		return cli.For("pack", err)
	}
	plan, err := packing.FewestContainers(hot, 0, packing.Supply{Container: c, OnHand: packing.Plenty})
	if err != nil {
		return cli.For("bottle", err)
	}
	p.packed = &plan
	return nil
}

// bottled is the syrup that there will be today: what is drawn from a pan of
// compartments, and without the sugar that stays behind in one that finishes in
// a pot.
func (p *plan) bottled() (units.Mass, units.Brix) {
	switch {
	case p.small:
		return p.given.target.Of(p.takeoff.Sugar()), p.given.target
	case p.run != nil:
		return p.run.Syrup.Mass(), p.run.Syrup.Brix()
	}
	return p.syrup.Mass(), p.given.target
}

func (p page) bottlePart(part *cli.Part) {
	if p.packed == nil {
		part.Row("bottles", "Bottles to have clean", cli.Count(0, ""), "no syrup today")
		return
	}
	size := cli.SmallVolume
	if p.given.bottle >= units.USGallon {
		size = cli.Volume
	}
	part.Row("bottles", "Bottles to have clean", cli.Count(p.packed.Lines[0].Count, "of "+p.In(size(p.given.bottle))))
	part.Row("fill", "Fill each with", size(p.filling.Hot), "at "+p.In(cli.Temperature(p.given.pack))+", which is the label's volume at "+p.cool())
	part.Row("left", "Left over, at "+p.cool(), size(p.packed.Left))
	if p.given.pack.Compare(packing.CappingLeast()) < 0 {
		part.Remark("Syrup is sealed at " + p.whole(packing.CappingLeast()) + " or above, or molds may live: fill it hotter.")
	}
}

// pooled is the sap as it was gathered.
func (p *plan) pooled() sugar.Lot { return p.gathered }
