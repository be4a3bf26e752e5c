package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
)

// page lays a plan out.
type page struct {
	*plan

	*cli.Sheet
}

func (p *plan) sheet() *cli.Sheet {
	sheet := &cli.Sheet{Title: "A day at the pan", Metric: p.given.metric}
	page := page{p, sheet}
	if p.demo {
		sheet.Part("about", "About this page").Remark("An invented yard on an invented day: give your own sap, place and pan with flags, -h lists them.")
	} else if p.borrowed != "" {
		sheet.Part("about", "About this page").Remark("Not given, and so as on an invented day: " + p.borrowed + ".")
	}
	page.sapPart(sheet.Part("sap", "Sap"))
	if p.membrane != nil {
		page.membranePart(sheet.Part("membrane", "Membrane"))
	}
	page.syrupPart(sheet.Part("syrup", "Syrup to expect"))
	if p.run != nil {
		page.rigPart(sheet.Part("timeline", "At the pan"))
	} else {
		page.clockPart(sheet.Part("clock", "At the pan"))
	}
	page.fuelPart(sheet.Part("fuel", "Fire"))
	page.finishPart(sheet.Part("finish", "When it is syrup"))
	if p.small && p.run == nil {
		page.potPart(sheet.Part("pot", "Too little for this pan: finish in a pot"))
	}
	if p.waits > 0 && p.run == nil {
		page.waitPart(sheet.Part("waiting", "Sap that must wait"))
	}
	if p.filling.Hot > 0 {
		page.bottlePart(sheet.Part("bottles", "Bottles"))
	}
	care := sheet.Part("care", "Take care")
	for _, c := range cautions {
		care.Item(c)
	}
	return sheet
}

func (p page) sapPart(part *cli.Part) {
	if len(p.gatherings) > 1 {
		var rows [][]cli.Value
		for _, g := range p.gatherings {
			rows = append(rows, []cli.Value{cli.Words(g.source), cli.Words(g.when.Format("15:04")), cli.Volume(g.lot.Volume()),
				cli.Brix(g.reading, 1), cli.Temperature(g.read), cli.Brix(g.lot.Brix(), 2)})
		}
		part.Table("gatherings", []cli.Column{{Key: "source", Head: "source"}, {Key: "time", Head: "time"}, {Key: "volume", Head: "sap"},
			{Key: "reading", Head: "read"}, {Key: "read_at", Head: "in the cup at"}, {Key: "true", Head: "true"}}, rows)
	} else {
		g := p.gatherings[0]
		part.Row("reading", "Hydrometer reads", cli.Brix(g.reading, 1), "in the cup at "+p.In(cli.Temperature(g.read))+", graduated at "+p.In(cli.Temperature(p.given.sapStem)))
	}
	part.Row("volume", "Sap", cli.Volume(p.pooled().Volume()))
	part.Row("brix", "True strength", cli.Brix(p.pooled().Brix(), 2))
	part.Row("sugar", "Sugar in it", cli.Mass(p.pooled().Sugar()))
}

func (p page) syrupPart(part *cli.Part) {
	part.Row("target", "Target", cli.Brix(p.given.target, 1), legal)
	part.Row("volume", "Syrup at "+p.cool(), cli.Volume(p.syrup.Volume()))
	part.Row("mass", "It weighs", cli.Mass(p.syrup.Mass()))
	what := "Sap to one of syrup"
	if p.membrane != nil {
		what = "Concentrate to one of syrup"
	}
	part.Row("ratio", what, cli.Number(p.ratio, 1, ""))
	if p.rule > 0 {
		part.Row("ratio_by_rule", "The same by the rule of 86", cli.Number(p.rule, 1, ""), "a rule of thumb")
		part.Row("volume_by_rule", "Syrup by the rule of 86", cli.Volume(p.sap.Volume()/units.Volume(p.rule)))
	}
}

func (p page) clockPart(part *cli.Part) {
	part.Row("off", "Water to boil off", cli.Mass(p.off))
	part.Row("rate", "The pan boils off", cli.Flow(p.given.rate))
	part.Row("fire", "Fire lit", cli.Clock(p.start, p.start))
	part.Row("boils", "It boils", cli.Clock(p.start, p.start.Add(p.heating)), "after "+minutes(p.heating))
	part.Row("last_sap", "Last sap in the pan", cli.Clock(p.start, p.start.Add(p.lastSap)), "after "+minutes(p.lastSap))
	end := "It is syrup"
	if p.small {
		end = "Take it off the pan"
	}
	if p.stopAt > 0 {
		part.Row("last_wood", "Last wood on the fire", cli.Clock(p.start, p.start.Add(p.lastWood)), "at "+p.stopAt.Text(1)+": the coals bring it the rest of the way, a little later than with a full fire")
	}
	part.Row("done", end, cli.Clock(p.start, p.start.Add(p.done)), "after "+minutes(p.done))
	if p.batches > 1 {
		part.Row("batches", "Draw syrup off", cli.Count(p.batches, "times"), "the pan does not hold all of it")
	}
	if p.small {
		part.Row("hours", "Hours at the fire", cli.Hours(p.done), "the pot comes after")
	} else {
		part.Row("hours", "Hours at the fire", cli.Hours(p.done))
	}
	part.Remark("The clock assumes that the rate holds all day, sap is added as the level falls, and the last of it is boiled down in the same pan.")
	if p.comes > 0 {
		part.Remark("It also takes all sap as being there when the fire is lit, though the last of it comes at " + p.start.Add(p.comes).Format("15:04") + ": light the fire later, or expect to bank it.")
	}
	if p.done > 24*time.Hour {
		part.Remark("That is more than a day and a night at one pan. Sap does not wait so long: share it out, concentrate it first, or boil what comes in each day.")
	}
}

func (p page) finishPart(part *cli.Part) {
	part.Row("pressure", "Pressure at the pan", cli.Pressure(p.pressure), weather[p.from])
	part.Row("water", "Water boils today at", cli.Temperature(p.waterBoils))
	part.Row("syrup", "Syrup boils at", cli.Temperature(p.syrupBoils))
	part.Row("rise", "That is above water", cli.TempDiff(p.syrupBoils.Sub(p.waterBoils)))
	note := fmt.Sprintf("%.1f Baume, graduated at %s", float64(p.baume), p.In(cli.Temperature(p.given.stem)))
	if density.Extrapolated(p.given.cup) {
		note += "; above " + p.whole(units.Celsius(90)) + " the density is extrapolated, by less than 0.1 Brix"
	}
	part.Row("reads", "Hydrometer must read", cli.Brix(p.reads, 1), "in the cup at "+p.In(cli.Temperature(p.given.cup)), note)
	part.Row("doubt", "Give or take", cli.Brix(p.measured.Uncertainty, 1), "k = 2: divisions, thermometer, calibration and the formula together")
	part.Remark("Near the end go by the hydrometer: 0.1 F on the thermometer is a quarter of a Brix, and the barometer moves during the day.")
}

func (p page) potPart(part *cli.Part) {
	part.Remark(fmt.Sprintf("As syrup it would lie under the least safe depth of %s and scorch. Take it off while it still covers the pan:", p.In(cli.Length(p.given.safe))))
	part.Row("brix", "Take off at", cli.Brix(p.takeoff.Brix(), 1))
	part.Row("temperature", "It then boils at", cli.Temperature(p.takeoff.Temperature()))
	part.Row("volume", "Volume, hot", cli.Volume(p.takeoff.Volume()))
	part.Row("left", "Sugar that stays behind", cli.Mass(p.left.Sugar()), "rinse it out with the next sap")
	off := p.takeoff.Mass() - p.given.target.Of(p.takeoff.Sugar())
	part.Row("off", "Water left for the pot", cli.Mass(off))
	part.Row("syrup", "Syrup from the pot, at "+p.cool(), cli.Volume(units.Volume(float64(p.syrup.Volume())*float64(p.takeoff.Sugar())/float64(p.sap.Sugar()))))
}

func (p page) waitPart(part *cli.Part) {
	part.Row("volume", "Waits for the pan", cli.Volume(p.waits), "room in the pan at the start: "+p.In(cli.Volume(p.firing.first)))
	part.Row("until", "The last of it until", cli.Clock(p.start, p.start.Add(p.lastSap)))
	part.Row("temperature", "It is now at", cli.Temperature(p.sap.Temperature()), keeping(p.sap.Temperature()))
}

// keeping words how sap keeps at a temperature. Source: Ohio State University
// Extension, Handling Sap and Syrup During the Season.
func keeping(t units.Temperature) string {
	switch f := t.Fahrenheit(); {
	case f < 40:
		return "below 40 F it keeps: hold it there, shaded and on ice"
	case f <= 50:
		return "hold it below 40 F; above 50 F it spoils fast"
	default:
		return "above 50 F it spoils fast: boil the oldest first and cool the rest below 40 F"
	}
}

const legal = "the United States and Canada ask for 66.0 to 68.9, some places for 66.9 or more: local rules come first"

// cautions of the day's work. Sources: US CPSC; University of Vermont; Cornell
// maple program; NIOSH; CFIA; regulation M-35.1 r. 18.1.
var cautions = []string{
	"Sap near 212 F and syrup near 219 F burn through the skin at once and stick: keep children and pets away from the pan.",
	"A pan foams over or boils dry in minutes: never leave it, and keep the level above the safe depth.",
	"Boil outdoors, or under a vent with a flue and a carbon monoxide alarm. Keep the stack, the wood and dry grass apart.",
	"No lead solder, old galvanized ware, brass or bronze in touch with sap or syrup. Dairy fat against foam is an allergen.",
}

// cool words the temperature of a label's volume.
func (p page) cool() string { return p.whole(label) }

// whole words a temperature of the trade to a whole degree.
func (p page) whole(t units.Temperature) string {
	if p.given.metric {
		return t.Text(units.ScaleCelsius, 0)
	}
	return t.Text(units.ScaleFahrenheit, 0)
}

func minutes(d time.Duration) string {
	m := int(d.Round(time.Minute).Minutes())
	if m < 60 {
		return fmt.Sprintf("%d min", m)
	}
	return fmt.Sprintf("%d h %02d min", m/60, m%60)
}
