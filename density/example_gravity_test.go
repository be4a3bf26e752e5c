package density_test

import (
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func ExampleSG2020FromBrix() {
	sg, err := density.SG2020FromBrix(66)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.5f\n", sg)
	// Output: 1.32543
}

func ExampleBrixFromSG2020() {
	b, err := density.BrixFromSG2020(1.32543)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 66.00 Brix
}

// The true gravity is a little less than the apparent one.
func ExampleTrueSG2020FromBrix() {
	sg, err := density.TrueSG2020FromBrix(66)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.5f\n", sg)
	// Output: 1.32504
}

func ExampleBrixFromTrueSG2020() {
	b, err := density.BrixFromTrueSG2020(1.32504)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 66.00 Brix
}

// The pairs of the rules: 66 Brix and 35.6 Be, 66.9 and 36, 68.9 and 37.
func ExampleBaumeFromBrix() {
	for _, b := range []units.Brix{66, 66.9, 68.9} {
		be, err := density.BaumeFromBrix(b)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.2f Be\n", be)
	}
	// Output:
	// 35.60 Be
	// 36.06 Be
	// 37.07 Be
}

func ExampleBrixFromBaume() {
	b, err := density.BrixFromBaume(36.06)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

// Rows 0, 10 and 66 of Table 114 of NBS Circular C440.
func ExampleScale_SG2020() {
	for _, b := range []units.Brix{0, 10, 66} {
		sg, err := density.NBSC440.SG2020(b)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.5f\n", sg)
	}
	// Output:
	// 1.00000
	// 1.04003
	// 1.32516
}

// Row 66 of Table 114 of NBS Circular C440, the other way.
func ExampleScale_Brix() {
	b, err := density.NBSC440.Brix(1.32516)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 66.00 Brix
}

// Baume from Table 114 of NBS Circular C440.
func ExampleScale_Baume() {
	for _, b := range []units.Brix{66, 66.9, 68.9} {
		be, err := density.NBSC440.Baume(b)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.2f Be\n", be)
	}
	// Output:
	// 35.58 Be
	// 36.03 Be
	// 37.04 Be
}

func ExampleScale_BrixFromBaume() {
	b, err := density.NBSC440.BrixFromBaume(36.03)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

// The same syrup on the two scales.
func ExampleScale_Convert() {
	b, err := density.ICUMSA.Convert(66, density.NBSC440)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(3))
	// Output: 66.045 Brix
}

func ExampleScale_String() {
	fmt.Println(density.ICUMSA, density.NBSC440)
	// Output: ICUMSA NBS C440
}

func ExampleScale() {
	var s density.Scale // the zero value
	fmt.Println(s == density.ICUMSA)
	// Output: true
}

// Row 67 of the ICUMSA 1974 scale.
func ExampleRefractiveIndex() {
	n, err := density.RefractiveIndex(67)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.5f\n", n)
	// Output: 1.45822
}

func ExampleBrixFromRefractiveIndex() {
	b, err := density.BrixFromRefractiveIndex(1.45822)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 67.0 Brix
}
