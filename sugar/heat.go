package sugar

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Specific heat of a sucrose solution, J/(kg K): water less what the sugar takes
// away, plus what warmth gives back.
const (
	heatWater  = 4186.8
	heatSugar  = 29.7  // per Brix
	heatPurity = 0.046 // per Brix and percent of purity
	heatWarmth = 0.075 // per Brix and C
	purity     = 100.0 // percent of the solids that is sugar
)

// What heats may be asked for.
var (
	heatBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 85, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "beyond 85 Brix the liquid sets as candy: the formula ends here"}
	heatTemp = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 120, Unit: "C",
		Below: "ice may be forming: its heat of melting is not in the formula",
		Above: "hotter than any syrup boils: check Fahrenheit against Celsius"}
)

// SpecificHeat returns the specific heat of a solution of the given strength at
// the given temperature.
//
// Range: 0 to 85 Brix, 0 to 120 C. Uncertainty: a second printed form agrees to
// 0.15 percent. Water is constant in it at 4.1868 kJ/(kg K), within 1 percent
// of the truth from 0 to 100 C and 1.5 to 120 C. The solids are taken as pure
// sugar; a percent of other matter in them takes 0.003 kJ/(kg K) away at 66
// Brix, a tenth of a percent.
//
// Source: from memory of the sugar technologists' handbooks, 4.1868 - B (0.0297 -
// 4.6e-5 q) + 7.5e-5 B t with a purity q of 100 percent. Check value: 2.629
// kJ/(kg K) at 66 Brix and 20 C (computed).
//
// Cites sugar-handbooks.
func SpecificHeat(brix units.Brix, at units.Temperature) (units.SpecificHeat, error) {
	const fn = "sugar.SpecificHeat"
	if err := checkHeat(fn, brix, at); err != nil {
		return units.SpecificHeat(math.NaN()), err
	}
	at0, perC := heatTerms(brix)
	return units.JoulesPerKilogramKelvin(at0 + perC*at.Celsius()), nil
}

// Enthalpy returns the heat that warms a kilogram of a solution of the given
// strength from 0 C to the given temperature: the integral of [SpecificHeat].
// The difference of two enthalpies at one strength is the heat between two
// temperatures; weighed by mass they add up when liquids mix, but for the heat
// of mixing, which is left out (a degree at most, from memory).
//
// Range and uncertainty: as of [SpecificHeat]. Check value: 51.6 kJ/kg at 66
// Brix and 20 C (computed).
func Enthalpy(brix units.Brix, at units.Temperature) (units.SpecificEnergy, error) {
	const fn = "sugar.Enthalpy"
	if err := checkHeat(fn, brix, at); err != nil {
		return units.SpecificEnergy(math.NaN()), err
	}
	return units.JoulesPerKilogram(enthalpy(brix, at.Celsius())), nil
}

// TemperatureFromEnthalpy returns the temperature at which a solution of the
// given strength has the given enthalpy: the inverse of [Enthalpy], to find
// what a blend comes to. Range: the enthalpies of 0 to 120 C at
// that strength. Check value: 20.0 C at 66 Brix and 51.6
// kJ/kg (computed).
func TemperatureFromEnthalpy(brix units.Brix, heat units.SpecificEnergy) (units.Temperature, error) {
	const fn = "sugar.TemperatureFromEnthalpy"
	nan := units.Celsius(math.NaN())
	if err := heatBrix.Check(fn, float64(brix)); err != nil {
		return nan, err
	}
	high := units.JoulesPerKilogram(enthalpy(brix, heatTemp.High))
	least := units.JoulesPerKilogram(enthalpy(brix, -limit.HairC))
	if !(heat >= least && (heat <= high || limit.Same(heat, high))) {
		return nan, &units.RangeError{Func: fn, Arg: "heat", What: "enthalpy", Value: heat.KilojoulesPerKilogram(), Low: 0, High: high.KilojoulesPerKilogram(), Unit: "kJ/kg",
			Hint: "it counts from 0 C and ends at 120 C: ice and steam are not in it"}
	}
	// The root of a parabola, in the form that stays finite without sugar.
	at0, perC := heatTerms(brix)
	j := max(heat, 0).JoulesPerKilogram()
	t := 2 * j / (at0 + math.Sqrt(at0*at0+2*perC*j))
	return units.Celsius(min(t, heatTemp.High)), nil
}

// heatTerms returns the specific heat at 0 C in J/(kg K) and its growth with a
// degree.
func heatTerms(b units.Brix) (at0, perC float64) {
	return heatWater - float64(b)*(heatSugar-heatPurity*purity), float64(b) * heatWarmth
}

// enthalpy returns J/kg above 0 C.
func enthalpy(b units.Brix, c float64) float64 {
	at0, perC := heatTerms(b)
	return c * (at0 + perC*c/2)
}

func checkHeat(fn string, b units.Brix, t units.Temperature) error {
	if err := heatBrix.Check(fn, float64(b)); err != nil {
		return err
	}
	return heatTemp.Check(fn, t.Celsius())
}
