package proof

import (
	"math"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// Units returns the claims of package units.
func Units() []check.Claim {
	return []check.Claim{
		{Table: "units", Column: "value", Func: "units constants", Got: func(r check.Row) (float64, error) {
			return factor(r.Text("symbol")), nil
		}},
		{Table: "temperature-scales", Column: "value", Func: "units.Temperature", Got: func(r check.Row) (float64, error) {
			return scaleReading(r.Text("from"), r.Text("to"), r.Float("given")), nil
		}},
	}
}

// factor is the size in SI units of the table's symbol, NaN for one that this
// package does not have.
func factor(symbol string) float64 {
	switch symbol {
	case "lbf": // the weight of a pound: there is no quantity of force
		return units.Pound.Kilograms() * units.StandardGravity
	case "g_n":
		return units.StandardGravity
	}
	if x, ok := factors[symbol]; ok {
		return x
	}
	return math.NaN()
}

var factors = map[string]float64{
	"in":            float64(units.Inch),
	"ft":            float64(units.Foot),
	"ft_us":         float64(units.SurveyFoot),
	"yd":            float64(units.Yard),
	"mi":            float64(units.Mile),
	"in2":           float64(units.SquareInch),
	"ft2":           float64(units.SquareFoot),
	"ac":            float64(units.Acre),
	"ac_us":         float64(units.SurveyAcre),
	"in3":           float64(units.CubicInch),
	"ft3":           float64(units.CubicFoot),
	"cord":          float64(units.Cord),
	"face_cord16":   float64(units.FaceCord16),
	"gal":           float64(units.USGallon),
	"qt":            float64(units.USQuart),
	"pt":            float64(units.USPint),
	"cup":           float64(units.USCup),
	"fl_oz":         float64(units.USFluidOunce),
	"tbsp":          float64(units.USTablespoon),
	"tsp":           float64(units.USTeaspoon),
	"gal_imp":       float64(units.ImperialGallon),
	"qt_imp":        float64(units.ImperialQuart),
	"pt_imp":        float64(units.ImperialPint),
	"fl_oz_imp":     float64(units.ImperialFluidOunce),
	"bbl_31.5":      float64(units.Barrel31),
	"lb":            float64(units.Pound),
	"oz":            float64(units.Ounce),
	"ton_short":     float64(units.ShortTon),
	"lb/gal":        float64(units.PoundPerUSGallon),
	"lb/gal_imp":    float64(units.PoundPerImperialGallon),
	"psi":           float64(units.PSI),
	"inHg":          float64(units.InchMercury),
	"inHg_32F":      float64(units.InchMercury32F),
	"inHg_60F":      float64(units.InchMercury60F),
	"mmHg":          float64(units.MillimeterMercury),
	"inH2O":         float64(units.InchWater),
	"ftH2O":         float64(units.FootWater),
	"atm":           float64(units.Atmosphere),
	"cal_IT":        float64(units.CalorieIT),
	"cal_th":        float64(units.CalorieThermochemical),
	"Btu_IT":        float64(units.BtuIT),
	"Btu_th":        float64(units.BtuThermochemical),
	"Btu_59F":       float64(units.Btu59F),
	"Btu_60F":       float64(units.Btu60F),
	"Btu_39F":       float64(units.Btu39F),
	"Btu_mean":      float64(units.BtuMean),
	"therm_US":      float64(units.ThermUS),
	"therm_EC":      float64(units.ThermEC),
	"kWh":           float64(units.KilowattHour),
	"Btu/lb":        float64(units.BtuITPerPound),
	"Btu/(lb.F)":    float64(units.BtuITPerPoundFahrenheit),
	"Btu/h":         float64(units.BtuITPerHour),
	"hp_boiler":     float64(units.BoilerHorsepower),
	"degF_interval": float64(units.FahrenheitDegree),
}

// scaleReading converts x from one temperature scale to another.
func scaleReading(from, to string, x float64) float64 {
	t := units.Celsius(x)
	switch from {
	case "F":
		t = units.Fahrenheit(x)
	case "K":
		t = units.Kelvin(x)
	}
	switch to {
	case "F":
		return t.Fahrenheit()
	case "K":
		return t.Kelvin()
	}
	return t.Celsius()
}
