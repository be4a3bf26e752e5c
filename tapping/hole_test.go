package tapping_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func TestNewHoleRange(t *testing.T) {
	const bit, depth, bark = 5 * units.Inch / 16, 1.5 * units.Inch, units.Inch / 2
	checkRange(t, "bit", 0.003, 0.020, func(x float64) error {
		_, err := tapping.NewHole(units.Length(x), depth, bark)
		return err
	})
	checkRange(t, "depth", 0.005, float64(4*units.Inch), func(x float64) error {
		_, err := tapping.NewHole(bit, units.Length(x), bark)
		return err
	})
	checkRange(t, "bark", 0, float64(4*units.Inch), func(x float64) error {
		_, err := tapping.NewHole(bit, depth, units.Length(x))
		return err
	})
	h := must[tapping.Hole](t)(tapping.NewHole(bit, depth, bark))
	if h.Bit() != bit || h.Depth() != depth || h.Bark() != bark || !near(h.DepthWithBark().Inches(), 2) {
		t.Errorf("hole %+v", h)
	}
}

func TestHoleLimit(t *testing.T) {
	quebec := tapping.HoleLimits()[0]
	for _, c := range []struct {
		bit, depth, bark units.Length
		wantBit          tapping.Legality
		wantDepth        tapping.Legality
	}{
		{7 * units.Inch / 16, 5 * units.Centimeter, 1 * units.Centimeter, tapping.NominalAtLimit, tapping.WithinLimit},
		{5 * units.Inch / 16, 5 * units.Centimeter, 1.1 * units.Centimeter, tapping.WithinLimit, tapping.OverLimit},
		{11 * units.Millimeter, 2 * units.Inch, 0, tapping.WithinLimit, tapping.WithinLimit},
		{11.1 * units.Millimeter, 2 * units.Inch, 1 * units.Centimeter, tapping.OverLimit, tapping.OverLimit},
		{11.2 * units.Millimeter, 1 * units.Inch, 0, tapping.OverLimit, tapping.WithinLimit},
		{units.Inch / 2, 1 * units.Inch, 0, tapping.OverLimit, tapping.WithinLimit},
	} {
		h := must[tapping.Hole](t)(tapping.NewHole(c.bit, c.depth, c.bark))
		if bit, depth := quebec.Compare(h); bit != c.wantBit || depth != c.wantDepth {
			t.Errorf("bit %v, depth %v + %v: %v, %v; want %v, %v", c.bit, c.depth, c.bark, bit, depth, c.wantBit, c.wantDepth)
		}
	}
	if bit, depth := quebec.Compare(tapping.Hole{}); bit != tapping.NotCompared || depth != tapping.NotCompared {
		t.Errorf("the zero hole: %v, %v", bit, depth)
	}
	h := must[tapping.Hole](t)(tapping.NewHole(7*units.Inch/16, 1*units.Inch, 0))
	if bit, depth := (tapping.HoleLimit{}).Compare(h); bit != tapping.NotCompared || depth != tapping.NotCompared {
		t.Errorf("the zero limit: %v, %v", bit, depth)
	}
}

func TestTooColdToDrill(t *testing.T) {
	for _, c := range []struct {
		c    float64
		want bool
	}{{-5, false}, {math.Nextafter(-5, -6), true}, {-4, false}, {math.NaN(), true}, {math.Inf(-1), true}} {
		if got := tapping.TooColdToDrill(units.Celsius(c.c)); got != c.want {
			t.Errorf("%v C: %v", c.c, got)
		}
	}
}

func TestDepthAdvised(t *testing.T) {
	for _, v := range []tapping.Vigor{tapping.NotJudged, tapping.Healthy, tapping.Slow, tapping.Unhealthy} {
		low, high := tapping.DepthAdvised(v)
		if low > high || high > 2*units.Inch {
			t.Errorf("%v: %v to %v", v, low, high)
		}
	}
}
