package yield

import (
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Weighed returns the lot in a drum or a can that was weighed full and empty on a
// scale in air: its true mass is 0.08 to 0.1 percent more than the scale shows.
//
// Arguments: gross and tare as the scale shows them, strength and temperature of
// the syrup. Range: tare from 0 to 1e6 kg, gross from tare to 1e6 kg, 0 to 85
// Brix, 0 to 110 C. Uncertainty: that of both weighings.
//
// Check value: a US gallon of 66.9 Brix at 20 C weighs 11.0759 lb in air and has
// a mass of 11.0843 lb (computed).
func Weighed(gross, tare units.Mass, brix units.Brix, at units.Temperature) (sugar.Lot, error) {
	const fn = "yield.Weighed"
	if err := limit.InAs(fn, "tare", "empty weight", tare.Kilograms(), 0, heaviestDrum, "kg", "weigh the drum empty and clean"); err != nil {
		return sugar.Lot{}, err
	}
	if err := limit.InAs(fn, "gross", "full weight", gross.Kilograms(), tare.Kilograms(), heaviestDrum, "kg", "a full drum weighs no less than an empty one"); err != nil {
		return sugar.Lot{}, err
	}
	rho, err := density.Solution(brix, at)
	if err != nil {
		return sugar.Lot{}, units.Under(fn, err)
	}
	lot, err := sugar.NewLotByMass(rho.Mass((gross - tare).Volume(density.InAir(rho))), brix, at)
	return lot, units.Under(fn, err)
}

// heaviestDrum catches a wrong unit, in kg.
const heaviestDrum = 1e6
