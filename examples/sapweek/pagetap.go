package main

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping/season"
)

func (p page) tapPart(part *cli.Part) {
	p.callRows(part)
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
	row := func(name string, s season.Spread) []cli.Value {
		words := func(c season.CalendarDay) cli.Value { return cli.Words(c.String()) }
		return []cli.Value{cli.Words(name), words(s.Earliest), words(s.Lower), words(s.Median), words(s.Upper), words(s.Latest)}
	}
	part.Table("window", []cli.Column{{Key: "run", Head: "run"}, {Key: "earliest", Head: "earliest"}, {Key: "quarter", Head: "a quarter by"}, {Key: "median", Head: "half by"},
		{Key: "three_quarters", Head: "three quarters by"}, {Key: "latest", Head: "latest"}}, [][]cli.Value{row("first", w.First), row("last", w.Last)})
	p.lifeTable(part)
	var rows [][]cli.Value
	for _, v := range []struct {
		name string
		w    season.Window
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
