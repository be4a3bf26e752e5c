package sugar

import (
	"testing"

	"example.org/sapreckoner/internal/base/numeric/numerictest"
)

func TestSlopes(t *testing.T) {
	for _, k := range []float64{253.15, 298.15, 413.15} {
		numerictest.Slope(t, "logActivity", 0.01, 0.37, func(x float64) (float64, float64) { return logActivity(x, k) })
	}
	numerictest.Slope(t, "logIce", 260, 273, logIce)
	for _, x := range []float64{0.001, 0.02, 0.07} {
		numerictest.Slope(t, "thaw", 260, 273, func(k float64) (float64, float64) { return thaw(x, k) })
	}
	numerictest.Slope(t, "Vavrinecz", 0, 110, Vavrinecz.at)
	numerictest.Slope(t, "Charles", 0, 110, Charles.at)
	// Between the rows of a table: at a row the curvature jumps.
	for c := 0.0; c < 100; c += 10 {
		numerictest.Slope(t, "Herzfeld", c+0.5, c+4.5, Herzfeld.at)
		numerictest.Slope(t, "Herzfeld", c+5.5, c+9.5, Herzfeld.at)
		numerictest.Slope(t, "Sokolovsky", c+0.5, c+9.5, Sokolovsky.at)
	}
}
