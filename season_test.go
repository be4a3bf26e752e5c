package sapreckoner_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// The season in twelve questions: docs/season.md shows the bodies, and a test
// holds the numbers that they print to those of the programs' pages, which read
// the same invented sugarhouse. What is reckoned by hand stands above each.

// 58.2/3.14159 = 18.53 in; the conservative guideline has a second tap from 18.
func Example_season01Taps() {
	diameter, _ := tapping.DiameterFromGirth(58.2 * units.Inch)
	trunk, _ := tapping.NewTrunk(diameter, tapping.SugarMaple, tapping.Healthy)
	advice := trunk.Advise(tapping.DefaultGuideline())
	fmt.Println(diameter.Text(units.Inch, 2), "across:", advice.Taps, "taps")
	// Output: 18.53 in across: 2 taps
}

// 3 in on from the 10.3 of last year, and 6 in down from its 43.
func Example_season02Hole() {
	hole, _ := tapping.NewHole(5*units.Inch/16, 1.5*units.Inch, 0)
	reach, _ := tapping.ReachByHand(3*units.Foot, 4*units.Foot)
	girth := 41.5 * units.Inch
	diameter, _ := tapping.DiameterFromGirth(girth)
	planner, _ := tapping.NewPlanner(diameter, 2035, 0.08*units.Inch, reach, hole, tapping.DefaultDistances())
	last, _ := tapping.PositionAlong(10.3*units.Inch, girth, 43*units.Inch)
	at, _ := planner.Next([]tapping.OldHole{{Year: 2034, Position: last, Hole: hole}}, 2035, 1)
	fmt.Println(at[0].Height.Text(units.Inch, 0), "high,", at[0].Along(girth).Text(units.Inch, 2), "from the mark")
	// Output: 37 in high, 13.30 in from the mark
}

// A night below 30 F and a day above 36 F: Sunday, Monday, Tuesday and Friday.
func Example_season03Days() {
	lows, highs := []float64{21, 27, 29, 31, 34, 26, 18}, []float64{41, 48, 37, 44, 52, 39, 33}
	runs := 0
	for i := range lows {
		if season.SapFlowDay().Met(season.Day{Min: units.Fahrenheit(lows[i]), Max: units.Fahrenheit(highs[i])}) {
			runs++
		}
	}
	fmt.Println(runs, "of", len(lows), "days run")
	// Output: 4 of 7 days run
}

// A scale true at 38 F reads a little low in warmer sap.
func Example_season04Sap() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	brix, _ := stem.Brix(2.0, units.Fahrenheit(46))
	fmt.Println(brix.Text(2), "in the tank")
	// Output: 2.01 Brix in the tank
}

// By the balance of sugar: 66.9 x 1.3282/(1.95 x 1.0058) = 45.3; with all digits
// of the strength, 1.953, 45.2.
func Example_season05Syrup() {
	ratio, _ := yield.Ratio(1.953, 66.9)
	fmt.Printf("%.1f of sap to one of syrup\n", ratio)
	// Output: 45.2 of sap to one of syrup
}

// Sugar stays: 88.12 gal of 8.409 lb weigh 741.0 lb, and 1 - 1.953/66.9 of that,
// 0.97081, is water to boil off.
func Example_season06Water() {
	sap, _ := sugar.NewLot(88.12*units.USGallon, 1.953, units.Fahrenheit(45))
	air, _ := boil.PressureAt(1150 * units.Foot)
	demand, _ := boil.Heat(sap, 66.9, air)
	fmt.Printf("%.1f lb of water\n", demand.Water.Pounds())
	// Output: 719.4 lb of water
}

// Steam tables: 97.18 kPa boils at 98.8 C.
func Example_season07Water() {
	air, _ := boil.PressureAt(1150 * units.Foot)
	water, _ := boil.Water(air)
	fmt.Println(air.Text(units.InchMercury, 2), "boils water at", water.Text(units.ScaleFahrenheit, 1))
	// Output: 28.70 inHg boils water at 209.9 F
}

// 7.56 F at 1 atm, a little less at 0.96 of it: 209.9 + 7.5.
func Example_season08Stop() {
	air, _ := boil.PressureAt(1150 * units.Foot)
	syrup, _ := boil.SyrupPoint(66.9, air)
	fmt.Println("stop at", syrup.Text(units.ScaleFahrenheit, 1))
	// Output: stop at 217.4 F
}

// From the reference sheet: 66.9 Brix on a 60 F scale at 211 F reads 59.00.
func Example_season09Cup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	reads, _ := stem.Reading(66.9, units.Fahrenheit(211))
	fmt.Println("the hot cup reads", reads.Text(1))
	// Output: the hot cup reads 59.0 Brix
}

// The inverse, at 204 F: 0.05 Brix a degree above the 59.0 of 211 F.
func Example_season10Syrup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	brix, _ := stem.Brix(59.5, units.Fahrenheit(204))
	fmt.Println("it is", brix.Text(1))
	// Output: it is 67.0 Brix
}

// 50 mL weigh 66.3 g and give 0.192 kJ/K, 62 g of glass take 0.0521: what falls by
// 7 F must warm the glass by 26, from 154 F.
func Example_season11Jars() {
	nip := packing.Container{Label: 50 * units.Milliliter, Mass: 62 * units.Gram}
	warm, _ := nip.WarmTo(66.44, packing.CappingLeast().Add(7*units.FahrenheitDegree), packing.CappingLeast())
	fmt.Println("warm the empties to", warm.Text(units.ScaleFahrenheit, 1))
	// Output: warm the empties to 153.8 F
}

// By hours, 21.5, 14, 14 and 3.5 of 53: of 12 quarts the first has 4.87, and of
// all that the jars hold 40.6 percent.
func Example_season12Shares() {
	jars := []money.Jars{{Label: units.USQuart, Count: 12}, {Label: units.USPint, Count: 26}, {Label: units.USPint / 2, Count: 18}, {Label: 50 * units.Milliliter, Count: 20}}
	people := []money.Contribution{
		{Name: "Orchard house", Weight: decimal.NewFromFloat(21.5)}, {Name: "Mill lane", Weight: decimal.NewFromInt(14)},
		{Name: "The twins", Weight: decimal.NewFromInt(14)}, {Name: "With the truck", Weight: decimal.NewFromFloat(3.5)},
	}
	baskets, _ := money.DivideJars(jars, people)
	fmt.Println(baskets[0].Name, baskets[0].Counts)
	// Output: Orchard house [7 8 5 3]
}

// The budget of docs/uncertainty.md. The reference sheet has 66.78 for 59.0 at 209
// F; 0.144, 0.036, 0.05 and 0.04 are the eye, the cup, the scale and the surface,
// twice the root of whose squares is 0.32, and glass and formula bring it to 0.33.
func Example_hotCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	m, err := stem.Measure(59.0, units.Fahrenheit(209), density.Doubt{
		Division: 0.5, Thermometer: 1 * units.FahrenheitDegree, Calibration: 0.1,
	})
	fmt.Printf("%.2f +/- %.2f Brix, %v\n", float64(m.Brix), float64(m.Uncertainty), err)
	// Output: 66.78 +/- 0.33 Brix, <nil>
}
