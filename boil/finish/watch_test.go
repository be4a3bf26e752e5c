package finish_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

const watched = 95 * units.Kilopascal

// watch is the watch of an invented evening: water boils where it should, and the
// readings are made by the formula, which leaves nothing of it to doubt.
func watch(t testing.TB) finish.Watch {
	t.Helper()
	water, err := boil.Water(watched)
	if err != nil {
		t.Fatal(err)
	}
	return finish.Watch{Target: 66.9, Water: water, ProbeBy: units.FahrenheitDegrees(0.1), Learned: true}
}

// evening is 10 kg at 60 Brix that lose 10 kg in an hour.
var evening = finish.Batch{Mass: 10, Brix: 60, Evaporation: 10 * units.KilogramPerHour}

// readings of the evening every step, n of them, each off by noise.
func readingsOf(t testing.TB, n int, step time.Duration, noise func() units.TempDiff) []finish.WatchReading {
	t.Helper()
	out := make([]finish.WatchReading, n)
	for i := range out {
		at := time.Duration(i) * step
		b, err := evening.After(at)
		if err != nil {
			t.Fatal(err)
		}
		point, err := boil.SyrupPoint(b, watched)
		if err != nil {
			t.Fatal(err)
		}
		out[i] = finish.WatchReading{At: at, Shown: point.Add(noise())}
	}
	return out
}

func quiet() units.TempDiff { return 0 }

// Without noise the answer is that of the mass balance.
func TestWatchIsTheBalance(t *testing.T) {
	o, err := watch(t).Outlook(readingsOf(t, 5, 30*time.Second, quiet)...)
	if err != nil {
		t.Fatal(err)
	}
	now, err := evening.After(2 * time.Minute)
	if err != nil {
		t.Fatal(err)
	}
	whole, err := evening.Time(66.9)
	if err != nil {
		t.Fatal(err)
	}
	climb, err := finish.Batch{Mass: evening.Mass - evening.Evaporation.Over(2*time.Minute), Brix: now, Evaporation: evening.Evaporation}.PerMinute()
	if err != nil {
		t.Fatal(err)
	}
	if !near(float64(o.Now), float64(now), 1e-6) || !near(float64(o.PerMinute), float64(climb), 1e-5) ||
		!near(o.Left.Seconds(), (whole-2*time.Minute).Seconds(), 1e-2) || o.Used != 5 || o.Odd != nil || !o.Climbs {
		t.Errorf("%+v; want %v, %v a minute, %v left", o, now, climb, whole-2*time.Minute)
	}
}

// A line through the temperatures would promise more time than is left.
func TestWatchBeatsTheTemperatureLine(t *testing.T) {
	r := readingsOf(t, 5, 30*time.Second, quiet)
	o, err := watch(t).Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	stop, err := boil.SyrupPoint(66.9, watched)
	if err != nil {
		t.Fatal(err)
	}
	perMinute := float64(r[4].Shown.Sub(r[0].Shown)) / 2
	straight := float64(stop.Sub(r[4].Shown)) / perMinute
	if !(straight > o.Left.Minutes()*1.1) {
		t.Errorf("the temperature line says %.2f min, the watch %.2f", straight, o.Left.Minutes())
	}
}

// The truth lies within the stated uncertainties as often as it should, and more
// readings narrow them.
func TestWatchUncertainty(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	w := watch(t)
	noise := func() units.TempDiff { return w.ProbeBy * units.TempDiff(r.NormFloat64()) }
	last := finish.Outlook{NowBy: 100, PerMinuteBy: 100, LeftBy: math.MaxInt64}
	whole, err := evening.Time(66.9)
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range []int{4, 8, 16} {
		step := 4 * time.Minute / time.Duration(n-1)
		const runs = 1500
		var now, climb, left, mean [3]float64
		var sum finish.Outlook
		truth, err := evening.After(time.Duration(n-1) * step)
		if err != nil {
			t.Fatal(err)
		}
		perMinute, err := finish.Batch{Mass: evening.Mass - evening.Evaporation.Over(time.Duration(n-1)*step), Brix: truth, Evaporation: evening.Evaporation}.PerMinute()
		if err != nil {
			t.Fatal(err)
		}
		for range runs {
			o, err := w.Outlook(readingsOf(t, n, step, noise)...)
			if err != nil {
				t.Fatal(err)
			}
			sum.NowBy += o.NowBy / runs
			sum.PerMinuteBy += o.PerMinuteBy / runs
			sum.LeftBy += o.LeftBy / runs
			off := [3]float64{float64((o.Now - truth) / o.NowBy), float64((o.PerMinute - perMinute) / o.PerMinuteBy),
				float64(o.Left-(whole-time.Duration(n-1)*step)) / float64(o.LeftBy)}
			for i, count := range []*float64{&now[0], &climb[0], &left[0]} {
				if math.Abs(off[i]) < 1 {
					*count++
				}
				mean[i] += off[i] / runs
			}
		}
		// Scatter beyond that of the probe widens what is stated, never narrows
		// it: the truth lies within as often as 68 percent, and some more.
		for name, count := range map[string]float64{"now": now[0], "climb": climb[0], "left": left[0]} {
			if share := count / runs; share < 0.64 || share > 0.82 {
				t.Errorf("%d readings, %s: within in %.3f", n, name, share)
			}
		}
		for i, m := range mean {
			if math.Abs(m) > 0.3 {
				t.Errorf("%d readings: answer %d is off by %.2f of its uncertainty on average", n, i, m)
			}
		}
		if !(sum.NowBy < last.NowBy && sum.PerMinuteBy < last.PerMinuteBy && sum.LeftBy < last.LeftBy) {
			t.Errorf("%d readings: %v, %v, %v; not narrower than %+v", n, sum.NowBy, sum.PerMinuteBy, sum.LeftBy, last)
		}
		last = sum
	}
}

// An error of the boiling water moves all readings and does not average out.
func TestWatchWater(t *testing.T) {
	w := watch(t)
	r := readingsOf(t, 10, 20*time.Second, quiet)
	sure, err := w.Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	w.WaterBy = units.FahrenheitDegrees(0.3)
	unsure, err := w.Outlook(r...)
	if err != nil || !near(float64(unsure.Now), float64(sure.Now), 1e-12) || !(unsure.NowBy > 3*sure.NowBy) || !(unsure.LeftBy > sure.LeftBy) {
		t.Errorf("%+v, %v; without %+v", unsure, err, sure)
	}
	w.WaterBy = 0
	w.Water = w.Water.Add(units.FahrenheitDegrees(-0.3))
	moved, err := w.Outlook(r...)
	if err != nil || !near(float64(moved.Now-sure.Now), math.Sqrt(float64(unsure.NowBy*unsure.NowBy-sure.NowBy*sure.NowBy)), 0.02) {
		t.Errorf("water off by 0.3 F moves the strength by %v, stated %v, %v", moved.Now-sure.Now, unsure.NowBy, err)
	}
	for _, c := range []struct {
		name                string
		move, with, without float64
	}{
		{"climb", float64(moved.PerMinute - sure.PerMinute), float64(unsure.PerMinuteBy), float64(sure.PerMinuteBy)},
		{"time left", float64(moved.Left - sure.Left), float64(unsure.LeftBy), float64(sure.LeftBy)},
	} {
		if stated := math.Sqrt(c.with*c.with - c.without*c.without); !(math.Abs(math.Abs(c.move)-stated) <= 0.1*stated) {
			t.Errorf("water off by 0.3 F moves the %s by %v, stated %v", c.name, c.move, stated)
		}
	}
}

// Where hotter readings would lie beyond the range, colder ones tell how much
// the boiling water counts.
func TestWatchWaterAtTheEnd(t *testing.T) {
	w := watch(t)
	w.Target, w.WaterBy = 92, 2
	var readings []finish.WatchReading
	for i, b := range []units.Brix{91, 91.3, 91.6} {
		point, err := boil.SyrupPoint(b, watched)
		if err != nil {
			t.Fatal(err)
		}
		readings = append(readings, finish.WatchReading{At: time.Duration(i) * time.Minute, Shown: point})
	}
	o, err := w.Outlook(readings...)
	if err != nil || !(o.NowBy > 0 && o.NowBy < 5) {
		t.Errorf("%+v, %v", o, err)
	}
}

func TestWatchNamesOddReadings(t *testing.T) {
	base := readingsOf(t, 9, 20*time.Second, quiet)
	for i := range base {
		base[i].At += 7 * time.Minute // since the watch was started
	}
	shifted := func(by map[int]units.TempDiff) []finish.WatchReading {
		out := append([]finish.WatchReading(nil), base...)
		for i, d := range by {
			out[i].Shown = out[i].Shown.Add(d)
		}
		return out
	}
	clean, err := watch(t).Outlook(base...)
	if err != nil {
		t.Fatal(err)
	}
	// A reading is odd from three standard uncertainties of a difference under the
	// one before it, to which the climb between the two comes.
	fall := base[4].Shown.Sub(base[3].Shown) + units.TempDiff(3*math.Sqrt2)*watch(t).ProbeBy
	for name, tc := range map[string]struct {
		by   map[int]units.TempDiff
		odd  []finish.OddReading
		used int
	}{
		"foam":    {map[int]units.TempDiff{4: -2}, []finish.OddReading{{Index: 4, What: finish.Dip, Open: false}}, 8},
		"first":   {map[int]units.TempDiff{1: -2}, []finish.OddReading{{Index: 1, What: finish.Dip, Open: false}}, 8},
		"touched": {map[int]units.TempDiff{4: +2}, []finish.OddReading{{Index: 4, What: finish.Spike, Open: false}}, 8},
		// Of two readings nobody knows which is wrong: the watch starts anew.
		"touched at once": {map[int]units.TempDiff{1: +2}, []finish.OddReading{{Index: 2, What: finish.SetBack, Open: false}}, 7},
		"two":             {map[int]units.TempDiff{3: -2, 6: +2}, []finish.OddReading{{Index: 3, What: finish.Dip, Open: false}, {Index: 6, What: finish.Spike, Open: false}}, 7},
		"sap added":       {map[int]units.TempDiff{4: -1, 5: -1, 6: -1, 7: -1, 8: -1}, []finish.OddReading{{Index: 4, What: finish.SetBack, Open: false}}, 5},
		"within slip":     {map[int]units.TempDiff{4: -0.1}, nil, 9},
		"just a dip":      {map[int]units.TempDiff{4: -(fall + 0.01)}, []finish.OddReading{{Index: 4, What: finish.Dip, Open: false}}, 8},
		"just none":       {map[int]units.TempDiff{4: -(fall - 0.01)}, nil, 9},
	} {
		o, err := watch(t).Outlook(shifted(tc.by)...)
		if err != nil || o.Used != tc.used || len(o.Odd) != len(tc.odd) {
			t.Errorf("%s: %+v, %v; want %v, %d used", name, o, err, tc.odd, tc.used)
			continue
		}
		for i := range tc.odd {
			if o.Odd[i] != tc.odd[i] {
				t.Errorf("%s: %v, want %v", name, o.Odd, tc.odd)
			}
		}
		// What is left out leaves the answer alone.
		if (name == "foam" || name == "touched" || name == "two") && !near(float64(o.Now), float64(clean.Now), 1e-6) {
			t.Errorf("%s: now %v, clean %v", name, o.Now, clean.Now)
		}
	}
	// Two falling readings leave nothing to go by.
	o, err := watch(t).Outlook(base[8], finish.WatchReading{At: base[8].At + time.Minute, Shown: base[8].Shown.Add(-2)})
	wantRange(t, "two that fall", err)
	if len(o.Odd) != 1 || o.Odd[0] != (finish.OddReading{Index: 1, What: finish.Dip, Open: true}) {
		t.Errorf("two that fall: %v", o.Odd)
	}
}

func TestWatchWithoutClimb(t *testing.T) {
	r := readingsOf(t, 5, 30*time.Second, quiet)
	for i := range r {
		r[i].Shown = r[0].Shown.Add(units.TempDiff(-0.01 * float64(i)))
	}
	o, err := watch(t).Outlook(r...)
	if err != nil || o.Climbs || o.Left != 0 || !(o.PerMinute < 0) {
		t.Errorf("%+v, %v", o, err)
	}
}

func BenchmarkWatch(b *testing.B) {
	r := readingsOf(b, 10, 20*time.Second, quiet)
	w := watch(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := w.Outlook(r...); err != nil {
			b.Fatal(err)
		}
	}
}
