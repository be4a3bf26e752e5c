package sugar

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/units"
)

// The logarithm is that of the activity at every temperature, and its inverse that of
// the activity.
func TestLogActivity(t *testing.T) {
	g := rand.New(rand.NewPCG(18, 7))
	for range 500 {
		s := Solute{Inverted: units.Share(100 * g.Float64())}
		b, at := units.Brix(92*g.Float64()), units.Celsius(160*g.Float64()-20)
		l, err := s.LogActivity(b)
		a, err2 := s.WaterActivity(b, at)
		if err != nil || err2 != nil {
			t.Fatal(err, err2)
		}
		y := l.Mixing + l.Kelvin/at.Kelvin()
		if got := math.Exp(y); math.Abs(got-a) > 1e-14 {
			t.Errorf("%v Brix at %v: %v, want %v", float64(b), at, got, a)
		}
		if back, err := s.BrixFromLogActivity(y, at); err != nil || math.Abs(float64(back-b)) > 1e-9 {
			t.Errorf("%v Brix came back as %v, %v", float64(b), float64(back), err)
		}
	}
}

// Nothing within the range is cut off by the short way to an answer.
func TestSurelyAboveTheLeast(t *testing.T) {
	for _, inverted := range []units.Share{0, 100} {
		for _, c := range []float64{-20, 140} {
			l, err := Solute{Inverted: inverted}.LogActivity(92)
			if y := l.Mixing + l.Kelvin/(273.15+c); err != nil || !(y < surely) {
				t.Errorf("%v at %v C: %v, %v", inverted, c, y, err)
			}
		}
	}
}

func TestLogActivityRefused(t *testing.T) {
	for arg, err := range map[string]error{
		"brix":            errOnly(Solute{}.LogActivity(92.1)),
		"Solute.Inverted": errOnly(Solute{Inverted: 101}.LogActivity(2)),
		"logarithm":       errOnly(Solute{}.BrixFromLogActivity(0.001, units.Celsius(20))),
		"at":              errOnly(Solute{}.BrixFromLogActivity(-0.1, units.Celsius(141))),
	} {
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != arg || e.Hint == "" {
			t.Errorf("%s: %v", arg, err)
		}
	}
	if b, err := (Solute{}).BrixFromLogActivity(-5, units.Celsius(20)); !errors.Is(err, units.ErrRange) || b == b {
		t.Errorf("%v, %v", b, err)
	}
}

func errOnly[Q any](_ Q, err error) error { return err }
