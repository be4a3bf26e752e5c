package cookbook_test

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// By hand: a gallon of 2.09 Brix weighs 8.40 lb: 630.3 x 8.40 x 0.0209 = 110.6.
func Example_sugarGathered() {
	sap := must(sugar.NewLot(units.USGallons(630.3), 2.09, units.Fahrenheit(68)))
	fmt.Println(sap.Sugar().Text(units.Pound, 0))
	// Output: 111 lb
}

// By hand: a gallon of 66.7 Brix weighs 11.08 lb: 13.22 x 11.08 x 0.667 = 97.7.
func Example_sugarDrawn() {
	syrup := must(sugar.NewLot(units.USGallons(13.22), 66.7, units.Fahrenheit(68)))
	fmt.Println(syrup.Sugar().Text(units.Pound, 0))
	// Output: 98 lb
}

// By hand: 3/4 in over 12 ft2 is 5.61 gallons; at 11.5 Brix of 8.72 lb: 5.63 lb.
func Example_heldInThePan() {
	stands := must(sugar.NewLot(units.SquareFeet(12).Volume(units.Inches(0.75)), 11.5, units.Fahrenheit(68)))
	fmt.Println(stands.Sugar().Text(units.Pound, 0))
	// Output: 6 lb
}

// By hand: 110.6 less 97.6 and 5.6.
func Example_sugarLost() {
	sap := must(sugar.NewLot(units.USGallons(630.3), 2.09, units.Fahrenheit(68)))
	syrup := must(sugar.NewLot(units.USGallons(13.22), 66.7, units.Fahrenheit(68)))
	held := must(sugar.NewLot(units.SquareFeet(12).Volume(units.Inches(0.75)), 11.5, units.Fahrenheit(68)))
	limits := yield.Measured{Volume: 2 * units.Percent, Brix: 0.1}
	season := yield.Season{Sap: []sugar.Lot{sap}, Syrup: []sugar.Lot{syrup}, HeldAfter: []sugar.Lot{held},
		SapMeasured: limits, SyrupMeasured: limits, HeldMeasured: limits}
	fmt.Println(must(season.Account()).Lost.Text(units.Pound, 0))
	// Output: 7 lb
}

// By hand: 110.6 lb of sugar for 97.6 and 5.6 lb, so that 630.3/(13.22 x 103.2/97.6) =
// 45.1.
func Example_sapToSyrup() {
	sap := must(sugar.NewLot(units.USGallons(630.3), 2.09, units.Fahrenheit(68)))
	syrup := must(sugar.NewLot(units.USGallons(13.22), 66.7, units.Fahrenheit(68)))
	held := must(sugar.NewLot(units.SquareFeet(12).Volume(units.Inches(0.75)), 11.5, units.Fahrenheit(68)))
	limits := yield.Measured{Volume: 2 * units.Percent, Brix: 0.1}
	season := yield.Season{Sap: []sugar.Lot{sap}, Syrup: []sugar.Lot{syrup}, HeldAfter: []sugar.Lot{held},
		SapMeasured: limits, SyrupMeasured: limits, HeldMeasured: limits}
	fmt.Printf("%.1f\n", must(season.Account()).Ratio)
	// Output: 45.1
}

// By hand: 5.35 gallons measured at 208 F shrink to 0.953 of it, 5.10; 2.6 and 1.45
// cold; 44 lb at 11.0 lb are 4.0: 13.2 gallons.
func Example_quartsDrawn() {
	hot := must(density.VolumeAt(units.USGallons(1.95+2.25+1.15), 67, units.Fahrenheit(208), units.Fahrenheit(68)))
	cans := must(sugar.NewLotByMass(units.Pounds(26.9), 66.3, units.Fahrenheit(68))).Volume() +
		must(sugar.NewLotByMass(units.Pounds(17.1), 64.1, units.Fahrenheit(68))).Volume()
	all := hot + units.USGallons(2.6+1.45) + cans
	fmt.Println(all.Text(units.USQuart, 0))
	// Output: 53 US qt
}

// By hand: 9 quarts, 16 pints and 11 half pints are 9 + 8 + 2.75.
func Example_bottled() {
	all := units.USQuarts(9) + units.USPints(16) + units.USPints(11./2)
	fmt.Println(all.Text(units.USQuart, 0))
	// Output: 20 US qt
}

// By hand: 22.5 barrows of 1/25 cord are 0.9 cord, 13.22/0.9 = 14.7.
func Example_syrupToTheCord() {
	syrup, barrows := units.USGallons(13.22), 22.5
	fmt.Printf("%.0f US gal to the cord\n", syrup.USGallons()/(barrows/25))
	// Output: 15 US gal to the cord
}

// By hand: 13.22 gallons of 128 fl oz among 60.
func Example_syrupByTheTap() {
	tap := units.USGallons(13.22) / 60
	fmt.Println(tap.Text(units.USFluidOunce, 1))
	// Output: 28.2 US fl oz
}

// By hand: 5028 lb of water at 970 Btu and 5180 lb of sap warmed by 166 F are 5.73
// million Btu, of 0.9 cord of some 24 million net: 26 percent.
func Example_heatOfTheWood() {
	sap := must(sugar.NewLot(units.USGallons(618), 2.09, units.Fahrenheit(44)))
	into := must(boil.Heat(sap, 66.9, must(boil.PressureAt(units.Feet(1150))))).Total()
	burned := must(must(sugarMaple().Net(25)).Of(units.Cords(0.9)))
	learned := must(fuel.LearnEfficiency(fuel.Firing{Into: into, Burned: burned}))
	fmt.Println(learned.Middle().Text(0))
	// Output: 26 %
}
