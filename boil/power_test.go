package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/limit/limittest"
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
	p, err := boil.PowerFor(units.PoundsPerHour(353.22), boil.Delivered, demandOf(t, 2, 66), boil.Efficiency{})
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
		at := boil.Efficiency{Low: low, High: low + units.Percents(30*rng.Float64()), Basis: boil.Gross}
		want := units.MassRate(math.Exp(9*rng.Float64() - 9))
		power, err := boil.PowerFor(want, boil.Gross, demand, at)
		if err != nil || !(power.Low <= power.Middle && power.Middle <= power.High) {
			t.Fatal(power, err)
		}
		least, err := boil.HeatRate(power.High, boil.Gross, demand, at)
		middle, err2 := boil.HeatRate(power.Middle, boil.Gross, demand, at)
		most, err3 := boil.HeatRate(power.Low, boil.Gross, demand, at)
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
	limittest.Edges(t, "boil.PowerFor", "rate", 0, 1e3, 0.01, func(x float64) (float64, error) {
		p, err := boil.PowerFor(units.MassRate(x), boil.Gross, demand, boil.HomeBuiltPan())
		return p.Middle.Watts(), err
	})
	p, err := boil.PowerFor(1, boil.Delivered, boil.HeatDemand{}, boil.Efficiency{})
	wantRange(t, "no demand", err)
	if !math.IsNaN(float64(p.Low + p.Middle + p.High)) {
		t.Error(p)
	}
	var basis *boil.BasisError
	if p, err := boil.PowerFor(1, boil.Net, demand, boil.HomeBuiltPan()); !errors.As(err, &basis) || !math.IsNaN(float64(p.Middle)) {
		t.Errorf("net heat over a gross efficiency: %v, %v", p, err)
	}
}
