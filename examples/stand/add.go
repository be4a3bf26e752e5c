package main

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// add offers the holes of the plan to the record, to be mended there by hand to what
// was really drilled.
func (p page) add(e *cli.Env, f *cli.Flags) error {
	write := f.Given("write")
	if f.Source("tree-file").Kind == cli.Told || f.Source("hole-file").Kind == cli.Told {
		if write {
			return cli.For("write", errors.New("holes are added to the trees of the folder: leave out -tree-file and -hole-file"))
		}
		return nil
	}
	var rows []folder.Row
	has := columnsOf(f.House())
	chosen := 0 // by the scars
	for _, s := range p.walk() {
		chosen += s.choose
		for _, h := range s.holes {
			if !h.done {
				rows = append(rows, p.record(s, h, has))
			}
		}
	}
	if write && f.Dir() != "" && len(rows) == 0 && chosen > 0 {
		return cli.For("write", fmt.Errorf("nobody knows yet where you choose the %s by the scars: once drilled, write down in %s where", cli.Plural(chosen, "place"), f.House().Shown(folder.HolesFile)))
	}
	if now := time.Now().Year(); write && f.Dir() != "" && len(rows) > 0 && p.year != now && !f.Given("season") {
		// Else a second run would add the holes of a further year.
		return cli.For("write", fmt.Errorf("the plan is for %d, and this is %d: give -season %[1]d if these holes are to be added", p.year, now))
	}
	return p.Add(e, folder.Rows{File: folder.HolesFile, Rows: rows})
}

// columnsOf are those of holes.csv; nil if it is not there.
func columnsOf(h *folder.House) []string {
	in, ok := h.File(folder.HolesFile)
	if !ok {
		return nil
	}
	defer in.Close()
	r, err := records.Open(folder.HolesFile, in)
	if err != nil {
		return nil
	}
	return r.Cells()
}

// record is a hole as holes.csv has it: by the tape, or by its bearing where there
// is no column for the tape.
func (p page) record(s stop, h spot, has []string) (row folder.Row) {
	cell := func(column, text string) {
		for _, name := range has {
			if name == column || strings.HasPrefix(name, column+"_") {
				row = append(row, folder.Cell{Column: column, Text: text})
				return
			}
		}
		if has == nil {
			row = append(row, folder.Cell{Column: column, Text: text})
		}
	}
	hole := p.hole(s.trunk)
	cell("tree", s.name())
	cell("year", strconv.Itoa(p.year))
	n := len(row)
	if cell("along", p.taped(h.along, s.girth())); len(row) == n {
		cell("bearing", h.At.Text(units.Degree, 1))
	}
	cell("height", p.taped(h.Height, math.MaxFloat64))
	const close = 4 // decimals of an inch: 7/16 in is 0.4375
	cell("bit", hole.Bit().Text(units.Inch, close))
	cell("depth", hole.Depth().Text(units.Inch, close))
	return row
}

// taped is a length as the drill sheet has it, but not beyond the girth.
func (p page) taped(l, most units.Length) string {
	step := units.Inch / 8
	if p.given.metric {
		step = units.Millimeter
	}
	n := math.Round(float64(l / step))
	if n*float64(step) > float64(most) {
		n--
	}
	if p.given.metric {
		return (units.Length(n) * step).Text(units.Centimeter, 1)
	}
	return (units.Length(n) * step).Text(units.Inch, 3)
}
