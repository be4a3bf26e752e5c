package season_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// quebecNormals are lows and highs of the middle of January to July at Quebec City
// in C, from memory and rounded.
var quebecNormals = [...][2]float64{{-18, -8}, {-16, -6}, {-9, 0}, {-1, 8}, {5, 17}, {10, 22}, {13, 25}}

// quebecSprings invents half-years about those normals: warm and cold spells of some
// days (a standard deviation of 4.5 C, of which seven tenths are left on the day
// after) and years that differ by 1.5 C.
func quebecSprings(t testing.TB, years int) season.Weather {
	t.Helper()
	r := rand.New(rand.NewPCG(19, 99))
	var days []season.Day
	for y := range years {
		spell, year := 0.0, 1.5*r.NormFloat64()
		for i := range 181 {
			m := max(0, (float64(i)-15)/30.4)
			k := min(int(m), len(quebecNormals)-2)
			part := min(m-float64(k), 1)
			a, b := quebecNormals[k], quebecNormals[k+1]
			spell = 0.7*spell + math.Sqrt(1-0.49)*4.5*r.NormFloat64()
			low, high := a[0]+part*(b[0]-a[0])+spell+year, a[1]+part*(b[1]-a[1])+spell+year
			days = append(days, season.Day{Date: time.Date(1999+y, 1, 1+i, 0, 0, 0, 0, time.UTC), Min: units.Celsius(low), Max: units.Celsius(high)})
		}
	}
	return must[season.Weather](t)(season.NewWeather(days))
}

// Runs of three days in a week begin, in springs like those of Quebec City, within
// the dates at which syrup was begun around it in 1999-2011. The nights freeze there
// into May, when the buds are long open: so the last runs tell no end. The window of
// the end, foretold on March 1, lies within the spread of the eleven regions. By the
// row of the city, April 5 to 25, it begins in time and ends some days late, as the
// documentation says.
func TestSpringsLikeQuebec(t *testing.T) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, r := range must[*check.Table](t)(check.Load("season-quebec-regions")).Rows {
		low, high = min(low, r.Float("end_min")), max(high, r.Float("end_max"))
	}
	city := fact(t, "season-quebec-regions", "QUE")
	springs := quebecSprings(t, 50)
	rule := season.Rule{Criterion: season.SapFlowDay(), RunDays: 3}
	first := must[season.Window](t)(season.History(springs, rule)).First
	days := springs.Days()
	now := must[season.Weather](t)(season.NewWeather(days[:len(days)-181+60]))
	today := days[len(days)-181+59].Date
	end := must[season.EndOutlook](t)(season.LookForEnd(now, today, season.EndQuestion{Rule: rule, Species: tapping.SugarMaple}))
	ofYear := func(c season.CalendarDay) int { return c.In(2023).YearDay() }
	for _, tc := range []struct {
		name      string
		at        int
		low, high float64
	}{
		{"first run, lower quartile", ofYear(first.Lower), city.Float("start_min"), city.Float("start_max")},
		{"first run, upper quartile", ofYear(first.Upper), city.Float("start_min"), city.Float("start_max")},
		{"end, from", end.From.YearDay(), city.Float("end_min"), city.Float("end_max")},
		{"end, to", end.To.YearDay(), low, high},
		{"end, to, late by the city", end.To.YearDay(), city.Float("end_max"), high},
	} {
		t.Logf("%s: day %d", tc.name, tc.at)
		if !(float64(tc.at) >= tc.low && float64(tc.at) <= tc.high) {
			t.Errorf("%s on day %d, Quebec has %v to %v", tc.name, tc.at, tc.low, tc.high)
		}
	}
}

// The table is whole: eleven regions, whose length is that between their means.
func TestQuebecTable(t *testing.T) {
	rows := must[*check.Table](t)(check.Load("season-quebec-regions")).Rows
	if len(rows) != 11 {
		t.Errorf("%d regions", len(rows))
	}
	for _, r := range rows {
		between := r.Float("end_mean") - r.Float("start_mean")
		// Syrup is counted by weeks: two halves of one lie between.
		if !(math.Abs(r.Float("length_mean")-between) <= 7) || !(r.Float("start_min") <= r.Float("start_mean") && r.Float("start_mean") <= r.Float("start_max")) ||
			!(r.Float("end_min") <= r.Float("end_mean") && r.Float("end_mean") <= r.Float("end_max")) {
			t.Errorf("%s: %v days between the means, printed %v", r.Name(), between, r.Float("length_mean"))
		}
	}
}

func BenchmarkLookForEnd(b *testing.B) {
	w := quebecSprings(b, 50)
	q := season.EndQuestion{Rule: season.Rule{Criterion: season.SapFlowDay()}}
	today := time.Date(2048, 3, 20, 0, 0, 0, 0, time.UTC)
	for b.Loop() {
		if _, err := season.LookForEnd(w, today, q); err != nil {
			b.Fatal(err)
		}
	}
}

// A week foretold from the published band, as after a season of gatherings.
func BenchmarkSapRecordSum(b *testing.B) {
	r, week := gravityRecord(b, season.Weather{}), recordDays(b, "rr.rrr.")
	for b.Loop() {
		r.Sum(week)
	}
}
