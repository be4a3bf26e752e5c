package sugar

import (
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/coef"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// What the inversion by heat may be asked for.
var (
	inversionBrix = limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 70, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water",
		Above: "thicker than syrup: the law was not compared with anything there"}
	inversionTemp = limit.Range{Arg: "at", What: "temperature", Low: 0, High: 110, Unit: "C",
		Below: "ice may be forming: thaw it and let it mix",
		Above: "hotter than syrup boils: check Fahrenheit against Celsius"}
	inversionAcid = limit.Range{Arg: "acidity", What: "pH", Low: 5, High: 7.5,
		Below: "sap and syrup lie between 5.6 and 7.9: measure again",
		Above: "the law is that of acids and tells nothing of alkaline liquid, in which next to nothing is inverted"}
	inversionTime = limit.Range{Arg: "held", What: "time at that heat", Low: 0, High: 60 * 24, Unit: "h",
		Below: "a time cannot be less than none",
		Above: "over months microbes do more than heat: measure it"}
)

// Inversion returns the share of the sucrose that heat and acid split into
// glucose and fructose in liquid of a strength and a pH that is held so long at
// a temperature. With cw the water in g/cm3 and T in kelvin,
//
//	share = 1 - exp(-k t)    k = 8.12831e16 cw exp(-13055.7/T) 10^-pH a minute
//
// The pH is that at the temperature. It was 5.6 to 7.9 in 80 syrups, and boiled
// sap rises to 8 or 9 for a while (from memory): measure it, or show what 5.5 and
// 7 give. What late syrup holds beyond this comes from
// microbes in old sap.
//
// Range: 0 to 70 Brix, 0 to 110 C, pH 5 to 7.5, to 60 days. Uncertainty: its law
// of temperature is confirmed by 109.2 and 108 kJ/mol measured beside its 108.55
// (read); its law of pH was compared with nothing here.
//
// Source: Vukov 1965 (from memory, seen again in code of the sugar industry that
// cites it). Check value: in an hour at 104 C, of 2 Brix 0.043 percent at pH 7,
// 0.43 at 6 and 1.3 at 5.5 (computed).
func Inversion(brix units.Brix, at units.Temperature, acidity float64, held time.Duration) (units.Share, error) {
	const fn = "sugar.Inversion"
	none := units.Share(math.NaN())
	if err := inversionBrix.Check(fn, float64(brix)); err != nil {
		return none, err
	}
	if err := inversionTemp.Check(fn, at.Celsius()); err != nil {
		return none, err
	}
	if err := inversionAcid.Check(fn, acidity); err != nil {
		return none, err
	}
	if err := inversionTime.Check(fn, held.Hours()); err != nil {
		return none, err
	}
	rho, err := density.Solution(brix, at)
	if err != nil {
		return none, units.Under(fn, err)
	}
	water := rho.GramsPerMilliliter() * (1 - brix.Fraction())
	perMinute := coef.InversionRate * water * math.Exp(-coef.InversionKelvin/at.Kelvin()-acidity*math.Ln10)
	return units.FractionShare(-math.Expm1(-perMinute * held.Minutes())), nil
}
