package density_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// sound checks what every function promises whatever it is given: a number
// with no error, or NaN with an error that is a range error.
func sound(t *testing.T, name string, x float64, err error) bool {
	t.Helper()
	if err == nil && !math.IsNaN(x) && !math.IsInf(x, 0) {
		return true
	}
	if err == nil || !math.IsNaN(x) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%s = %v, %v", name, x, err)
	}
	return false
}

func FuzzBrixFromDensity(f *testing.F) {
	f.Add(1328.191, 20.0)
	f.Add(999.8395, 0.0)
	f.Add(950.9, 110.0)
	f.Add(1.33, 20.0)
	f.Add(math.NaN(), math.Inf(-1))
	f.Fuzz(func(t *testing.T, d, at float64) {
		b, err := density.BrixFromDensity(kg(d), c(at))
		if !sound(t, "BrixFromDensity", float64(b), err) {
			return
		}
		back, err := density.Solution(b, c(at))
		if err != nil || !(math.Abs(float64(back)-d) <= 1e-9) {
			t.Errorf("%v kg/m3 at %v C is %v and comes back as %v, %v", d, at, b, back, err)
		}
	})
}

func FuzzScales(f *testing.F) {
	f.Add(1.32516, uint8(1))
	f.Add(1.0, uint8(0))
	f.Add(1.51876, uint8(1))
	f.Add(66.0, uint8(1))
	f.Add(math.NaN(), uint8(9))
	f.Fuzz(func(t *testing.T, x float64, scale uint8) {
		s := density.Scale(scale)
		b, err := s.Brix(sg(x))
		if sound(t, "Scale.Brix", float64(b), err) {
			if back, err := s.SG2020(b); err != nil || !(math.Abs(float64(back)-x) <= 1e-12) {
				t.Errorf("%v on %v is %v and comes back as %v, %v", x, s, b, back, err)
			}
		}
		b, err = s.BrixFromBaume(be(x))
		if sound(t, "Scale.BrixFromBaume", float64(b), err) {
			if back, err := s.Baume(b); err != nil || !(math.Abs(float64(back)-x) <= 1e-10) {
				t.Errorf("%v Be on %v is %v and comes back as %v, %v", x, s, b, back, err)
			}
		}
	})
}

func FuzzHydrometer(f *testing.F) {
	f.Add(59.0, 98.3, 15.6, 0.0, 0.0, uint8(0))
	f.Add(-1.0, 0.0, 1.0, 1e-4, 5.0, uint8(1))
	f.Add(85.0, 110.0, 40.0, 25e-6, -5.0, uint8(1))
	f.Add(math.NaN(), math.Inf(1), math.NaN(), -1.0, math.Inf(-1), uint8(7))
	f.Fuzz(func(t *testing.T, reading, at, graduated, glass, high float64, scale uint8) {
		h := density.Hydrometer{GraduatedAt: c(graduated), Expansion: glass, ReadsHigh: bx(high), Scale: density.Scale(scale)}
		b, err := h.Brix(bx(reading), c(at))
		if sound(t, "Hydrometer.Brix", float64(b), err) {
			if back, err := h.Reading(b, c(at)); err != nil || !(math.Abs(float64(back)-reading) <= 1e-9) {
				t.Errorf("%+v: %v at %v C is %v and comes back as %v, %v", h, reading, at, b, back, err)
			}
		}
		b, err = h.BrixFromBaume(be(reading), c(at))
		if sound(t, "Hydrometer.BrixFromBaume", float64(b), err) {
			if back, err := h.Baume(b, c(at)); err != nil || !(math.Abs(float64(back)-reading) <= 1e-9) {
				t.Errorf("%+v: %v Be at %v C is %v and comes back as %v, %v", h, reading, at, b, back, err)
			}
		}
		m, err := h.Measure(bx(reading), c(at), doubt)
		if err == nil && !(m.Uncertainty > 0 && m.Uncertainty < 85) {
			t.Errorf("%+v: %v at %v C measures %+v", h, reading, at, m)
		}
	})
}

func FuzzRefractometer(f *testing.F) {
	f.Add(66.9, 25.0, 0.2, false)
	f.Add(-1.0, 10.0, 5.0, true)
	f.Add(85.0, 30.0, -5.0, false)
	f.Add(math.NaN(), math.Inf(1), math.NaN(), false)
	f.Fuzz(func(t *testing.T, reading, at, high float64, compensated bool) {
		r := density.Refractometer{Compensated: compensated, ReadsHigh: bx(high)}
		b, err := r.Brix(bx(reading), c(at))
		if sound(t, "Refractometer.Brix", float64(b), err) {
			if back, err := r.Reading(b, c(at)); err != nil || !(math.Abs(float64(back)-reading) <= 1e-9) {
				t.Errorf("%+v: %v at %v C is %v and comes back as %v, %v", r, reading, at, b, back, err)
			}
		}
		n, err := density.RefractiveIndex(bx(reading))
		if sound(t, "RefractiveIndex", float64(n), err) {
			if back, err := density.BrixFromRefractiveIndex(n); err != nil || !(math.Abs(float64(back)-reading) <= 1e-10) {
				t.Errorf("%v has index %v and comes back as %v, %v", reading, n, back, err)
			}
		}
		m, err := r.Measure(bx(reading), c(at), doubt)
		if err == nil && !(m.Uncertainty > 0 && m.Uncertainty < 85) {
			t.Errorf("%+v: %v at %v C measures %+v", r, reading, at, m)
		}
	})
}

func FuzzFlask(f *testing.F) {
	f.Add(0.6634, 20.0, 0.0005, 20.0, 0.0)
	f.Add(1e-9, 110.0, 1e-9, 1.0, 1e-4)
	f.Add(math.NaN(), math.Inf(1), math.NaN(), -1.0, math.Inf(-1))
	f.Fuzz(func(t *testing.T, net, at, volume, calibrated, expansion float64) {
		v := density.Flask{Volume: m3(volume), CalibratedAt: c(calibrated), Expansion: expansion}
		b, err := v.Brix(units.Mass(net), c(at))
		if sound(t, "Flask.Brix", float64(b), err) {
			if back, err := v.Net(b, c(at)); err != nil || !(math.Abs(float64(back)-net) <= 1e-11*net) {
				t.Errorf("%+v: %v kg at %v C is %v and comes back as %v, %v", v, net, at, b, back, err)
			}
		}
	})
}
