package main

import (
	"errors"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// chaseOut finds what water poured in behind the last sap of the season saves of the
// sweet.
func (p *plan) chaseOut(s *setup, f *cli.Flags) error {
	if !f.Given("chase") {
		return nil
	}
	if err := cli.Within("chase", "water", s.chase, units.Liter, tank, units.USGallon, "US gal", "as much as the pans hold is a beginning"); err != nil {
		return err
	}
	if p.run == nil || p.small || !(p.run.Held.Sugar() > 0) {
		return cli.For("chase", errors.New("nothing stays in this pan to be chased: it is for a pan of several compartments"))
	}
	rig, day, err := p.rig(s)
	if err != nil {
		return err
	}
	rig.Coals = 0 // the fire is held low at the end
	c, err := rig.Chase(p.run.Held, s.chase, p.sap.Temperature(), day.Pressure)
	if err != nil {
		return cli.For("chase", err)
	}
	p.chased = &c
	return nil
}

// nightPart tells what becomes of the sweet until the next fire.
func (p page) nightPart(part *cli.Part) {
	if c := p.chased; c != nil {
		end := len(c.Held) - 1
		all := p.run.Held.Sugar()
		saved := units.FractionShare(float64((c.Syrup.Sugar + c.Held[end].Sugar) / all))
		without := units.FractionShare(float64(p.run.Held[end].Sugar / all))
		part.Row("chased", "Of the sweet is saved", cli.Share(saved, 0), "by "+p.In(cli.Rough(cli.Volume(p.given.chase)))+" of water, drawn or in the last compartment, which is drained too or ends in a pot")
		part.Row("unchased", "Without water", cli.Share(without, 0), "is in the last compartment")
		part.Remark("Water follows the last sap alone, and mixes with it: try more and less. Shut the valve and put the fire out before the sweet end is low, with water at hand.")
		return
	}
	point := func(l pan.Liquid) units.Temperature {
		const known = 60 // Brix: thicker, and it hardly freezes
		t, err := sugar.FreezingPoint(min(l.Brix(), known))
		if err != nil { // contents of a pan have one
			return units.Celsius(0)
		}
		return t
	}
	first, last := p.run.Held[0], p.run.Held[len(p.run.Held)-1]
	note := "the sap's end"
	if len(p.run.Held) > 1 {
		note += ", and the sweet end below " + p.In(cli.Temperature(point(last)))
	}
	part.Row("freezes", "Ice forms below", cli.Temperature(point(first)), note)
	p.nightRow(part, p.night)
	part.Remark("Sweet keeps worse than sap: cover the pans, let them cool fast, and boil it before any sap. Coals go on boiling it: leave it deep, and look again before bed.")
	part.Remark("In the morning look for ice first, and melt it with warm sap before a fire is lit under it. Bring every compartment up to its depth. Sweet that is sour, ropy or moldy is thrown away untasted.")
}

// morningCaution is the first thing of a day with sweet in the pan.
func (p page) morningCaution() string {
	const ice = ": look for ice first; no fire under ice."
	if n := p.sweet.night; p.sweet.Mass() > 0 && n.ice {
		return "Sweet since " + stands(p.sweet.since) + ", air down to " + p.Degrees(n.air) + ": expect ice; no fire under ice."
	}
	if p.sweet.Mass() > 0 {
		return "Sweet since " + stands(p.sweet.since) + ice
	}
	if p.recorded() || p.flags.Dir() == "" {
		return ""
	}
	h := p.flags.House()
	for _, row := range h.Left(p.given.today(h)) {
		if row.Depth > 0 { // beside sap that was told it is not counted
			return "Not counted is the sweet in the pan since " + stands(row.Date) + ice
		}
	}
	return ""
}

// Acidities between which sap lies most of the time: 80 syrups had pH 5.6 to 7.9 (Food
// Research International 29, 1996, abstract), and the law that is used ends at 7.5.
const sourest, mildest = 5.5, 7.0

// invertedRow tells how much of the sugar the heat of the day splits at most, as if
// all of it stayed as thin as sap, and what that does to the thermometer.
func (p page) invertedRow(part *cli.Part) {
	least, err := sugar.Inversion(p.sap.Brix(), p.waterBoils, mildest, p.ends())
	if err != nil {
		return
	}
	most, err := sugar.Inversion(p.sap.Brix(), p.waterBoils, sourest, p.ends())
	if err != nil {
		return
	}
	part.Row("inverted", "Heat splits of the sugar", cli.Between(cli.Rough(cli.Share(least, 2)), cli.Rough(cli.Share(most, 2))), "at most, at pH 7 to pH 5.5: measure it to know. Late syrup holds more, from microbes in old sap, and that shifts the stop by the thermometer")
}
