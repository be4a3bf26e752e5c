package units_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/units"
)

// pintScript turns each line, an amount, its unit and the unit wanted, into a
// number.
const pintScript = `
import sys, pint
convert = pint.UnitRegistry().Quantity
for line in sys.stdin:
    amount, unit, to = line.split()
    print(repr(float(convert(float(amount), unit).to(to).magnitude)))
`

// TestOraclePint asks pint, a Python package of units, about every constant that
// it knows or knows the parts of, and about temperatures. It has no Btu of 39, 59
// or 60 F, no mean Btu, no acre of the international foot and no cord.
func TestOraclePint(t *testing.T) {
	type question struct {
		text     string
		got, tol float64
	}
	var all []question
	for _, f := range pintFactors {
		// Both sides multiply a few exact factors.
		all = append(all, question{"1 " + f.unit + " " + f.si, f.got, 1e-14 * f.got})
	}
	for _, f := range pintRounded {
		all = append(all, question{"1 " + f.unit + " " + f.si, f.got * (1 - f.off), f.within * f.got})
	}
	// pint goes by way of kelvin, where a double is spaced 6e-14.
	const tol = 5e-13
	for f := -40.0; f <= 300; f += 2.5 {
		at := units.Fahrenheit(f)
		all = append(all, question{fmt.Sprint(f, " degF degC"), at.Celsius(), tol}, question{fmt.Sprint(f, " degF kelvin"), at.Kelvin(), tol})
	}
	for c := -40.0; c <= 150; c += 2.5 {
		at := units.Celsius(c)
		all = append(all, question{fmt.Sprint(c, " degC degF"), at.Fahrenheit(), tol}, question{fmt.Sprint(c, " degC kelvin"), at.Kelvin(), tol})
	}
	var ask strings.Builder
	for _, q := range all {
		fmt.Fprintln(&ask, q.text)
	}
	for i, want := range check.Numbers(t, len(all), ask.String(), check.Python, "-c", pintScript) {
		if q := all[i]; !(math.Abs(q.got-want) <= q.tol) {
			t.Errorf("oracle pint, %s: %v, want %v within %.2g", q.text, q.got, want, q.tol)
		}
	}
	check.Compared(t, len(all), "pint")
}

// pintRounded holds the factors that pint's own comments call approximate or
// unclear. off is by how much of itself ours is the larger.
var pintRounded = []struct {
	got         float64
	unit, si    string
	off, within float64
}{
	// Mercury at 60 F in both, to 0.1 kg/m3 here and in pascals to two decimals there.
	{float64(units.InchMercury60F), "inch_Hg_60F", "pascal", 0, 0.05 / 13556.8},
	// The law's Btu is that of the IT rounded to 1055.06 J, pint's to 1055.056.
	{float64(units.ThermEC), "EC_therm", "joule", 0.004 / 1055.06, 1e-9},
	// SP 811 prints 9809.5 W, pint 33475 Btu/h, which is 9810.6: a disagreement.
	{float64(units.BoilerHorsepower), "boiler_horsepower", "watt", 1 - 33475*1055.056/3600/9809.5, 1e-9},
}

// pintFactors are exact, or exact by convention, on both sides.
var pintFactors = []struct {
	got      float64
	unit, si string // as pint spells them
}{
	{float64(units.Radian), "radian", "radian"},
	{float64(units.Degree), "degree", "radian"},
	{float64(units.Turn), "turn", "radian"},
	{float64(units.Meter), "meter", "meter"},
	{float64(units.Centimeter), "centimeter", "meter"},
	{float64(units.Millimeter), "millimeter", "meter"},
	{float64(units.Kilometer), "kilometer", "meter"},
	{float64(units.Inch), "inch", "meter"},
	{float64(units.Foot), "foot", "meter"},
	{float64(units.Yard), "yard", "meter"},
	{float64(units.Mile), "mile", "meter"},
	{float64(units.SurveyFoot), "survey_foot", "meter"},
	{float64(units.SquareMeter), "meter**2", "meter**2"},
	{float64(units.SquareCentimeter), "centimeter**2", "meter**2"},
	{float64(units.Hectare), "hectare", "meter**2"},
	{float64(units.SquareInch), "inch**2", "meter**2"},
	{float64(units.SquareFoot), "foot**2", "meter**2"},
	{float64(units.SurveyAcre), "acre", "meter**2"},
	{float64(units.CubicMeter), "meter**3", "meter**3"},
	{float64(units.Liter), "liter", "meter**3"},
	{float64(units.Milliliter), "milliliter", "meter**3"},
	{float64(units.USGallon), "gallon", "meter**3"},
	{float64(units.USQuart), "quart", "meter**3"},
	{float64(units.USPint), "pint", "meter**3"},
	{float64(units.USCup), "cup", "meter**3"},
	{float64(units.USFluidOunce), "fluid_ounce", "meter**3"},
	{float64(units.USTablespoon), "tablespoon", "meter**3"},
	{float64(units.USTeaspoon), "teaspoon", "meter**3"},
	{float64(units.ImperialGallon), "imperial_gallon", "meter**3"},
	{float64(units.ImperialQuart), "imperial_quart", "meter**3"},
	{float64(units.ImperialPint), "imperial_pint", "meter**3"},
	{float64(units.ImperialFluidOunce), "imperial_fluid_ounce", "meter**3"},
	{float64(units.CubicInch), "inch**3", "meter**3"},
	{float64(units.CubicFoot), "foot**3", "meter**3"},
	{float64(units.Barrel31), "barrel", "meter**3"},
	{float64(units.Kilogram), "kilogram", "kilogram"},
	{float64(units.Gram), "gram", "kilogram"},
	{float64(units.Milligram), "milligram", "kilogram"},
	{float64(units.Tonne), "metric_ton", "kilogram"},
	{float64(units.Pound), "pound", "kilogram"},
	{float64(units.Ounce), "ounce", "kilogram"},
	{float64(units.ShortTon), "short_ton", "kilogram"},
	{float64(units.KilogramPerCubicMeter), "kilogram/meter**3", "kilogram/meter**3"},
	{float64(units.GramPerMilliliter), "gram/milliliter", "kilogram/meter**3"},
	{float64(units.PoundPerUSGallon), "pound/gallon", "kilogram/meter**3"},
	{float64(units.PoundPerImperialGallon), "pound/imperial_gallon", "kilogram/meter**3"},
	{units.StandardGravity, "standard_gravity", "meter/second**2"},
	{float64(units.Pascal), "pascal", "pascal"},
	{float64(units.Hectopascal), "hectopascal", "pascal"},
	{float64(units.Kilopascal), "kilopascal", "pascal"},
	{float64(units.Megapascal), "megapascal", "pascal"},
	{float64(units.Bar), "bar", "pascal"},
	{float64(units.Atmosphere), "atmosphere", "pascal"},
	{float64(units.PSI), "psi", "pascal"},
	{float64(units.InchMercury), "inch_Hg", "pascal"},
	{float64(units.MillimeterMercury), "millimeter_Hg", "pascal"},
	{float64(units.InchWater), "inch*water*standard_gravity", "pascal"},
	{float64(units.FootWater), "foot_H2O", "pascal"},
	{float64(units.Joule), "joule", "joule"},
	{float64(units.Kilojoule), "kilojoule", "joule"},
	{float64(units.Megajoule), "megajoule", "joule"},
	{float64(units.Gigajoule), "gigajoule", "joule"},
	{float64(units.KilowattHour), "kilowatt_hour", "joule"},
	{float64(units.BtuIT), "Btu_it", "joule"},
	{float64(units.MillionBtuIT), "megaBtu_it", "joule"},
	{float64(units.BtuThermochemical), "Btu_th", "joule"},
	{float64(units.ThermUS), "US_therm", "joule"},
	{float64(units.CalorieIT), "cal_it", "joule"},
	{float64(units.CalorieThermochemical), "cal_th", "joule"},
	{float64(units.Watt), "watt", "watt"},
	{float64(units.Kilowatt), "kilowatt", "watt"},
	{float64(units.BtuITPerHour), "Btu_it/hour", "watt"},
	{float64(units.JoulePerKilogram), "joule/kilogram", "joule/kilogram"},
	{float64(units.KilojoulePerKilogram), "kilojoule/kilogram", "joule/kilogram"},
	{float64(units.MegajoulePerKilogram), "megajoule/kilogram", "joule/kilogram"},
	{float64(units.BtuITPerPound), "Btu_it/pound", "joule/kilogram"},
	{float64(units.JoulePerKilogramKelvin), "joule/kilogram/kelvin", "joule/kilogram/kelvin"},
	{float64(units.KilojoulePerKilogramKelvin), "kilojoule/kilogram/kelvin", "joule/kilogram/kelvin"},
	{float64(units.BtuITPerPoundFahrenheit), "Btu_it/pound/delta_degF", "joule/kilogram/kelvin"},
	{float64(units.CelsiusDegree), "delta_degC", "kelvin"},
	{float64(units.FahrenheitDegree), "delta_degF", "kelvin"},
	{float64(units.PascalSecond), "pascal*second", "pascal*second"},
	{float64(units.MillipascalSecond), "centipoise", "pascal*second"},
	{float64(units.KilogramPerSecond), "kilogram/second", "kilogram/second"},
	{float64(units.KilogramPerHour), "kilogram/hour", "kilogram/second"},
	{float64(units.PoundPerHour), "pound/hour", "kilogram/second"},
	{float64(units.CubicMeterPerSecond), "meter**3/second", "meter**3/second"},
	{float64(units.LiterPerMinute), "liter/minute", "meter**3/second"},
	{float64(units.LiterPerHour), "liter/hour", "meter**3/second"},
	{float64(units.USGallonPerHour), "gallon/hour", "meter**3/second"},
	{float64(units.USGallonPerMinute), "gallon/minute", "meter**3/second"},
	{float64(units.USGallonPerDay), "gallon/day", "meter**3/second"},
	{float64(units.ImperialGallonPerHour), "imperial_gallon/hour", "meter**3/second"},
	{float64(units.MeterPerSecond), "meter/second", "meter/second"},
	{float64(units.LiterPerSquareMeterHour), "liter/meter**2/hour", "meter/second"},
	{float64(units.USGallonPerSquareFootHour), "gallon/foot**2/hour", "meter/second"},
	{float64(units.ImperialGallonPerSquareFootHour), "imperial_gallon/foot**2/hour", "meter/second"},
	{float64(units.InchPerHour), "inch/hour", "meter/second"},
}
