package fuel_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// What people choose from is listed, by names that are read back.
func ExamplePiles() {
	for _, pile := range fuel.Piles() {
		fmt.Println(pile)
	}
	fmt.Println(fuel.Bases())
	var pile fuel.Pile
	err := pile.UnmarshalText([]byte("stacked"))
	fmt.Println(pile == fuel.Stacked, err)
	// Output:
	// stacked
	// loose, 12 or 16 in
	// loose, 24 in
	// [gross less moisture net delivered]
	// true <nil>
}

// By definition 20 lb of water in 100 lb of wood are 20 lb on 80 lb of dry wood.
func ExampleParseWetMoisture() {
	wet, err := fuel.ParseWetMoisture("20 % wet basis")
	fmt.Println(wet.Text(1), "is", wet.Dry().Text(0), err)
	dry, err := fuel.ParseDryMoisture("25 % dry basis")
	fmt.Println(dry, "is", dry.Wet(), err)
	_, err = fuel.ParseWetMoisture("20 %")
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// 20.0 % wet basis is 25 % dry basis <nil>
	// 25 % dry basis is 20 % wet basis <nil>
	// "20 %": unknown unit: use one of: % wet basis
}

func ExampleBasisError_Text() {
	_, err := fuel.GenericCordwood().Needed(units.MillionBtuIT, fuel.Efficiency{})
	var ask *fuel.BasisError
	if errors.As(err, &ask) {
		fmt.Println(ask.Text(units.US))
	}
	// Output: gross heat needs an efficiency, and none is safe to assume: learn it from past days, or take a published range
}

// Boils of 40, 44 and 48 percent scatter by 4. The next one lies within 4 times
// 1.32, for three boils (GUM, table G.2, from memory), times the root of 1 1/3:
// 6.1.
func ExampleLearned_String() {
	var boils []fuel.Firing
	for _, share := range []units.Share{40, 44, 48} {
		boils = append(boils, fuel.Firing{
			Into:   units.MillionBtusIT(share.Fraction()),
			Burned: fuel.Heat{Energy: units.MillionBtuIT, Basis: fuel.Net},
		})
	}
	learned, err := fuel.LearnEfficiency(boils...)
	fmt.Println(learned, err)
	// Output: 44 +/- 6 % of net heat <nil>
}
