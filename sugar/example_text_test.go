package sugar_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A transmission of one half is an absorbance of log10 2 = 0.301.
func ExampleAbsorbance_Text() {
	a, err := sugar.AbsorbanceOf(50)
	fmt.Println(a.Text(3), err)
	// Output: 0.301 A <nil>
}

func ExampleInfeasibleError_Text() {
	_, err := sugar.Blend()
	var ask *sugar.InfeasibleError
	if errors.As(err, &ask) {
		fmt.Println(ask.Text(units.US))
	}
	// Output: there is nothing to blend: give at least one lot that is not empty
}

func ExampleLot_Text() {
	syrup, err := sugar.NewLot(3*units.USGallon, 66.9, units.Fahrenheit(68))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(syrup.Text(units.US))
	// Output: 3 US gal of 66.9 Brix at 68.0 F
}

// What people choose from is listed, by names that are read back.
func ExampleColorClasses() {
	fmt.Println(sugar.ColorClasses())
	fmt.Println(sugar.Confections())
	fmt.Println(sugar.Jurisdictions()[0])
	var c sugar.ColorClass
	fmt.Println(units.Reason(c.UnmarshalText([]byte("goldn")), units.US))
	// Output:
	// [Golden Amber Dark Very Dark]
	// [molded sugar maple cream]
	// United States
	// "goldn": not one of the names: did you mean "Golden"? Use one of: Golden, Amber, Dark, Very Dark
}

func ExampleParseGlucose() {
	meter, err := sugar.ParseGlucose("20 mg/dL")
	fmt.Println(meter.Text(0), err)
	dark, err := sugar.ParseAbsorbance("0.3 A")
	fmt.Println(dark.Text(1), err)
	// Output:
	// 20 mg/dL <nil>
	// 0.3 A <nil>
}
