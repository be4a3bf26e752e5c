package density

import (
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/numeric/numerictest"
	"example.org/sapreckoner/units"
)

// The artifact of the polynomial above 90 C, in Brix at 66.9, as modelDoubt
// documents it; to 90 C its doubt is 0.05 kg/m3.
func TestModelDoubt(t *testing.T) {
	byW, _ := rhoSlopes(0.669, 20)
	const slope = 6.16
	if !(math.Abs(byW/100-slope) <= 0.005) {
		t.Errorf("slope at 66.9 Brix is %v kg/m3 for a Brix, want %v", byW/100, slope)
	}
	for _, c := range []struct{ t, brix float64 }{{20, 0}, {90, 0}, {94.5, 0.0175}, {99, 0.035}, {102, 0.055}, {105, 0.075}, {108, 0.095}} {
		want := math.Hypot(0.05, c.brix*slope/math.Sqrt(3))
		if got := modelDoubt(c.t); !(math.Abs(got-want) <= 1e-12) {
			t.Errorf("at %v C: %v kg/m3, want %v", c.t, got, want)
		}
	}
}

// The curve through Table 114 meets every row, and goes on with one slope there
// and beyond both ends.
func TestTableCurveIsSmooth(t *testing.T) {
	for i := range table114 {
		x := float64(i)
		for _, near := range []float64{math.Nextafter(x, -1), x, math.Nextafter(x, 100)} {
			sg, slope := tableGravity(near)
			if !(math.Abs(float64(sg-table114[i])) <= 1e-13 && math.Abs(slope-tableSlope(i)) <= 1e-12) {
				t.Errorf("at %v: %v with slope %v, row %v with %v", near, sg, slope, table114[i], tableSlope(i))
			}
		}
	}
	last := float64(len(table114) - 1)
	for _, b := range [][2]float64{{-1, -0.1}, {0.05, 0.95}, {66.05, 66.95}, {last + 0.1, last + 1}} {
		numerictest.Slope(t, "tableGravity", b[0], b[1], func(x float64) (float64, float64) {
			sg, slope := tableGravity(x)
			return float64(sg), slope
		})
		numerictest.Slope(t, "toICUMSA", b[0], b[1], func(x float64) (float64, float64) {
			icumsa, slope := NBSC440.toICUMSA(units.Brix(x))
			return float64(icumsa), slope
		})
	}
}
