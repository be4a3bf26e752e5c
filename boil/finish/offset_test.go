package finish_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/internal/base/limit/limittest"
	"example.org/sapreckoner/units"
)

// pastStop is a stop on a day of an invented season, off the point of sucrose by
// d in the weather of the day.
func pastStop(t testing.TB, day int, cup units.Brix, p units.Pressure, d units.TempDiff) finish.PastStop {
	t.Helper()
	point, err := boil.SyrupPoint(cup, p)
	if err != nil {
		t.Fatal(err)
	}
	return finish.PastStop{When: time.Date(2025, 3, day, 20, 0, 0, 0, time.UTC), Pressure: p, Stop: point.Add(d), Cup: cup}
}

// An offset found in one weather holds in another, where a stop by the number on
// the thermometer would not.
func TestOffsetFollowsTheBarometer(t *testing.T) {
	o, err := finish.LearnOffset(
		pastStop(t, 1, 66.5, 95*units.Kilopascal, 0.30),
		pastStop(t, 4, 67.0, 98*units.Kilopascal, 0.28),
		pastStop(t, 9, 66.8, 96*units.Kilopascal, 0.32),
	)
	if err != nil || !near(float64(o.Mean), 0.30, 1e-9) || !near(float64(o.Spread), 0.02, 1e-9) || o.Stops != 3 || o.Drifts {
		t.Fatalf("%+v, %v", o, err)
	}
	for _, p := range []units.Pressure{93 * units.Kilopascal, units.Atmosphere} {
		at, by, err := o.Stop(66.9, p)
		point, err2 := boil.SyrupPoint(66.9, p)
		if err != nil || err2 != nil || !near(float64(at.Sub(point)), 0.30, 1e-9) ||
			!near(float64(by), 0.02*1.321*math.Sqrt(1+1.0/3), 1e-9) { // Student's factor of two degrees of freedom
			t.Errorf("at %v: %v above the point, by %v, %v", p, at.Sub(point), by, err)
		}
	}
	one, err := finish.LearnOffset(pastStop(t, 1, 66.5, 95*units.Kilopascal, 0.30))
	if err != nil || !math.IsNaN(float64(one.Spread)) {
		t.Errorf("one stop: %+v, %v", one, err)
	}
	// Two stops a quarter of a degree apart and one degree of freedom: 0.25/sqrt 2
	// is their spread, 1.837 Student's factor.
	two, err := finish.LearnOffset(pastStop(t, 1, 66.5, 95*units.Kilopascal, 0.25), pastStop(t, 2, 66.5, 95*units.Kilopascal, 0.5))
	if err != nil {
		t.Fatal(err)
	}
	if _, by, err := two.Stop(66.9, units.Atmosphere); err != nil || !near(float64(by), 0.25/math.Sqrt2*1.837*math.Sqrt(1.5), 1e-9) {
		t.Errorf("two stops: by %v, %v", by, err)
	}
	if at, by, err := one.Stop(66.9, units.Atmosphere); err != nil || math.IsNaN(at.Celsius()) || !math.IsNaN(float64(by)) {
		t.Errorf("one stop: %v by %v, %v", at, by, err)
	}
}

// A season that drifts late is flagged, whatever the order it is written down
// in; one that only scatters is flagged once in twenty times.
func TestOffsetDrift(t *testing.T) {
	var stops []finish.PastStop
	for day := 1; day <= 9; day++ {
		d := 0.30 + 0.02*float64(day%3)
		if day > 6 {
			d += 0.4
		}
		stops = append(stops, pastStop(t, day, 66.9, 97*units.Kilopascal, units.TempDiff(d)))
	}
	r := rand.New(rand.NewPCG(13, 14))
	r.Shuffle(len(stops), func(i, j int) { stops[i], stops[j] = stops[j], stops[i] })
	o, err := finish.LearnOffset(stops...)
	if err != nil || !o.Drifts || !near(float64(o.Late), 0.72, 1e-9) {
		t.Errorf("%+v, %v; want a drift to 0.72", o, err)
	}
	at, by, err := o.Stop(66.9, units.Atmosphere)
	point, err2 := boil.SyrupPoint(66.9, units.Atmosphere)
	if err != nil || err2 != nil || !near(float64(at.Sub(point)), 0.72, 1e-9) {
		t.Errorf("a drifting offset stops %v above the point, want its late mean", at.Sub(point))
	}
	// Its mean is known from three stops only.
	if want := float64(o.Spread) * 1.067 * math.Sqrt(1+1.0/3); !near(float64(by), want, 1e-9) {
		t.Errorf("by %v, want %v", by, want)
	}
	// Five stops are too few to tell, six are enough.
	var few []finish.PastStop
	for day, d := range []units.TempDiff{0, 0.01, 0, 0.01, 1, 1.01} {
		few = append(few, pastStop(t, day+1, 66.9, units.Atmosphere, d))
	}
	if five, err := finish.LearnOffset(few[1:]...); err != nil || five.Drifts {
		t.Errorf("five stops: %+v, %v", five, err)
	}
	if six, err := finish.LearnOffset(few...); err != nil || !six.Drifts {
		t.Errorf("six stops: %+v, %v", six, err)
	}
	for _, n := range []int{6, 9, 15, 24} {
		const seasons = 3000
		flagged := 0
		for range seasons {
			stops = stops[:0]
			for day := range n {
				stops = append(stops, finish.PastStop{When: time.Unix(int64(day)*86400, 0), Pressure: units.Atmosphere,
					Stop: units.Celsius(104 + 0.1*r.NormFloat64()), Cup: 66.9})
			}
			o, err := finish.LearnOffset(stops...)
			if err != nil {
				t.Fatal(err)
			}
			if o.Drifts {
				flagged++
			}
		}
		// Three standard deviations of the count are 0.012.
		if share := float64(flagged) / seasons; !near(share, 0.05, 0.013) {
			t.Errorf("%d stops that only scatter are flagged in %.3f of the seasons, want 0.05", n, share)
		}
	}
}

func TestOffsetLimits(t *testing.T) {
	_, err := finish.LearnOffset()
	wantRange(t, "no stops", err)
	_, _, unlearned := finish.Offset{}.Stop(66, units.Atmosphere)
	for _, err := range []error{err, unlearned} {
		if e := (*units.RangeError)(nil); !errors.As(err, &e) || e.Value != 0 || e.Low != 1 {
			t.Errorf("no stops: %v", err)
		}
	}
	learn := func(change func(*finish.PastStop, float64)) func(float64) (float64, error) {
		return func(x float64) (float64, error) {
			s := pastStop(t, 1, 66.9, units.Atmosphere, 0)
			change(&s, x)
			o, err := finish.LearnOffset(s)
			if err != nil {
				if o != (finish.Offset{}) {
					t.Errorf("%+v beside an error", o)
				}
				return math.NaN(), err
			}
			return float64(o.Mean), nil
		}
	}
	limittest.Edges(t, "finish.LearnOffset", "cup", 50, 80, 66, learn(func(s *finish.PastStop, x float64) { s.Cup = units.Brix(x) }))
	limittest.Edges(t, "finish.LearnOffset", "offset of a stop", -10, 10, 0, learn(func(s *finish.PastStop, x float64) { s.Stop = s.Stop.Add(units.TempDiff(x)) }))
	limittest.Edges(t, "finish.Offset.Stop", "spread of the stops", 0, 15, 1, func(x float64) (float64, error) {
		_, by, err := finish.Offset{Stops: 5, Spread: units.TempDiff(x)}.Stop(66, units.Atmosphere)
		return float64(by), err
	})
	// A drifting offset counts the last third of its stops, one at least: the mean
	// of one is as uncertain as the next stop, that of four by half as much.
	for stops, late := range map[int]float64{2: 1, 5: 1, 6: 2, 9: 3} {
		still := finish.Offset{Stops: stops, Spread: 0.1}
		drifts := still
		drifts.Drifts = true
		_, a, errA := still.Stop(66, units.Atmosphere)
		_, b, errB := drifts.Stop(66, units.Atmosphere)
		want := math.Sqrt((1 + 1/late) / (1 + 1/float64(stops)))
		if errA != nil || errB != nil || !near(float64(b/a), want, 1e-12) {
			t.Errorf("of %d stops: %v drifting, %v still, want %.4f times as much, %v, %v", stops, b, a, want, errA, errB)
		}
	}
	s := pastStop(t, 1, 66.9, units.Atmosphere, 0)
	s.Pressure = 121 * units.Kilopascal
	_, err = finish.LearnOffset(s)
	wantRange(t, "pressure", err)

	o := finish.Offset{Stops: 2}
	limittest.Edges(t, "finish.Offset.Stop", "target", 50, 80, 66, func(x float64) (float64, error) {
		at, _, err := o.Stop(units.Brix(x), units.Atmosphere)
		return at.Celsius(), err
	})
	limittest.Edges(t, "finish.Offset.Stop", "pressure", 20, 120, 100, func(x float64) (float64, error) {
		at, _, err := o.Stop(66, units.Kilopascals(x))
		return at.Celsius(), err
	})
	at, by, err := finish.Offset{}.Stop(66, units.Atmosphere)
	limittest.Refuses(t, "finish.Offset.Stop", "stops", at.Celsius(), err)
	limittest.Refuses(t, "finish.Offset.Stop", "stops", float64(by), err)
}

func BenchmarkLearnOffset(b *testing.B) {
	var stops []finish.PastStop
	for day := 1; day <= 20; day++ {
		stops = append(stops, pastStop(b, day, 66.9, 97*units.Kilopascal, 0.3))
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := finish.LearnOffset(stops...); err != nil {
			b.Fatal(err)
		}
	}
}

// A single stop tells no spread, and the mean then has two digits.
func TestOffsetText(t *testing.T) {
	o := finish.Offset{Mean: 0.543 * units.FahrenheitDegree, Spread: units.TempDiff(math.NaN()), Stops: 1}
	if s := o.String(); s != "0.54 F deg (0.3 C deg)" { // 0.543/1.8 is 0.302
		t.Error(s)
	}
	flat := finish.Outlook{Now: 60, NowBy: 0.5}
	if s := flat.String(); s != "60.0 +/- 0.5 Brix, no climb" {
		t.Error(s)
	}
}

// What is odd has a name and a reason, and what is not odd has neither.
func TestOddNames(t *testing.T) {
	for o, want := range map[finish.Odd][2]string{
		finish.Dip: {"dip", "foam, or a bumped probe"}, finish.Spike: {"spike", "the probe touched the pan"},
		finish.SetBack: {"setback", "something was poured in, or the fire sank"}, 0: {"not odd", ""}, 4: {"not odd", ""},
	} {
		if o.String() != want[0] || o.Why() != want[1] {
			t.Errorf("%d: %s, %s", o, o, o.Why())
		}
	}
}
