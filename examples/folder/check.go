package main

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
)

// check tells what the folder holds. What could not be read was told before.
func check(e *cli.Env, f *cli.Flags, metric bool) error {
	h := f.House()
	if g, ok := h.Settings.Set("guideline"); ok {
		if _, err := tapping.GuidelineByID(g.Value); err != nil {
			return fmt.Errorf("%s: guideline: %w", h.Shown(g.Place()), err)
		}
	}
	if err := trees(f); err != nil {
		return err
	}
	lessons, remarks := h.Learned()
	s := &cli.Sheet{Title: "The folder", Metric: metric}
	b := &s.Brief
	switch {
	case len(remarks) > 0:
		b.Verdict = "All of the folder can be read, and " + cli.Plural(len(remarks), "row looks", "rows look") + " wrong."
	case h.Season() == 0:
		b.Verdict = "All of the folder can be read, and no day is written down yet."
	default:
		b.Verdict = "All of the folder can be read."
	}
	const few = 2
	if unread := h.Unread(); len(unread) > 0 { // all are told by name on the way
		b.Verdict = strings.Replace(b.Verdict, "All of the folder can be read", "What is read of the folder is whole, but "+cli.Plural(len(unread), "file is", "files are")+" not read", 1)
		for _, note := range unread[:min(len(unread), few)] {
			b.Cautions = append(b.Cautions, note+".")
		}
	}
	for _, note := range h.Turned() {
		b.Cautions = append(b.Cautions, note+".")
	}
	b.Cautions = append(b.Cautions, h.Doubts()...)
	if f.Dir() == "" {
		b.House = "An invented sugarhouse: give your own with -dir."
	}
	b.Answer("settings", "Settings", cli.Count(len(h.Settings.Lines()), "set"))
	if h.Season() != 0 {
		years := map[int]bool{}
		for _, d := range h.Days {
			years[d.Date.Year()] = true
		}
		b.Answer("season", "Season", cli.Words(strconv.Itoa(h.Season())))
		b.Answer("days", "Rows of days", cli.Count(len(h.Days), "in "+cli.Plural(len(years), "year")))
		b.Answer("batches", "Batches", cli.Count(len(h.Batches), "and "+cli.Plural(len(h.Bottled), "row of jars", "rows of jars")))
	}
	var rows [][]cli.Value
	for _, l := range lessons {
		rows = append(rows, []cli.Value{cli.Words(l.Name), cli.Words(l.Value), cli.Words(taught[l.Name] + l.From)})
	}
	b.If(len(rows) > 0).List([]cli.Column{{Key: "learned", Head: "learned"}, {Key: "value", Head: "value"}, {Key: "from", Head: "from"}}, rows)
	b.Cautions = append(b.Cautions, remarks[:min(len(remarks), few)]...)
	if more := len(remarks) - few; more > 0 {
		b.Cautions = append(b.Cautions, cli.Plural(more, "row more", "rows more")+" behind -full.")
	}
	b.Cautions = append(b.Cautions, "What was learned holds for the pan, fire and trees of the record: where you change one, say the figure yourself.")
	b.Further = []string{"-full lists the settings and what each is for."}
	settings(s, f)
	if len(remarks) > 0 {
		s.Part("look", "Rows to look at").Remark(remarks...)
	}
	return s.Show(e)
}

// taught tells how a figure is taken from what it was learned from.
var taught = map[string]string{"boils off": "middle of ", "efficiency": "all wood of ", "sugar": "middle of ", "best day": "most of "}

// settings lists what is set and the programs whose flags it fills.
func settings(s *cli.Sheet, f *cli.Flags) {
	var rows [][]cli.Value
	for _, l := range f.House().Settings.Lines() {
		var by []string
		for _, fill := range l.Fills {
			if program := cmp.Or(fill.Program, "all that ask"); !slices.Contains(by, program) {
				by = append(by, program)
			}
		}
		rows = append(rows, []cli.Value{cli.Words(l.Name), cli.Words(l.Value), cli.Words(strings.Join(by, ", "))})
	}
	part := s.Part("settings", "Settings")
	part.Table("settings", []cli.Column{{Key: "setting", Head: "setting"}, {Key: "value", Head: "value"}, {Key: "for", Head: "for"}}, rows)
}
