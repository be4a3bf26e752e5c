package main

import (
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

func (s *setup) declareBottles(f *cli.Flags) {
	f.Quantity(&s.bottle, "bottle", "", "label volume of your bottles, to see how many to have clean")
	f.Quantity(&s.pack, "pack", "185 F", "temperature of the syrup when it is filled")
}

// sure finds how well a reading at the mark tells the strength.
func (p *plan) sure(s *setup) error {
	h := density.Hydrometer{GraduatedAt: s.stem}
	var err error
	p.measured, err = h.Measure(p.reads, p.flags.TrueCup(s.cup, s.cupTold), s.doubt)
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
			(&cli.Sheet{}).AtMost(most), (&cli.Sheet{Metric: true}).AtMost(most)))
	}
	c := packing.Container{Label: s.bottle}
	fill, err := c.Fill(s.target, s.pack, 0)
	if err != nil {
		return cli.ForArg(err, "bottle", "at", "pack")
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
	part.If(p.given.pack.Compare(packing.CappingLeast()) < 0).Remark("Syrup is sealed at " + p.AtLeast(packing.CappingLeast()) + " or above, or molds may live: fill it hotter.")
}

// pooled is the sap as it was gathered.
func (p *plan) pooled() sugar.Lot { return p.gathered }
