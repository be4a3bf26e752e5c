package yield

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// labelC is the temperature that labels and this package's volumes refer to,
// in degrees Celsius: 68 F. Source: 21 CFR 101.7 (from memory); the rules of
// Maine, ch. 117, say the same.
const labelC = 20.0

// Limits of sugar content, in Brix: those of the density formula.
const (
	minBrix = 0.0
	maxBrix = 85.0
)

// label is the temperature of labels.
func label() units.Temperature { return units.Celsius(labelC) }

func nan[Q ~float64]() Q { return Q(math.NaN()) }

// within checks one argument against its documented range. NaN fails.
func within(fn, arg string, x, low, high float64, unit, hint string) error {
	if x >= low && x <= high {
		return nil
	}
	return &units.RangeError{Func: fn, Arg: arg, Value: x, Low: low, High: high, Unit: unit, Hint: hint}
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
