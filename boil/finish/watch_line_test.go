package finish_test

import (
	"errors"
	"fmt"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// Two readings lie on their line and scatter nowhere, so that what their errors
// do to the answers can be reckoned one by one: with u = 1/B and the target t,
// the climb is -(u2-u1)/(minutes u2^2) and the time left minutes (t-u2)/(u2-u1).
func TestWatchOfTwoReadings(t *testing.T) {
	w := watch(t)
	const minutes = 3
	r := readingsOf(t, 2, minutes*time.Minute, quiet)
	o, err := w.Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	var u, by [2]float64
	for i, r := range r {
		rise := r.Shown.Sub(w.Water)
		b, err := boil.BrixFromRise(rise, watched)
		thin, err2 := boil.BrixFromRise(rise-w.ProbeBy, watched)
		if err != nil || err2 != nil {
			t.Fatal(err, err2)
		}
		u[i], by[i] = 1/float64(b), 1/float64(thin)-1/float64(b)
	}
	fall, left := u[1]-u[0], 1/float64(w.Target)-u[1]
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"now", float64(o.Now), 1 / u[1]},
		{"now by", float64(o.NowBy), by[1] / (u[1] * u[1])},
		{"a minute", float64(o.PerMinute), -fall / minutes / (u[1] * u[1])},
		{"a minute by", float64(o.PerMinuteBy), math.Hypot(by[0], by[1]*(1-2*fall/u[1])) / minutes / (u[1] * u[1])},
		{"left", o.Left.Minutes(), minutes * left / fall},
		{"left by", o.LeftBy.Minutes(), minutes / (fall * fall) * math.Hypot(by[0]*left, by[1]*(left+fall))},
	} {
		if !near(c.got, c.want, 1e-6*math.Abs(c.want)) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
}

// Readings that scatter by more than the probe is said to count as what they
// are, by however little, so that the answer does not hang on what was said.
func TestWatchBelievesTheScatter(t *testing.T) {
	w := watch(t)
	sign := units.TempDiff(1)
	r := readingsOf(t, 12, 20*time.Second, func() units.TempDiff { sign = -sign; return 1.2 * sign * w.ProbeBy })
	modest, err := w.Outlook(r...)
	if err != nil {
		t.Fatal(err)
	}
	w.ProbeBy /= 1.5
	bold, err := w.Outlook(r...)
	if err != nil || modest.Odd != nil || bold.Odd != nil || !near(float64(bold.NowBy/modest.NowBy), 1, 0.01) {
		t.Errorf("%+v, %v; said to be better %+v", modest, err, bold)
	}
	w.ProbeBy *= 4.5 // now more than the scatter
	if shy, err := w.Outlook(r...); err != nil || !(shy.NowBy > 1.5*modest.NowBy) {
		t.Errorf("%+v, %v; said to be worse %+v", modest, err, shy)
	}
}

// A water that is uncertain by a kelvin makes more of it than one of half that.
func TestWatchWaterOfAKelvin(t *testing.T) {
	w := watch(t)
	r := readingsOf(t, 10, 20*time.Second, quiet)
	var by [2]units.Brix
	for i, water := range []units.TempDiff{0.5, 1} {
		w.WaterBy = water
		o, err := w.Outlook(r...)
		if err != nil {
			t.Fatal(err)
		}
		by[i] = o.NowBy
	}
	if !(by[1] > 1.5*by[0]) {
		t.Errorf("by %v of a kelvin, %v of half", by[1], by[0])
	}
}

// Which reading is called odd where two explanations are near each other.
func TestWatchTellsSpikeFromSetback(t *testing.T) {
	w := watch(t) // a fall counts from 0.24 C deg
	base := readingsOf(t, 9, 20*time.Second, quiet)
	shifted := func(i int, by units.TempDiff) []finish.WatchReading {
		out := append([]finish.WatchReading(nil), base...)
		out[i].Shown = out[i].Shown.Add(by)
		return out
	}
	// Readings at so many seconds, so many degrees over the first.
	shown := func(secondsAndRise ...[2]float64) []finish.WatchReading {
		var out []finish.WatchReading
		for _, x := range secondsAndRise {
			out = append(out, finish.WatchReading{At: 7*time.Minute + time.Duration(x[0]*float64(time.Second)), Shown: base[0].Shown.Add(units.TempDiff(x[1]))})
		}
		return out
	}
	for _, c := range []struct {
		name     string
		readings []finish.WatchReading
		want     finish.OddReading
	}{
		{"the last but one is a dip", shifted(7, -2), finish.OddReading{Index: 7, What: finish.Dip}},
		{"the third is a spike", shifted(2, +2), finish.OddReading{Index: 2, What: finish.Spike}},
		{"half a degree is a spike", shifted(4, +0.5), finish.OddReading{Index: 4, What: finish.Spike}},
		// Back under the reading before the jump: more than the jump was wrong.
		{"a fall under what was before the jump", shown([2]float64{0, 0}, [2]float64{90, 0.4}, [2]float64{180, 0.8}, [2]float64{270, 3}, [2]float64{360, 0.5}, [2]float64{450, 0.8}),
			finish.OddReading{Index: 4, What: finish.SetBack}},
		// 0.1 in the first half minute and 0.6 in three minutes are one climb.
		{"a long step is no jump", shown([2]float64{0, 0}, [2]float64{30, 0.1}, [2]float64{210, 0.7}, [2]float64{240, 0.3}, [2]float64{270, 0.4}),
			finish.OddReading{Index: 3, What: finish.SetBack}},
	} {
		o, err := w.Outlook(c.readings...)
		if err != nil || len(o.Odd) != 1 || o.Odd[0] != c.want {
			t.Errorf("%s: %+v, %v; want %v", c.name, o.Odd, err, c.want)
		}
	}
}

func TestWatchWantsTwo(t *testing.T) {
	_, err := watch(t).Outlook(readingsOf(t, 1, time.Second, quiet)...)
	if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 1 || e.Low != 2 {
		t.Errorf("one reading: %v", err)
	}
}

// A last reading off the line is left out of it until the next one decides.
func TestWatchLeavesTheLastOpen(t *testing.T) {
	all := readingsOf(t, 9, 20*time.Second, quiet)
	w := watch(t)
	before, err := w.Outlook(all[:7]...)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name   string
		off    units.TempDiff
		so     finish.Odd // so far
		lasts  int        // readings odd if the next is off as well
		onLine int        // then
	}{
		{"foam", -2, finish.Dip, 1, 2},
		{"a little foam", -0.4, finish.Dip, 1, 2},
		{"touched", +2, finish.Spike, 0, 9},
	} {
		r := append([]finish.WatchReading(nil), all...)
		r[7].Shown = r[7].Shown.Add(c.off)
		o, err := w.Outlook(r[:8]...)
		if err != nil || len(o.Odd) != 1 || o.Odd[0] != (finish.OddReading{Index: 7, What: c.so, Open: true}) {
			t.Errorf("%s: %+v, %v", c.name, o, err)
		}
		if o.Odd = nil; fmt.Sprint(o) != fmt.Sprint(before) || o.Last != 6 {
			t.Errorf("%s: %+v; the line before it says %+v", c.name, o, before)
		}
		// The next is on the line: it was one reading.
		if o, err = w.Outlook(r...); err != nil || o.Used != 8 || len(o.Odd) != 1 || o.Odd[0] != (finish.OddReading{Index: 7, What: c.so}) {
			t.Errorf("%s, then well: %+v, %v", c.name, o, err)
		}
		// The next is off as well: sap was poured in, or it climbs like that.
		r[8].Shown = r[8].Shown.Add(c.off)
		if o, err = w.Outlook(r...); err != nil || o.Used != c.onLine || len(o.Odd) != c.lasts || o.Last != 8 {
			t.Errorf("%s, twice: %+v, %v", c.name, o, err)
		}
	}
}

// A leap is told by three readings at the least. From a line through three, a
// fourth as far on leaps from 3 sqrt(1 + 1/3 + 2*2/2) times a reading, 5.5, and
// some percent more, since thinner liquid is known less well.
func TestWatchLeapFromThree(t *testing.T) {
	w := watch(t)
	w.ProbeBy /= 50 // so small that strength goes straight with temperature
	for _, c := range []struct {
		n    int
		by   units.TempDiff // in uncertainties of a reading
		used int
	}{{4, 5.3, 4}, {4, 5.9, 3}, {3, 30, 3}, {2, 30, 2}} {
		r := readingsOf(t, c.n, 20*time.Second, quiet)
		r[c.n-1].Shown = r[c.n-1].Shown.Add(c.by * w.ProbeBy)
		if o, err := w.Outlook(r...); err != nil || o.Used != c.used || o.Last != c.used-1 {
			t.Errorf("the last of %d %v times its uncertainty off: %+v, %v", c.n, float64(c.by), o, err)
		}
	}
}
