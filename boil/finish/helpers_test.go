package finish_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

func wantRange(t *testing.T, name string, err error) {
	t.Helper()
	var e *units.RangeError
	if !errors.As(err, &e) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%s: error %v, want a RangeError", name, err)
	}
}

var inf = math.Inf(1)

// lot is for examples whose figures are known to be good.
func lot(v units.Volume, b units.Brix) sugar.Lot {
	l, err := sugar.NewLot(v, b, units.Celsius(20))
	if err != nil {
		panic(err)
	}
	return l
}

// lotOf makes a lot or fails the test.
func lotOf(t testing.TB, v units.Volume, b units.Brix, at units.Temperature) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, b, at)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

var notNum = math.NaN()

// refused checks that an answer is NaN and its error names the function and
// tells the range.
func refused(t *testing.T, what, fn string, got float64, err error) {
	t.Helper()
	var e *units.RangeError
	if !math.IsNaN(got) || !errors.As(err, &e) || !errors.Is(err, units.ErrRange) || e.Func != fn {
		t.Errorf("%s: %v, %v; want NaN and a RangeError of %s", what, got, err, fn)
	}
}
