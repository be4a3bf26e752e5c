package sugar_test

import (
	"fmt"
	"log"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A gallon of sap from 2 to 8 Brix leaves a quarter of it to boil.
func ExampleMembrane_Concentrate() {
	sap, err := sugar.NewLot(units.USGallon, 2, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.Membrane{}.Concentrate(sap, 8)
	if err != nil {
		log.Fatal(err)
	}
	saved, err := s.EvaporationSaved(66)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Concentrate.Volume().Text(units.USGallon, 4), "of concentrate")
	fmt.Println(saved.Text(1), "of the evaporation saved")
	// Output:
	// 0.2442 US gal of concentrate
	// 77.3 % of the evaporation saved
}

func ExampleSeparation() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2.1, units.Celsius(13))
	if err != nil {
		log.Fatal(err)
	}
	var s sugar.Separation
	s, err = sugar.Membrane{}.Concentrate(sap, 4.6)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Removed.Mass().Text(units.Kilogram, 1), "of permeate")
	// Output: 54.3 kg of permeate
}

func ExampleSeparation_EvaporationSaved() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2, units.Celsius(13))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.Membrane{}.Concentrate(sap, 4)
	if err != nil {
		log.Fatal(err)
	}
	saved, err := s.EvaporationSaved(66)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(saved.Text(1))
	// Output: 51.6 %
}

// Two passes that each take half.
func ExampleMembrane_Passes() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2, units.Celsius(10))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.Membrane{}.Passes(sap, 50, 2)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Concentrate.Mass().Text(units.Kilogram, 0), "of", s.Concentrate.Brix().Text(0))
	// Output: 25 kg of 8 Brix
}

// A cold evening: the flow falls with the temperature of the sap.
func ExampleMembrane() {
	machine := sugar.Membrane{Flow: 50 * units.USGallonPerHour, Pump: 18.9 * units.Bar}
	factor, err := sugar.FlowFactor(units.Fahrenheit(55), units.Fahrenheit(41))
	if err != nil {
		log.Fatal(err)
	}
	hours, err := machine.Time(80*units.USGallon, factor)
	if err != nil {
		log.Fatal(err)
	}
	stop, err := machine.Limit(units.Fahrenheit(55))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("about %.0f hours; it cannot pass %s\n", hours.Hours(), stop.Text(0))
	// Output: about 2 hours; it cannot pass 20 Brix
}

// By the owner's stopwatch the machine gives 75 percent of its rating today.
func ExampleMembrane_Time() {
	machine := sugar.Membrane{Flow: 50 * units.USGallonPerHour}
	d, err := machine.Time(75*units.USGallon, 75)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(d.Round(time.Minute))
	// Output: 2h0m0s
}

func ExampleMembrane_Limit() {
	stop, err := sugar.Membrane{Pump: 6.2 * units.Bar}.Limit(units.Fahrenheit(55))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(stop.Text(0))
	// Output: 8 Brix
}

func ExampleFlowFactor() {
	f, err := sugar.FlowFactor(units.Fahrenheit(55), units.Fahrenheit(41))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(f.Text(0))
	// Output: 80 %
}

func ExampleWaterViscosity() {
	v, err := sugar.WaterViscosity(units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(v.Text(units.MillipascalSecond, 3))
	// Output: 1.002 mPa s
}
