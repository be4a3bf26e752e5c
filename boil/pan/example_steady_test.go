package pan_test

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// By mass, 33 of sap of 2 Brix make 1 of syrup of 66, and the other 32 are steam.
func ExampleRig_Steady() {
	s, err := fourParts().Steady(pan.Sap{Brix: 2, Temperature: units.Fahrenheit(40)}, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f %.1f\n", float64(s.Feed/s.Syrup), float64(s.Evaporation/s.Syrup))
	fmt.Println(s.Brix[3].Text(1))
	// Output:
	// 33.0 32.0
	// 66.0 Brix
}

// Boiling off a pound of water takes some 1,150 Btu with the warming of the sap:
// 404,680 Btu for 353.22 pounds.
func ExampleRig_HeatFor() {
	q, err := fourParts().HeatFor(100*units.PoundPerHour, pan.Sap{Brix: 2, Temperature: units.Fahrenheit(40)}, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f thousand Btu/h\n", math.Round(q.BtusITPerHour()/5000)*5)
	// Output: 115 thousand Btu/h
}

func ExamplePlugFlow() {
	b, err := pan.PlugFlow(2, 66, 92*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Text(1))
	// Output: 18.5 Brix
}

// About 135 minutes, where 45 are published for modern flue pans.
func ExampleTransit() {
	t, err := pan.Transit(2, 66, 2*units.Inch, 2*units.USGallonPerSquareFootHour, units.Atmosphere)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t.Round(5 * time.Minute))
	// Output: 2h15m0s
}

// A first compartment over a twentieth of the fire does not bring cold sap to the
// boil: no steady state is no mistake, and the day can be run all the same.
func ExampleRig_Steady_offBoil() {
	rig := fourParts()
	for i, share := range []units.Share{5, 30, 30, 35} {
		rig.Compartments[i].Fire = share
	}
	_, err := rig.Steady(pan.Sap{Brix: 2, Temperature: units.Celsius(4)}, units.Atmosphere)
	fmt.Println(errors.Is(err, pan.ErrOffBoil))
	// Output: true
}
