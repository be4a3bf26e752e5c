package finish_test

import (
	"fmt"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// A US gallon of 66.9 Brix holds 7.41 lb of solids; at 12.3 percent moisture it
// makes 7.41/0.877 = 8.45 lb.
func ExampleProductWeight() {
	gallon := lot(units.USGallon, 66.9)
	dry, err := finish.ProductWeight(gallon, 0)
	fmt.Println(dry.Text(units.Pound, 2), err)
	candy, err := finish.ProductWeight(gallon, 12.3)
	fmt.Println(candy.Text(units.Pound, 2), err)
	// Output:
	// 7.41 lb <nil>
	// 8.45 lb <nil>
}

// 7.41/7.80 = 0.950.
func ExampleProductMoisture() {
	m, err := finish.ProductMoisture(lot(units.USGallon, 66.9), units.Pounds(7.80))
	fmt.Println(m.Text(1), err)
	// Output: 5.0 % <nil>
}

// Cornell Maple Bulletin 208 and Ohio State University Extension print 7.5 lb.
func ExampleProductFigures() {
	f := finish.ProductFigures()[0]
	fmt.Println(f.Product, f.Low.Text(units.Pound, 1), f.High.Text(units.Pound, 1), f.Obtained)
	fmt.Println(f.Source)
	// Output:
	// molded soft sugar 7.5 lb 7.5 lb read
	// Cornell Maple Bulletin 208; Ohio State University Extension
}
