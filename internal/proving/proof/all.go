package proof

import (
	"slices"

	"example.org/sapreckoner/internal/proving/check"
)

// All returns every claim of the module, in the order of the packages, with what
// its rows do not say.
func All() []check.Claim {
	return filled(slices.Concat(Units(), Density(), SugarWater(), Sugar(), Boil(), BoilHeat(), Fuel(), Pan(), Finish(), Yield(), Packing(), Money(), Tapping(), Season()))
}
