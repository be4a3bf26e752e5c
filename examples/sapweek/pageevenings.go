package main

import (
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (p page) eveningPart(part *cli.Part) {
	s := p.given
	heat := cli.Energy(p.low.power.Over(time.Hour)) // thin sap and sweet differ by less than a part in a hundred
	if s.heat == 0 {
		heat = cli.Rough(heat)
	}
	part.Row("heat", "An hour of fire brings", heat, p.heatFrom())
	part.Row("evening", "Fire in a day", cli.Hours(s.evening), "at most; "+p.In(cli.Hours(s.warmup))+" of it until the pan boils")
	part.Row("pressure", "Pressure at the pan", cli.Pressure(p.pressure), cli.KnownBy[p.from])
	part.Remark(s.place.Told(p.Sheet)...)
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
	part.Row("syrup", "Syrup", both(func(f *firing) cli.Value { return cli.Rough(cli.Volume(f.syrup)) }), "at "+s.syrup.Text(1), p.sweet())
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
	part.Row("fewest", "Fewest evenings", cli.Words(high), "no more spills or grows too old than with a fire on each", cli.When(low != high, "at the high end; at the low end "+low))
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
