package boil_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// By hand: 2 in of syrup of 1,272 kg/m3 weigh 0.0508 x 9.80665 x 1272 = 634 Pa.
// Water takes 1.69 F for the 3,386 Pa of an inch of mercury, 0.316 F for them, and
// the syrup's own point 0.32 F: see boiling-errors-worked.
func TestProbeUnderTwoInches(t *testing.T) {
	at, err := boil.Probe{Pressure: units.Atmosphere}.Shows(66)
	plain, err2 := boil.SyrupPoint(66, units.Atmosphere)
	deep, err3 := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}.Shows(66)
	if err := errors.Join(err, err2, err3); err != nil {
		t.Fatal(err)
	}
	if !near(at.Celsius(), plain.Celsius(), 1e-9) || !near(deep.Sub(at).FahrenheitDegrees(), 0.32, 0.005) {
		t.Errorf("%v at the surface, where syrup boils at %v, and %v more under it", at, plain, deep.Sub(at))
	}
}

func randomProbe(rng *rand.Rand) boil.Probe {
	return boil.Probe{Pressure: units.Kilopascals(20 + 100*rng.Float64()), Over: units.Meters(0.5 * rng.Float64()),
		Sugar: sugar.Solute{Inverted: units.Share(20 * rng.Float64())}}
}

// Strength, surface and depth come back from what is shown.
func TestProbeRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 57))
	for range 2000 {
		p := randomProbe(rng)
		b := units.Brix(92 * rng.Float64())
		shown, err := p.Shows(b)
		if err != nil {
			t.Fatal(err)
		}
		back, err := p.Brix(shown)
		deep, err2 := p.Depth(shown, b)
		surface, err3 := p.Surface(shown)
		plain, err4 := boil.SyrupPointOf(p.Sugar, b, p.Pressure)
		if err := errors.Join(err, err2, err3, err4); err != nil {
			t.Fatal(err)
		}
		// A thin sap rises by 0.015 K a Brix: its strength takes 1e-12 K to 1e-10. A
		// meter is 2.8 K at 1 atm.
		if !near(float64(back), float64(b), 1e-8) || !near(deep.Meters(), p.Over.Meters(), 1e-8) || !near(surface.Celsius(), plain.Celsius(), 1e-8) {
			t.Fatalf("%+v in %v: shows %v, back %v, %v deep, %v at the surface where %v", p, b, shown, back, deep, surface, plain)
		}
		// What Over says is of no account to how deep it is.
		p.Over = 0
		if again, err := p.Depth(shown, b); err != nil || !near(float64(again), float64(deep), 1e-12) {
			t.Fatalf("%v deep, and %v, %v", deep, again, err)
		}
	}
}

// More liquid and more sugar show more.
func TestProbeRises(t *testing.T) {
	limittest.Rises(t, "shown by depth", true, 0, 0.5, func(x float64) (float64, error) {
		at, err := boil.Probe{Pressure: units.Atmosphere, Over: units.Meters(x)}.Shows(66.9)
		return at.Celsius(), err
	})
	limittest.Rises(t, "shown by strength", true, 0, 92, func(x float64) (float64, error) {
		at, err := boil.Probe{Pressure: 20 * units.Kilopascal, Over: 0.5}.Shows(units.Brix(x))
		return at.Celsius(), err
	})
	limittest.Rises(t, "surface by shown", true, 0, 120, func(x float64) (float64, error) {
		at, err := boil.Probe{Pressure: units.Atmosphere, Over: units.Inch}.Surface(units.Celsius(x))
		return at.Celsius(), err
	})
}

func TestProbeLimits(t *testing.T) {
	good := boil.Probe{Pressure: units.Atmosphere, Over: units.Inch}
	shown, err := good.Shows(66.9)
	if err != nil {
		t.Fatal(err)
	}
	for fn, call := range map[string]func(boil.Probe) (float64, error){
		"boil.Probe.Shows": func(p boil.Probe) (float64, error) {
			at, err := p.Shows(66.9)
			return at.Celsius(), err
		},
		// The reading moves with the probe, so that it is always one that can be.
		"boil.Probe.Brix": func(p boil.Probe) (float64, error) {
			at, err := p.Shows(66.9)
			if err != nil {
				at = shown
			}
			b, err := p.Brix(at)
			return float64(b), err
		},
		"boil.Probe.Surface": func(p boil.Probe) (float64, error) {
			at, err := p.Shows(66.9)
			if err != nil {
				at = shown
			}
			at, err = p.Surface(at)
			return at.Celsius(), err
		},
		"boil.Probe.Depth": func(p boil.Probe) (float64, error) {
			at, err := p.Shows(66.9)
			if err != nil {
				at = shown
			}
			deep, err := p.Depth(at, 66.9)
			return deep.Meters(), err
		},
	} {
		limittest.Edges(t, fn, "Probe.Over", 0, 0.5, 0.1, func(x float64) (float64, error) {
			p := good
			p.Over = units.Meters(x)
			return call(p)
		})
		limittest.Edges(t, fn, "pressure", 20, 120, 95, func(x float64) (float64, error) {
			p := good
			p.Pressure = units.Kilopascals(x)
			return call(p)
		})
		limittest.Edges(t, fn, "inverted share", 0, 20, 5, func(x float64) (float64, error) {
			p := good
			p.Sugar.Inverted = units.Share(x)
			return call(p)
		})
	}
	limittest.Edges(t, "boil.Probe.Shows", "brix", 0, 92, 66.9, func(x float64) (float64, error) {
		at, err := good.Shows(units.Brix(x))
		return at.Celsius(), err
	})
	end := func(b units.Brix, over units.Length) float64 {
		at, err := boil.Probe{Pressure: units.Atmosphere, Over: over}.Shows(b)
		if err != nil {
			t.Fatal(err)
		}
		return at.Celsius()
	}
	limittest.Edges(t, "boil.Probe.Brix", "shown", end(0, units.Inch), end(92, units.Inch), 104, func(x float64) (float64, error) {
		b, err := good.Brix(units.Celsius(x))
		return float64(b), err
	})
	limittest.Edges(t, "boil.Probe.Surface", "shown", 0, end(92, units.Inch), 104, func(x float64) (float64, error) {
		at, err := good.Surface(units.Celsius(x))
		return at.Celsius(), err
	})
	limittest.Edges(t, "boil.Probe.Depth", "shown", end(66.9, 0), end(66.9, 0.5), 105, func(x float64) (float64, error) {
		deep, err := good.Depth(units.Celsius(x), 66.9)
		return deep.Meters(), err
	})
}

// Before it boils, what is shown keeps its distance from boiling water.
func TestProbeBeforeTheBoil(t *testing.T) {
	p := boil.Probe{Pressure: units.Atmosphere, Over: 2 * units.Inch}
	deep, err := p.Shows(0)
	water, err2 := boil.Water(units.Atmosphere)
	for _, under := range []units.TempDiff{0, 0.001, 5, 60} {
		at, err3 := p.Surface(deep.Add(-under))
		if err := errors.Join(err, err2, err3); err != nil || !near(water.Sub(at).CelsiusDegrees(), float64(under), 1e-9) {
			t.Errorf("%v under: %v, %v", under, at, err)
		}
	}
	if b, err := p.Brix(deep.Add(-0.001)); err == nil || !math.IsNaN(float64(b)) {
		t.Errorf("what does not boil is %v, %v", b, err)
	}
}

func FuzzProbe(f *testing.F) {
	f.Add(101.325, 0.0508, 0.0, 104.4)
	f.Add(20.0, 0.5, 20.0, 60.0)
	f.Add(math.NaN(), math.Inf(1), -1.0, math.NaN())
	f.Fuzz(func(t *testing.T, kPa, over, inverted, celsius float64) {
		p := boil.Probe{Pressure: units.Kilopascals(kPa), Over: units.Meters(over), Sugar: sugar.Solute{Inverted: units.Share(inverted)}}
		b, err := p.Brix(units.Celsius(celsius))
		if err != nil {
			if !math.IsNaN(float64(b)) {
				t.Errorf("%v beside %v", b, err)
			}
			return
		}
		if at, err := p.Shows(b); err != nil || !near(at.Celsius(), celsius, 1e-8) {
			t.Errorf("%+v at %v C: %v, which shows %v, %v", p, celsius, b, at, err)
		}
	})
}

func BenchmarkProbeBrix(b *testing.B) {
	p := boil.Probe{Pressure: units.Atmosphere, Over: units.Inch}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := p.Brix(units.Celsius(104)); err != nil {
			b.Fatal(err)
		}
	}
}
