package yield_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// 86 gal of 2 Brix make 86/43.389 = 1.982 gal of 66 Brix, not 2. The sugar of 1.982
// gal in 2 is 0.9 percent less a gallon; 1.98 percent are a Brix there.
func ExampleRule_Miss() {
	miss, err := yield.Jones1946.Miss(2, 86*units.USGallon)
	fmt.Printf("%+.3f US gal, %+.2f at 50 a gallon; %+.1f Brix if drawn off at that, %v\n",
		miss.Syrup.USGallons(), miss.Worth(50, units.USGallon), float64(miss.Brix), err)
	// Output: +0.018 US gal, +0.90 at 50 a gallon; -0.5 Brix if drawn off at that, <nil>
}

// The rule of 86 is off by -0.90, +2.27 and +6.49 percent of the ratio at 2, 10 and
// 20 Brix (computed, to 0.005): it promises 1/(1+e) of what there is. What is drawn
// off at the promised volume holds all the sugar, so that volume and sugar in a
// volume move against each other.
func TestRuleMiss(t *testing.T) {
	for _, tt := range []struct {
		sap units.Brix
		off float64 // percent
	}{{2, -0.90}, {10, 2.27}, {20, 6.49}} {
		sap := units.USGallons(86)
		miss, err := yield.Jones1946.Miss(tt.sap, sap)
		promised := float64(tt.sap) // 86 gal over 86/X
		want := promised - promised*(1+tt.off/100)
		if err != nil || math.Abs(miss.Syrup.USGallons()-want) > 0.00006*promised {
			t.Errorf("%v Brix: %v gal, want %v, %v", tt.sap, miss.Syrup.USGallons(), want, err)
		}
		ratio, err := yield.Ratio(tt.sap, 66+miss.Brix)
		if err != nil || math.Abs(86/ratio/promised-1) > 1e-9 {
			t.Errorf("%v Brix: boiled to %v Brix it is %v gal, want the %v promised, %v", tt.sap, 66+miss.Brix, 86/ratio, promised, err)
		}
	}
	if miss, err := yield.Jones1946.Miss(2, 0); err != nil || miss != (units.Miss{}) {
		t.Errorf("of nothing: %v, %v", miss, err)
	}
	for _, v := range []units.Volume{-1, 1.1e6} {
		miss, err := yield.Jones1946.Miss(2, v)
		refused(t, "Miss", "yield.Rule.Miss", float64(miss.Syrup), err)
	}
	for _, sap := range []units.Brix{0.4, 31} {
		miss, err := yield.Jones1946.Miss(sap, 1)
		refused(t, "Miss", "yield.Rule.Miss", float64(miss.Brix), err)
	}
}
