package boil_test

import (
	"errors"
	"fmt"
	"log"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The verification value of IAPWS R7-97(2012), Table 36.
func ExampleWater() {
	t, err := boil.Water(0.1 * units.Megapascal)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(units.ScaleKelvin, 6))
	// Output: 372.755919 K
}

// At one standard atmosphere water boils a little under 212 F.
func ExampleWater_atmosphere() {
	t, err := boil.Water(units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(units.ScaleFahrenheit, 2))
	// Output: 211.95 F
}

// The verification value of IAPWS R7-97(2012), Table 35.
func ExamplePressureFromWater() {
	p, err := boil.PressureFromWater(units.Kelvin(300))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(p.Text(units.Megapascal, 11))
	// Output: 0.00353658941 MPa
}

// Water boils at 208.9 F here today, by the probe that will watch the syrup and
// at its depth. No barometer is needed.
func ExamplePressureFromWater_calibration() {
	p, err := boil.PressureFromWater(units.Fahrenheit(208.9))
	if err != nil {
		log.Fatal(err)
	}
	takeOff, err := boil.SyrupPoint(66.9, p)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("take off at", takeOff.Text(units.ScaleFahrenheit, 1))
	// Output: take off at 216.4 F
}

// The standard atmosphere as ASHRAE Fundamentals tabulates it prints 11.341 and
// 10.108 psi.
func ExamplePressureAt() {
	for _, ft := range []float64{7000, 10000} {
		p, err := boil.PressureAt(units.Feet(ft))
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(p.Text(units.PSI, 3))
	}
	// Output:
	// 11.341 psi
	// 10.108 psi
}

// A published worked example, which truncates the answer to 84977 Pa.
func ExampleStationPressure() {
	p, err := boil.StationPressure(30.2*units.InchMercury, 5045*units.Foot)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(p.Text(units.Pascal, 1))
	// Output: 84978.0 Pa
}

func ExampleAltimeterSetting() {
	a, err := boil.AltimeterSetting(84978*units.Pascal, 5045*units.Foot)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(a.Text(units.InchMercury, 2))
	// Output: 30.20 inHg
}

// Two inches of syrup over the probe.
func ExamplePressureAtDepth() {
	p, err := boil.PressureAtDepth(units.Atmosphere, 2*units.Inch, 1272*units.KilogramPerCubicMeter)
	if err != nil {
		log.Fatal(err)
	}
	above, err := boil.SyrupPoint(66, units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	below, err := boil.SyrupPoint(66, p)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(below.Sub(above).Text(units.FahrenheitDegree, 2))
	// Output: 0.32 F deg
}

func ExampleRise() {
	for _, b := range []units.Brix{65.5, 66.0, 66.9} {
		d, err := boil.Rise(b, units.Atmosphere)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(b.Text(1), "boils above water by", d.Text(units.FahrenheitDegree, 2))
	}
	// Output:
	// 65.5 Brix boils above water by 7.01 F deg
	// 66.0 Brix boils above water by 7.20 F deg
	// 66.9 Brix boils above water by 7.56 F deg
}

func ExampleBrixFromRise() {
	b, err := boil.BrixFromRise(7.2*units.FahrenheitDegree, units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(1))
	// Output: 66.0 Brix
}

// A rise below zero: the water of the calibration did not boil, or the weather
// has changed.
func ExampleBrixFromRise_refused() {
	_, err := boil.BrixFromRise(-3*units.FahrenheitDegree, units.Atmosphere)
	var e *units.RangeError
	if errors.As(err, &e) {
		fmt.Println(e.Arg, "-", e.Hint)
	}
	// Output: rise - it counts from the boiling point of water today, and ends at 92 Brix: boil water and read the thermometer again
}

func ExampleSyrupPoint() {
	for _, kPa := range []float64{105, 110} {
		t, err := boil.SyrupPoint(66.9, units.Kilopascals(kPa))
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(t.Text(units.ScaleCelsius, 1))
	}
	// Output:
	// 105.2 C
	// 106.5 C
}

// What a thermometer set for 66.9 Brix of sucrose makes of sap whose sugar is
// partly inverted.
func ExampleRiseOf_inverted() {
	for _, share := range []units.Share{5 * units.Percent, 10 * units.Percent} {
		sap := sugar.Solute(sugar.Solute{Inverted: share}) // as package sugar has it
		b, err := boil.BrixFromRiseOf(sap, 7.56*units.FahrenheitDegree, units.Atmosphere)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(b.Text(1))
	}
	// Output:
	// 65.9 Brix
	// 65.0 Brix
}

// The sap of birches is refused.
func ExampleRiseOf_refused() {
	_, err := boil.SyrupPointOf(sugar.Solute{Inverted: units.Whole}, 66.9, units.Atmosphere)
	fmt.Println(err)
	// Output: boil.SyrupPointOf: inverted share 100 % is outside 0 to 20 %: a thermometer does not finish such a sap: syrup of glucose and fructose, as of birch, would stop at 51.5 Brix at the temperature of 66.9 Brix maple syrup, which ferments; finish it by density
}

func ExampleRiseOf() {
	d, err := boil.RiseOf(sugar.Solute{Inverted: 5 * units.Percent}, 66.9, units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(d.Text(units.FahrenheitDegree, 1))
	// Output: 8.0 F deg
}

func ExampleBrixFromRiseOf() {
	b, err := boil.BrixFromRiseOf(sugar.Solute{Inverted: 5 * units.Percent}, 7.56*units.FahrenheitDegree, units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(b.Text(1))
	// Output: 65.9 Brix
}

// With 5 percent inverted, 66.9 Brix boils 0.4 F higher than sucrose does.
func ExampleSyrupPointOf() {
	t, err := boil.SyrupPointOf(sugar.Solute{Inverted: 5 * units.Percent}, 66.9, units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(t.Text(units.ScaleFahrenheit, 1))
	// Output: 219.9 F
}

func ExampleLatentHeat() {
	t, err := boil.Water(units.Atmosphere)
	if err != nil {
		log.Fatal(err)
	}
	h, err := boil.LatentHeat(t)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(h.Text(units.KilojoulePerKilogram, 2))
	// Output: 2256.67 kJ/kg
}
