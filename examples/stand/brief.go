package main

import (
	"fmt"
	"math"
	"strconv"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// tally is what the walk comes to.
type tally struct{ trunks, holes, done, choose, short, alone int }

func (st *stand) tally() (n tally) {
	for i := range st.trunks {
		t := &st.trunks[i]
		if t.why != tapped {
			n.alone++
		}
		if t.taps > t.open {
			n.trunks++
		}
		n.holes += len(t.next) + t.choose
		n.choose += t.choose
		n.done += t.open
		n.short += t.short()
	}
	return n
}

// verdict is the stand in a sentence.
func (p page) verdict() string {
	n := p.tally()
	year := ""
	if p.year > 0 {
		year = " in " + strconv.Itoa(p.year)
	}
	rest := "."
	if n.alone > 0 {
		rest = "; leave " + strconv.Itoa(n.alone) + " alone."
	}
	all := cli.Plural(len(p.trunks), "trunk")
	switch {
	case n.holes > 0:
		return fmt.Sprintf("Drill %s in %d of %s%s%s", cli.Plural(n.holes, "hole"), n.trunks, all, year, rest)
	case n.done > 0:
		return fmt.Sprintf("Nothing more to drill%s: %s of %s in the record%s", year, cli.Plural(n.done, "hole"), all, rest)
	case n.short > 0:
		return fmt.Sprintf("Drill none of %s%s: no clear place is left.", all, year)
	}
	return fmt.Sprintf("Drill none of %s%s: leave all alone.", all, year)
}

// brief answers first: the totals, then the drill sheet in walking order.
func (p page) brief(f *cli.Flags) {
	b, n, s := &p.Brief, p.tally(), p.given
	b.Verdict = p.verdict()
	b.Answer("holes", "Holes to drill", cli.Count(n.holes, ""), cli.When(n.choose > 0, strconv.Itoa(n.choose)+" to choose by the scars"))
	b.If(n.done > 0).Answer("done", "In the record", cli.Count(n.done, ""), "mend it to what was drilled")
	b.If(n.short > 0).Answer("short", "No clear place", cli.Count(n.short, ""), "let these rest")
	b.Answer("bit", "Bit", p.bit())
	if s.bark > 0 {
		b.Answer("stop", "Stop on the bit at", cli.Eighths(s.hole.DepthWithBark(), cli.Down), "bark and wood")
	} else {
		b.Answer("depth", "Into the wood", cli.Eighths(s.depth, cli.Down), "the bark comes on top")
	}
	low, high := p.asked.Taps, p.asked.Taps
	for _, other := range p.asked.Others {
		low, high = min(low, other.Taps), max(high, other.Taps)
	}
	b.Answer("guidelines", "Taps by guidelines", cli.Between(cli.Count(low, ""), cli.Count(high, "")), "this is "+strconv.Itoa(p.asked.Taps))
	p.drillList(b)
	p.knownFrom(b, f)
	b.Cautions = append(p.tooWide(),
		"Look up first: dead limbs fall. Helmet, eyes, not alone.",
		"Leave what is small, slow, sick or not surely a maple.",
		"Not below "+p.Degrees(tapping.ColdestDrilling())+". Clean bit, clean spout, no lead.",
		"Ask the owner; the local law comes first.",
	)
	b.Further = append(b.Further, "Turn and tape go clockwise, seen from above, from your mark.", "-full: sizes, guidelines, twenty years. -print sheet.html: this sheet on paper.")
}

// tooWide warns of a bit that no spout fits: the hole leaks, and takes more wood than any
// needs.
func (p page) tooWide() []string {
	widest := tapping.Spouts()[0]
	if p.given.bit <= widest.Bit+units.Millimeter/1000 {
		return nil
	}
	return []string{"This bit is wider than any spout: " + widest.Name + " at most. Is it meant?"}
}

// bit shows the size of the bit as drills are sold, if it is one of those.
func (p page) bit() cli.Value {
	if name := p.given.bitName(); name != "" {
		return cli.Words(name)
	}
	return cli.Length(p.given.bit)
}

// bitName is the name of a bit by its spout; empty if none fits.
func (s *setup) bitName() (name string) {
	for _, spout := range tapping.Spouts() {
		if math.Abs(float64(spout.Bit-s.bit)) < float64(units.Millimeter)/1000 {
			name = spout.Name
		}
	}
	return name
}

// drillList lists every trunk in the order of the file, so that the walk misses
// none.
func (p page) drillList(b *cli.Brief) {
	none := units.Length(math.NaN())
	var rows [][]cli.Value
	add := func(s stop, do string, turn float64, tape, height, depth units.Length) {
		rows = append(rows, []cli.Value{cli.Words(s.name()), cli.Words(do), cli.Eighths(tape, cli.Nearest), cli.Number(turn, 0, "deg"), cli.Eighths(height, cli.Nearest), cli.Eighths(depth, cli.Down)})
	}
	for _, s := range p.walk() {
		for _, h := range s.holes {
			do := "drill " + h.letter
			if h.done {
				do = "noted " + h.letter
			}
			add(s, do, h.At.Degrees(), h.along, h.Height, h.depth)
		}
		do, depth := "", none
		switch {
		case s.why != tapped:
			do = "leave: " + brisk[s.why]
		case s.choose > 0:
			do, depth = "choose "+strconv.Itoa(s.choose), p.hole(s.trunk).Depth()
		case s.short() > 0:
			do = "no place for " + strconv.Itoa(s.short())
		}
		if do != "" {
			add(s, do, math.NaN(), none, none, depth)
		}
	}
	b.List([]cli.Column{{Key: "tree", Head: "tree"}, {Key: "do", Head: "do"}, {Key: "from_mark", Head: "from mark"}, {Key: "turn_deg", Head: "turn"}, {Key: "height", Head: "height"}, {Key: "depth", Head: "into wood"}}, rows)
}

// knownFrom tells where the numbers come from.
func (p page) knownFrom(b *cli.Brief, f *cli.Flags) {
	b.House = f.Invented("print", "map", "svg")
	b.Told(cli.Plural(len(p.trunks), "trunk"))
	b.If(p.holes > 0).Told(cli.Plural(p.holes, "old hole"))
	b.From(f, "guideline", p.given.guideline.ID(), "bit", "the bit", "depth", "the depth")
	unjudged, untold := p.unknown()
	b.If(unjudged > 0).Assumed(cli.Plural(unjudged, "unjudged trunk") + " healthy")
	b.If(untold > 0).Assumed("no growth of " + cli.Plural(untold, "trunk"))
}
