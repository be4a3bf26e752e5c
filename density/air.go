package density

import "example.org/sapreckoner/units"

// Conventional values of weighing in air, in kg/m3: air of 1.2 against weights
// of 8000. Source: OIML D 28 (2004), conventional value of the result of
// weighing in air (from memory).
const (
	airDensity    = 1.2
	weightDensity = 8000.0
)

// InAir returns the apparent density of a liquid of the given true density:
// what a scale in air makes of it, about 0.08 percent less at syrup. It is the
// conventional (d - 1.2)/(1 - 1.2/8000) kg/m3 of air at 1.2 and weights at 8000
// kg/m3.
//
// Uncertainty: the air of a day differs by 5 percent, 0.06 kg/m3. Check value:
// a US gallon of 66.9 Brix at 20 C weighs 11.0759 lb in air and 11.0843 in
// vacuo (computed).
//
// Cites oiml-d28.
func InAir(density units.Density) units.Density {
	return (density - airDensity) / (1 - airDensity/weightDensity)
}

// FromAir returns the true density of a liquid that weighs as given in air: the
// inverse of [InAir].
func FromAir(density units.Density) units.Density {
	return density*(1-airDensity/weightDensity) + airDensity
}
