package main

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// page lays a day out.
type page struct {
	*day

	*cli.Sheet
}

func (d *day) sheet() *cli.Sheet {
	sheet := &cli.Sheet{Title: "Packing day", Metric: d.given.metric}
	p := page{d, sheet}
	p.brief()
	if d.borrowed != "" {
		sheet.Part("about", "About this page").Remark("Not given, and so taken as: " + d.borrowed + ".")
	}
	p.cansPart(sheet.Part("cans", "Cans"))
	p.poolPart(sheet.Part("pool", "Poured together"))
	p.markPart(sheet.Part("mark", "To the mark"))
	p.filterPart(sheet.Part("filter", "Filter"))
	p.packPart(sheet.Part("pack", "Fill"))
	p.scalePart(sheet.Part("scale", "On the scale"))
	sheet.PartIf(d.coldest >= 0, "capping", "Heat at capping", p.cappingPart)
	sheet.PartIf(len(d.helpers) > 0, "shares", "Shares", p.sharePart)
	p.accountPart(sheet.Part("account", "Account"))
	p.keepPart(sheet.Part("keeping", "Keeping"))
	care := sheet.Part("care", "Take care")
	if thin := p.tooThin(); thin != "" {
		care.Item(thin)
	} else if thick := cli.Keeping(p.pack.Brix()); thick != "" && p.pack.Brix() >= sugar.KeepsFrom {
		care.Item(thick)
	}
	care.Item(p.cautions()...)
	care.If(!math.IsNaN(float64(d.aid))).Item("Filter aid is dust that harms the lungs (NIOSH limits: 6 mg/m3, 0.05 of crystalline silica): food grade only, pour it low, wet it at once, wear a respirator made for such dust.")
	return sheet
}

func (p page) cansPart(part *cli.Part) {
	var rows [][]cli.Value
	doubt := units.Brix(0)
	for _, c := range p.cans {
		rows = append(rows, []cli.Value{cli.Words(c.name), cli.Volume(c.lot.Volume()), cli.Mass(c.lot.WeightInAir()), cli.Brix(c.reading, 1),
			cli.Temperature(c.readAt), cli.Brix(c.true.Brix, 2), cli.Share(c.light, 1)})
		doubt = max(doubt, c.true.Uncertainty)
	}
	if words := p.given.outOfBlend(); words != "" {
		part.Item(strings.TrimSuffix(words, ".") + " with all that was poured to it; do not taste, skim, boil again or blend it, and scald what it touched.")
	}
	part.Table("cans", []cli.Column{{Key: "can", Head: "can"}, {Key: "volume", Head: "syrup"}, {Key: "weight", Head: "weighs"}, {Key: "reading", Head: "read"},
		{Key: "read_at", Head: "cup"}, {Key: "true", Head: "true"}, {Key: "light", Head: "light"}}, rows)
	part.Row("uncertainty", "Each strength, give or take", cli.Brix(doubt, 2), "by steps and scale of the hydrometer and by the thermometer")
	part.Remark(cli.NineteenOfTwenty)
	for _, f := range p.given.again {
		part.Item(fmt.Sprintf("Look again, %s:%d: %s", f.File, f.Line, f.Text))
	}
	part.If(len(thinCans(p.cans)) > 0).Remark(fmt.Sprintf("A can is thinner than %s: it may have fermented or grown mold.", sugar.KeepsFrom.Text(0)))
	part.Remark("Before anything is poured together, look into each can, then smell it. Any mold: throw it away, and give batches.csv a column mold with yes. Sour or yeasty: keep it out too.")
}

// closeTo tells what to do about a second reading that is as close to a limit of
// the rule.
func (p page) closeTo() string {
	if most := p.standard.Max; most != 0 && p.pool.lot.Brix() > most-p.pool.doubt {
		return "What stays as close to the most is thinned off the fire with a little hot water, brought to the boil and read again until it is sure; crystals are likely in the jar."
	}
	return "What stays as close to the least strength is boiled on until it is sure."
}

// leave tells why syrup inside the rule is not heated again.
func (p page) leave() string {
	where := "inside the rule"
	if math.Abs(float64(p.pool.lot.Brix()-p.given.target)) <= float64(p.pool.doubt) {
		where = "no reading tells it from the target"
	}
	return where + ": heating it again would cost color and clearness"
}

// tooThin warns of syrup that is packed thinner than it keeps, or than the rule
// allows; it is empty for other syrup.
func (p page) tooThin() string {
	b := p.pack.Brix()
	switch {
	case b < sugar.KeepsFrom-atTheMark:
		return cli.Keeping(b)
	case b < p.standard.Min-atTheMark:
		return fmt.Sprintf("Syrup of %s is thinner than the rule allows (%s): boil it on before it is packed for sale.", b.Text(1), p.rule())
	}
	return ""
}

// strength adds what is known of a syrup: strength, color and the rule's answer.
func (p page) strength(part *cli.Part, s syrup, how string) {
	part.Row("brix", "Strength", cli.Brix(s.lot.Brix(), 2))
	part.Row("uncertainty", "Give or take", cli.Brix(s.doubt, 2), how)
	part.Row("verdict", "By the rule on density", cli.Words(s.verdict.String()), p.rule())
	p.color(part, s.light)
}

// rule words the standard that counts.
func (p page) rule() string {
	span := p.standard.Min.Text(1) + " or more"
	if p.standard.Max != 0 {
		span = fmt.Sprintf("%.1f to %s", float64(p.standard.Min), p.standard.Max.Text(1))
	}
	return p.standard.Place + ": " + span
}

func (p page) color(part *cli.Part, light units.Share) {
	if math.IsNaN(float64(light)) {
		part.Row("color", "Color class", cli.Words("unknown"), "not all light transmissions are given")
		return
	}
	class, err := sugar.ColorClassOf(light)
	if err != nil {
		return // light lies in the range: it came from the library
	}
	part.Row("light", "Light transmission", cli.Share(light, 1), "560 nm, 10 mm")
	note := "a class of color and not a grade"
	low, below := class.Limits()
	const photometer = 2 // percent, common practice
	if light-low < photometer && class != sugar.VeryDark || below-light < photometer && class != sugar.Golden {
		note = "near its limit: a photometer may say the other; " + note
	}
	part.Row("color", "Color class", cli.Words(class.String()+", "+class.Taste()), note)
}

func (p page) poolPart(part *cli.Part) {
	l := p.pool.lot
	part.Row("volume", "Volume", cli.Volume(l.Volume()), "at "+p.In(cli.Temperature(l.Temperature())))
	part.Row("weight", "On the scale", cli.Mass(l.WeightInAir()))
	part.Row("sugar", "Sugar in it", cli.Mass(l.Sugar()))
	p.strength(part, p.pool, "by the readings; amounts are taken as exact")
}

func (p page) markPart(part *cli.Part) {
	s := p.given
	part.Row("target", "Target", cli.Brix(s.target, 1))
	switch {
	case p.off > 0:
		part.Row("boil_off", "Boil off, water", cli.Digits(cli.Mass(p.off), 3), p.In(cli.Digits(cli.Volume(waterVolume(p.off)), 3))+"; weigh the pot before and after")
		part.Row("boils", "It is syrup at", cli.Temperature(p.boils), "where water boils at "+p.In(cli.Temperature(p.water)))
	case !p.added.Empty():
		what := "water"
		if s.thinner > 0 {
			what = s.thinner.Text(1)
		}
		part.Row("add", "Thin with", cli.Digits(cli.Volume(p.added.Volume()), 3), p.In(cli.Digits(cli.SmallVolume(p.added.Volume()), 3)), what+" at "+p.In(cli.Temperature(s.thinTemp)))
		part.Row("add_weight", "That weighs", cli.Digits(cli.Mass(p.added.WeightInAir()), 3))
		with := cli.WaterOrSap
		if s.thinner >= sugar.KeepsFrom/2 {
			with = "the lighter syrup, hot"
		}
		part.Item(cli.BringBack(with)...)
	case p.do == sugar.ReadAgain:
		part.Row("action", "To do", cli.Words(p.do.String()), "a limit of the rule lies within the uncertainty: mend nothing yet")
		part.Remark(cli.ReadAgain + " " + p.closeTo() + " The figures below are of the syrup as it is.")
	case p.own && (p.pool.verdict == sugar.TooThin || p.pool.verdict == sugar.TooDense):
		part.Row("action", "To do", cli.Words(p.do.String()), "no reading tells it from the target that you gave, which the rule forbids")
	default:
		part.Row("action", "To do", cli.Words(p.do.String()), p.leave())
	}
	part.Row("heat", "Heat into the syrup", cli.Digits(cli.Energy(p.heat), 3))
	cool, err := p.mark.lot.VolumeAt(label)
	if err == nil { // 68 F is in every range
		part.Row("volume", "Makes, at "+p.Degrees(label), cli.Volume(cool), p.In(cli.Volume(p.mark.lot.Volume()))+" at the filter")
	}
	part.Row("weight", "On the scale", cli.Mass(p.mark.lot.WeightInAir()))
	part.Row("reads", "Hydrometer must read", cli.Brix(p.reads, 1), append(append(p.InCup(s.cup, s.told), "graduated at "+p.In(cli.Temperature(s.stem))), s.miss.NoteHydrometer()...)...)
	p.strength(part, p.mark, "by such a reading")
	part.Row("rule", "Rule", cli.Words(p.standard.Source), "local rules come first", p.standard.Note)
	sure := p.standard.Min + p.mark.doubt
	part.Row("sure", "Sure to be dense enough from", cli.Brix(sure, 2), "by this hydrometer and thermometer")
	part.Remark(s.pan.Told(p.Sheet)...)
	denser := sure + 0.05 // rounded up to a tenth
	fits := p.standard.Max == 0 || denser+p.mark.doubt < p.standard.Max
	if mended := p.off > 0 || !p.added.Empty(); mended && p.mark.verdict == sugar.TooCloseToCall && s.target < sure && fits {
		part.Remark("At this target no reading tells whether the rule is kept. To be sure of it finish denser, at " + denser.Text(1) + ", the target to give.")
	}
	remark := "Syrup that is heated again darkens and may throw niter: filter it after that."
	if p.off > 0 {
		remark = "Boiling on makes new color, which is not in the figure. " + remark
	}
	part.Remark(remark)
}

// waterVolume is what water fills at 68 F.
func waterVolume(m units.Mass) units.Volume {
	rho, _ := density.Water(label) // 68 F is in its range
	return m.Volume(rho)
}

func (p page) filterPart(part *cli.Part) {
	s := p.given
	part.Row("at", "Filter at", cli.Temperature(s.filterAt))
	part.Row("viscosity_mpa_s", "It is as thick as", cli.Number(p.thick.MillipascalSeconds(), 1, "mPa s"), "water at "+p.Degrees(label)+" has 1")
	part.Row("cooled_mpa_s", "Cooled to "+p.Degrees(cooled), cli.Number(p.thickCold.MillipascalSeconds(), 1, "mPa s"), fmt.Sprintf("it then takes %.1f times as long", float64(p.thickCold/p.thick)))
	if math.IsNaN(float64(p.aid)) {
		part.Row("filters", "Gravity filters", cli.Count(p.filters, ""), "one for "+p.In(cli.Volume(s.each)))
	} else {
		part.Row("aid", "Filter aid for the press", cli.Mass(p.aid), p.dose())
	}
	part.Row("kept", "Syrup that stays in", cli.SmallVolume(p.kept.Volume()), "at "+p.Degrees(label)+"; rinse it out with hot water for the next boil")
}

// cautions of hot packing. Sources: US CPSC; Ontario food safety manual D.6.3;
// University of Maine Extension; OMAFRA 2014; CFIA; regulation M-35.1 r. 18.1.
func (p page) cautions() []string {
	return []string{
		"Syrup at packing heat burns through the skin at once and sticks: long sleeves, no children or pets underfoot, nobody alone with a full pot.",
		"Seal at " + p.AtLeast(packing.CappingLeast()) + " or above and hold sealed 5 minutes. Cool jars apart from each other: stacked hot they darken.",
		"Any mold: throw the syrup away. It may hold toxins that heat does not destroy: do not taste, skim, boil again or blend it. An opened jar is kept cold.",
		"Infused or flavored syrup is outside this page: fruit, herbs, spices and spirits change how it keeps. Follow a tested recipe and the local rules.",
		"No lead solder, old galvanized ware, brass or bronze in touch with syrup; containers for food that are made to be filled hot, new or clean. Dairy fat against foam is an allergen: declare it.",
		"For sale, the local rules come first: license, label, lot, net contents and grade.",
	}
}

// dose words the dose of filter aid.
func (p page) dose() string {
	if p.Metric {
		return p.given.dose.Text(units.KilogramPerCubicMeter, 1)
	}
	return p.given.dose.Text(units.PoundPerUSGallon, 3)
}
