package season_test

import (
	"errors"
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// The paper's degree-days count from 5 C: a week of days from 4 to 12 C, 8 in
// the mean, adds seven times 3, and none of them freezes.
func TestProducingWeeksCountWarmth(t *testing.T) {
	var days []season.Day
	for d := date("2024-01-01"); d.Before(date("2024-01-15")); d = d.AddDate(0, 0, 1) {
		days = append(days, day(d.Format(time.DateOnly), 4, 12))
	}
	weeks := season.ProducingWeeks(weather(t, days...), 2024, season.North)
	if len(weeks) != 2 {
		t.Fatalf("%d weeks, want 2", len(weeks))
	}
	for i, w := range weeks {
		if !near(float64(w.Warmth), float64(21*(i+1))) || w.Events != 0 {
			t.Errorf("week %d: %v degree-days and %d events", i, w.Warmth, w.Events)
		}
	}
}

// Rounds of 1 minute to 31 days, as documented.
func TestPailRoundTimes(t *testing.T) {
	pails := []season.Pail{{Size: units.USGallon, Taps: 1}}
	for d, ok := range map[time.Duration]bool{
		time.Minute - 1: false, time.Minute: true, 744 * time.Hour: true, 744*time.Hour + time.Second: false,
	} {
		for _, times := range [][2]time.Duration{{d, time.Hour}, {time.Hour, d}} {
			_, err := season.PailRound(pails, season.Figure[units.Volume]{Span: units.Span[units.Volume]{High: units.Liter}}, times[0], times[1])
			var e *units.RangeError
			if ok != (err == nil) || !ok && (!errors.As(err, &e) || !near(e.High, 744)) {
				t.Errorf("%v: %v", times, err)
			}
		}
	}
}

// Half a degree over the base for a day is half a degree-day; without an added
// area there is no growth.
func TestSmallAmounts(t *testing.T) {
	if got := season.GrowingDegreeDays(day("2024-04-01", 4, 7), units.Celsius(5)); !near(float64(got), 0.5) {
		t.Errorf("%v degree-days, want 0.5", float64(got))
	}
	if got, err := tapping.RadialGrowth(10*units.Inch, 0); err != nil || !near(float64(got), 0) {
		t.Errorf("growth of no area: %v, %v", got, err)
	}
}

// A season from January to June of a leap year has 182 days: 26 whole weeks.
func TestProducingWeeksFillTheSeason(t *testing.T) {
	weeks := season.ProducingWeeks(course(t, "2024-01-01", "2024-12-31"), 2024, season.North)
	if len(weeks) != 26 || !weeks[len(weeks)-1].Start.Equal(date("2024-06-24")) {
		t.Errorf("%d weeks", len(weeks))
	}
	for _, week := range weeks {
		if week.Missing != 0 {
			t.Errorf("the week from %v lacks %d days", week.Start, week.Missing)
		}
	}
	// In other years it has 181: 25 whole weeks and a rest that is none.
	weeks = season.ProducingWeeks(course(t, "2023-01-01", "2023-12-31"), 2023, season.North)
	if len(weeks) != 25 || !weeks[len(weeks)-1].Start.Equal(date("2023-06-18")) {
		t.Errorf("%d weeks", len(weeks))
	}
}
