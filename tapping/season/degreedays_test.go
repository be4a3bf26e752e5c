package season_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

func rule(t testing.TB, m season.DegreeDayMethod, base, upper float64) season.DegreeDayRule {
	return must[season.DegreeDayRule](t)(season.NewDegreeDayRule(m, units.Fahrenheit(base), units.Fahrenheit(upper)))
}

func fahrenheitDay(date string, low, high float64) season.Day {
	d := day(date, 0, 0)
	d.Min, d.Max = units.Fahrenheit(low), units.Fahrenheit(high)
	return d
}

// The sine wave is the mean of what a cosine of the day has above the base and
// below the upper limit: summed here over 100,000 moments of the day. The second
// half of the modified wave falls to the next night.
func TestSineIsTheWave(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	wave := func(low, high, base, upper float64) (sum float64) {
		const n = 100_000
		for i := range n {
			at := (low+high)/2 - (high-low)/2*math.Cos(math.Pi*(float64(i)+0.5)/n)
			sum += min(max(at, base), upper) - base
		}
		return sum / n
	}
	for range 40 {
		low := 20 + 40*r.Float64()
		high := low + 50*r.Float64()
		next := high - 50*r.Float64()
		d := fahrenheitDay("2031-04-01", low, high)
		w := weather(t, d, fahrenheitDay("2031-04-02", next, high))
		single, double := rule(t, season.SingleSine, 50, 86), rule(t, season.ModifiedSine, 50, 86)
		want := wave(low, high, 50, 86)
		if got := single.Day(d).Fahrenheit(); math.Abs(got-want) > 1e-6*max(1, want) {
			t.Errorf("%v to %v F: %v, want %v", low, high, got, want)
		}
		want = (want + wave(next, high, 50, 86)) / 2
		if got := double.Days(w)[0].Fahrenheit(); math.Abs(got-want) > 1e-6*max(1, want) {
			t.Errorf("%v to %v to %v F: %v, want %v", low, high, next, got, want)
		}
	}
}

// 60 and 40 F make 3.183 over 50 F, 60 and 30 F make 2.542 (the table of
// methods). A day of 60 F between nights of 40 and 30 F is half of each: 2.8625.
// The days after a gap do not know the next night, and fall to their own.
func TestModifiedSineByHand(t *testing.T) {
	w := weather(t, fahrenheitDay("2031-04-01", 40, 60), fahrenheitDay("2031-04-02", 30, 60), fahrenheitDay("2031-04-05", 40, 60))
	got := season.BloomRule().Days(w)
	for i, want := range []float64{2.8625, 2.542, 3.183} {
		if math.Abs(got[i].Fahrenheit()-want) > 0.0006 {
			t.Errorf("day %d: %v, want %v", i, got[i].Fahrenheit(), want)
		}
	}
	// The night after is warmer than the day: a front came. The half wave stands
	// still at the day's high, 10 F above the base.
	w = weather(t, fahrenheitDay("2031-04-01", 60, 60), fahrenheitDay("2031-04-02", 65, 70))
	if got := season.BloomRule().Days(w)[0].Fahrenheit(); !near(got, 10) {
		t.Errorf("before a warm night: %v, want 10", got)
	}
}

func TestDegreeDayRuleRefuses(t *testing.T) {
	inf := units.Celsius(math.Inf(1))
	checkRange(t, "base", -95, 60, func(x float64) error {
		_, err := season.NewDegreeDayRule(season.DailyMean, units.Celsius(x), inf)
		return err
	})
	for _, c := range []struct {
		m           season.DegreeDayMethod
		base, upper float64
	}{{3, 10, 30}, {season.SingleSine, 10, 9.99}, {season.SingleSine, 10, math.NaN()}, {season.SingleSine, 10, math.Inf(-1)}} {
		if r, err := season.NewDegreeDayRule(c.m, units.Celsius(c.base), units.Celsius(c.upper)); !errors.Is(err, units.ErrRange) || r != (season.DegreeDayRule{}) {
			t.Errorf("%+v: %v, %v", c, r, err)
		}
	}
	r := season.BloomRule()
	if r.Method() != season.ModifiedSine || !near(r.Base().Fahrenheit(), 50) || !near(r.Upper().Fahrenheit(), 86) {
		t.Errorf("%+v", r)
	}
	nan := season.Day{Min: units.Celsius(math.NaN()), Max: units.Celsius(20)}
	for _, m := range []season.DegreeDayMethod{season.DailyMean, season.SingleSine, season.ModifiedSine} {
		if got := rule(t, m, 50, 86).Day(nan); got != 0 {
			t.Errorf("%v of NaN: %v", m, got)
		}
	}
}
