package units_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/units"
)

// By the factors of NIST SP 811: 1.11484 m2, 422.02 MJ, 40.746 L/m2/h, 1.11125 cm,
// 4.98952 kg, 45.359 kg/h, 29.307 kW, 101.32 kPa, 4 C deg, 37.854 L/h, and 11.0159
// lb to the US gallon.
func ExampleSystem() {
	in := units.Metric
	fmt.Println((12 * units.SquareFoot).TextIn(in, 3))
	fmt.Println(units.BtusIT(400_000).TextIn(in, 3))
	fmt.Println(units.USGallonsPerSquareFootHour(1).TextIn(in, 3))
	fmt.Println(units.Inches(7.0/16).TextIn(in, 3))
	fmt.Println((11 * units.Pound).TextIn(in, 3))
	fmt.Println(units.PoundsPerHour(100).TextIn(in, 3))
	fmt.Println(units.BtusITPerHour(100_000).TextIn(in, 3))
	fmt.Println(units.InchesMercury(29.92).TextIn(in, 4))
	fmt.Println(units.FahrenheitDegrees(7.2).TextIn(in, 2))
	fmt.Println(units.USGallonsPerHour(10).TextIn(in, 3))
	fmt.Println(units.KilogramsPerCubicMeter(1320).TextIn(units.US, 4))
	// Output:
	// 1.11 m2
	// 422 MJ
	// 40.7 L/m2/h
	// 1.11 cm
	// 4.99 kg
	// 45.4 kg/h
	// 29.3 kW
	// 101.3 kPa
	// 4 C deg
	// 37.9 L/h
	// 11.02 lb/US gal
}

func ExampleSystems() {
	for _, in := range units.Systems() {
		fmt.Println(in, units.Celsius(100).TextIn(in, 1))
	}
	// Output:
	// both 212.0 F (100.0 C)
	// US 212.0 F
	// metric 100.0 C
}

func ExampleParseError_Text() {
	_, err := units.ParseVolume("60 gal")
	var unread *units.ParseError
	if errors.As(err, &unread) {
		fmt.Println(unread.Text(units.US))
	}
	// Output: "60 gal": ambiguous unit: write "US gal" or "imp gal"
}

// A function that asks another for a check names what its own caller wrote.
func ExampleUnderArg() {
	err := units.UnderArg("pan.Fill", "sap", &units.RangeError{Func: "density.Solution", Arg: "brix", What: "sugar content", Value: 90, Low: 0, High: 85, Unit: "Brix"})
	var outside *units.RangeError
	if errors.As(err, &outside) {
		fmt.Println(outside.Func, outside.Arg)
		fmt.Println(outside.Text(units.US))
	}
	// Output:
	// pan.Fill sap
	// sugar content 90 Brix is outside 0 to 85 Brix
}

// A default that cannot be read is a mistake of the program.
func ExampleSetting() {
	var tank units.Volume
	fmt.Println(units.AsFlag(&tank, "60 gal").Err())
	s := units.AsFlag(&tank, "60 US gal")
	fmt.Println(s, s.Set("7 stones") != nil, tank.TextIn(units.US, 3))
	// Output:
	// "60 gal": ambiguous unit: write "US gal" or "imp gal"
	// 60 US gal true 60 US gal
}
