package yield

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/units"
)

// labelC is the temperature that labels and this package's volumes refer to,
// in degrees Celsius: 68 F. Source: 21 CFR 101.7 (from memory); the rules of
// Maine, ch. 117, say the same.
const labelC = 20.0

// maxBrix is the limit of the density formula.
const maxBrix = 85.0

// Limits of masses: a crumb, and what catches a wrong unit, in kg.
const (
	leastMass = 1e-6
	mostMass  = 1e9
)

// label is the temperature of labels.
func label() units.Temperature { return units.Celsius(labelC) }

func nan[Q ~float64]() Q { return Q(math.NaN()) }

// within checks one argument against its documented range. NaN fails.
func within(fn, arg string, x, low, high float64, unit, hint string) error {
	return limit.Within(fn, arg, x, low, high, 1, unit, hint)
}

// withinLiters is within for a container, a lot or a tank, told in liters.
func withinLiters(fn, arg string, v, low, high units.Volume, hint string) error {
	return limit.Within(fn, arg, v, low, high, units.Liter, "L", hint)
}

// withinItem is within for a field of an entry of a list. The name of the entry
// is made only when it is needed.
func withinItem(fn, list string, i int, field string, x, low, high float64, unit, hint string) error {
	if x >= low && x <= high {
		return nil
	}
	return within(fn, item(list, i, field), x, low, high, unit, hint)
}

// sugarDensity returns the sugar in a volume of solution of b Brix at 20 C, in
// kg/m3.
func sugarDensity(fn string, b units.Brix) (float64, error) {
	rho, err := density.Solution(b, label())
	if err != nil {
		return math.NaN(), units.Under(fn, err)
	}
	return float64(rho) * b.Fraction(), nil
}
