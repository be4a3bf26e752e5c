package main

import (
	"maps"
	"slices"

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
