package main

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
)

// page lays an evening out.
type page struct {
	*evening

	*cli.Sheet
}

func (p *evening) sheet() *cli.Sheet {
	sheet := &cli.Sheet{Title: "The moment it is syrup", Metric: p.given.metric}
	page := page{p, sheet}
	if p.demo {
		sheet.Part("about", "About this page").Remark("An invented pot on an invented evening: give your own place, readings and pot with flags, -h lists them.")
	} else if p.kept != "" {
		sheet.Part("about", "About this page").Remark("Not given, and so taken as: " + p.kept + ".")
	}
	page.stopPart(sheet.Part("stop", "Where it stops"))
	if p.thermometer != nil {
		page.heatPart(sheet.Part("thermometer", "By thermometer"))
	}
	page.floatPart(sheet.Part("hydrometer", "By hydrometer"))
	if len(p.float.marks) > 0 {
		page.markPart(sheet.Part("marks", "A stem with marks, in the cup at "+page.In(cli.Temperature(p.given.cup))))
	}
	if len(p.all) > 0 || p.tooThin {
		page.nowPart(sheet.Part("now", "Now"))
	}
	if p.watch != nil {
		page.watchPart(sheet.Part("watch", "How it climbs"))
	}
	if p.pot != nil {
		page.potPart(sheet.Part("scale", "On the scale"))
	}
	if p.own != nil {
		page.ownPart(sheet.Part("own", "Your thermometer"))
	}
	if p.product != nil {
		page.productPart(sheet.Part("product", "Further: "+p.product.name))
	}
	if lines := p.missing(); len(lines) > 0 {
		part := sheet.Part("left_out", "Not on this page, and the flag that gives it")
		for _, l := range lines {
			part.Item(l)
		}
	}
	care := sheet.Part("care", "Take care")
	for _, c := range cautions {
		care.Item(c)
	}
	return sheet
}

// weather words how the pressure was found, by its flag.
var weather = map[string]string{
	cli.ByWaterBoils: "by your thermometer in boiling water",
	cli.ByStation:    "as your barometer shows",
	cli.ByAltimeter:  "by altimeter setting and elevation",
	cli.ByElevation:  "standard weather at the elevation: boil water and read the thermometer to be sure",
}

const legal = "the United States and Canada ask for 66.0 to 68.9, some places for 66.9 or more: local rules come first"

func (p page) stopPart(part *cli.Part) {
	part.Row("target", "Target", cli.Brix(p.given.target, 1), legal)
	if t := p.thermometer; t != nil {
		part.Row("water", "Water boils today at", cli.Temperature(t.water), weather[t.from])
		part.Row("syrup", "Thermometer stops at", cli.Temperature(t.syrup), p.In(cli.TempDiff(t.syrup.Sub(t.water)))+" above water")
	}
	h := p.float
	part.Row("reads", "Hydrometer stops at", cli.Brix(h.reads, 1), "in the cup at "+p.In(cli.Temperature(h.stop.Cup)))
	if p.thermometer != nil {
		p.trust(part)
	}
	part.Remark("Give or take is a standard uncertainty, on all of this page: it holds two times of three; twice of it 19 times of 20.")
}

// trust tells which of the two instruments to go by.
func (p page) trust(part *cli.Part) {
	t, h := p.thermometer, p.float
	by, other, shares := "the hydrometer", "thermometer", t.shares()
	if t.parts.Total < h.parts.Total {
		by, other, shares = "the thermometer", "hydrometer", h.shares()
	}
	part.Row("trust", "Trust", cli.Words(by), fmt.Sprintf("give or take %s against %s; most of the %s's is %s",
		min(t.parts.Total, h.parts.Total).Text(2), max(t.parts.Total, h.parts.Total).Text(2), other, largest(shares)))
}

func (p page) heatPart(part *cli.Part) {
	t := p.thermometer
	part.Row("pressure", "Pressure at the pan", cli.Pressure(t.pressure))
	if p.given.inverted > 0 {
		part.Row("sucrose", "For sucrose alone", cli.Temperature(t.sucrose), "the stop counts "+p.given.inverted.Text(1)+" of the sugar as inverted")
	}
	if t.cost <= 0 {
		part.Row("deep", "Under "+p.In(cli.Rough(cli.Length(p.given.over)))+" of syrup", cli.Temperature(t.deep), "if boiling water was read at the surface")
		part.Row("over", "Uncorrected it misses by", cli.Brix(t.cost, 2), "too thin")
	}
	p.shares(part, t.shares(), t.parts.Total)
	if t.from != cli.ByWaterBoils {
		part.Remark("The thermometer is taken as true. Read it in boiling water and give that as -water-boils: then its own error drops out.")
	}
}

func (p page) floatPart(part *cli.Part) {
	h := p.float
	part.Row("baume", "On a Baume scale", cli.Number(float64(h.baume), 1, "Be"), "a stem graduated at "+p.In(cli.Temperature(h.stem.GraduatedAt)))
	p.shares(part, h.shares(), h.parts.Total)
}

func (p page) shares(part *cli.Part, shares []share, total units.Brix) {
	var rows [][]cli.Value
	for _, s := range append(shares, share{"all together", cli.Words(""), total}) {
		rows = append(rows, []cli.Value{cli.Words(s.what), s.given, cli.Brix(s.brix, 2)})
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

func (p page) nowPart(part *cli.Part) {
	var rows [][]cli.Value
	thick := false
	for _, i := range p.all {
		rows = append(rows, []cli.Value{cli.Words(i.name), i.shows, cli.Brix(i.Brix, 1), cli.Brix(i.Uncertainty/density.Coverage, 2)})
		thick = thick || i.Supersaturated
	}
	if len(rows) > 0 {
		part.Table("instruments", []cli.Column{{Key: "instrument", Head: "by"}, {Key: "shows", Head: "shows"}, {Key: "strength", Head: "strength"},
			{Key: "give_or_take", Head: "give or take"}}, rows)
	}
	if len(p.pairs) > 0 {
		p.pairTable(part)
	}
	if p.tooThin {
		part.Remark("The thermometer tells no strength worth comparing outside 50 to 80 Brix.")
	}
	if p.pot != nil && p.pot.now > 0 {
		part.Remark("The scale counts from the strength that was read then, and so it shares the error of that instrument: it is not compared.")
	}
	if p.has("refractometer") {
		part.Remark("A drop of hot syrup loses water on the prism: let it cool in a closed spoon first.")
	}
	if thick {
		part.Remark("So strong a syrup holds more sugar than its water keeps dissolved at that temperature: read it while it is clear.")
	}
}

func (p page) has(name string) bool {
	for _, i := range p.all {
		if i.name == name {
			return true
		}
	}
	return false
}

func (p page) pairTable(part *cli.Part) {
	var rows [][]cli.Value
	apart := false
	for _, c := range p.pairs {
		agree := "yes"
		if c.Disagree {
			agree, apart = "no", true
		}
		rows = append(rows, []cli.Value{cli.Words(c.a + ", " + c.b), cli.Words(agree), cli.Brix(c.Brix, 1), cli.Brix(c.Uncertainty/density.Coverage, 2)})
	}
	part.Table("pairs", []cli.Column{{Key: "pair", Head: "side by side"}, {Key: "agree", Head: "agree"}, {Key: "together", Head: "together"},
		{Key: "give_or_take", Head: "give or take"}}, rows)
	if apart {
		part.Remark("Where two do not agree, one is off, or its uncertainty was given too small: check both, in plain water first, before you go by either.")
	}
}

func (p page) watchPart(part *cli.Part) {
	w, target := p.watch, p.given.target
	last := w.readings[len(w.readings)-1].At
	part.Row("readings", "Readings", cli.Count(len(w.readings), ""), "the last at "+p.In(w.at(last)))
	if !w.tooFew {
		part.Row("used", "On one line", cli.Count(w.Used, ""), "since the last setback, without dips and spikes")
		part.Row("now", "Strength now", cli.Brix(w.Now, 1), "give or take "+w.NowBy.Text(2)+" by the scatter of the readings and by the boiling water")
	}
	switch {
	case w.tooFew:
		part.Remark("One reading does not make a line: wait for another.")
	case !w.Climbs || w.Left > longest:
		part.Remark("It does not climb: it wants more fire, or something was poured in.")
	default:
		part.Row("climbs_per_min", "It climbs by the minute", cli.Brix(w.PerMinute, 2), "give or take "+w.PerMinuteBy.Text(2))
		if w.Left < 0 {
			part.Row("past_min", "Past "+target.Text(1)+" since", minutes(-w.Left), "take it off now; too strong syrup is thinned, packday tells with what")
			break
		}
		part.Row("left_min", "Time left to "+target.Text(1), minutes(w.Left))
		part.Row("band_min", "Two times of three", cli.Between(minutes(max(0, w.Left-w.LeftBy)), minutes(w.Left+w.LeftBy)))
		if w.clock {
			part.Row("done", "Be there at", w.at(last+max(0, w.Left-w.LeftBy)), "expected at "+p.In(w.at(last+w.Left)))
		}
		if w.LeftBy > w.Left {
			part.Remark("The time is hardly known yet: each reading more narrows it.")
		}
		part.Remark("It holds as long as the fire is even and nothing is poured in.")
	}
	if len(w.Odd) > 0 {
		var rows [][]cli.Value
		for _, o := range w.Odd {
			r := w.readings[o.Index]
			rows = append(rows, []cli.Value{w.at(r.At), cli.Temperature(r.Shown), cli.Words(o.What.String())})
		}
		part.Table("odd", []cli.Column{{Key: "at", Head: "odd reading"}, {Key: "shown", Head: "shown"}, {Key: "what", Head: "what it was"}}, rows)
	}
}

func (p page) potPart(part *cli.Part) {
	k := p.pot
	part.Row("read", "Weighed and read", cli.Mass(k.read.Gross), "at "+k.read.Brix.Text(1), "the pot alone "+p.In(cli.Mass(k.read.Tare)))
	part.Row("stop", "Take the pot off at", cli.Mass(k.stop.Gross), "give or take "+p.In(cli.Rough(cli.Mass(k.stop.GrossBy))), "pot and syrup together")
	part.Row("off", "Water off from the reading", cli.Mass(k.stop.Off))
	part.Row("brix", "Syrup at that weight", cli.Brix(p.given.target, 1), "give or take "+k.stop.BrixBy.Text(2)+", of the reading for the most part")
	if k.now > 0 {
		part.Row("now", "It is now", cli.Mass(p.given.grossNow), k.now.Text(1)+", give or take "+k.nowBy.Text(2))
		if left := p.given.grossNow - k.stop.Gross; left > 0 {
			part.Row("left", "Still to boil off", cli.Mass(left))
		} else {
			part.Row("past", "Boiled off too much", cli.Mass(-left), "take it off; packday tells how to thin it")
		}
	}
	if k.batch.Mass > 0 {
		p.firePart(part)
	}
	part.Remark("Nothing poured in, nothing spilled, and what a cup took goes back. Altitude, weather and thermometer do not enter.")
}

func (p page) firePart(part *cli.Part) {
	k := p.pot
	if k.fire.past {
		return
	}
	part.Row("left_min", "At an even fire it takes", minutes(k.fire.left))
	switch {
	case k.fire.coasts == 0:
	case k.fire.last == 0:
		part.Row("coasts", "Without more wood it goes to", cli.Brix(k.fire.coasts, 1), "beyond the target: draw the fire, or take the pot off before")
	default:
		notes := []string{"the coals bring it the rest of the way"}
		if p.thermometer != nil {
			notes = append([]string{"the thermometer at " + p.In(cli.Temperature(k.fire.shows))}, notes...)
		}
		part.Row("last_firing", "Stop firing at", cli.Brix(k.fire.last, 1), notes...)
		part.Row("coasts", "Stopped now it would end at", cli.Brix(k.fire.coasts, 1))
	}
}

func (p page) ownPart(part *cli.Part) {
	o := p.own
	from := "a barometer"
	if o.byWater {
		from = "water boiled with it that day"
	}
	part.Row("stops", "Past stops", cli.Count(o.Stops, ""), "counted from "+from)
	part.Row("offset", "Above sucrose syrup it shows", cli.TempDiff(o.Mean), "probe, depth and the sugar of your sap together")
	if o.Stops > 1 {
		part.Row("spread", "Spread from stop to stop", cli.TempDiff(o.Spread), "standard deviation")
	}
	const enough = 6
	switch {
	case o.Drifts:
		part.Row("drifts", "Does it drift", cli.Words("yes"), "the last third showed "+p.In(cli.TempDiff(o.Late))+": late sap, a crusted or failing probe. Boil water with it, and count on the late stops")
	case o.Stops < enough:
		part.Row("drifts", "Does it drift", cli.Words("unknown"), "it takes six stops to tell")
	default:
		part.Row("drifts", "Does it drift", cli.Words("no"), "the last third showed "+p.In(cli.TempDiff(o.Late))+", within the spread")
	}
	switch {
	case o.stops && math.IsNaN(float64(o.cost)):
		part.Row("stop", "By these, stop today at", cli.Temperature(o.at), "how sure one stop is, nobody knows")
	case o.stops:
		part.Row("stop", "By these, stop today at", cli.Temperature(o.at), "give or take "+p.In(cli.TempDiff(o.by)), "in strength "+o.cost.Text(2))
		part.Remark("The sugar of your sap is in the offset: it counts instead of -inverted.")
	case p.thermometer == nil:
		part.Remark("Say where water boils today, and the page tells your own stop.")
	default:
		part.Remark("No stop for today is given: the past stops count from " + from + ", and today's boiling point does not. The error of the thermometer is in the one and not in the other; record both alike.")
	}
}

func (p page) productPart(part *cli.Part) {
	m := p.product
	var rows [][]cli.Value
	for i, f := range m.points {
		rows = append(rows, []cli.Value{cli.Words(letter(i)),
			span(cli.TempDiff(f.Low), cli.TempDiff(f.High)), span(cli.Temperature(f.low), cli.Temperature(f.high)),
			span(cli.Share(f.moisture.Low, 1), cli.Share(f.moisture.High, 1)), span(cli.Mass(f.least), cli.Mass(f.most))})
	}
	part.Table("points", []cli.Column{{Key: "source", Head: ""}, {Key: "above_water", Head: "above water"}, {Key: "today", Head: "today"},
		{Key: "water", Head: "water in it"}, {Key: "at_most", Head: "from a US gallon"}}, rows)
	for i, f := range m.points {
		note := f.Source + ", " + obtained(f.Obtained)
		if f.Note != "" && len(m.points) == 1 {
			note += "; " + f.Note
		}
		part.Item(letter(i) + ": " + note)
	}
	if len(m.points) > 1 {
		part.Remark("The sources disagree, and so each is shown.")
	}
	cool := label.Text(units.ScaleFahrenheit, 0)
	if p.Metric {
		cool = label.Text(units.ScaleCelsius, 0)
	}
	part.Remark("The points were printed for sea level; today's are those of the same strength under the pressure of the day. The weights are of a US gallon of syrup, measured at " + cool + ", with nothing left in pan and molds: no more is possible.")
	for i, f := range m.figures {
		part.Row(fmt.Sprintf("published_%s", letter(i)), "Practice gets of a US gal", span(cli.Mass(f.Low), cli.Mass(f.High)), f.Source, obtained(f.Obtained))
	}
	if len(m.figures) == 0 {
		part.Remark("No published weight is at hand.")
	}
	if m.syrup > 0 {
		low, high := m.syrup.Inverted()
		part.Row("inverted", "Syrup that suits", cli.Between(cli.Share(low, 1), cli.Share(high, 1)), "of its mass inverted sugar; from memory of producers' manuals")
	}
}

// obtained words how the packages know a figure.
func obtained(how string) string {
	if how == "memory" {
		return "from memory"
	}
	return how
}

func letter(i int) string { return string(rune('a' + i)) }

// span shows a range, or one value where both ends are the same.
func span(low, high cli.Value) cli.Value {
	if low == high {
		return low
	}
	return cli.Between(low, high)
}

// cautions of the finish. Sources: US CPSC; University of Vermont; Cornell maple
// program; CFIA; regulation M-35.1 r. 18.1; University of Maine Extension.
var cautions = []string{
	"Syrup near 219 F and candy up to 260 F burn through the skin at once and stick: long sleeves and gloves, no children or pets near, a cup filled away from the body.",
	"The end comes in minutes: never leave the pot. It foams over, runs low, scorches and burns; keep defoamer at hand and a lid to smother a fire, and never put water on it.",
	"Hang the scale, or weigh with the fire out and two pairs of hands.",
	"Boil outdoors, or under a vent with a flue and a carbon monoxide alarm; never on a camp stove in a closed room.",
	"Milk, cream and butter against foam or in a confection are allergens, and so are nuts: declare them.",
	"Syrup thinner than its mark ferments and grows mold; moldy syrup or cream is thrown away, not skimmed.",
	"Pans, pots, cups and thermometers free of lead: no lead solder, old galvanized ware, brass or bronze. A thermometer with mercury stays out of food.",
}
