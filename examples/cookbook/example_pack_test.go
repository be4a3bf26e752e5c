package cookbook_test

import (
	"fmt"
	"math"
	"time"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// By hand: 3 gallons of 64 Brix weigh 32.8 lb, and 1 - 64/66.9 of that is 1.42 lb.
func Example_tooThin() {
	lot := must(sugar.NewLot(units.USGallons(3), 64, units.Fahrenheit(60)))
	off := must(sugar.Concentrate(lot, 66.9)).Removed.Mass()
	quarters := int(4 * off.Ounces())
	fmt.Printf("%d lb %d %d/4 oz\n", quarters/64, quarters%64/4, quarters%4)
	// Output: 1 lb 6 3/4 oz
}

// By hand: 71 at 66 F is 71.255, of which 3 gallons weigh 33.9 lb; 71.255/66.9 - 1 =
// 0.0651 of that is 2.2 lb.
func Example_tooThick() {
	strong := must(density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}.Brix(71, units.Fahrenheit(66)))
	lot := must(sugar.NewLot(units.USGallons(3), strong, units.Fahrenheit(66)))
	water := must(sugar.Thin(lot, 0, units.Fahrenheit(60), 66.9)).Added
	quarters := int(4 * water.WeightInAir().Ounces())
	fmt.Printf("%d lb %d %d/4 oz\n", quarters/64, quarters%64/4, quarters%4)
	// Output: 2 lb 3 1/4 oz
}

// By hand: 28.9, 26.9, 16.2 and 17.1 lb of 66.98, 66.27, 68.20 and 64.14 Brix: 59.2
// lb of sugar in 89.1 lb.
func Example_pouredTogether() {
	a := must(sugar.NewLot(units.USGallons(2.6), 66.98, units.Fahrenheit(62)))
	b := must(sugar.NewLotByMass(units.Pounds(26.9), 66.27, units.Fahrenheit(64)))
	c := must(sugar.NewLot(units.USGallons(1.45), 68.2, units.Fahrenheit(60)))
	d := must(sugar.NewLotByMass(units.Pounds(17.1), 64.14, units.Fahrenheit(66)))
	fmt.Println(must(sugar.Blend(a, b, c, d)).Brix().Text(1))
	// Output: 66.4 Brix
}

// By hand: 66.0 and 68.9 Brix are the ends of the rule (USDA AMS 2015).
func Example_denseEnough() {
	rule := must(sugar.UnitedStates.Standard())
	advice := must(rule.Advise(66.44, 0.27, 66.9))
	fmt.Println(advice.Verdict)
	// Output: inside
}

// By hand: 0.34 for the 8 F from 60 F to 68 F (table hydrometer-traps-worked), 0.255
// for 6 F.
func Example_jarsRead() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Brix(67.8, units.Fahrenheit(66))).Text(1))
	// Output: 68.1 Brix
}

// From 68 Brix on crystals are likely from room temperature down: OMAFRA 2013.
func Example_crystals() {
	fmt.Println(must(sugar.Crystals(68.1, units.Fahrenheit(50))))
	// Output: likely
}

// By hand: 8.3 gallons at 3 gallons to a filter.
func Example_filters() {
	n := must(packing.FiltersFor(units.USGallons(8.3), packing.GravityFilter))
	fmt.Println(n, "gravity filters")
	// Output: 3 gravity filters
}

// Ontario food safety manual D.6.3; Ohio State University Extension.
func Example_hottestPour() {
	fmt.Println(packing.PourMost().Text(units.ScaleFahrenheit, 0))
	// Output: 190 F
}

// Ontario food safety manual D.6.3.
func Example_probeOne() {
	fmt.Println(packing.CappingLeast().Text(units.ScaleFahrenheit, 0))
	// Output: 180 F
}

// By hand: 1.26 kg of syrup of 2.94 kJ/kg cool by 7 F while 0.46 kg of glass of 0.84
// kJ/kg warm by 7 x 1.26 x 2.94/(0.46 x 0.84) = 67 F, from 113 F to 180 F; rounded up
// to 5 F.
func Example_warmJars() {
	quart := packing.Container{Label: units.Milliliters(946.353), Brimful: units.Milliliters(1010), Mass: units.Grams(460)}
	warm := must(quart.WarmTo(66.44, units.Fahrenheit(187), units.Fahrenheit(180)))
	fmt.Printf("%.0f F\n", 5*math.Ceil(warm.Fahrenheit()/5))
	// Output: 115 F
}

// By hand: 66.9 reads 59.00 at 211 F (table hydrometer-worked), 60.36 at 188 F; 66.44
// reads 0.46 x 1.04 less.
func Example_packingCup() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	fmt.Println(must(stem.Reading(66.44, units.Fahrenheit(188))).Text(1))
	// Output: 59.9 Brix
}

// By hand: 66.44 Brix is 1.32516 + 0.44 x 0.00613 = 1.32786 (NBS Circular 440, table
// 114), and a gallon of it 1.32786 x 8.330 lb less 0.00075 for the air, 11.053 lb; a
// quart and a two-hundredth more 2.777 lb.
func Example_netWeight() {
	quart := packing.Container{Label: units.USQuarts(1)}
	fill := must(quart.Fill(66.44, units.Fahrenheit(187), units.Percents(0.5)))
	fmt.Println(fill.NetWeight.Text(units.Pound, 3))
	// Output: 2.777 lb
}

// By hand: a gallon of water weighs 8.322 lb in air at 68 F, and syrup 1.3309 times as much.
func Example_gallonWeighs() {
	lb := must(density.WeightInAir(units.USGallons(1), 66.9, units.Fahrenheit(68)))
	fmt.Println(lb.Text(units.Pound, 2))
	// Output: 11.08 lb
}

// By hand: 2.600, 2.434, 1.450 and 1.563 times the logarithms 4.1271, 4.0604, 4.0073
// and 3.4965 are 31.889, of 8.047 gallons 3.963, which is 52.6.
func Example_light() {
	fmt.Println(must(sugar.BlendTransmission(
		sugar.Tinted{Volume: units.USGallons(2.600), Transmission: 62 * units.Percent},
		sugar.Tinted{Volume: units.USGallons(2.434), Transmission: 58 * units.Percent},
		sugar.Tinted{Volume: units.USGallons(1.450), Transmission: 55 * units.Percent},
		sugar.Tinted{Volume: units.USGallons(1.563), Transmission: 33 * units.Percent})).Text(1))
	// Output: 52.6 %
}

// 50 to 74.9 percent of light: USDA AMS, U.S. Standards for Grades of Maple Syrup, 2015.
func Example_color() {
	class := must(sugar.ColorClassOf(52.6 * units.Percent))
	fmt.Println(class, class.Taste())
	// Output: Amber rich
}

// By hand, by Genotelle's equation: n = 66.44/(1900 - 18 x 66.44) = 0.0944, and 22.46
// n - 0.114 + (30 - 60)/(91 + 60) x (1.1 + 43.1 n^1.25) = 2.005 - 0.666 is the
// logarithm of 21.8.
func Example_thickToFilter() {
	fmt.Println(must(sugar.Viscosity(66.44, units.Fahrenheit(140))).Text(units.MillipascalSecond, 1))
	// Output: 21.8 mPa s
}

// By hand, after Vavrinecz from memory: 66.72 is saturated at 20 C and 66.9 at 21.3 C;
// 66.44 is 0.28 less, 2 C colder.
func Example_saturated() {
	at := must(sugar.Vavrinecz.SaturationTemperature(66.44))
	fmt.Println(at.Text(units.ScaleFahrenheit, 0))
	// Output: 64 F
}

// By hand: 12 quarts less one: 11 x 1.005 + 0.5025 = 11.5575 of 12 quarts.
func Example_howManyJars() {
	lot := must(sugar.NewLot(units.USGallons(3), 66.9, units.Fahrenheit(68)))
	quart := packing.Supply{Container: packing.Container{Label: units.USQuarts(1)}, OnHand: packing.Plenty}
	pint := packing.Supply{Container: packing.Container{Label: units.USPints(1)}, OnHand: packing.Plenty}
	plan := must(packing.FewestContainers(lot, units.Percents(0.5), quart, pint))
	fmt.Println(plan.Lines[0].Count, "quarts,", plan.Lines[1].Count, "pint")
	// Output: 11 quarts, 1 pint
}

// By hand: 21.5 of 53 hours are 40.6 percent of 7.639 gallons, 3.10; 7 quarts, 8
// pints, 5 half pints and 3 nips hold 1.75 + 1 + 0.31 + 0.04 = 3.10.
func Example_shared() {
	jars := []money.Jars{{Label: units.Milliliters(50), Count: 20}, {Label: units.Milliliters(236.588), Count: 18},
		{Label: units.Milliliters(473.176), Count: 26}, {Label: units.Milliliters(946.353), Count: 12}}
	var among []money.Contribution
	for _, hours := range []float64{21.5, 14, 14, 3.5} {
		among = append(among, must(money.ByHours("", time.Duration(hours*float64(time.Hour)))))
	}
	fmt.Println(must(money.DivideJars(jars, among))[0].Counts)
	// Output: [3 5 8 7]
}

// By hand: arch 180/15, pan 240/15, pails 210/10, jars 96.40, filters 24.50 and
// hydrometer 38/8 are 12 + 16 + 21 + 96.40 + 24.50 + 4.75 = 174.65, over 13.22.
func Example_costOfAGallon() {
	costs := []money.Cost{{Item: "what lasts", Amount: decimal.RequireFromString("53.75")},
		{Item: "jars and filters", Amount: decimal.RequireFromString("120.90")}}
	gallon := must(money.CostPerUSGallon(costs, decimal.RequireFromString("13.22"), decimal.RequireFromString("0.01")))
	fmt.Println("$" + gallon.String())
	// Output: $13.21
}

// By hand: 2.0 Brix by the rule of 86 are 11/43 = 0.2558 lb of syrup, and half of 4
// dollars for it 0.5116.
func Example_priceOfSap() {
	offer := money.Offer{SyrupPerPound: decimal.RequireFromString("4"), Share: decimal.RequireFromString("0.5"),
		Rule: yield.Jones1946, PoundsPerUSGallon: decimal.RequireFromString("11"),
		PriceStep: decimal.RequireFromString("0.0001"), Cent: decimal.RequireFromString("0.01")}
	fmt.Println("$" + must(offer.PerUSGallon(2)).String())
	// Output: $0.5116
}
