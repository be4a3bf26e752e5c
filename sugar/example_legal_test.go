package sugar_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Local rules come first, and rules change: read the text in force.
func ExampleJurisdiction_Standard() {
	rule, err := sugar.Vermont.Standard()
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(rule.Place, rule.Min.Text(1), "to", rule.Max.Text(1), "at", rule.At.Text(units.ScaleFahrenheit, 0))
	fmt.Println(rule.Source)
	// Output:
	// Vermont 66.9 Brix to 68.9 Brix at 60 F
	// University of Vermont Extension, statement of the rule
}

func ExampleJurisdiction() {
	for _, place := range []sugar.Jurisdiction{sugar.UnitedStates, sugar.Canada, sugar.NewYork, sugar.Maine, sugar.Vermont, sugar.Ontario, sugar.NewHampshire} {
		rule, err := place.Standard()
		if err != nil {
			log.Fatal(err)
		}
		most := "no limit"
		if rule.Max != 0 {
			most = rule.Max.Text(1)
		}
		fmt.Println(place.String()+":", rule.Min.Text(1), "to", most)
	}
	// Output:
	// United States: 66.0 Brix to 68.9 Brix
	// Canada: 66.0 Brix to 68.9 Brix
	// New York: 66.0 Brix to 68.9 Brix
	// Maine: 66.0 Brix to 69.0 Brix
	// Vermont: 66.9 Brix to 68.9 Brix
	// Ontario: 66.0 Brix to no limit
	// New Hampshire: 66.9 Brix to no limit
}

func ExampleJurisdiction_String() {
	fmt.Println(sugar.NewYork)
	// Output: New York
}

// A buyer's own rule.
func ExampleStandard() {
	rule := sugar.Standard{Place: "a packer (invented)", Min: 66.5, Max: 68}
	verdict, err := rule.Judge(67.2, 0.2)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(verdict)
	// Output: inside
}

// Half of the field hydrometers checked lie within 0.2 Brix.
func ExampleStandard_Judge() {
	rule, err := sugar.UnitedStates.Standard()
	if err != nil {
		log.Fatal(err)
	}
	for _, measured := range []units.Brix{65.5, 66.1, 66.9, 69.4} {
		verdict, err := rule.Judge(measured, 0.2)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(measured.Text(1), verdict)
	}
	// Output:
	// 65.5 Brix too thin
	// 66.1 Brix too close to call
	// 66.9 Brix inside
	// 69.4 Brix too dense
}

func ExampleVerdict() {
	var v sugar.Verdict
	fmt.Println(v)
	// Output: too close to call
}

func ExampleVerdict_String() {
	fmt.Println(sugar.TooDense.String())
	// Output: too dense
}
