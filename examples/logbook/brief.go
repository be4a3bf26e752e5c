package main

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// briefDigits are those of the sugar in all, and its parts add up to them.
const briefDigits = 3

// brief puts the staircase of the sugar first: what is left of it step by step.
func (p page) brief() {
	b := &p.Brief
	b.Verdict = p.verdict()
	volume, count := p.bottled()
	bottled, boiled := p.inBottles(), p.boiled.sugar
	if p.boiled.rows == 0 {
		boiled = p.gathered()
	}
	pan := max(0, p.Kept-p.waits)
	filtered, kept := p.filteredOff()
	spoiled, moldy := p.spoiled()
	steps := []units.Mass{p.gathered() - boiled - p.thrown.sugar, boiled - p.SugarOut - pan, pan, bottled, p.SugarOut - bottled - kept - moldy, moldy, p.thrown.sugar, kept}
	// The parts of the verdict are parted once more, so that every number of the page is
	// the sum of those it is made of.
	out, holds, lost := p.went()
	of := func(printed cli.Value, parts ...units.Mass) []cli.Value {
		values := make([]cli.Value, len(parts))
		for i, m := range parts {
			values[i] = cli.Mass(m)
		}
		return cli.Split(printed, values...)
	}
	inPan, astray, inSyrup := of(holds, pan, p.waits), of(lost, steps[0]-p.waits, steps[1], steps[6]), of(out, bottled, steps[4], steps[5], kept)
	values := []cli.Value{cli.Sum(inPan[1], astray[0]), astray[1], inPan[0], inSyrup[0], inSyrup[1], inSyrup[2], astray[2], inSyrup[3]}
	step := func(i int, what string) string {
		switch {
		case i == 0 && p.moreBoiled() && p.moreLine > 0:
			return fmt.Sprintf("more than came before, most of it in row %d of %s: look again", p.moreLine, folder.DaysFile)
		case i == 0 && steps[i] < 0 && !p.moreBoiled(): // the same, within the gauge
			return "all of it"
		case steps[i] < 0:
			return "more than came before: look again"
		}
		return p.In(values[i]) + " " + what
	}
	b.Answer("gathered", "Gathered", cli.Gallons(p.Sap, cli.Nearest), "sugar "+p.In(cli.Total(briefDigits, cli.Mass(p.gathered()))))
	if lot, err := p.boiled.lot(); err == nil && !lot.Empty() { // its parts were lots
		notes := []string{"sugar " + p.In(cli.Sum(out, inPan[0], astray[1]))}
		if p.thrown.sugar > 0 {
			notes = append(notes, step(6, "thrown out"))
		}
		if steps[0] > 0 || p.thrown.sugar == 0 || p.moreBoiled() {
			what := "stands or spoiled"
			if p.waits > 0 && steps[0]-p.waits < steps[0]/100 {
				what = "waits for the fire"
			}
			notes = append(notes, step(0, what))
		}
		b.Answer("boiled", "Boiled", cli.Gallons(lot.Volume(), cli.Nearest), notes...)
	}
	if p.Syrup > 0 {
		notes := []string{"sugar " + p.In(out), step(1, "lost at the fire")}
		if pan > units.Gram {
			notes = append(notes, step(2, "held in the pan"))
		}
		b.Answer("drawn", "Drawn", cli.Quarts(p.Syrup, cli.Nearest), notes...)
	}
	if count > 0 {
		notes := []string{"sugar " + p.In(values[3]), cli.Plural(count, "container")}
		if filtered > 0 {
			notes = append(notes, step(7, "filtered or left in cans"))
		}
		b.Answer("bottled", "Bottled", cli.Quarts(volume, cli.Nearest), notes...)
	}
	if p.Syrup > 0 {
		notes := []string{"sugar " + p.In(values[4])}
		if filtered == 0 {
			notes = append(notes, "with what filters kept")
		}
		if spoiled > 0 {
			notes = append(notes, step(5, "moldy, thrown away"))
		}
		b.Answer("stock", "In stock", cli.Quarts(p.Syrup-volume-filtered-spoiled, cli.Down), notes...)
	}
	best := p.best()
	if lot, err := p.days[best].sap.lot(); err == nil { // as above
		on := p.date(best).Format("Jan 2") + ", " + p.In(cli.Gallons(lot.Volume(), cli.Nearest)) + " of sap"
		if cords := p.toTheCord(); cords > 0 {
			b.Answer("to_the_cord", "Syrup to the cord", cli.Gallons(cords, cli.Nearest), "best day "+on)
		} else {
			b.Answer("best_day", "Best day", cli.Words(on))
		}
	}
	p.known(b)
	if p.tooOld > 0 {
		b.Further = append(b.Further, p.OldSap(p.tooOld, ""))
	}
	if words := p.tellApart(); words != "" {
		b.Further = append(b.Further, words)
	}
	if p.again.rows > 0 {
		b.Further = append(b.Further, fmt.Sprintf("Look again at %s: -full lists them.", cli.Plural(p.again.rows, "row")))
	}
	b.Further = append(b.Further, "-full: by day, tank, boil and batch.", "packday: what to bottle.")
	jars, cans := p.moldyOnes()
	if len(cans) > 0 {
		b.Cautions = append(b.Cautions, "Moldy syrup was poured into "+few(cans)+": throw away what stands there.")
	}
	if len(jars) > 0 {
		b.Cautions = append(b.Cautions, "Jars of "+few(jars)+" hold moldy syrup: get them back and throw them away; -trace lists them.")
	}
	b.Cautions = append(b.Cautions, "This counts sugar and tells nothing of safety: moldy syrup is not for eating, whatever the book says.")
}

// went is the sugar in syrup, held and lost, as it is printed.
func (p page) went() (out, held, lost cli.Value) {
	went := cli.AddUp(briefDigits, cli.Mass(p.SugarIn), cli.Mass(p.SugarOut), cli.Mass(p.Kept), cli.Mass(p.Lost))
	return went[0], went[1], went[2]
}

// verdict is where the sugar went.
func (p page) verdict() string {
	in := cli.Mass(p.SugarIn)
	out, held, missing := p.went()
	came := p.In(cli.Total(briefDigits, in)) + " of sugar"
	open := p.In(cli.Rough(cli.Mass(p.Uncertainty)))
	switch {
	case p.Syrup == 0:
		return came + " came in with the sap, and no syrup is written down yet."
	case p.Impossible:
		return "More sugar came out than went in, by more than the " + open + " that your instruments leave open: a reading or a row is wrong or missing."
	}
	kept := "Of " + came + " " + p.In(out) + " is syrup and "
	if p.Kept > 0 {
		kept = "Of " + came + " " + p.In(out) + " is syrup, " + p.In(held) + " is held and "
	}
	if p.Lost < 0 {
		return strings.TrimSuffix(kept, " and ") + ": " + p.In(cli.Rough(cli.Mass(-p.Lost))) + " more than came in, and your instruments leave " + open + " open."
	}
	if math.Abs(float64(p.Lost)) <= float64(p.Uncertainty) {
		return kept + p.In(missing) + " is missing: your instruments leave " + open + " open, so that there may be no loss."
	}
	lost := " is lost"
	if stands := p.gathered() - p.boiled.sugar - p.thrown.sugar - p.waits; p.boiled.rows > 0 && stands > p.gathered()/100 {
		lost += " or stands unboiled"
	}
	return kept + p.In(missing) + lost + ", give or take " + open + "."
}

// inBottles is the sugar in what the labels say, by the strength of each batch.
func (b *book) inBottles() (all units.Mass) {
	for _, l := range b.lots {
		all += b.sweetIn(l, l.volume)
	}
	return all
}

// known tells where the numbers come from.
func (p page) known(b *cli.Brief) {
	b.House = p.flags.Demo()
	days := 0
	for i := range p.days {
		if p.days[i].sap.rows > 0 {
			days++
		}
	}
	b.Told(fmt.Sprintf("season %d, %s with sap", p.year, cli.Plural(days, "day")))
	b.If(!p.byBatches() && p.Syrup > 0).Assumed("syrup of the days at " + p.given.Target.Text(1))
	b.If(p.unread > 0).Assumed(cli.Plural(p.unread, "gathering") + " at " + p.mean.Text(1))
	marked := func(read bool, of string, at units.Temperature) {
		_, told := p.given.Set(of)
		b.If(read && !told).Assumed(of + " " + p.Marked(at))
	}
	marked(p.given.Refractometer == "", "sap hydrometer", p.given.SapHydrometer)
	marked(p.byBatches(), "syrup hydrometer", p.given.SyrupHydrometer)
	if len(p.learns) > 0 {
		if e, err := p.learned(); err == nil {
			b.Learned(e.Middle().Text(0) + " of the heat, of " + cli.Plural(e.Boils, "boil"))
		}
	}
}
