package sugar

import (
	"math"

	"example.org/sapreckoner/units"
)

// Blend returns the lots poured together. Mass and sugar add up exactly; the
// volume does not: syrup and water contract on mixing, by up to 0.9 percent of
// the volume, and the volume of the blend follows from its own strength and
// temperature. Compare it with the sum of the parts to see the contraction.
//
// The temperature is that of the heat balance, with the specific heat of each
// lot at its own strength and purity 100 percent; the heat of dilution and
// losses to the vessel are left out. Empty lots are passed over.
//
// Nothing but empty lots is an [InfeasibleError]. Uncertainty: none of its own
// in mass and sugar; the temperature that of [SpecificHeat], under 1 K
// between sap and hot syrup.
//
// Check value: a US gallon of 68.9 Brix and 0.3345 lb of water at 20 C make
// 1.03951 US gal of 66.9 Brix (computed).
func Blend(lots ...Lot) (Lot, error) {
	var mass, sugar units.Mass
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range lots {
		if l.Empty() {
			continue
		}
		mass += l.mass
		sugar += l.sugar
		low, high = min(low, l.at.Celsius()), max(high, l.at.Celsius())
	}
	if mass == 0 {
		return Lot{}, &InfeasibleError{Func: "sugar.Blend", Why: "there is nothing to blend", Hint: "give at least one lot that is not empty"}
	}
	c := low
	if high > low {
		c = min(max(balance(lots), low), high)
	}
	return parts(mass, sugar, units.Celsius(c)), nil
}

// balance returns the temperature at which the lots together hold the heat
// that they brought. The heat of a lot counted from 0 C is m (a c + b c^2/2),
// where a and b are linear in its strength, so that the blend's are the sums
// and the root has a closed form.
func balance(lots []Lot) float64 {
	var a, b, heat float64
	for _, l := range lots {
		if l.Empty() {
			continue
		}
		la, lb := heatTerms(l.Brix())
		m, c := float64(l.mass), l.at.Celsius()
		a += m * la
		b += m * lb
		heat += m * c * (la + lb*c/2)
	}
	return 2 * heat / (a + math.Sqrt(a*a+2*b*heat))
}
