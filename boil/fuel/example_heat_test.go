package fuel_test

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A burner of 100,000 Btu/h under a kettle that is 50 percent efficient.
func ExampleHeatRate() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, _ := boil.Heat(sap, 66, units.Atmosphere)
	half := fuel.Efficiency{Low: 50 * units.Percent, High: 50 * units.Percent, Basis: fuel.Gross}
	rate, err := fuel.HeatRate(100000*units.BtuITPerHour, fuel.Gross, demand, half)
	// 50,000 Btu over 404,680/353.22 Btu/lb.
	fmt.Printf("%.1f lb/h %v\n", rate.Middle.PoundsPerHour(), err)
	// Output: 43.6 lb/h <nil>
}

// DOE grant final report OSTI 5036199: a preheater from steam gave 8 percent
// more water, and with forced draft and heated air 27 percent.
func ExampleEffects() {
	for _, e := range fuel.Effects()[:2] {
		fmt.Println(e.Change, e.High.Text(0))
	}
	// Output:
	// preheater from steam, small wood rig 8 %
	// preheater, forced draft and stack-heated air 27 %
}

func ExampleEffect_Apply() {
	sap, _ := sugar.NewLotByMass(100*units.Pound, 2, units.Fahrenheit(40))
	demand, _ := boil.Heat(sap, 66, units.Atmosphere)
	rate, err := fuel.Effects()[0].Apply(100*units.PoundPerHour, demand)
	fmt.Println(rate.Middle.Text(units.PoundPerHour, 0), err)
	// Output: 108 lb/h <nil>
}

func ExampleEffect() {
	e := fuel.Effects()[0]
	fmt.Println(e.Source, e.Obtained)
	// Output: DOE grant final report OSTI 5036199 read
}
