package tapping_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// must fails the test on an error of a constructor.
func must[T any](t testing.TB) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// near reports whether two numbers agree to a part in 1e12, or absolutely so
// near zero.
func near(a, b float64) bool { return math.Abs(a-b) <= 1e-12*max(1, math.Abs(a), math.Abs(b)) }

// outside lists values that a range refuses: a billionth beyond its ends,
// NaN and the infinities.
func outside(low, high float64) []float64 {
	return []float64{
		low - 1e-9*max(math.Abs(low), 1), high + 1e-9*max(math.Abs(high), 1),
		math.NaN(), math.Inf(1), math.Inf(-1),
	}
}

// checkRange calls f inside, on and outside its documented range.
func checkRange(t *testing.T, name string, low, high float64, f func(x float64) error) {
	t.Helper()
	for _, x := range []float64{low, (low + high) / 2, high} {
		if err := f(x); err != nil {
			t.Errorf("%s(%v): %v", name, x, err)
		}
	}
	for i, x := range outside(low, high) {
		err := f(x)
		var re *units.RangeError
		if !errors.As(err, &re) || !errors.Is(err, units.ErrRange) {
			t.Errorf("%s(%v): error %v, want a RangeError", name, x, err)
		} else if re.Hint == "" && x == x || re.Func == "" || re.Arg == "" {
			t.Errorf("%s(%v): error %q does not tell the way out", name, x, err)
		} else if i == 0 && !(math.Abs(re.Value-re.Low) < 1e-5*(re.High-re.Low)) || i == 1 && !(math.Abs(re.Value-re.High) < 1e-5*(re.High-re.Low)) {
			t.Errorf("%s(%v): error %q tells another limit", name, x, err)
		}
	}
}
