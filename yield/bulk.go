package yield

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A Repacking is what became of a lot between bulk and jars.
type Repacking struct {
	WaterLost units.Mass // by heating again
	Lost      units.Mass // syrup that is missing beyond it, at the strength packed; below 0 if more came out than was in
}

// Repacked compares a lot as it was put by in bulk with what came out to be
// packed: sugar that is missing stuck to drum, pump and filter, and the rest of
// the difference is water.
//
// Syrup heated again darkens and may throw niter: see [Books].
//
// Range: both lots with 1 mg to 1e9 kg of sugar in them.
func Repacked(held, packed sugar.Lot) (Repacking, error) {
	const fn = "yield.Repacked"
	if err := limit.InAs(fn, "held", "sugar held", held.Sugar().Kilograms(), leastMass, mostMass, "kg", "the lot as it was put by"); err != nil {
		return Repacking{}, err
	}
	if err := limit.InAs(fn, "packed", "sugar packed", packed.Sugar().Kilograms(), leastMass, mostMass, "kg", "the lot as it is packed"); err != nil {
		return Repacking{}, err
	}
	missing := held.Sugar() - packed.Sugar()
	lost := packed.Brix().Of(missing)
	return Repacking{WaterLost: held.Mass() - packed.Mass() - lost, Lost: lost}, nil
}
