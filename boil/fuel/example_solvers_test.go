package fuel_test

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// The figures of [fuel.HeatRate], turned round: 353.22 lb of water take 404,680
// Btu, 87.28 lb in an hour 100,000.
func ExamplePowerFor() {
	sap, _ := sugar.NewLot(60*units.USGallon, 2, units.Fahrenheit(40))
	demand, _ := boil.Heat(sap, 66, units.Atmosphere)
	p, err := fuel.PowerFor(87.28*units.PoundPerHour, fuel.Delivered, demand, fuel.Efficiency{})
	fmt.Printf("%.0f thousand Btu/h %v\n", p.Middle.BtusITPerHour()/1000, err)
	// Output: 100 thousand Btu/h <nil>
}
