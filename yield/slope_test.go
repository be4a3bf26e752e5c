package yield

import (
	"math"
	"testing"

	"example.org/sapreckoner/internal/numeric/numerictest"
)

// The surface of a tank is the slope of what it holds with the depth.
func TestSurfaceIsTheSlope(t *testing.T) {
	tank := func(made Tank, err error) Tank {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return made
	}
	for name, tk := range map[string]Tank{
		"box":      tank(RectangularTank(2, 1.5, 0.7)),
		"upright":  tank(UprightCylinder(1.2, 0.7)),
		"lying":    tank(LyingCylinder(0.9, 2)),
		"ellipse":  tank(LyingEllipse(1.3, 0.9, 2)),
		"trough":   tank(HalfEllipseTrough(1.3, 0.5, 2)),
		"pail":     tank(Pail(0.3, 0.25, 0.27)),
		"inverted": tank(Pail(0.25, 0.3, 0.27)),
	} {
		// At the very top and bottom of a lying tank the slope changes without end.
		low, high := 0.1*tk.height, 0.9*tk.height
		numerictest.Slope(t, name, low, high, func(h float64) (float64, float64) { return tk.volume(h), tk.surface(h) })
	}
}

// What is no number makes no amount of money, and no panic.
func TestToDecimal(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if d := toDecimal(x, 2); !d.IsZero() {
			t.Errorf("%v became %v", x, d)
		}
	}
	// Halves go away from zero.
	for x, want := range map[float64]string{2.375: "2.38", -2.375: "-2.38", 2.374: "2.37"} {
		if d := toDecimal(x, 2); d.String() != want {
			t.Errorf("%v became %v, want %s", x, d, want)
		}
	}
}
