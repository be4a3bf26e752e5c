package main

import (
	"fmt"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// tooFar is the strength above which syrup is thinned: the most that the rule of
// most places allows, or a target beyond it.
func (p *evening) tooFar() units.Brix { return max(p.most, p.given.target) }

// alarms say that it is syrup or past it, by every instrument that says so. What
// the rule allows is left as it is; past it, the uncertainty tells whether to thin
// or to read again.
func (p *evening) alarms() (lines []string) {
	target, most := p.given.target, p.tooFar()
	takeOff := p.takeOff()
	// The thermometer alone thins nothing: air, depth and probe are all in it.
	end := ", and thin it."
	switch {
	case len(p.apart) > 0, p.tooThin:
		end = "."
	case len(p.all) < 2 && (p.heated != nil || p.tooThick):
		end = ", read it by the hydrometer, and thin it if that says so too."
	}
	say := func(name string, b, by units.Brix) {
		over := fmt.Sprintf("By the %s it is too far, %s, where %s is the most: %s", name, b.Text(1), most.Text(1), takeOff)
		switch {
		case b < target && b.Text(1) != target.Text(1):
		case p.product != nil && b > most:
			lines = append(lines, over+p.ifSyrup()+"; for "+p.product.name+" see its points.")
		case b-by > most:
			lines = append(lines, over+end)
		case b > most:
			lines = append(lines, fmt.Sprintf("By the %s it is %s, and %s is the most: %s. The reading cannot tell whether that is too far: read again before it is thinned.", name, b.Text(1), most.Text(1), takeOff))
		case b >= sugar.KeepsTo && b > target:
			lines = append(lines, fmt.Sprintf("By the %s it is syrup, %s: %s. It is within the rule, but from %s on crystals are likely in the jar.", name, b.Text(1), takeOff, sugar.KeepsTo.Text(0)))
		default:
			lines = append(lines, fmt.Sprintf("By the %s it is syrup, %s: %s.", name, b.Text(1), takeOff))
		}
	}
	for _, i := range p.all {
		say(i.name, i.Brix, i.Uncertainty)
	}
	if p.tooThick {
		say("thermometer", p.heat, 0)
	}
	return lines
}

// thin tells that some instrument says beyond doubt that it is too far.
func (p *evening) thin() bool {
	thin := p.tooThick && p.heat > p.tooFar()
	for _, i := range p.all {
		thin = thin || i.Brix-i.Uncertainty > p.tooFar()
	}
	return thin && p.product == nil && len(p.apart) == 0
}

// cooled tells that the cup is no hotter than what scalds nobody at once (common
// practice).
func (p *evening) cooled() bool { return p.given.cup.Fahrenheit() < 120 }

// cold tells that all that was read is a cup that did not come from the fire just now.
func (p *evening) cold() bool {
	return p.cooled() && p.heat == 0 && len(p.all) == 1 && p.has("hydrometer")
}

// takeOff words what to do with the pot once it is syrup.
func (p *evening) takeOff() string {
	if p.cold() {
		return "take it off the fire if it is still on it"
	}
	return "take it off the fire now"
}

// ifSyrup goes behind takeOff where a further product is made.
func (p *evening) ifSyrup() string {
	if p.cold() {
		return " and is to be syrup"
	}
	return " if it is to be syrup"
}

// doubted tells that of several instruments not all say syrup. A thermometer that is
// too low or too high to tell how sure it is counts, too.
func (p *evening) doubted() bool {
	n := len(p.all)
	if p.tooThin || p.tooThick {
		n++
	}
	return len(p.alarms()) < n
}

// leap tells of a last reading which by itself says that it is syrup, while the
// line before it does not.
func (p *evening) leap() string {
	w, t := p.watch, p.thermometer
	if w == nil || len(w.Odd) == 0 {
		return ""
	}
	o := w.Odd[len(w.Odd)-1]
	if !o.Open || o.What != finish.Spike {
		return ""
	}
	b, err := t.strength(t.surface(w.readings[o.Index].Shown))
	if err != nil || b < p.given.target {
		return ""
	}
	return fmt.Sprintf("The last reading by itself says %s, the line before it %s: clear the probe of the pan and read again. If it is true, take the pot off the fire now.", b.Text(1), w.Now.Text(1))
}

// alarmPart comes before all else: there is no time to read on.
func (p page) alarmPart(part *cli.Part, lines []string) {
	part.Item(lines...)
	switch {
	case len(p.apart) > 0:
		p.apartItems(part)
	case p.doubted():
		part.Remark("Not every instrument says so: take it off first, and read them again then, the hydrometer first.")
	case p.thin():
		part.Item(cli.BringBack(cli.WaterOrSap)...)
		part.Remark("packday tells how much it takes.")
	}
}

// apartItems name the instruments that disagree, and what to do.
func (p page) apartItems(part *cli.Part) {
	for _, a := range p.apart {
		part.Item(fmt.Sprintf("The %s and the %s are %s apart, more than chance explains: go by neither, thin nothing and jar nothing yet.", a.a, a.b, max(a.A-a.B, a.B-a.A).Text(1)))
	}
	part.Item(cli.ReadAgain + " Then the thermometer in plain boiling water. Until they agree do not leave the pot, and take it off as soon as any of them says syrup.")
}
