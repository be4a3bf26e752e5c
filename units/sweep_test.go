package units_test

import (
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/units"
)

func swept() sweep.Package {
	return sweep.Package{
		Contract: true,
		Funcs: []any{
			units.Radians, units.Degrees, units.ParseAngle, units.SquareMeters, units.SquareInches, units.SquareFeet, units.Acres, units.Hectares,
			units.ParseArea, units.ParseBrix, units.KilogramsPerCubicMeter, units.GramsPerMilliliter, units.PoundsPerUSGallon, units.PoundsPerImperialGallon,
			units.ParseDensity, units.Joules, units.Megajoules, units.KilowattHours, units.BtusIT, units.MillionBtusIT, units.ThermsUS, units.ParseEnergy,
			units.Under, units.MetersPerSecond, units.LitersPerSquareMeterHour, units.USGallonsPerSquareFootHour, units.InchesPerHour, units.ParseFlux,
			units.JoulesPerKilogram, units.KilojoulesPerKilogram, units.BtusITPerPound, units.ParseSpecificEnergy, units.Meters, units.Centimeters,
			units.Millimeters, units.Inches, units.Feet, units.ParseLength, units.Kilograms, units.Grams, units.Tonnes, units.Pounds, units.Ounces,
			units.ShortTons, units.ParseMass, units.KilogramsPerSecond, units.KilogramsPerHour, units.PoundsPerHour, units.ParseMassRate, units.Watts,
			units.Kilowatts, units.BtusITPerHour, units.ParsePower, units.Pascals, units.Hectopascals, units.Kilopascals, units.Bars, units.InchesMercury,
			units.PoundsPerSquareInch, units.ParsePressure, units.Percents, units.FractionShare, units.ParseShare, units.JoulesPerKilogramKelvin,
			units.KilojoulesPerKilogramKelvin, units.BtusITPerPoundFahrenheit, units.ParseSpecificHeat, units.Celsius, units.Fahrenheit, units.Kelvin,
			units.ParseTemperature, units.CelsiusDegrees, units.FahrenheitDegrees, units.ParseTempDiff, units.PascalSeconds, units.MillipascalSeconds,
			units.ParseViscosity, units.CubicMeters, units.Liters, units.Milliliters, units.USGallons, units.USQuarts, units.USPints, units.USCups,
			units.USFluidOunces, units.ImperialGallons, units.ImperialQuarts, units.ImperialPints, units.ImperialFluidOunces, units.CubicInches,
			units.CubicFeet, units.Cords, units.ParseVolume, units.CubicMetersPerSecond, units.LitersPerHour, units.USGallonsPerHour, units.USGallonsPerDay,
			units.ImperialGallonsPerHour, units.ParseVolumeRate, units.UnderArg, units.Systems, units.Reason, units.AsFlag,
		},
		Values: []any{
			units.Span[units.Volume]{Low: 1, Middle: 2, High: 3},
			units.Degree, units.ScaleFahrenheit, units.Acre, 66 * units.DegreeBrix, units.Density(1320), units.Megajoule, units.Flux(1e-5), units.Foot,
			units.Pound, units.KilogramPerHour, units.Kilowatt, units.Kilopascal, units.Percent, units.SpecificEnergy(2e6),
			units.SpecificHeat(4000), units.TempDiff(4), units.Celsius(20), units.Viscosity(1e-3), units.USGallon, units.VolumeRate(1e-4), units.Metric, units.AsFlag(new(units.Volume), "60 US gal"),
			&units.RangeError{Arg: "x", High: 1}, units.Miss{Brix: 1, Syrup: units.Liter}, &units.ParseError{Err: units.ErrSyntax}, time.Hour, 2, []byte("a"), 20.0,
		},
		Few: map[string]int{"Under": 0, "UnderArg": 0, "AsFlag": 0, "Reason": 0}, // it repeats the name that it is given
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept()) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept()) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept()) }
