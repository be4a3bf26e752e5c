package yield_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
)

// A gathering is a line in the notebook of two invented households that boil
// together.
type gathering struct {
	who  string
	sap  units.Volume // measured at 68 F, to keep the example short
	brix units.Brix
}

var notebook = []gathering{
	{"Hill house", 100 * units.USGallon, 2.0},
	{"Creek lot", 90 * units.USGallon, 2.6},
	{"Hill house", 120 * units.USGallon, 2.2},
	{"Creek lot", 110 * units.USGallon, 2.4},
	{"Hill house", 80 * units.USGallon, 1.8},
}

var drawn = []units.Volume{5 * units.USGallon, 7 * units.USGallon} // of 66.9 Brix

var filled = []money.Jars{
	{Label: units.USQuart, Count: 30},
	{Label: units.USPint, Count: 36},
}

// A season from the notebook to the shares: sugar gathered, what became of it,
// and who takes which jars home.
//
// By hand, with 8.4 lb to a gallon of sap: Hill house brought 16.8 + 22.2 + 12.1
// = 51.1 lb of sugar and Creek lot 19.7 + 22.2 = 41.9, together 93. Twelve
// gallons of 11.084 lb at 66.9 Brix hold 89.0; 4 of 93 are missing. But 2
// percent of the volume and 0.1 in 2.2 Brix make the 93 uncertain by 6.
//
// Of the 12 gallons Hill house is owed 55 percent, 6.59, and Creek lot 5.41.
// The first quarts go to Hill house until it is owed no more than the other,
// which takes 5; of the other 25 Creek lot gets the odd one. That leaves 2.34
// and 2.16 gallons for the pints, 19 and 17.
func Example_season() {
	season := yield.Season{
		Taps: 50,
		Days: len(notebook),
		// Tank by dipstick and sap hydrometer; jars by the line and a good one.
		SapMeasured:   yield.Measured{Volume: 2 * units.Percent, Brix: 0.1},
		SyrupMeasured: yield.Measured{Volume: 0.5 * units.Percent, Brix: 0.2},
	}
	brought := map[string]units.Mass{}
	for _, g := range notebook {
		lot, err := sugar.NewLot(g.sap, g.brix, units.Celsius(20))
		if err != nil {
			log.Fatal(err)
		}
		season.Sap = append(season.Sap, lot)
		brought[g.who] += lot.Sugar()
	}
	for _, v := range drawn {
		lot, err := sugar.NewLot(v, 66.9, units.Celsius(20))
		if err != nil {
			log.Fatal(err)
		}
		season.Syrup = append(season.Syrup, lot)
	}

	a, err := season.Account()
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("sugar in ", a.SugarIn.Text(units.Pound, 0))
	fmt.Println("sugar out", a.SugarOut.Text(units.Pound, 0))
	fmt.Printf("lost %.0f lb, give or take %.0f\n", a.Lost.Pounds(), a.Uncertainty.Pounds())
	fmt.Println(a.SyrupPerTap.Text(units.USGallon, 2), "of syrup a tap")

	// Sap of different strength is pooled: what counts is the sugar.
	var among []money.Contribution
	for _, who := range []string{"Hill house", "Creek lot"} {
		c, err := money.BySugar(who, brought[who])
		if err != nil {
			log.Fatal(err)
		}
		among = append(among, c)
	}
	baskets, err := money.DivideJars(filled, among)
	if err != nil {
		log.Fatal(err)
	}
	for _, b := range baskets {
		fmt.Println(b.Name, "takes", b.Counts[0], "quarts and", b.Counts[1], "pints")
	}
	// Output:
	// sugar in  93 lb
	// sugar out 89 lb
	// lost 4 lb, give or take 6
	// 0.24 US gal of syrup a tap
	// Hill house takes 17 quarts and 19 pints
	// Creek lot takes 13 quarts and 17 pints
}
