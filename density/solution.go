package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Solution returns the density of a sucrose solution of the given strength at
// the given temperature, in vacuo, on the [ICUMSA] scale.
//
// Range: 0 to 85 Brix, 0 to 110 C; the source covers 0 to 100 C. Uncertainty:
// 0.1 kg/m3 to 90 C (from memory). Above 90 C the expansion of the polynomial
// flattens, an artifact worth 0.035 Brix at 99 C and 0.075 at 105 C at 66.9
// Brix: see [Extrapolated].
//
// Source: ICUMSA Specification and Standard SPS-4, as reprinted in Bubnik,
// Kadlec, Urban, Bruhns, Sugar Technologists Manual, 8th ed., Bartens 1995, p.
// 164, on the water of [Water]. Check value: 1328.191 kg/m3 at 66.9 Brix and
// 20 C (computed).
//
// Cites icumsa-sps4, bubnik-1995, kell-1975.
func Solution(brix units.Brix, at units.Temperature) (units.Density, error) {
	const fn = "density.Solution"
	c := at.Celsius()
	if err := brixRange.Check(fn, float64(brix)); err != nil {
		return nan[units.Density](), err
	}
	if err := tempRange.Check(fn, c); err != nil {
		return nan[units.Density](), err
	}
	return units.Density(rho(brix.Fraction(), c)), nil
}

// Densities, in kg/m3, that no solution in the range goes beyond: 951 to 1456.
const (
	leastDensity units.Density = 900
	mostDensity  units.Density = 1500
)

// BrixFromDensity returns the sugar content of a solution of the given density
// at the given temperature: the inverse of [Solution].
//
// Range: the densities of 0 to 85 Brix at that temperature; 0 to 110 C.
// Uncertainty: that of [Solution] over its slope, 0.016 Brix at 66.9 and 20 C.
//
// The temperature is never solved for: below about 8 C a thin sap's density
// has two temperatures. Check value: 1328.191 kg/m3 at 20 C is 66.9 Brix
// (computed).
func BrixFromDensity(density units.Density, at units.Temperature) (units.Brix, error) {
	const fn = "density.BrixFromDensity"
	c := at.Celsius()
	if err := tempRange.Check(fn, c); err != nil {
		return nan[units.Brix](), err
	}
	if density >= leastDensity && density <= mostDensity {
		if b, ok := solved(fraction(float64(density), c)); ok {
			return b, nil
		}
	}
	low, high := water(c), rho(maxBrix.Fraction(), c)
	if limit.Holds(float64(density), low, high) { // by a hair
		if float64(density) < high {
			return minBrix, nil
		}
		return maxBrix, nil
	}
	return nan[units.Brix](), &units.RangeError{
		Func: fn, Arg: "density", Value: float64(density), Low: low, High: high, Unit: "kg/m3",
		Hint: "at this temperature water is the least and 85 Brix the most: check the unit, the temperature and whether the figure was weighed in air",
	}
}
