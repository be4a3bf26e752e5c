package density

import (
	"math"

	"example.org/sapreckoner/units"
)

// Temperature range of the densities of this package, in degrees Celsius. The
// upper end holds the boiling point of syrup in any weather: 66.9 Brix boils at
// 106.5 C under 110 kPa.
const (
	minC = 0.0
	maxC = 110.0
)

// Kell's coefficients, in kg/m3 and powers of degrees Celsius.
const (
	kellA0 = 999.83952
	kellA1 = 16.952577
	kellA2 = -7.9905127e-3
	kellA3 = -4.6241757e-5
	kellA4 = 1.0584601e-7
	kellA5 = -2.8103006e-10
	kellB  = 0.016887236
)

// Water returns the density of air-free water at 1 atm and temperature t, in
// vacuo.
//
// Range: 0 to 110 C (the source reaches 150 C). Below about 8 C two
// temperatures share a density, with the maximum near 4 C. Uncertainty: within
// 0.006 kg/m3 of IAPWS-95 from 0 to 100 C. Outside the range the answer is NaN
// and a [units.RangeError].
//
// Source: Kell, G. S., Journal of Chemical and Engineering Data 20 (1975)
// 97-105. Check value: 998.203 kg/m3 at 20 C (computed).
func Water(t units.Temperature) (units.Density, error) {
	c := t.Celsius()
	if !(c >= minC && c <= maxC) {
		return nan[units.Density](), tempError("density.Water", "temperature", c)
	}
	return units.Density(water(c)), nil
}

// water is Kell's equation, unchecked.
func water(c float64) float64 {
	num := kellA0 + c*(kellA1+c*(kellA2+c*(kellA3+c*(kellA4+c*kellA5))))
	return num / (1 + kellB*c)
}

func nan[Q ~float64]() Q { return Q(math.NaN()) }

func tempError(fn, arg string, c float64) error {
	hint := ""
	switch {
	case c < minC:
		hint = "below 0 C ice may be forming: thaw it and let it mix"
	case c > maxC:
		hint = "let it cool and measure again"
	}
	return &units.RangeError{Func: fn, Arg: arg, Value: c, Low: minC, High: maxC, Unit: "C", Hint: hint}
}
