package main

import (
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (p page) nowPart(part *cli.Part) {
	var rows [][]cli.Value
	thick := false
	for _, i := range p.all {
		rows = append(rows, []cli.Value{cli.Words(i.name), i.shows, cli.Brix(i.Brix, 1), cli.Brix(i.Uncertainty, 2)})
		thick = thick || i.Supersaturated
	}
	if len(rows) > 0 {
		part.Table("instruments", []cli.Column{{Key: "instrument", Head: "by"}, {Key: "shows", Head: "shows"}, {Key: "strength", Head: "strength"},
			{Key: "give_or_take", Head: "give or take"}}, rows)
	}
	if len(p.pairs)+len(p.apart) > 0 {
		p.pairTable(part)
	}
	if p.cool {
		part.Remark(p.underWater() + " A thermometer that shows less in boiling sap than in boiling water is off, or stands too high.")
	}
	part.If(p.tooThin).Remark("The thermometer tells no strength worth comparing under 50 Brix.")
	part.If(p.tooThick).Remark("By the thermometer it is " + p.heat.Text(1) + ", far past syrup.")
	if p.heat > 0 {
		p.countsRemark(part)
	}
	part.If(p.pot != nil && p.pot.now > 0).Remark("The scale counts from the strength that was read then, and so it shares the error of that instrument: it is not compared.")
	part.If(p.has("refractometer")).Remark("A drop of hot syrup takes a while to settle on the prism, loses water meanwhile, and scalds: close the lid on it, and wait.")
	part.If(thick).Remark("So strong a syrup holds more sugar than its water keeps dissolved at that temperature: read it while it is clear.")
}

func (p page) pairTable(part *cli.Part) {
	var rows [][]cli.Value
	for _, c := range p.pairs {
		rows = append(rows, []cli.Value{cli.Words(c.a + ", " + c.b), cli.Words("yes"), cli.Brix(c.Brix, 1), cli.Brix(c.Uncertainty, 2)})
	}
	none := cli.Brix(units.Brix(math.NaN()), 1)
	for _, c := range p.apart {
		rows = append(rows, []cli.Value{cli.Words(c.a + ", " + c.b), cli.Words("no"), none, none})
	}
	part.Table("pairs", []cli.Column{{Key: "pair", Head: "side by side"}, {Key: "agree", Head: "agree"}, {Key: "together", Head: "together"},
		{Key: "give_or_take", Head: "give or take"}}, rows)
	part.If(len(p.apart) > 0).Remark("Where two do not agree there is no mean: one is off, or its uncertainty was given too small.")
}

// countsRemark tells what is taken from the readings of the thermometer.
func (p page) countsRemark(part *cli.Part) {
	switch t := p.thermometer; {
	case t.learned != nil:
		part.Remark("The thermometer counts less " + p.In(cli.TempDiff(t.learned.off)) + ", by which it showed more than sucrose syrup boils at in your past stops; -inverted and -over are in that, and not counted again.")
	case t.over > 0:
		part.Remark("The thermometer counts as under " + p.In(cli.Rough(cli.Length(t.over))) + " of the liquid.")
	}
	part.If(p.own != nil && p.own.stops && p.thermometer.learned == nil).Remark("Your past stops are not in it: their own stop is known less well.")
}
