package yield_test

import (
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// lot is for examples whose figures are known to be good.
func lot(v units.Volume, b units.Brix) sugar.Lot {
	l, err := sugar.NewLot(v, b, units.Celsius(20))
	if err != nil {
		panic(err)
	}
	return l
}

// An invented season of 60 taps. 66.9 x 1328.19/(2.0 x 1005.97) is 44.16 gal of
// 2.0 Brix sap to one of 66.9 Brix, so that 700 gal make 15.85 where 15.0 were
// drawn: 5.4 percent lost. The limits of the sap alone, 2 percent and 0.1 in 2.0
// Brix, are 7 percent: such a loss tells little.
func ExampleSeason_Account() {
	season := yield.Season{
		Sap:           []sugar.Lot{lot(units.USGallons(400), 2.0), lot(units.USGallons(300), 2.0)},
		Syrup:         []sugar.Lot{lot(units.USGallons(9), 66.9), lot(units.USGallons(6), 66.9)},
		Taps:          60,
		Days:          12,
		SapMeasured:   yield.Measured{Volume: 2, Brix: 0.1},
		SyrupMeasured: yield.Measured{Volume: 0.5, Brix: 0.2},
	}
	a, err := season.Account()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("sap per syrup %.1f, exact %.1f\n", a.Ratio, a.Exact)
	fmt.Printf("lost %.1f %%, known within %.0f %%; impossible: %v\n",
		a.LostShare.Percents(), 100*a.Uncertainty.Kilograms()/a.SugarIn.Kilograms(), a.Impossible)
	fmt.Println(a.SyrupPerTap.Text(units.USGallon, 2), "a tap")
	// Output:
	// sap per syrup 46.7, exact 44.2
	// lost 5.4 %, known within 7 %; impossible: false
	// 0.25 US gal a tap
}

// 25 gal at 15 Brix left in the pans hold 33.15 lb of sugar, 4.47 gal of 66.9
// Brix syrup.
func ExampleSeason_Expect() {
	pans := yield.Season{
		HeldBefore:   []sugar.Lot{lot(units.USGallons(25), 15)},
		HeldMeasured: yield.Measured{Volume: 5, Brix: 0.5},
	}
	a, err := pans.Account()
	fmt.Println(a.SugarIn.Text(units.Pound, 2), err)
	syrup, err := pans.Expect(0, 66.9)
	fmt.Println(syrup.Text(units.USGallon, 2), err)
	// Output:
	// 33.15 lb <nil>
	// 4.47 US gal <nil>
}

// byMass is lot by mass.
func byMass(m units.Mass, b units.Brix) sugar.Lot {
	l, err := sugar.NewLotByMass(m, b, units.Celsius(20))
	if err != nil {
		panic(err)
	}
	return l
}
