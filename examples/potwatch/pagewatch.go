package main

import (
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
)

func (p page) watchPart(part *cli.Part) {
	w, target := p.watch, p.given.target
	part.If(w.passed > 0).Row("passed", "Passed over", cli.Count(w.passed, ""), "readings too cold for "+thinnest.Text(0)+", before the boil or before sap was poured in")
	if len(w.readings) == 0 {
		part.Remark("No reading is left to go by: wait until it boils hotter.")
		return
	}
	part.Row("readings", "Readings", cli.Count(len(w.readings), ""), "the last at "+p.In(w.at(w.readings[len(w.readings)-1].At)))
	if w.tooFew {
		part.Remark("One reading does not make a line: wait for another.")
	} else {
		p.lineRows(part)
	}
	switch {
	case w.tooFew:
	case !w.Climbs || w.Left > longest:
		part.Remark("It does not climb: it wants more fire, or something was poured in.")
	case w.Left < 0:
		part.Row("past_min", "Past "+target.Text(1)+" since", minutes(-w.Left), "take it off now; what is too far by the hydrometer is thinned")
	default:
		p.timeRows(part)
	}
	if len(w.Odd) > 0 {
		p.oddTable(part)
	}
}

// lineRows tell of the line through the readings.
func (p page) lineRows(part *cli.Part) {
	w := p.watch
	part.Row("used", "On one line", cli.Count(w.Used, ""), "since the last setback, without dips and spikes; to "+p.In(w.at(w.readings[w.Last].At)))
	scatter := (k2 * w.NowBy).Text(2) + " by the scatter of the readings, the boiling water and the formula"
	if p.thermometer.learned != nil {
		scatter = (k2 * w.NowBy).Text(2) + " by the scatter of the readings and by the boiling water"
	}
	if p.heated != nil {
		scatter = p.heated.Uncertainty.Text(2) + ", of which " + scatter
	}
	part.Row("now", "Strength then", cli.Brix(w.Now, 1), "give or take "+scatter)
	part.If(w.Climbs).Row("climbs_per_min", "It climbs by the minute", cli.Brix(w.PerMinute, 2), "give or take "+(k2*w.PerMinuteBy).Text(2))
}

// timeRows tell of the time left.
func (p page) timeRows(part *cli.Part) {
	w, target := p.watch, p.given.target
	last := w.readings[w.Last].At
	from := "from " + p.In(w.at(last))
	part.Row("left_min", "Time left to "+target.Text(1), minutes(w.Left), from+", at an even fire")
	by := k2 * w.LeftBy
	earliest := max(0, w.Left-by)
	part.Row("band_min", "19 times of 20", cli.Between(minutes(earliest), minutes(w.Left+by)))
	part.If(w.clock).Row("done", "Ready at the earliest", w.at(last+earliest), "expected at "+p.In(w.at(last+w.Left)), "do not leave the pot meanwhile: it foams over and scorches in a minute")
	p.fireRows(part, w.fire, func(in time.Duration) string {
		if w.clock {
			return "at " + p.In(w.at(last+in))
		}
		return from
	})
	part.If(by > w.Left).Remark("The time is hardly known yet: each reading more narrows it.")
	part.Remark("It holds as long as the fire is even and nothing is poured in.")
}

func (p page) oddTable(part *cli.Part) {
	w := p.watch
	var rows [][]cli.Value
	for _, o := range w.Odd {
		r := w.readings[o.Index]
		what := o.What.String() + ": " + o.What.Why()
		if o.Open {
			what = "so far a " + what
		}
		rows = append(rows, []cli.Value{w.at(r.At), cli.Temperature(r.Shown), cli.Words(what)})
	}
	part.Table("odd", []cli.Column{{Key: "at", Head: "odd reading"}, {Key: "shown", Head: "shown"}, {Key: "what", Head: "what it was"}}, rows)
	switch o := w.Odd[len(w.Odd)-1]; {
	case !o.Open:
	case o.What == finish.Dip:
		part.Remark("The last reading is left out until the next one decides: as low again, something was poured in or the fire sank.")
	default:
		part.Remark("The last reading is left out until the next one decides: as high again, it is true. Read again at once, the probe clear of the pan.")
	}
}
