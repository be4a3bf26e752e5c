package main

import (
	"fmt"
	"strings"
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
	if p.gain.High > 0 {
		part.Row("gain", "That gives more by", cli.Between(cli.Rough(cli.Share(p.gain.Low, 1)), cli.Rough(cli.Share(p.gain.High, 1))), p.gain.Source+": the sources do not agree")
	}
	if p.how == "by a falling line" {
		part.Remark("The low end is that of a line in which air takes the vacuum away; the high end has the vacuum of the whole fall at every tap.")
	}
	if p.given.drop > season.LongestDrop {
		part.Remark("A fall of more than " + season.LongestDrop.Text(units.Foot, 1) + " (" + season.LongestDrop.Text(units.Meter, 1) + ")" + " counts as that: the column of sap breaks, and draws no more.")
	}
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
	if stages != "" {
		part.Remark(stages)
	}
	part.Remark(p.usualRun())
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
	part.Row("pail", "A pail holds", cli.Volume(s.pail), number(s.perPail, "tap", "taps")+" in it; a round every "+p.In(cli.Hours(s.round)))
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

func (p page) eveningPart(part *cli.Part) {
	s := p.given
	heat := cli.Energy(p.low.power.Over(time.Hour)) // thin sap and sweet differ by less than a part in a hundred
	if s.heat == 0 {
		heat = cli.Rough(heat)
	}
	part.Row("heat", "An hour of fire brings", heat, p.heatFrom())
	part.Row("evening", "Fire in a day", cli.Hours(s.evening), "at most; "+p.In(cli.Hours(s.warmup))+" of it until the pan boils")
	part.Row("pressure", "Pressure at the pan", cli.Pressure(p.pressure), cli.KnownBy[p.from])
	for _, told := range s.place.Told(p.Sheet) {
		part.Remark(told)
	}
	part.Row("storage", "The tanks hold", cli.Volume(s.storage))
	keep := cli.Words(waits(p.growth).words)
	if s.keep > 0 {
		keep = cli.Hours(s.keep)
	}
	part.Row("keep", "Sap may wait", keep, p.keepNote())
	if sap, age := p.record.waits(); sap > 0 {
		part.Row("waiting", "Sap waits now", cli.Volume(sap), "the oldest for "+p.In(cli.Hours(age)))
	}
	p.firingTable(part, "low", "If every day brings the low end:", &p.low)
	p.firingTable(part, "high", "If every day brings the high end:", &p.high)
	both := func(of func(*firing) cli.Value) cli.Value { return cli.Between(of(&p.low), of(&p.high)) }
	part.Row("peak", "Most sap waiting at once", both(func(f *firing) cli.Value { return cli.Rough(cli.Volume(f.Peak)) }), "at the lighting of the fire; most on "+p.In(cli.Date(p.days[p.high.PeakDay].Date)))
	p.trouble(part, "spill", "The tanks run over", func(f *firing) int { return f.FirstSpill })
	p.trouble(part, "overdue", "Sap has waited too long", func(f *firing) int { return f.FirstOverdue })
	p.fewestRow(part)
	part.Row("fire", "Under fire", both(func(f *firing) cli.Value { return cli.Hours(f.Hours) }))
	part.Row("syrup", "Syrup", both(func(f *firing) cli.Value { return cli.Rough(cli.Volume(f.syrup)) }), append([]string{"at " + s.syrup.Text(1)}, p.sweet()...)...)
	part.Row("left", "Sap left at the end", both(func(f *firing) cli.Value { return cli.Rough(cli.Volume(f.LeftAfter)) }))
	part.Row("energy", "Heat", both(func(f *firing) cli.Value { return cli.Rough(cli.Energy(f.Heat)) }))
	part.Row("wood", "Wood", cli.Between(cli.Rough(cli.Wood(p.burns[0])), cli.Rough(cli.Wood(p.burns[1]))), p.woodNote())
	part.Remark("Sap of a day is taken to be in the tank before the fire is lit, the most urgent is boiled first, and what finds no room is lost. Cloudy, ropy or sour sap is past its time whatever the clock says: throw it away, and do not taste it.")
}

func (p page) heatFrom() string {
	if p.given.heat > 0 {
		return "into the liquid, as you say"
	}
	return "into the liquid: " + p.In(cli.Flow(p.given.pan.Rate)) + " of water boiled off, from a pan fed with cold sap"
}

// Between these bacteria in sap grow neither slowly nor fast: Ohio State University
// Extension, as pan.Spoiling.
var cold, mild = units.Fahrenheit(40), units.Fahrenheit(50)

// held tells for how long the tank is reckoned.
func (p page) held() string {
	if p.given.keep > 0 {
		return "for " + p.In(cli.Hours(p.given.keep)) + " of waiting"
	}
	return "for a day's sap"
}

func (p page) keepNote() string {
	at := p.In(cli.Temperature(p.given.sapTemp)) + ": growth of bacteria is " + p.growth.String() + " (Ohio State University Extension)"
	if p.given.keep > 0 {
		return "as you say; at " + at
	}
	return "at " + at + "; the days that sources give contradict each other, so that this page keeps to the shortest"
}

func (p page) woodNote() string {
	wood := strings.ToLower(p.given.wood.Species)
	if p.given.wood.Learned {
		return wood + "; at " + p.given.wood.Efficiency.Text(0) + " of the net heat"
	}
	return wood + "; a range for a home-built flat pan, from memory: learn your own and give -efficiency"
}

// firingTable shows the evenings of one end of the band.
func (p page) firingTable(part *cli.Part, key, words string, f *firing) {
	volume := func(v units.Volume) cli.Value { return cli.Rough(cli.Volume(v)) }
	var rows [][]cli.Value
	for i, e := range f.Evenings {
		rows = append(rows, []cli.Value{cli.Date(p.days[i].Date), volume(e.Spilled), cli.Hours(e.Hours), volume(e.Boiled), volume(e.Waiting), volume(e.Overdue)})
	}
	part.Remark(words)
	part.Table(key, []cli.Column{{Key: "day", Head: "day"}, {Key: "spilled", Head: "runs over"}, {Key: "fire", Head: "fire"}, {Key: "boiled", Head: "boiled"}, {Key: "waiting", Head: "waits after"}, {Key: "overdue", Head: "too old of it"}}, rows)
}

// fewestRow tells on which evenings to light if as few fires are wanted as will do.
func (p page) fewestRow(part *cli.Part) {
	if len(p.days) > mostTried {
		return
	}
	words := func(f *firing) string {
		var on []string
		for i, e := range f.few.Evenings {
			if e.Hours > 0 {
				on = append(on, p.In(cli.Date(p.days[i].Date)))
			}
		}
		if len(on) == 0 {
			return "none yet"
		}
		return strings.Join(on, ", ")
	}
	low, high := words(&p.low), words(&p.high)
	notes := []string{"no more spills or grows too old than with a fire on each"}
	if low != high {
		notes = append(notes, "at the high end; at the low end "+low)
	}
	part.Row("fewest", "Fewest evenings", cli.Words(high), notes...)
}

// trouble tells the first day of it at either end of the band.
func (p page) trouble(part *cli.Part, key, label string, first func(*firing) int) {
	words := func(f *firing) string {
		if i := first(f); i >= 0 {
			return "first on " + p.In(cli.Date(p.days[i].Date))
		}
		return "not in these days"
	}
	low, high := words(&p.low), words(&p.high)
	if low == high {
		part.Row(key, label, cli.Words(high), "at either end")
		return
	}
	part.Row(key, label, cli.Words(high), "at the high end; at the low end "+low)
}

func (p page) storePart(part *cli.Part) {
	s, f := p.given, p.forecast
	part.Row("basis", "Syrup of the season by", cli.Words(f.Basis.String()))
	notes := []string{"at the least and the most syrup of a tap"}
	if f.Basis == yield.OwnSeasons {
		part.Row("seasons", "Seasons", cli.Count(f.Seasons, ""))
		part.Row("middle", "The middle one of them", cli.Volume(f.Middle), "for "+number(s.taps, "tap", "taps"))
	} else {
		notes = p.sweet()
		if p.gain.High > 0 {
			notes = append(notes, "with what the vacuum adds")
		}
	}
	part.Row("syrup", "Syrup to expect", cli.Between(cli.Rough(cli.Volume(f.Low)), cli.Rough(cli.Volume(f.High))), notes...)
	if w := f.Basis.Warning(); w != "" {
		part.Remark("Mind: " + w + ".")
	}
	if f.Basis == yield.OwnSeasons && f.Seasons < 3 {
		part.Remark("So few seasons say little of the range: three or more are worth having.")
	}
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
func (p page) sweet() []string {
	if p.measured {
		return nil
	}
	return []string{"thin sap at the low end, sweet at the high"}
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
	var list []string
	if warning := cli.Keeping(p.given.syrup); warning != "" {
		list = append(list, warning)
	}
	list = append(list,
		"Count taps by health before girth: small, slow and sick trees are left alone, and no hole is drilled twice. Over-tapping does its harm slowly; the program stand counts by the guidelines.",
		"Do not drill wood colder than "+p.Degrees(tapping.ColdestDrilling())+": the bark splits (OMAFRA 2015). Clean bit, clean spout, no lead.",
		"Look up before you stand under a tree: dead limbs fall, most of all in wind and thaw. Do not walk alone, and mind ice under the pails.",
		"Ask the owner of the land; trees on public land need a permit. Law and local rules come before this page, and local code before these cautions.",
		"Sap spoils like milk: keep it below "+p.Degrees(cold)+", shaded and in clean tanks, and boil the oldest first. Look, then smell: throw away what is cloudy, ropy or sour, and never taste it.",
		"Boil where smoke and carbon monoxide go outdoors, under a working alarm, never in a garage. Keep wood and dry grass away from the fire and the stack; local fire code comes first.",
		"Boiling sap and syrup scald and stick: keep children and animals away. Never leave the pan, and never boil it dry; do not fire tired.",
	)
	if pan.Spoiling(p.given.sapTemp) == pan.GrowthFast {
		list = append([]string{"This sap waits above " + p.Degrees(mild) + ", where bacteria grow fast: boil it today, or cool it."}, list...)
	}
	return list
}
