package main

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
)

// alarms say that it is syrup or past it, by every instrument that says so.
func (p *evening) alarms() (lines []string) {
	target := p.given.target
	end := ": take it off the fire now and thin it; packday tells with what."
	if p.product != nil {
		end = ": for syrup take it off the fire now; for " + p.product.name + " see its points."
	}
	say := func(name string, b units.Brix) {
		switch {
		case b.Text(1) == target.Text(1):
			lines = append(lines, fmt.Sprintf("By the %s it is syrup, %s: take it off the fire now.", name, b.Text(1)))
		case b > target:
			lines = append(lines, fmt.Sprintf("By the %s it is past syrup, %s against %s%s", name, b.Text(1), target.Text(1), end))
		}
	}
	for _, i := range p.all {
		say(i.name, i.Brix)
	}
	if p.tooThick {
		say("thermometer", p.heat)
	}
	return lines
}

// leap tells of a last reading which by itself says that it is syrup, while the
// line before it does not.
func (p *evening) leap() string {
	w, t := p.watch, p.thermometer
	if w == nil || len(w.Odd) == 0 {
		return ""
	}
	o := w.Odd[len(w.Odd)-1]
	if !o.Open || o.What != boil.Spike {
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
	if len(lines) < len(p.all) {
		part.Remark("Not every instrument says so: take it off first, and read them again then.")
	}
}
