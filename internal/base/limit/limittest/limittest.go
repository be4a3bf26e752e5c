// Package limittest tries the functions of the library at the ends of their
// documented ranges.
package limittest

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
)

// Refuses checks that an answer is NaN and its error a range error in the name
// of fn that tells the way out. The argument is called by its name or in words.
func Refuses(t *testing.T, fn, arg string, got float64, err error) {
	t.Helper()
	var e *units.RangeError
	if !errors.As(err, &e) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%s: error %v, want a RangeError", fn, err)
		return
	}
	if e.Func != fn || e.Arg != arg && e.What != arg || (e.Hint == "" && !math.IsNaN(e.Value)) {
		t.Errorf("%s, %s: error %+v", fn, arg, *e)
	}
	if !math.IsNaN(got) {
		t.Errorf("%s, %s: %v beside an error, want NaN", fn, arg, got)
	}
}

// Edges tries a function of one argument at, inside and outside its limits.
func Edges(t *testing.T, fn, arg string, low, high, inside float64, f func(x float64) (float64, error)) {
	t.Helper()
	step := 1e-9 * (high - low)
	for _, x := range []float64{low, low + step, inside, high - step, high} {
		if y, err := f(x); err != nil || math.IsNaN(y) || math.IsInf(y, 0) {
			t.Errorf("%s, %s of %v: %v, %v; want an answer", fn, arg, x, y, err)
		}
	}
	for _, x := range []float64{low - step, high + step, math.Inf(-1), math.Inf(1), math.NaN()} {
		y, err := f(x)
		Refuses(t, fn, arg, y, err)
	}
	// Just outside, the message names the limit that was passed.
	for _, x := range []float64{low - step, high + step} {
		_, err := f(x)
		var e *units.RangeError
		if !errors.As(err, &e) {
			continue
		}
		passed := e.Low
		if x > high {
			passed = e.High
		}
		if !(math.Abs(e.Value-passed) <= 1e-6*(e.High-e.Low)) {
			t.Errorf("%s, %s of %v: message %q tells another limit", fn, arg, x, e)
		}
	}
}

// Rises checks on random pairs from a range that the greater argument has the
// greater answer, and the smaller if up is not set. Answers so near that their
// rounding decides may be equal.
func Rises(t *testing.T, name string, up bool, low, high float64, f func(x float64) (float64, error)) {
	t.Helper()
	rng := rand.New(rand.NewPCG(8, uint64(len(name))))
	for range 2000 {
		x, y := low+(high-low)*rng.Float64(), low+(high-low)*rng.Float64()
		if x > y {
			x, y = y, x
		}
		a, errA := f(x)
		b, errB := f(y)
		if errA != nil || errB != nil {
			t.Fatalf("%s of %v and %v: %v, %v", name, x, y, errA, errB)
		}
		if !up {
			a, b = b, a
		}
		if !(a <= b) || !(a < b) && y-x > 1e-6*(high-low) {
			t.Fatalf("%s of %v and %v: %v and %v, the wrong way round or equal", name, x, y, a, b)
		}
	}
}
