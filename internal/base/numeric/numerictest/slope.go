// Package numerictest helps the tests of functions that give a slope with their
// value.
package numerictest

import (
	"math"
	"testing"
)

// Slope holds the slope that f gives against the difference quotient of its
// values at 21 points from low to high, to 1e-8 of itself. A wrong slope costs
// Newton's method steps, not its answer, so that no figure shows it.
//
// f must answer up to a hundredth of the bracket beyond its ends.
func Slope(t testing.TB, name string, low, high float64, f func(x float64) (y, slope float64)) {
	t.Helper()
	value := func(x float64) float64 { y, _ := f(x); return y }
	h := (high - low) / 200
	for i := range 21 {
		x := low + (high-low)*float64(i)/20
		// Five points: the error goes with the fourth power of h. Two quotients,
		// one over half the other, take out that power too.
		quotient := func(h float64) float64 {
			return (8*(value(x+h)-value(x-h)) - (value(x+2*h) - value(x-2*h))) / (12 * h)
		}
		want := (16*quotient(h/2) - quotient(h)) / 15
		if _, got := f(x); !(math.Abs(got-want) <= 1e-8*math.Abs(want)+1e-12) {
			t.Errorf("%s at %v: slope %v, difference quotient %v", name, x, got, want)
		}
	}
}
