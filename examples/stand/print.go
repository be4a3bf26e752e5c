package main

import (
	"bytes"
	_ "embed"
	"html/template"
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// The drill sheet of the whole stand is one page of HTML to print, without script
// and without anything from elsewhere.
var (
	//go:embed sheet.html.tmpl
	printText     string
	printTemplate = template.Must(template.New("sheet").Parse(printText))
)

// print draws the drill sheet of the whole stand.
func (p page) print() ([]byte, error) {
	var b bytes.Buffer
	type row struct {
		Name, Species, Size, Note string
		Holes                     []hole
		Dots                      []dot
		Alone                     bool
	}
	data := struct {
		Title, Name, Sum, Hole, By string
		Invented                   bool
		Rows                       []row
		Care                       []string
	}{
		Title: p.Title, Name: p.house, Sum: p.verdict(), Hole: p.holeWords(), By: p.given.guideline.ID(), Invented: p.invented, Care: p.Brief.Cautions,
	}
	for _, s := range p.walk() {
		if s.choose > 0 {
			s.note += ", " + p.tape(p.hole(s.trunk).Depth(), cli.Down) + " into the wood"
		}
		data.Rows = append(data.Rows, row{s.name(), s.species(), p.tape(s.girth(), cli.Nearest), s.note, p.drilled(s), s.dots(p.year), s.why != tapped})
	}
	err := printTemplate.Execute(&b, data)
	return b.Bytes(), err
}

// A hole is a spot in words.
type hole struct {
	Letter, Along, Turn, Height, Depth string
	Done                               bool
}

// tape words a length as a ruler has it.
func (p page) tape(l units.Length, to cli.Side) string { return p.In(cli.Eighths(l, to)) }

// holeWords tells what to drill with, and how deep.
func (p page) holeWords() string {
	s := p.given
	words := "Bit " + p.In(p.bit()) + ", " + p.tape(s.depth, cli.Down) + " into the wood"
	if s.bark > 0 {
		return words + ": stop on the bit at " + p.tape(s.hole.DepthWithBark(), cli.Down) + " with the bark."
	}
	return words + ", the bark on top."
}

func (p page) drilled(s stop) (all []hole) {
	for _, h := range s.holes {
		all = append(all, hole{h.letter, p.tape(h.along, cli.Nearest), h.At.Text(units.Degree, 0), p.tape(h.Height, cli.Nearest), p.tape(h.depth, cli.Down), h.done})
	}
	return all
}

// A dot is a hole on the small picture of a trunk, seen from above with the mark
// at the top.
type dot struct {
	X, Y   string
	Letter string // of a hole of this year; empty for last year's
}

// dots are this year's and last year's holes.
func (s stop) dots(year int) (all []dot) {
	at := func(a units.Angle, letter string) {
		const middle, radius = 20, 13
		sin, cos := math.Sincos(a.Degrees() * math.Pi / 180)
		all = append(all, dot{px(middle + radius*sin), px(middle - radius*cos), letter})
	}
	for _, h := range s.record {
		if h.Year == year-1 {
			at(h.At, "")
		}
	}
	for _, h := range s.holes {
		at(h.At, h.letter)
	}
	return all
}
