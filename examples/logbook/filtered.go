package main

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"example.org/sapreckoner/units"
)

// nearlyAll is the part of a batch beyond which it counts as bottled: the rest was kept
// by the filter, or is the last of the can. Beyond mostKept something is left to bottle,
// though it is little of a drum. Bounds of our own: of a batch with more left than this
// nobody knows whether it is bottled yet.
const (
	nearlyAll = 0.9
	mostKept  = units.USGallon / 2
)

// left is what the record leaves of a batch: drawn and poured in, less what was bottled
// and poured out.
func (l *packed) left() units.Volume {
	lot, err := l.drawn.lot()
	if err != nil {
		return 0
	}
	return lot.Volume() + l.poured - l.volume
}

// filtered is what lacks of a batch that is bottled, and 0 of one that is not, that is
// moldy, or whose labels say more than was drawn.
func (l *packed) filtered() units.Volume {
	had := l.left() + l.volume
	if lacks := l.left(); l.volume > 0 && !l.moldy && lacks > 0 && lacks <= mostKept && float64(lacks) <= (1-nearlyAll)*float64(had) {
		return lacks
	}
	return 0
}

// filteredOff is what all bottled batches lack, and the sugar in it.
func (b *book) filteredOff() (volume units.Volume, sugar units.Mass) {
	for _, name := range slices.Sorted(maps.Keys(b.lots)) { // sums do not hang on the order
		l := b.lots[name]
		if lot, err := l.drawn.lot(); err == nil && !lot.Empty() {
			v := l.filtered()
			volume, sugar = volume+v, sugar+lot.Sugar()*units.Mass(v/lot.Volume())
		}
	}
	return volume, sugar
}

// spoiled is what stands in moldy batches, and the sugar in it: nobody packs it any more.
// Jars that were filled of them count as bottled, and the page says to get them back.
func (b *book) spoiled() (volume units.Volume, sugar units.Mass) {
	for _, name := range slices.Sorted(maps.Keys(b.lots)) {
		l := b.lots[name]
		if left := l.left(); l.moldy && left > 0 {
			volume, sugar = volume+left, sugar+b.sweetIn(l, left)
		}
	}
	return volume, sugar
}

// moldyOnes names the moldy batches of which jars were filled, and those in which such
// syrup stands though nobody marked them.
func (b *book) moldyOnes() (jars, cans []string) {
	for _, name := range slices.Sorted(maps.Keys(b.lots)) {
		l := b.lots[name]
		if l.moldy && l.volume > 0 {
			jars = append(jars, name)
		}
		if l.moldy && l.left() > 0 && !b.marked(name) {
			cans = append(cans, name)
		}
	}
	return jars, cans
}

// marked reports whether a batch was itself marked moldy.
func (b *book) marked(name string) bool {
	own, ok := b.house.Batch(name)
	return ok && own.Mold
}

// few lists names, or counts them where they are many.
func few(names []string) string {
	if len(names) > 3 {
		return fmt.Sprintf("%d batches", len(names))
	}
	return strings.Join(names, ", ")
}

// sweetIn is the sugar in a part of a batch, at the strength that was drawn.
func (b *book) sweetIn(l *packed, v units.Volume) units.Mass {
	lot, err := l.drawn.lot()
	if err != nil || lot.Empty() {
		lot, err = held(units.Liter, b.given.Target)
	}
	if err != nil { // what is read was checked
		return 0
	}
	return lot.Sugar() * units.Mass(v/lot.Volume())
}
