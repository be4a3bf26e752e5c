package finish

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// headOf returns the pressure of a meter of liquid of b Brix that boils at a
// temperature, in Pa. Beyond 110 C and 85 Brix, where the density ends, it is
// taken from there: it moves by 3 percent at most.
func headOf(fn string, b units.Brix, at units.Temperature) (float64, error) {
	rho, err := density.Solution(min(b, heatHigh), units.Celsius(min(at.Celsius(), hottestPan)))
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	return float64(rho) * units.StandardGravity, nil
}

// Strengths between which the heat is known, in Brix.
const heatLow, heatHigh = 0.1, 85

// hottestPan is the temperature to which the density of hot syrup is known, in
// degrees Celsius.
const hottestPan = 110.0

// What the rise is uncertain by, as a part of itself: 0.1 K of the 4.199 K at
// 66.9 Brix and 1 atm. See [boil.RiseDoubt] for what stands behind it.
const riseShare = 0.1 / 4.199

const leastMass = 1e-6

const mostMass = 1e9

func nan[Q ~float64]() Q { return Q(math.NaN()) }
