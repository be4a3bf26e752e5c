package fuel_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

// The fire's heat and the demand must agree: the water of a boil goes off in the
// time that its heat takes to come.
func TestHeatRateIsTheHeatOfTheBoil(t *testing.T) {
	d := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	half := fuel.Efficiency{Low: 40, High: 60, Basis: fuel.Gross}
	r, err := fuel.HeatRate(d.Total().Per(time.Hour)*2, fuel.Gross, d, half)
	if err != nil || !near(float64(r.Middle.Over(time.Hour)/d.Water), 1, 1e-12) || r.Low >= r.Middle || r.High <= r.Middle {
		t.Errorf("%v, %v; want %v in an hour", r, err, d.Water)
	}
	// From a quarter to three of the heat: the rate goes with it.
	wide := fuel.Efficiency{Low: 25, High: 75, Basis: fuel.Gross}
	if s, err := fuel.HeatRate(d.Total().Per(time.Hour)*2, fuel.Gross, d, wide); err != nil ||
		!near(float64(s.Low/r.Middle), 0.5, 1e-9) || !near(float64(s.Middle/r.Middle), 1, 1e-9) || !near(float64(s.High/r.Middle), 1.5, 1e-9) {
		t.Errorf("%+v, %v, want half, all and half more of %v", s, err, r.Middle)
	}
	limittest.Edges(t, "fuel.HeatRate", "power", 0, 1e9, 1e4, func(x float64) (float64, error) {
		r, err := fuel.HeatRate(units.Watts(x), fuel.Delivered, d, fuel.Efficiency{})
		return float64(r.Middle), err
	})
	_, err = fuel.HeatRate(1, fuel.Delivered, d, half)
	wantBasis(t, "twice", err)
	_, err = fuel.HeatRate(1, fuel.Gross, d, fuel.Efficiency{})
	wantBasis(t, "no efficiency", err)
	_, err = fuel.HeatRate(1, fuel.Delivered, boil.HeatDemand{}, fuel.Efficiency{})
	wantRange(t, "empty", err)
}

// The figures as their sources print them.
func TestEffectsAsPrinted(t *testing.T) {
	want := []units.Span[units.Share]{{Low: 8, High: 8}, {Low: 27, High: 27}, {Low: 15, High: 17}}
	for i, e := range fuel.Effects() {
		if !near(float64(e.Low), float64(want[i].Low), 1e-12) || !near(float64(e.High), float64(want[i].High), 1e-12) {
			t.Errorf("%s: %v to %v, want %v", e.Change, e.Low, e.High, want[i])
		}
	}
	for kind, want := range map[boil.PanKind][3]float64{boil.FlatPan: {1, 1, 1}, boil.FluePan: {1.5, 2, 3}} {
		r, err := boil.PanRate(kind, units.SquareFoot)
		got := [3]float64{r.Low.USGallonsPerHour(), r.Middle.USGallonsPerHour(), r.High.USGallonsPerHour()}
		for i := range got {
			if err != nil || !near(got[i], want[i], 1e-12) {
				t.Errorf("kind %d: %v, want %v, %v", kind, got, want, err)
			}
		}
	}
}

func TestEffects(t *testing.T) {
	d := mustHeat(t, sap(t, 100, 2, units.Fahrenheit(40)), 66, units.Atmosphere)
	for _, e := range fuel.Effects() {
		r, err := e.Apply(units.PoundsPerHour(100), d)
		if err != nil || !(r.Low > units.PoundsPerHour(100)) || r.High < r.Low {
			t.Errorf("%s: %v, %v", e.Change, r, err)
		}
	}
	// Warm sap leaves a preheater little to do, whatever it did elsewhere.
	warm := mustHeat(t, sap(t, 100, 2, units.Celsius(95)), 66, units.Atmosphere)
	r, err := fuel.Effects()[0].Apply(1, warm)
	if err != nil || !near(float64(r.High), 1+warm.More().Fraction(), 1e-12) || r.High > 1.02 {
		t.Errorf("with hot sap: %v, ceiling %v, %v", r, warm.More(), err)
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 1001} {
		for _, e := range []fuel.Effect{{Low: units.Share(x), High: 10}, {Low: 10, High: units.Share(x)}} {
			r, err := e.Apply(1, d)
			if wantRange(t, "an effect that is none", err); !math.IsNaN(float64(r.Low)) {
				t.Errorf("%v beside an error", r)
			}
		}
	}
	_, err = fuel.Effects()[0].Apply(1, boil.HeatDemand{})
	wantRange(t, "no demand", err)
	gain, err := fuel.Effects()[2].Apply(1, d)
	if err != nil || !near(float64(gain.Middle), 1.16, 1e-12) {
		t.Errorf("between 15 and 17 percent: %v, %v", gain, err)
	}
	limittest.Edges(t, "fuel.Effect.Apply", "evaporation", 0, 1e6, 1, func(x float64) (float64, error) {
		r, err := fuel.Effects()[1].Apply(units.MassRate(x), d)
		return float64(r.Middle), err
	})
}
