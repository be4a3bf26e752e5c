package sugar_test

import (
	"errors"
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A lot holds mass and sugar; volumes follow from them.
func ExampleLot() {
	syrup, err := sugar.NewLot(10*units.USGallon, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("mass  ", syrup.Mass().Text(units.Pound, 2))
	fmt.Println("sugar ", syrup.Sugar().Text(units.Pound, 2))
	fmt.Println("water ", syrup.Water().Text(units.Pound, 2))
	fmt.Println("in air", syrup.WeightInAir().Text(units.Pound, 2))
	// Output:
	// mass   110.84 lb
	// sugar  74.15 lb
	// water  36.69 lb
	// in air 110.76 lb
}

func ExampleNewLot() {
	sap, err := sugar.NewLot(40*units.USGallon, 2, units.Fahrenheit(40))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(sap.Brix().Text(1), "at", sap.Temperature().Text(units.ScaleFahrenheit, 0))

	_, err = sugar.NewLot(40*units.USGallon, 2, units.Fahrenheit(-40))
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// 2.0 Brix at 40 F
	// true
}

func ExampleNewLotByMass() {
	syrup, err := sugar.NewLotByMass(100*units.Pound, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(syrup.Sugar().Text(units.Pound, 1))
	// Output: 66.9 lb
}

func ExampleLot_Empty() {
	var pail sugar.Lot
	fmt.Println(pail.Empty(), pail.Mass(), pail.Brix())
	// Output: true 0 kg NaN Brix
}

func ExampleLot_Mass() {
	syrup, err := sugar.NewLot(units.USGallon, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(syrup.Mass().Text(units.Pound, 4))
	// Output: 11.0843 lb
}

func ExampleLot_Sugar() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2.5, units.Celsius(5))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(sap.Sugar().Text(units.Kilogram, 1))
	// Output: 2.5 kg
}

func ExampleLot_Water() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2.5, units.Celsius(5))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(sap.Water().Text(units.Kilogram, 1))
	// Output: 97.5 kg
}

func ExampleLot_Brix() {
	sap, err := sugar.NewLot(units.USGallon, 2.5, units.Celsius(5))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(sap.Brix().Text(1))
	// Output: 2.5 Brix
}

func ExampleLot_Temperature() {
	sap, err := sugar.NewLot(units.USGallon, 2.5, units.Celsius(5))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(sap.Temperature().Text(units.ScaleFahrenheit, 0))
	// Output: 41 F
}

func ExampleLot_Density() {
	syrup, err := sugar.NewLot(units.USGallon, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(syrup.Density().Text(units.KilogramPerCubicMeter, 3))
	// Output: 1328.191 kg/m3
}

// A drum sold by weight, poured into gallons: 11.0843 lb fill one.
func ExampleLot_Volume() {
	drum, err := sugar.NewLotByMass(554.215*units.Pound, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(drum.Volume().Text(units.USGallon, 2))
	// Output: 50.00 US gal
}

func ExampleLot_WeightInAir() {
	syrup, err := sugar.NewLot(units.USGallon, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(syrup.WeightInAir().Text(units.Pound, 4))
	// Output: 11.0759 lb
}

// Syrup packed at 185 F shrinks by 2.896 percent on the way to 68 F.
func ExampleLot_VolumeAt() {
	hot, err := sugar.NewLot(100*units.USGallon, 66.9, units.Fahrenheit(185))
	if err != nil {
		log.Fatal(err)
	}
	cold, err := hot.VolumeAt(units.Fahrenheit(68))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(cold.Text(units.USGallon, 3))
	// Output: 97.104 US gal
}

func ExampleLot_At() {
	hot, err := sugar.NewLot(units.USGallon, 66.9, units.Fahrenheit(185))
	if err != nil {
		log.Fatal(err)
	}
	cold, err := hot.At(units.Fahrenheit(68))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(hot.Sugar().Text(units.Pound, 2), cold.Sugar().Text(units.Pound, 2))
	fmt.Println(cold.Volume() < hot.Volume())
	// Output:
	// 7.20 lb 7.20 lb
	// true
}

// A gallon of dense syrup and 5.139 fluid ounces of water are 1.04015 gallons
// before they meet, and 1.03951 after.
func ExampleBlend() {
	at := units.Celsius(20)
	syrup, err := sugar.NewLot(units.USGallon, 68.9, at)
	if err != nil {
		log.Fatal(err)
	}
	water, err := sugar.NewLot(5.139*units.USFluidOunce, 0, at)
	if err != nil {
		log.Fatal(err)
	}
	both, err := sugar.Blend(syrup, water)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(both.Brix().Text(2))
	fmt.Println("apart   ", (syrup.Volume()+water.Volume()).Text(units.USGallon, 5))
	fmt.Println("together", both.Volume().Text(units.USGallon, 5))
	// Output:
	// 66.90 Brix
	// apart    1.04015 US gal
	// together 1.03951 US gal
}
