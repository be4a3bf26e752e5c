package density

import (
	"math"

	"example.org/sapreckoner/units"
)

// Range of sugar content, in Brix.
const (
	minBrix units.Brix = 0
	maxBrix units.Brix = 85
)

// Temperature range of the densities of this package, in degrees Celsius. The
// upper end holds the boiling point of syrup in any weather: 66.9 Brix boils at
// 106.5 C under 110 kPa.
const (
	minC = 0.0
	maxC = 110.0
)

// rounding is how far, in mass fraction, an inverse may land outside its range
// when the forward formula was evaluated at the limit.
const rounding = 1e-12

func nan[Q ~float64]() Q { return Q(math.NaN()) }

// toBrix turns a mass fraction into Brix.
func toBrix(w float64) units.Brix { return units.Brix(100 * w) }

// solved turns a solved mass fraction into Brix and tells whether it lies in
// the range.
func solved(w float64) (units.Brix, bool) {
	if !(w >= minBrix.Fraction()-rounding && w <= maxBrix.Fraction()+rounding) {
		return nan[units.Brix](), false
	}
	return min(max(toBrix(w), minBrix), maxBrix), true
}

// checkBrix guards a sugar content.
func checkBrix(fn string, b units.Brix) error {
	if b >= minBrix && b <= maxBrix {
		return nil
	}
	return brixError(fn, b)
}

func brixError(fn string, b units.Brix) error {
	hint := ""
	switch {
	case b < minBrix:
		hint = "less than no sugar: check the instrument in plain water"
	case b > maxBrix:
		hint = "beyond 85 Brix the liquid sets as candy: go by its boiling temperature"
	}
	return &units.RangeError{Func: fn, Arg: "sugar content", Value: float64(b), Low: float64(minBrix), High: float64(maxBrix), Unit: "Brix", Hint: hint}
}

// checkTemp guards a temperature of liquid.
func checkTemp(fn string, c float64) error {
	if c >= minC && c <= maxC {
		return nil
	}
	return tempError(fn, c)
}

func tempError(fn string, c float64) error {
	hint := ""
	switch {
	case c < minC:
		hint = "below 0 C ice may be forming: thaw it and let it mix"
	case c > maxC:
		hint = "let it cool and measure again"
	}
	return &units.RangeError{Func: fn, Arg: "temperature", Value: c, Low: minC, High: maxC, Unit: "C", Hint: hint}
}
