package limit_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/limit"
	"example.org/sapreckoner/units"
)

func TestCheck(t *testing.T) {
	r := limit.Range{Arg: "depth", Low: 1, High: 2, Unit: "m", Below: "deeper", Above: "shallower"}
	for _, x := range []float64{1, 1.5, 2} {
		if err := r.Check("f", x); err != nil {
			t.Errorf("%v: %v", x, err)
		}
	}
	for _, tc := range []struct {
		x    float64
		hint string
	}{
		{math.Nextafter(1, 0), "deeper"}, {math.Nextafter(2, 3), "shallower"},
		{math.Inf(-1), "deeper"}, {math.Inf(1), "shallower"}, {math.NaN(), ""},
	} {
		err := r.Check("f", tc.x)
		var e *units.RangeError
		if !errors.As(err, &e) || !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v, want a RangeError", tc.x, err)
			continue
		}
		if e.Func != "f" || e.Arg != "depth" || e.Low != 1 || e.High != 2 || e.Unit != "m" || e.Hint != tc.hint {
			t.Errorf("%v: %+v", tc.x, *e)
		}
	}
}

// A range of lengths is guarded in meters and told in inches: a division would
// move its ends.
func TestPer(t *testing.T) {
	const inch = 0.0254
	const low, high = 7.0 / 16 * inch, 11 * inch
	check := func(x float64) error { return limit.Within("f", "bit", x, low, high, inch, "in", "the bit is marked") }
	for _, x := range []float64{low, high} {
		if err := check(x); err != nil {
			t.Errorf("%v: %v", x, err)
		}
	}
	for _, x := range []float64{math.Nextafter(low, 0), math.Nextafter(high, 1)} {
		err := check(x)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Func != "f" || e.Arg != "bit" || e.Unit != "in" || e.Hint != "the bit is marked" {
			t.Errorf("%v: %v, want a RangeError", x, err)
			continue
		}
		for _, pair := range [][2]float64{{e.Low, 7.0 / 16}, {e.High, 11}, {e.Value, x / inch}} {
			if math.Abs(pair[0]-pair[1]) > 1e-12 {
				t.Errorf("%v: %v is told, want %v: %v", x, pair[0], pair[1], err)
			}
		}
	}
}
