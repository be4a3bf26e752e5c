package main

import (
	"fmt"
	"math"
	"strconv"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/tapping/season"
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
	page.brief()
	page.daysPart(sheet.Part("days", "Which days run"))
	page.standingPart(sheet.Part("standing", "Where the season stands"))
	page.tapPart(sheet.Part("tapping", "When to tap"))
	page.endPart(sheet.Part("end", "The end of the season"))
	page.sapPart(sheet.Part("sap", "Sap to come"))
	sheet.PartIf(!p.line, "pails", "Pails", page.pailPart)
	page.eveningPart(sheet.Part("evenings", "Evenings at the pan"))
	page.storePart(sheet.Part("stores", "The season, and what to lay in"))
	sheet.Part("care", "Take care").Item(page.cautions()...)
	return sheet
}

func yes(b bool) cli.Value {
	if b {
		return cli.Words("yes")
	}
	return cli.Words("no")
}

// met counts the days that run.
func met(days []season.Day, c season.Criterion) (n int) {
	for _, d := range days {
		if c.Met(d) {
			n++
		}
	}
	return n
}

// columns are the criteria of the table, the one that the page counts with among
// them.
func (p page) columns() (keys []string, all []season.Criterion) {
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
		words := keys[i] + ": " + one.Name() + "."
		if keys[i] != "own" {
			words += " " + one.Source() + "."
		}
		part.Item(words)
	}
	part.Row("running", "Days that run", cli.Count(met(p.days, c), "of "+strconv.Itoa(len(p.days))), c.Name())
	part.Row("running_colder", "If all is colder", cli.Count(met(p.colder, c), ""), "by "+off)
	part.Row("running_warmer", "If all is warmer", cli.Count(met(p.warmer, c), ""), "by "+off)
	part.Remark("If colder and if warmer tell what the day does by the criterion of the count, should the forecast or the place of the thermometer be " + off + " off. A criterion is no promise: wind, sun and frozen ground have their say.")
	part.If(len(p.days) < p.given.days).Remark("The forecast ends, or misses a day, after " + p.In(cli.Date(p.days[len(p.days)-1].Date)) + ": so does this page.")
}

func (p page) standingPart(part *cli.Part) {
	since := "since " + p.start.Format("January 2")
	if words := p.seasonWords(); words != "" {
		part.Row("season", "The season", cli.Words(words))
	}
	part.Row("so_far", "Running days so far", cli.Count(p.soFar.FlowDays, ""), since,
		cli.When(p.history && p.asRead.Years > 0, fmt.Sprintf("the median of %s is %g in the whole season", cli.Plural(p.asRead.Years, "past spring"), p.asRead.FlowDays)))
	part.If(!p.soFar.First.IsZero()).Row("runs", "First and last run so far", cli.Between(cli.Date(p.soFar.First), cli.Date(p.soFar.Last)), "a run is "+cli.Plural(p.rule.RunDays, "running day")+" within a week")
	part.Row("missing", "Days without figures", cli.Count(p.missing, ""), since)
	first, full := season.SilverMapleBloom()
	bloom := season.BloomRule()
	part.Row("warmth", "Warmth so far", warmth(p.toNow), "over "+p.Degrees(bloom.Base())+" and up to "+p.Degrees(bloom.Upper())+", "+since+"; by the "+bloom.Method().String()+", as the calendar below sums (read second-hand): the daily mean gives far less")
	part.Row("warmth_ahead", "At the end of these days", warmth(p.toEnd))
	part.Row("bloom", "Silver maple flowers at", cli.Between(warmth(first), warmth(full)), "first flowers, full bloom; Ohio State University", p.bloomWords())
	part.If(p.missing > 0).Remark("Every day without figures is missing in these sums, and so is a warm one. Give -weather all days " + since + ".")
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
		season.HouleThreshold, since))
	part.If(past).Remark(fmt.Sprintf("Not told: past %d events the equation takes every further one for a worse week. It was not made for so many, and says nothing of these weeks: go by the days that run.", int(houleTop)))
}

func warmth(d season.DegreeDays) cli.Value { return cli.DegreeDays(units.CelsiusDegrees(d.Celsius())) }

// median shows a median of whole numbers, which may fall between two of them.
func median(x float64) cli.Value {
	decimals := 0
	if x > math.Trunc(x) {
		decimals = 1
	}
	return cli.Number(x, decimals, "")
}
