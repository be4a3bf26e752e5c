package sugar_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Ten gallons at 46 percent and one at 82, for 50.5 at least: 1/0.16145 - 1 = 5.19
// gallons of the dark one, half of it. For Golden every can is too dark.
func ExampleAim_Reach() {
	dark, _ := sugar.NewLot(10*units.USGallon, 66.9, units.Celsius(20))
	light, _ := sugar.NewLot(1*units.USGallon, 66.9, units.Celsius(20))
	cans := []sugar.Can{{Lot: dark, Transmission: 46}, {Lot: light, Transmission: 82}}

	var blend sugar.Reached
	blend, err := sugar.Aim{LeastLight: 50.5}.Reach(cans...)
	fmt.Println(blend.Parts[0].Text(0), blend.Parts[1].Text(0), err)

	_, err = sugar.Golden.Aim().Reach(cans[0])
	fmt.Println(errors.Is(err, sugar.ErrInfeasible), units.Reason(err, units.US))
	// Output:
	// 52 % 100 % <nil>
	// true every can is too dark: find a lighter one, or aim at a darker class
}

func ExampleColorClass_Aim() {
	aim := sugar.Amber.Aim()
	fmt.Println(aim.LeastLight, aim.MostLight)
	// Output: 50 % 74.9 %
}
