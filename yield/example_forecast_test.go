package yield_test

import (
	"fmt"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// USDA NASS, Crop Production, January 2022: Vermont made 1,540,000 gal of
// 5,900,000 taps in 2021, 0.261 per tap.
func ExamplePastSeason_PerTap() {
	v, err := yield.PastSeason{Year: 2021, Taps: 5_900_000, Syrup: units.USGallons(1_540_000)}.PerTap()
	fmt.Println(v.Text(units.USGallon, 3), err)
	// Output: 0.261 US gal <nil>
}

// Three invented seasons: 0.20, 0.25 and 0.28 US gal of each tap.
func ExampleForecastFromPast() {
	f, err := yield.ForecastFromPast(60, []yield.PastSeason{
		{Year: 1, Taps: 40, Syrup: units.USGallons(10)},
		{Year: 2, Taps: 50, Syrup: units.USGallons(14)},
		{Year: 3, Taps: 50, Syrup: units.USGallons(10)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Low.Text(units.USGallon, 1), f.Middle.Text(units.USGallon, 1), f.High.Text(units.USGallon, 1))
	// Output: 12.0 US gal 15.0 US gal 16.8 US gal
}

// 60 taps give 300 to 900 gal of sap; at 43.389 gal of 2.0 Brix to one of 66.0
// that is 6.9 to 20.7 of syrup.
func ExampleForecastFromGravity() {
	f, err := yield.ForecastFromGravity(60, 2.0, 66.0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Low.Text(units.USGallon, 1), "to", f.High.Text(units.USGallon, 1))
	fmt.Println(f.Basis)
	// Output:
	// 6.9 US gal to 20.7 US gal
	// gravity figures, from memory of extension leaflets
}

// USDA NASS prints 0.345, 0.342 and 0.261 US gal per tap for Vermont.
func ExampleForecastFromState() {
	f, err := yield.ForecastFromState(1000, yield.Vermont)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f.Low.Text(units.USGallon, 0), f.Middle.Text(units.USGallon, 0), f.High.Text(units.USGallon, 0))
	fmt.Println(f.Basis.Warning())
	// Output:
	// 261 US gal 342 US gal 345 US gal
	// state averages mix all methods, much of it vacuum tubing, and mislead users of buckets: expect less
}

func ExampleState_PerTap() {
	v, err := yield.Vermont.PerTap(2021)
	fmt.Println(v.Text(units.USGallon, 3), err)
	// Output: 0.261 US gal <nil>
}

func ExampleState_String() {
	fmt.Println(yield.NewHampshire)
	// Output: New Hampshire
}

func ExampleBasis_String() {
	fmt.Println(yield.StateAverage)
	// Output: state averages, all methods mixed
}

func ExampleBasis_Warning() {
	fmt.Println(yield.OwnSeasons.Warning() == "", yield.Basis(0).Warning())
	// Output: true no forecast
}
