package main

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// balance draws the balance of the sugar. The season goes in by the day: sap of
// a day counts as one lot.
func (b *book) balance() (yield.Account, error) {
	g := b.given
	season := yield.Season{
		Taps:          g.Taps,
		SapMeasured:   measured(g.sapGauge, g.sapLimit),
		HeldMeasured:  measured(g.heldGauge, g.heldLimit),
		SyrupMeasured: measured(g.syrupGauge, g.syrupLimit),
	}
	for i := range b.days {
		d := &b.days[i]
		if d.sap.rows > 0 {
			season.Days++
		}
		sap, err := d.sap.lot()
		if err != nil {
			return yield.Account{}, err
		}
		syrup, err := b.drawn(d)
		if err != nil {
			return yield.Account{}, err
		}
		for _, in := range []struct {
			lot sugar.Lot
			to  *[]sugar.Lot
		}{{sap, &season.Sap}, {syrup, &season.Syrup}} {
			if !in.lot.Empty() {
				*in.to = append(*in.to, in.lot)
			}
		}
	}
	before, err := held(g.heldBefore, g.heldBeforeBrix)
	if err != nil {
		return yield.Account{}, cli.For("held-before", err)
	}
	after, err := b.held()
	if err != nil {
		return yield.Account{}, err
	}
	season.HeldBefore, season.HeldAfter = []sugar.Lot{before}, after
	account, err := season.Account()
	if err != nil {
		return account, err
	}
	return account, b.wait(&account)
}

// wait counts as held what the record says still waits for the fire, as it is planned
// for the days ahead: see [folder.House.Waiting]. What waited longer than any source
// lets it may have spoiled. It is known as well as the sap, of which it is a part, so
// that the limits of the loss stay as they are. Without a boil in the record nothing tells
// what waits, and of an earlier season nothing waits any more.
func (b *book) wait(a *yield.Account) error {
	later := func(d folder.Day) bool { return d.Date.Year() > b.year }
	if b.given.heldTold || b.boiled.rows == 0 || slices.ContainsFunc(b.house.Days, later) {
		return nil
	}
	last, _ := b.house.LastDay()
	var waits total
	for _, g := range b.house.Waiting(time.Time{}) {
		if g.Old(last) {
			b.tooOld += g.Left
			continue
		}
		d := g.Day
		if d.Sap = g.Left; math.IsNaN(float64(d.Sugar)) {
			waits.unread += d.Sap
			continue
		}
		lot, column, err := b.given.sap(d)
		if err != nil {
			return b.fail(folder.DaysFile, d.Line, column, err)
		}
		waits.add(lot)
	}
	if err := waits.settle(b.mean, b.given.SapHydrometer); err != nil {
		return err
	}
	// A boil takes of all sap that stands, and a plan the oldest first: no more waits than
	// is left.
	if left := max(0, b.gathered()-b.boiled.sugar-b.thrown.sugar); waits.sugar > left {
		waits.mass *= left / waits.sugar
		waits.sugar = left
	}
	lot, err := waits.lot()
	if err != nil || lot.Empty() {
		return err
	}
	b.waits = waits.sugar
	a.Kept, a.Lost = a.Kept+b.waits, a.Lost-b.waits
	a.LostShare = units.FractionShare(float64(a.Lost / a.SugarIn))
	a.Impossible = -a.Lost > a.Uncertainty
	a.Ratio *= 1 - float64(lot.Volume()/a.Sap)
	return nil
}

// held is the sweet that stands at the end: of the flag, or what stood in the pan when
// the last fire was out.
func (b *book) held() (lots []sugar.Lot, err error) {
	g := b.given
	if b.sweet == nil {
		lot, err := held(g.heldAfter, g.heldAfterBrix)
		return []sugar.Lot{lot}, cli.For("held-after", err)
	}
	areas := b.panAreas()
	for _, s := range b.lastSweet() {
		if s.Compartment > len(areas) {
			return nil, b.fail(folder.PanFile, s.Line, "compartment", fmt.Errorf("the settings tell no area of it: write there %q, or %q", "pan: 2 x 4 ft", "compartments: 2 x 3 ft, 2 x 1 ft"))
		}
		lot, err := held(units.CubicMeters(s.Depth.Meters()*areas[s.Compartment-1].SquareMeters()), s.Brix)
		if err != nil {
			return nil, b.fail(folder.PanFile, s.Line, "brix", err)
		}
		lots = append(lots, lot)
	}
	return lots, nil
}

// lastSweet is what stood in the pan on the last day that tells of it, if nothing was
// boiled after that.
func (b *book) lastSweet() (last []folder.Sweet) {
	boiled := 0
	for i := range b.days {
		if b.days[i].boiled > 0 {
			boiled = i
		}
	}
	for _, s := range b.sweet {
		if s.Date.Year() != b.year || s.Date.YearDay() < boiled {
			continue
		}
		if len(last) > 0 && s.Date.After(last[0].Date) {
			last = nil
		}
		last = append(last, s)
	}
	return last
}

// panAreas are the areas of the compartments that the settings tell, from the sap's
// end.
func (b *book) panAreas() (areas []units.Area) {
	for _, name := range []string{"pan", "compartments"} {
		line, ok := b.house.Settings.Set(name)
		if !ok || len(line.Fills) == 0 {
			continue
		}
		for part := range strings.SplitSeq(line.Fills[0].Text, ",") {
			if a, err := units.ParseArea(strings.TrimSpace(part)); err == nil { // it was read before
				areas = append(areas, a)
			}
		}
	}
	return areas
}

// byBatches reports whether the batches tell what was drawn. Else the days do.
func (b *book) byBatches() bool {
	for i := range b.days {
		if b.days[i].syrup.rows > 0 {
			return true
		}
	}
	return false
}

// drawn is the syrup of a day: of the batches, or where the season has none of the
// days, at the target.
func (b *book) drawn(d *day) (sugar.Lot, error) {
	if b.byBatches() {
		return d.syrup.lot()
	}
	return sugar.NewLot(d.told, b.given.Target, label)
}

// told is the syrup that the days tell of.
func (b *book) told() (all units.Volume) {
	for i := range b.days {
		all += b.days[i].told
	}
	return all
}

// bottled is what the labels say.
func (b *book) bottled() (all units.Volume, count int) {
	for _, s := range b.sizes {
		all += s.label * units.Volume(s.count)
		count += s.count
	}
	return all, count
}

// best is the day with most sap.
func (b *book) best() (at int) {
	for i := range b.days {
		if b.days[i].sap.mass > b.days[at].sap.mass {
			at = i
		}
	}
	return at
}

// learned is what the fire made of its fuel.
func (b *book) learned() (fuel.Learned, error) { return fuel.LearnEfficiency(b.learns...) }

// bySugar returns the sources, the richest first.
func (b *book) bySugar() []string {
	return slices.SortedFunc(maps.Keys(b.sources), func(x, y string) int {
		return cmp.Or(cmp.Compare(b.sources[y].sugar, b.sources[x].sugar), cmp.Compare(x, y))
	})
}
