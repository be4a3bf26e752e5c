package sugar_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func TestColorClassOf(t *testing.T) {
	for _, tt := range []struct {
		transmission float64
		want         sugar.ColorClass
	}{
		{100, sugar.Golden}, {75, sugar.Golden}, {74.96, sugar.Golden}, {74.95, sugar.Golden},
		{74.94, sugar.Amber}, {74.9, sugar.Amber}, {50, sugar.Amber}, {49.95, sugar.Amber},
		{49.94, sugar.Dark}, {49.9, sugar.Dark}, {25, sugar.Dark}, {24.95, sugar.Dark},
		{24.94, sugar.VeryDark}, {24.9, sugar.VeryDark}, {0, sugar.VeryDark},
	} {
		if got, err := sugar.ColorClassOf(units.Share(tt.transmission)); err != nil || got != tt.want {
			t.Errorf("%v percent is %v, %v; want %v", tt.transmission, got, err, tt.want)
		}
	}
	for _, x := range append([]float64{-0.001, 100.001}, notNumbers...) {
		if got, err := sugar.ColorClassOf(units.Share(x)); got != 0 || !errors.Is(err, units.ErrRange) {
			t.Errorf("%v percent is %v, %v", x, got, err)
		}
	}
}

// Every tenth of a percent lies in one class, and the class says so itself.
func TestColorClassesTile(t *testing.T) {
	for tenth := range 1001 {
		x := units.Share(float64(tenth) / 10)
		c, err := sugar.ColorClassOf(x)
		if err != nil {
			t.Fatal(err)
		}
		in := 0
		for k := sugar.Golden; k <= sugar.VeryDark; k++ {
			if low, below := k.Limits(); x >= low && x < below {
				in++
				if k != c {
					t.Errorf("%v lies in %v and is said to be %v", x, k, c)
				}
			}
		}
		if in != 1 {
			t.Errorf("%v lies in %d classes", x, in)
		}
	}
	for _, c := range []sugar.ColorClass{0, sugar.VeryDark + 1, 255} {
		if low, below := c.Limits(); !math.IsNaN(float64(low)) || !math.IsNaN(float64(below)) || c.Taste() != "" || c.String() == "" {
			t.Errorf("%v: %v to %v, taste %q", c, low, below, c.Taste())
		}
	}
}

func TestAbsorbanceRoundTrip(t *testing.T) {
	r := newDraw()
	for range draws {
		x := units.Share(100 * math.Pow(10, -between(r, 0, 5)))
		a := must[sugar.Absorbance](t)(sugar.AbsorbanceOf(x))
		if back := must[units.Share](t)(a.Transmission()); !near(float64(back), float64(x), 1e-12*float64(x)) {
			t.Errorf("%v percent came back as %v", x, back)
		}
	}
	if a := must[sugar.Absorbance](t)(sugar.AbsorbanceOf(100)); math.Signbit(float64(a)) || a != 0 {
		t.Errorf("clear syrup absorbs %v", a)
	}
}

func TestColorAlgebra(t *testing.T) {
	r := newDraw()
	for range draws {
		x := units.Share(between(r, 1, 100))
		near1 := units.Millimeters(between(r, 1, 50))
		far := units.Millimeters(between(r, 1, 50))
		there := must[units.Share](t)(sugar.TransmissionAtPath(x, near1, far))
		if (there < x) != (far > near1) && x < 100 {
			t.Errorf("%v in %v is %v in %v", x, near1, there, far)
		}
		if there >= 0.001 {
			if back := must[units.Share](t)(sugar.TransmissionAtPath(there, far, near1)); !near(float64(back), float64(x), 1e-10) {
				t.Errorf("%v by path came back as %v", x, back)
			}
		}
		from, to := units.Brix(between(r, 60, 70)), units.Brix(between(r, 60, 70))
		other := must[units.Share](t)(sugar.TransmissionAtBrix(x, from, to))
		if back := must[units.Share](t)(sugar.TransmissionAtBrix(other, to, from)); !near(float64(back), float64(x), 1e-10) {
			t.Errorf("%v by strength came back as %v", x, back)
		}
		if (other < x) != (to > from) && x < 100 {
			t.Errorf("%v at %v is %v at %v", x, from, other, to)
		}
		// A blend lies between its parts and under the mean; the share of the
		// light part comes back.
		dark, light := units.Share(between(r, 1, 50)), units.Share(between(r, 50, 100))
		va, vb := units.Liters(between(r, 0.1, 100)), units.Liters(between(r, 0.1, 100))
		both := must[units.Share](t)(sugar.BlendTransmission(sugar.Tinted{Volume: va, Transmission: dark}, sugar.Tinted{}, sugar.Tinted{Volume: vb, Transmission: light}))
		mean := (float64(va)*float64(dark) + float64(vb)*float64(light)) / float64(va+vb)
		if !(both >= dark && both <= light && float64(both) <= mean+1e-9) {
			t.Errorf("%v of %v and %v of %v blend to %v, mean %v", va, dark, vb, light, both, mean)
		}
		if light-dark < 0.1 {
			continue
		}
		share := must[units.Share](t)(sugar.LightShare(dark, light, both))
		if want := 100 * float64(vb/(va+vb)); !near(float64(share), want, 1e-8) {
			t.Errorf("share of the light part %v, want %v", share, want)
		}
	}
}

// Water has no color, and thinning syrup to water takes it away.
func TestTransmissionAtBrixOfWater(t *testing.T) {
	if x := must[units.Share](t)(sugar.TransmissionAtBrix(30, 66.9, 0)); !near(float64(x), 100, 1e-12) {
		t.Errorf("syrup thinned to water lets %v through", x)
	}
}

func TestColorLimits(t *testing.T) {
	mm := units.Millimeters
	var got []units.Share
	var errs []error
	keep := func(s units.Share, err error) { got, errs = append(got, s), append(errs, err) }
	for _, v := range append([]float64{-1, 0, 0.0009, 100.001}, notNumbers...) {
		x := units.Share(v)
		a, err := sugar.AbsorbanceOf(x)
		keep(units.Share(a), err)
		keep(sugar.TransmissionAtPath(x, mm(10), mm(20)))
		keep(sugar.TransmissionAtBrix(x, 66, 67))
		keep(sugar.BlendTransmission(sugar.Tinted{Volume: units.Liter, Transmission: x}))
		keep(sugar.LightShare(x, 82, 50))
		keep(sugar.LightShare(46, x, 50))
		keep(sugar.LightShare(46, 82, x))
	}
	for _, v := range append([]float64{-0.001, 5.001}, notNumbers...) {
		keep(sugar.Absorbance(v).Transmission())
	}
	for _, v := range append([]float64{0, -1, 0.00009, 1.0001}, notNumbers...) {
		keep(sugar.TransmissionAtPath(50, units.Length(v), mm(10)))
		keep(sugar.TransmissionAtPath(50, mm(10), units.Length(v)))
	}
	for _, v := range append([]float64{-0.001, 85.001}, notNumbers...) {
		keep(sugar.TransmissionAtBrix(50, units.Brix(v), 66))
		keep(sugar.TransmissionAtBrix(50, 66, units.Brix(v)))
	}
	keep(sugar.TransmissionAtBrix(50, 0.999, 66))
	for _, v := range append([]float64{-1, 1.001e6}, notNumbers...) {
		keep(sugar.BlendTransmission(sugar.Tinted{Volume: units.Volume(v), Transmission: 50}))
	}
	for i := range errs {
		if !errors.Is(errs[i], units.ErrRange) || !math.IsNaN(float64(got[i])) {
			t.Errorf("case %d: %v, %v; want NaN and a range error", i, got[i], errs[i])
		}
	}
	got, errs = nil, nil
	keep(sugar.TransmissionAtPath(0.001, mm(0.1), mm(1000)))
	keep(sugar.TransmissionAtPath(100, mm(1000), mm(0.1)))
	keep(sugar.TransmissionAtBrix(0.001, 1, 85))
	keep(sugar.TransmissionAtBrix(100, 85, 0))
	keep(sugar.BlendTransmission(sugar.Tinted{Volume: 1e6, Transmission: 0.001}, sugar.Tinted{Volume: 0, Transmission: 0}))
	keep(sugar.LightShare(0.001, 100, 0.001))
	keep(sugar.LightShare(0.001, 100, 100))
	keep(sugar.Absorbance(0).Transmission())
	keep(sugar.Absorbance(5).Transmission())
	for i := range errs {
		if errs[i] != nil || !(got[i] >= 0 && got[i] <= 100+1e-9) {
			t.Errorf("limit %d: %v, %v", i, got[i], errs[i])
		}
	}
	got, errs = nil, nil
	keep(sugar.LightShare(82, 46, 50))
	keep(sugar.LightShare(46, 46, 46))
	keep(sugar.LightShare(46, 82, 45.9))
	keep(sugar.LightShare(46, 82, 82.1))
	keep(sugar.BlendTransmission())
	keep(sugar.BlendTransmission(sugar.Tinted{Transmission: 50}))
	for i := range errs {
		if !errors.Is(errs[i], sugar.ErrInfeasible) || !math.IsNaN(float64(got[i])) {
			t.Errorf("case %d: %v, %v; want NaN and an infeasible ask", i, got[i], errs[i])
		}
	}
}
