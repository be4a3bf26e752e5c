package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// sweet is what the record says stands in the pan from the last fire.
type sweet struct {
	sugar.Lot // all of it; empty if nothing stands there
	in        []pan.Liquid
	since     time.Time
	night     night // the coldest since
}

// stands words since when sweet stands in the pan.
func stands(since time.Time) string { return since.Format("Jan 2") }

// standing reads the sweet in the pan: no fire has burned under it since. It counts
// beside sap of the record, and not beside sap that was told.
func (s *setup) standing(f *cli.Flags) (w sweet, err error) {
	h := f.House()
	areas := []units.Area(s.compartments)
	if len(areas) == 0 {
		areas = []units.Area{s.pan.Area}
	}
	w.in = make([]pan.Liquid, len(areas))
	var all []sugar.Lot
	for _, row := range h.Left(s.today(h)) {
		line := func(err error) error { return fmt.Errorf("%s:%d: %w", h.Shown(folder.PanFile), row.Line, err) }
		if row.Compartment > len(areas) {
			return w, line(fmt.Errorf("no. %d: the pan has %d", row.Compartment, len(areas)))
		}
		if !(row.Depth > 0) {
			continue // drained
		}
		lot, err := sugar.NewLot(areas[row.Compartment-1].Volume(row.Depth), row.Brix, s.sapTemp)
		if err != nil {
			return w, line(err)
		}
		all = append(all, lot)
		w.in[row.Compartment-1] = pan.Liquid{Sugar: lot.Sugar(), Water: lot.Mass() - lot.Sugar(), Temperature: s.sapTemp}
		w.since = row.Date
	}
	if len(all) == 0 {
		return w, nil
	}
	if w.Lot, err = sugar.Blend(all...); err != nil {
		return w, err
	}
	return w, w.cool(s, f)
}

// syrup is the number of the compartment that holds syrup, within what a hydrometer
// tells; 0 if none does.
func (w *sweet) syrup(target units.Brix) int {
	const near = 0.5
	for i, l := range w.in {
		if l.Brix() >= target-near {
			return i + 1
		}
	}
	return 0
}

// sweetRow tells of it.
func (p page) sweetRow(part *cli.Part) {
	if p.sweet.Mass() > 0 {
		part.Row("sweet", "Sweet in the pan", cli.Volume(p.sweet.Volume()), p.sweet.Brix().Text(1)+", since "+stands(p.sweet.since)+": boil it before any sap, it spoils first")
		p.nightRow(part, p.sweet.night)
	}
}
