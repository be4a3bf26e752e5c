package main

import (
	"slices"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// A stage is what keeps a day from bringing the sap of the season.
type stage uint8

const (
	ordinary stage = iota // nothing does
	frozen                // it stays below freezing, and would if all were a degree warmer
	inBloom               // silver maple is in full bloom
)

// freezing is where ice in the wood thaws, and none does below.
var freezing = units.Celsius(0)

// stageDays finds the stage of every day ahead. Where the criterion of the count
// says that a day runs, frost does not gainsay it: the criterion may be a
// person's own.
func (p *plan) stageDays() {
	_, full := season.SilverMapleBloom()
	sum := p.toNow
	for i, d := range p.days {
		sum += p.adds[i]
		at := ordinary
		switch {
		case reached(sum, full):
			at = inBloom
		case p.warmer[i].Max.Compare(freezing) < 0 && !p.rule.Criterion.Met(d):
			at = frozen
		}
		p.stages = append(p.stages, at)
	}
}

// reached reports whether a sum of warmth is enough, but for what rounding takes
// off one that is just so.
func reached(sum, enough season.DegreeDays) bool { return sum+1e-9 >= enough }

// bloomWords words how far the buds are, by the warmth at the end of the days
// ahead.
func (p page) bloomWords() string {
	first, full := season.SilverMapleBloom()
	switch {
	case !reached(p.toEnd, first):
		return "not yet in these days"
	case !reached(p.toEnd, full):
		return "it begins in these days or has begun: sap of trees in bud gives an off flavor"
	}
	return "in full bloom by then: sap of trees in bud gives an off flavor"
}

// bloomDay is the first day ahead with silver maple in full bloom, -1 if there is
// none.
func (p *plan) bloomDay() int { return slices.Index(p.stages, inBloom) }

// seasonWords says when the season is not on in these days, or over.
func (p page) seasonWords() string {
	bloom := p.bloomDay()
	switch {
	case !slices.ContainsFunc(p.stages, func(s stage) bool { return s != frozen }):
		return "not on: all of these days stay frozen"
	case bloom == 0:
		return "over by the bloom of silver maple: pull the spouts"
	case bloom > 0:
		return "over from " + p.days[bloom].Date.Format("Jan 2") + " on, by the bloom of silver maple"
	}
	return ""
}

// runs tells whether a day runs, and what to mind.
func (p page) runs(i int) string {
	words := "no"
	if p.rule.Criterion.Met(p.days[i]) {
		words = "yes"
	}
	switch p.stages[i] {
	case frozen:
		words += ", frozen"
	case inBloom:
		words += ", in bloom"
	}
	return words
}

// stageRemark tells what the words of runs mean.
func (p page) stageRemark() (words string) {
	if slices.Contains(p.stages, frozen) {
		words += "Frozen: the high stays more than " + off + " below freezing, and no sap comes. "
	}
	if slices.Contains(p.stages, inBloom) {
		words += "In bloom: silver maple is in full bloom. A day that runs brings sap of an off flavor, one that does not brings none. "
	}
	return words
}
