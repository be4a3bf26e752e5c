package records_test

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/units/records"
)

// Money is read by the caller's own exact parser: the cell comes as written, and
// the unit of its column apart.
func ExampleCell() {
	var price, unit string
	r, err := records.New("prices.csv", strings.NewReader("price_lb,note\n2.50,first run\n"), records.Cell("price", &price, &unit, "lb", "kg"))
	if err != nil {
		fmt.Println(err)
		return
	}
	err = r.Next()
	fmt.Println(price, "a", unit, err)
	fmt.Println(r.Cells())
	// Output:
	// 2.50 a lb <nil>
	// [2.50 first run]
}
