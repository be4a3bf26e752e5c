package sugar_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A lot goes out as an object and comes back whole. What [sugar.NewLotByMass]
// refuses is refused on the way in.
func ExampleLot_MarshalJSON() {
	l, err := sugar.NewLotByMass(100, 50, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := json.Marshal(l)
	fmt.Println(string(b), err)
	err = json.Unmarshal([]byte(`{"mass": "100 kg", "brix": "90 Brix", "temperature": "20 C"}`), &l)
	fmt.Println(units.Reason(err, units.Metric))
	fmt.Println(l.Text(units.Metric))
	// Output:
	// {"mass":"100 kg","brix":"50 Brix","sugar":"50 kg","temperature":"20 C"} <nil>
	// sugar content 90 Brix is outside 0 to 85 Brix: beyond 85 Brix the liquid sets as candy: go by its boiling temperature
	// 81.3 L of 50.0 Brix at 20.0 C
}

func ExampleLot_String() {
	l, err := sugar.NewLot(3*units.USGallon, 66, units.Celsius(60))
	fmt.Println(l, err)
	// Output: 3 US gal (11.4 L) of 66.0 Brix at 140.0 F (60.0 C) <nil>
}

func ExampleColorClasses() {
	fmt.Println(sugar.ColorClasses())
	var c sugar.ColorClass
	err := json.Unmarshal([]byte(`"very drak"`), &c)
	var e *units.ParseError
	fmt.Println(errors.As(err, &e), units.Reason(err, units.US))
	// Output:
	// [Golden Amber Dark Very Dark]
	// true "very drak": not one of the names: did you mean "Very Dark"? Use one of: Golden, Amber, Dark, Very Dark
}

func ExampleConfections() {
	fmt.Println(sugar.Confections())
	// Output: [molded sugar maple cream]
}

func ExampleJurisdictions() {
	fmt.Println(sugar.Jurisdictions()[:3])
	// Output: [United States Canada New York]
}

func ExampleParseAbsorbance() {
	a, err := sugar.ParseAbsorbance("0.301 A")
	fmt.Println(a, err)
	// Output: 0.301 A <nil>
}

// A meter in mmol/L shows an eighteenth of one in mg/dL.
func ExampleParseGlucose() {
	g, err := sugar.ParseGlucose("2 mmol/L")
	fmt.Println(g.Text(0), err)
	// Output: 36 mg/dL <nil>
}
