package season_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

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

// rowError checks that err names the line and column and wraps or tells the
// reason. Line 0 is the table as a whole.
func rowError(t *testing.T, name string, err error, line int, column string, reason error) {
	t.Helper()
	var re *records.RowError
	if !errors.As(err, &re) || re.Line != line || re.Column != column {
		t.Errorf("%s: error %v, want line %d, column %q", name, err, line, column)
		return
	}
	if s, ok := reason.(says); ok && !strings.Contains(err.Error(), string(s)) || !ok && !errors.Is(err, reason) {
		t.Errorf("%s: error %q, want %v", name, err, reason)
	}
	if line > 0 && !strings.Contains(err.Error(), fmt.Sprintf("line %d", line)) || !strings.Contains(err.Error(), column) {
		t.Errorf("%s: the message %q does not name line and column", name, err)
	}
}

// says is a reason that is told by its message alone.
type says string

func (s says) Error() string { return string(s) }

func fact(t *testing.T, table, name string) check.Row {
	t.Helper()
	rows := must[*check.Table](t)(check.Load(table)).Rows
	for _, r := range rows {
		if r.Name() == name {
			return r
		}
	}
	t.Fatalf("%s has no row %q", table, name)
	return check.Row{}
}

func band(t testing.TB, diameter, height, bit, depth float64, taps int) tapping.TappingBand {
	return must[tapping.TappingBand](t)(tapping.NewTappingBand(units.Inches(diameter), units.Inches(height), hole(t, bit, depth), taps))
}

type broken struct{}

func (broken) Read([]byte) (int, error) { return 0, errBroken }

var errBroken = errors.New("the disk is gone")

func hole(t testing.TB, bit, depth float64) tapping.Hole {
	return must[tapping.Hole](t)(tapping.NewHole(units.Inches(bit), units.Inches(depth), 0))
}
