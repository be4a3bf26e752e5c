package season_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// recordDays is weather from March 1, 2034: r runs, any other letter does not.
func recordDays(t testing.TB, letters string) season.Weather {
	t.Helper()
	var days []season.Day
	for i, c := range letters {
		d := season.Day{Date: time.Date(2034, 3, 1+i, 0, 0, 0, 0, time.UTC), Min: units.Celsius(-9), Max: units.Celsius(-2)}
		if c == 'r' {
			d.Min, d.Max = units.Celsius(-4), units.Celsius(6)
		}
		days = append(days, d)
	}
	return must[season.Weather](t)(season.NewWeather(days))
}

func march(d int) time.Time { return time.Date(2034, 3, d, 0, 0, 0, 0, time.UTC) }

func gravityRecord(t testing.TB, w season.Weather, g ...season.Gathering) season.SapRecord {
	t.Helper()
	m := must[season.SapModel](t)(season.NewSapModel(season.Method{}, 30))
	return must[season.SapRecord](t)(season.NewSapRecord(m, season.SapFlowDay(), w, 2034, g))
}

// Without a gathering a season of 30 days keeps the published band: its 30 days
// together bring 5 to 15 US gal 8 times in 10, with a little more for the luck of
// its days.
func TestSapWithoutRecord(t *testing.T) {
	sum := gravityRecord(t, season.Weather{}).Sum(recordDays(t, "rrrrrrrrrrrrrrrrrrrrrrrrrrrrrr"))
	low, middle, high := sum.Low.USGallons(), sum.Middle.USGallons(), sum.High.USGallons()
	if !(low > 3.8 && low < 5 && high > 15 && high < 19) || !(math.Abs(middle-math.Sqrt(75)) < 0.4) {
		t.Errorf("%.2f, %.2f, %.2f", low, middle, high)
	}
	if got := (season.SapRecord{}).Sum(recordDays(t, "rr")); got != (units.Span[units.Volume]{}) {
		t.Errorf("the zero record: %v", got)
	}
	if got := gravityRecord(t, season.Weather{}).Sum(season.Weather{}); got != (units.Span[units.Volume]{}) {
		t.Errorf("no days: %v", got)
	}
}

// The ends of a week lie within the sums of the ends of its days, since days are
// not all low or all high, and more days bring more.
func TestWeekIsNoSumOfEnds(t *testing.T) {
	r := gravityRecord(t, season.Weather{})
	week := recordDays(t, "rr.rrr.")
	var low, high units.Volume
	for _, d := range r.Days(week) {
		low += d.Sap.Low
		high += d.Sap.High
		if !(d.Sap.Low <= d.Sap.Middle && d.Sap.Middle <= d.Sap.High) || d.Runs && !(d.Sap.High > units.USGallon/2) {
			t.Errorf("%+v", d)
		}
	}
	sum := r.Sum(week)
	if !(sum.Low > low && sum.High < high) {
		t.Errorf("%v to %v, and the ends add up to %v and %v", sum.Low, sum.High, low, high)
	}
	var before units.Span[units.Volume]
	for _, days := range []string{".", "r", "r.", "rr", "rrr.", "rrrr", "rrrrrrrrrrr"} {
		next := r.Sum(recordDays(t, days))
		if !(next.Low >= before.Low && next.Middle >= before.Middle && next.High > before.High) {
			t.Errorf("%q brings %v, one day less %v", days, next, before)
		}
		before = next
	}
}

// Forty running days of a third of a gallon each, as alike as days can be, leave
// little doubt; a record of half the taps gives half the sap, but for what is
// still believed of the published band.
func TestRecordNarrows(t *testing.T) {
	const letters = "rrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrr"
	w := recordDays(t, letters)
	week := recordDays(t, "rrrrr")
	width := func(s units.Span[units.Volume]) float64 { return float64(s.High / s.Low) }
	var g []season.Gathering
	before := gravityRecord(t, w).Sum(week)
	for d := 1; d <= 40; d++ {
		g = append(g, season.Gathering{Date: march(d), Since: march(d - 1), PerTap: units.USGallons([]float64{0.2, 0.35, 0.3, 0.5}[d%4])})
		if d != 10 && d != 40 {
			continue
		}
		now := gravityRecord(t, w, g...).Sum(week)
		if d == 10 && !(width(now) < width(before)/2) || !(width(now) < width(before)) {
			t.Errorf("after %d gatherings %v, before %v", d, now, before)
		}
		before = now
	}
	// Five days of 0.3375 gal make 1.69.
	if got := before.Middle.USGallons(); !(math.Abs(got-1.69) < 0.1) || !(width(before) < 2.6) {
		t.Errorf("%v", before)
	}
	for i := range g {
		g[i].PerTap /= 2
	}
	if half := gravityRecord(t, w, g...).Sum(week); !(half.Middle < 0.55*before.Middle && half.Middle > 0.45*before.Middle) {
		t.Errorf("half the sap: %v", half)
	}
	// What came on days that do not meet the criterion is learned too.
	dry := recordDays(t, "....................")
	quiet, wet := g[:10:10], []season.Gathering(nil)
	for i, h := range quiet {
		quiet[i].PerTap, h.PerTap = 0, units.USGallon/10
		wet = append(wet, h)
	}
	if a, b := gravityRecord(t, dry, quiet...).Sum(dry), gravityRecord(t, dry, wet...).Sum(dry); !(a.High < b.Middle/2) {
		t.Errorf("nothing came: %v; some came: %v", a, b)
	}
}

// A gathering of three days teaches what three of its parts do of the level.
func TestGatheringOfDays(t *testing.T) {
	w := recordDays(t, "rrrrrrrrrrrr")
	var days, all []season.Gathering
	for d := 1; d <= 12; d++ {
		days = append(days, season.Gathering{Date: march(d), Since: march(d - 1), PerTap: units.USGallon / 2})
		if d%3 == 0 {
			all = append(all, season.Gathering{Date: march(d), Since: march(d - 3), PerTap: 1.5 * units.USGallon})
		}
	}
	a, b := gravityRecord(t, w, days...).Sum(w), gravityRecord(t, w, all...).Sum(w)
	if !(math.Abs(float64(a.Middle/b.Middle)-1) < 0.05) {
		t.Errorf("by the day %v, by three days %v", a, b)
	}
}

// A season before tells the level no better than seasons differ; one's own
// gatherings of this one do.
func TestOtherSeasons(t *testing.T) {
	m := must[season.SapModel](t)(season.NewSapModel(season.Method{}, 30))
	w := recordDays(t, "rrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrrr")
	var g []season.Gathering
	for d := 1; d <= 40; d++ {
		g = append(g, season.Gathering{Date: march(d), Since: march(d - 1), PerTap: units.USGallons(0.3 + 0.1*float64(d%3))})
	}
	this := must[season.SapRecord](t)(season.NewSapRecord(m, season.SapFlowDay(), w, 2034, g)).Sum(w)
	next := must[season.SapRecord](t)(season.NewSapRecord(m, season.SapFlowDay(), w, 2035, g)).Sum(w)
	// One year lies off another by sqrt(2) x 24.6 percent; 1.28 of that, both ways, is
	// a factor of exp(2 x 1.28 x 0.348) = 2.4.
	if f := float64(next.High / next.Low); !(f > 2.2 && f < 3) || !(float64(this.High/this.Low) < 1.4) {
		t.Errorf("this season %v, the next %v", this, next)
	}
	if !(math.Abs(float64(this.Middle/next.Middle)-1) < 0.05) {
		t.Errorf("this season %v, the next %v", this, next)
	}
}

func TestRecordRefuses(t *testing.T) {
	m := must[season.SapModel](t)(season.NewSapModel(season.Method{}, 30))
	w, c := recordDays(t, "rrrr"), season.SapFlowDay()
	one := season.Gathering{Date: march(2), PerTap: units.USGallon}
	for _, tc := range []struct {
		g    []season.Gathering
		want error
	}{
		{[]season.Gathering{{Date: march(2), PerTap: -1}}, units.ErrRange},
		{[]season.Gathering{{Date: march(2), PerTap: units.Volume(math.NaN())}}, units.ErrRange},
		{[]season.Gathering{{Date: time.Date(33, 3, 2, 0, 0, 0, 0, time.UTC)}}, units.ErrRange},
		{[]season.Gathering{one, one}, records.ErrDuplicate},
		{[]season.Gathering{one, {Date: march(1)}}, records.ErrOrder},
		{[]season.Gathering{{Date: march(2), Since: march(2)}}, records.ErrOrder},
		{[]season.Gathering{one, {Date: march(4), Since: march(1)}}, records.ErrOrder},
	} {
		if _, err := season.NewSapRecord(m, c, w, 2034, tc.g); !errors.Is(err, tc.want) {
			t.Errorf("%+v: %v", tc.g, err)
		}
	}
	// 40 gal of one tap on one day is not its sap: the unit, or the taps. March 9 has
	// no weather.
	r := gravityRecord(t, w, season.Gathering{Date: march(1), Since: march(0), PerTap: 3 * units.USGallon},
		season.Gathering{Date: march(2), PerTap: units.USGallon}, season.Gathering{Date: march(9), PerTap: units.USGallon})
	without, much := r.LeftOut()
	all, own := r.Taught()
	if len(without) != 1 || !without[0].Equal(march(9)) || len(much) != 1 || !much[0].Equal(march(1)) || all != 1 || own != 1 {
		t.Errorf("%v, %v, %d, %d", without, much, all, own)
	}
}
