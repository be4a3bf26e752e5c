package density_test

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// The polynomial's own figures for a syrup and a sap.
func ExampleSolution() {
	for _, b := range []units.Brix{66.9, 66, 10} {
		d, err := density.Solution(b, units.Celsius(20))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(b.Text(1), "weighs", d.Text(units.KilogramPerCubicMeter, 3))
	}
	// Output:
	// 66.9 Brix weighs 1328.191 kg/m3
	// 66.0 Brix weighs 1322.662 kg/m3
	// 10.0 Brix weighs 1038.115 kg/m3
}

func ExampleSolution_range() {
	_, err := density.Solution(95, units.Celsius(20))
	fmt.Println(err)
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output:
	// density.Solution: sugar content 95 Brix is outside 0 to 85 Brix: beyond 85 Brix the liquid sets as candy: go by its boiling temperature
	// true
}

func ExampleBrixFromDensity() {
	b, err := density.BrixFromDensity(units.KilogramsPerCubicMeter(1328.191), units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 66.9 Brix
}

// Water at 20 C, 998.20 kg/m3 in every handbook.
func ExampleWater() {
	d, err := density.Water(units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d.Text(units.KilogramPerCubicMeter, 2))
	// Output: 998.20 kg/m3
}

func ExampleExtrapolated() {
	fmt.Println(density.Extrapolated(units.Fahrenheit(190)), density.Extrapolated(units.Fahrenheit(211)))
	// Output: false true
}

func ExampleCaveatsOf() {
	cold := density.CaveatsOf(66.9, units.Celsius(15))
	fmt.Println("supersaturated:", cold.Supersaturated)
	sap := density.CaveatsOf(2, units.Celsius(4))
	fmt.Println("near the density maximum:", sap.DensityMaximum)
	// Output:
	// supersaturated: true
	// near the density maximum: true
}

func ExampleCaveats() {
	var none density.Caveats
	hot := density.CaveatsOf(66.9, units.Fahrenheit(211))
	fmt.Println(hot == none, hot.Extrapolated)
	// Output: false true
}

// The air lifts a kilogram or so of every cubic meter.
func ExampleInAir() {
	d, err := density.Solution(66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d.Text(units.PoundPerUSGallon, 4), "in vacuo")
	fmt.Println(density.InAir(d).Text(units.PoundPerUSGallon, 4), "in air")
	// Output:
	// 11.0843 lb/US gal in vacuo
	// 11.0759 lb/US gal in air
}

// Syrup that weighs 11 pounds per gallon was once the rule (32 FR 7579, 1967).
func ExampleFromAir() {
	d := density.FromAir(units.PoundsPerUSGallon(11))
	b, err := density.BrixFromDensity(d, units.Fahrenheit(68))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(2))
	// Output: 65.42 Brix
}

// A US gallon of syrup in vacuo and on a scale in air.
func ExampleMass() {
	m, err := density.Mass(units.USGallon, 66.9, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m.Text(units.Pound, 4))
	// Output: 11.0843 lb
}

func ExampleWeightInAir() {
	m, err := density.WeightInAir(units.USGallon, 66.0, units.Celsius(20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m.Text(units.Pound, 4))
	// Output: 11.0298 lb
}

// What is bottled hot is less when it is cold.
func ExampleContraction() {
	for _, f := range []float64{180, 185, 200} {
		s, err := density.Contraction(66.9, units.Fahrenheit(f), units.Fahrenheit(68))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("from %g F it shrinks by %s\n", f, s.Text(3))
	}
	// Output:
	// from 180 F it shrinks by 2.758 %
	// from 185 F it shrinks by 2.896 %
	// from 200 F it shrinks by 3.310 %
}

func ExampleVolumeAt() {
	cold, err := density.VolumeAt(1*units.USGallon, 66.9, units.Fahrenheit(180), units.Fahrenheit(68))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(cold.Text(units.USGallon, 3)) // 1 - 0.02758
	// Output: 0.972 US gal
}

// 1/(1 - 0.02896) of what the label says.
func ExampleHotVolume() {
	fill, err := density.HotVolume(32*units.USFluidOunce, 66.9, units.Fahrenheit(185))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(fill.Text(units.USFluidOunce, 2))
	// Output: 32.95 US fl oz
}
