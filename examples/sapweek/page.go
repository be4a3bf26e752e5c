package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/internal/coef"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// page lays a plan out.
type page struct {
	*plan

	*cli.Sheet
}

func (p *plan) sheet() *cli.Sheet {
	sheet := &cli.Sheet{Title: "The season and the days ahead", Metric: p.given.metric}
	page := page{p, sheet}
	page.aboutPart()
	page.daysPart(sheet.Part("days", "Which days run"))
	page.standingPart(sheet.Part("standing", "Where the season stands"))
	page.tapPart(sheet.Part("tapping", "When to tap"))
	page.sapPart(sheet.Part("sap", "Sap to come"))
	if !p.line {
		page.pailPart(sheet.Part("pails", "Pails"))
	}
	page.eveningPart(sheet.Part("evenings", "Evenings at the pan"))
	page.storePart(sheet.Part("stores", "The season, and what to lay in"))
	care := sheet.Part("care", "Take care")
	for _, c := range page.cautions() {
		care.Item(c)
	}
	return sheet
}

func (p page) aboutPart() {
	var words []string
	switch {
	case p.demo:
		words = append(words, "An invented grove in an invented spring: give your own weather, taps, pails and pan with flags, -h lists them.")
	default:
		if !p.weather {
			words = append(words, "The weather is invented, and so are past springs and seasons that no flag names: give -weather.")
		}
		if p.borrowed != "" {
			words = append(words, "Not given, and so as in an invented grove: "+p.borrowed+".")
		}
	}
	if len(words) > 0 {
		p.Part("about", "About this page").Remark(strings.Join(words, " "))
	}
}

func yes(b bool) cli.Value {
	if b {
		return cli.Words("yes")
	}
	return cli.Words("no")
}

// met counts the days that run.
func met(days []tapping.Day, c tapping.Criterion) (n int) {
	for _, d := range days {
		if c.Met(d) {
			n++
		}
	}
	return n
}

// columns are the criteria of the table, the one that the page counts with among
// them.
func (p page) columns() (keys []string, all []tapping.Criterion) {
	keys = []string{"flow", "vigorous", "event"}
	for _, k := range keys {
		all = append(all, criteria[k]())
	}
	for _, c := range all {
		if c == p.rule.Criterion {
			return keys, all
		}
	}
	return append(keys, "own"), append(all, p.rule.Criterion)
}

func (p page) daysPart(part *cli.Part) {
	keys, all := p.columns()
	c := p.rule.Criterion
	cols := []cli.Column{{Key: "day", Head: "day"}, {Key: "low", Head: "low"}, {Key: "high", Head: "high"}}
	for _, k := range keys {
		cols = append(cols, cli.Column{Key: k, Head: k})
	}
	cols = append(cols, cli.Column{Key: "colder", Head: "if colder"}, cli.Column{Key: "warmer", Head: "if warmer"})
	var rows [][]cli.Value
	for i, d := range p.days {
		row := []cli.Value{cli.Date(d.Date), cli.Temperature(d.Min), cli.Temperature(d.Max)}
		for _, one := range all {
			row = append(row, yes(one.Met(d)))
		}
		rows = append(rows, append(row, yes(c.Met(p.colder[i])), yes(c.Met(p.warmer[i]))))
	}
	part.Table("ahead", cols, rows)
	for i, one := range all {
		part.Item(keys[i] + ": " + one.Name() + ". " + one.Source() + ".")
	}
	part.Row("running", "Days that run", cli.Count(met(p.days, c), "of "+strconv.Itoa(len(p.days))), c.Name())
	part.Row("running_colder", "If all is colder", cli.Count(met(p.colder, c), ""), "by "+off)
	part.Row("running_warmer", "If all is warmer", cli.Count(met(p.warmer, c), ""), "by "+off)
	part.Remark("If colder and if warmer tell what the day does by the criterion of the count, should the forecast or the place of the thermometer be " + off + " off. A criterion is no promise: wind, sun and frozen ground have their say.")
	if len(p.days) < p.given.days {
		part.Remark("The forecast ends, or misses a day, after " + p.In(cli.Date(p.days[len(p.days)-1].Date)) + ": so does this page.")
	}
}

func (p page) standingPart(part *cli.Part) {
	since := "since " + p.start.Format("January 2")
	notes := []string{since}
	if p.history && p.asRead.Years > 0 {
		notes = append(notes, fmt.Sprintf("the median of %s is %g in the whole season", number(p.asRead.Years, "past spring", "past springs"), p.asRead.FlowDays))
	}
	part.Row("so_far", "Running days so far", cli.Count(p.soFar.FlowDays, ""), notes...)
	if !p.soFar.First.IsZero() {
		part.Row("runs", "First and last run so far", cli.Between(cli.Date(p.soFar.First), cli.Date(p.soFar.Last)), "a run is "+number(p.rule.RunDays, "running day", "running days")+" within a week")
	}
	part.Row("missing", "Days without figures", cli.Count(p.missing, ""), since)
	first, full := tapping.SilverMapleBloom()
	part.Row("warmth", "Warmth so far", warmth(p.toNow), "over "+p.Degrees(bloomBase)+", "+since)
	part.Row("warmth_ahead", "At the end of these days", warmth(p.toEnd))
	part.Row("bloom", "Silver maple flowers at", cli.Between(warmth(first), warmth(full)), "first flowers, full bloom; Ohio State University", bloom(p.toEnd))
	if p.missing > 0 {
		part.Remark("Every day without figures is missing in these sums, and so is a warm one. Give -weather all days " + since + ".")
	}
	if len(p.weeks) == 0 {
		part.Remark("Whether a week is a producing one by Houle et al. 2015 is told for whole weeks, with no day missing " + since + ".")
		return
	}
	p.weeksTable(part, since)
}

// houleTop is where the curve of Houle et al. 2015 is highest, in events.
var houleTop float64 = -coef.HouleC1 / (2 * coef.HouleC2)

// weeksTable shows the weeks by the equation of Houle et al. 2015, but no answer
// where the equation was not made for the count.
func (p page) weeksTable(part *cli.Part, since string) {
	var rows [][]cli.Value
	past := false
	for _, w := range p.weeks {
		probability, producing := w.Probability, yes(w.Producing)
		if float64(w.Events) > houleTop {
			past, probability, producing = true, math.NaN(), cli.Words("not told")
		}
		rows = append(rows, []cli.Value{cli.Date(w.Start), cli.Date(w.Start.AddDate(0, 0, 6)), cli.Count(w.Events, ""), warmth(w.Warmth), cli.Number(probability, 2, ""), producing})
	}
	part.Table("weeks", []cli.Column{{Key: "from", Head: "week from"}, {Key: "to", Head: "to"}, {Key: "events", Head: "events"}, {Key: "warmth", Head: "over 5 C"},
		{Key: "probability", Head: "probability"}, {Key: "producing", Head: "producing"}}, rows)
	part.Remark(fmt.Sprintf("Producing weeks by the equation of Houle et al. 2015: above %g. It was right about 83 %% of the producing weeks and 95 %% of the others in 11 regions of Quebec, 1999 to 2011; elsewhere it is unproven. Events are counted and warmth over 5 C is summed %s: where the paper begins to count was not seen.",
		tapping.HouleThreshold, since))
	if past {
		part.Remark(fmt.Sprintf("Not told: past %d events the equation takes every further one for a worse week. It was not made for so many, and says nothing of these weeks: go by the days that run.", int(houleTop)))
	}
}

func warmth(d tapping.DegreeDays) cli.Value { return cli.DegreeDays(units.CelsiusDegrees(d.Celsius())) }

// bloom words how far the buds are, by the warmth at the end of the days ahead.
func bloom(sum tapping.DegreeDays) string {
	first, full := tapping.SilverMapleBloom()
	sum += 1e-9 // what rounding takes off a sum that is just enough
	switch {
	case sum < first:
		return "not yet in these days"
	case sum < full:
		return "it begins in these days or has begun: sap of trees in bud gives an off flavor"
	}
	return "in full bloom by then: sap of trees in bud gives an off flavor"
}

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
	if w.First.Years == 0 {
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
			rows = append(rows, []cli.Value{cli.Words(v.name), cli.Words(v.w.First.Median.String()), cli.Words(v.w.Last.Median.String()), cli.Number(v.w.FlowDays, 1, "")})
		}
	}
	part.Table("sensitivity", []cli.Column{{Key: "if", Head: "if the station were"}, {Key: "first", Head: "first run, half by"}, {Key: "last", Head: "last run, half by"}, {Key: "days", Head: "running days"}}, rows)
}

// drill tells the days for the drill, and what a hole is good for.
func (p page) drill(part *cli.Part) {
	coldest := p.Degrees(tapping.ColdestDrilling())
	if n := len(p.look.DrillOn); n > 0 {
		part.Row("drill", "Warm enough to drill on", cli.Words(dates(p.look.DrillOn)), "up to the first day that runs; not below "+coldest)
	} else {
		part.Row("drill", "Warm enough to drill on", cli.Words("none of these days"), "up to the first day that runs; not below "+coldest)
	}
	low, high := p.drying()
	part.Row("dries", "A hole of this day is dry by", cli.Between(low, high), "with open spout and pail, from memory; warm days shorten it, and it is never drilled anew in the season")
}

func dates(days []time.Time) string {
	words := make([]string, len(days))
	for i, d := range days {
		words[i] = d.Format("Jan 2")
	}
	return strings.Join(words, ", ")
}

// number words a count.
func number(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}
