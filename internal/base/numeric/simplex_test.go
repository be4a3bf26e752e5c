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

// The same problem a step at a time. By Bland's rule x comes in first, up to 4; then
// y, which the last row holds to (18 - 3*4)/2 = 3; then the slack of the first row,
// along the last row to (2, 6). So many steps are taken and no more.
func TestSimplexSteps(t *testing.T) {
	for steps, want := range [][2]float64{{0, 0}, {4, 0}, {4, 3}, {2, 6}, {2, 6}} {
		x := numeric.Simplex([][]float64{{1, 0}, {0, 2}, {3, 2}}, []float64{4, 12, 18}, []float64{3, 5}, steps)
		if !(math.Abs(x[0]-want[0]) < 1e-12 && math.Abs(x[1]-want[1]) < 1e-12) {
			t.Errorf("after %d steps %v, want %v", steps, x, want)
		}
	}
}

// Where x + y <= 1 and 2x + y <= 2 tie, Bland lets the first go: y then comes in to
// (0, 1), the answer to 2x + 3y. With the second gone the step after would stay at
// (1, 0). Beale's problem goes in circles under other rules (from memory); its best
// is 3/100 + 2/100 at (1/25, 0, 1, 0), where the second and the third row hold.
func TestSimplexTies(t *testing.T) {
	x := numeric.Simplex([][]float64{{1, 1}, {2, 1}}, []float64{1, 2}, []float64{2, 3}, 2)
	if !(math.Abs(x[0]) < 1e-12 && math.Abs(x[1]-1) < 1e-12) {
		t.Errorf("after two steps %v", x)
	}
	x = numeric.Simplex([][]float64{{0.25, -60, -0.04, 9}, {0.5, -90, -0.02, 3}, {0, 0, 1, 0}}, []float64{0, 0, 1}, []float64{0.75, -150, 0.02, -6}, 50)
	for i, want := range []float64{0.04, 0, 1, 0} {
		if !(math.Abs(x[i]-want) < 1e-9) {
			t.Fatalf("Beale: %v", x)
		}
	}
}

// By hand: nothing holds y, so that the search ends with x at the 2 that it has;
// nothing is gained by an unknown without value; and where two rows meet in a
// corner (x <= 1 and 2x <= 2) the answer is the corner.
func TestSimplexEnds(t *testing.T) {
	for _, tc := range []struct {
		rows        [][]float64
		most, value []float64
		want        []float64
	}{
		{[][]float64{{1, 0}}, []float64{2}, []float64{1, 1}, []float64{2, 0}},
		{[][]float64{{1, 1}}, []float64{2}, []float64{0, 0}, []float64{0, 0}},
		{[][]float64{{1, 1}}, []float64{2}, []float64{-1, 1}, []float64{0, 2}},
		{[][]float64{{1, 1}, {2, 1}}, []float64{1, 2}, []float64{2, 1}, []float64{1, 0}},
		{[][]float64{{-1, 1}, {1, 0}}, []float64{0, 3}, []float64{0, 1}, []float64{3, 3}},
	} {
		x := numeric.Simplex(tc.rows, tc.most, tc.value, 100)
		for i, want := range tc.want {
			if !(math.Abs(x[i]-want) < 1e-12) {
				t.Errorf("%v x <= %v for %v: %v, want %v", tc.rows, tc.most, tc.value, x, tc.want)
				break
			}
		}
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
