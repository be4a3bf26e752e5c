package sweep

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

type span struct{ Low, Middle, High float64 }

// A function that breaks a rule is found out, and one that keeps all is not.
func TestJudge(t *testing.T) {
	nan, refused := math.NaN(), errors.New("no")
	outside := func(e units.RangeError) func(float64) (float64, error) {
		return func(float64) (float64, error) { return nan, &e }
	}
	for _, tc := range []struct {
		f      any
		x      float64
		broken string
	}{
		{func(x float64) (float64, error) { return x, nil }, 1, ""},
		{func(float64) (float64, error) { return nan, refused }, nan, ""},
		{func(float64) (span, error) { return span{}, refused }, nan, ""},
		{func(x float64) float64 { return x }, nan, ""},
		{func(float64) bool { return false }, nan, ""},
		{func(x float64) float64 { return 1 / x }, 0, ""}, // it has no error to give
		{func(float64) float64 { panic("down") }, 1, "panic: down"},
		{func(float64) (float64, error) { return 1, refused }, 1, "beside the error"},
		{func(float64) (string, error) { return "half", refused }, 1, "beside the error"},
		{func(float64) (float64, error) { return nan, nil }, 1, "no error"},
		{func(float64) ([]span, error) { return []span{{High: math.Inf(1)}}, nil }, 1, "no error"},
		{func(float64) (time.Duration, error) { return math.MinInt64, nil }, 1, "no error"},
		{func(float64) (float64, error) { return 0, nil }, nan, "NaN went in"},
		{func(float64) float64 { return 0 }, nan, "NaN went in"},
		{func(float64) (span, error) { return span{3, 2, 1}, nil }, 1, "crossed"},
		{func(float64) (span, error) { return span{1, 4, 3}, nil }, 1, "crossed"},
		{func(float64) (float64, error) { return nan, errors.New(strings.Repeat("long", 1000)) }, 1, "bytes"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5}), 7, ""},
		{outside(units.RangeError{Func: "other.f", Value: 7, High: 5}), 7, "in the name of"},
		{outside(units.RangeError{Func: "sweep.f", Value: 3, High: 5}), 7, "is wrong"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, Low: 6, High: 5}), 7, "is wrong"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5, Unit: "US gal"}), 7, ""},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5, Unit: "the taps to be set"}), 7, "is no unit"},
		{func(float64) (float64, error) { return nan, errors.New("x 1 is outside 0 to NaN %") }, 1, "0 to NaN"},
		{func(float64) (float64, error) { return nan, errors.New("x -0 Brix is low") }, 1, "-0"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5, Hint: "use density.Solution"}), 7, "name of Go"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5, Hint: "set CalibratedAt"}), 7, "name of Go"},
		{outside(units.RangeError{Func: "sweep.f", Value: 7, High: 5, What: "mark of NBS C440"}), 7, ""},
	} {
		s := &sweeper{used: map[string]bool{}, Package: Package{Contract: true}}
		got := s.judge("f", reflect.ValueOf(tc.f), []candidate{{value: reflect.ValueOf(tc.x), nan: math.IsNaN(tc.x)}})
		if tc.broken == "" && got != "" || !strings.Contains(got, tc.broken) {
			t.Errorf("%T of %v: judged %q, want %q", tc.f, tc.x, got, tc.broken)
		}
	}
}
