package boil

import (
	"math"

	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Critical point of water.
const (
	criticalK   = 647.096 // K
	criticalPa  = 22.064e6
	criticalRho = 322.0 // kg/m3
)

// The saturation equations of IAPWS SR1-86.
var (
	vaporPressure = coef.VaporPressure()
	liquidDensity = coef.LiquidDensity()
	vaporDensity  = coef.VaporDensity()
)

// What the latent heat may be asked for.
var latentTemp = limit.Range{Arg: "at", What: "boiling point", Low: 0, High: 140, Unit: "C",
	Below: "ice does not boil: check the thermometer",
	Above: "hotter than any syrup boils: check Fahrenheit against Celsius"}

// LatentHeat returns the heat that turns water into steam at the same
// temperature. Boiling water off sap and syrup takes it at their
// boiling point; the heat of concentrating the sugar is not in it and is small.
//
// Range: 0 to 140 C. Uncertainty: within 0.015 percent of IAPWS-IF97 from 0 to
// 105 C, 0.02 percent to 140 C.
//
// Source: IAPWS SR1-86(1992), saturation equations: the gain of specific volume
// times T dp/dT. Check value: 2256.67 kJ/kg at the boiling point of 1 atm
// (computed).
//
// Cites iapws-sr1-86.
func LatentHeat(at units.Temperature) (units.SpecificEnergy, error) {
	if err := latentTemp.Check("boil.LatentHeat", at.Celsius()); err != nil {
		return units.SpecificEnergy(math.NaN()), err
	}
	k := at.Kelvin()
	tau := 1 - k/criticalK
	root := math.Cbrt(math.Sqrt(tau))
	liquid, _ := sum(&liquidDensity, root)
	steam, _ := sum(&vaporDensity, root)
	y, slope := sum(&vaporPressure, root)
	slope /= tau
	p := criticalPa * math.Exp(criticalK/k*y)
	// T dp/dT, from ln(p/pc) = (Tc/T) y(tau).
	tdp := -p * (criticalK/k*y + slope)
	volume := 1/(criticalRho*math.Exp(steam)) - 1/(criticalRho*(1+liquid))
	return units.JoulesPerKilogram(volume * tdp), nil
}

// sum returns the sum of the terms, where root is the sixth root of tau, and its
// slope with the logarithm of tau.
func sum(terms *[6]coef.Power, root float64) (y, slope float64) {
	for _, term := range terms {
		v := term.C * whole(root, term.Sixths)
		y += v
		slope += v * float64(term.Sixths) / 6
	}
	return y, slope
}

// whole returns x to the power n.
func whole(x float64, n int) float64 {
	y := 1.0
	for ; n > 0; n >>= 1 {
		if n&1 == 1 {
			y *= x
		}
		x *= x
	}
	return y
}
