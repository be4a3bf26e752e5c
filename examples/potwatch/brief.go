package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// brief fills the first page.
func (p page) brief() {
	b := &p.Brief
	alarmed := len(p.alarms()) > 0
	b.Verdict = p.verdict(alarmed)
	if !alarmed {
		p.leftAnswer(b)
	}
	own, other := p.flags.OnScale(p.float.reads)
	b.Answer("reads", p.cup(true)+" reads", own, p.Degrees(p.given.cup)+" in the cup", p.In(other))
	if t := p.thermometer; t != nil {
		by := "give or take " + (k2 * t.total()).Text(1)
		b.Answer("thermometer", "Thermometer stop", cli.TenthDegree(t.syrup, cli.Down), by)
	}
	if !alarmed {
		p.woodAnswer(b)
	}
	if k := p.pot; k != nil {
		b.Answer("weight", "Pot off at", cli.Weight(k.stop.Gross, cli.Down), "pot and syrup")
	}
	if m := p.product; m != nil && len(m.points) > 0 {
		low, high := m.points[0].low, m.points[0].high
		for _, f := range m.points[1:] {
			if f.low.Compare(low) < 0 {
				low = f.low
			}
			if f.high.Compare(high) > 0 {
				high = f.high
			}
		}
		b.Answer("product", "For "+m.name, span(cli.TenthDegree(low, cli.Nearest), cli.TenthDegree(high, cli.Nearest)), "sources differ")
	}
	p.source(b)
	p.briefCautions(b, alarmed)
	if p.aside != "" {
		b.Further = append(b.Further, "stops.csv is left aside for a mistake.")
	}
	b.Further = append(b.Further, "-full tells why, and what more you may give.")
}

// verdict is what to do now.
func (p page) verdict(alarmed bool) string {
	now, by := p.strength()
	reads, _ := p.flags.OnScale(p.float.reads)
	take := p.takeOff()
	first := strings.ToUpper(take[:1]) + take[1:]
	switch target := p.given.target; {
	case len(p.apart) > 0:
		a := p.apart[0]
		off := "Read"
		if alarmed {
			off = first + ", and read"
		}
		return fmt.Sprintf("%s again: %s and %s are %s apart. Go by neither: thin nothing, jar nothing, stay with it.", off, a.a, a.b, max(a.A-a.B, a.B-a.A).Text(1))
	case alarmed && p.product != nil:
		return fmt.Sprintf("%s: it is %s by the %s.", first+p.ifSyrup(), now.Text(1), by)
	case alarmed && p.doubted():
		return "Take it off the fire now, then read again: not every instrument says syrup, and the " + by + " says " + now.Text(1) + "."
	case alarmed && now > p.tooFar() && by == "thermometer" && len(p.all) < 2:
		return fmt.Sprintf("Too far by the thermometer, %s: take it off the fire now, and read it by the hydrometer before you thin it.", now.Text(1))
	case alarmed && p.thin():
		return fmt.Sprintf("Too far, %s by the %s: %s, and thin it there.", now.Text(1), by, take)
	case alarmed && now > p.tooFar():
		return fmt.Sprintf("%s: %s by the %s may be too far. Read again before you thin it.", first, now.Text(1), by)
	case alarmed && by == "thermometer" && len(p.all) < 2: // it may be Brixes off
		return fmt.Sprintf("It is syrup, %s by the thermometer: %s, and read it by the hydrometer.", now.Text(1), take)
	case alarmed:
		return fmt.Sprintf("It is syrup, %s by the %s: %s.", now.Text(1), by, take)
	case p.leap() != "":
		return "Read again at once: the last reading by itself says syrup. If it is true, take the pot off the fire."
	case now > 0 && p.runsAway():
		return fmt.Sprintf("No more wood: %s by the %s, and its coals alone take it past syrup. Take it off when it is syrup, or pour in sap.", now.Text(1), by)
	case now > 0 && now < mostSap && by != "thermometer":
		return fmt.Sprintf("That is sap, %s by the %s, and far from %s: boilday plans its boil.", now.Text(1), by, target.Text(1))
	case p.cool && len(p.all) == 0:
		return "Not yet: " + p.underWater()
	case now > 0 && p.still():
		return fmt.Sprintf("Not yet: %s by the %s, and it does not climb. It wants more fire.", now.Text(1), by)
	case now > 0:
		return fmt.Sprintf("Not yet: %s by the %s, and syrup at %s.", now.Text(1), by, target.Text(1))
	default:
		return fmt.Sprintf("Nothing is read yet: it is syrup when the %s reads %s.", p.cup(false), p.In(reads))
	}
}

// mostSap is the strongest that is called sap: maples give 1 to 4 Brix, few up to 5
// (common practice).
const mostSap = 5

// underWater tells of a thermometer that shows less than in boiling water.
func (p page) underWater() string {
	return p.In(cli.TenthDegree(p.given.shows, cli.Nearest)) + " is under boiling water (" + p.In(cli.TenthDegree(p.thermometer.boilingShows(), cli.Nearest)) + "): still far off."
}

// cup names the cup by its temperature, first on a line or within it.
func (p page) cup(first bool) string {
	switch cooled := p.cooled(); {
	case cooled && first:
		return "Cup"
	case cooled:
		return "cup"
	case first:
		return "Hot cup"
	}
	return "hot cup"
}

// still tells that the readings do not climb.
func (p page) still() bool {
	w := p.watch
	return w != nil && !w.tooFew && len(w.readings) > 0 && !w.Climbs
}

// strength is the strength now and the instrument that tells it: of those that say
// syrup the one that says most, else the surest.
func (p page) strength() (units.Brix, string) {
	var most, surest units.Brix
	var by, sure string
	least := units.Brix(math.Inf(1))
	for _, i := range p.all {
		if i.Brix > most {
			most, by = i.Brix, i.name
		}
		if i.Uncertainty < least {
			least, surest, sure = i.Uncertainty, i.Brix, i.name
		}
	}
	if p.heat > most {
		most, by = p.heat, "thermometer"
	}
	// One that says too far is heard, and else the surest if that says syrup, too.
	alarmed := len(p.alarms()) > 0
	if len(p.all) == 0 || alarmed && (most > p.tooFar() || surest < p.given.target) {
		return most, by
	}
	return surest, sure
}

// leftAnswer tells the time left, by the readings or else by the scale.
func (p page) leftAnswer(b *cli.Brief) {
	w, k := p.watch, p.pot
	switch {
	case w != nil && !w.tooFew && len(w.readings) > 0 && w.ahead():
		last := w.readings[w.Last].At
		earliest := max(0, w.Left-k2*w.LeftBy)
		note := p.In(cli.Minutes(earliest, cli.Down)) + " at the earliest"
		if w.clock {
			note = "from " + p.In(w.at(last)) + ", earliest " + p.In(cli.ClockBy(w.start, w.start.Add(last+earliest), time.Minute, cli.Down))
		}
		b.Answer("left", "Left", cli.Minutes(w.Left, cli.Down), note)
	case k != nil && k.batch.Mass > 0 && !k.fire.past:
		b.Answer("left", "Left", cli.Minutes(k.fire.left, cli.Down), "from the last weighing")
	}
}

// coals is the fire with its coals, by the readings or else by the scale.
func (p page) coals() (f fire, ok bool) {
	switch w, k := p.watch, p.pot; {
	case w != nil && w.fire != (fire{}):
		return w.fire, true
	case k != nil && k.batch.Mass > 0 && p.given.coals > 0:
		return k.fire, true
	}
	return f, false
}

// runsAway tells that the coals alone take it past syrup.
func (p page) runsAway() bool {
	f, ok := p.coals()
	return ok && !f.past && f.last == 0 && (f.burns || f.coasts > p.given.target)
}

// woodAnswer tells when the last wood goes on.
func (p page) woodAnswer(b *cli.Brief) {
	f, ok := p.coals()
	switch {
	case !ok || f.past:
	case f.burns:
		b.Answer("last_wood", "Last wood", cli.Words("none"), "its coals burn it: off the fire, or sap in")
	case f.last == 0:
		b.Answer("last_wood", "Last wood", cli.Words("none"), "its coals take it to "+f.coasts.Text(1))
	default:
		at := p.In(cli.TenthBrix(f.last, cli.Down))
		if p.thermometer != nil {
			at += ", " + p.In(cli.TenthDegree(f.shows, cli.Down))
		}
		b.Answer("last_wood", "Last wood in", cli.Minutes(f.until, cli.Down), "at "+at)
	}
}

// source tells where the numbers come from.
func (p page) source(b *cli.Brief) {
	f := p.flags
	if p.demo {
		b.House = "The pot of an invented sugarhouse."
		b.Further = append(b.Further, "The program folder begins your own.")
	}
	for _, i := range p.all {
		b.Told(i.name)
	}
	b.If(p.heated == nil && (f.Given("shows") || p.heat > 0)).Told("thermometer")
	if t := p.thermometer; t != nil {
		if t.from == cli.ByElevation {
			b.Assumed("average weather")
		} else {
			b.Told("water boils at " + p.In(cli.TenthDegree(t.water, cli.Nearest)))
		}
		if t.learned != nil {
			b.Learned(fmt.Sprintf("thermometer stop from %d boils", t.learned.Stops))
		}
	}
	b.From(f, "target", "target "+p.given.target.Text(1), "hydrometer", "hydrometer marked at "+p.In(cli.Temperature(p.given.stem)), "cup", "cup at "+p.Degrees(p.given.cup))
}

// briefCautions are those of the finish.
func (p page) briefCautions(b *cli.Brief, alarmed bool) {
	add := b.Caution
	hottest := units.Fahrenheit(219)
	if p.thermometer != nil {
		hottest = p.thermometer.syrup
	}
	add(p.thin() && !p.doubted(), "Thin it off the fire: hot water or sap in small pours, stand back, it spits. Boil it up again, filter, read.")
	add(len(p.apart) > 0, "Hydrometer first: stem clean and dry, cup full and deep.")
	add(true, cli.KeepingBrief(p.given.target))
	now, _ := p.strength()
	add(alarmed && !p.thin() && p.product == nil && len(p.apart) == 0 && now > p.given.target, cli.KeepingBrief(now))
	if p.product != nil {
		add(true, "Candy up to "+p.Degrees(units.Fahrenheit(260))+" burns deep and sticks: sleeves, gloves, children and pets away. Milk and nuts are allergens.")
	} else {
		add(true, cli.Scald("Syrup", p.Degrees(hottest)))
	}
	add(true, "Never leave it: it foams over and scorches in minutes.")
	add(p.pot != nil, "Hang the scale, or weigh with the fire out, two people.")
	f, ok := p.coals()
	add(ok && !alarmed && f.last == 0 && !f.past, "Coals too hot: shut ash door, not flue damper; rake none.")
	b.Warn(p.flags.House().Settings.Roof)
}
