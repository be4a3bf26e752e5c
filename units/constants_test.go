package units_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// The metric units and the rates, which the table of factors leaves out. The
// prefixes and the hectare, liter, tonne, degree, minute, hour and day are those
// of the SI Brochure, 9th ed. (2019), Tables 7 and 8; the bar, the gallons, the
// foot and the pound those of NIST SP 811 (2008), App. B.
func TestConstants(t *testing.T) {
	const (
		hour      = 3600.0
		usGallon  = 3.785411784e-3
		impGallon = 4.54609e-3
		ft2       = 0.09290304
	)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"rad", float64(units.Radian), 1},
		{"deg", float64(units.Degree), 3.14159265358979323846 / 180},
		{"turn", float64(units.Turn), 6.28318530717958647692},
		{"m2", float64(units.SquareMeter), 1},
		{"cm2", float64(units.SquareCentimeter), 0.01 * 0.01},
		{"ha", float64(units.Hectare), 10000},
		{"Brix", float64(units.DegreeBrix), 1},
		{"kg/m3", float64(units.KilogramPerCubicMeter), 1},
		{"g/mL", float64(units.GramPerMilliliter), 0.001 / 0.000001},
		{"J", float64(units.Joule), 1},
		{"kJ", float64(units.Kilojoule), 1000},
		{"MJ", float64(units.Megajoule), 1000000},
		{"GJ", float64(units.Gigajoule), 1000000000},
		{"MMBtu", float64(units.MillionBtuIT), 1055055852.62},
		{"m/s", float64(units.MeterPerSecond), 1},
		{"L/m2/h", float64(units.LiterPerSquareMeterHour), 0.001 / hour},
		{"US gal/ft2/h", float64(units.USGallonPerSquareFootHour), usGallon / ft2 / hour},
		{"in/h", float64(units.InchPerHour), 0.0254 / hour},
		{"imp gal/ft2/h", float64(units.ImperialGallonPerSquareFootHour), impGallon / ft2 / hour},
		{"J/kg", float64(units.JoulePerKilogram), 1},
		{"kJ/kg", float64(units.KilojoulePerKilogram), 1000},
		{"MJ/kg", float64(units.MegajoulePerKilogram), 1000000},
		{"m", float64(units.Meter), 1},
		{"cm", float64(units.Centimeter), 0.01},
		{"mm", float64(units.Millimeter), 0.001},
		{"km", float64(units.Kilometer), 1000},
		{"kg", float64(units.Kilogram), 1},
		{"g", float64(units.Gram), 0.001},
		{"mg", float64(units.Milligram), 0.000001},
		{"t", float64(units.Tonne), 1000},
		{"kg/s", float64(units.KilogramPerSecond), 1},
		{"kg/h", float64(units.KilogramPerHour), 1 / hour},
		{"lb/h", float64(units.PoundPerHour), 0.45359237 / hour},
		{"W", float64(units.Watt), 1},
		{"kW", float64(units.Kilowatt), 1000},
		{"Pa", float64(units.Pascal), 1},
		{"hPa", float64(units.Hectopascal), 100},
		{"kPa", float64(units.Kilopascal), 1000},
		{"MPa", float64(units.Megapascal), 1000000},
		{"bar", float64(units.Bar), 100000},
		{"percent", float64(units.Percent), 1},
		{"whole", float64(units.Whole), 100},
		{"J/(kg K)", float64(units.JoulePerKilogramKelvin), 1},
		{"kJ/(kg K)", float64(units.KilojoulePerKilogramKelvin), 1000},
		{"C deg", float64(units.CelsiusDegree), 1},
		{"Pa s", float64(units.PascalSecond), 1},
		{"mPa s", float64(units.MillipascalSecond), 0.001},
		{"m3", float64(units.CubicMeter), 1},
		{"L", float64(units.Liter), 0.001},
		{"mL", float64(units.Milliliter), 0.000001},
		{"m3/s", float64(units.CubicMeterPerSecond), 1},
		{"L/min", float64(units.LiterPerMinute), 0.001 / 60},
		{"L/h", float64(units.LiterPerHour), 0.001 / hour},
		{"US gal/h", float64(units.USGallonPerHour), usGallon / hour},
		{"US gal/min", float64(units.USGallonPerMinute), usGallon / 60},
		{"US gal/day", float64(units.USGallonPerDay), usGallon / (24 * hour)},
		{"imp gal/h", float64(units.ImperialGallonPerHour), impGallon / hour},
	} {
		if !(math.Abs(c.got-c.want) <= 1e-15*c.want) {
			t.Errorf("1 %s is %v in SI units, want %v", c.name, c.got, c.want)
		}
	}
}

// String prints in the unit that its doc comment promises.
func TestString(t *testing.T) {
	for _, c := range []struct {
		q    fmt.Stringer
		want string
	}{
		{90 * units.Degree, "90 deg"},
		{6 * units.SquareMeter, "6 m2"},
		{units.Brix(66.9), "66.9 Brix"},
		{units.Density(1328.2), "1328.2 kg/m3"},
		{2 * units.Megajoule, "2 MJ"},
		{3 * units.LiterPerSquareMeterHour, "3 L/m2/h"},
		{2257 * units.KilojoulePerKilogram, "2257 kJ/kg"},
		{2 * units.Meter, "2 m"},
		{2 * units.Kilogram, "2 kg"},
		{80 * units.KilogramPerHour, "80 kg/h"},
		{50 * units.Kilowatt, "50 kW"},
		{96 * units.Kilopascal, "96 kPa"},
		{65 * units.Percent, "65 %"},
		{4.145 * units.KilojoulePerKilogramKelvin, "4.145 kJ/(kg K)"},
		{4 * units.CelsiusDegree, "4 C deg"},
		{184 * units.MillipascalSecond, "184 mPa s"},
		{2 * units.Liter, "2 L"},
		{120 * units.LiterPerHour, "120 L/h"},
		// Twelve significant digits.
		{units.Length(2.0 / 3), "0.666666666667 m"},
	} {
		if got := c.q.String(); got != c.want {
			t.Errorf("prints %q, want %q", got, c.want)
		}
	}
	if got := units.Celsius(200.0 / 3).String(); got != "66.6666666667 C" {
		t.Errorf("prints %q, want 66.6666666667 C", got)
	}
}

// A message shows eight significant digits.
func TestMessageDigits(t *testing.T) {
	e := &units.RangeError{Arg: "length", Value: 12.3456789123, Low: 1.23456789123, High: 1.33333333333, Unit: "m"}
	if got, want := e.Error(), "length 12.345679 m is outside 1.2345679 to 1.3333333 m"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
