package sugar

import (
	"math"

	"example.org/sapreckoner/units"
)

// Blend returns the lots poured together. Mass and sugar add up exactly; the
// volume does not: liquids of different strength contract on mixing, syrup of
// 66.9 Brix and water by up to 0.35 percent of their volume at 20 C (computed).
// The volume of the blend follows from its own strength and temperature; compare
// it with the sum of the parts to see the contraction.
//
// The temperature is that of the heat balance: the [Enthalpy] of the blend is
// that of its parts. The heat of mixing is left out, a degree at most (from
// memory), and so is what the vessel takes. Empty lots are passed over.
//
// Nothing but empty lots is an [*InfeasibleError]. Mass and sugar are as
// certain as those of the parts.
//
// Caution: a lot knows nothing of mold. Look at each can, then smell it, before it
// is poured to others: a moldy one is thrown away, since heat leaves its toxins.
//
// Check value: a US gallon of 68.9 Brix and 0.3345 lb of water at 20 C make
// 1.03951 US gal of 66.9 Brix (computed).
func Blend(lots ...Lot) (Lot, error) {
	const fn = "sugar.Blend"
	var mass, sugar units.Mass
	var heat float64 // J above 0 C
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range lots {
		if l.Empty() {
			continue
		}
		c := l.at.Celsius()
		mass += l.mass
		sugar += l.sugar
		heat += float64(l.mass) * enthalpy(l.Brix(), c)
		low, high = min(low, c), max(high, c)
	}
	if mass == 0 {
		return Lot{}, &InfeasibleError{Func: fn, Why: "there is nothing to blend", Hint: "give at least one lot that is not empty"}
	}
	all := parts(mass, sugar, units.Celsius(low))
	if high > low {
		t, err := TemperatureFromEnthalpy(all.Brix(), units.JoulesPerKilogram(heat/float64(mass)))
		if err != nil {
			return Lot{}, units.Under(fn, err)
		}
		// Rounding must not put the blend outside its parts.
		all.at = units.Celsius(min(max(t.Celsius(), low), high))
	}
	return all, nil
}
