package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// page lays a plan out.
type page struct {
	*plan

	*cli.Sheet
}

// show lays the plan out, and adds it to the folder if that is asked.
func (p *plan) show(e *cli.Env) error {
	sheet := &cli.Sheet{Title: "A day at the pan", Metric: p.given.metric}
	page := page{p, sheet}
	page.brief()
	if p.demo {
		sheet.Part("about", "About this page").Remark("An invented sugarhouse on an invented day: make a folder of your own, or give your own sap, place and pan with flags; -h lists them.")
	} else if p.kept != "" {
		sheet.Part("about", "About this page").Remark("Not given, and so as on an invented day: " + p.kept + ".")
	}
	page.sapPart(sheet.Part("sap", "Sap"))
	sheet.PartIf(p.ice != nil, "ice", "Ice", page.icePart)
	sheet.PartIf(p.membrane != nil, "membrane", "Membrane", page.membranePart)
	page.syrupPart(sheet.Part("syrup", "Syrup to expect"))
	sheet.PartIf(p.run != nil, "timeline", "At the pan", page.rigPart)
	sheet.PartIf(p.run == nil && !p.alone, "clock", "At the pan", page.clockPart)
	sheet.PartIf(p.run != nil && !p.small && p.run.Held.Sugar() > 0, "night", "The night, and the next morning", page.nightPart)
	page.fuelPart(sheet.Part("fuel", "Fire"))
	page.finishPart(sheet.Part("finish", "When it is syrup"))
	sheet.PartIf(p.small, "pot", page.potTitle(), page.potPart)
	sheet.PartIf(p.waits > 0, "waiting", "Sap that must wait", page.waitPart)
	sheet.PartIf(p.filling.Hot > 0, "bottles", "Bottles", page.bottlePart)
	sheet.Part("care", "Take care").Item(page.cautions()...)
	rows, err := page.rows()
	if err == nil {
		err = sheet.Add(e, rows...)
	}
	if err != nil {
		return err
	}
	return sheet.Show(e)
}

func (p page) sapPart(part *cli.Part) {
	if len(p.gatherings) > 1 {
		in := map[string]string{"": "in the cup at", plain: "prism at"}[p.given.refractometer]
		var rows [][]cli.Value
		for _, g := range p.gatherings {
			row := []cli.Value{cli.Words(g.source), cli.Words(g.told()), cli.Volume(g.lot.Volume()), cli.Brix(g.reading, 1)}
			if in != "" {
				row = append(row, cli.Temperature(g.read))
			}
			rows = append(rows, append(row, cli.Brix(g.lot.Brix(), 2)))
		}
		cols := []cli.Column{{Key: "source", Head: "source"}, {Key: "time", Head: "time"}, {Key: "volume", Head: "sap"}, {Key: "reading", Head: "read"}}
		if in != "" {
			cols = append(cols, cli.Column{Key: "read_at", Head: in})
		}
		part.Table("gatherings", append(cols, cli.Column{Key: "true", Head: "true"}), rows)
		for _, f := range p.given.again {
			part.Item(fmt.Sprintf("Look again, %s:%d: %s", f.File, f.Line, f.Text))
		}
	} else {
		p.readingRow(part)
	}
	part.Row("volume", "Sap", cli.Volume(p.pooled().Volume()))
	part.Row("brix", "True strength", cli.Brix(p.pooled().Brix(), 2))
	p.doubtRow(part)
	part.Row("sugar", "Sugar in it", cli.Mass(p.pooled().Sugar()))
	p.deadlineRow(part)
	p.sweetRow(part)
}

func (p page) syrupPart(part *cli.Part) {
	part.Row("target", "Target", cli.Brix(p.given.target, 1), cli.Legal)
	part.Row("volume", "Syrup at "+p.cool(), cli.Volume(p.syrup.Volume()))
	part.Row("weight", "On a scale it weighs", cli.Mass(p.syrup.WeightInAir()))
	what := "Sap to one of syrup"
	if p.membrane != nil {
		what = "Concentrate to one of syrup"
	}
	part.Row("ratio", what, cli.Number(p.ratio, 1, ""), "both at "+p.cool())
	if p.rule > 0 {
		part.Row("ratio_by_rule", "The same by the rule of 86", cli.Number(p.rule, 1, ""), "a rule of thumb")
		part.Row("volume_by_rule", "Syrup by the rule of 86", cli.Volume(p.sap.Volume()/units.Volume(p.rule)))
	}
}

func (p page) clockPart(part *cli.Part) {
	part.If(p.overrun).Remark(fmt.Sprintf("DO NOT LIGHT THIS FIRE as it is: its coals alone boil off %s, more than there is to boil. It would have to stand %s deep at the last stick. Gather more sap or boil it in a pot, and if the fire burns already pour in sap, or water, before the level is low. %s", p.atLeast(p.coals), p.deep(p.needed()), damp))
	if tail := p.done - p.lastWood; !p.overrun && tail > watched {
		part.Remark(fmt.Sprintf("SUCH COALS SUIT NO FLAT PAN boiled down at one go: from the last wood they take %s, and nobody watches a pan so long. Put the last wood on as told below, pour in sap as the level falls, then take the last inches off into a pot on a burner of its own while they are deep yet. Fill the pan with water at once, and keep it above the safe depth as long as there are coals under it.", p.In(cli.Hours(tail))))
	}
	part.Row("off", "Water to boil off", cli.Mass(p.off))
	part.Row("rate", "The pan boils off", cli.Flow(p.given.pan.Rate))
	part.Row("fire", "Fire lit", cli.Clock(p.start, p.start))
	part.Row("boils", "It boils", cli.Clock(p.start, p.start.Add(p.heating)), "after "+p.In(cli.Hours(p.heating)))
	if p.overrun { // it ends when somebody pours in what is missing, and no clock knows that
		part.Remark(coldArch)
		return
	}
	part.Row("last_sap", "Last sap in the pan", cli.Clock(p.start, p.start.Add(p.lastSap)), "after "+p.In(cli.Hours(p.lastSap)))
	end := "It is syrup"
	if p.small {
		end = "Take it off the pan"
	}
	if p.given.coals > 0 {
		when := "at " + p.stopAt.Text(1)
		if p.stopAt == 0 {
			when = "with the pan full and at least " + p.atLeast(p.sapThen) + " of sap still to go in"
		}
		part.Row("last_wood", "Last wood on the fire", cli.Clock(p.start, p.start.Add(p.lastWood)), when+": the coals still boil off "+p.atLeast(p.coals))
		part.Remark(damp)
		end += " within 0.1 Brix"
	}
	part.Row("done", end, cli.Clock(p.start, p.start.Add(p.done)), "after "+p.In(cli.Hours(p.done)))
	part.If(p.batches > 1).Row("batches", "Draw syrup off", cli.Count(p.batches, "times"), "the pan does not hold all of it")
	part.Row("hours", "Hours at the fire", cli.Hours(p.done), cli.When(p.small, "the pot comes after"))
	p.stoppedRow(part)
	part.Remark("The clock assumes that the rate holds all day, sap is added as the level falls, and the last of it is boiled down in the same pan.")
	part.Remark(coldArch)
	part.If(p.comes > 0).Remark("It also takes all sap as being there when the fire is lit, though the last of it comes at " + p.start.Add(p.comes).Format("15:04") + ": light the fire later, or expect to bank it.")
	part.If(p.done > 24*time.Hour).Remark("That is more than a day and a night at one pan. Sap does not wait so long: share it out, concentrate it first, or boil what comes in each day.")
}

func (p page) finishPart(part *cli.Part) {
	part.Row("pressure", "Pressure at the pan", cli.Pressure(p.pressure), cli.KnownBy[p.from])
	part.Remark(p.given.place.Told(p.Sheet)...)
	part.Row("water", "Water boils today at", cli.Temperature(p.waterBoils))
	part.Row("syrup", "Syrup boils at", cli.Temperature(p.syrupBoils))
	part.If(p.miss.Thermometer != 0).Row("shows", "Your thermometer then shows", cli.Temperature(p.syrupBoils.Add(p.miss.Thermometer)), p.miss.NoteThermometer(p.Sheet)...)
	part.Row("rise", "That is above water", cli.TempDiff(p.syrupBoils.Sub(p.waterBoils)))
	notes := append(p.InCup(p.given.cup, p.given.cupTold), fmt.Sprintf("%.1f Baume, graduated at %s", float64(p.baume), p.In(cli.Temperature(p.given.stem))))
	part.Row("reads", "Hydrometer must read", cli.Brix(p.reads+p.miss.Hydrometer, 1), append(notes, p.miss.NoteHydrometer()...)...)
	part.Row("doubt", "Give or take", cli.Brix(p.measured.Uncertainty, 1), "divisions, thermometer, calibration and the formula together")
	p.invertedRow(part)
	part.Remark("Near the end go by the hydrometer: " + p.Difference(slip(p.given.metric)) + " on the thermometer is " + p.slipBrix.Text(2) + ", and the barometer moves during the day.")
}

func (p page) waitPart(part *cli.Part) {
	part.Row("volume", "Waits for the pan", cli.Volume(p.waits), "room in the pan at the start: "+p.In(cli.Volume(p.firing.first)))
	part.If(!p.overrun).Row("until", "The last of it until", cli.Clock(p.start, p.start.Add(p.lastSap)))
	part.Row("temperature", "It is now at", cli.Temperature(p.sap.Temperature()), p.keeping(p.sap.Temperature()))
	part.Remark("Sap that is cloudy, ropy or sour is thrown away whatever the clock says, and not tasted.")
}

// keeping words how sap keeps at a temperature. Source: Ohio State University
// Extension, Handling Sap and Syrup During the Season.
func (p page) keeping(t units.Temperature) string {
	cold, warm := p.AtMost(units.Fahrenheit(40)), p.Degrees(units.Fahrenheit(50))
	switch f := t.Fahrenheit(); {
	case f < 40:
		return "boil it by tomorrow: hold it below " + cold + ", shaded and on ice"
	case f <= 50:
		return "boil it by tomorrow: hold it below " + cold + "; above " + warm + " it spoils fast"
	default:
		return "above " + warm + " it spoils fast: boil it today, the oldest first, and cool the rest below " + cold
	}
}

// cautions of the day's work. Sources: US CPSC; University of Vermont; Cornell
// maple program; NIOSH; CFIA; regulation M-35.1 r. 18.1; of acid and bleach,
// common practice.
func (p page) cautions() []string {
	return []string{
		cli.Keeping(p.given.target),
		fmt.Sprintf("Sap near %s and syrup near %s burn through the skin at once and stick: keep children and pets away from the pan.", p.Degrees(p.waterBoils), p.Degrees(p.syrupBoils)),
		"A pan foams over or boils dry in minutes: never leave it, and keep the level above the safe depth.",
		"Boil outdoors, or under a vent with a flue and a carbon monoxide alarm.",
		"Keep the stack clear of all that burns where it passes wall and roof, and wood and dry grass away from the fire. The local fire code comes before this page.",
		"No lead solder, old galvanized ware, brass or bronze in touch with sap or syrup. Dairy fat against foam is an allergen.",
		"Acid for cleaning pans never meets bleach, nor a rag or a drain with bleach in it: together they give off chlorine gas. Rinse the pan well before the next sap.",
	}
}

// cool words the temperature of a label's volume.
func (p page) cool() string { return p.Degrees(label) }
