package cookbook_test

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By hand: 80 gallons of 2.1 Brix hold 14.1 lb of sugar; 1/16 in over 12 ft2 of 21.6
// Brix keep 0.9 lb back; 13.2 lb at 7.42 lb to a gallon of syrup are 1.79 gallons.
func Example_quartsToday() {
	sap := must(sugar.NewLot(units.USGallons(80), 2.1, units.Fahrenheit(38)))
	wet := units.SquareFeet(12).Volume(units.Inches(1. / 16))
	stays := must(sugar.NewLot(wet, 21.7, units.Fahrenheit(210)))
	syrup := must(sugar.NewLotByMass(units.Brix(66.9).Of(sap.Sugar()-stays.Sugar()), 66.9, units.Fahrenheit(68)))
	fmt.Printf("%.0f US qt\n", math.Floor(syrup.Volume().USQuarts()))
	// Output: 7 US qt
}

// By hand: 15 gallons stand in the pan at 2 in, so that 65 of 80 must go off: 7 h 3
// min at 9.23 an hour, after 17 min to the boil: 15:20.
func Example_lastSap() {
	p := must(boil.PressureAt(units.Feet(1150)))
	sap := must(sugar.NewLot(units.USGallons(80), 2.1, units.Fahrenheit(38)))
	full := must(boil.DownToVolume(sap, units.SquareFeet(12).Volume(units.Inches(2)), p))
	rate := units.PoundsPerHour(9.23 * 8.33)
	after := 17*time.Minute + rate.Time(sap.Mass()-full.Mass())
	fmt.Println(clock(8*time.Hour + after))
	// Output: 15:20
}

// By hand: 673 lb of sap with 14.1 lb of sugar weigh 65 lb at 21.7 Brix, and 608 lb go
// off at 76.9 an hour: 7 h 54 min after the boil at 08:17. The coals, half as hot each
// 8 min, do what the fire does in 8/ln 2 = 11.5 min: 15:59.
func Example_lastWood() {
	p := must(boil.PressureAt(units.Feet(1150)))
	sap := must(sugar.NewLot(units.USGallons(80), 2.1, units.Fahrenheit(38)))
	low := must(boil.DownToVolume(sap, units.SquareFeet(12).Volume(units.Inches(1)), p))
	after := 17*time.Minute + units.PoundsPerHour(9.23*8.33).Time(sap.Mass()-low.Mass())
	half := 8 * time.Minute
	coals := time.Duration(half.Seconds()/math.Ln2) * time.Second
	fmt.Println(clock(8*time.Hour + after - coals))
	// Output: 15:55
}

// By hand: 1 in over 12 ft2 is a cubic foot, 7.48 hot gallons of 8.7 lb, and 14.1 lb
// of sugar are 21.7 percent of them.
func Example_offThePan() {
	p := must(boil.PressureAt(units.Feet(1150)))
	sap := must(sugar.NewLot(units.USGallons(80), 2.1, units.Fahrenheit(38)))
	low := must(boil.DownToVolume(sap, units.SquareFeet(12).Volume(units.Inches(1)), p))
	fmt.Printf("%.1f Brix\n", math.Floor(10*float64(low.Brix()))/10)
	// Output: 21.6 Brix
}

// By hand: 1150 ft take 1.22 inHg, at 1.71 F each: water boils at 211.95 - 2.09 = 209.86
// F, and syrup 7.56 x (669.5/671.6)^2 = 7.51 F above it: 217.37 F, rounded down.
func Example_takeOffToday() {
	p := must(boil.PressureAt(units.Feet(1150)))
	at := must(boil.SyrupPoint(66.9, p))
	fmt.Printf("%.1f F\n", math.Floor(10*at.Fahrenheit())/10)
	// Output: 217.3 F
}

// By hand: 652 lb of water at 970 Btu and 673 lb of sap warmed by 172 F are 748,000
// Btu; at 26.1 percent of some 24 million net in a cord that is 0.12 cord, 3 of 1/25.
func Example_woodTonight() {
	sap := must(sugar.NewLot(units.USGallons(80), 2.1, units.Fahrenheit(38)))
	heat := must(boil.Heat(sap, 66.9, must(boil.PressureAt(units.Feet(1150))))).Total()
	maple := must(sugarMaple().Net(25))
	wood := must(maple.Needed(heat, fuel.Efficiency{Low: 26.1 * units.Percent, High: 26.1 * units.Percent, Basis: fuel.Net}))
	fmt.Printf("%.0f barrows\n", math.Ceil(wood.High.Cords()*25))
	// Output: 3 barrows
}

// By hand: 748,000 Btu are 8.19 gallons of 91,333 Btu; of 67 percent of it 12.2, of 40
// percent 20.5.
func Example_propane() {
	gas := must(fuel.Propane().Needed(748000*units.BtuIT, fuel.BuiltEvaporator()))
	fmt.Printf("%.1f to %.1f US gal\n", gas.Low.USGallons(), gas.High.USGallons())
	// Output: 12.2 to 20.5 US gal
}
