package finish_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// On a hill where water boils at 204 F, 219 F is 15 F above it. At the sea the
// table of rises has 3.895 C at 65.5 Brix and 4.0005 at 66.0: 7 F, 3.889 C, stops
// at 65.47. A gallon of it holds 0.53 times 1.98 percent less sugar than one of
// 66, so that 40 gal become 40.42.
func ExampleFixedRise() {
	miss, err := finish.FixedRise(units.FahrenheitDegrees(7), 66, units.Atmosphere, 40*units.USGallon)
	fmt.Printf("%+.2f Brix, %+.2f US gal, %+.0f at 50 a gallon, %v\n",
		float64(miss.Brix), miss.Syrup.USGallons(), miss.Worth(50, units.USGallon), err)
	// Output: -0.53 Brix, +0.42 US gal, +21 at 50 a gallon, <nil>
}

func TestFixedRise(t *testing.T) {
	// 66.9 Brix rises by 4.199 C at 101.325 kPa, 4.126 at 90, 4.092 at 85, 4.056 at 80
	// and 3.978 at 70; 66.0 by 4.0005, 3.931, 3.898, 3.863 and 3.789 (computed, to
	// 0.0005 C or 0.0025 Brix). A rule of the rise at the sea overshoots 66.0 by 0.33
	// Brix at 90 kPa, 0.48 at 85 and 0.65 at 80.
	for _, tt := range []struct {
		rise, kPa    float64
		target, want units.Brix
		within       float64
	}{
		{4.199, 101.325, 66.9, 0, 0.0025}, {4.126, 90, 66.9, 0, 0.0025}, {4.092, 85, 66.9, 0, 0.0025}, {3.978, 70, 66.9, 0, 0.0025},
		{3.863, 80, 66, 0, 0.0025}, {4.0005, 90, 66, 0.33, 0.0075}, {4.0005, 85, 66, 0.48, 0.0075}, {4.0005, 80, 66, 0.65, 0.0075},
		{4.0005, 101.325, 66.9, -0.9, 0.005},
	} {
		miss, err := finish.FixedRise(units.TempDiff(tt.rise), tt.target, units.Kilopascals(tt.kPa), 40*units.USGallon)
		if err != nil || math.Abs(float64(miss.Brix-tt.want)) > tt.within {
			t.Errorf("%v C at %v kPa misses %v by %v, want %v, %v", tt.rise, tt.kPa, tt.target, miss.Brix, tt.want, err)
		}
	}
}

// The sugar is the same, whatever the rule makes of it: volumes are as 1/(rho B).
// At 20 C a liter of 66 Brix holds 1.322662 kg of 66 percent, one of 66.9 holds
// 1.328191 kg (density of ICUMSA): 40 gal of 66.9 are 40.7136 gal of 66.
func TestFixedRiseKeepsTheSugar(t *testing.T) {
	miss, err := finish.FixedRise(4.0005, 66.9, units.Atmosphere, 40*units.USGallon)
	want := 40 * (1.328191*66.9/(1.322662*66) - 1)
	if err != nil || math.Abs(miss.Syrup.USGallons()-want) > 0.003 {
		t.Errorf("40 gal of 66.9 Brix make %v gal more of 66, want %v, %v", miss.Syrup.USGallons(), want, err)
	}
}

func TestFixedRiseLimits(t *testing.T) {
	for _, tt := range []struct {
		rise   units.TempDiff
		target units.Brix
		kPa    float64
		meant  units.Volume
		in     bool
	}{
		{1.5, 66, 101, 1, true}, {1.4, 66, 101, 1, false}, {10, 66, 20, 1, true}, {10.1, 66, 101, 1, false},
		{4, 50, 101, 1, true}, {4, 49, 101, 1, false}, {4, 80, 101, 1, true}, {4, 81, 101, 1, false},
		{4, 66, 20, 1, true}, {4, 66, 19, 1, false}, {4, 66, 120, 1, true}, {4, 66, 121, 1, false},
		{4, 66, 101, 0, true}, {4, 66, 101, -1, false}, {4, 66, 101, 1e6, true}, {4, 66, 101, 1.1e6, false},
	} {
		miss, err := finish.FixedRise(tt.rise, tt.target, units.Kilopascals(tt.kPa), tt.meant)
		if (err == nil) != tt.in || math.IsNaN(float64(miss.Syrup)) == tt.in {
			t.Errorf("%+v: %v, %v", tt, miss, err)
		}
	}
}
