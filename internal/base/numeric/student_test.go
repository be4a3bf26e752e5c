package numeric

import (
	"math"
	"testing"
)

// within integrates Student's distribution between -x and x by Simpson's rule.
func within(x float64, free int) float64 {
	n := float64(free)
	top, _ := math.Lgamma((n + 1) / 2)
	bottom, _ := math.Lgamma(n / 2)
	scale := math.Exp(top-bottom) / math.Sqrt(n*math.Pi)
	at := func(t float64) float64 { return scale * math.Pow(1+t*t/n, -(n+1)/2) }
	const steps = 2000
	h := x / steps
	sum := at(0) + at(x)
	for i := 1; i < steps; i++ {
		sum += at(float64(i)*h) * float64(2+2*(i%2))
	}
	return 2 * sum * h / 3
}

// The factors hold the shares that they are said to hold: a factor that is less
// by what it may be off holds less, one that is more holds more.
func TestStudent(t *testing.T) {
	for free := 1; free <= 200; free++ {
		for _, tc := range []struct {
			factor, share, off float64
			table              int
		}{
			{Widen(free), 0.6826895, 0.005, len(twoThirds)},
			{Tail(free), 0.95, 0.005, len(nineteenIn20)},
		} {
			off := tc.off
			if free <= tc.table {
				off = 0.0005 // half of the last printed digit
			}
			if !(within(tc.factor-off, free) < tc.share && within(tc.factor+off, free) > tc.share) {
				t.Errorf("%d degrees of freedom: %v holds %.5f, want %v", free, tc.factor, within(tc.factor, free), tc.share)
			}
		}
	}
}
