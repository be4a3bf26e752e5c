package yield

import (
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// The surface of what stands in a tank is the slope of its volume, by differences.
func TestSurfaceIsTheSlope(t *testing.T) {
	made := func(tank Tank, err error) Tank {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return tank
	}
	const in = units.Inch
	for name, tank := range map[string]Tank{
		"rectangular":     made(RectangularTank(48*in, 24*in, 20*in)),
		"upright":         made(UprightCylinder(30*in, 40*in)),
		"lying":           made(LyingCylinder(24*in, 60*in)),
		"lying, elliptic": made(LyingEllipse(60*in, 30*in, 24*in)),
		"trough":          made(HalfEllipseTrough(60*in, 30*in, 24*in)),
		"pail":            made(Pail(10*in, 12*in, 14*in)),
	} {
		for _, share := range []float64{0.05, 0.3, 0.5, 0.7, 0.95} {
			h := share * tank.height
			step := 1e-4 * tank.height
			want := (8*(tank.volume(h+step)-tank.volume(h-step)) - (tank.volume(h+2*step) - tank.volume(h-2*step))) / (12 * step)
			if got := tank.surface(h); !(math.Abs(got-want) <= 1e-8*want) {
				t.Errorf("%s at %v of its height: %v m2, want %v", name, share, got, want)
			}
		}
	}
}
