package boil_test

import (
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

func plain[Q ~float64](x Q, err error) (float64, error) { return float64(x), err }

func degrees(t units.Temperature, err error) (float64, error) { return t.Celsius(), err }

// What pressure and strength do to the boil, they do all the way.
func TestMonotone(t *testing.T) {
	const p = units.Atmosphere
	kilo := func(x float64) units.Pressure { return units.Pressure(x) * units.Kilopascal }
	for _, tc := range []struct {
		name      string
		up        bool
		low, high float64
		f         func(x float64) (float64, error)
	}{
		{"pressure against elevation", false, -500, 5000, func(x float64) (float64, error) { return plain(boil.PressureAt(units.Length(x))) }},
		{"boiling point of water", true, 20, 120, func(x float64) (float64, error) { return degrees(boil.Water(kilo(x))) }},
		{"rise against strength", true, 0, 92, func(x float64) (float64, error) { return plain(boil.Rise(units.Brix(x), p)) }},
		{"rise against pressure", true, 20, 120, func(x float64) (float64, error) { return plain(boil.Rise(66, kilo(x))) }},
		{"point against inverted sugar", true, 0, 20, func(x float64) (float64, error) {
			return degrees(boil.SyrupPointOf(sugar.Solute{Inverted: units.Share(x)}, 66, p))
		}},
		{"latent heat", false, 0, 140, func(x float64) (float64, error) { return plain(boil.LatentHeat(units.Celsius(x))) }},
		{"heat of wood against moisture", false, 0, 70, func(x float64) (float64, error) { return plain(fuel.WoodHeat(fuel.WetMoisture(x))) }},
		{"pressure against depth", true, 0, 2, func(x float64) (float64, error) { return plain(boil.PressureAtDepth(p, units.Length(x), 1200)) }},
		{"heat against the sap's strength", false, 1, 60, func(x float64) (float64, error) {
			h, err := boil.Heat(sap(t, 100, units.Brix(x), units.Celsius(4)), 66, p)
			return float64(h.Total()) / float64(h.Sugar), err
		}},
		{"heat against the target", true, 3, 85, func(x float64) (float64, error) {
			h, err := boil.Heat(sap(t, 100, 2, units.Celsius(4)), units.Brix(x), p)
			return float64(h.Total()), err
		}},
		{"strength after longer", true, 0, 60, func(x float64) (float64, error) {
			b := finish.Batch{Mass: 20 * units.Kilogram, Brix: 60, Evaporation: 0.001}
			return plain(b.After(time.Duration(x * float64(time.Minute))))
		}},
	} {
		t.Run(tc.name, func(t *testing.T) { limittest.Rises(t, tc.name, tc.up, tc.low, tc.high, tc.f) })
	}
}

// The ends of a span hold its middle, whatever it is a span of.
func TestSpansAreInOrder(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 8))
	check := func(name string, err error, low, middle, high float64) {
		t.Helper()
		if err != nil || !(low <= middle && middle <= high) {
			t.Fatalf("%s: %v, %v, %v, %v", name, low, middle, high, err)
		}
	}
	up := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	demand := mustHeat(t, sap(t, 100, 2, units.Celsius(4)), 66, units.Atmosphere)
	propane := fuel.Propane()
	for range 2000 {
		e := fuel.Efficiency{Low: units.Share(up(1, 60)), Basis: fuel.Gross}
		e.High = e.Low + units.Share(up(0, 40))
		need, err := propane.Needed(units.Energy(up(0, 1e9)), e)
		check("fuel needed", err, float64(need.Low), float64(need.Middle), float64(need.High))
		left := need.Left(1)
		check("fuel left", nil, float64(left.Low), float64(left.Middle), float64(left.High))
		makes, err := propane.Makes(units.Volume(up(0, 10)), e)
		check("heat made", err, float64(makes.Low), float64(makes.Middle), float64(makes.High))
		rate, err := fuel.HeatRate(units.Power(up(0, 1e5)), fuel.Gross, demand, e)
		check("evaporation", err, float64(rate.Low), float64(rate.Middle), float64(rate.High))
		area, err := boil.PanRate(boil.PanKind(1+rng.IntN(2)), units.Area(up(0.1, 10)))
		check("pan", err, float64(area.Low), float64(area.Middle), float64(area.High))
		change := fuel.Effect{Low: units.Share(up(0, 100)), Preheats: rng.IntN(2) == 0}
		change.High = change.Low + units.Share(up(0, 100))
		better, err := change.Apply(units.MassRate(up(0, 1)), demand)
		check("change", err, float64(better.Low), float64(better.Middle), float64(better.High))
		done := finish.Finish{Low: units.TempDiff(up(0, 20))}
		done.High = done.Low + units.TempDiff(up(0, 7))
		b, err := done.Strength()
		check("strength", err, float64(b.Low), float64(b.Middle), float64(b.High))
		w, err := done.Moisture()
		check("moisture", err, float64(w.Low), float64(w.Middle), float64(w.High))
		low, high, err := done.At(units.Pressure(up(60, 105)) * units.Kilopascal)
		check("point", err, low.Celsius(), low.Celsius(), high.Celsius())
		firing := func() fuel.Firing {
			return fuel.Firing{Into: units.Energy(up(1e8, 4e8)), Burned: fuel.Heat{Energy: units.Gigajoule, Basis: fuel.Gross}}
		}
		l, err := fuel.LearnEfficiency(firing(), firing(), firing())
		check("learned", err, float64(l.Low), float64(l.Middle()), float64(l.High))
	}
}
