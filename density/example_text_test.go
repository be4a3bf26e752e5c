package density_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A number says its convention, in text as in Go.
func ExampleBaume145_Text() {
	fmt.Println(density.Baume145(36.03).Text(1))
	fmt.Println(density.SG2020(1.33064).Text(3), "and", density.TrueSG2020(1.33026).Text(4))
	fmt.Println(density.ND20(1.45401).Text(4))
	// Output:
	// 36.0 Be145
	// 1.331 SG20/20 and 1.3303 true SG20/20
	// 1.4540 nD20
}

func ExampleDisagreeError_Text() {
	_, err := density.Combine(density.Measurement{Brix: 66.9, Uncertainty: 0.4}, density.Measurement{Brix: 65.9, Uncertainty: 0.2})
	var apart *density.DisagreeError
	fmt.Println(errors.As(err, &apart) && apart.Text(units.US) == units.Reason(err, units.US))
	// Output: true
}

// A plain Be is read where the type says which Baume is meant.
func ExampleParseBaume145() {
	b, err := density.ParseBaume145("36 Be")
	fmt.Println(b.Text(0), err)
	sg, err := density.ParseSG2020("1.331 SG20/20")
	fmt.Println(sg.Text(3), err)
	vacuum, err := density.ParseTrueSG2020("1.331 true SG20/20")
	fmt.Println(vacuum.Text(3), err)
	n, err := density.ParseND20("1.454 nD20")
	fmt.Println(n.Text(3), err)
	fmt.Println(density.Scales())
	// Output:
	// 36 Be145 <nil>
	// 1.331 SG20/20 <nil>
	// 1.331 true SG20/20 <nil>
	// 1.454 nD20 <nil>
	// [ICUMSA NBS C440]
}
