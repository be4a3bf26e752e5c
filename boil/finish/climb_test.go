package finish_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func randomBatch(r *rand.Rand) finish.Batch {
	return finish.Batch{Mass: units.Mass(1 + 50*r.Float64()), Brix: units.Brix(5 + 70*r.Float64()), Evaporation: units.KilogramsPerHour(1 + 100*r.Float64())}
}

// Time and After are inverses, and the climb is the slope of After.
func TestBatchClimb(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	for range 500 {
		b := randomBatch(r)
		to := b.Brix + units.Brix(1+(91-float64(b.Brix))*r.Float64())
		took, err := b.Time(min(to, 92))
		if err != nil {
			t.Fatal(err)
		}
		back, err := b.After(took)
		if err != nil || !near(float64(back), float64(min(to, 92)), 1e-6) {
			t.Errorf("%+v: %v in %v, back %v, %v", b, to, took, back, err)
		}
		const step = time.Second
		next, err := b.After(step)
		if err != nil {
			continue // a small batch over a great fire passes 92 Brix
		}
		climb, err := b.PerMinute()
		// The chord lies above the slope at its start by the curvature.
		if chord := float64(next-b.Brix) * 60; err != nil || chord < float64(climb) || chord > float64(climb)*(1+0.05) {
			t.Errorf("%+v: climbs %v in a minute, chord %v, %v", b, climb, chord, err)
		}
	}
}

func TestBatchCoast(t *testing.T) {
	b := finish.Batch{Mass: 20, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	// The sum of an evaporation that halves every two minutes, by steps of a
	// second: what is left must hold the same sugar.
	water := 0.0
	for s := 0.5; s < 3600; s++ {
		water += 10.0 / 3600 * math.Exp2(-s/120)
	}
	got, err := b.Coast(2 * time.Minute)
	if want := 65 * 20 / (20 - water); err != nil || !near(float64(got), want, 1e-4) {
		t.Errorf("coasts to %v, want %v, %v", got, want, err)
	}
	none, err := b.Coast(0)
	if err != nil || !near(float64(none), 65, 1e-12) {
		t.Errorf("with nothing left it coasts to %v, %v", none, err)
	}
	// Stopping where it is told must end at the target.
	before := finish.Batch{Mass: 26, Brix: 50, Evaporation: b.Evaporation}
	stop, err := before.LastFiring(66.6, 2*time.Minute)
	if err != nil {
		t.Fatal(err)
	}
	at := finish.Batch{Mass: stop.Of(before.Brix.Sugar(before.Mass)), Brix: stop, Evaporation: b.Evaporation}
	if end, err := at.Coast(2 * time.Minute); err != nil || !near(float64(end), 66.6, 1e-9) {
		t.Errorf("stopped at %v it ends at %v, %v", stop, end, err)
	}
	// The latent heat of what boils off is the heat that was stored.
	on, err := b.CoastOn(1.4e6, units.Atmosphere)
	if err != nil {
		t.Fatal(err)
	}
	lost := units.Mass(20 - 65*20/float64(on))
	if h := 1.4e6 / float64(lost); !near(h, 2.246e6, 0.003e6) { // water at 104 C, from memory of steam tables
		t.Errorf("%v J/kg of steam", h)
	}
}

func TestBatchLimits(t *testing.T) {
	ok := finish.Batch{Mass: 20, Brix: 65, Evaporation: 10 * units.KilogramPerHour}
	per := func(b finish.Batch) (float64, error) { v, err := b.PerMinute(); return float64(v), err }
	limittest.Edges(t, "finish.Batch.PerMinute", "mass of the batch", 1e-3, 1e6, 10, func(x float64) (float64, error) {
		b := ok
		b.Mass = units.Mass(x)
		return per(b)
	})
	limittest.Edges(t, "finish.Batch.PerMinute", "sugar content", 0.1, 92, 10, func(x float64) (float64, error) {
		b := ok
		b.Brix = units.Brix(x)
		return per(b)
	})
	limittest.Edges(t, "finish.Batch.PerMinute", "evaporation", 1e-9, 1e3, 10, func(x float64) (float64, error) {
		b := ok
		b.Evaporation = units.MassRate(x)
		return per(b)
	})
	limittest.Edges(t, "finish.Batch.Time", "target", 65, 92, 70, func(x float64) (float64, error) {
		d, err := ok.Time(units.Brix(x))
		if err != nil {
			return math.NaN(), err
		}
		return d.Seconds(), nil
	})
	for name, call := range map[string]func() (units.Brix, error){
		"zero batch":       func() (units.Brix, error) { return finish.Batch{}.After(0) },
		"backward":         func() (units.Brix, error) { return ok.After(-1) },
		"dry":              func() (units.Brix, error) { return ok.After(2 * time.Hour) },
		"coast backward":   func() (units.Brix, error) { return ok.Coast(-1) },
		"coast dry":        func() (units.Brix, error) { return ok.Coast(2 * time.Hour) },
		"stored negative":  func() (units.Brix, error) { return ok.CoastOn(-1, units.Atmosphere) },
		"stored nan":       func() (units.Brix, error) { return ok.CoastOn(units.Energy(math.NaN()), units.Atmosphere) },
		"stored dry":       func() (units.Brix, error) { return ok.CoastOn(1e9, units.Atmosphere) },
		"vacuum":           func() (units.Brix, error) { return ok.CoastOn(1, 1) },
		"target behind":    func() (units.Brix, error) { return ok.LastFiring(65, time.Minute) },
		"target beyond":    func() (units.Brix, error) { return ok.LastFiring(92.1, time.Minute) },
		"target nan":       func() (units.Brix, error) { return ok.LastFiring(units.Brix(math.NaN()), time.Minute) },
		"halving negative": func() (units.Brix, error) { return ok.LastFiring(67, -1) },
		"a great fire":     func() (units.Brix, error) { return ok.LastFiring(67, 200*time.Hour) },
	} {
		b, err := call()
		wantRange(t, name, err)
		if !math.IsNaN(float64(b)) {
			t.Errorf("%s: %v, want NaN", name, b)
		}
	}
	if d, err := (finish.Batch{}).Time(70); err == nil || d != 0 {
		t.Errorf("no batch takes %v, %v", d, err)
	}
	var e *units.RangeError
	if d, err := ok.Time(60); !errors.As(err, &e) || d != 0 || e.Low != 65 || e.High != 92 {
		t.Errorf("boiling takes %v to thin, %v", d, err)
	}
	// 20 kg (1 - 65/92) = 5.86957 kg of water may go, in 2113.04 s.
	if b, err := ok.After(2113 * time.Second); err != nil || !near(float64(b), 92, 0.01) {
		t.Errorf("%v Brix before the candy burns, %v", b, err)
	}
	if _, err := ok.After(2114 * time.Second); !errors.As(err, &e) || e.Low != 0 || !near(e.High, 5.86957, 1e-5) {
		t.Errorf("past the end: %v", err)
	}
	// A lake of sap over a candle takes all times and heats there are.
	lake := finish.Batch{Mass: 1e6, Brix: 0.1, Evaporation: 1e-9}
	limittest.Edges(t, "finish.Batch.CoastOn", "stored heat", 0, 1e12, 1e6, func(x float64) (float64, error) {
		b, err := lake.CoastOn(units.Energy(x), units.Atmosphere)
		return float64(b), err
	})
	const longest = 1e6 * time.Second
	for _, call := range []func(time.Duration) (units.Brix, error){lake.After, lake.Coast,
		func(d time.Duration) (units.Brix, error) { return lake.LastFiring(66, d) }} {
		if _, err := call(longest); err != nil {
			t.Error(err)
		}
		_, err := call(longest + time.Millisecond)
		wantRange(t, "too long", err)
	}
	if b, err := ok.LastFiring(65, 0); err != nil || !near(float64(b), 65, 1e-9) {
		t.Errorf("nothing to coast: stop at %v, %v", b, err)
	}
}

func BenchmarkBatchTime(b *testing.B) {
	batch := finish.Batch{Mass: 20, Brix: 60, Evaporation: 10 * units.KilogramPerHour}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := batch.Time(66.9); err != nil {
			b.Fatal(err)
		}
	}
}

func FuzzBatch(f *testing.F) {
	f.Add(10.0, 60.0, 10.0/3600, 66.9)
	f.Add(1e-3, 0.1, 1e-9, 92.0)
	f.Add(1e6, 92.0, 1e3, 92.0)
	f.Add(math.NaN(), math.Inf(1), -1.0, 0.0)
	f.Fuzz(func(t *testing.T, mass, brix, rate, to float64) {
		b := finish.Batch{Mass: units.Mass(mass), Brix: units.Brix(brix), Evaporation: units.MassRate(rate)}
		took, err := b.Time(units.Brix(to))
		if err != nil || took < time.Second || took.Seconds() > 1e6 {
			return // a nanosecond is too coarse for the shortest, and time has a range
		}
		back, err := b.After(took)
		if err != nil || !near(float64(back), to, 1e-6*to) {
			t.Errorf("%+v to %v takes %v, back %v, %v", b, to, took, back, err)
		}
	})
}

// Coals do what a batch under a dying boil does: after the time that they take, the water
// that they have boiled off, all of it times 1 - 2^(-t/halving), has brought the batch to
// within 0.1 Brix, and a halving time more leaves half of the rest.
func TestCoalsTime(t *testing.T) {
	const halving = 7 * time.Minute
	for _, target := range []units.Brix{0.5, 10, 60, 66.9, 90} {
		for _, share := range []float64{0.2, 0.8, 0.99} {
			last := max(0.1, units.Brix(share)*target)
			d, err := finish.CoalsTime(last, target, halving)
			if err != nil {
				t.Fatal(err)
			}
			sugar := last.Sugar(units.Kilogram)
			all := units.Kilogram - target.Of(sugar)
			off := all * units.Mass(1-math.Exp2(-d.Seconds()/halving.Seconds()))
			if got := float64(sugar) / float64(units.Kilogram-off) * 100; !near(got, float64(max(last, target-0.1)), 1e-6) {
				t.Errorf("from %v for %v: %v after %v", last, target, got, d)
			}
		}
	}
	for _, at := range []units.Brix{66.85, 66.9} {
		if d, err := finish.CoalsTime(at, 66.9, halving); d != 0 || err != nil {
			t.Errorf("near enough at %v: %v, %v", at, d, err)
		}
	}
	nan, inf := units.Brix(math.NaN()), units.Brix(math.Inf(1))
	for _, c := range []struct {
		last, target units.Brix
		halving      time.Duration
	}{{0.09, 66, halving}, {67, 66, halving}, {nan, 66, halving}, {-inf, 66, halving}, {0.1, 0.19, halving}, {60, 92.1, halving}, {60, nan, halving}, {60, inf, halving}, {60, 66, -1}} {
		if d, err := finish.CoalsTime(c.last, c.target, c.halving); d != 0 || !errors.Is(err, units.ErrRange) {
			t.Errorf("%v: %v, %v", c, d, err)
		}
	}
}
