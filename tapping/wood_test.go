package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func hole(t testing.TB, bit, depth float64) tapping.Hole {
	return must[tapping.Hole](t)(tapping.NewHole(units.Inches(bit), units.Inches(depth), 0))
}

func band(t testing.TB, diameter, height, bit, depth float64, taps int) tapping.TappingBand {
	return must[tapping.TappingBand](t)(tapping.NewTappingBand(units.Inches(diameter), units.Inches(height), hole(t, bit, depth), taps))
}

func TestTappingBandRange(t *testing.T) {
	h := hole(t, 0.3125, 1.5)
	checkRange(t, "diameter", float64(3*units.Inch), 5, func(x float64) error {
		_, err := tapping.NewTappingBand(units.Length(x), 30*units.Inch, h, 1)
		return err
	})
	checkRange(t, "height", float64(units.Inch), float64(20*units.Foot), func(x float64) error {
		_, err := tapping.NewTappingBand(1*units.Foot, units.Length(x), h, 1)
		return err
	})
	for taps, ok := range map[int]bool{0: false, 1: true, 10: true, 11: false} {
		if _, err := tapping.NewTappingBand(1*units.Foot, 30*units.Inch, h, taps); (err == nil) != ok {
			t.Errorf("%d taps: %v", taps, err)
		}
	}
	if _, err := tapping.NewTappingBand(1*units.Foot, 30*units.Inch, tapping.Hole{}, 1); !errors.Is(err, units.ErrRange) {
		t.Errorf("the zero hole: %v", err)
	}
	b := band(t, 10, 30, 0.3125, 1.5, 1)
	checkRange(t, "Conductive", 0, float64(units.Inch), func(x float64) error {
		s, err := b.Conductive(units.Length(x), 3, 1)
		if (err != nil) != math.IsNaN(float64(s)) {
			t.Errorf("share %v with error %v", s, err)
		}
		return err
	})
	checkRange(t, "Steady", 0, float64(units.Inch), func(x float64) error { _, err := b.Steady(units.Length(x)); return err })
	checkRange(t, "YearsToRecover growth", float64(units.Inch/1000), float64(units.Inch), func(x float64) error {
		_, err := b.YearsToRecover(units.Length(x), 10, 90)
		return err
	})
	checkRange(t, "YearsToRecover target", 0, 100, func(x float64) error {
		_, err := b.YearsToRecover(units.Inch/10, 10, units.Share(x))
		return err
	})
	best := float64(must[units.Share](t)(b.Conductive(1*units.Inch, 1, 0)))
	checkRange(t, "GrowthNeeded", 0, best, func(x float64) error {
		_, err := b.GrowthNeeded(units.Share(x))
		return err
	})
	for _, years := range []int{-1, 10001} {
		if _, err := b.Conductive(0, years, 0); !errors.Is(err, units.ErrRange) {
			t.Errorf("tapped %d years: %v", years, err)
		}
		if _, err := b.Conductive(0, 0, years); !errors.Is(err, units.ErrRange) {
			t.Errorf("rested %d years: %v", years, err)
		}
	}
}

func TestZeroBand(t *testing.T) {
	var b tapping.TappingBand
	if _, err := b.Conductive(0, 0, 0); !errors.Is(err, units.ErrRange) {
		t.Errorf("Conductive: %v", err)
	}
	if _, err := b.GrowthNeeded(0); !errors.Is(err, units.ErrRange) {
		t.Errorf("GrowthNeeded: %v", err)
	}
	if _, err := b.YearsToRecover(units.Inch/10, 1, 90); !errors.Is(err, units.ErrRange) {
		t.Errorf("YearsToRecover: %v", err)
	}
}

// stained is the model written out: the plain sum over the years.
func stained(diameter, height, bit, depth, growth float64, taps, tapped, rested int) float64 {
	z := height * math.Pi * (diameter - depth) * depth
	v := tapping.StainRatio * math.Pi / 4 * bit * bit * depth
	sum := 0.0
	for k := rested; k < rested+tapped; k++ {
		sum += max(0, 1-float64(k)*growth/depth)
	}
	return float64(taps) * v / z * sum
}

func TestConductiveIsThePlainSum(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 2000 {
		d, h, depth, g := 8+12*r.Float64(), 20+30*r.Float64(), 1+r.Float64(), 0.2*r.Float64()
		taps, tapped, rested := 1+r.IntN(3), r.IntN(60), r.IntN(30)
		got := must[units.Share](t)(band(t, d, h, 0.3125, depth, taps).Conductive(units.Inches(g), tapped, rested)).Fraction()
		want := max(0, 1-stained(d, h, 0.3125, depth, g, taps, tapped, rested))
		if !near(got, want) {
			t.Fatalf("D %v, H %v, h %v, g %v, %d taps, %d tapped, %d rested: %v, want %v", d, h, depth, g, taps, tapped, rested, got, want)
		}
	}
}

func TestSteadyIsTheEnd(t *testing.T) {
	b := band(t, 12, 30, 0.3125, 1.5, 1)
	for _, g := range []units.Length{0.01 * units.Inch, 0.05 * units.Inch, 0.5 * units.Inch, 1 * units.Inch} {
		end := must[units.Share](t)(b.Conductive(g, 10000, 0))
		if got := must[units.Share](t)(b.Steady(g)); !near(float64(got), float64(end)) {
			t.Errorf("growth %v: steady %v, after 10000 years %v", g, got, end)
		}
	}
	if got := must[units.Share](t)(b.Steady(0)); got != 0 {
		t.Errorf("without growth %v is left", got)
	}
	if got := must[units.Share](t)(b.Conductive(0, 10000, 0)); got != 0 {
		t.Errorf("10000 years without growth leave %v", got)
	}
}

func TestGrowthNeededRoundTrip(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		b := band(t, 8+20*r.Float64(), 20+40*r.Float64(), 0.1875+0.25*r.Float64(), 0.8+1.2*r.Float64(), 1+r.IntN(2))
		best := must[units.Share](t)(b.Conductive(1*units.Inch, 1, 0))
		target := units.Share(r.Float64()) * best
		g := must[units.Length](t)(b.GrowthNeeded(target))
		if g > 1*units.Inch {
			continue // a hole deeper than 1 in and one year's stain only
		}
		if back := must[units.Share](t)(b.Steady(g)); math.Abs(float64(back-target)) > 1e-9 {
			t.Fatalf("target %v needs %v, which gives %v", target, g, back)
		}
	}
}

// More growth, a smaller bit, fewer taps and a higher band all leave more wood.
func TestConductiveIsMonotone(t *testing.T) {
	base := must[units.Share](t)(band(t, 12, 30, 0.3125, 1.5, 1).Conductive(0.06*units.Inch, 40, 0))
	for name, less := range map[string]tapping.TappingBand{
		"wider bit":    band(t, 12, 30, 0.4375, 1.5, 1),
		"two taps":     band(t, 12, 30, 0.3125, 1.5, 2),
		"lower band":   band(t, 12, 24, 0.3125, 1.5, 1),
		"thinner tree": band(t, 10, 30, 0.3125, 1.5, 1),
		"deeper hole":  band(t, 12, 30, 0.3125, 2, 1),
	} {
		if got := must[units.Share](t)(less.Conductive(0.06*units.Inch, 40, 0)); got >= base {
			t.Errorf("%s: %v, no less than %v", name, got, base)
		}
	}
	if got := must[units.Share](t)(band(t, 12, 30, 0.3125, 1.5, 1).Conductive(0.05*units.Inch, 40, 0)); got >= base {
		t.Errorf("less growth leaves %v, no less than %v", got, base)
	}
}

func TestYearsToRecover(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 500 {
		b := band(t, 8+12*r.Float64(), 20+30*r.Float64(), 0.4375, 1+r.Float64(), 1+r.IntN(2))
		g := units.Inches(0.01 + 0.15*r.Float64())
		tapped, target := r.IntN(60), units.Share(50+49*r.Float64())
		n := must[int](t)(b.YearsToRecover(g, tapped, target))
		if got := must[units.Share](t)(b.Conductive(g, tapped, n)); got < target {
			t.Fatalf("after %d years of rest %v, target %v", n, got, target)
		}
		if n > 0 {
			if got := must[units.Share](t)(b.Conductive(g, tapped, n-1)); got >= target {
				t.Fatalf("%d years of rest were enough for %v", n-1, target)
			}
		}
	}
	if n := must[int](t)(band(t, 12, 30, 0.3125, 1.5, 1).YearsToRecover(0.1*units.Inch, 40, 100)); n != 15 {
		t.Errorf("full recovery takes %d years of 0.1 in for a hole of 1.5 in, want 15", n)
	}
}

func TestGrowthRoundTrip(t *testing.T) {
	checkRange(t, "BasalAreaGrowth diameter", 0, 5, func(x float64) error {
		_, err := tapping.BasalAreaGrowth(units.Length(x), units.Inch/10)
		return err
	})
	checkRange(t, "BasalAreaGrowth growth", 0, float64(units.Inch), func(x float64) error {
		_, err := tapping.BasalAreaGrowth(1*units.Foot, units.Length(x))
		return err
	})
	most := must[units.Area](t)(tapping.BasalAreaGrowth(1*units.Foot, 1*units.Inch))
	checkRange(t, "RadialGrowth area", 0, float64(most), func(x float64) error {
		_, err := tapping.RadialGrowth(1*units.Foot, units.Area(x))
		return err
	})
	checkRange(t, "RadialGrowth diameter", 0, 5, func(x float64) error {
		_, err := tapping.RadialGrowth(units.Length(x), 0)
		return err
	})
	r := rand.New(rand.NewPCG(9, 10))
	for range 1000 {
		d, g := units.Length(5*r.Float64()), units.Inches(r.Float64())
		a := must[units.Area](t)(tapping.BasalAreaGrowth(d, g))
		if back := must[units.Length](t)(tapping.RadialGrowth(d, a)); !near(float64(back), float64(g)) {
			t.Fatalf("growth %v at %v came back as %v", g, d, back)
		}
	}
}

// A number that is none of years is 0, and a hole that was not made is told as
// one of no depth.
func TestWoodRefusesWithZero(t *testing.T) {
	b := band(t, 12, 30, 0.3125, 1.5, 1)
	for name, call := range map[string]func() (int, error){
		"no growth":  func() (int, error) { return b.YearsToRecover(0, 10, 90) },
		"no band":    func() (int, error) { return tapping.TappingBand{}.YearsToRecover(units.Inch/10, 10, 90) },
		"far target": func() (int, error) { return b.YearsToRecover(units.Inch/10, 10, 101) },
	} {
		if n, err := call(); n != 0 || !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: %d years, %v", name, n, err)
		}
	}
	_, err := tapping.NewTappingBand(12*units.Inch, 30*units.Inch, tapping.Hole{}, 1)
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 0 || !near(e.Low, 0.5/2.54) {
		t.Errorf("no hole: %v", err)
	}
}

// What Centre ACER (741-FIN-0608) prints for two taps, 2.9 and 3.7 mm of diameter at
// 40 and 33 cm, is missed by 7 and 9 percent with holes of 5/16 by 1.5 in and a band
// 30 in high. One change for both figures makes up for it: 8 percent more of stained
// wood, or holes and a band in round metric numbers. Which of these the source took
// was not seen.
func TestTwoTapsByOneChange(t *testing.T) {
	for _, tc := range []struct {
		name             string
		bit, depth, high units.Length
	}{
		{"8 percent more of stained wood", units.Length(math.Sqrt(1.08)) * 5 * units.Inch / 16, 1.5 * units.Inch, 30 * units.Inch},
		{"8 by 40 mm, 75 cm", 8 * units.Millimeter, 4 * units.Centimeter, 75 * units.Centimeter},
	} {
		for dbh, want := range map[units.Length]float64{40 * units.Centimeter: 2.9, 33 * units.Centimeter: 3.7} {
			hole := must[tapping.Hole](t)(tapping.NewHole(tc.bit, tc.depth, 0))
			band := must[tapping.TappingBand](t)(tapping.NewTappingBand(dbh, tc.high, hole, 2))
			if g := must[units.Length](t)(band.GrowthNeeded(tapping.TargetConductive)); !(math.Abs(2*g.Millimeters()-want) < 0.05) {
				t.Errorf("%s, %v: %v mm of diameter, printed %v", tc.name, dbh, 2*g.Millimeters(), want)
			}
		}
	}
}
