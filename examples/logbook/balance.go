package main

import (
	"cmp"
	"maps"
	"slices"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/yield"
)

// balance draws the balance of the sugar. The season goes in by the day: sap of
// a day counts as one lot.
func (b *book) balance() (yield.Account, error) {
	g := b.given
	season := yield.Season{
		Taps:          g.taps,
		SapMeasured:   measured(g.sapGauge, g.sapLimit),
		HeldMeasured:  measured(g.heldGauge, g.heldLimit),
		SyrupMeasured: measured(g.syrupGauge, g.syrupLimit),
	}
	for i := range b.days {
		d := &b.days[i]
		if d.sap.rows > 0 {
			season.Days++
		}
		for _, in := range []struct {
			of *total
			to *[]sugar.Lot
		}{{&d.sap, &season.Sap}, {&d.syrup, &season.Syrup}} {
			lot, err := in.of.lot()
			if err != nil {
				return yield.Account{}, err
			}
			if !lot.Empty() {
				*in.to = append(*in.to, lot)
			}
		}
	}
	before, err := held(g.heldBefore, g.heldBeforeBrix)
	if err != nil {
		return yield.Account{}, cli.For("held-before", err)
	}
	after, err := held(g.heldAfter, g.heldAfterBrix)
	if err != nil {
		return yield.Account{}, cli.For("held-after", err)
	}
	season.HeldBefore, season.HeldAfter = []sugar.Lot{before}, []sugar.Lot{after}
	return season.Account()
}

// An efficiency is what was learned on one fuel.
type efficiency struct {
	burnt
	fuel.Learned
}

// efficiencies learns from the boils on each fuel.
func (b *book) efficiencies() (all []efficiency, err error) {
	for burned, boils := range b.learns {
		learned, err := fuel.LearnEfficiency(boils...)
		if err != nil {
			return nil, err
		}
		all = append(all, efficiency{burned, learned})
	}
	slices.SortFunc(all, func(x, y efficiency) int {
		return cmp.Or(cmp.Compare(x.fuel, y.fuel), cmp.Compare(x.of, y.of))
	})
	return all, nil
}

// bySugar returns the sources, the richest first.
func (b *book) bySugar() []string {
	return slices.SortedFunc(maps.Keys(b.sources), func(x, y string) int {
		return cmp.Or(cmp.Compare(b.sources[y].sugar, b.sources[x].sugar), cmp.Compare(x, y))
	})
}

// stocks returns the kinds of fuel in order.
func (b *book) stocks() []stock {
	return slices.SortedFunc(maps.Keys(b.laid), func(x, y stock) int {
		if c := cmp.Compare(x.kind, y.kind); c != 0 || x.weighed == y.weighed {
			return c
		}
		if x.weighed {
			return 1
		}
		return -1
	})
}
