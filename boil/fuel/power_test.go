package fuel_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func demandOf(t testing.TB, b, to units.Brix) boil.HeatDemand {
	t.Helper()
	h, err := boil.Heat(lotOf(t, 100, b, units.Fahrenheit(40)), to, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// The figures of package boil: 353.22 lb of water take 404,680 Btu, so that
// 100,000 Btu/h are 87.28 lb/h.
func TestPowerForByHand(t *testing.T) {
	p, err := fuel.PowerFor(units.PoundsPerHour(353.22), fuel.Delivered, demandOf(t, 2, 66), fuel.Efficiency{})
	for _, q := range []units.Power{p.Low, p.Middle, p.High} {
		if err != nil || !near(q.BtusITPerHour(), 404680, 404680*0.001) {
			t.Errorf("%v, %v", q, err)
		}
	}
}

// The power for a rate gives that rate back: the high one at the low end of the
// efficiency.
func TestPowerForRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(23, 5))
	for range 1000 {
		demand := demandOf(t, units.Brix(0.5+20*rng.Float64()), units.Brix(30+40*rng.Float64()))
		low := units.Percents(1 + 60*rng.Float64())
		at := fuel.Efficiency{Low: low, High: low + units.Percents(30*rng.Float64()), Basis: fuel.Gross}
		want := units.MassRate(math.Exp(9*rng.Float64() - 9))
		power, err := fuel.PowerFor(want, fuel.Gross, demand, at)
		if err != nil || !(power.Low <= power.Middle && power.Middle <= power.High) {
			t.Fatal(power, err)
		}
		least, err := fuel.HeatRate(power.High, fuel.Gross, demand, at)
		middle, err2 := fuel.HeatRate(power.Middle, fuel.Gross, demand, at)
		most, err3 := fuel.HeatRate(power.Low, fuel.Gross, demand, at)
		if err := errors.Join(err, err2, err3); err != nil {
			t.Fatal(err)
		}
		for _, got := range []units.MassRate{least.Low, middle.Middle, most.High} {
			if !near(float64(got/want), 1, 1e-12) {
				t.Fatalf("%v comes back as %v", want, got)
			}
		}
	}
}

func TestPowerForLimits(t *testing.T) {
	demand := demandOf(t, 2, 66)
	limittest.Edges(t, "fuel.PowerFor", "rate", 0, 1e3, 0.01, func(x float64) (float64, error) {
		p, err := fuel.PowerFor(units.MassRate(x), fuel.Gross, demand, fuel.HomeBuiltPan())
		return p.Middle.Watts(), err
	})
	p, err := fuel.PowerFor(1, fuel.Delivered, boil.HeatDemand{}, fuel.Efficiency{})
	wantRange(t, "no demand", err)
	if !math.IsNaN(float64(p.Low + p.Middle + p.High)) {
		t.Error(p)
	}
	var basis *fuel.BasisError
	if p, err := fuel.PowerFor(1, fuel.Net, demand, fuel.HomeBuiltPan()); !errors.As(err, &basis) || !math.IsNaN(float64(p.Middle)) {
		t.Errorf("net heat over a gross efficiency: %v, %v", p, err)
	}
}
