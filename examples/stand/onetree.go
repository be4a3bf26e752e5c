package main

import (
	"fmt"
	"strconv"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
)

// oneSheet is the page of one trunk.
func (st *stand) oneSheet(f *cli.Flags) (page, error) {
	p := page{st, &cli.Sheet{Title: "One tree", Metric: st.given.metric}}
	t, err := st.find(st.given.tree)
	if err == nil {
		p.one(t, f)
	}
	return p, err
}

// one fills the page of one trunk: where to drill it or why not, and the taps that each
// guideline gives it.
func (p page) one(t *trunk, f *cli.Flags) {
	b, s := &p.Brief, p.given
	advice := t.Advise(s.guideline)
	b.Verdict = t.name() + ": " + p.what(t)
	b.Answer("girth", "Girth", cli.Length(t.girth()), t.species(), p.In(cli.Length(t.DBH()))+" through")
	bySize := t.why == tapped || t.why == small || t.why == silent // what is left for another reason gets no number to drill by
	by := s.guideline.ID() + " gives " + taps(advice.Answer)
	if !advice.Covered {
		by = s.guideline.ID() + " says nothing"
	}
	switch {
	case bySize && t.low == t.high:
		b.Answer("guidelines", "Taps by guidelines", cli.Count(t.low, ""), by)
	case bySize:
		b.Answer("guidelines", "Taps by guidelines", cli.Between(cli.Count(t.low, ""), cli.Count(t.high, "")), by)
	}
	for _, h := range p.spots(t) {
		at := "from the mark"
		if h.done {
			at = "noted"
		}
		b.Answer("hole_"+h.letter, "Hole "+h.letter, cli.Eighths(h.along, cli.Nearest), at, p.In(cli.Number(h.At.Degrees(), 0, "deg"))+" round",
			p.In(cli.Eighths(h.Height, cli.Nearest))+" up", p.In(cli.Eighths(h.depth, cli.Down))+" deep")
	}
	b.Answer("record", "Old holes", cli.Count(len(t.record), ""))
	var rows [][]cli.Value
	for _, a := range append([]tapping.Answer{advice.Answer}, advice.Others...) {
		rows = append(rows, []cli.Value{cli.Words(a.Guideline.ID()), cli.Words(taps(a))})
	}
	b.If(bySize).List([]cli.Column{{Key: "guideline", Head: "guideline"}, {Key: "taps", Head: "taps"}}, rows)
	b.House = f.Invented("print", "map", "svg")
	b.Told(t.name())
	b.From(f, "guideline", s.guideline.ID(), "bit", "the bit", "depth", "the depth")
	b.Cautions = append(p.tooWide(),
		"Look up first: dead limbs fall. Helmet, eyes, not alone.",
		"Not below "+p.Degrees(tapping.ColdestDrilling())+". Clean bit, clean spout, no lead.",
		"Ask the owner; the local law comes first.",
	)
	b.Further = append(b.Further, "Without "+t.name()+": the whole stand.", "-map "+t.name()+" -svg trunk.svg draws it.")
	p.Part("notes", "What to look at").Item(advice.Notes...)
}

// what is what to do at a trunk.
func (p page) what(t *trunk) string {
	switch n := len(t.next); {
	case t.why != tapped:
		return "leave it alone: " + reasons[t.why] + "."
	case t.choose > 0:
		return fmt.Sprintf("choose %s by the scars: no old hole is on record.", cli.Plural(t.choose, "place"))
	case n > 0 && t.short() > 0:
		return fmt.Sprintf("drill %s; for %d more no clear place is left.", cli.Plural(n, "hole"), t.short())
	case n > 0:
		return fmt.Sprintf("drill %s in %s, clear of the old ones.", cli.Plural(n, "hole"), strconv.Itoa(p.year))
	case t.short() > 0:
		return "let it rest: no clear place is left."
	}
	return "its holes are drilled."
}

// taps words the count of a guideline.
func taps(a tapping.Answer) string {
	if !a.Covered {
		return "nothing said"
	}
	return strconv.Itoa(a.Taps)
}
