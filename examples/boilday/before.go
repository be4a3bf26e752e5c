package main

import (
	"errors"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// rated is the temperature at which membranes are rated: 55 F, Ohio State
// University Extension.
var rated = units.Fahrenheit(55)

func (s *setup) declareBefore(f *cli.Flags) {
	f.Group("Ice and a membrane before the fire")
	f.Quantity(&s.ice, "ice", "", "weight of the ice that you take out of the sap once it is measured and read")
	f.Quantity(&s.iceReads, "ice-reads", "", "what a melted piece of it reads; without it the ice is taken as pure, and it is not")
	f.Quantity(&s.membraneTo, "membrane-to", "", "strength to which a reverse osmosis machine concentrates the sap first")
	f.Quantity(&s.membrane.Flow, "membrane-flow", "", "permeate flow that its maker rates at 55 F")
	f.Quantity(&s.membrane.Pump, "membrane-pump", "", "pressure of its pump: what it cannot do is then refused")
}

// parted is sap from which water was taken before the fire is lit.
type parted struct {
	before sugar.Lot
	sugar.Separation
	saved units.Share // of the evaporation
	fuel  units.Share // of the heat
}

// sparing tells what it saves to take water out.
func (p *plan) sparing(s *setup, before sugar.Lot, sep sugar.Separation) (q parted, err error) {
	q = parted{before: before, Separation: sep}
	if q.saved, err = sep.EvaporationSaved(s.target); err != nil {
		return q, err
	}
	was, err := boil.Heat(before, s.target, p.pressure)
	if err != nil {
		return q, err
	}
	is, err := boil.Heat(sep.Concentrate, s.target, p.pressure)
	q.fuel = units.FractionShare(1 - float64(is.Total()/was.Total()))
	return q, err
}

// takeIce lifts the ice out of the sap, if there is any.
func (p *plan) takeIce(s *setup, f *cli.Flags) error {
	if !f.Given("ice") {
		if f.Given("ice-reads") {
			return cli.For("ice", errors.New("give the weight of the ice"))
		}
		return nil
	}
	if err := cli.Within("ice", "ice", s.ice, units.Gram, p.sap.Mass()/2, units.Pound, "lb", "weigh what you throw away: more than half of the sap is no ice"); err != nil {
		return err
	}
	sep, err := sugar.TakeIce(p.sap, s.ice, s.iceReads)
	if err != nil {
		return cli.ForArg(err, "ice", "strength", "ice-reads")
	}
	taken, err := p.sparing(s, p.sap, sep)
	if err != nil {
		return cli.For("ice", err)
	}
	p.ice, p.sap = &taken, sep.Concentrate
	return nil
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
		return cli.ForArg(err, "membrane-to", "Membrane.Pump", "membrane-pump")
	}
	p.membrane = new(membraneRun)
	if p.membrane.parted, err = p.sparing(s, p.sap, sep); err != nil {
		return cli.For("membrane-to", err)
	}
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
	p.sap = sep.Concentrate
	return nil
}

// membraneRun is what the membrane did.
type membraneRun struct {
	parted
	factor units.Share
	time   time.Duration
}

// savedRows tells what is saved.
func (p page) savedRows(part *cli.Part, q *parted) {
	part.Row("saved", "Evaporation saved", cli.Share(q.saved, 1))
	hours := time.Duration(0)
	if rate, err := p.given.pan.Evaporation(); err == nil {
		hours = rate.Time(q.Removed.Mass())
	}
	part.Row("spared", "Hours at the fire saved", cli.Hours(hours))
	part.Row("fuel_saved", "Fuel saved", cli.Share(q.fuel, 0))
}

func (p page) icePart(part *cli.Part) {
	q := p.ice
	part.Row("ice", "Ice taken out", cli.Mass(q.Removed.Mass()), "of "+q.Removed.Brix().Text(1)+" once melted")
	part.Row("left", "Sap that is left", cli.Volume(q.Concentrate.Volume()), "of "+q.Concentrate.Brix().Text(2))
	if lost := q.Removed.Sugar(); lost > 0 {
		part.Row("lost", "Sugar thrown away with it", cli.Mass(lost), units.FractionShare(float64(lost/q.before.Sugar())).Text(1)+" of all")
	}
	p.savedRows(part, q)
	part.If(!p.flags.Given("ice-reads")).Remark("The ice is taken as pure water, and it is not: melt a piece, read it, and give it with -ice-reads. What it reads is thrown away.")
}

func (p page) membranePart(part *cli.Part) {
	m := p.membrane
	part.Row("to", "Concentrated to", cli.Brix(m.Concentrate.Brix(), 1), "from "+m.before.Brix().Text(2))
	part.Row("concentrate", "Concentrate for the pan", cli.Volume(m.Concentrate.Volume()))
	part.Row("permeate", "Water taken out", cli.Volume(m.Removed.Volume()))
	p.savedRows(part, &m.parted)
	if m.time > 0 {
		part.Row("time", "Time at the membrane", cli.Hours(m.time), "at least; cold sap runs at "+m.factor.Text(0)+" of the flow at "+p.Degrees(rated))
		part.Row("from", "Before the fire, start it by", cli.ClockBy(p.start, p.start.Add(-m.time), time.Minute, cli.Down))
		p.beside(part)
	}
	part.Remark("Concentrate spoils within hours and not days (from memory): boil it the same day.")
}

// beside tells whether the membrane could run while the fire burns.
func (p page) beside(part *cli.Part) {
	if p.run != nil || p.alone || !(p.lastSap > 0) {
		return
	}
	gives := p.membrane.Concentrate.Volume().Per(p.membrane.time)
	takes := p.waits.Per(p.lastSap)
	part.Row("gives", "It gives concentrate at", cli.Rough(cli.Flow(gives)), "the pan takes "+p.In(cli.Rough(cli.Flow(takes))))
	what := "Beside the fire it keeps up, once the pan is full."
	if gives < takes {
		what = "Beside the fire it does not keep up: let it run before, or the pan runs short."
	}
	part.Remark(what)
}
