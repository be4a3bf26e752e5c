package boil

import (
	"math"

	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/units"
)

// Critical point of water.
const (
	criticalK   = 647.096 // K
	criticalPa  = 22.064e6
	criticalRho = 322.0 // kg/m3
)

// A power is a term c tau^(over/under) of a saturation equation.
type power struct{ over, under, c float64 }

// The saturation equations of IAPWS SR1-86: vapor pressure, density of the
// liquid, density of the vapor.
var (
	vaporPressure = [6]power{
		{1, 1, -7.85951783}, {3, 2, 1.84408259}, {3, 1, -11.7866497},
		{7, 2, 22.6807411}, {4, 1, -15.9618719}, {15, 2, 1.80122502},
	}
	liquidDensity = [6]power{
		{1, 3, 1.99274064}, {2, 3, 1.09965342}, {5, 3, -0.510839303},
		{16, 3, -1.75493479}, {43, 3, -45.5170352}, {110, 3, -6.74694450e5},
	}
	vaporDensity = [6]power{
		{2, 6, -2.03150240}, {4, 6, -2.68302940}, {8, 6, -5.38626492},
		{18, 6, -17.2991605}, {37, 6, -44.7586581}, {71, 6, -63.9201063},
	}
)

// What the latent heat may be asked for.
var latentTemp = limit.Range{Arg: "boiling point", Low: 0, High: 140, Unit: "C",
	Below: "ice does not boil: check the thermometer",
	Above: "hotter than any syrup boils: check Fahrenheit against Celsius"}

// LatentHeat returns the heat that turns water at temperature t into steam at
// the same temperature. Boiling water off sap and syrup takes it at their
// boiling point; the heat of concentrating the sugar is not in it and is small.
//
// Range: 0 to 140 C. Uncertainty: within 0.015 percent of IAPWS-IF97 from 0 to
// 105 C, 0.02 percent to 140 C. Outside the range the answer is NaN and a
// [units.RangeError].
//
// Source: IAPWS SR1-86(1992), saturation equations, by h = T (1/rho” - 1/rho')
// dp/dT. Check value: 2256.67 kJ/kg at the boiling point of 1 atm (computed).
func LatentHeat(t units.Temperature) (units.SpecificEnergy, error) {
	if err := latentTemp.Check("boil.LatentHeat", t.Celsius()); err != nil {
		return units.SpecificEnergy(math.NaN()), err
	}
	k := t.Kelvin()
	tau := 1 - k/criticalK
	liquid, _ := sum(&liquidDensity, tau)
	steam, _ := sum(&vaporDensity, tau)
	y, slope := sum(&vaporPressure, tau)
	p := criticalPa * math.Exp(criticalK/k*y)
	// T dp/dT, from ln(p/pc) = (Tc/T) y(tau).
	tdp := -p * (criticalK/k*y + slope)
	volume := 1/(criticalRho*math.Exp(steam)) - 1/(criticalRho*(1+liquid))
	return units.JoulesPerKilogram(volume * tdp), nil
}

// sum returns the sum of the terms at tau and its slope.
func sum(terms *[6]power, tau float64) (y, slope float64) {
	for i := range terms {
		e := terms[i].over / terms[i].under
		v := terms[i].c * math.Pow(tau, e)
		y += v
		slope += v * e
	}
	return y, slope / tau
}
