package sugar_test

import (
	"fmt"
	"log"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A limit belongs to the class above it, and readings are rounded to 0.1 first.
func ExampleColorClassOf() {
	for _, t := range []units.Share{75.0, 74.9, 50.0, 49.9, 25.0, 24.9} {
		c, err := sugar.ColorClassOf(t)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(t.Text(1), c)
	}
	// Output:
	// 75.0 % Golden
	// 74.9 % Amber
	// 50.0 % Amber
	// 49.9 % Dark
	// 25.0 % Dark
	// 24.9 % Very Dark
}

func ExampleColorClass() {
	for c := sugar.Golden; c <= sugar.VeryDark; c++ {
		low, below := c.Limits()
		fmt.Println(c.String()+",", c.Taste()+":", low.Text(1), "to below", below.Text(1))
	}
	// Output:
	// Golden, delicate: 75.0 % to below 100.1 %
	// Amber, rich: 50.0 % to below 75.0 %
	// Dark, robust: 25.0 % to below 50.0 %
	// Very Dark, strong: 0.0 % to below 25.0 %
}

func ExampleColorClass_Limits() {
	low, below := sugar.Dark.Limits()
	fmt.Println(low.Text(0), below.Text(0))
	// Output: 25 % 50 %
}

func ExampleColorClass_String() {
	fmt.Println(sugar.VeryDark)
	// Output: Very Dark
}

func ExampleColorClass_Taste() {
	fmt.Println(sugar.Amber.Taste())
	// Output: rich
}

func ExampleAbsorbanceOf() {
	for _, t := range []units.Share{75, 50, 25} {
		a, err := sugar.AbsorbanceOf(t)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Printf("%.6f\n", a)
	}
	// Output:
	// 0.124939
	// 0.301030
	// 0.602060
}

func ExampleAbsorbance_Transmission() {
	t, err := sugar.Absorbance(0.301030).Transmission()
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(2))
	// Output: 50.00 %
}

// Half the light is lost in every 10 mm.
func ExampleTransmissionAtPath() {
	t, err := sugar.TransmissionAtPath(50, 10*units.Millimeter, 20*units.Millimeter)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(1))
	// Output: 25.0 %
}

// Thinning an over-dense syrup makes it a little lighter.
func ExampleTransmissionAtBrix() {
	t, err := sugar.TransmissionAtBrix(50, 68.9, 66.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(1))
	// Output: 51.3 %
}

// The mean of 80 and 40 would be 60, which is wrong.
func ExampleBlendTransmission() {
	t, err := sugar.BlendTransmission(
		sugar.Tinted{Volume: 5 * units.USGallon, Transmission: 80},
		sugar.Tinted{Volume: 5 * units.USGallon, Transmission: 40})
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(3))
	// Output: 56.569 %
}

func ExampleTinted() {
	drum := sugar.Tinted{Volume: 40 * units.USGallon, Transmission: 46}
	t, err := sugar.BlendTransmission(drum)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(0))
	// Output: 46 %
}

// A Dark lot of 46 percent is lifted to 50.5, which is Amber.
func ExampleLightShare() {
	share, err := sugar.LightShare(46, 82, 50.5)
	if err != nil {
		log.Fatal(err)
	}
	c, err := sugar.ColorClassOf(50.5)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(share.Text(3), "of the blend makes it", c)
	// Output: 16.145 % of the blend makes it Amber
}
