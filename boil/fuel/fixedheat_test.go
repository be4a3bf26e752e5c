package fuel_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A gallon of 66.0 Brix from 2.0 at 40 F takes 404,680 Btu: the rule makes 1.0117
// gal of them, and 40.47 of 40. It says nothing of the sap: at 1 Brix the 7.285 lb of
// sugar in a gallon come in 728.5 lb of sap, which take 171.1 Btu/lb to the boil, and
// 717.5 lb of it 970.1 to boil off, with the climb 0.03 percent more: 820,900 Btu. So
// 40 times 404,680 make 19.72 gal, and the rule promises 20.7 too many.
func ExampleFixedHeat() {
	for _, brix := range []units.Brix{2, 1} {
		sap, err := sugar.NewLot(100*units.USGallon, brix, units.Fahrenheit(40))
		if err != nil {
			fmt.Println(err)
			return
		}
		demand, err := boil.Heat(sap, 66, units.Atmosphere)
		if err != nil {
			fmt.Println(err)
			return
		}
		miss, err := fuel.FixedHeat(40*404680*units.BtuIT, demand)
		fmt.Printf("%+.1f US gal of 40, %v\n", miss.Syrup.USGallons(), err)
	}
	// Output:
	// +0.5 US gal of 40, <nil>
	// +20.7 US gal of 40, <nil>
}

// The demand of the gallon is 404,680 Btu within 0.1 percent.
func TestFixedHeat(t *testing.T) {
	sap := lotOf(t, 1000, 2, units.Fahrenheit(40))
	demand := mustHeat(t, sap, 66, units.Atmosphere)
	miss, err := fuel.FixedHeat(404680*units.BtuIT, demand)
	if err != nil || math.Abs(miss.Syrup.USGallons()-0.0117) > 0.001 || miss.Brix != 0 {
		t.Errorf("%v gal, %v Brix, want 0.0117 and 0, %v", miss.Syrup.USGallons(), miss.Brix, err)
	}
	if miss, err := fuel.FixedHeat(0, demand); err != nil || miss != (units.Miss{}) {
		t.Errorf("of no heat: %v, %v", miss, err)
	}
	for _, into := range []units.Energy{-1, 1.1e15} {
		if miss, err := fuel.FixedHeat(into, demand); err == nil || !math.IsNaN(float64(miss.Syrup)) {
			t.Errorf("%v: %v, want it refused", into, miss)
		}
	}
	if _, err := fuel.FixedHeat(1, boil.HeatDemand{}); err == nil {
		t.Error("an empty demand is taken")
	}
}
