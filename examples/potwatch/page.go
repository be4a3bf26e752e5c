package main

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// k2 widens a standard uncertainty for the page, where give or take holds 19 times
// of 20.
const k2 = density.Coverage

// page lays an evening out.
type page struct {
	*evening

	*cli.Sheet
}

// show lays the evening out, and adds the stop to the folder if that is asked.
func (p *evening) show(e *cli.Env) error {
	sheet := &cli.Sheet{Title: "The moment it is syrup", Metric: p.given.metric}
	page := page{p, sheet}
	page.brief()
	if lines := p.alarms(); len(lines) > 0 {
		title := "Take it off"
		if p.cold() {
			title = "Is it still on the fire?"
		}
		page.alarmPart(sheet.Part("alarm", title), lines)
	} else if len(p.apart) > 0 {
		page.apartItems(sheet.Part("alarm", "Read again: the instruments disagree"))
	} else if line := p.leap(); line != "" {
		sheet.Part("alarm", "Read it again at once").Item(line)
	}
	if p.demo {
		sheet.Part("about", "About this page").Remark("An invented pot of an invented sugarhouse: make a folder of your own, or give place, readings and pot with flags; -h lists them.")
	} else if p.kept != "" {
		sheet.Part("about", "About this page").Remark("Not given, and so taken as: " + p.kept + ".")
	}
	page.stopPart(sheet.Part("stop", "Where it stops"))
	sheet.PartIf(p.thermometer != nil, "thermometer", "By thermometer", page.heatPart)
	page.floatPart(sheet.Part("hydrometer", "By hydrometer"))
	sheet.PartIf(len(p.float.marks) > 0, "marks", "A stem with marks, in the cup at "+page.In(cli.Temperature(p.given.cup)), page.markPart)
	sheet.PartIf(len(p.all) > 0 || p.heat > 0, "now", "Now", page.nowPart)
	sheet.PartIf(p.watch != nil, "watch", "How it climbs", page.watchPart)
	sheet.PartIf(p.pot != nil, "scale", "On the scale", page.potPart)
	sheet.PartIf(p.own != nil, "own", "Your thermometer", page.ownPart)
	if p.aside != "" {
		sheet.Part("aside", "Past stops, left aside").Item(p.aside)
	}
	if p.product != nil {
		page.productPart(sheet.Part("product", "Further: "+p.product.name))
	}
	if lines := p.missing(); len(lines) > 0 {
		sheet.Part("left_out", "Not on this page, and the flag that gives it").Item(lines...)
	}
	sheet.Part("care", "Take care").Item(append([]string{cli.Keeping(p.given.target)}, cautions...)...)
	stop := page.stopRow()
	if len(stop.Rows) == 0 && page.flags.Writes() {
		return cli.For("write", errors.New("there is nothing to add: a stop is syrup by the hydrometer, what the thermometer shows with it in the boiling pot, and where water boils today, as in 59.5 at 204 F 217.5 F, water 209.6 F"))
	}
	if err := sheet.Add(e, stop); err != nil {
		return err
	}
	return sheet.Show(e)
}

func (p page) stopPart(part *cli.Part) {
	part.Row("target", "Target", cli.Brix(p.given.target, 1), cli.Legal)
	if t := p.thermometer; t != nil {
		part.Row("water", "Water boils today at", cli.Temperature(t.water), cli.KnownBy[t.from])
		part.Row("syrup", "Thermometer stops at", cli.Temperature(t.syrup), p.stopNotes()...)
	}
	part.Remark(p.given.place.Told(p.Sheet)...)
	h := p.float
	part.Row("reads", "Hydrometer stops at", cli.Brix(h.reads, 1), append(p.InCup(h.stop.Cup, p.given.cupTold), p.flags.Off("").NoteHydrometer()...)...)
	if p.thermometer != nil {
		p.trust(part)
	}
	part.Remark(cli.NineteenOfTwenty)
}

// stopNotes tell what the stop by thermometer counts.
func (p page) stopNotes() []string {
	t := p.thermometer
	notes := []string{p.In(cli.TempDiff(t.syrup.Sub(t.water))) + " above water"}
	switch {
	case t.learned != nil:
		notes = append(notes, "as your past stops say")
	case t.over > 0:
		notes = append(notes, "under "+p.In(cli.Rough(cli.Length(t.over)))+" of syrup")
	}
	if t.learned == nil {
		notes = append(notes, p.flags.Off(t.from).NoteThermometer(p.Sheet)...)
	}
	if p.own != nil && p.own.stops && t.learned == nil {
		notes = append(notes, "your past stops say "+p.In(cli.Temperature(p.own.at))+", which is known less well")
	}
	return notes
}

// trust tells which of the two instruments to go by.
func (p page) trust(part *cli.Part) {
	t, h := p.thermometer, p.float
	by, other, shares := "the hydrometer", "thermometer", t.shares()
	if t.total() < h.parts.Total {
		by, other, shares = "the thermometer", "hydrometer", h.shares()
	}
	part.Row("trust", "Trust", cli.Words(by), fmt.Sprintf("give or take %s against %s; most of the %s's is %s",
		(k2*min(t.total(), h.parts.Total)).Text(2), (k2*max(t.total(), h.parts.Total)).Text(2), other, largest(shares)))
}

func (p page) heatPart(part *cli.Part) {
	t := p.thermometer
	part.Row("pressure", "Pressure at the pan", cli.Pressure(t.pressure))
	part.If(t.learned != nil).Row("reckoned", "Without your past stops", cli.Temperature(t.reckoned), "give or take "+(k2*t.parts.Total).Text(2))
	part.If(p.given.inverted > 0).Row("sucrose", "For sucrose alone", cli.Temperature(t.sucrose), p.that()+" counts "+p.given.inverted.Text(1)+" of the sugar as inverted")
	if t.cost <= 0 {
		part.Row("surface", "At the surface", cli.Temperature(t.plain), p.that()+" counts "+p.In(cli.Rough(cli.Length(t.over)))+" of syrup over the probe, and boiling water read at the surface")
		part.Row("over", "Left out, it misses by", cli.Brix(t.cost, 2), "too thin")
	}
	p.shares(part, t.shares(), t.total())
	as := "The thermometer is taken as true."
	if t.off != 0 {
		as = "The thermometer is taken to be off by what the settings say."
	}
	part.If(t.from != cli.ByWaterBoils).Remark(as + " Read it in boiling water and give that as -water-boils: then its own error drops out.")
}

// that is the stop which -inverted and -over go into.
func (p page) that() string {
	if p.thermometer.learned != nil {
		return "it"
	}
	return "the stop"
}

func (p page) floatPart(part *cli.Part) {
	h := p.float
	part.Row("baume", "On a Baume scale", cli.Number(float64(h.baume), 1, "Be"), "a stem graduated at "+p.In(cli.Temperature(h.stem.GraduatedAt)))
	p.shares(part, h.shares(), h.parts.Total)
}

func (p page) shares(part *cli.Part, shares []share, total units.Brix) {
	var rows [][]cli.Value
	for _, s := range append(shares, share{"all together", cli.Words(""), total}) {
		rows = append(rows, []cli.Value{cli.Words(s.what), s.given, cli.Brix(k2*s.brix, 2)})
	}
	part.Table("parts", []cli.Column{{Key: "what", Head: "what may be off"}, {Key: "known_to", Head: "known to"}, {Key: "give_or_take", Head: "give or take"}}, rows)
}

func (p page) markPart(part *cli.Part) {
	var rows [][]cli.Value
	for _, m := range p.float.marks {
		rows = append(rows, []cli.Value{cli.Words(m.name), cli.Brix(m.For, 1), cli.Temperature(m.At), cli.Brix(m.on, 1), cli.Brix(m.here, 1)})
	}
	part.Table("marks", []cli.Column{{Key: "mark", Head: "mark"}, {Key: "for", Head: "stands for"}, {Key: "at", Head: "in a cup at"},
		{Key: "on", Head: "on the scale"}, {Key: "here", Head: "floated to it in this cup"}}, rows)
}

// cautions of the finish, as those of the other programs. Sources: US CPSC;
// University of Vermont; Cornell maple program; CFIA; regulation M-35.1 r. 18.1;
// University of Maine Extension; common practice.
var cautions = []string{
	"Syrup near 219 F and candy up to 260 F burn through the skin at once and stick: long sleeves and gloves, no children or pets near, a cup filled away from the body.",
	"The end comes in minutes: never leave the pot. It foams over, runs low, scorches and burns: keep defoamer at hand, and take it off rather than leave it.",
	"Hang the scale, or weigh with the fire out and two pairs of hands.",
	"Boil outdoors, or under a vent with a flue and a carbon monoxide alarm; never on a camp stove in a closed room.",
	"Milk, cream and butter against foam or in a confection are allergens, and so are nuts: declare them.",
	"Syrup thinner than its mark ferments and grows mold; moldy syrup or cream is thrown away, not skimmed.",
	"Pans, pots, cups and thermometers free of lead: no lead solder, old galvanized ware, brass or bronze. A thermometer with mercury stays out of food.",
}
