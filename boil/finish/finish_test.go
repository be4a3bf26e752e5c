package finish_test

import (
	"math"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestFinishes(t *testing.T) {
	for _, f := range append(finish.ConfectionFinishes(), finish.SyrupFinishes()...) {
		s, err := f.Strength()
		if err != nil || s.Low > s.Middle || s.Middle > s.High {
			t.Errorf("%s: %v, %v", f.Product, s, err)
		}
		if middle, err := boil.Rise(s.Middle, units.Atmosphere); err != nil || !near(float64(middle), float64(f.Low+f.High)/2, 1e-9) {
			t.Errorf("%s: the middle of %v and %v is %v, %v", f.Product, f.Low, f.High, middle, err)
		}
		m, err := f.Moisture()
		if err != nil || !near(float64(m.Low)+float64(s.High), 100, 1e-12) || !near(float64(m.High)+float64(s.Low), 100, 1e-12) {
			t.Errorf("%s: moisture %v of %v, %v", f.Product, m, s, err)
		}
		water, err := boil.Water(units.Atmosphere)
		if err != nil {
			t.Fatal(err)
		}
		low, high, err := f.At(units.Atmosphere)
		if err != nil || !near(float64(low.Sub(water)), float64(f.Low), 1e-6) || !near(float64(high.Sub(water)), float64(f.High), 1e-6) {
			t.Errorf("%s: %v to %v, %v", f.Product, low, high, err)
		}
		// Higher up the rise of the same strength is smaller.
		thin := 80 * units.Kilopascal
		up, err := boil.Water(thin)
		if err != nil {
			t.Fatal(err)
		}
		if low, _, err = f.At(thin); err != nil || !(low.Sub(up) < f.Low) {
			t.Errorf("%s at %v: %v above water, %v", f.Product, thin, low.Sub(up), err)
		}
		if f.Source == "" || (f.Obtained != "read" && f.Obtained != "memory") {
			t.Errorf("%s: %q from %q", f.Product, f.Obtained, f.Source)
		}
	}
	// The two sources of cream disagree: their ranges do not touch.
	c := finish.ConfectionFinishes()
	if c[3].Product != c[4].Product || !(c[3].High < c[4].Low) {
		t.Errorf("cream: %v and %v", c[3], c[4])
	}
}

func TestFinishLimits(t *testing.T) {
	last, err := boil.Rise(92, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	if !near(last.FahrenheitDegrees(), 50.1, 0.05) {
		t.Errorf("92 Brix rise by %v F, documented 50.1", last.FahrenheitDegrees())
	}
	limittest.Edges(t, "finish.Finish.Strength", "rise", 0, float64(last), 10, func(x float64) (float64, error) {
		s, err := finish.Finish{Low: units.TempDiff(x), High: units.TempDiff(x)}.Strength()
		return float64(s.Middle), err
	})
	m, err := finish.Finish{Low: -1, High: 1}.Moisture()
	limittest.Refuses(t, "finish.Finish.Moisture", "rise", float64(m.Middle), err)
	low, high, err := finish.Finish{Low: -1, High: 1}.At(units.Atmosphere)
	limittest.Refuses(t, "finish.Finish.At", "rise", low.Celsius(), err)
	limittest.Refuses(t, "finish.Finish.At", "rise", high.Celsius(), err)
	limittest.Edges(t, "finish.Finish.At", "pressure", 20, 120, 100, func(x float64) (float64, error) {
		low, _, err := finish.ConfectionFinishes()[3].At(units.Kilopascals(x))
		if err != nil && !math.IsNaN(low.Celsius()) {
			t.Errorf("%v beside an error", low)
		}
		return low.Celsius(), err
	})
}
