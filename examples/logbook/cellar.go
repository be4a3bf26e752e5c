package main

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// A cellar follows the batches of all years into jars and other batches.
type cellar struct {
	*setup
	house *folder.House
	yield.Cellar
	books *yield.Books
	jars  map[string]folder.Jars // by the name of the run
	still map[string]string      // vessel by the name of the run that stands for what is left in it
	brix  map[string]units.Brix  // of the batches as drawn
	moldy map[string]bool
	where map[string]place // where each move stands in the folder, by what it takes from and puts into
}

// A place is a line of a file.
type place struct {
	file string
	line int
}

// openCellar reads batches, blends and bottles. On one day syrup is drawn first, then
// poured, then bottled.
func (s *setup) openCellar(h *folder.House) (*cellar, error) {
	c := &cellar{setup: s, house: h, jars: map[string]folder.Jars{}, still: map[string]string{}, brix: map[string]units.Brix{}, moldy: map[string]bool{}, where: map[string]place{}}
	moves, err := c.moves()
	if err != nil {
		return nil, err
	}
	if len(moves) == 0 {
		return nil, fmt.Errorf("%s: no batch yet: write down what is drawn, a name for each", h.Shown(folder.BatchesFile))
	}
	if c.Cellar, c.books, err = yield.KeepCellar(moves); err != nil {
		return nil, c.told(err)
	}
	// What is left counts as one more run of each vessel; moldy syrup is thrown out.
	const crumb = units.Gram
	for _, v := range c.Held {
		if v.Stage.Syrup < crumb {
			continue
		}
		m := yield.Move{Kind: yield.Bottled, From: v.Vessel, Into: "left in " + v.Vessel, Mass: v.Stage.Syrup}
		if c.moldy[v.Vessel] {
			m.Kind, m.Into = yield.Thrown, ""
		} else {
			c.still[m.Into] = v.Vessel
		}
		moves = append(moves, m)
	}
	c.Cellar, c.books, err = yield.KeepCellar(moves)
	return c, c.told(err)
}

// moves lists what happened to the syrup, in order.
func (c *cellar) moves() (moves []yield.Move, err error) {
	var wrong []error
	add := func(file string, line int, column string, err error, m yield.Move) {
		if err != nil {
			wrong = append(wrong, failed(c.house, file, line, column, err))
			return
		}
		c.where[m.From+"\x00"+m.Into] = place{file, line}
		moves = append(moves, m)
	}
	for _, r := range c.house.Batches {
		lot, column, err := c.syrup(r)
		c.brix[r.Name], c.moldy[r.Name] = lot.Brix(), r.Mold
		add(folder.BatchesFile, r.Line, column, err, yield.Move{Kind: yield.Drawn, Day: r.Date, Into: r.Name, Mass: lot.Mass(), Brix: lot.Brix()})
	}
	for _, r := range c.house.Blends {
		from, into := named(c.house, r.From), named(c.house, r.Into)
		mass, err := c.mass(from, r.Volume)
		add(folder.BlendsFile, r.Line, "volume", err, yield.Move{Kind: yield.Poured, Day: r.Date, From: from, Into: into, Mass: mass})
	}
	for _, r := range c.house.Bottled {
		run := "line " + strconv.Itoa(r.Line) + " of " + folder.BottledFile
		mass, err := c.mass(r.Batch, r.Size*units.Volume(r.Count))
		c.jars[run] = r
		add(folder.BottledFile, r.Line, "size", err, yield.Move{Kind: yield.Bottled, Day: r.Date, From: r.Batch, Into: run, Mass: mass})
	}
	slices.SortStableFunc(moves, func(a, b yield.Move) int { return cmp.Or(a.Day.Compare(b.Day), cmp.Compare(a.Kind, b.Kind)) })
	return moves, errors.Join(wrong...)
}

// named returns a batch by the name that it calls itself.
func named(h *folder.House, name string) string {
	if b, ok := h.Batch(name); ok {
		return b.Name
	}
	return name
}

// mass is that of a volume at the label temperature, at the strength that its batch
// had when it was drawn.
func (c *cellar) mass(batch string, v units.Volume) (units.Mass, error) {
	b, ok := c.brix[batch]
	if !ok || b == 0 {
		b = c.Target
	}
	rho, err := density.Solution(b, label)
	return rho.Mass(v), err
}

// told says where in the folder what cannot be traced stands.
func (c *cellar) told(err error) error {
	var e *yield.TraceError
	if !errors.As(err, &e) {
		return err
	}
	p, ok := c.where[e.ID+"\x00"+e.Ref]
	if !ok {
		return err
	}
	return failed(c.house, p.file, p.line, "", fmt.Errorf("no syrup of %q on that day: check the name and the dates", e.ID))
}
