package main

import (
	"fmt"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
)

// The lives that are taken of a hole where the person tells none. The sources of
// pails meet at four weeks; of a line without a pump none was read.
const (
	pailLife = 4 * 7 * day
	lineLife = 6 * 7 * day
	pumpLife = 61 * day
)

// A lifeRow is when holes of a life are best drilled.
type lifeRow struct {
	life time.Duration
	season.TapWindow
}

// holeLife is the life that the page counts with, and where it is from.
func (p *plan) holeLife() (life time.Duration, from string) {
	s := p.given
	switch {
	case s.life > 0:
		return time.Duration(s.life) * day, "as you say"
	case s.vacuum > 0:
		return pumpLife, "under vacuum about two months, read second-hand"
	case p.line:
		return lineLife, "of a line without a pump no figure was read: six weeks is a guess"
	}
	return pailLife, "with an open spout and a pail: 3 to 4 weeks by a producer (read), 4 to 6 by extension advice (from memory)"
}

// tapTime finds when to tap by past springs, and what to do today.
func (p *plan) tapTime(past season.Weather) (err error) {
	life, _ := p.holeLife()
	if p.timing, err = season.NewTapTiming(past, p.rule, life); err != nil {
		return cli.For("hole-life", err)
	}
	p.call = p.timing.Call(p.year, p.today)
	if p.timing.Springs() == 0 {
		return nil
	}
	for _, l := range p.livesAround(life) {
		t, err := season.NewTapTiming(past, p.rule, l)
		if err != nil {
			return cli.For("hole-life", err)
		}
		p.lives = append(p.lives, lifeRow{l, t.Best()})
	}
	return nil
}

// livesAround are the lives to show: that of the count, and the published ends
// for pails or two weeks less and more.
func (p *plan) livesAround(life time.Duration) []time.Duration {
	low, high := tapping.HoleLife()
	if p.line || life <= low || life >= high {
		low, high = max(7*day, life-14*day), min(life+14*day, 184*day)
	}
	return []time.Duration{low, life, high}
}

// callRows tells what to do today, and what a hole is good for.
func (p page) callRows(part *cli.Part) {
	life, from := p.holeLife()
	c := p.call
	words := c.Verdict.String()
	switch on := c.On.Format("January 2"); c.Verdict {
	case season.TapNow:
		words = "now: drill on " + on
		if c.On.Equal(p.today) {
			words = "now: drill today, " + on
		}
	case season.TapWait:
		words = "wait until " + on
	}
	part.Row("call", "If you have not tapped", cli.Words(words), c.Why,
		cli.When(c.Verdict != season.TapTooLate, "do not drill below "+p.Degrees(tapping.ColdestDrilling())))
	part.Row("life", "A hole gives sap for", cli.Number(life.Hours()/24, 0, "days"), from)
	if c.Verdict == season.TapNow {
		end := c.On.Add(life - day)
		part.Row("dries", "A hole of "+c.On.Format("Jan 2")+" lasts to", cli.Date(end), "warm days shorten it, and it is never drilled anew in the season")
	}
	part.Remark("A hole is taken to give sap in full for that long and none after: an assumption, no source read has a curve. Too late, wait and now go by rules of this page, and not by a published one.")
}

// lifeTable shows when to drill in a mean spring, by the life of the hole.
func (p page) lifeTable(part *cli.Part) {
	var rows [][]cli.Value
	n := float64(p.timing.Springs())
	early, _ := p.timing.Caught(p.asRead.First.Lower)
	for _, l := range p.lives {
		rows = append(rows, []cli.Value{cli.Number(l.life.Hours()/24, 0, "days"), cli.Words(l.String()),
			cli.Number(float64(l.Caught)/n, 1, ""), cli.Number(float64(l.All)/n, 1, "")})
	}
	part.Table("lives", []cli.Column{{Key: "life", Head: "if a hole lasts"}, {Key: "tap", Head: "past springs say: tap"}, {Key: "caught", Head: "running days caught"}, {Key: "all", Head: "of"}}, rows)
	part.Remark(fmt.Sprintf("Running days are those of a mean spring before silver maple is in full bloom. Holes of %v, before the first run of three springs in four, would have caught %.1f of them: they dry while it still runs.", p.asRead.First.Lower, float64(early)/n))
}

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
