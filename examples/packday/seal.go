package main

import (
	"math"

	"example.org/sapreckoner/internal/numeric"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// A seal is whether a container is still hot enough when it is capped, and what
// to do if it is not.
type seal struct {
	at   units.Temperature // at capping; NaN if the empty weight is not known
	pour units.Temperature // to cap at the least heat, with the empties as they are; NaN if syrup does not get so hot
	warm units.Temperature // the empties, to do the same as hot as it is poured; NaN if they are warm enough, or if that alone does not do
}

func (s seal) known() bool { return !math.IsNaN(s.at.Celsius()) }

// cold reports whether the container may not seal as it is filled. A hair of
// rounding must not fail 180 F.
func (s seal) cold() bool { return s.at.Celsius() < yield.CappingLeast().Celsius()-1e-9 }

// seal weighs the heat of the syrup against that of a container.
func (d *day) seal(c yield.Container) (seal, error) {
	unknown := units.Celsius(math.NaN())
	s := seal{unknown, unknown, unknown}
	if c.Mass <= 0 {
		return s, nil
	}
	brix, least := d.pack.Brix(), yield.CappingLeast()
	var err error
	if s.at, err = c.AfterFilling(brix, d.given.packAt, d.given.wall); err != nil {
		return s, err
	}
	if s.pour, err = c.FillAt(brix, least, d.given.wall); err != nil {
		s.pour = unknown
	}
	if s.cold() {
		over := func(wall float64) float64 {
			at, err := c.AfterFilling(brix, d.given.packAt, units.Celsius(wall))
			if err != nil {
				return math.NaN()
			}
			return at.Celsius() - least.Celsius()
		}
		const hundredth = 0.01
		if wall, ok := numeric.Root(over, d.given.wall.Celsius(), least.Celsius(), hundredth); ok {
			s.warm = units.Celsius(wall)
		}
	}
	return s, nil
}
