package density_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// 66.9 Brix shrinks by 2.758 percent from 180 F to 68 F, by 3.310 from 200 F, and
// the glass by 0.156 and 0.183: the stem stands 2.677 and 3.234 percent longer in
// it. The line has 3.234 x 112/132 = 2.744 at 180 F, 0.066 percent of the density
// more: at 1291 kg/m3 and 6.1 kg/m3 a Brix 0.14 Brix too thin.
func ExampleMark_StraightLine() {
	hot := density.Mark{For: 66.9, At: units.Fahrenheit(200)}
	miss, err := hot.StraightLine(units.Fahrenheit(68), units.Fahrenheit(180), 40*units.USGallon)
	fmt.Printf("%+.2f Brix, %+.2f US gal, %v\n", float64(miss.Brix), miss.Syrup.USGallons(), err)
	// Output: -0.14 Brix, +0.11 US gal, <nil>
}

func TestStraightLine(t *testing.T) {
	hot := density.Mark{For: 66.9, At: units.Fahrenheit(211)}
	cold := units.Fahrenheit(60)
	// The sugar: 40 L of 66.9 Brix at 1328.191 kg/m3 (ICUMSA) make 40 + x of another.
	for _, f := range []float64{80, 130, 180, 200} {
		miss, err := hot.StraightLine(cold, units.Fahrenheit(f), 40*units.Liter)
		if err != nil || !(miss.Brix < -0.05) {
			t.Errorf("%v F: %v, want it thinner than meant, %v", f, miss.Brix, err)
		}
		rho, err := density.Solution(66.9+miss.Brix, units.Celsius(20))
		if err != nil {
			t.Fatal(err)
		}
		got := float64(rho) * (66.9 + float64(miss.Brix)) * (40 + miss.Syrup.Liters())
		if math.Abs(got/(1328.191*66.9*40)-1) > 1e-6 {
			t.Errorf("%v F: the sugar changes by %v of itself", f, got/(1328.191*66.9*40)-1)
		}
	}
	// At its marks it is right, and from either mark it is the same line.
	for _, f := range []float64{60, 211} {
		miss, err := hot.StraightLine(cold, units.Fahrenheit(f), 40*units.Liter)
		if err != nil || math.Abs(float64(miss.Brix)) > 1e-9 || math.Abs(miss.Syrup.Liters()) > 1e-9 {
			t.Errorf("at the mark of %v F: %v, %v", f, miss, err)
		}
	}
	one, _ := hot.StraightLine(cold, units.Fahrenheit(130), 1)
	two, err := density.Mark{For: 66.9, At: cold}.StraightLine(hot.At, units.Fahrenheit(130), 1)
	// The glass is taken from either mark: 25e-6 x 84 x 25e-6 x 84 of the density.
	if err != nil || math.Abs(float64(one.Brix-two.Brix)) > 5e-6*1328/6 {
		t.Errorf("%v Brix from one mark and %v from the other, %v", one.Brix, two.Brix, err)
	}
	for _, tt := range []struct {
		mark       density.Mark
		other, cup float64 // C
		meant      units.Volume
	}{
		{density.Mark{}, 20, 20, 1}, {hot, 111, 105, 1}, {hot, -1, 50, 1}, {hot, hot.At.Celsius() - 0.9, hot.At.Celsius() - 0.5, 1},
		{hot, 20, 19, 1}, {hot, 20, 100, 1}, {hot, 20, 50, -1}, {hot, 20, 50, 1.1e6},
	} {
		if miss, err := tt.mark.StraightLine(units.Celsius(tt.other), units.Celsius(tt.cup), tt.meant); err == nil || !math.IsNaN(float64(miss.Brix)) {
			t.Errorf("%+v: %v, want it refused", tt, miss)
		}
	}
}
