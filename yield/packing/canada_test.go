package packing_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// weighed turns contents in mL at 20 C into what a scale in air shows for them.
func weighed(t *testing.T, contents ...float64) []units.Mass {
	t.Helper()
	rho, err := density.Solution(66.9, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	net := make([]units.Mass, len(contents))
	for i, ml := range contents {
		net[i] = density.InAir(rho).Mass(units.Milliliters(ml))
	}
	return net
}

func repeated(n int, ml float64, then ...float64) []float64 {
	all := make([]float64, n, n+len(then))
	for i := range all {
		all[i] = ml
	}
	return append(all, then...)
}

// By hand, jars of 500 mL: the tolerance is 3 percent, 15 mL, twice it 30. Of a lot
// of 40 ten are weighed (a quarter), of which two short fail it; t is 3.25.
//
// Five of 498 and five of 500 mL average 499 with a standard deviation of
// sqrt(10/9) = 1.0541 mL; with 1.0541 x 3.25/sqrt(10) = 1.0833 they are at 500.083
// and pass. All at 499 have no spread and fail. In a lot of ten, all weighed, the
// first fail too: nothing is left to doubt.
func TestCanadianLotByHand(t *testing.T) {
	half := units.Milliliters(500)
	mixed := []float64{498, 500, 498, 500, 498, 500, 498, 500, 498, 500}
	for name, tt := range map[string]struct {
		lot                   int
		contents              []float64
		average, short, far   bool
		nShort, nFar, nNeeded int
	}{
		"doubt":          {40, mixed, false, false, false, 0, 0, 10},
		"no spread":      {40, repeated(10, 499), true, false, false, 0, 0, 10},
		"all weighed":    {10, mixed, true, false, false, 0, 0, 10},
		"full":           {40, repeated(10, 500), false, false, false, 0, 0, 10},
		"at tolerance":   {40, repeated(8, 510, 485, 485), false, false, false, 0, 0, 10},
		"one short":      {40, repeated(9, 510, 484.9), false, false, false, 1, 0, 10},
		"two short":      {40, repeated(8, 510, 484.9, 484), false, true, false, 2, 0, 10},
		"one far short":  {40, repeated(9, 510, 469.9), false, false, false, 1, 1, 10},
		"two far":        {128, repeated(30, 510, 469.9, 469.9), false, false, true, 2, 2, 32},
		"three of 32":    {200, repeated(29, 510, 480, 480, 480), false, true, false, 3, 0, 32},
		"more than need": {200, repeated(37, 510, 480, 480, 480), false, false, false, 3, 0, 32},
		"four of 40":     {200, repeated(36, 510, 480, 480, 480, 480), false, true, false, 4, 0, 32},
		"short of all":   {2, []float64{440, 440}, true, true, true, 2, 2, 2},
	} {
		c, err := packing.CheckCanadianLot(half, 66.9, tt.lot, weighed(t, tt.contents...))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if c.AverageFails != tt.average || c.ShortFail != tt.short || c.FarShortFail != tt.far || c.Short != tt.nShort || c.FarShort != tt.nFar || c.Needed != tt.nNeeded {
			t.Errorf("%s: %+v", name, c)
		}
		if c.Passes == (tt.average || tt.short || tt.far) {
			t.Errorf("%s: passes %v", name, c.Passes)
		}
	}
	c, err := packing.CheckCanadianLot(half, 66.9, 40, weighed(t, mixed...))
	if err != nil {
		t.Fatal(err)
	}
	for name, tt := range map[string]struct {
		got  units.Volume
		want float64
	}{"average": {c.Average, 499}, "spread": {c.Spread, 1.0541}, "doubtless": {c.Doubtless, 500.0833}, "least": {c.Least, 498}, "tolerance": {c.Tolerance, 15}} {
		if !(math.Abs(tt.got.Milliliters()-tt.want) < 5e-5) {
			t.Errorf("%s: %v, not %v mL", name, tt.got.Milliliters(), tt.want)
		}
	}
}

// The sizes of samples at the ends of each step.
func TestCanadianSample(t *testing.T) {
	for lot, want := range map[int]int{2: 2, 10: 10, 11: 10, 40: 10, 41: 11, 128: 32, 129: 32, 4000: 32, 4001: 64, 8000: 64, 8001: 96, 12_000: 96, 12_001: 125, 10_000_000: 125} {
		if got, err := packing.CanadianSample(lot); got != want || err != nil {
			t.Errorf("%d: %d, %v", lot, got, err)
		}
	}
	for _, lot := range []int{-1, 0, 1, 10_000_001} {
		if _, err := packing.CanadianSample(lot); !errors.Is(err, units.ErrRange) {
			t.Errorf("%d: %v", lot, err)
		}
	}
}

// Interpolated in 120/n: at 48, 120/n is 2.5 between 3.75 and 1.875, a third of the
// way from 64: 2.657 + 0.089/3 = 2.6867, where Student's t for 47 is 2.685 (from
// memory). It never rises.
func TestCanadianLotRule(t *testing.T) {
	r, err := packing.CanadianLotRule(48)
	if err != nil || !(math.Abs(r.T-2.6867) < 5e-5) || r.ShortFails != 4 {
		t.Errorf("%v, %v", r, err)
	}
	last := packing.LotRule{T: 100, ShortFails: 1}
	for n := 2; n <= 125; n++ {
		r, err := packing.CanadianLotRule(n)
		if err != nil || !(r.T < last.T) || r.ShortFails < last.ShortFails {
			t.Errorf("%d: %v after %v, %v", n, r, last, err)
		}
		last = r
	}
	for _, n := range []int{-1, 0, 1, 126} {
		if _, err := packing.CanadianLotRule(n); !errors.Is(err, units.ErrRange) {
			t.Errorf("%d: %v", n, err)
		}
	}
}

// Bands are open below and closed above, and the tolerance never falls as labels
// grow.
func TestCanadianTolerance(t *testing.T) {
	for label, want := range map[float64]float64{50: 4.5, 50.001: 4.5, 200: 9, 300: 9, 300.1: 9.003, 1000: 15, 946.353: 15, 15_000: 150, 20_000: 200} {
		if got, err := packing.CanadianTolerance(units.Milliliters(label)); err != nil || !(math.Abs(got.Milliliters()-want) < 1e-9) {
			t.Errorf("%v: %v, %v", label, got.Milliliters(), err)
		}
	}
	last := units.Volume(0)
	for ml := 1.0; ml < 250_000; ml *= 1.01 {
		got, err := packing.CanadianTolerance(units.Milliliters(ml))
		if err != nil || !(got >= last*(1-1e-12)) {
			t.Errorf("%v: %v after %v, %v", ml, got, last, err)
		}
		last = got
	}
}

func TestCanadianLotRefuses(t *testing.T) {
	nine := weighed(t, repeated(9, 500)...)
	for name, tt := range map[string]struct {
		arg  string
		lot  int
		net  []units.Mass
		size units.Volume
	}{
		"too few":   {"net", 40, nine, 500},
		"too many":  {"net", 8, nine, 500},
		"one jar":   {"lot", 1, nine[:1], 500},
		"negative":  {"net[8]", 9, append(append([]units.Mass{}, nine[:8]...), -1), 500},
		"NaN":       {"net[8]", 9, append(append([]units.Mass{}, nine[:8]...), units.Mass(math.NaN())), 500},
		"no label":  {"stated", 9, nine, 0},
		"126 of it": {"net", 126, make([]units.Mass, 126), 500},
	} {
		_, err := packing.CheckCanadianLot(tt.size*units.Milliliter, 66.9, tt.lot, tt.net)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != tt.arg {
			t.Errorf("%s: %v", name, err)
		}
	}
}
