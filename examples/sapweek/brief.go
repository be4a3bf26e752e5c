package main

import (
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// brief answers first: tomorrow, then what to do until then.
func (p page) brief() {
	b := &p.Brief
	b.House = p.flags.Invented()
	b.Verdict = p.verdict()
	b.If(len(p.days) > 1).Answer("today", "Today, "+p.In(cli.Date(p.today)), cli.Words(p.outlook(0)), p.span(0))
	p.sapAnswer(b)
	if !p.line {
		value, notes := p.walkBy()
		b.Answer("walk", "Walk the pails", cli.Words(value), notes...)
	}
	p.fireAnswer(b)
	value, notes := p.tapOrPull()
	b.Answer("tap", "Tap or pull", cli.Words(value), notes...)
	if sap, age := p.record.waits(); sap > 0 {
		first, days := "oldest first", int(age/day)
		if age > p.keep {
			first = "look and smell first"
		}
		b.Answer("waiting", "Sap waiting now", cli.Gallons(sap, cli.Up), first, cli.When(days > 0, cli.Plural(days, "day")+" old"))
	}
	p.knownFrom(b)
	b.Warn(p.flags.House().Settings.Roof, p.briefCautions()...)
	b.Further = append(b.Further, "-full: each day, the season, when to tap, the evenings, the stores. Program boilday: the boil itself.")
}

// sapAnswer tells the sap of the day asked about, and of all days ahead.
func (p page) sapAnswer(b *cli.Brief) {
	i := p.asked()
	if p.likely != nil {
		s := p.likely[i]
		n := len(p.days)
		b.Answer("sap", "Sap "+p.named(i), cli.Gallons(s.Middle, cli.Nearest), cli.When(s.High > 0, p.eightInTen(s)),
			cli.When(n > 2 && p.likelyIn.Middle > 0, "in "+cli.Plural(n, "day")+" likely "+p.In(cli.Gallons(p.likelyIn.Middle, cli.Nearest))))
		return
	}
	band, most := p.band()
	b.Answer("sap", "Sap "+p.named(i), cli.Between(cli.Gallons(band.Low, cli.Down), cli.Gallons(band.High, cli.Up)),
		cli.When(most > band.High, "at most "+p.In(cli.Gallons(most, cli.Up))))
}

// asked is the day that the page is asked about: tomorrow, or today where the
// forecast ends with it.
func (p page) asked() int { return min(1, len(p.days)-1) }

// named calls a day as a person does.
func (p page) named(i int) string {
	switch i {
	case 0:
		return "today"
	case 1:
		return "tomorrow"
	}
	return p.In(cli.Date(p.days[i].Date))
}

// span words the low and the high of a day.
func (p page) span(i int) string {
	d := p.days[i]
	return p.Degrees(d.Min) + " to " + p.Degrees(d.Max)
}

// outlook tells whether a day runs, and when a forecast that is a degree off would
// turn the answer.
func (p page) outlook(i int) string {
	c := p.rule.Criterion
	runs := c.Met(p.days[i])
	close := c.Met(p.colder[i]) != runs || c.Met(p.warmer[i]) != runs
	switch {
	case p.stages[i] == inBloom:
		return "brings no good sap, the maples bloom"
	case p.stages[i] == frozen:
		return "stays frozen"
	case runs && close:
		return "runs, but it is close"
	case runs:
		return "runs"
	case close:
		return "may run, it is close"
	}
	return "does not run"
}

// verdict is the day ahead in a sentence.
func (p page) verdict() string {
	i := p.asked()
	day := "Tomorrow, "
	if i == 0 {
		day = "Today, "
	}
	return day + p.In(cli.Date(p.days[i].Date)) + ", " + p.outlook(i) + ": " + p.span(i) + "."
}

// band is the sap of all taps on the day asked about where no record tells: on one
// that runs the mean of the running days of a poor and of a good season; and the
// most that may come.
func (p page) band() (span units.Span[units.Volume], most units.Volume) {
	i := p.asked()
	span, most = p.all[i].Span, p.all[i].High
	if p.rule.Criterion.Met(p.days[i]) {
		n := units.Volume(p.given.taps)
		span = units.Span[units.Volume]{Low: n * p.mean.Low, High: n * min(p.mean.High, p.best)}
	}
	return span, most
}

// walkBy tells when the pails may be full at the earliest, the first day of it.
func (p page) walkBy() (value string, notes []string) {
	for i, r := range p.rounds {
		if r.Overflow == season.Lasts {
			continue
		}
		if p.given.round > day {
			return "sooner than every " + p.In(cli.Hours(p.given.round)), []string{"they may run over by " + p.In(cli.Date(r.last))}
		}
		thaw, ok := p.days[i].Thaws()
		if !ok {
			continue
		}
		at := p.days[i].Date.Add(thaw + r.FullAfter)
		const step = 30 * time.Minute
		return p.named(i) + " by " + p.In(cli.ClockBy(p.days[i].Date, at, step, cli.Down)), []string{"if it pours", "thaw " + p.In(cli.ClockBy(p.days[i].Date, p.days[i].Date.Add(thaw), step, cli.Nearest))}
	}
	return "no hurry", []string{"they last from round to round in these days"}
}

// fireDay is the last day to light the fire on: before sap gets too old, and the
// evening before the tanks could run over. It is -1 if these days need no fire.
func (p *plan) fireDay() int {
	last, s := len(p.days), p.given
	held, age := p.record.waits()
	waits := int(p.keep / day)
	if held > 0 {
		last = max(0, waits-int(age/day))
	}
	for i, sap := range p.all {
		if p.rule.Criterion.Met(p.days[i]) && sap.High > 0 {
			last = min(last, i+waits)
		}
		if held += sap.High; held > s.storage {
			last = min(last, max(0, i-1))
		}
	}
	if last >= len(p.days) {
		return -1
	}
	return last
}

// fireAnswer tells by when to light the fire, and how much an evening boils.
func (p page) fireAnswer(b *cli.Brief) {
	i := p.fireDay()
	if i < 0 {
		b.Answer("fire", "Light the fire", cli.Words("not in these days"))
		return
	}
	e := p.lit
	const latest = " at the latest"
	words := p.named(i) + latest
	switch i {
	case 0:
		words = "this evening"
	case 1:
		words = p.named(i) + " evening" + latest
	}
	b.Answer("fire", "Light the fire", cli.Words(words), p.In(cli.Hours(e.Hours)), p.In(cli.Gallons(e.Boiled, cli.Nearest)))
}

// tapOrPull tells what to do with the drill or with the spouts.
func (p page) tapOrPull() (value string, notes []string) {
	bloom := p.bloomDay()
	switch {
	case bloom == 0:
		return "pull the spouts", []string{"silver maple is in full bloom"}
	case bloom > 0:
		return "pull on " + p.In(cli.Date(p.days[bloom].Date)), []string{"silver maple is in full bloom then"}
	case !p.tapped.IsZero():
		if value, notes := p.endWords(); value != "" {
			return value, notes
		}
		life, _ := p.holeLife()
		dry := p.tapped.Add(life)
		if dry.After(p.today) {
			return "leave in", []string{"holes dry about " + p.In(cli.Date(dry))}
		}
		return "pull when little comes", []string{"the holes are " + cli.Plural(int(p.today.Sub(p.tapped)/day), "day") + " old"}
	}
	on := p.call.On
	switch p.call.Verdict {
	case season.TapNow:
		return "tap by " + p.In(cli.Date(on)), []string{"if you have not", p.call.Why}
	case season.TapWait:
		return "wait to tap until " + p.In(cli.Date(on)), []string{p.call.Why}
	}
	return p.call.Verdict.String(), []string{p.call.Why}
}

// briefCautions are those that matter now.
func (p page) briefCautions() (list []string) {
	if i := p.high.FirstSpill; i >= 0 {
		list = append(list, "The tanks may run over "+p.named(i)+" even so: borrow one.")
	}
	if p.tapped.IsZero() && p.call.Verdict == season.TapNow {
		list = append(list, "Drill above "+p.Degrees(tapping.ColdestDrilling())+"; small, slow and sick trees are left alone.")
	}
	list = append(list,
		"Sap spoils like milk: below "+p.AtMost(cold)+", in the shade. Sour, cloudy or ropy sap is thrown away, never tasted.",
		"Look up: dead limbs fall in wind and thaw. Mind the ice.",
		cli.Scald("Boiling sap", p.Degrees(units.Fahrenheit(212))),
	)
	return list
}

// knownFrom tells where the numbers come from.
func (p page) knownFrom(b *cli.Brief) {
	f, s := p.flags, p.given
	b.From(f, "taps", cli.Plural(s.taps, "tap"))
	b.If(!p.line).From(f, "pail", "pails of "+p.In(cli.Rough(cli.Volume(s.pail))))
	b.From(f, "storage", "tanks of "+p.In(cli.Rough(cli.Volume(s.storage))), "evening", p.In(cli.Hours(s.evening))+" of fire a day")
	if f.Given("heat") {
		b.Told("the heat")
	} else {
		rate := "boil-rate"
		if !f.Given(rate) { // a pan that was told tells no rate
			rate = "pan-rate"
		}
		b.From(f, rate, "boils off "+p.In(cli.Rough(cli.Flow(s.pan.Rate))))
	}
	b.If(f.Given("sugar")).From(f, "sugar", p.In(cli.Brix(s.reading, 1)))
	b.If(f.Given("peak")).From(f, "peak", "a best day of "+p.In(cli.Rough(cli.Volume(s.peak)))+" a tap")
	if n, _ := p.learnt.Taught(); n > 0 {
		b.Learned("sap of a running day from " + cli.Plural(n, "gathering"))
	}
	b.If(!f.Given("keep")).From(f, "sap-temp", "sap waits at "+p.Degrees(s.sapTemp))
	if p.gone > 0 {
		b.Further = append(b.Further, p.OldSap(p.gone, "-waiting"))
	}
}
