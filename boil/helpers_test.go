package boil_test

import (
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// A kettle on a block arch, invented.
func kettle() pan.Rig {
	return pan.Rig{
		Compartments: []pan.Compartment{{
			Area: 6 * units.SquareFoot, Depth: 8 * units.Inch, SafeDepth: 0.1 * units.Inch,
		}},
		Heat: 25 * units.Kilowatt,
		Draw: pan.DrawOff{At: 66.0},
	}
}
