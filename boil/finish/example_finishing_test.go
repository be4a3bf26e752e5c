package finish_test

import (
	"fmt"
	"log"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What this thermometer showed in boiling water this morning, and what the last
// minutes before the syrup looked like. All of it is invented.
var (
	eveningWater = units.Fahrenheit(211.9)
	eveningPan   = []finish.WatchReading{
		{At: 0 * time.Minute, Shown: units.Fahrenheit(216.7)},
		{At: 3 * time.Minute, Shown: units.Fahrenheit(217.2)},
		{At: 6 * time.Minute, Shown: units.Fahrenheit(217.7)},
	}
)

const eveningTarget units.Brix = 66.9

// A batch from the last minutes in the pan to the pot that is filtered: set the
// stop by boiling water, watch the climb, check a cup with the hydrometer, and
// thin what coasted too far.
//
// By hand, from the boiling point elevations that GNU units 2.22 tabulates at 1
// atm: 66.9 Brix lies 4.20 K, 7.56 F, above water. The readings are 4.8, 5.3
// and 5.8 F above it, which is 58.0, 60.0 and 61.8 Brix. The inverses of these
// fall by 0.00018 a minute; to 1/66.9 it is 0.0012 from the last of them.
//
// The 60 F hydrometer stands at 59.0 in 66.9 Brix at 211 F (see
// [density.Hydrometer.Reading]). It reads 2.1 more, and there a mark more is
// 0.95 Brix more. Water to thin with: 22.4 lb (68.9/66.9 - 1).
func Example_finishing() {
	// Before the run: boiling water gives the pressure, error of the probe and all.
	p, err := boil.PressureFromWater(eveningWater)
	if err != nil {
		log.Fatal(err)
	}
	stop, err := boil.SyrupPoint(eveningTarget, p)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("take it off at", stop.Text(units.ScaleFahrenheit, 1))

	// In the pan: how long is left? The feed is shut.
	watch := finish.Watch{
		Target:  eveningTarget,
		Water:   eveningWater,
		WaterBy: 0.1 * units.FahrenheitDegree,
		ProbeBy: 0.1 * units.FahrenheitDegree,
	}
	out, err := watch.Outlook(eveningPan...)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%.0f minutes left\n", out.Left.Minutes())

	// In the cup: the syrup climbed on over the coals. A cup at 211 F scalds.
	stem := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	made, err := stem.Brix(61.1, units.Fahrenheit(211))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("the cup says", made.Text(1))

	// In the pot, 22.4 lb of it: thin with hot water, heat to packing temperature,
	// and filter.
	pot, err := sugar.NewLotByMass(22.4*units.Pound, made, units.Fahrenheit(200))
	if err != nil {
		log.Fatal(err)
	}
	thinned, err := sugar.Thin(pot, 0, units.Fahrenheit(200), eveningTarget)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("stir in", thinned.Added.Mass().Text(units.Pound, 2), "of water")
	fmt.Println("have", thinned.Result.Mass().Text(units.Pound, 2), "of", thinned.Result.Brix().Text(1))
	// Output:
	// take it off at 219.5 F
	// 7 minutes left
	// the cup says 68.9 Brix
	// stir in 0.67 lb of water
	// have 23.07 lb of 66.9 Brix
}

func ExampleGrainings() {
	for _, g := range finish.Grainings() {
		if g.Obtained == "read" {
			fmt.Printf("%s: cool to %s to %s, not below %s\n", g.Product, g.Low.Text(units.ScaleFahrenheit, 0),
				g.High.Text(units.ScaleFahrenheit, 0), g.Least.Text(units.ScaleFahrenheit, 0))
		}
	}
	// Output: soft molded candy: cool to 200 F to 210 F, not below 160 F
}
