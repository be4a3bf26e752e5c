package numeric

import (
	"math"
	"math/rand/v2"
	"testing"
)

// Through three points of a function whose inverse is a parabola,
// x = a + by + cy^2, the interpolation is exact: the root is at a. The points
// are taken where the inverse rises, so that it is one, and the middle value
// lies well inside Chandrupatla's limits.
func TestCurveOfAParabola(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	trusted := 0
	for range 2000 {
		a, b, c := 10*rng.Float64()-5, 0.5+rng.Float64(), 0.2*rng.Float64()-0.1
		x := func(y float64) float64 { return a + b*y + c*y*y }
		// x1 and x2 lie on either side of the root and x3 beyond x1.
		side := float64(1 - 2*rng.IntN(2))
		y1, y2 := side*(0.1+rng.Float64()), -side*(0.1+rng.Float64())
		y3 := y1 + side*(0.1+rng.Float64()/2)
		x1, x2, x3 := x(y1), x(y2), x(y3)
		got := curve(x1, x2, x3, y1, y2, y3)
		xi, phi := (x1-x2)/(x3-x2), (y1-y2)/(y3-y2)
		low, high := 1-math.Sqrt(1-xi), math.Sqrt(xi)
		if want := phi > low && phi < high; want == math.IsNaN(got) && math.Min(math.Abs(phi-low), math.Abs(phi-high)) > 1e-9 {
			t.Errorf("xi %v, phi %v: share %v, trusted should be %v", xi, phi, got, want)
		}
		if math.IsNaN(got) {
			continue
		}
		trusted++
		if want := (a - x1) / (x2 - x1); math.Abs(got-want) > 1e-12 {
			t.Errorf("x = %v%+vy%+vy^2 through y = %v, %v, %v: share %v, want %v", a, b, c, y1, y2, y3, got, want)
		}
	}
	if trusted < 1000 {
		t.Errorf("only %d of 2000 curves were trusted", trusted)
	}
}

// Chandrupatla trusts the curve where 1-sqrt(1-xi) < phi < sqrt(xi). At xi of
// 0.36 that is from 0.2 to 0.6.
func TestCurveTrusted(t *testing.T) {
	for _, tc := range []struct {
		phi     float64
		trusted bool
	}{{0.1, false}, {0.19, false}, {0.21, true}, {0.4, true}, {0.59, true}, {0.61, false}, {0.9, false}} {
		// x2 at 0 and x3 at 1, with values of -1 and 9.
		y1 := -1 + 10*tc.phi
		if got := curve(0.36, 0, 1, y1, -1, 9); math.IsNaN(got) == tc.trusted {
			t.Errorf("phi %v: share %v", tc.phi, got)
		}
	}
}
