package units_test

import (
	"fmt"

	"example.org/sapreckoner/units"
)

// 0.36 gal at 50 a gallon are 18, and 1.363 L of it at 13.21 a liter are the same.
func ExampleMiss_Worth() {
	miss := units.Miss{Brix: -0.45, Syrup: 0.36 * units.USGallon}
	fmt.Printf("%.2f %.2f\n", miss.Worth(50, units.USGallon), miss.Worth(13.21, units.Liter))
	// Output: 18.00 18.00
}
