package sugar_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By mass the concentrate of 100 gal from 2 to 8 Brix is 24.42 gal, not 25. In 25
// gal there are 0.58 gal of water too many: 2.4 percent less than 8 Brix, save
// what that water weighs.
func ExampleVolumeBalance() {
	miss, err := sugar.VolumeBalance(100*units.USGallon, 2, 8, 66)
	fmt.Printf("%+.2f Brix, %+.3f US gal of syrup, %+.2f at 50 a gallon, %v\n",
		float64(miss.Brix), miss.Syrup.USGallons(), miss.Worth(50, units.USGallon), err)
	// Output: -0.18 Brix, +0.055 US gal of syrup, +2.74 at 50 a gallon, <nil>
}

// 25 gal of the strength of the miss hold the sugar of 100 gal of the feed, by the
// lots, which know nothing of the rule; so do the gallons of syrup.
func TestVolumeBalance(t *testing.T) {
	at := units.Celsius(20)
	lot := func(v units.Volume, b units.Brix) sugar.Lot {
		l, err := sugar.NewLot(v, b, at)
		if err != nil {
			t.Fatal(err)
		}
		return l
	}
	for _, to := range []units.Brix{2.5, 8, 12, 20} {
		miss, err := sugar.VolumeBalance(100*units.Liter, 2, to, 66.9)
		if err != nil {
			t.Fatal(err)
		}
		feed := lot(100*units.Liter, 2).Sugar()
		left := 200 * units.Liter / units.Volume(to)
		if got := lot(left, to+miss.Brix).Sugar(); math.Abs(float64(got/feed)-1) > 1e-9 {
			t.Errorf("to %v Brix: %v of sugar, want %v", to, got, feed)
		}
		promised := lot(left, to).Sugar()
		if got := lot(units.Liter, 66.9).Sugar() * units.Mass(miss.Syrup/units.Liter); math.Abs(float64((got-(promised-feed))/feed)) > 1e-9 {
			t.Errorf("to %v Brix: syrup of %v of sugar, want %v", to, got, promised-feed)
		}
	}
	// Nothing is taken away: by volume and by mass it is the same.
	if miss, err := sugar.VolumeBalance(units.Liter, 2, 2, 66); err != nil || math.Abs(float64(miss.Brix)) > 1e-9 || math.Abs(float64(miss.Syrup)) > 1e-12 {
		t.Errorf("nothing taken away: %v, %v", miss, err)
	}
	for _, tt := range []struct {
		v             units.Volume
		in, out, high units.Brix
	}{{-1, 2, 8, 66}, {1.1e6, 2, 8, 66}, {1, 0.09, 8, 66}, {1, 8.1, 8, 66}, {1, 2, 67, 66}, {1, 2, 8, 86}} {
		if miss, err := sugar.VolumeBalance(tt.v, tt.in, tt.out, tt.high); err == nil || !math.IsNaN(float64(miss.Brix)) {
			t.Errorf("%+v: %v, want it refused", tt, miss)
		}
	}
}
