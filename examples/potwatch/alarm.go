package main

import (
	"fmt"

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

// alarmPart comes before all else: there is no time to read on.
func (p page) alarmPart(part *cli.Part, lines []string) {
	for _, l := range lines {
		part.Item(l)
	}
	if len(lines) < len(p.all) {
		part.Remark("Not every instrument says so: take it off first, and read them again then.")
	}
}
