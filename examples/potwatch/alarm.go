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
	// The thermometer alone thins nothing: air, depth and probe are all in it.
	end := ", and thin it."
	switch {
	case len(p.apart) > 0:
		end = "."
	case len(p.all) < 2 && (p.heated != nil || p.tooThick):
		end = ", read it by the hydrometer, and thin it if that says so too."
	}
	say := func(name string, b, by units.Brix) {
		over := fmt.Sprintf("By the %s it is too far, %s, where %s is the most: take it off the fire now", name, b.Text(1), most.Text(1))
		switch {
		case b < target && b.Text(1) != target.Text(1):
		case p.product != nil && b > most:
			lines = append(lines, over+" if it is to be syrup; for "+p.product.name+" see its points.")
		case b-by > most:
			lines = append(lines, over+end)
		case b > most:
			lines = append(lines, fmt.Sprintf("By the %s it is %s, and %s is the most: take it off the fire now. The reading cannot tell whether that is too far: read again before it is thinned.", name, b.Text(1), most.Text(1)))
		case b >= sugar.KeepsTo && b > target:
			lines = append(lines, fmt.Sprintf("By the %s it is syrup, %s: take it off the fire now. It is within the rule, but from %s on crystals are likely in the jar.", name, b.Text(1), sugar.KeepsTo.Text(0)))
		default:
			lines = append(lines, fmt.Sprintf("By the %s it is syrup, %s: take it off the fire now.", name, b.Text(1)))
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
	for _, l := range lines {
		part.Item(l)
	}
	switch {
	case len(p.apart) > 0:
		p.apartItems(part)
	case len(lines) < len(p.all):
		part.Remark("Not every instrument says so: take it off first, and read them again then, the hydrometer first.")
	case p.thin():
		for _, l := range cli.BringBack(cli.WaterOrSap) {
			part.Item(l)
		}
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
