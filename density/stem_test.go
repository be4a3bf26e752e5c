package density_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// An error of the stem moves the marks it can be read at, and the error of an
// instrument that is none passes through Mark.On.
func TestStemLimitsFollowItsError(t *testing.T) {
	for _, high := range []float64{1, 3} {
		h := density.Hydrometer{GraduatedAt: f60, ReadsHigh: bx(high)}
		low := must(of(density.BaumeFromBrix(bx(high - 1)))) // the scale goes on to -1 Brix
		if got, err := h.BrixFromBaume(be(low), f60); err != nil || math.Abs(float64(got+1)) > 1e-9 {
			t.Errorf("reads %v high: its lowest mark is %v Brix, %v", high, float64(got), err)
		}
		var e *units.RangeError
		if _, err := h.BrixFromBaume(be(low-0.001), f60); !errors.As(err, &e) || math.Abs(e.Low-low) > 1e-9 {
			t.Errorf("reads %v high: below its lowest mark: %v", high, err)
		}
	}
	h := density.Hydrometer{GraduatedAt: f60, ReadsHigh: -1}
	top := must(of(density.BaumeFromBrix(84)))
	if got, err := h.BrixFromBaume(be(top), f60); err != nil || math.Abs(float64(got-85)) > 1e-9 {
		t.Errorf("reads 1 low: its highest mark is %v Brix, %v", float64(got), err)
	}
	var e *units.RangeError
	if _, err := h.BrixFromBaume(be(top+0.001), f60); !errors.As(err, &e) || math.Abs(e.High-top) > 1e-9 {
		t.Errorf("reads 1 low: above its highest mark: %v", err)
	}
	if got, err := hot.On(density.Hydrometer{}); !errors.As(err, &e) || e.Func != "density.Mark.On" || !math.IsNaN(float64(got)) {
		t.Errorf("a mark on no stem: %v, %v", float64(got), err)
	}
}
