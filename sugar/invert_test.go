package sugar_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestMeterRoundTrip(t *testing.T) {
	r := newDraw()
	for range draws {
		reading, dilution := sugar.Glucose(between(r, 20, 600)), between(r, 1, 50)
		x := must[units.Share](t)(sugar.InvertedFromMeter(reading, dilution))
		if back := must[sugar.Glucose](t)(sugar.MeterFromInverted(x, dilution)); !near(float64(back), float64(reading), 1e-12*600) {
			t.Errorf("%v at 1:%v came back as %v", reading, dilution, back)
		}
	}
	// The same syrup at twice the dilution shows half.
	a := must[units.Share](t)(sugar.InvertedFromMeter(60, 10))
	b := must[units.Share](t)(sugar.InvertedFromMeter(30, 20))
	if !near(float64(a), float64(b), 1e-12) {
		t.Errorf("60 at 1:10 is %v, 30 at 1:20 is %v", a, b)
	}
}

// Half of inverted sugar is glucose: 1 percent by mass in ten parts of the whole
// is 0.05 percent of glucose, 50 mg in 100 g, and about as much in a deciliter.
func TestMeterAgainstTheMassBalance(t *testing.T) {
	const milligrams = 0.01 / 2 / 10 * 100e3 // in 100 g
	if x := must[units.Share](t)(sugar.InvertedFromMeter(milligrams, 10)); !near(float64(x), 1, 1e-12) {
		t.Errorf("1 percent reads as %v", x)
	}
}

// Glucose is C6H12O6; atomic masses of IUPAC, abridged (12.011, 1.008, 15.999).
func TestGlucoseUnits(t *testing.T) {
	const gramsPerMole = 6*12.011 + 12*1.008 + 6*15.999
	// One mmol/L is a thousandth of that in a liter, a tenth of it in a deciliter.
	if want := gramsPerMole / 10; !near(float64(sugar.MillimolePerLiter/sugar.MilligramPerDeciliter), want, 1e-9) {
		t.Errorf("mmol/L is %v mg/dL, want %v", sugar.MillimolePerLiter, want)
	}
	if x := must[units.Share](t)(sugar.InvertedFromMeter(20*sugar.MilligramPerDeciliter, 10)); !near(float64(x), 0.4, 1e-12) {
		t.Errorf("20 mg/dL at 1:10 is %v", x)
	}
}

func TestConfections(t *testing.T) {
	for _, tt := range []struct {
		c    sugar.Confection
		x    units.Share
		want bool
	}{
		{sugar.MoldedSugar, 0.49, false}, {sugar.MoldedSugar, 0.5, true}, {sugar.MoldedSugar, 1.5, true}, {sugar.MoldedSugar, 1.51, false},
		{sugar.MapleCream, 0, true}, {sugar.MapleCream, 4, true}, {sugar.MapleCream, 4.01, false}, {sugar.MapleCream, 100, false},
	} {
		if got, err := tt.c.Suits(tt.x); err != nil || got != tt.want {
			t.Errorf("%v percent for %v: %v, %v", tt.x, tt.c, got, err)
		}
	}
	for _, c := range []sugar.Confection{0, sugar.MapleCream + 1, 255} {
		low, high := c.Inverted()
		_, err1 := c.Suits(1)
		_, _, err2 := c.Blend(1, 2)
		if !math.IsNaN(float64(low)) || !math.IsNaN(float64(high)) || !errors.Is(err1, sugar.ErrInfeasible) || !errors.Is(err2, sugar.ErrInfeasible) {
			t.Errorf("%v: %v to %v, %v, %v", c, low, high, err1, err2)
		}
	}
}

// The shares that Blend gives are those at which the mixture meets the limits,
// and all between them suit.
func TestConfectionBlend(t *testing.T) {
	r := newDraw()
	possible := 0
	for range draws {
		c := sugar.MoldedSugar
		if r.IntN(2) == 0 {
			c = sugar.MapleCream
		}
		have, other := units.Share(between(r, 0, 8)), units.Share(between(r, 0, 8))
		low, high := c.Inverted()
		least, most, err := c.Blend(have, other)
		mixed := func(share units.Share) units.Share {
			return have + (other-have)*units.Share(share.Fraction())
		}
		in := func(x units.Share) bool { return x >= low-1e-9 && x <= high+1e-9 }
		if err != nil {
			for s := units.Share(0); s <= 100; s += 1 {
				if x := mixed(s); x >= low && x <= high {
					t.Fatalf("%v with %v for %v: %v, yet %v of it suits", have, other, c, err, s)
				}
			}
			continue
		}
		possible++
		if !(least >= 0 && most <= 100+1e-12 && least <= most+1e-9) || !in(mixed(least)) || !in(mixed(most)) {
			t.Errorf("%v with %v for %v: %v to %v gives %v to %v", have, other, c, least, most, mixed(least), mixed(most))
		}
		if math.Abs(float64(other-have)) > 0.1 && (least > 0.1 && in(mixed(least-0.1)) || most < 99.9 && in(mixed(most+0.1))) {
			t.Errorf("%v with %v for %v: less than %v or more than %v would do", have, other, c, least, most)
		}
	}
	if possible < draws/4 {
		t.Errorf("only %d blends were possible", possible)
	}
	for _, pair := range [][2]units.Share{{2, 3}, {0.1, 0.4}} {
		if least, most, err := sugar.MoldedSugar.Blend(pair[0], pair[1]); !errors.Is(err, sugar.ErrInfeasible) || !math.IsNaN(float64(least)) || !math.IsNaN(float64(most)) {
			t.Errorf("%v for molded sugar: %v to %v, %v", pair, least, most, err)
		}
	}
}

// At the limits themselves: two syrups that both have the most or the least in
// any shares, and one at the edge beside one beyond it alone.
func TestConfectionBlendAtTheLimits(t *testing.T) {
	low, high := sugar.MoldedSugar.Inverted()
	for _, tc := range []struct{ have, other, least, most units.Share }{
		{low, low, 0, 100},
		{high, high, 0, 100},
		{low, high, 0, 100},
		{low / 2, low, 100, 100},
		{low, low / 2, 0, 0},
		{high * 2, high, 100, 100},
		{high, high * 2, 0, 0},
	} {
		least, most, err := sugar.MoldedSugar.Blend(tc.have, tc.other)
		if err != nil || !near(float64(least), float64(tc.least), 1e-9) || !near(float64(most), float64(tc.most), 1e-9) {
			t.Errorf("%v with %v: %v to %v, %v, want %v to %v", tc.have, tc.other, least, most, err, tc.least, tc.most)
		}
	}
}

func TestInvertLimits(t *testing.T) {
	var errs []error
	for _, x := range append([]float64{19.99, 600.01, -1, 0}, notNumbers...) {
		v, err := sugar.InvertedFromMeter(sugar.Glucose(x), 10)
		if !math.IsNaN(float64(v)) {
			t.Errorf("reading %v gives %v", x, v)
		}
		errs = append(errs, err)
	}
	for _, x := range append([]float64{0.999, 50.001, -1, 0}, notNumbers...) {
		v, err1 := sugar.InvertedFromMeter(50, x)
		g, err2 := sugar.MeterFromInverted(1, x)
		if !math.IsNaN(float64(v)) || !math.IsNaN(float64(g)) {
			t.Errorf("dilution %v gives %v, %v", x, v, g)
		}
		errs = append(errs, err1, err2)
	}
	for _, x := range append([]float64{-0.001, 100.001}, notNumbers...) {
		_, err1 := sugar.MeterFromInverted(units.Share(x), 10)
		_, err2 := sugar.MapleCream.Suits(units.Share(x))
		_, _, err3 := sugar.MapleCream.Blend(units.Share(x), 1)
		_, _, err4 := sugar.MapleCream.Blend(1, units.Share(x))
		errs = append(errs, err1, err2, err3, err4)
	}
	for i, err := range errs {
		if !errors.Is(err, units.ErrRange) {
			t.Errorf("case %d: %v", i, err)
		}
	}
	for _, d := range []float64{1, 50} {
		for _, g := range []sugar.Glucose{20, 600} {
			if x, err := sugar.InvertedFromMeter(g, d); err != nil || !(x > 0 && x <= 100) {
				t.Errorf("%v at 1:%v: %v, %v", g, d, x, err)
			}
		}
	}
}
