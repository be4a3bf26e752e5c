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
