package finish_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

func TestWatchLimits(t *testing.T) {
	r := readingsOf(t, 5, 30*time.Second, quiet)
	with := func(change func(*finish.Watch, float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			w := watch(t)
			change(&w, x)
			o, err := w.Outlook(r...)
			if err != nil {
				return math.NaN(), err
			}
			return float64(o.Now), nil
		}
	}
	const fn = "finish.Watch.Outlook"
	limittest.Edges(t, fn, "target", 30, 92, 66, with(func(w *finish.Watch, x float64) { w.Target = units.Brix(x) }))
	limittest.Edges(t, fn, "uncertainty of a reading", 0.001, 5, 0.1, with(func(w *finish.Watch, x float64) { w.ProbeBy = units.TempDiff(x) }))
	limittest.Edges(t, fn, "uncertainty of the boiling water", 0, 5, 0.1, func(x float64) (float64, error) {
		w := watch(t)
		w.WaterBy = units.TempDiff(x)
		o, err := w.Outlook(r...)
		if err != nil {
			return math.NaN(), err
		}
		return float64(o.Now), nil
	})
	// The strengths that a thermometer can tell.
	for b, ok := range map[units.Brix]bool{29.99: false, 30.01: true, 91.99: true} {
		point, err := boil.SyrupPoint(b, watched)
		if err != nil {
			t.Fatal(err)
		}
		w := watch(t)
		o, err := w.Outlook(finish.WatchReading{At: 0, Shown: point}, finish.WatchReading{At: time.Minute, Shown: point})
		if ok != (err == nil) || ok && !near(float64(o.Now), float64(b), 1e-6) {
			t.Errorf("%v: %+v, %v", b, o, err)
		}
	}
	limittest.Edges(t, fn, "inverted share", 0, 20, 1, with(func(w *finish.Watch, x float64) { w.Sugar.Inverted = units.Share(x) }))
	for name, call := range map[string]func() (finish.Outlook, error){
		"none":      func() (finish.Outlook, error) { return watch(t).Outlook() },
		"one":       func() (finish.Outlook, error) { return watch(t).Outlook(r[0]) },
		"same time": func() (finish.Outlook, error) { return watch(t).Outlook(r[0], r[0]) },
		"backward":  func() (finish.Outlook, error) { return watch(t).Outlook(r[1], r[0]) },
		"zero":      func() (finish.Outlook, error) { return finish.Watch{}.Outlook(r...) },
		"thin": func() (finish.Outlook, error) {
			w := watch(t)
			return w.Outlook(finish.WatchReading{At: 0, Shown: w.Water}, finish.WatchReading{At: 1, Shown: w.Water})
		},
		"cold": func() (finish.Outlook, error) {
			return watch(t).Outlook(finish.WatchReading{At: 0}, finish.WatchReading{At: 1})
		},
		"nan": func() (finish.Outlook, error) {
			return watch(t).Outlook(r[0], finish.WatchReading{At: time.Hour, Shown: units.Celsius(math.NaN())})
		},
		"hot": func() (finish.Outlook, error) {
			return watch(t).Outlook(r[0], finish.WatchReading{At: time.Hour, Shown: units.Celsius(math.Inf(1))})
		},
		"water nan": func() (finish.Outlook, error) {
			w := watch(t)
			w.Water = units.Celsius(math.NaN())
			return w.Outlook(r...)
		},
		"water by": func() (finish.Outlook, error) {
			w := watch(t)
			w.WaterBy = -0.01
			return w.Outlook(r...)
		},
	} {
		_, err := call()
		wantRange(t, name, err)
	}
}

func FuzzWatch(f *testing.F) {
	f.Add(98.2, 101.0, 101.2, 101.1, int64(30), 66.9, 0.05, 0.0)
	f.Add(98.2, 101.0, 99.2, 101.1, int64(1), 30.0, 5.0, 5.0)
	f.Add(0.0, math.Inf(1), math.NaN(), -5.0, int64(-1), 92.0, 0.001, 0.01)
	f.Fuzz(func(t *testing.T, water, a, b, c float64, step int64, target, probe, waterBy float64) {
		w := finish.Watch{Target: units.Brix(target), Water: units.Celsius(water), ProbeBy: units.TempDiff(probe), WaterBy: units.TempDiff(waterBy)}
		at := func(i int64, x float64) finish.WatchReading {
			return finish.WatchReading{At: time.Duration(i * step % math.MaxInt32), Shown: units.Celsius(x)}
		}
		o, err := w.Outlook(at(0, a), at(1, b), at(2, c))
		if err == nil && (!(o.NowBy > 0) || math.IsNaN(float64(o.Now)) || math.IsNaN(float64(o.PerMinuteBy)) || o.Used < 2 || o.LeftBy < 0) {
			t.Errorf("%+v", o)
		}
	})
}
