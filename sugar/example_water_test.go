package sugar_test

import (
	"fmt"
	"log"
	"math"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func ExampleWaterActivity() {
	for _, b := range []units.Brix{66, 66.9, 68.9} {
		a, err := sugar.WaterActivity(b, units.Celsius(25))
		if err != nil {
			log.Fatal(err)
		}
		fmt.Printf("%.3f\n", a)
	}
	// Output:
	// 0.858
	// 0.852
	// 0.836
}

func ExampleBrixFromWaterActivity() {
	b, err := sugar.BrixFromWaterActivity(0.852, units.Celsius(25))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(0))
	// Output: 67 Brix
}

// Inverted sugar binds more water than the same weight of sucrose.
func ExampleSolute() {
	at := units.Celsius(25)
	sucrose, err := sugar.WaterActivity(66.9, at)
	if err != nil {
		log.Fatal(err)
	}
	inverted, err := sugar.Solute{Inverted: 10 * units.Percent}.WaterActivity(66.9, at)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(inverted < sucrose)
	// Output: true
}

func ExampleSolute_WaterActivity() {
	a, err := sugar.Solute{Inverted: 5 * units.Percent}.WaterActivity(66.9, units.Celsius(105))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.3f\n", a)
	// Output: 0.856
}

func ExampleSolute_BrixFromWaterActivity() {
	b, err := sugar.Solute{Inverted: 5 * units.Percent}.BrixFromWaterActivity(0.856, units.Celsius(105))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(0))
	// Output: 67 Brix
}

func ExampleOsmoticPressure() {
	p, err := sugar.OsmoticPressure(2, units.Fahrenheit(55))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(p.Text(units.Bar, 2))
	for _, b := range []units.Brix{8, 12, 20} {
		p, err := sugar.OsmoticPressure(b, units.Fahrenheit(55))
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(p.Text(units.Bar, 1))
	}
	// Output:
	// 1.43 bar
	// 6.2 bar
	// 9.9 bar
	// 18.9 bar
}

// A machine whose pump keeps up 18.9 bar stands still at 20 Brix.
func ExampleBrixFromOsmoticPressure() {
	b, err := sugar.BrixFromOsmoticPressure(18.9*units.Bar, units.Fahrenheit(55))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(0))
	// Output: 20 Brix
}

// The CRC Handbook, from memory, has a depression of 0.63 K at 10 Brix.
func ExampleFreezingPoint() {
	t, err := sugar.FreezingPoint(10)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(units.ScaleCelsius, 2))
	// Output: -0.63 C
}

// Sap that stands among ice at -0.63 C is no longer thin.
func ExampleBrixFromFreezingPoint() {
	b, err := sugar.BrixFromFreezingPoint(units.Celsius(-0.63))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(0))
	// Output: 10 Brix
}

// Vavrinecz's table, from memory, has 66.72 percent at 20 C.
func ExampleSolubility_Saturation() {
	b, err := sugar.Vavrinecz.Saturation(units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(2))
	// Output: 66.72 Brix
}

func ExampleSolubility_SaturationTemperature() {
	for _, s := range []sugar.Solubility{sugar.Vavrinecz, sugar.Charles} {
		t, err := s.SaturationTemperature(66.9)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(s, t.Text(units.ScaleCelsius, 1))
	}
	// Output:
	// Vavrinecz 21.3 C
	// Charles 22.1 C
}

func ExampleSolubility() {
	fmt.Println(sugar.Vavrinecz, sugar.Charles)
	// Output: Vavrinecz Charles
}

func ExampleSolubilities() {
	fmt.Println(sugar.Solubilities())
	// Output: [Vavrinecz Charles Herzfeld Sokolovsky]
}

// 66.9 Brix are 202.1 g of sugar to 100 g of water; at 10 C Herzfeld has 190.5.
func ExampleSolubility_Supersaturation() {
	s, err := sugar.Herzfeld.Supersaturation(66.9, units.Celsius(10))
	fmt.Printf("%.3f %v\n", s, err)
	// Output: 1.061 <nil>
}

func ExampleSolubility_String() {
	fmt.Println(sugar.Charles.String())
	// Output: Charles
}

// Syrup of 68.5 Brix is above what water holds in a cellar at 12 C by every source,
// and above the 68 from which practice sees crystals.
func ExampleCrystals() {
	risk, err := sugar.Crystals(68.5, units.Celsius(12))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("crystals are", risk)
	// Output: crystals are likely
}

func ExampleCrystalRisk() {
	var risk sugar.CrystalRisk
	fmt.Println(risk, sugar.CrystalsUnlikely, sugar.CrystalsPossible, sugar.CrystalsLikely)
	// Output: unknown unlikely possible likely
}

func ExampleCrystalRisk_String() {
	fmt.Println(sugar.CrystalsPossible.String())
	// Output: possible
}

// Why syrup is filtered hot.
func ExampleViscosity() {
	for _, tc := range []struct {
		c        float64
		decimals int
	}{{20, 0}, {60, 1}, {80, 1}} {
		v, err := sugar.Viscosity(66, units.Celsius(tc.c))
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(v.Text(units.MillipascalSecond, tc.decimals))
	}
	// Output:
	// 184 mPa s
	// 20.5 mPa s
	// 10.0 mPa s
}

func ExampleSpecificHeat() {
	c, err := sugar.SpecificHeat(66, units.Celsius(20))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(c.Text(units.KilojoulePerKilogramKelvin, 3))
	// Output: 2.629 kJ/(kg K)
}

// Heat to bring a kilogram of sap from 4 to 100 C.
func ExampleEnthalpy() {
	cold, err := sugar.Enthalpy(2, units.Celsius(4))
	if err != nil {
		log.Fatal(err)
	}
	hot, err := sugar.Enthalpy(2, units.Celsius(100))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println((hot - cold).Text(units.KilojoulePerKilogram, 0))
	// Output: 398 kJ/kg
}

// Equal masses at one strength meet between their temperatures.
func ExampleTemperatureFromEnthalpy() {
	cold, err := sugar.Enthalpy(2, units.Celsius(5))
	if err != nil {
		log.Fatal(err)
	}
	hot, err := sugar.Enthalpy(2, units.Celsius(95))
	if err != nil {
		log.Fatal(err)
	}
	t, err := sugar.TemperatureFromEnthalpy(2, (cold+hot)/2)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(units.ScaleCelsius, 0))
	// Output: 50 C
}

// The activity of one syrup at two temperatures: 0.852 at 25 C, as WaterActivity has
// it, and where it boils, at 104.17 C under 1 atm, 101.3 kPa over the 117.6 of water
// there (steam tables, from memory).
func ExampleSolute_LogActivity() {
	l, err := sugar.Solute{}.LogActivity(66.9)
	if err != nil {
		log.Fatal(err)
	}
	for _, at := range []units.Temperature{units.Celsius(25), units.Celsius(104.17)} {
		fmt.Printf("%.3f\n", math.Exp(l.Mixing+l.Kelvin/at.Kelvin()))
	}
	b, err := sugar.Solute{}.BrixFromLogActivity(l.Mixing+l.Kelvin/298.15, units.Celsius(25))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(1))
	// Output:
	// 0.852
	// 0.862
	// 66.9 Brix
}

// Water is 0, the logarithm of 1.
func ExampleSolute_BrixFromLogActivity() {
	b, err := sugar.Solute{}.BrixFromLogActivity(math.Log(0.852), units.Celsius(25))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(0))
	// Output: 67 Brix
}
