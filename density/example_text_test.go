package density_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A Baume stem says "36 Be": the type says that the modulus is 145.
func ExampleParseBaume145() {
	be, err := density.ParseBaume145("36 Be")
	fmt.Println(be, err)
	_, err = density.ParseBaume145("36")
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// 36 Be145 <nil>
	// "36": no unit: write the unit behind the number, one of: Be145
}

func ExampleParseSG2020() {
	sg, err := density.ParseSG2020("1.32543 SG20/20")
	fmt.Println(sg, sg.Text(3), err)
	// Output: 1.32543 SG20/20 1.325 SG20/20 <nil>
}

func ExampleParseTrueSG2020() {
	sg, err := density.ParseTrueSG2020("1.32504 true SG20/20")
	fmt.Println(sg, err)
	// Output: 1.32504 true SG20/20 <nil>
}

func ExampleParseND20() {
	index, err := density.ParseND20("1.45822 nD20")
	fmt.Println(index, err)
	// Output: 1.45822 nD20 <nil>
}

func ExampleScales() {
	fmt.Println(density.Scales())
	var s density.Scale
	err := s.UnmarshalText([]byte("NBS C44"))
	fmt.Println(units.Reason(err, units.US))
	// Output:
	// [ICUMSA NBS C440]
	// "NBS C44": not one of the names: did you mean "NBS C440"? Use one of: ICUMSA, NBS C440
}

// The digits that an uncertainty of 0.33 Brix leaves.
func ExampleMeasurement_String() {
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	m, err := stem.Measure(59, units.Fahrenheit(209), density.Doubt{Division: 0.5, Thermometer: units.FahrenheitDegree, Calibration: 0.1})
	fmt.Println(m, err)
	// Output: 66.8 +/- 0.3 Brix <nil>
}

// Three instruments that agree, by hand: see the test of the same numbers.
func ExampleCombine_three() {
	c, err := density.Combine(
		density.Measurement{Brix: 66.9, Uncertainty: 0.4},
		density.Measurement{Brix: 66.5, Uncertainty: 0.2},
		density.Measurement{Brix: 66.7, Uncertainty: 0.2})
	fmt.Printf("%v, chi-squared %.1f of %d, %v\n", c, c.ChiSquared, c.Free, err)
	// Output: 66.63 +/- 0.13 Brix, chi-squared 4.0 of 2, <nil>
}

// A hydrometer goes out and comes back by its fields. A form asks for the domain
// of one with NaN in its place.
func ExampleHydrometer_domain() {
	stem := density.Hydrometer{GraduatedAt: units.Celsius(20)}
	b, err := json.Marshal(stem)
	fmt.Println(string(b), err)
	_, err = stem.Brix(66, units.Celsius(math.NaN()))
	var e *units.RangeError
	if errors.As(err, &e) {
		fmt.Println(e.Arg, e.Low, e.High, e.Unit)
		fmt.Println(e.Text(units.US))
	}
	// Output:
	// {"GraduatedAt":"20 C","Scale":"ICUMSA","ReadsHigh":"0 Brix","Expansion":0} <nil>
	// at 0 110 C
	// temperature is not a number; it must lie in 32 to 230 F
}
