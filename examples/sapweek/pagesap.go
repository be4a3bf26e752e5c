package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

func rough(s season.Figure[units.Volume]) cli.Value {
	return cli.Between(cli.Rough(cli.Volume(s.Low)), cli.Rough(cli.Volume(s.High)))
}

func (p page) sapPart(part *cli.Part) {
	part.Row("taps", "Taps", cli.Count(p.given.taps, ""), p.how)
	part.If(p.gain.High > 0).Row("gain", "That gives more by", cli.Between(cli.Rough(cli.Share(p.gain.Low, 1)), cli.Rough(cli.Share(p.gain.High, 1))), p.gain.Source+": the sources do not agree")
	part.If(p.how == "by a falling line").Remark("The low end is that of a line in which air takes the vacuum away; the high end has the vacuum of the whole fall at every tap.")
	part.If(p.given.drop > season.LongestDrop).Remark("A fall of more than " + season.LongestDrop.Text(units.Foot, 1) + " (" + season.LongestDrop.Text(units.Meter, 1) + ")" + " counts as that: the column of sap breaks, and draws no more.")
	part.Row("flow_days", "Running days of a season", median(p.flowDays), p.flowFrom)
	part.Row("best", "A tap on the best day", cli.Rough(cli.Volume(p.best)), p.bestFrom)
	if p.likely != nil {
		p.likelyTable(part)
	} else {
		p.bandTable(part)
	}
	p.sugarRow(part)
	stages, other := p.stageRemark(), "a"
	if stages != "" {
		other = "any other"
	}
	if p.likely == nil {
		stages += "The low end of a day that runs is an ordinary day of a poor season, the high end the best day; " + other + " day that does not run by the criterion may still bring an ordinary one. No week is all low or all high ends. " +
			"Source: " + p.total.Source + ". A record of your own taps is worth more than all of it."
	}
	part.Remark(stages, p.usualRun())
}

// usualRun tells of the hours and the size of runs elsewhere.
func (p page) usualRun() string {
	h := season.UsualHours()
	clock := func(d time.Duration) string { return fmt.Sprintf("%d:00", int(d.Hours())) }
	gallons := func(v units.Volume) string { return p.In(cli.Rough(cli.Volume(v))) }
	low, high := season.LargestRun()
	return fmt.Sprintf("Elsewhere: runs began from %s to %s and ended from %s to %s (means of 19 sugarbushes on tubing in Quebec). A producer calls %s a tap a pretty good run, and saw %s in the largest of 25 years.",
		clock(h.BeginsFrom), clock(h.BeginsTo), clock(h.EndsFrom), clock(h.EndsTo), gallons(season.GoodRun()), p.In(cli.Between(cli.Rough(cli.Volume(low)), cli.Rough(cli.Volume(high)))))
}

// bandTable shows the days ahead by what is published.
func (p page) bandTable(part *cli.Part) {
	var rows [][]cli.Value
	for i, d := range p.days {
		rows = append(rows, []cli.Value{cli.Date(d.Date), cli.Words(p.runs(i)), rough(p.perTap[i]), rough(p.all[i])})
	}
	part.Table("ahead", []cli.Column{{Key: "day", Head: "day"}, {Key: "runs", Head: "runs"}, {Key: "tap", Head: "sap of one tap"}, {Key: "sap", Head: "of all taps"}}, rows)
	part.Row("total", "In all these days", rough(p.total))
}

func (p page) sugarRow(part *cli.Part) {
	s := p.given
	if p.measured {
		part.Row("brix", "Sugar in it", cli.Brix(p.sugar.Low, 1), p.sugar.Source)
		return
	}
	notes := []string{s.species.String() + ", " + parts[s.part].String(), p.sugar.Source}
	if !(p.sugar.Low < p.sugar.High) {
		notes = []string{s.species.String(), "a mean of whole seasons, from memory: no range is known, and at the end there is less"}
	}
	part.Row("brix", "Sugar in it", cli.Between(cli.Brix(p.sugar.Low, 1), cli.Brix(p.sugar.High, 1)), append(notes, "measure yours and give -sugar")...)
}

func (p page) pailPart(part *cli.Part) {
	s := p.given
	part.Row("pail", "A pail holds", cli.Volume(s.pail), cli.Plural(s.perPail, "tap")+" in it; a round every "+p.In(cli.Hours(s.round)))
	daily := s.round <= day
	cols := []cli.Column{{Key: "from", Head: "sap of"}}
	if !daily {
		cols = append(cols, cli.Column{Key: "to", Head: "to"})
	}
	cols = append(cols, cli.Column{Key: "then", Head: "in the pail then"}, cli.Column{Key: "answer", Head: "answer"})
	if daily {
		cols = append(cols, cli.Column{Key: "full_after", Head: "full at the earliest"})
	}
	var rows [][]cli.Value
	spills := false
	for _, r := range p.rounds {
		row := []cli.Value{cli.Date(r.first)}
		if !daily {
			row = append(row, cli.Date(r.last))
		}
		row = append(row, rough(r.Then), cli.Words(r.Overflow.String()))
		full := cli.Words("")
		if r.Overflow != season.Lasts {
			full, spills = cli.Hours(r.FullAfter), true
		}
		if daily {
			row = append(row, full)
		}
		rows = append(rows, row)
	}
	part.Table("rounds", cols, rows)
	switch {
	case spills && daily:
		part.Remark(fmt.Sprintf("Hours are from the beginning of the thaw, and sap is taken to flow evenly for %s. Walk again before then on days that may overflow, or hang larger pails.", p.In(cli.Hours(s.flowing))))
	case spills:
		part.Remark("Walk sooner where a pail may overflow, or hang larger ones. Sap that hangs for days in the sun spoils.")
	}
}

// held tells for how long the tank is reckoned.
func (p page) held() string {
	if p.given.keep > 0 {
		return "for " + p.In(cli.Hours(p.given.keep)) + " of waiting"
	}
	return "for a day's sap"
}

func (p page) storePart(part *cli.Part) {
	s, f := p.given, p.forecast
	part.Row("basis", "Syrup of the season by", cli.Words(f.Basis.String()))
	note, vacuum := "at the least and the most syrup of a tap", ""
	if f.Basis == yield.OwnSeasons {
		part.Row("seasons", "Seasons", cli.Count(f.Seasons, ""))
		part.Row("middle", "The middle one of them", cli.Volume(f.Middle), "for "+cli.Plural(s.taps, "tap"))
	} else {
		note, vacuum = p.sweet(), cli.When(p.gain.High > 0, "with what the vacuum adds")
	}
	part.Row("syrup", "Syrup to expect", cli.Between(cli.Rough(cli.Volume(f.Low)), cli.Rough(cli.Volume(f.High))), note, vacuum)
	if w := f.Basis.Warning(); w != "" {
		part.Remark("Mind: " + w + ".")
	}
	part.If(f.Basis == yield.OwnSeasons && f.Seasons < 3).Remark("So few seasons say little of the range: three or more are worth having.")
	part.Remark("For the high end of it:")
	part.Row("containers", "Containers", cli.Count(p.laid.Containers, ""), "of "+p.In(p.jar()), s.spare.Text(0)+" spare")
	part.Row("filters", "Filter changes", cli.Count(p.laid.Filters, ""), "gravity filters")
	part.Row("tank", "Tank", cli.Rough(cli.Volume(p.tank)), "the best day, as in Sap to come", p.held())
	if s.perCord > 0 {
		part.Row("wood", "Wood", cli.Rough(cli.Wood(p.laid.Wood)), "stacked and dry")
	} else {
		part.Row("wood", "Wood", cli.Wood(p.laid.Wood), "not known: give -syrup-per-cord")
	}
}

// sweet tells which sap the ends of a range of syrup are of.
func (p page) sweet() string {
	return cli.When(!p.measured, "thin sap at the low end, sweet at the high")
}

func (p page) jar() cli.Value {
	if p.given.jar >= units.USGallon {
		return cli.Volume(p.given.jar)
	}
	return cli.SmallVolume(p.given.jar)
}

// cautions of the days ahead. Sources: Ohio State University Extension for cold
// sap; OMAFRA for cold bark; US CPSC and NIOSH for burns and carbon monoxide; the
// rest is common practice.
func (p page) cautions() []string {
	warm := ""
	if pan.Spoiling(p.given.sapTemp) == pan.GrowthFast {
		warm = "This sap waits above " + p.Degrees(mild) + ", where bacteria grow fast: boil it today, or cool it."
	}
	return []string{warm, cli.Keeping(p.given.syrup),
		"Count taps by health before girth: small, slow and sick trees are left alone, and no hole is drilled twice. Over-tapping does its harm slowly; the program stand counts by the guidelines.",
		"Do not drill wood colder than " + p.Degrees(tapping.ColdestDrilling()) + ": the bark splits (OMAFRA 2015). Clean bit, clean spout, no lead.",
		"Look up before you stand under a tree: dead limbs fall, most of all in wind and thaw. Do not walk alone, and mind ice under the pails.",
		"Ask the owner of the land; trees on public land need a permit. Law and local rules come before this page, and local code before these cautions.",
		"Sap spoils like milk: keep it below " + p.AtMost(cold) + ", shaded and in clean tanks, and boil the oldest first. Look, then smell: throw away what is cloudy, ropy or sour, and never taste it.",
		"Boil where smoke and carbon monoxide go outdoors, under a working alarm, never in a garage. Keep wood and dry grass away from the fire and the stack; local fire code comes first.",
		"Boiling sap and syrup scald and stick: keep children and animals away. Never leave the pan, and never boil it dry; do not fire tired.",
	}
}
