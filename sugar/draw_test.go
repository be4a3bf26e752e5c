package sugar_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// draws is the number of random cases of a property.
const draws = 5000

// closes is the relative error within which mass and sugar are conserved.
const closes = 1e-12

func newDraw() *rand.Rand { return rand.New(rand.NewPCG(66, 9)) }

func between(r *rand.Rand, lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }

// drawLot draws a lot of a spoonful to a tanker, of a strength from lo to hi.
func drawLot(t *testing.T, r *rand.Rand, lo, hi float64) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(units.Liters(math.Pow(10, between(r, -2, 5))), units.Brix(between(r, lo, hi)), units.Celsius(between(r, 0, 110)))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// conserved fails the test unless the lots on both sides hold the same mass and
// the same sugar.
func conserved(t *testing.T, before, after []sugar.Lot) {
	t.Helper()
	sum := func(lots []sugar.Lot) (mass, sweet, water float64) {
		for _, l := range lots {
			mass += float64(l.Mass())
			sweet += float64(l.Sugar())
			water += float64(l.Water())
		}
		return mass, sweet, water
	}
	m1, s1, w1 := sum(before)
	m2, s2, w2 := sum(after)
	if !near(m1, m2, closes*m1) || !near(s1, s2, closes*m1) || !near(w1, w2, closes*m1) || !near(s1, s2, closes*s1) {
		t.Errorf("mass %v to %v, sugar %v to %v, water %v to %v kg", m1, m2, s1, s2, w1, w2)
	}
}

// near reports whether got lies within tol of want; NaN does not.
func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

// must ends the test unless err is nil.
func must[T any](t *testing.T) func(v T, err error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// notNumbers are what every guard must refuse.
var notNumbers = []float64{math.NaN(), math.Inf(1), math.Inf(-1)}
