package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// by is as close as a clock of the day is told.
const by = 5 * time.Minute

// brief fills the first page.
func (p page) brief() {
	b := &p.Brief
	overrun := p.runsAway()
	switch {
	case overrun:
		p.doNotLight(b)
	case p.run != nil:
		p.rigBrief(b)
	case p.alone:
		b.Verdict = "Too little for this pan: boil it in a pot from the start. It makes " + p.syrupWords() + "."
		b.Answer("lit", "Light at", p.lit(), "boils at "+p.In(p.at(p.pot.heating, cli.Nearest)))
		b.Answer("done", "Syrup", p.at(p.potDone(), cli.Down), "stand by before")
	default:
		p.panBrief(b)
	}
	if p.deadline.all > 0 && (p.run != nil || p.alone) {
		b.Verdict = "Boil " + p.sapWords() + ". " + b.Verdict
	}
	if !overrun {
		p.takeOffAnswer(b)
		b.Answer("fuel", "Have ready", p.ready(), p.fuelName())
	}
	p.source(b)
	p.briefCautions(b)
	if n := len(p.given.again); n > 0 {
		b.Further = append(b.Further, "Look again at the gatherings: -full tells where.")
	}
	p.askOld(b)
	b.Further = append(b.Further, "-full tells why; potwatch watches the end.")
}

// takeOffAnswer tells when it is syrup: stopped at or before it by the thermometer, at
// or past it by the hydrometer.
func (p page) takeOffAnswer(b *cli.Brief) {
	own, _ := p.flags.OnScale(p.reads + p.miss.Hydrometer)
	b.Answer("take_off", "Take off at", cli.TenthDegree(p.syrupBoils.Add(p.miss.Thermometer), cli.Down), "hydrometer "+p.In(own)+" at "+p.Degrees(p.given.cup))
}

// at is a time of the day, to [by].
func (p page) at(d time.Duration, to cli.Side) cli.Value {
	return cli.ClockBy(p.start, p.start.Add(d), by, to)
}

// ready is the fuel to lay by: of wood that is counted closely, closely.
func (p page) ready() cli.Value {
	if p.deadline.wood > 0 {
		return cli.Rough(cli.Wood(p.burn.cords))
	}
	return p.burn.ready
}

// lit is when to light: to the minute, if the page found it.
func (p page) lit() cli.Value {
	if !p.deadline.by.IsZero() {
		return cli.Clock(p.start, p.start)
	}
	return p.at(0, cli.Nearest)
}

// syrupWords is what to count on today.
func (p page) syrupWords() string {
	mass, _ := p.bottled()
	v, least := p.syrup.Volume()*units.Volume(mass/p.syrup.Mass()), ""
	to := cli.Down
	if v < units.Liter/4 { // nothing at all, rounded down
		to, least = cli.Up, "less than "
	}
	return least + p.In(cli.Quarts(v, to)) + " of syrup"
}

// panBrief is the day in a single pan.
func (p page) panBrief(b *cli.Brief) {
	sap := p.sapWords()
	long := p.done - p.lastWood
	switch {
	case p.given.coals > 0 && long > watched:
		b.Verdict = "Such coals suit no flat pan: from the last wood they take " + p.In(cli.Hours(long)) + ". Boil " + sap + " down only part of the way, and end in a pot."
	case p.done > 24*time.Hour:
		b.Verdict = "Too much for this pan in a day: " + sap + " take " + p.In(cli.Hours(p.done)) + ". Share it out, or concentrate it first."
	case p.small:
		b.Verdict = "Light at " + p.start.Format("15:04") + ": " + sap + " make " + p.syrupWords() + ", the end of it in a pot, near " + p.In(p.at(p.potDone(), cli.Down)) + "."
	default:
		b.Verdict = "Light at " + p.start.Format("15:04") + ": " + sap + " make " + p.syrupWords() + "."
	}
	b.Answer("lit", "Light at", p.lit(), "boils at "+p.In(p.at(p.heating, cli.Nearest))+"; sooner if cold")
	b.Answer("last_sap", "Last sap ready by", p.at(p.lastSap, cli.Down))
	if p.given.coals > 0 {
		when := "at " + p.stopAt.Text(1)
		if p.stopAt == 0 {
			when = "then " + p.atLeast(p.sapThen) + " of sap to go in"
		}
		b.Answer("last_wood", "Last wood", p.at(p.lastWood, cli.Down), when)
	}
	if p.small {
		p.offThePan(b)
		return
	}
	b.Answer("done", "Syrup", p.at(p.done, cli.Down), "stand by before")
}

// offThePan is when what is too little for the pan goes into the pot. Early is safe:
// the pan is low by then.
func (p page) offThePan(b *cli.Brief) {
	b.Answer("off", "Off the pan", p.at(p.done, cli.Down), p.In(cli.TenthBrix(p.takeoff.Brix(), cli.Down))+", "+p.In(cli.Eighths(p.given.safe, cli.Up))+" deep")
}

// rigBrief is the day in a pan of compartments.
func (p page) rigBrief(b *cli.Brief) {
	o := &p.run.Outcome
	first, drawn := o.FirstDraw()
	switch {
	case p.small:
		b.Verdict = "Light at " + p.start.Format("15:04") + ", and end in a pot, near " + p.In(p.at(p.potDone(), cli.Down)) + ": " + p.syrupWords() + "."
	case drawn:
		b.Verdict = "Light at " + p.start.Format("15:04") + ": " + p.syrupWords() + " are drawn by " + p.In(p.at(o.Ended, cli.Up)) + "."
	default:
		b.Verdict = "No syrup is drawn today: " + p.noSyrup() + "."
	}
	b.Answer("lit", "Light at", p.lit(), "sooner if the arch is cold")
	b.If(drawn).Answer("first", "First draw", p.at(first, cli.Down), "stand by before")
	b.If(p.run.wooded).Answer("last_wood", "Last wood", p.at(o.LastWood, cli.Down), "no. 1 then "+p.In(cli.Eighths(p.run.depth, cli.Up))+" deep")
	if p.small {
		p.offThePan(b)
		return
	}
	left := p.sap.Volume() * units.Volume(o.SapLeft/p.sap.Mass())
	b.Answer("done", "Fire out", p.at(o.Ended, cli.Up), "stay until then", cli.When(left > units.Liter, p.In(cli.Gallons(left, cli.Up))+" of sap left"))
}

// doNotLight is all that there is to say of a fire that would run away.
func (p page) doNotLight(b *cli.Brief) {
	b.Verdict = "Do not light this fire as it is: its coals alone boil off " + p.atLeast(p.coals) + ". Gather more sap, or boil it in a pot."
	b.Answer("deep", "Needed depth", cli.Eighths(p.needed(), cli.Up), "at the last stick, or sap to pour in")
}

// source tells where the numbers come from.
func (p page) source(b *cli.Brief) {
	f := p.flags
	if p.demo {
		b.House = "An invented sugarhouse, " + p.given.day.Format(time.DateOnly) + "."
		b.Further = append(b.Further, "The program folder begins your own.")
	}
	sap := p.In(cli.Gallons(max(p.pooled().Volume(), p.deadline.all), cli.Nearest))
	switch {
	case f.Given("sap-file"):
		b.Told("gatherings")
	case p.recorded():
		b.Told(sap + " of " + p.span())
		b.If(f.Given("reading")).Told("read " + p.given.reading.Text(1))
		b.If(p.given.noTemp && p.given.refractometer != compensated).From(f, "read-at", "read at "+p.Degrees(p.given.readAt))
		b.If(p.sweet.Mass() > 0).Told("sweet in the pan")
	case p.given.readings != "":
		b.From(f, "sap", "sap "+sap)
		b.Learned(p.given.reading.Text(2) + " from " + p.given.readings)
	default:
		read := "read " + p.given.reading.Text(1)
		if g := p.gatherings[0]; g.lot.Brix().Text(1) != g.reading.Text(1) {
			read += " (truly " + g.lot.Brix().Text(2) + ")"
		}
		b.From(f, "sap", "sap "+sap, "reading", read)
		b.If(p.given.refractometer != compensated).From(f, "read-at", "at "+p.Degrees(p.given.readAt))
	}
	n := p.sweet.night
	if n.from == "" {
		n = p.night
	}
	b.If(n.from != "").Told("nights to " + p.Degrees(n.air))
	if p.given.refractometer == "" {
		p.Mark(f, "sap-hydrometer", "sap hydrometer", p.given.sapStem)
	}
	p.Mark(f, "hydrometer", "syrup hydrometer", p.given.stem)
	b.If(p.ice != nil).Told("ice " + p.In(cli.Rough(cli.Mass(p.given.ice))))
	b.If(p.membrane != nil).Told("membrane to " + p.given.membraneTo.Text(1))
	b.If(!p.deadline.by.IsZero()).Told("done by " + p.deadline.by.Format("15:04"))
	b.If(p.deadline.wood > 0).Told("wood left " + p.In(cli.Rough(cli.Wood(p.deadline.wood))))
	rate := "boil-rate"
	if !f.Given(rate) {
		rate = "pan-rate"
	}
	b.From(f, p.from, p.given.place.Words(p.Sheet, p.waterBoils), rate, "boils off "+p.In(cli.Rough(cli.Flow(p.given.pan.Rate))))
	b.If(p.given.fuel == "wood").From(f, "coals", "coals "+p.In(cli.Hours(p.given.coals)))
	if p.given.wood.Learned {
		b.From(f, "efficiency", "efficiency "+p.given.wood.Efficiency.Text(0))
	} else {
		b.Assumed("a wasteful fire")
	}
}

// longDay is the longest that one person tends a fire. Common practice.
const longDay = 16 * time.Hour

// briefCautions are those of the day's work.
func (p page) briefCautions(b *cli.Brief) {
	add := b.Caution
	add(true, cli.KeepingBrief(p.given.target))
	add(p.run != nil && p.run.thin(), "Draws under "+sugar.KeepsFrom.Text(0)+" in the mean ferment: finish them in a pot.")
	add(true, cli.Scald("Syrup", p.Degrees(p.syrupBoils)))
	add(true, p.morningCaution())
	add(p.night.ice && p.chased == nil, "Tonight's "+p.Degrees(p.night.air)+" freezes the pan: leave it deep, cover it, drain float and pipes.")
	if m := p.membrane; m != nil {
		on := "before the fire"
		if m.time > 0 {
			on = "on by " + p.In(p.at(-m.time, cli.Down))
		}
		add(true, "Membrane "+on+": concentrate spoils within hours.")
	}
	if p.alone {
		add(true, "Never leave the pot: it foams over and scorches in minutes.")
	} else {
		add(true, p.stoppedCaution())
		add(p.given.coals > 0, "Too hot: shut ash door, not flue damper; rake no coals.")
	}
	if late := "The last sap comes at " + p.start.Add(p.comes).Format("15:04"); p.run == nil && !p.alone && p.comes > 0 {
		add(p.comes <= p.lastSap, late+": bank the fire if the pan runs short.")
		add(p.comes > p.lastSap, late+", too late: light later, or bank the fire.")
	}
	unsuited := p.runsAway() || p.given.coals > 0 && p.done-p.lastWood > watched // and the verdict says so
	add(!unsuited && p.ends() > longDay, "Into the night: -done-by tells what fits in a day. Tired, nobody tends a fire.")
	add(p.sap.Temperature().Fahrenheit() > 50, "Sap over "+p.Degrees(units.Fahrenheit(50))+" spoils fast: the oldest first, cool the rest.")
	if n := p.waited(); n > 1 {
		what := "Sap"
		if p.sweet.Mass() > 0 && !p.gatherings[0].date.Before(p.sweet.since) {
			what = "Sweet"
		}
		add(true, fmt.Sprintf("%s of %d days: cloudy, ropy or sour goes out untasted.", what, n))
	}
	b.Warn(p.roof())
}
