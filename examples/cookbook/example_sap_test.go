package cookbook_test

import (
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/packing"
)

// 27 F is below 30 F and 48 F above 36 F: the sap-flow day of Skinner, DeGaetano
// and Chabot 2010 (from memory).
func Example_runsTomorrow() {
	tomorrow := season.Day{Min: units.Fahrenheit(27), Max: units.Fahrenheit(48)}
	if season.SapFlowDay().Met(tomorrow) {
		fmt.Println("runs")
	}
	// Output: runs
}

// By hand: 21 in of 2.5 gallons and 18 gallons are 70.5 of 60 taps.
func Example_mostSap() {
	best := must(packing.PeakPerTap([]units.Volume{units.USGallons(21*2.5 + 18)}, 60))
	fmt.Printf("%.0f US gal\n", math.Ceil(60*best.USGallons()))
	// Output: 71 US gal
}

// By hand: two taps of 1.17 gallons in 8 hours fill 2 gallons in 8 x 2/2.34 = 6 h 50
// min, which is 17:50 if it thaws at 11:00: walk by 17:30.
func Example_pailFull() {
	thaw := time.Date(2034, time.March, 12, 11, 0, 0, 0, time.UTC)
	pails := []season.Pail{{Size: units.USGallons(2), Taps: 2}}
	sap := season.Figure[units.Volume]{Span: units.Span[units.Volume]{High: units.USGallons(1.17)}}
	full := must(season.PailRound(pails, sap, 8*time.Hour, 24*time.Hour))[0].FullAfter
	fmt.Println(thaw.Add(full).Truncate(30 * time.Minute).Format("15:04"))
	// Output: 17:30
}

// By hand: of 5 hours half an hour is gone until it boils. A pound of sap takes 166 Btu
// from 42 to 210 F, and 0.976 of it (1 - 1.62/66.9) go off at 972 Btu a pound (steam
// tables): 4.5 x 88000 Btu boil 355 lb, 42.3 gallons of 8.40 lb.
func Example_eveningBoils() {
	p := must(boil.PressureAt(units.Feet(1150)))
	fire := pan.Backlog{Storage: units.USGallons(150), Hours: 5 * time.Hour, Warmup: 30 * time.Minute,
		Heat: units.BtusITPerHour(88000), Syrup: 66.9, At: p}
	plan := must(fire.Plan(pan.Gathering{Volume: units.USGallons(70), Brix: 1.62, Temperature: units.Fahrenheit(42)}))
	fmt.Printf("%.0f US gal\n", plan.Evenings[0].Boiled.USGallons())
	// Output: 42 US gal
}

// Between 40 F, below which bacteria grow slowly, and 50 F, above which they grow
// fast: Ohio State University Extension.
func Example_sapMayWait() {
	fmt.Println(pan.Spoiling(units.Fahrenheit(42)))
	// Output: between slow and fast
}

// Above 50 F: Ohio State University Extension.
func Example_warmSap() {
	fmt.Println(pan.Spoiling(units.Fahrenheit(60)))
	// Output: fast
}

// 2.0 is 2.20 there (table hydrometer-worked): water of 60 F is 0.0010 lighter than of
// 38 F and glass 0.0003 wider, 0.0007 over 0.0039 for a Brix.
func Example_warmReading() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	fmt.Println(must(stem.Brix(2.1, units.Fahrenheit(60))).Text(2))
	// Output: 2.30 Brix
}

// The middle of the last three readings, 1.7 at 47 F, 1.6 at 48 F and 1.5 at 50 F. By
// hand: at 48 F water is 0.0002 lighter than at 38 F and glass 0.0001 wider; 0.0001
// over 0.0039 for a Brix is 0.02.
func Example_sweetness() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}
	fmt.Println(must(stem.Brix(1.6, units.Fahrenheit(48))).Text(2))
	// Output: 1.62 Brix
}

// By hand: sugar in a gallon of each, 0.669 x 1.3283/(0.0210 x 1.0064) = 42.047, where
// 1.3283 is 1.33068 of water of 0.9982 (NBS Circular 440, table 114).
func Example_sapToOneOfSyrup() {
	fmt.Printf("%.1f\n", must(yield.Ratio(2.1, 66.9)))
	// Output: 42.0
}

// By hand: 86/2.1 = 40.95.
func Example_ruleOf86() {
	fmt.Printf("%.1f\n", must(yield.RuleOf86(2.1)))
	// Output: 41.0
}

// By hand: 20 g of sugar in 980 g of water are 0.0596 mole a kilogram, and 1.86 C for
// a mole is 0.111 C, 0.2 F.
func Example_sapFreezes() {
	fmt.Println(must(sugar.FreezingPoint(2)).Text(units.ScaleFahrenheit, 1))
	// Output: 31.8 F
}

// By hand: 40 x 24 x 11 in are 10560 in3, and 231 in3 are a gallon.
func Example_dipstick() {
	tank := must(yield.RectangularTank(units.Inches(40), units.Inches(24), units.Inches(20)))
	fmt.Println(must(tank.Volume(units.Inches(11))).Text(units.USGallon, 1))
	// Output: 45.7 US gal
}

// By hand: 16.3 gallons at 15.4 a cord are 1.06; 130.4 pints and a twentieth more
// 136.9.
func Example_woodToLayIn() {
	pint := packing.Container{Label: units.USPints(1)}
	habits := packing.Habits{SyrupPerCord: units.USGallons(15.4), Spare: units.Percents(5)}
	season := must(packing.LayIn(60, units.USGallons(16.3), pint, habits))
	fmt.Printf("%.1f cord, %d containers\n", season.Wood.Cords(), season.Containers)
	// Output: 1.1 cord, 137 containers
}
