package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// sap is what the taps give.
type sap struct {
	flowDays float64
	flowFrom string
	how      string                   // it is collected
	mean     units.Span[units.Volume] // of one tap on a running day in a poor season and in a good one
	best     units.Volume             // of one tap on the best day
	bestFrom string
	perTap   []season.Figure[units.Volume]
	all      []season.Figure[units.Volume] // of all taps, day by day
	total    season.Figure[units.Volume]
	gain     season.Figure[units.Share]
	likely   []units.Span[units.Volume] // of all taps, day by day, where the record taught something
	likelyIn units.Span[units.Volume]   // all the days together
	learnt   season.SapRecord
	sugar    season.Figure[units.Brix]
	measured bool // the sugar is
	rounds   []round
}

// A round is one pail from one round to the next.
type round struct {
	first, last time.Time // days whose sap it takes
	season.PailOutlook
}

// aRun is a day that runs.
var aRun = season.Day{Min: units.Celsius(-5), Max: units.Celsius(5)}

// fewestFlowDays is the shortest season that the sap of a season is told of here:
// 12 to 15 runs of one or several days are usual (University of Vermont
// Extension). The sap of a tap, shared among fewer days, makes floods of them.
const fewestFlowDays = 10

// expectSap makes the bands of the days ahead.
func (p *plan) expectSap() error {
	low, high, err := p.models()
	if err != nil {
		return err
	}
	least, most := low.Days(p.ahead, p.rule.Criterion), high.Days(p.ahead, p.rule.Criterion)
	p.bestDay(high)
	p.total.Source = most[0].Sap.Source
	for i := range most {
		tap := season.Figure[units.Volume]{Span: units.Span[units.Volume]{Low: least[i].Sap.Low, High: most[i].Sap.High}, Source: most[i].Sap.Source}
		if most[i].Runs {
			tap.Low, tap.High = min(tap.Low, p.best), p.best
		}
		if p.stages[i] != ordinary && !most[i].Runs {
			tap.Low, tap.High = 0, 0
		}
		if i == 0 && p.gathered {
			tap.Low, tap.High = 0, 0 // it waits already, or is boiled
		}
		all := tap.Times(float64(p.given.taps))
		p.perTap, p.all = append(p.perTap, tap), append(p.all, all)
		p.total.Low += all.Low
		p.total.High += all.High
	}
	if err := p.learnSap(high); err != nil {
		return err
	}
	return p.expectSugar()
}

// by words where the value of a flag comes from: the record, or the person.
func (p *plan) by(flag, said string) string {
	if s := p.flags.Source(flag); s.Kind == cli.Learned {
		return "from the record: " + s.From
	}
	return said
}

// bestDay finds the sap of a tap on the best day, one figure for the days, the
// pails and the tank: the person's own, else the greater of the model's and what
// is remembered of sap by gravity.
func (p *plan) bestDay(high season.SapModel) {
	p.best, p.bestFrom = p.given.peak, p.by("peak", "as you say")
	if p.best > 0 {
		return
	}
	p.best, p.bestFrom = high.Day(aRun, season.SapFlowDay()).High, "the mean of the best fifth of days of a good season: give -peak"
	if p.best < packing.PeakFromMemory {
		p.best, p.bestFrom = packing.PeakFromMemory, "from memory: give -peak"
	}
}

// models returns what one tap gives at the least and at the most. They differ
// for a line without a pump alone, whose vacuum is anything from none, where air
// gets in, to that of the full fall.
func (p *plan) models() (low, high season.SapModel, err error) {
	s := p.given
	flag := "flow-days"
	p.flowDays, p.flowFrom = float64(s.flowDays), "as you say"
	if !p.flags.Given("flow-days") {
		p.flowFrom = "a guess: give -history or -flow-days"
		if p.history && p.asRead.Years > 0 {
			p.flowDays, p.flowFrom = p.asRead.FlowDays, "median of "+cli.Plural(p.asRead.Years, "spring")
			if flag = "history"; p.flowDays < fewestFlowDays {
				p.flowFrom += fmt.Sprintf(" is %g: fewer than %d bring less sap in all, and not more on a day", p.flowDays, fewestFlowDays)
				p.flowDays = fewestFlowDays
			}
		}
	}
	var gravity season.Method
	vacuum := s.vacuum
	p.how = "by gravity"
	switch {
	case p.flags.Given("vacuum"):
		p.how = "with a pump"
	case p.flags.Given("drop"):
		p.how = "by a falling line"
		if vacuum, err = season.NaturalVacuum(s.drop); err != nil {
			return low, high, cli.For("drop", err)
		}
	}
	method, err := season.WithVacuum(vacuum)
	if err != nil {
		return low, high, cli.For("vacuum", err)
	}
	if p.gain, err = season.VacuumGain(vacuum); err != nil {
		return low, high, cli.For("vacuum", err)
	}
	if high, err = season.NewSapModel(method, p.flowDays); err != nil {
		return low, high, cli.For(flag, err)
	}
	low = high
	if p.flags.Given("drop") {
		p.gain.Low = 0
		if low, err = season.NewSapModel(gravity, p.flowDays); err != nil {
			return low, high, err
		}
	}
	days := units.Volume(p.flowDays)
	p.mean = units.Span[units.Volume]{Low: low.Season().Low / days, High: high.Season().High / days}
	return low, high, nil
}

// expectSugar finds the range of sugar.
func (p *plan) expectSugar() (err error) {
	s := p.given
	if p.measured = p.flags.Given("sugar"); p.measured {
		p.sugar = season.Figure[units.Brix]{Span: units.Span[units.Brix]{Low: s.reading, High: s.reading}, Source: p.by("sugar", "your own reading")}
		return nil
	}
	p.sugar, err = season.SapSugar(s.species, parts[s.part])
	if errors.Is(err, tapping.ErrNotCovered) {
		err = fmt.Errorf("%w, and give -sugar", err)
	}
	return cli.For("species", err)
}

// walk finds what each round of the pails meets.
func (p *plan) walk() error {
	s := p.given
	if p.line {
		return nil
	}
	each := max(1, int(s.round/day)) // days
	pail := season.Pail{Label: "at a tap", Size: s.pail, Holds: s.inPails, Taps: s.perPail}
	for i := 0; i < len(p.days); i += each {
		end := min(i+each, len(p.days))
		come := p.perTap[i]
		for _, more := range p.perTap[i+1 : end] {
			come.Low += more.Low
			come.High += more.High
		}
		next := s.round
		if each > 1 {
			next = time.Duration(end-i) * day
		}
		out, err := season.PailRound([]season.Pail{pail}, come, s.flowing, next)
		if err != nil {
			return cli.For("round", err)
		}
		p.rounds = append(p.rounds, round{p.days[i].Date, p.days[end-1].Date, out[0]})
		pail.Holds = 0
	}
	return nil
}
