package sugar

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestInversionLimits(t *testing.T) {
	const fn = "sugar.Inversion"
	share := func(s units.Share, err error) (float64, error) { return float64(s), err }
	limittest.Edges(t, fn, "sugar content", 0, 70, 20, func(x float64) (float64, error) {
		return share(Inversion(units.Brix(x), units.Celsius(60), 6, time.Hour))
	})
	limittest.Edges(t, fn, "temperature", 0, 110, 60, func(x float64) (float64, error) {
		return share(Inversion(2, units.Celsius(x), 6, time.Hour))
	})
	limittest.Edges(t, fn, "pH", 5, 7.5, 6, func(x float64) (float64, error) {
		return share(Inversion(2, units.Celsius(60), x, time.Hour))
	})
}

// What is left of the sucrose after two spells is the product of what each
// leaves, since the law is of the first order; and a unit of pH is a factor of
// ten in the rate.
func TestInversionByParts(t *testing.T) {
	left := func(acidity float64, d time.Duration) float64 {
		s, err := Inversion(20, units.Celsius(95), acidity, d)
		if err != nil {
			t.Fatal(err)
		}
		return 1 - s.Fraction()
	}
	if got, want := left(5, 50*time.Hour), left(5, 20*time.Hour)*left(5, 30*time.Hour); math.Abs(got-want) > 1e-12 || got > 0.7 {
		t.Errorf("%v of the sucrose left, want %v", got, want)
	}
	if got, want := left(6, 10*time.Hour), left(5, time.Hour); math.Abs(got-want) > 1e-12 {
		t.Errorf("ten hours at pH 6 leave %v, one at 5 %v", got, want)
	}
	if s, err := Inversion(0, units.Celsius(0), 7.5, 0); err != nil || s != 0 {
		t.Errorf("no time: %v, %v", s, err)
	}
	for _, d := range []time.Duration{-1, 60*24*time.Hour + time.Second} {
		if s, err := Inversion(2, units.Celsius(60), 6, d); err == nil || s == s {
			t.Errorf("%v: %v, %v", d, s, err)
		}
	}
	if _, err := Inversion(2, units.Celsius(60), 6, 60*24*time.Hour); err != nil {
		t.Error(err)
	}
}
