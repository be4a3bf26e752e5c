package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

var liquidC = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 110, Unit: "C", Below: "below 0 C ice may be forming", Above: "hotter than any syrup boils: check Fahrenheit against Celsius"}

var waterC = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 100, Unit: "C", Below: "below 0 C ice may be forming", Above: "above 100 C open water boils"}

// WaterViscosity returns the dynamic viscosity of water at the given
// temperature, near atmospheric pressure or, over 100 C, under its own vapor.
//
// Range: 0 to 110 C (the source covers -8 to 150). Uncertainty: within 0.3
// percent of the IAPWS formulation of 2008.
//
// Source: Kestin, J., Sokolov, M., Wakeham, W. A., Viscosity of Liquid Water in
// the Range -8 C to 150 C, J. Phys. Chem. Ref. Data 7 (1978) 941-948 (from
// memory). Check value: 1.002 mPa s at 20 C.
func WaterViscosity(at units.Temperature) (units.Viscosity, error) {
	c := at.Celsius()
	if err := liquidC.Check("sugar.WaterViscosity", c); err != nil {
		return units.Viscosity(math.NaN()), err
	}
	return units.MillipascalSeconds(1.002 * math.Pow(10, waterViscosity(c))), nil
}

// waterViscosity is log10 of the viscosity over that at 20 C, unchecked.
func waterViscosity(c float64) float64 {
	d := 20 - c
	return d / (c + 96) * (1.2378 + d*(-1.303e-3+d*(3.06e-6+d*2.55e-8)))
}

// FlowFactor returns the flow of a membrane at the given temperature as a share
// of its rated flow: water runs through it as its viscosity allows.
//
// A first estimate: real membranes are more sensitive than the viscosity of
// water (common practice). If the maker prints a factor, use that one in
// [Membrane.Time].
//
// Range: 0 to 100 C. Method: mu(rated)/mu(t) of [WaterViscosity]. Check value:
// 80 percent at 41 F of a flow rated at 55 F (computed).
//
// Cites kestin-1978, iapws-viscosity-2008.
func FlowFactor(rated, at units.Temperature) (units.Share, error) {
	const fn = "sugar.FlowFactor"
	if err := waterC.CheckAs(fn, "rated", rated.Celsius()); err != nil {
		return units.Share(math.NaN()), err
	}
	if err := waterC.Check(fn, at.Celsius()); err != nil {
		return units.Share(math.NaN()), err
	}
	return units.FractionShare(math.Pow(10, waterViscosity(rated.Celsius())-waterViscosity(at.Celsius()))), nil
}
