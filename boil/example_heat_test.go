package boil_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Sap of 2 Brix at 40 F to a US gallon of 66 Brix. Ohio State University
// Extension prints 400,000 Btu.
func ExampleHeat() {
	sap, err := sugar.NewLot(44*units.USGallon, 2, units.Fahrenheit(40))
	if err != nil {
		fmt.Println(err)
		return
	}
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	perGallon, err := demand.Per(units.USGallon, units.Celsius(20))
	fmt.Printf("%.0fe5 Btu %v\n", perGallon.BtusIT()/1e5, err)
	// Output: 4e5 Btu <nil>
}

// The night's sap, and what is left of it.
func ExampleHeatDemand() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	fmt.Printf("%.2f lb of water off, %.2f lb of syrup left %v\n", demand.Water.Pounds(), demand.Syrup().Pounds(), err)
	// Output: 96.97 lb of water off, 3.03 lb of syrup left <nil>
}

func ExampleHeatDemand_Total() {
	sap, _ := sugar.NewLotByMass(364.24*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	// The plain balance at the boiling point of water is 404,680 Btu.
	fmt.Println(demand.Total().Text(units.MillionBtuIT, 2), err)
	// Output: 0.40 MMBtu <nil>
}

// The sugar stays: 2 lb of 100 lb of sap make 3.03 lb of 66 Brix.
func ExampleHeatDemand_Syrup() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	fmt.Println(demand.Syrup().Text(units.Pound, 2), err)
	// Output: 3.03 lb <nil>
}

// A fed pan takes more for a pound of water than the 970 Btu of its steam.
func ExampleHeatDemand_PerWater() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	// 404,680 Btu for 353.22 lb of water.
	fmt.Printf("%.0f Btu/lb %v\n", demand.PerWater().BtusITPerPound(), err)
	// Output: 1146 Btu/lb <nil>
}

// USDA Forest Service found 15 to 17 percent for heat exchangers.
func ExampleHeatDemand_PreheaterCeiling() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	fmt.Println(demand.PreheaterCeiling().Text(1), err)
	// Output: 15.3 % <nil>
}

func ExampleHeatDemand_More() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, err := boil.Heat(sap, 66, units.Atmosphere)
	// 15.3 percent of the heat over the other 84.7.
	fmt.Println(demand.More().Text(0), err)
	// Output: 18 % <nil>
}

func ExampleHeatDemand_Per() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, _ := boil.Heat(sap, 66, units.Atmosphere)
	gallon, err := demand.Per(units.USGallon, units.Celsius(20))
	quart, _ := demand.Per(units.USQuart, units.Celsius(20))
	fmt.Printf("%.0f quarts in a gallon %v\n", float64(gallon/quart), err)
	// Output: 4 quarts in a gallon <nil>
}

// Producers' manuals, from memory: a gallon an hour from a square foot of flat
// pan.
func ExamplePanRate() {
	rate, err := boil.PanRate(boil.FlatPan, 12*units.SquareFoot)
	fmt.Println(rate.Middle.Text(units.USGallonPerHour, 0), err)
	// Output: 12 US gal/h <nil>
}

func ExamplePanKind() {
	rate, err := boil.PanRate(boil.FluePan, units.SquareFoot)
	fmt.Printf("%.1f to %.0f gal/h %v\n", rate.Low.USGallonsPerHour(), rate.High.USGallonsPerHour(), err)
	// Output: 1.5 to 3 gal/h <nil>
}

// What people choose from is listed, by names that are read back.
func ExamplePanKinds() {
	fmt.Println(boil.PanKinds())
	var kind boil.PanKind
	fmt.Println(units.Reason(kind.UnmarshalText([]byte("flu pan")), units.US))
	// Output:
	// [flat pan flue pan]
	// "flu pan": not one of the names: did you mean "flue pan"? Use one of: flat pan, flue pan
}

// By hand: three pounds are the first digit of the uncertainty, and so the rate
// is told to the pound; 85 lb are 38.6 kg, and 3 lb 1.4.
func ExampleMeasuredRate_Text() {
	rate := boil.MeasuredRate{Warm: units.PoundsPerHour(85.2), WarmBy: units.PoundsPerHour(3.1), Readings: 5}
	fmt.Println(rate.Text(units.US))
	fmt.Println(rate)
	// Output:
	// 85 +/- 3 lb/h
	// 85 +/- 3 lb/h (38.6 +/- 1.4 kg/h)
}

func ExamplePanKind_String() {
	fmt.Println(boil.FlatPan, "or", boil.FluePan)
	// Output: flat pan or flue pan
}

// An invented evening: the level of a pan of 10 square feet, with the first hour
// apart.
func ExampleLevelRate() {
	rate, err := boil.LevelRate(10*units.SquareFoot, time.Hour,
		boil.LevelReading{At: 0, Level: 7 * units.Inch},
		boil.LevelReading{At: 1 * time.Hour, Level: 6.5 * units.Inch},
		boil.LevelReading{At: 2 * time.Hour, Level: 4.5 * units.Inch},
		boil.LevelReading{At: 3 * time.Hour, Level: 2.5 * units.Inch},
	)
	// Two inches of boiling water an hour: 12.5 gal of 8 lb.
	fmt.Printf("%.0f lb/h from %d readings %v\n", rate.Warm.PoundsPerHour(), rate.Readings, err)
	// Output: 100 lb/h from 3 readings <nil>
}

func ExampleMeasuredRate() {
	rate, err := boil.LevelRate(units.SquareFoot, 0,
		boil.LevelReading{At: 0, Level: 3 * units.Inch},
		boil.LevelReading{At: time.Hour, Level: 2 * units.Inch},
	)
	// An inch over a square foot is 0.623 US gal, of 8 lb when it boils.
	fmt.Printf("%.0f lb/h, plus or minus %v of two readings %v\n", rate.Warm.PoundsPerHour(), rate.WarmBy.KilogramsPerHour(), err)
	// Output: 5 lb/h, plus or minus NaN of two readings <nil>
}

func ExampleLevelReading() {
	r := boil.LevelReading{At: 90 * time.Minute, Level: 4 * units.Inch, Added: 5 * units.USGallon}
	fmt.Println(r.At, r.Level.Text(units.Inch, 1), r.Added.Text(units.USGallon, 0))
	// Output: 1h30m0s 4.0 in 5 US gal
}

func ExampleHeatDemand_Check() {
	fmt.Println(boil.HeatDemand{}.Check() != nil)
	// Output: true
}
