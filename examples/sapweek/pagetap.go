package main

import (
	"fmt"
	"strings"
	"time"

	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/tapping"
)

func (p page) tapPart(part *cli.Part) {
	p.drill(part)
	if !p.history {
		part.Remark("When the first and the last runs come here is told from past springs of a station near by: give -history.")
		return
	}
	w := p.asRead
	note := "those with more than a tenth of their days missing are left out"
	if len(w.Skipped) > 0 {
		note = fmt.Sprintf("%s: %s", note, strings.Trim(fmt.Sprint(w.Skipped), "[]"))
	}
	part.Row("springs", "Springs looked at", cli.Count(w.Years, ""), note)
	switch {
	case w.Years == 0 && len(w.Skipped) > 0:
		part.Remark("No spring of -history is whole: give all days of " + p.halfYear() + ", or nearly all.")
		return
	case w.Years == 0:
		part.Remark("No day of -history is of a spring: give the days of " + p.halfYear() + ".")
		return
	case w.First.Years == 0:
		part.Remark("None of them has a run by " + p.rule.Criterion.Name() + ": look at -criterion and -run-days.")
		return
	}
	row := func(name string, s tapping.Spread) []cli.Value {
		words := func(c tapping.CalendarDay) cli.Value { return cli.Words(c.String()) }
		return []cli.Value{cli.Words(name), words(s.Earliest), words(s.Lower), words(s.Median), words(s.Upper), words(s.Latest)}
	}
	part.Table("window", []cli.Column{{Key: "run", Head: "run"}, {Key: "earliest", Head: "earliest"}, {Key: "quarter", Head: "a quarter by"}, {Key: "median", Head: "half by"},
		{Key: "three_quarters", Head: "three quarters by"}, {Key: "latest", Head: "latest"}}, [][]cli.Value{row("first", w.First), row("last", w.Last)})
	part.Remark("Have the taps in before " + w.First.Lower.String() + ", and three springs in four miss nothing.")
	var rows [][]cli.Value
	for _, v := range []struct {
		name string
		w    tapping.Window
	}{{off + " colder", p.ifColder}, {"as read", p.asRead}, {off + " warmer", p.ifWarmer}} {
		if v.w.First.Years > 0 {
			rows = append(rows, []cli.Value{cli.Words(v.name), cli.Words(v.w.First.Median.String()), cli.Words(v.w.Last.Median.String()), median(v.w.FlowDays)})
		}
	}
	part.Table("sensitivity", []cli.Column{{Key: "if", Head: "if the station were"}, {Key: "first", Head: "first run, half by"}, {Key: "last", Head: "last run, half by"}, {Key: "days", Head: "running days"}}, rows)
}

// halfYear words the half-year of the season.
func (p page) halfYear() string {
	return fmt.Sprintf("%v to %v", p.start.Month(), p.start.Month()+5)
}

// drill tells the days for the drill, and what a hole is good for.
func (p page) drill(part *cli.Part) {
	on, notes := p.look.DrillOn, []string{"up to the first day that runs; not below " + p.Degrees(tapping.ColdestDrilling())}
	if len(on) == 0 {
		part.Row("drill", "Warm enough to drill on", cli.Words("none of these days"), notes...)
		return
	}
	if late := p.lateToTap(); late != "" {
		notes = append([]string{late}, notes...)
	}
	part.Row("drill", "Warm enough to drill on", cli.Words(dates(on)), notes...)
	least, most := tapping.HoleLife()
	part.Row("dries", "A hole of "+on[0].Format("Jan 2")+" is dry by", cli.Between(cli.Date(on[0].Add(least)), cli.Date(on[0].Add(most))),
		"with open spout and pail, from memory; warm days shorten it, and it is never drilled anew in the season")
}

func dates(days []time.Time) string {
	words := make([]string, len(days))
	for i, d := range days {
		words[i] = d.Format("Jan 2")
	}
	return strings.Join(words, ", ")
}
