package packing_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

func TestFilterLimits(t *testing.T) {
	for _, x := range []float64{-1, 1e6 + 1, notNum, inf} {
		if n, err := packing.FiltersFor(units.Volume(x), packing.GravityFilter); !errors.Is(err, units.ErrRange) || n != 0 {
			t.Errorf("FiltersFor(%v) = %v, %v", x, n, err)
		}
		m, err := packing.FilterAid(units.Volume(x), 1)
		refused(t, "FilterAid", "packing.FilterAid", float64(m), err)
	}
	for _, x := range []float64{0, 0.09, 1000.1, -1, notNum, inf} {
		if n, err := packing.FiltersFor(1, units.USGallons(x)); !errors.Is(err, units.ErrRange) || n != 0 {
			t.Errorf("FiltersFor(1, %v) = %v, %v", x, n, err)
		}
	}
	for v, want := range map[float64]int{0: 0, 0.1: 1, 3: 1, 3.01: 2, 6: 2, 9: 3} {
		if n, err := packing.FiltersFor(units.USGallons(v), packing.GravityFilter); err != nil || n != want {
			t.Errorf("FiltersFor(%v) = %v, %v; want %v", v, n, err, want)
		}
	}
	for _, x := range []float64{-1, 200.1, notNum, inf} {
		m, err := packing.FilterAid(1, units.Density(x))
		refused(t, "FilterAid", "packing.FilterAid", float64(m), err)
	}
	// More filters than can be counted are none.
	if n, err := packing.FiltersFor(1e6, units.USGallons(0.1)); !errors.Is(err, units.ErrRange) || n != 0 {
		t.Errorf("%d filters, %v", n, err)
	}
	// The longest time measured, and the longest told, a million hours.
	hot, warm := units.Celsius(80), units.Celsius(60)
	if _, err := packing.FilterTime(1000*time.Hour, 66, hot, hot); err != nil {
		t.Error(err)
	}
	if d, err := packing.FilterTime(1000*time.Hour+time.Second, 66, hot, hot); !errors.Is(err, units.ErrRange) || d != 0 {
		t.Errorf("a second more than 1000 h: %v, %v", d, err)
	}
	thin, err1 := sugar.Viscosity(80, units.Celsius(110))
	thick, err2 := sugar.Viscosity(80, units.Celsius(0))
	if err1 != nil || err2 != nil || thick < 2000*thin {
		t.Fatal(thin, thick, err1, err2)
	}
	least := float64(1e6*time.Hour) * float64(thin/thick)
	for share, ok := range map[float64]bool{1 - 1e-6: true, 1 + 1e-6: false} {
		d, err := packing.FilterTime(time.Duration(least*share), 80, units.Celsius(110), units.Celsius(0))
		if ok != (err == nil) || ok && !(math.Abs(d.Hours()/1e6-share) < 1e-9) {
			t.Errorf("%v of a million hours: %v, %v", share, d, err)
		}
	}
	for name, try := range map[string]func() (time.Duration, error){
		"negative": func() (time.Duration, error) { return packing.FilterTime(-1, 66, hot, warm) },
		"too long": func() (time.Duration, error) { return packing.FilterTime(1001*time.Hour, 66, hot, warm) },
		"brix":     func() (time.Duration, error) { return packing.FilterTime(time.Hour, 86, hot, warm) },
		"NaN":      func() (time.Duration, error) { return packing.FilterTime(time.Hour, units.Brix(notNum), hot, warm) },
		"at":       func() (time.Duration, error) { return packing.FilterTime(time.Hour, 66, units.Celsius(111), warm) },
		"now":      func() (time.Duration, error) { return packing.FilterTime(time.Hour, 66, hot, units.Celsius(-1)) },
		"pitch": func() (time.Duration, error) {
			return packing.FilterTime(1000*time.Hour, 85, units.Celsius(110), units.Celsius(0))
		},
	} {
		if d, err := try(); !errors.Is(err, units.ErrRange) || d != 0 {
			t.Errorf("%s: %v, %v", name, d, err)
		}
	}
	rng := rand.New(rand.NewPCG(4, 4))
	for range 200 {
		b, at, now := units.Brix(60+10*rng.Float64()), units.Celsius(50+50*rng.Float64()), units.Celsius(50+50*rng.Float64())
		there, err1 := packing.FilterTime(time.Hour, b, at, now)
		back, err2 := packing.FilterTime(there, b, now, at)
		if err1 != nil || err2 != nil || !((back - time.Hour).Abs() < time.Microsecond) || (at.Compare(now) > 0) != (there > time.Hour) {
			t.Errorf("%v from %v to %v: %v and back %v, %v, %v", b, at, now, there, back, err1, err2)
		}
	}
}

func TestCakeLossLimits(t *testing.T) {
	at := units.Celsius(80)
	got, err := packing.CakeLoss(5, 2, 1, 66.9, at)
	if err != nil || !(math.Abs(got.Mass().Kilograms()-2) < 1e-12) {
		t.Errorf("%v, %v", got.Mass(), err)
	}
	for _, bad := range [][3]float64{{-1, 0, 0}, {1e6 + 1, 0, 0}, {5, 5.1, 0}, {5, -1, 0}, {5, 3, 2.1}, {5, 3, -1}, {notNum, 0, 0}, {5, notNum, 0}, {5, 1, notNum}, {inf, 0, 0}} {
		if got, err := packing.CakeLoss(units.Mass(bad[0]), units.Mass(bad[1]), units.Mass(bad[2]), 66.9, at); !errors.Is(err, units.ErrRange) || !got.Empty() {
			t.Errorf("%v: %v, %v", bad, got, err)
		}
	}
	if got, err := packing.CakeLoss(5, 2, 1, 86, at); !errors.Is(err, units.ErrRange) || !got.Empty() {
		t.Errorf("86 Brix: %v, %v", got, err)
	}
}
