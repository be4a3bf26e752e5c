package numeric_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/internal/base/numeric"
)

// By hand: 3x + 5y under x <= 4, 2y <= 12, 3x + 2y <= 18 is 36 at (2, 6), a textbook
// problem (from memory; 3*2 + 5*6 = 36, and the last two rows are equalities there).
func TestSimplexByHand(t *testing.T) {
	x := numeric.Simplex([][]float64{{1, 0}, {0, 2}, {3, 2}}, []float64{4, 12, 18}, []float64{3, 5}, 100)
	if !(math.Abs(x[0]-2) < 1e-12 && math.Abs(x[1]-6) < 1e-12) {
		t.Errorf("%v", x)
	}
	// Nothing is allowed where the only good thing is bad.
	if x := numeric.Simplex([][]float64{{1}}, []float64{0}, []float64{1}, 100); x[0] != 0 {
		t.Errorf("%v", x)
	}
}

// Of two unknowns the best corner is found by trying all.
func TestSimplexAgainstAllCorners(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		value := []float64{rng.Float64(), rng.Float64()}
		rows := [][]float64{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}
		most := []float64{1, 1, 0, 0}
		for range 3 {
			rows, most = append(rows, []float64{rng.Float64()*2 - 1, rng.Float64()*2 - 1}), append(most, float64(rng.IntN(2))*rng.Float64())
		}
		fits := func(x, y float64) bool {
			for i, r := range rows {
				if !(r[0]*x+r[1]*y <= most[i]+1e-9) {
					return false
				}
			}
			return true
		}
		best := 0.0
		for i, a := range rows {
			for k, b := range rows[:i] {
				det := a[0]*b[1] - a[1]*b[0]
				if math.Abs(det) < 1e-9 {
					continue
				}
				x, y := (most[i]*b[1]-a[1]*most[k])/det, (a[0]*most[k]-most[i]*b[0])/det
				if fits(x, y) {
					best = max(best, value[0]*x+value[1]*y)
				}
			}
		}
		x := numeric.Simplex(rows, most, value, 1000)
		if got := value[0]*x[0] + value[1]*x[1]; !fits(x[0], x[1]) || !(math.Abs(got-best) < 1e-9) {
			t.Errorf("%v at %v, not %v: %v %v", got, x, best, rows, most)
		}
	}
}
