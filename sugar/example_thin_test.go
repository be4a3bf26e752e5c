package sugar_test

import (
	"errors"
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Bring the syrup back to packing temperature afterwards, and filter it again.
func ExampleThin() {
	at := units.Celsius(20)
	syrup, err := sugar.NewLot(units.USGallon, 68.9, at)
	if err != nil {
		log.Fatal(err)
	}
	thinned, err := sugar.Thin(syrup, 0, at, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("add ", thinned.Added.Mass().Text(units.Pound, 4), "of water,", thinned.Added.Volume().Text(units.USFluidOunce, 3))
	fmt.Println("have", thinned.Result.Volume().Text(units.USGallon, 5))
	// Output:
	// add  0.3345 lb of water, 5.139 US fl oz
	// have 1.03951 US gal
}

func ExampleThin_ten() {
	at := units.Celsius(20)
	syrup, err := sugar.NewLot(10*units.USGallon, 69.5, at)
	if err != nil {
		log.Fatal(err)
	}
	thinned, err := sugar.Thin(syrup, 0, at, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(thinned.Added.Volume().Text(units.USFluidOunce, 3))
	fmt.Println(thinned.Result.Volume().Text(units.USGallon, 5))
	// Output:
	// 66.996 US fl oz
	// 10.51497 US gal
}

// With sap of 2 Brix at hand: 64.9 parts by mass of 70 Brix take 3.1.
func ExampleAddition() {
	syrup, err := sugar.NewLotByMass(64.9*units.Pound, 70, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	var change sugar.Addition
	change, err = sugar.Thin(syrup, 2, units.Fahrenheit(40), 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(change.Added.Mass().Text(units.Pound, 1), "of sap make", change.Result.Mass().Text(units.Pound, 1))
	// Output: 3.1 lb of sap make 68.0 lb
}

func ExampleThicken() {
	at := units.Celsius(20)
	thin, err := sugar.NewLotByMass(2.0*units.Kilogram, 64, at)
	if err != nil {
		log.Fatal(err)
	}
	mended, err := sugar.Thicken(thin, 68.9, at, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(mended.Added.Mass().Text(units.Kilogram, 1))
	// Output: 2.9 kg
}

// The amount is given, and the strength of what to pour in is asked.
func ExampleAdditionBrix() {
	syrup, err := sugar.NewLotByMass(64.9*units.Pound, 70, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	b, err := sugar.AdditionBrix(syrup, 3.1*units.Pound, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(1))
	// Output: 2.0 Brix
}

// The parts are by mass. Taken as gallons, 64.9 of syrup and 3.1 of sap come out
// too dense.
func ExampleSquareParts() {
	a, b, err := sugar.SquareParts(68.9, 64, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.1f : %.1f\n", a, b)

	a, b, err = sugar.SquareParts(70, 2, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.1f : %.1f\n", a, b)
	syrup, err := sugar.NewLot(units.USGallons(a), 70, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	sap, err := sugar.NewLot(units.USGallons(b), 2, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	wrong, err := sugar.Blend(syrup, sap)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("as gallons:", wrong.Brix().Text(2))
	// Output:
	// 2.9 : 2.0
	// 64.9 : 3.1
	// as gallons: 67.66 Brix
}

// The result is given, and the amounts of two strengths are asked.
func ExampleRecipe() {
	want, err := sugar.NewLotByMass(4.9*units.Kilogram, 66.9, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	dense, thin, err := sugar.Recipe(want, 68.9, 64)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(dense.Mass().Text(units.Kilogram, 1), "of 68.9 and", thin.Mass().Text(units.Kilogram, 1), "of 64")
	// Output: 2.9 kg of 68.9 and 2.0 kg of 64
}

func ExampleConcentrate() {
	syrup, err := sugar.NewLot(10*units.USGallon, 64.5, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	boiled, err := sugar.Concentrate(syrup, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("lose ", boiled.Removed.Mass().Text(units.Pound, 4), "of water")
	fmt.Println("leave", boiled.Concentrate.Volume().Text(units.USGallon, 5))
	// Output:
	// lose  3.9325 lb of water
	// leave 9.53474 US gal
}

func ExampleInfeasibleError() {
	syrup, err := sugar.NewLotByMass(10*units.Kilogram, 65, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	_, err = sugar.Thin(syrup, 0, units.Celsius(20), 66.9)
	var ask *sugar.InfeasibleError
	if errors.As(err, &ask) {
		fmt.Println(ask.Why)
		fmt.Println(ask.Hint)
	}
	// Output:
	// the lot has 65 Brix and thinning to 66.9 would thicken it
	// boil it down or add heavier syrup
}

func ExampleInfeasibleError_Error() {
	_, err := sugar.Blend()
	fmt.Println(err)
	// Output: sugar.Blend: infeasible: there is nothing to blend: give at least one lot that is not empty
}

func ExampleInfeasibleError_Unwrap() {
	_, _, err := sugar.SquareParts(68.9, 64, 70)
	fmt.Println(errors.Is(err, sugar.ErrInfeasible))
	// Output: true
}
