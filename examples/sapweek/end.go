package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping/season"
)

// lookForEnd looks for the end of the season as of today, with the days ahead.
func (p *plan) lookForEnd() (err error) {
	if b := p.given.buds; !b.IsMaple() {
		return cli.For("buds", fmt.Errorf("%v is no maple: when it buds was not found", b))
	}
	q := season.EndQuestion{Rule: p.rule, Species: p.given.buds, Drilled: p.tapped}
	if q.Method, err = season.WithVacuum(p.given.vacuum); err != nil {
		return cli.For("vacuum", err)
	}
	for _, d := range p.house().Days {
		if b, ok := p.house().TrueSugar(d); ok && b >= 0.1 && b <= 20 && !d.Date.After(p.today) {
			q.Sugar = append(q.Sugar, season.SugarReading{Date: d.Date, Sugar: b})
		}
	}
	past := slices.DeleteFunc(p.past.Days(), func(d season.Day) bool { return !d.Date.Before(p.start) })
	all, err := season.NewWeather(append(past, p.year.Days()...))
	if err != nil {
		return err
	}
	p.end, err = season.LookForEnd(all, p.today, q)
	return err
}

// signs names those of a state, but for the age of the holes, which the page tells
// by itself.
func (p page) signs(state season.EndState) string {
	var names []string
	for _, s := range p.end.Signs {
		if s.State == state && s.Kind != season.HoleAge {
			names = append(names, s.Kind.String())
		}
	}
	return strings.Join(names, ", ")
}

func (p page) endPart(part *cli.Part) {
	part.Row("state", "By all signs together", cli.Words(p.end.State.String()))
	window := func(from, to time.Time) string {
		if from.IsZero() {
			return "not told"
		}
		return from.Format("Jan 2") + " to " + to.Format("Jan 2")
	}
	var rows [][]cli.Value
	for _, s := range p.end.Signs {
		stands, turns := "", ""
		if s.State != season.NotKnown {
			unit := map[season.EndKind]string{season.Warmth: " F deg-days", season.FrostFree: " nights", season.HoleAge: " days", season.SugarFall: " % of best", season.LastWeeks: " %"}[s.Kind]
			stands = fmt.Sprintf("%.0f%s", s.Figure, unit)
			if turns = fmt.Sprintf("%.0f", s.Near); s.Near != s.Come {
				turns += fmt.Sprintf(" to %.0f", s.Come)
			}
		}
		rows = append(rows, []cli.Value{cli.Words(s.Kind.String()), cli.Words(s.State.String()), cli.Words(stands), cli.Words(turns), cli.Words(window(s.From, s.To))})
	}
	part.Table("signs", []cli.Column{{Key: "sign", Head: "sign"}, {Key: "state", Head: "state"}, {Key: "now", Head: "now"}, {Key: "turns", Head: "turns at"}, {Key: "window", Head: "window"}}, rows)
	part.Row("window", "A window, and no date", cli.Words(window(p.end.From, p.end.To)), "what ends first, ends the season")
	part.Remark("No source ties sap of an off flavor to a number. The windows come late rather than early: of springs like Quebec's they ended up to 18 days after its syrup did. Red and silver maple bud before sugar maple (from memory): if you tap that alone, give -buds. The age of the holes counts from the first sap in the record.")
	part.Remark("The last judge is the smell of the steam, and a spoonful of clear sap that was boiled. Sap that is cloudy, ropy or sour is never tasted: throw it away.")
	part.Remark("Then: pull the spouts, so that the holes can close. Wash pails, tanks and lines, and dry them. Boil what good sap is left. Chase the sweet out of the pan with water, never with a fire under a bare bottom; what smells of buds is kept apart.")
}

// endWords tells a maker with spouts in the trees what the signs say.
func (p page) endWords() (value string, notes []string) {
	if come := p.signs(season.EndCome); come != "" {
		return "the end is here: judge each run", []string{come, "smell the steam"}
	}
	if near := p.signs(season.EndNear); near != "" {
		return "leave in, but the end is near", []string{near, "smell the steam"}
	}
	return "", nil
}
