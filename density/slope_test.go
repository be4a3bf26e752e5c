package density

import (
	"testing"

	"example.org/sapreckoner/internal/base/numeric/numerictest"
)

func TestSlopes(t *testing.T) {
	numerictest.Slope(t, "water", 0, 110, func(c float64) (float64, float64) { return water(c), waterSlope(c) })
	numerictest.Slope(t, "index", 0, 0.85, func(w float64) (float64, float64) { return index(w), indexSlope(w) })
	numerictest.Slope(t, "lorentz", 1.33, 1.51, lorentz)
	numerictest.Slope(t, "waterRefraction", 10, 30, waterRefraction)
	for _, c := range []float64{1, 20, 66, 109} {
		numerictest.Slope(t, "rho with w", 0, 0.85, func(w float64) (float64, float64) {
			byW, _ := rhoSlopes(w, c)
			return rho(w, c), byW
		})
	}
	for _, w := range []float64{0, 0.02, 0.3, 0.669, 0.85} {
		numerictest.Slope(t, "rho with c", 0, 110, func(c float64) (float64, float64) {
			_, byC := rhoSlopes(w, c)
			return rho(w, c), byC
		})
		numerictest.Slope(t, "lorentzAt with c", 10, 30, func(c float64) (float64, float64) {
			l, _, byC := lorentzAt(w, c)
			return l, byC
		})
	}
	for _, c := range []float64{10, 20, 30} {
		numerictest.Slope(t, "lorentzAt with w", 0, 0.85, func(w float64) (float64, float64) {
			l, byW, _ := lorentzAt(w, c)
			return l, byW
		})
	}
}
