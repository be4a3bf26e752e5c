package season_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// 5 percent an inch are 82.5 percent at 16.5 inHg, where 151 was measured. 434 gal
// by gravity are 10 gal of syrup at 43.4 to one: 10 x (0.825 - 1.51) = -6.85.
func ExampleFivePercentAnInch() {
	miss, err := season.FivePercentAnInch(16.5*units.InchMercury, 434*units.USGallon, 43.4)
	fmt.Printf("%+.2f US gal, %+.0f at 50 a gallon, %v\n", miss.Syrup.USGallons(), miss.Worth(50, units.USGallon), err)
	// Output: -6.85 US gal, -342 at 50 a gallon, <nil>
}

func TestFivePercentAnInch(t *testing.T) {
	// By gravity there is no rule to miss by.
	if miss, err := season.FivePercentAnInch(0, units.USGallon, 43); err != nil || miss != (units.Miss{}) {
		t.Errorf("by gravity: %v, %v", miss, err)
	}
	for _, tt := range []struct {
		inches  float64
		gravity units.Volume
		ratio   float64
		in      bool
	}{
		{28, 1, 43, true}, {28.1, 1, 43, false}, {-0.1, 1, 43, false}, {16, 0, 43, true}, {16, -1, 43, false}, {16, 1e6, 43, true},
		{16, 1.1e6, 43, false}, {16, 1, 1, true}, {16, 1, 0.9, false}, {16, 1, 1000, true}, {16, 1, 1001, false},
	} {
		miss, err := season.FivePercentAnInch(units.InchesMercury(tt.inches), tt.gravity, tt.ratio)
		if (err == nil) != tt.in || math.IsNaN(float64(miss.Syrup)) == tt.in {
			t.Errorf("%+v: %v, %v", tt, miss, err)
		}
	}
}
