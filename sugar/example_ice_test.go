package sugar_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Half the pail lifted off as clean ice doubles the strength.
func ExampleTakeIce() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2, units.Celsius(0))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.TakeIce(sap, 50*units.Kilogram, sugar.CleanIce)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Concentrate.Mass().Text(units.Kilogram, 0), "of", s.Concentrate.Brix().Text(0))
	// Output: 50 kg of 4 Brix
}

// Ice that melts to 0.5 Brix takes sugar with it.
func ExampleIceToReach() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2, units.Celsius(0))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.IceToReach(sap, 4, 0.5)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Removed.Mass().Text(units.Kilogram, 2), "of ice with", s.Removed.Sugar().Text(units.Gram, 0), "of sugar")
	// Output: 57.14 kg of ice with 286 g of sugar
}

// Liquid between ice at -0.63 C has 10 Brix, a fifth of sap of 2 Brix.
func ExampleFreezeTo() {
	sap, err := sugar.NewLotByMass(100*units.Kilogram, 2, units.Celsius(0))
	if err != nil {
		log.Fatal(err)
	}
	s, err := sugar.FreezeTo(sap, units.Celsius(-0.63), sugar.CleanIce)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(s.Concentrate.Mass().Text(units.Kilogram, 0), "of", s.Concentrate.Brix().Text(0))
	// Output: 20 kg of 10 Brix
}
