package finish

import (
	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The boiling points of package boil, with their errors in the name of the
// function that was called here.

func rise(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.TempDiff, error) {
	d, err := boil.RiseOf(s, b, p)
	return d, units.Under(fn, err)
}

func strength(fn string, s sugar.Solute, d units.TempDiff, p units.Pressure) (units.Brix, error) {
	b, err := boil.BrixFromRiseOf(s, d, p)
	return b, units.Under(fn, err)
}

func point(fn string, s sugar.Solute, b units.Brix, p units.Pressure) (units.Temperature, error) {
	t, err := boil.SyrupPointOf(s, b, p)
	return t, units.Under(fn, err)
}
