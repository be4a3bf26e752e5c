package sugar_test

import (
	"fmt"
	"log"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func ExampleInvertedFromMeter() {
	for _, reading := range []sugar.Glucose{20, 30, 40, 50, 60} {
		x, err := sugar.InvertedFromMeter(reading, 10)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(x.Text(1))
	}
	// Output:
	// 0.4 %
	// 0.6 %
	// 0.8 %
	// 1.0 %
	// 1.2 %
}

// Meters outside the United States show mmol/L.
func ExampleGlucose() {
	x, err := sugar.InvertedFromMeter(2.775*sugar.MillimolePerLiter, 10)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(x.Text(1))
	// Output: 1.0 %
}

// A dark syrup of 8 percent would show 400 mg/dL at 1:10.
func ExampleMeterFromInverted() {
	g, err := sugar.MeterFromInverted(8, 10)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.0f mg/dL\n", g)
	// Output: 400 mg/dL
}

func ExampleConfection() {
	for _, c := range []sugar.Confection{sugar.MoldedSugar, sugar.MapleCream} {
		low, high := c.Inverted()
		fmt.Println(c.String()+":", low.Text(1), "to", high.Text(1))
	}
	// Output:
	// molded sugar: 0.5 % to 1.5 %
	// maple cream: 0.0 % to 4.0 %
}

func ExampleConfection_Inverted() {
	low, high := sugar.MoldedSugar.Inverted()
	fmt.Println(low.Text(1), high.Text(1))
	// Output: 0.5 % 1.5 %
}

func ExampleConfection_String() {
	fmt.Println(sugar.MapleCream)
	// Output: maple cream
}

func ExampleConfection_Suits() {
	for _, c := range []sugar.Confection{sugar.MoldedSugar, sugar.MapleCream} {
		ok, err := c.Suits(3)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(c, ok)
	}
	// Output:
	// molded sugar false
	// maple cream true
}

// Syrup of 3 percent for molded sugar, with early syrup of 0.5 at hand.
func ExampleConfection_Blend() {
	least, most, err := sugar.MoldedSugar.Blend(3, 0.5)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("early syrup:", least.Text(0), "to", most.Text(0), "of the blend")
	// Output: early syrup: 60 % to 100 % of the blend
}

// An hour of boiling at pH 7 inverts under 0.05 percent even in thin sap, ten
// times less than at pH 6: one unit of pH is a factor of ten.
func ExampleInversion() {
	for _, acidity := range []float64{7, 6, 5.5} {
		x, err := sugar.Inversion(2, units.Celsius(104), acidity, time.Hour)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println("pH", acidity, x.Text(1))
	}
	// Output:
	// pH 7 0.0 %
	// pH 6 0.4 %
	// pH 5.5 1.3 %
}
