package units_test

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/units"
)

// A pound is 0.45359237 kg exactly (NIST SP 811, App. B).
func ExampleMass() {
	fmt.Println(units.Pounds(1), units.Pounds(2000) == units.ShortTons(1), units.Pounds(1).Ounces())
	fmt.Println(units.Grams(1500).Kilograms(), units.Tonnes(1).Kilograms(), units.Kilograms(2).Grams(), units.Ounces(8).Pounds())
	fmt.Println((3 * units.ShortTon).In(units.Pound))
	// Output:
	// 0.45359237 kg true 16
	// 1.5 1000 2000 0.5
	// 6000
}

// A mass and a density make a volume; a mass in a time makes a flow.
func ExampleMass_Volume() {
	syrup := units.Kilograms(2.656)
	fmt.Println(syrup.Volume(units.KilogramsPerCubicMeter(1328)).Text(units.Liter, 1))
	fmt.Println(syrup.Per(time.Hour).Text(units.KilogramPerHour, 3))
	// Output:
	// 2.0 L
	// 2.656 kg/h
}

func ExampleParseMass() {
	m, err := units.ParseMass("11 lb")
	fmt.Println(m.Text(units.Pound, 1), err)
	_, err = units.ParseMass("2 tons")
	fmt.Println(err)
	// Output:
	// 11.0 lb <nil>
	// units.ParseMass: "2 tons": ambiguous unit: write "short ton" (2000 lb) or "t" (1000 kg)
}

// The US gallon is 231 cubic inches, the imperial gallon 4.54609 L (NIST
// Handbook 44, App. C).
func ExampleVolume() {
	fmt.Println(units.USGallons(1), units.ImperialGallons(1))
	fmt.Printf("%.0f cubic inches\n", units.USGallon.CubicInches())
	fmt.Println(units.USGallon.USQuarts(), units.USGallon.USPints(), units.USGallon.USCups(), units.USGallon.USFluidOunces())
	fmt.Println(units.ImperialGallon.ImperialQuarts(), units.ImperialGallon.ImperialPints(), units.ImperialGallon.ImperialFluidOunces())
	fmt.Println(units.USQuarts(4) == units.USGallon, units.USCups(16) == units.USPints(8), units.ImperialPints(2) == units.ImperialQuarts(1))
	// Output:
	// 3.785411784 L 4.54609 L
	// 231 cubic inches
	// 4 8 16 128
	// 4 8 160
	// true true true
}

// A cord is 128 cubic feet.
func ExampleVolume_In() {
	fmt.Printf("%.0f ft3\n", units.Cords(1).CubicFeet())
	fmt.Printf("%.0f face cords\n", units.Cord.In(units.FaceCord16))
	fmt.Printf("%.1f US gal\n", units.Barrel31.In(units.USGallon))
	// Output:
	// 128 ft3
	// 3 face cords
	// 31.5 US gal
}

// A gallon on a square foot stands 231/144 in deep.
func ExampleVolume_Depth() {
	fmt.Println(units.USGallon.Depth(units.SquareFoot).Text(units.Inch, 3))
	fmt.Println((45 * units.USGallon).Per(90*time.Minute).Text(units.USGallonPerHour, 0))
	// Output:
	// 1.604 in
	// 30 US gal/h
}

func ExampleParseVolume() {
	for _, s := range []string{"60 US gal", "1/2 US pt", "2 L"} {
		v, err := units.ParseVolume(s)
		fmt.Println(v.Text(units.Milliliter, 0), err)
	}
	// Output:
	// 227125 mL <nil>
	// 237 mL <nil>
	// 2000 mL <nil>
}

// An inch is 25.4 mm exactly, a foot 12 inches.
func ExampleLength() {
	fmt.Printf("%s, %.0f\n", units.Inches(1).Text(units.Millimeter, 1), units.Feet(1).Inches())
	fmt.Println(units.Meters(1).Centimeters(), units.Centimeters(50).Meters(), units.Millimeters(25).Centimeters())
	fmt.Printf("%.6f\n", units.Mile.In(units.Kilometer))
	// Output:
	// 25.4 mm, 12
	// 100 0.5 2.5
	// 1.609344
}

func ExampleParseLength() {
	bit, err := units.ParseLength("7/16 in")
	fmt.Println(bit.Text(units.Millimeter, 2), err)
	// Output: 11.11 mm <nil>
}

// A pan of 2 ft by 6 ft.
func ExampleLength_Times() {
	pan := units.Feet(2).Times(6 * units.Foot)
	fmt.Println(pan.Text(units.SquareFoot, 0))
	fmt.Println(pan.Volume(2*units.Inch).Text(units.USGallon, 2)) // 12 x 144 x 2 / 231
	// Output:
	// 12 ft2
	// 14.96 US gal
}

// An acre is 43,560 square feet.
func ExampleArea() {
	fmt.Printf("%.0f ft2\n", units.Acres(1).SquareFeet())
	fmt.Printf("%.0f in2\n", units.SquareFeet(1).SquareInches())
	fmt.Println(units.Hectares(1).SquareMeters(), units.SquareMeters(5000).Hectares())
	fmt.Printf("%.1f\n", units.SquareInches(288).In(units.SquareFoot))
	// Output:
	// 43560 ft2
	// 144 in2
	// 10000 0.5
	// 2.0
}

func ExampleParseArea() {
	a, err := units.ParseArea("12 ft2")
	fmt.Println(a.Text(units.SquareInch, 0), err)
	// Output: 1728 in2 <nil>
}

func ExampleAngle() {
	half := units.Degrees(180)
	fmt.Println(half.Radians() == math.Pi, units.Radians(math.Pi).Degrees(), half.In(units.Turn))
	fmt.Println(half.Arc(units.Meter).Text(units.Meter, 3))
	// Output:
	// true 180 0.5
	// 3.142 m
}

func ExampleParseAngle() {
	a, err := units.ParseAngle("90 deg")
	fmt.Println(a.Text(units.Turn, 2), err)
	// Output: 0.25 turn <nil>
}

// A standard atmosphere is 101,325 Pa, 760 mmHg and 29.92 inHg.
func ExamplePressure() {
	p := units.Kilopascals(101.325)
	fmt.Println(p.Pascals(), p.Hectopascals())
	fmt.Printf("%.2f inHg, %.0f mmHg, %.3f psi, %.5f bar\n", p.InchesMercury(), p.In(units.MillimeterMercury), p.PoundsPerSquareInch(), p.Bars())
	fmt.Println(units.Hectopascals(1013.25).Kilopascals(), units.Pascals(100).Hectopascals(), units.Bars(1).Kilopascals())
	fmt.Println(units.InchesMercury(29.92).Text(units.Kilopascal, 2), units.PoundsPerSquareInch(14.696).Text(units.Kilopascal, 2))
	// Output:
	// 101325 1013.25
	// 29.92 inHg, 760 mmHg, 14.696 psi, 1.01325 bar
	// 101.325 1 100
	// 101.32 kPa 101.33 kPa
}

func ExampleParsePressure() {
	p, err := units.ParsePressure("29.92 inHg")
	fmt.Println(p.Text(units.Hectopascal, 1), err)
	// Output: 1013.2 hPa <nil>
}

func ExampleDensity() {
	d := units.KilogramsPerCubicMeter(1328)
	fmt.Println(d.GramsPerMilliliter(), d.KilogramsPerCubicMeter())
	fmt.Printf("%.3f lb/US gal, %.3f lb/imp gal\n", d.PoundsPerUSGallon(), d.PoundsPerImperialGallon())
	fmt.Println(units.GramsPerMilliliter(1), units.PoundsPerUSGallon(11).In(units.PoundPerUSGallon), units.PoundsPerImperialGallon(13).PoundsPerImperialGallon())
	fmt.Println(d.Mass(2 * units.Liter))
	// Output:
	// 1.328 1328
	// 11.083 lb/US gal, 13.310 lb/imp gal
	// 1000 kg/m3 11 13
	// 2.656 kg
}

func ExampleParseDensity() {
	d, err := units.ParseDensity("1.328 g/mL")
	fmt.Println(d.Text(units.KilogramPerCubicMeter, 0), err)
	// Output: 1328 kg/m3 <nil>
}
