package main

import (
	"cmp"
	"errors"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// label is the temperature at which syrup is sold by volume: 68 F.
var label = units.Celsius(20)

// plan is the day worked out.
type plan struct {
	given      *setup
	flags      *cli.Flags
	gatherings []gathering
	comes      time.Duration // from lighting the fire to the last gathering
	gathered   sugar.Lot
	sap        sugar.Lot // that is boiled: concentrate, or what was gathered, and the sweet in a pan of one
	sweet      sweet
	tank       sugar.Lot // the sap alone, as it goes to the pan
	deadline   deadline
	stopped    pan.Stopped // when the sap stops
	night      night       // over what stays in a pan of compartments
	chased     *pan.Chased // nil unless the sweet is chased with water

	pressure   units.Pressure
	from       string // the flag that tells the pressure
	waterBoils units.Temperature
	syrupBoils units.Temperature
	slipBrix   units.Brix // how far slip on the thermometer misses the target

	syrup sugar.Lot // at the label temperature
	ratio float64   // exact volumes of sap to one of syrup
	rule  float64   // the same by the rule of 86
	off   units.Mass
	reads units.Brix       // the syrup hydrometer in the cup
	baume density.Baume145 // the same, as it shows
	miss  cli.Off          // what the instruments show too much
	start time.Time

	ice      *parted             // nil if none was taken out
	membrane *membraneRun        // nil without one
	measured density.Measurement // of a reading at the mark
	packed   *packing.PackPlan   // nil if no bottle is named, or if there is no syrup
	filling  packing.Filling

	firing      // the clock of a single pan
	run    *run // of a pan of compartments; nil if there is one alone

	heat units.Energy // into the liquid
	burn burn
	demo bool // nothing was given: the invented day

	kept string // the flags whose value is that of the invented day
}

// firing is how the day goes in one pan, kept at its depth while there is sap
// and then boiled down.
type firing struct {
	first   units.Volume // sap that fills the pan before the fire is lit
	waits   units.Volume // sap that waits in the tank for the pan
	heating time.Duration
	lastSap time.Duration // from lighting the fire to the last sap in the pan
	done    time.Duration // to syrup, or to the take-off

	lastWood time.Duration // when the coals finish the rest
	stopAt   units.Brix    // the strength at that time; 0 if sap still goes in
	sapThen  units.Mass    // that still has to go in after it
	coals    units.Mass    // of water that they boil off
	over     time.Duration // when the last wood goes on at the latest
	overrun  bool          // by themselves they are too much

	lastBrix units.Brix // when the last sap goes in

	batches int // that the pan is drawn off in

	// A batch that is too small for the pan is taken off early.
	small   bool
	takeoff sugar.Lot // hot, drained from the pan
	left    sugar.Lot // what stays behind in the pan

	alone bool // the sap does not even cover the pan: all of it goes into the pot
	pot   pot
}

// work makes the plan.
func (s *setup) work(e *cli.Env, f *cli.Flags) (*plan, error) {
	p := &plan{given: s, flags: f, demo: !f.Other()}
	if p.demo {
		s.day = demoDay
	}
	if err := s.check(f); err != nil {
		return nil, err
	}
	var err error
	if p.start, err = time.Parse("15:04", s.start); err != nil {
		return nil, cli.For("start", errors.New("write a time of the day as 08:00"))
	}
	if p.pressure, p.from, err = s.place.Pressure(); err != nil {
		return nil, err
	}
	if p.gatherings, err = s.gather(e, f, p.demo); err != nil {
		return nil, err
	}
	p.comes = p.lastComes()
	lots := make([]sugar.Lot, len(p.gatherings))
	for i, g := range p.gatherings {
		lots[i] = g.lot
	}
	if p.sap, err = sugar.Blend(lots...); err != nil {
		return nil, err
	}
	p.gathered = p.sap
	if err := cmp.Or(p.takeIce(s, f), p.concentrate(s, f)); err != nil {
		return nil, err
	}
	if p.recorded() {
		if p.sweet, err = s.standing(f); err != nil {
			return nil, err
		}
	}
	p.tank = p.sap
	if err := p.pour(s); err != nil {
		return nil, err
	}
	if p.sap.Brix() >= s.target {
		return nil, cli.For("target", &units.RangeError{Arg: "target", Value: float64(s.target), Low: float64(p.sap.Brix()), High: float64(cli.MostTarget), Unit: "Brix", Hint: "the sap is already as strong as that"})
	}
	if err := p.points(s, f); err != nil {
		return nil, err
	}
	if err := cmp.Or(p.down(s), p.meet(s, f), p.sure(s), p.feedStops(s), p.chaseOut(s, f), p.coming(s, f)); err != nil {
		return nil, err
	}
	p.kept = p.borrowed(f)
	return p, cmp.Or(p.bottles(s, f), p.fire(s))
}

// points finds the boiling points of the day and the reading in the cup.
func (p *plan) points(s *setup, f *cli.Flags) error {
	var err error
	if p.syrupBoils, err = boil.SyrupPoint(s.target, p.pressure); err != nil {
		return cli.ForArg(err, "target", "pressure", p.from)
	}
	if p.waterBoils, err = boil.Water(p.pressure); err != nil {
		return cli.For(p.from, err)
	}
	over, err := boil.BrixFromRise(p.syrupBoils.Sub(p.waterBoils)+slip(s.metric), p.pressure)
	if err != nil {
		return cli.For("target", err)
	}
	p.slipBrix = over - s.target
	if s.cupTold = f.Given("cup"); !s.cupTold {
		s.cup = cli.UsualCup(p.syrupBoils, s.metric)
	}
	h, cup := density.Hydrometer{GraduatedAt: s.stem}, f.TrueCup(s.cup, s.cupTold)
	if p.reads, err = h.Reading(s.target, cup); err != nil {
		return cli.ForArg(err, "cup", "Hydrometer.GraduatedAt", "hydrometer")
	}
	if err := (&cli.Sheet{Metric: s.metric}).Cup("cup", cup, p.syrupBoils, s.doubt.Thermometer); err != nil {
		return err
	}
	p.miss = f.Off(p.from)
	p.baume, err = density.BaumeFromBrix(p.reads + p.miss.Hydrometer)
	return err
}

// slip is a tenth of a degree, as the page counts them.
func slip(metric bool) units.TempDiff {
	if metric {
		return units.CelsiusDegree / 10
	}
	return units.FahrenheitDegree / 10
}

// amounts finds the syrup, the water to boil off and the heat.
func (p *plan) amounts(s *setup) error {
	var err error
	mass := s.target.Of(p.sap.Sugar())
	if p.syrup, err = sugar.NewLotByMass(mass, s.target, label); err != nil {
		return cli.For("target", err)
	}
	p.off = p.sap.Mass() - mass
	if p.ratio, err = yield.Ratio(p.sap.Brix(), s.target); err != nil {
		return err
	}
	if p.rule, err = yield.RuleOf86(p.sap.Brix()); err != nil {
		p.rule = 0 // the rule is for sap; concentrate goes without
	}
	return nil
}

// clock lets the fire burn. The rate of the pan is that of water boiled off
// while cold sap is added; sap is added as the level falls.
func (p *plan) clock(s *setup) error {
	rate, err := s.pan.Evaporation()
	if err != nil {
		return err
	}

	// The pan begins full of sap, or with all of it.
	full := s.pan.Area.Volume(s.depth)
	p.firing.first = min(full, p.sap.Volume())
	p.waits = p.sap.Volume() - p.firing.first
	inPan, err := sugar.NewLot(p.firing.first, p.sap.Brix(), p.sap.Temperature())
	if err != nil {
		return err
	}
	if p.heating, err = p.heatingTime(inPan, rate); err != nil {
		return err
	}

	// More syrup than the pan holds is drawn off in equal batches.
	syrup, err := sugar.NewLotByMass(p.syrup.Mass(), s.target, p.syrupBoils)
	if err != nil {
		return err
	}
	p.batches = max(1, int(math.Ceil(float64(syrup.Volume()/full))))
	part := func(l sugar.Lot) (sugar.Lot, error) {
		return sugar.NewLotByMass(l.Mass()/units.Mass(p.batches), l.Brix(), l.Temperature())
	}
	last, err := part(p.sap)
	if err != nil {
		return err
	}
	end, err := part(syrup)
	if err != nil {
		return err
	}

	// Sap goes in until the rest fits, then the level falls until it is syrup or
	// as low as the pan may go.
	at, err := boil.DownToVolume(last, full, p.pressure)
	if err != nil {
		return err
	}
	if end.Volume() < s.pan.Area.Volume(s.safe) {
		p.small = true
		if end, err = boil.DownToVolume(last, s.pan.Area.Volume(s.safe), p.pressure); err != nil {
			return err
		}
	}
	p.done = p.heating + rate.Time(units.Mass(p.batches)*(last.Mass()-end.Mass()))
	p.lastSap = p.done - rate.Time(at.Mass()-end.Mass())
	p.lastBrix = at.Brix()
	if late := p.comes - p.lastSap; late > 0 && p.deadline.by.IsZero() && p.flags.Source("start").Kind == cli.Assumed {
		// Lit so that the last sap comes before the pan wants it.
		late = (late + by - 1).Truncate(by)
		p.start, p.comes = p.start.Add(late), p.comes-late
	}
	if err := p.coalsEnd(s, finish.Batch{Mass: at.Mass(), Brix: at.Brix(), Evaporation: rate}, finish.Batch{Mass: end.Mass(), Brix: end.Brix()}); err != nil {
		return err
	}
	return p.takeOff(s, end)
}
