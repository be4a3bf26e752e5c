package yield_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// Sap per gallon of syrup from 2.0 to 66.0 Brix, by the balance of mass.
func ExampleRatio() {
	gallons, err := yield.Ratio(2.0, 66.0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f\n", gallons)

	_, err = yield.Ratio(66.9, 2.0)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// 43.389
	// true
}

// 52 gallons of sap to the gallon of 66.9 Brix: 66.9 x 1328.19 / 52 kg/m3 of
// sugar, which is 1.70 Brix at a density of 1005.
func ExampleBrixFromRatio() {
	sap, err := yield.BrixFromRatio(52, 66.9)
	if err != nil {
		fmt.Println(err)
		return
	}
	back, _ := yield.Ratio(sap, 66.9)
	fmt.Println(sap.Text(2), "and back:", fmt.Sprintf("%.2f", back))
	// Output: 1.70 Brix and back: 52.00
}

// University of New Hampshire Cooperative Extension prints 43, 34.4 and 28.7
// gallons.
func ExampleRuleOf86() {
	for _, sap := range []units.Brix{2, 2.5, 3} {
		gallons, err := yield.RuleOf86(sap)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.1f\n", gallons)
	}
	// Output:
	// 43.0
	// 34.4
	// 28.7
}

func ExampleRule_Ratio() {
	// A page of the University of Vermont prints 8.5 gal for sap of 10 Brix.
	gallons, err := yield.Revised669Less.Ratio(10)
	fmt.Printf("%.1f %v\n", gallons, err)
	// Output: 8.5 <nil>
}

func ExampleRule_ErrorAt() {
	for _, sap := range []units.Brix{2, 10, 20} {
		off, err := yield.Jones1946.ErrorAt(sap)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%s at %s: %+.2f %%\n", yield.Jones1946, sap.Text(0), off.Percents())
	}
	// Output:
	// 86/X at 2 Brix: -0.90 %
	// 86/X at 10 Brix: +2.27 %
	// 86/X at 20 Brix: +6.49 %
}

func ExampleRule_String() {
	fmt.Println(yield.Revised669, yield.Rule(0))
	// Output: 88.2/X no rule
}

func ExampleRule_Syrup() {
	fmt.Println(yield.Revised669.Syrup().Text(1))
	// Output: 66.9 Brix
}

func ExampleRule_Constants() {
	over, less := yield.Revised669Less.Constants()
	fmt.Println(over, less)
	// Output: 88.2 0.32
}
