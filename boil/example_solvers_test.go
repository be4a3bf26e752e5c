package boil_test

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By arithmetic: 4 lb of 50 Brix hold 2 lb of sugar, which is all but 1 lb of 3.
func ExampleDown() {
	half, _ := sugar.NewLotByMass(4*units.Pound, 50, units.Fahrenheit(40))
	syrup, err := boil.Down(half, 66.667, units.Atmosphere)
	fmt.Println(syrup.Mass().Text(units.Pound, 2), err)
	// Output: 3.00 lb <nil>
}

// Sixty gallons of sap are too little for a pan that wants 5.83 gallons to cover
// it: at 20 Brix it is taken off and finished in a pot. By hand: 4.578 kg of sugar
// in 5.83 gal, 22.07 L, of 1.0376 kg/L.
func ExampleDownToVolume() {
	sap, _ := sugar.NewLot(60*units.USGallon, 2, units.Fahrenheit(40))
	off, err := boil.DownToVolume(sap, 5.83*units.USGallon, units.Atmosphere)
	fmt.Println("take it off at", off.Brix().Text(0), err)
	// Output: take it off at 20 Brix <nil>
}

// 0.1 K at the stop of syrup.
func ExampleRiseDoubt() {
	d, err := boil.RiseDoubt(66.9, units.Atmosphere)
	fmt.Println(d.Text(units.CelsiusDegree, 1), err)
	// Output: 0.1 C deg <nil>
}

// Two inches of syrup over a probe: the stop of 219.5 F is reached at 219.8, as
// 0.32 F more (boiling-errors-worked, read as 0.31 of water).
func ExampleProbe() {
	probe := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}
	at, err := probe.Shows(66.9)
	fmt.Println(at.Text(units.ScaleFahrenheit, 1), err)
	// Output: 219.8 F <nil>
}

func ExampleProbe_Shows() {
	surface, _ := boil.Probe{Pressure: units.Atmosphere}.Shows(66)
	deep, err := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}.Shows(66)
	fmt.Println(deep.Sub(surface).Text(units.FahrenheitDegree, 2), err)
	// Output: 0.32 F deg <nil>
}

// The 219.8 F of [boil.Probe], turned round.
func ExampleProbe_Brix() {
	probe := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}
	b, err := probe.Brix(units.Fahrenheit(219.84))
	fmt.Println(b.Text(1), err)
	// Output: 66.9 Brix <nil>
}

// 219.5 F is the stop at the surface.
func ExampleProbe_Surface() {
	probe := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}
	at, err := probe.Surface(units.Fahrenheit(219.84))
	fmt.Println(at.Text(units.ScaleFahrenheit, 1), err)
	// Output: 219.5 F <nil>
}

// The cup says 66.9 Brix and the thermometer shows 219.84 F, a third of a degree
// more than the stop: two inches of syrup over the probe are enough to explain it.
func ExampleProbe_Depth() {
	over, err := boil.Probe{Pressure: units.Atmosphere}.Depth(units.Fahrenheit(219.84), 66.9)
	fmt.Println(over.Text(units.Inch, 0), err)
	// Output: 2 in <nil>
}
