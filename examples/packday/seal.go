package main

import (
	"math"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// A seal is whether a container is still hot enough to seal, and how warm its
// empties must be if it is not.
type seal struct {
	warmed units.Temperature // the syrup once the container has warmed; NaN if the empty weight is not known
	warm   units.Temperature // the empties, to stand at the least heat; NaN if they are warm enough, or if that alone does not do
}

func (s seal) known() bool { return !math.IsNaN(s.warmed.Celsius()) }

// cold reports whether the container may not seal as it is filled. A hair of
// rounding must not fail 180 F.
func (s seal) cold() bool { return s.warmed.Celsius() < packing.CappingLeast().Celsius()-1e-9 }

// seal weighs the heat of the syrup against that of a container.
func (d *day) seal(c packing.Container) (s seal, err error) {
	unknown := units.Celsius(math.NaN())
	s = seal{unknown, unknown}
	if c.Mass <= 0 {
		return s, nil
	}
	if s.warmed, err = c.AfterFilling(d.pack.Brix(), d.given.packAt, d.given.wall); err != nil {
		return s, err
	}
	if s.cold() {
		if s.warm, err = c.WarmTo(d.pack.Brix(), d.given.packAt, packing.CappingLeast()); err != nil {
			s.warm = unknown // the syrup itself is too cool
		}
	}
	return s, nil
}
