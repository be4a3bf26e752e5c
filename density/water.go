package density

import (
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/units"
)

// Water returns the density of air-free water at 1 atm and the given
// temperature, in vacuo.
//
// Range: 0 to 110 C (the source reaches 150 C). Below about 8 C two
// temperatures share a density, with the maximum near 4 C. Uncertainty: within
// 0.006 kg/m3 of IAPWS-95 from 0 to 100 C.
//
// Source: Kell, G. S., Journal of Chemical and Engineering Data 20 (1975)
// 97-105. Check value: 998.203 kg/m3 at 20 C (computed).
//
// Cites kell-1975.
func Water(at units.Temperature) (units.Density, error) {
	c := at.Celsius()
	if err := tempRange.Check("density.Water", c); err != nil {
		return nan[units.Density](), err
	}
	return units.Density(water(c)), nil
}

// water is Kell's equation, unchecked.
func water(c float64) float64 {
	num := coef.KellA0 + c*(coef.KellA1+c*(coef.KellA2+c*(coef.KellA3+c*(coef.KellA4+c*coef.KellA5))))
	return num / (1 + coef.KellB*c)
}

// waterSlope is the change of Kell's equation with temperature.
func waterSlope(c float64) float64 {
	num := coef.KellA1 + c*(2*coef.KellA2+c*(3*coef.KellA3+c*(4*coef.KellA4+c*5*coef.KellA5)))
	return (num - coef.KellB*water(c)) / (1 + coef.KellB*c)
}
