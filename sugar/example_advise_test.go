package sugar_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By hand, from 66 to 68.9 Brix: 67.0 within 0.36 reaches from 66.64 to 67.36 and
// is inside; 66.2 reaches from 65.84 to 66.56, across the least; 69.4 begins at
// 69.04, above the most.
func ExampleStandard_Advise() {
	rule, err := sugar.UnitedStates.Standard()
	if err != nil {
		log.Fatal(err)
	}
	for _, measured := range []units.Brix{65.4, 66.2, 67, 68.2, 69.4} {
		advice, err := rule.Advise(measured, 0.36, 0)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Printf("%s: %v, crystals %t\n", measured.Text(1), advice.Do, advice.Crystals)
	}
	// Output:
	// 65.4 Brix: boil it on, crystals false
	// 66.2 Brix: read again, crystals false
	// 67.0 Brix: leave it, crystals false
	// 68.2 Brix: leave it, crystals true
	// 69.4 Brix: thin it, crystals true
}

// A target of one's own: 67.2 within 0.36 may be 66.9 already, 67.6 is not.
func ExampleAdvice() {
	rule, err := sugar.UnitedStates.Standard()
	if err != nil {
		log.Fatal(err)
	}
	for _, measured := range []units.Brix{67.2, 67.6} {
		advice, err := rule.Advise(measured, 0.36, 66.9)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(measured.Text(1), advice.Verdict, advice.Do)
	}
	// Output:
	// 67.2 Brix inside leave it
	// 67.6 Brix inside thin it
}

func ExampleRemedy_String() {
	var r sugar.Remedy
	fmt.Println(r)
	// Output: read again
}
