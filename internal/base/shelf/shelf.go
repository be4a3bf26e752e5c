// Package shelf holds what volumes on a label refer to: the temperature of the
// shelf, and the sugar that a solution holds there.
package shelf

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// labelC is the temperature that labels and the volumes of package yield refer to,
// in degrees Celsius: 68 F. Source: 21 CFR 101.7 (from memory); the rules of
// Maine, ch. 117, say the same.
const labelC = 20.0

// Temperature is the temperature of labels.
func Temperature() units.Temperature { return units.Celsius(labelC) }

// MaxBrix is the limit of the density formula.
const MaxBrix = 85.0

// Sugar returns the sugar in a volume of solution of b Brix at 20 C, in
// kg/m3.
func Sugar(fn string, b units.Brix) (float64, error) {
	rho, err := density.Solution(b, Temperature())
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	return float64(rho) * b.Fraction(), nil
}
