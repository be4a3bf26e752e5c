package main

import (
	"slices"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// learnSap finds what one's own gatherings tell of the days ahead. A day that
// brings none, by frost, by bloom or since it was gathered already, is left out.
func (p *plan) learnSap(m season.SapModel) (err error) {
	all, err := season.NewWeather(slices.Concat(p.before.Days(), p.year.Days()))
	if err != nil {
		return err
	}
	if p.learnt, err = season.NewSapRecord(m, p.rule.Criterion, all, p.today.Year(), p.taken); err != nil {
		return err
	}
	if n, _ := p.learnt.Taught(); n == 0 {
		return nil
	}
	taps := float64(p.given.taps)
	p.likely = make([]units.Span[units.Volume], len(p.days))
	var counted []season.Day
	for i, d := range p.learnt.Days(p.ahead) {
		if i == 0 && p.gathered || p.stages[i] != ordinary && !d.Runs {
			continue
		}
		counted = append(counted, p.days[i])
		p.likely[i] = times(d.Sap, taps)
	}
	week, err := season.NewWeather(counted)
	p.likelyIn = times(p.learnt.Sum(week), taps)
	return err
}

func times(s units.Span[units.Volume], n float64) units.Span[units.Volume] {
	return units.Span[units.Volume]{Low: s.Low * units.Volume(n), Middle: s.Middle * units.Volume(n), High: s.High * units.Volume(n)}
}

// eightInTen words a range as a person reads it.
func (p page) eightInTen(s units.Span[units.Volume]) string {
	return "8 in 10: " + p.In(cli.Between(cli.Gallons(s.Low, cli.Down), cli.Gallons(s.High, cli.Up)))
}

// learntRows tell what the record taught, and what it left out.
func (p page) learntRows(part *cli.Part) {
	all, own := p.learnt.Taught()
	part.Row("learned", "Learned from", cli.Count(all, ""), "gatherings; "+cli.Plural(own, "is of", "are of")+" this season")
	noWeather, tooMuch := p.learnt.LeftOut()
	p.leftOut(part, "Left out, since the weather lacks a day before", noWeather)
	p.leftOut(part, "Left out, since no tap is known to give so much: look at the taps and the unit of", append(p.floods, tooMuch...))
}

func (p page) leftOut(part *cli.Part, why string, dates []time.Time) {
	const most = 5
	if len(dates) == 0 {
		return
	}
	words := why
	for i, d := range dates {
		if i == most {
			words += ", and " + cli.Plural(len(dates)-most, "more", "more")
			break
		}
		if i > 0 {
			words += ","
		}
		words += " " + d.Format(time.DateOnly)
	}
	part.Remark(words + ".")
}

// likelyTable shows the days ahead by the record.
func (p page) likelyTable(part *cli.Part) {
	p.learntRows(part)
	var rows [][]cli.Value
	for i, d := range p.days {
		s := p.likely[i]
		rows = append(rows, []cli.Value{cli.Date(d.Date), cli.Words(p.runs(i)), cli.Rough(cli.Volume(s.Middle)), cli.Between(cli.Rough(cli.Volume(s.Low)), cli.Rough(cli.Volume(s.High))), cli.Rough(cli.Volume(p.all[i].High))})
	}
	part.Table("ahead", []cli.Column{{Key: "day", Head: "day"}, {Key: "runs", Head: "runs"}, {Key: "likely", Head: "likely"}, {Key: "sap", Head: "8 times in 10"}, {Key: "most", Head: "be ready for"}}, rows)
	s := p.likelyIn
	part.Row("total_likely", "All these days, likely", cli.Rough(cli.Volume(s.Middle)))
	part.Row("total", "8 times in 10", cli.Between(cli.Rough(cli.Volume(s.Low)), cli.Rough(cli.Volume(s.High))), "its own range: days are not all low or all high")
	part.Remark("Likely is as often passed as missed. Sap by tap and running day is learned from your gatherings and the weather of their days, from a published band on; days are taken as independent, and sap of a trunk in bud or of a hole that dries is less. Pails and evenings below are reckoned for what to be ready for, the best day.")
}
