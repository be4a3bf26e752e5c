package yield_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

func plain[Q ~float64](x Q, err error) (float64, error) { return float64(x), err }

// More sugar in the sap, less sap for the syrup; more in the tank, higher in it.
func TestMonotone(t *testing.T) {
	type trial struct {
		name      string
		up        bool
		low, high float64
		f         func(x float64) (float64, error)
	}
	trials := []trial{
		{"ratio against the sap", false, 0.1, 66, func(x float64) (float64, error) { return yield.Ratio(units.Brix(x), 66) }},
		{"ratio against the syrup", true, 2, 85, func(x float64) (float64, error) { return yield.Ratio(2, units.Brix(x)) }},
		{"rule of 86", false, 0.5, 30, func(x float64) (float64, error) { return yield.RuleOf86(units.Brix(x)) }},
		{"sap for a ratio", false, 1, 400, func(x float64) (float64, error) { return plain(yield.BrixFromRatio(x, 66)) }},
	}
	for name, tank := range map[string]func() (yield.Tank, error){
		"lying cylinder":   func() (yield.Tank, error) { return yield.LyingCylinder(1, 2) },
		"lying ellipse":    func() (yield.Tank, error) { return yield.LyingEllipse(2, 1, 2) },
		"upright cylinder": func() (yield.Tank, error) { return yield.UprightCylinder(2, 1) },
		"box":              func() (yield.Tank, error) { return yield.RectangularTank(2, 1, 1) },
		"trough":           func() (yield.Tank, error) { return yield.HalfEllipseTrough(1, 1, 2) },
		"pail":             func() (yield.Tank, error) { return yield.Pail(0.3, 0.25, 1) },
	} {
		of, err := tank()
		if err != nil {
			t.Fatal(name, err)
		}
		trials = append(trials,
			trial{name + ", volume against depth", true, 0, 1, func(x float64) (float64, error) { return plain(of.Volume(units.Length(x))) }},
			trial{name + ", depth against volume", true, 0, float64(of.Capacity()), func(x float64) (float64, error) { return plain(of.Depth(units.Volume(x))) }})
	}
	for _, tc := range trials {
		t.Run(tc.name, func(t *testing.T) { limittest.Rises(t, tc.name, tc.up, tc.low, tc.high, tc.f) })
	}
}

// What is shared out is what there was: to the cent, to the jar, and to 1e-12 of
// the syrup.
func TestNothingIsLost(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 8))
	for range 300 {
		among := make([]money.Contribution, 1+rng.IntN(8))
		for i := range among {
			c, err := money.ByTaps(string(rune('a'+i)), 1+rng.IntN(1000))
			if err != nil {
				t.Fatal(err)
			}
			among[i] = c
		}
		whole := decimal.New(rng.Int64N(1e9), -2)
		portions, err := money.Divide(whole, 2, among)
		if err != nil {
			t.Fatal(err)
		}
		sum := decimal.Decimal{}
		for _, p := range portions {
			sum = sum.Add(p.Amount)
		}
		if !sum.Equal(whole) {
			t.Fatalf("%v among %v: the portions are %v", whole, among, sum)
		}
		jars := []money.Jars{{Label: units.USQuart, Count: rng.IntN(100)}, {Label: units.USPint, Count: 1 + rng.IntN(100)}}
		baskets, err := money.DivideJars(jars, among)
		if err != nil {
			t.Fatal(err)
		}
		for i, j := range jars {
			n := 0
			for _, b := range baskets {
				n += b.Counts[i]
			}
			if n != j.Count {
				t.Fatalf("%d jars among %v: %d in the baskets", j.Count, among, n)
			}
		}
		lot, err := sugar.NewLot(units.Volume(0.001+0.1*rng.Float64()), 66.9, units.Celsius(88))
		if err != nil {
			t.Fatal(err)
		}
		plan, err := packing.FewestContainers(lot, units.Share(2*rng.Float64()),
			packing.Supply{Container: packing.Container{Label: units.USPint}, OnHand: rng.IntN(50)},
			packing.Supply{Container: packing.Container{Label: 250 * units.Milliliter}, OnHand: rng.IntN(50)})
		if err != nil {
			t.Fatal(err)
		}
		mass := plan.LeftMass
		for _, l := range plan.Lines {
			mass += units.Mass(l.Count) * l.Filling.NetMass
		}
		if math.Abs(float64(mass-lot.Mass())) > 1e-12*float64(lot.Mass()) {
			t.Fatalf("%v packed and left of %v", mass, lot.Mass())
		}
	}
}
