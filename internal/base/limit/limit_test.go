package limit_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

func TestCheck(t *testing.T) {
	r := limit.Range{Arg: "depth", Low: 1, High: 2, Unit: "m", Below: "deeper", Above: "shallower"}
	for _, x := range []float64{1, 1.5, 2, math.Nextafter(1, 0), math.Nextafter(2, 3), 1 - 5e-12, 2 + 1e-11} {
		if err := r.Check("f", x); err != nil {
			t.Errorf("%v: %v", x, err)
		}
	}
	for _, tc := range []struct {
		x    float64
		hint string
	}{
		{1 - 1e-9, "deeper"}, {2 + 2e-9, "shallower"},
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
	for _, x := range []float64{low, high, math.Nextafter(low, 0), math.Nextafter(high, 1)} {
		if err := check(x); err != nil {
			t.Errorf("%v: %v", x, err)
		}
	}
	for _, x := range []float64{low * (1 - 1e-9), high * (1 + 1e-9)} {
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

// At zero a part of a figure is nothing. A temperature has a hair there all the
// same, which is less than a billionth of a degree; an amount has none.
func TestHairAtZero(t *testing.T) {
	cold := limit.Range{Arg: "temperature", Low: 0, High: 1, Unit: "C"}
	mass := limit.Range{Arg: "mass", Low: 0, High: 1, Unit: "kg"}
	for _, tc := range []struct {
		r  *limit.Range
		x  float64
		ok bool
	}{
		{&cold, -1e-13, true}, {&cold, -3e-10, true}, {&cold, -1e-9, false}, {&cold, 1 + 1e-9, false},
		{&mass, math.Copysign(0, -1), true}, {&mass, -math.SmallestNonzeroFloat64, false}, {&mass, -1e-300, false},
	} {
		if err := tc.r.Check("f", tc.x); (err == nil) != tc.ok {
			t.Errorf("%s of %v: %v", tc.r.Arg, tc.x, err)
		}
	}
	open := limit.Range{Arg: "time", Low: 10, High: math.Inf(1)}
	whole := limit.Range{Arg: "number", Low: -math.MaxFloat64, High: math.MaxFloat64}
	if err := open.Check("f", 9); err == nil {
		t.Error("9 lies in 10 and more")
	}
	for _, x := range []float64{math.Inf(-1), math.Inf(1), math.NaN()} {
		if err := whole.Check("f", x); err == nil {
			t.Errorf("%v is finite", x)
		}
	}
}

// The hair is what its comment says: a figure may miss by 9e-12 of itself and not
// by 15e-12, a temperature at 0 C by 3.2e-10 and no more, 32 times the hair.
func TestHairWidth(t *testing.T) {
	cold := limit.Range{Arg: "temperature", Low: 0, High: 1, Unit: "C"}
	warm := limit.Range{Arg: "temperature", Low: -1, High: 0, Unit: "C"}
	one := limit.Range{Arg: "part", Low: 1, High: 2}
	for _, tc := range []struct {
		r  *limit.Range
		x  float64
		ok bool
	}{
		{&cold, -limit.HairC, true}, {&cold, -3.19e-10, true}, {&cold, -3.21e-10, false},
		{&warm, limit.HairC, true}, {&warm, 3.19e-10, true}, {&warm, 3.21e-10, false},
		{&one, 1 - 9e-12, true}, {&one, 1 - 11e-12, false}, {&one, 2 + 19e-12, true}, {&one, 2 + 21e-12, false},
		{&one, 1, true}, {&one, 2, true},
	} {
		if err := tc.r.CheckAs("f", "x", tc.x); (err == nil) != tc.ok {
			t.Errorf("%s of %v: %v", tc.r.Arg, tc.x, err)
		}
	}
	if !limit.Same(1, 1+9e-12) || limit.Same(1, 1+15e-12) || !limit.Same(1, 1-9e-12) || limit.Same(1, 1-15e-12) {
		t.Error("the same is wider or narrower than a hair")
	}
}

func TestSame(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, tc := range []struct {
		x, y        float64
		same, holds bool // holds: x in y and nothing else
	}{
		{66.9, 66.9 * (1 + 4e-16), true, true}, {66.9, 66.9 * (1 - 9e-12), true, true}, {66.9, 66.9 * (1 + 1e-9), false, false},
		{-5, -5 * (1 + 1e-12), true, true}, {0, 0, true, true}, {0, 1e-300, false, false}, {1, -1, false, false},
		{inf, inf, true, true}, {inf, 1, false, false}, {1, inf, false, false}, {-inf, inf, false, false},
		{nan, nan, false, false}, {nan, 1, false, false}, {1, nan, false, false},
	} {
		if got := limit.Same(tc.x, tc.y); got != tc.same {
			t.Errorf("Same(%v, %v) = %v", tc.x, tc.y, got)
		}
		if got := limit.Holds(tc.x, tc.y, tc.y); got != tc.holds {
			t.Errorf("Holds(%v, %v, %v) = %v", tc.x, tc.y, tc.y, got)
		}
	}
}

// The stable name and the words both come along, and the name may be given at
// the call. A good answer costs no room.
func TestNames(t *testing.T) {
	r := limit.Range{Arg: "brix", What: "sugar content", Low: 0, High: 85, Unit: "Brix"}
	for _, tc := range []struct {
		err       error
		arg, what string
	}{
		{r.Check("f", 86), "brix", "sugar content"},
		{r.CheckAs("f", "target", 86), "target", "sugar content"},
		{limit.WithinAs("f", "bit", "size of the bit", 3.0, 0, 1, 1, "in", ""), "bit", "size of the bit"},
		{limit.Within("f", "bit", 3.0, 0, 1, 1, "in", ""), "bit", ""},
	} {
		var e *units.RangeError
		if !errors.As(tc.err, &e) || e.Arg != tc.arg || e.What != tc.what {
			t.Errorf("%+v, want %s and %q", tc.err, tc.arg, tc.what)
		}
	}
	if n := testing.AllocsPerRun(10, func() {
		if r.CheckAs("f", "target", 66) != nil {
			t.Error("66 Brix is refused")
		}
	}); n > 0 {
		t.Errorf("%v allocations", n)
	}
}
