package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// tapeOff is how far a tape round a trunk is easily off.
const tapeOff = units.Inch / 4

// growthOf is what the trunk grows a year, and how that is known.
func (t *trunk) growthOf() (g units.Length, from string, err error) {
	switch {
	case t.doubt > 0:
		return t.growth, "girths, " + t.doubt.Text(0), nil
	case t.growth > 0:
		return t.growth, "told", nil
	}
	g, err = tapping.UsualGrowth(t.DBH())
	return g, "assumed", err
}

// Decades are what the stand bears in years to come.
type decades struct {
	taps                   []int // by season
	trunks, enough, silent int
	doubtful, assumed      int
	rows                   [][]cli.Value
}

// lookAhead looks at every trunk that is tapped, or is small yet.
func (st *stand) lookAhead() (y decades, err error) {
	s := st.given
	y.taps = make([]int, s.years)
	for i := range st.trunks {
		t := &st.trunks[i]
		if t.why != tapped && t.why != small {
			continue
		}
		growth, from, err := t.growthOf()
		if err != nil {
			return y, err
		}
		seasons := map[int]bool{}
		for _, h := range t.record {
			if st.year == 0 || h.Year < st.year {
				seasons[h.Year] = true
			}
		}
		a, err := t.Ahead(tapping.AheadPlan{
			Guideline: s.guideline, Growth: growth, Years: s.years, Before: min(len(seasons), 200), Hole: st.hole(t), Band: s.high - s.low,
		})
		if errors.Is(err, tapping.ErrNotCovered) {
			y.silent++
			continue
		}
		if err != nil {
			return y, fmt.Errorf("tree %s: %w", t.name(), err)
		}
		y.add(t, a, growth, from)
	}
	return y, nil
}

func (y *decades) add(t *trunk, a tapping.TrunkAhead, growth units.Length, from string) {
	y.trunks++
	for year, n := range a.Taps {
		y.taps[year] += n
	}
	enough := "no"
	switch {
	case from == "assumed":
		y.assumed++
		enough = "not known"
	case a.Enough:
		y.enough++
		enough = "yes"
	}
	if t.doubt >= units.Whole/2 {
		y.doubtful++
	}
	next := ""
	if a.Next > 0 {
		next = "in " + cli.Plural(a.Next, "year")
	}
	clear := cli.Words("not tapped")
	if a.Taps[len(a.Taps)-1] > 0 {
		clear = cli.Share(a.Clear, 0)
	}
	y.rows = append(y.rows, []cli.Value{cli.Words(t.name()), cli.Rough(cli.Length(growth)), cli.Words(from), cli.Words(enough), cli.Words(next), cli.Digits(cli.Length(a.DBH), 3), clear})
}

// aheadPart shows what the stand bears in years to come.
func (p page) aheadPart(part *cli.Part) error {
	y, err := p.lookAhead()
	if err != nil || y.trunks == 0 {
		part.Remark("No trunk is tapped or small yet.")
		return err
	}
	last := p.given.years - 1
	part.Row("years", "Seasons", cli.Count(p.given.years, ""), "this one first")
	part.Row("taps_now", "Taps now and in the last", cli.Between(cli.Count(y.taps[0], ""), cli.Count(y.taps[last], "")), "of "+cli.Plural(y.trunks, "trunk")+" tapped or small yet")
	part.Row("enough", "Grow enough for it", cli.Count(y.enough, ""), "by the least that is published; of "+cli.Plural(y.trunks-y.assumed, "trunk")+" whose growth is told")
	var chart [][]cli.Value
	most := 1
	for _, n := range y.taps {
		most = max(most, n)
	}
	const bars, points = 40, 10
	for year := 0; ; year = min(year+max(1, (last+points-1)/points), last) {
		words := "in " + strconv.Itoa(year) + " years"
		if p.year > 0 {
			words = strconv.Itoa(p.year + year)
		}
		chart = append(chart, []cli.Value{cli.Words(words), cli.Count(y.taps[year], ""), cli.Words(strings.Repeat("#", (y.taps[year]*bars+most/2)/most))})
		if year == last {
			break
		}
	}
	part.Table("chart", []cli.Column{{Key: "season", Head: "season"}, {Key: "taps", Head: "taps"}, {Key: "chart", Head: "of the stand"}}, chart)
	part.Table("trees", []cli.Column{{Key: "tree", Head: "tree"}, {Key: "growth", Head: "growth"}, {Key: "from", Head: "from"}, {Key: "enough", Head: "enough"}, {Key: "next", Head: "one tap more"}, {Key: "dbh", Head: "then"}, {Key: "clear", Head: "clear wood then"}}, y.rows)
	p.aheadRemarks(part, y)
	return nil
}

func (p page) aheadRemarks(part *cli.Part, y decades) {
	part.Remark("Growth is of the radius a year. Enough is what conservative tapping of sugar maples asks for, 1.4 in2 of basal area a year at 10 in and 2.6 at 18 (van den Berg and others 2016): at less, wood is spoiled faster than it grows, and the tree wants fewer holes or rest. " +
		"Clear wood is the share of the belt between -low and -high that still conducts after the last season, uncertain by a fifth of what is stained; aim at " + tapping.TargetConductive.Text(0) + " or more. It counts holes anywhere in the belt: the places of this page do better. Tapping itself slows trees.")
	part.If(y.assumed > 0).Remark("Of " + cli.Plural(y.assumed, "trunk") + " no growth is told: that of healthy, dominant trees of 18 sites in Vermont is assumed, and more than a third of trees grew too little. Measure the girth again in some years, and write first_girth_in and years_since.")
	part.If(y.doubtful > 0).Remark("Of " + cli.Plural(y.doubtful, "trunk") + " a quarter inch of the tape, each time, is half the growth or more: nothing is known yet.")
	part.If(y.silent > 0).Remark("Of " + cli.Plural(y.silent, "trunk") + " the guideline says nothing.")
}

// yearsPart shows where the holes of one trunk go, year by year.
func (p page) yearsPart(part *cli.Part) error {
	t, err := p.find(p.given.ahead)
	if err != nil {
		return cli.For("ahead", err)
	}
	if t.why != tapped || len(t.record) == 0 || p.year == 0 {
		part.Remark("Nothing to tell of " + t.name() + ": it is left alone, or no old hole of it is recorded.")
		return nil
	}
	planner, err := p.planner(t)
	if err != nil {
		return err
	}
	plan, err := planner.Plan(t.record, p.year, p.given.years, t.taps)
	if err != nil {
		return err
	}
	var rows [][]cli.Value
	for _, h := range plan.Holes {
		rows = append(rows, []cli.Value{cli.Words(strconv.Itoa(h.Year)), cli.Number(h.At.Degrees(), 0, "deg"), cli.Eighths(h.Height, cli.Nearest)})
	}
	part.Table("holes", []cli.Column{{Key: "year", Head: "year"}, {Key: "turn_deg", Head: "turn"}, {Key: "height", Head: "height"}}, rows)
	part.If(len(plan.Resting) > 0).Remark("For want of a clear place it takes fewer holes in " + strings.Trim(fmt.Sprint(plan.Resting), "[]") + ".")
	part.Remark("With as many taps as now. A plan so far ahead is for the eye: drill by the page of the year, from what was really drilled.")
	return nil
}
