package main

import (
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/cli"
)

func (p page) nowPart(part *cli.Part) {
	var rows [][]cli.Value
	thick := false
	for _, i := range p.all {
		rows = append(rows, []cli.Value{cli.Words(i.name), i.shows, cli.Brix(i.Brix, 1), cli.Brix(i.Uncertainty/density.Coverage, 2)})
		thick = thick || i.Supersaturated
	}
	if len(rows) > 0 {
		part.Table("instruments", []cli.Column{{Key: "instrument", Head: "by"}, {Key: "shows", Head: "shows"}, {Key: "strength", Head: "strength"},
			{Key: "give_or_take", Head: "give or take"}}, rows)
	}
	if len(p.pairs) > 0 {
		p.pairTable(part)
	}
	if p.tooThin {
		part.Remark("The thermometer tells no strength worth comparing outside 50 to 80 Brix.")
	}
	if p.pot != nil && p.pot.now > 0 {
		part.Remark("The scale counts from the strength that was read then, and so it shares the error of that instrument: it is not compared.")
	}
	if p.has("refractometer") {
		part.Remark("A drop of hot syrup takes a while to settle on the prism, loses water meanwhile, and scalds: close the lid on it, and wait.")
	}
	if thick {
		part.Remark("So strong a syrup holds more sugar than its water keeps dissolved at that temperature: read it while it is clear.")
	}
}

func (p page) has(name string) bool {
	for _, i := range p.all {
		if i.name == name {
			return true
		}
	}
	return false
}

func (p page) pairTable(part *cli.Part) {
	var rows [][]cli.Value
	apart := false
	for _, c := range p.pairs {
		agree := "yes"
		if c.Disagree {
			agree, apart = "no", true
		}
		rows = append(rows, []cli.Value{cli.Words(c.a + ", " + c.b), cli.Words(agree), cli.Brix(c.Brix, 1), cli.Brix(c.Uncertainty/density.Coverage, 2)})
	}
	part.Table("pairs", []cli.Column{{Key: "pair", Head: "side by side"}, {Key: "agree", Head: "agree"}, {Key: "together", Head: "together"},
		{Key: "give_or_take", Head: "give or take"}}, rows)
	if apart {
		part.Remark("Where two do not agree, one is off, or its uncertainty was given too small: check both, in plain water first, before you go by either.")
	}
}

func (p page) watchPart(part *cli.Part) {
	w, target := p.watch, p.given.target
	last := w.readings[len(w.readings)-1].At
	part.Row("readings", "Readings", cli.Count(len(w.readings), ""), "the last at "+p.In(w.at(last)))
	if !w.tooFew {
		part.Row("used", "On one line", cli.Count(w.Used, ""), "since the last setback, without dips and spikes")
		part.Row("now", "Strength now", cli.Brix(w.Now, 1), "give or take "+w.NowBy.Text(2)+" by the scatter of the readings and by the boiling water")
	}
	switch {
	case w.tooFew:
		part.Remark("One reading does not make a line: wait for another.")
	case !w.Climbs || w.Left > longest:
		part.Remark("It does not climb: it wants more fire, or something was poured in.")
	default:
		part.Row("climbs_per_min", "It climbs by the minute", cli.Brix(w.PerMinute, 2), "give or take "+w.PerMinuteBy.Text(2))
		if w.Left < 0 {
			part.Row("past_min", "Past "+target.Text(1)+" since", minutes(-w.Left), "take it off now; too strong syrup is thinned, packday tells with what")
			break
		}
		part.Row("left_min", "Time left to "+target.Text(1), minutes(w.Left))
		part.Row("band_min", "Two times of three", cli.Between(minutes(max(0, w.Left-w.LeftBy)), minutes(w.Left+w.LeftBy)))
		if w.clock {
			part.Row("done", "Be there at", w.at(last+max(0, w.Left-w.LeftBy)), "expected at "+p.In(w.at(last+w.Left)))
		}
		if w.LeftBy > w.Left {
			part.Remark("The time is hardly known yet: each reading more narrows it.")
		}
		part.Remark("It holds as long as the fire is even and nothing is poured in.")
	}
	if len(w.Odd) > 0 {
		var rows [][]cli.Value
		for _, o := range w.Odd {
			r := w.readings[o.Index]
			rows = append(rows, []cli.Value{w.at(r.At), cli.Temperature(r.Shown), cli.Words(o.What.String())})
		}
		part.Table("odd", []cli.Column{{Key: "at", Head: "odd reading"}, {Key: "shown", Head: "shown"}, {Key: "what", Head: "what it was"}}, rows)
	}
}
