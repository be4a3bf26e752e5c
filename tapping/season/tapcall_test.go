package season_test

import (
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// spell is days of like weather in F.
func spell(from, to string, low, high float64) (days []season.Day) {
	for _, d := range stretch(from, to) {
		days = append(days, fahrenheitDay(d, low, high))
	}
	return days
}

func spells(t *testing.T, parts ...[]season.Day) season.Weather {
	var all []season.Day
	for _, p := range parts {
		all = append(all, p...)
	}
	return weather(t, all...)
}

func TestTapCall(t *testing.T) {
	past := timing(t, likeSprings(t, "2021", "2022", "2023"), 35)
	none := timing(t, season.Weather{}, 35)
	frost := func(from, to string) []season.Day { return spell(from, to, 5, 25) }
	runs := func(from, to string) []season.Day { return spell(from, to, 25, 42) }
	for _, c := range []struct {
		name    string
		timing  season.TapTiming
		spring  season.Weather
		today   string
		verdict season.TapVerdict
		on, why string
	}{
		// A hole of February 10 lives through March 16: 6 + 13 = 19 days; one of
		// February 27 catches 26.
		{"a thaw too early", past, spells(t, frost("2031-01-01", "2031-02-09"), runs("2031-02-10", "2031-02-16")), "2031-02-10", season.TapWait, "2031-02-27", "26.0 running days, one of February 10 19.0"},
		// Without past springs the forecast speaks alone. The eve is warm enough
		// at 25 F; at 20 F it is not.
		{"the same without a record", none, spells(t, frost("2031-01-01", "2031-02-11"), runs("2031-02-12", "2031-02-16")), "2031-02-10", season.TapNow, "2031-02-11", "run of February 12"},
		{"a cold eve", none, spells(t, spell("2031-01-01", "2031-02-11", 0, 20), runs("2031-02-12", "2031-02-16")), "2031-02-10", season.TapNow, "2031-02-12", "run of February 12"},
		{"in the window", past, spells(t, frost("2031-01-01", "2031-03-03"), runs("2031-03-04", "2031-03-10")), "2031-03-02", season.TapNow, "2031-03-03", "run of March 4"},
		{"in the window, frost ahead", past, frostUntil(t, "2031-03-08"), "2031-03-02", season.TapWait, "2031-03-09", "none of the days ahead runs"},
		// 32 - 6 - 14 - 5 = 7 of the days are left on March 27, more than 26/4 = 6.5;
		// 6 on March 28.
		{"late", past, spells(t, frost("2031-01-01", "2031-03-26"), runs("2031-03-27", "2031-03-31")), "2031-03-27", season.TapNow, "2031-03-27", "run of March 27"},
		{"too late by past springs", past, spells(t, frost("2031-01-01", "2031-03-27"), runs("2031-03-28", "2031-03-31")), "2031-03-28", season.TapTooLate, "", "caught 6.0 running days, one of the best date 26.0"},
		// 60 and 40 F make 3.183 F degree-days: 35.0 after 11 days, and 31.8 after
		// 10. Never a day of April to drill on then.
		{"after days of 60 F", none, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-14", season.TapTooLate, "", "silver maple flowers"},
		{"after days of 60 F, with a record", past, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-14", season.TapTooLate, "", "silver maple flowers"},
		{"in days of 60 F", none, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-08", season.TapTooLate, "", "within a week silver maple flowers"},
		// After the 13th they are reached: within the week that begins on the 7th, but
		// not within that of the 6th, the 6th to the 12th.
		{"a week before", none, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-07", season.TapTooLate, "", "within a week silver maple flowers"},
		{"a day more than a week before", none, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-06", season.TapWait, "2031-04-21", "none of the days ahead runs"},
		{"before days of 60 F", none, spells(t, frost("2031-01-01", "2031-04-02"), spell("2031-04-03", "2031-04-20", 40, 60)), "2031-04-03", season.TapWait, "2031-04-21", "none of the days ahead runs"},
		// Six days of 60 F in February: 19.1, more than half of 34, and more than
		// the past springs, which had none.
		{"ahead of all", past, spells(t, frost("2031-01-01", "2031-02-03"), spell("2031-02-04", "2031-02-09", 40, 60), runs("2031-02-10", "2031-02-16")), "2031-02-10", season.TapNow, "2031-02-10", "run of February 10"},
		{"a little warmth", past, spells(t, frost("2031-01-01", "2031-02-05"), spell("2031-02-06", "2031-02-09", 40, 60), runs("2031-02-10", "2031-02-16")), "2031-02-10", season.TapWait, "2031-02-27", ""},
		{"no forecast", past, frostUntil(t, "2031-03-01"), "2031-03-02", season.NotCalled, "", ""},
		{"fall", past, frostUntil(t, "2031-03-01"), "2031-11-02", season.NotCalled, "", ""},
		{"no rule", season.TapTiming{}, frostUntil(t, "2031-03-08"), "2031-03-02", season.NotCalled, "", ""},
	} {
		got := c.timing.Call(c.spring, date(c.today))
		on := got.On.Format(time.DateOnly)
		if got.Verdict != c.verdict || c.on != "" && on != c.on || !strings.Contains(got.Why, c.why) {
			t.Errorf("%s: %v on %s, %s", c.name, got.Verdict, on, got.Why)
		}
	}
	// A criterion of one's own may be met where the bark splits: nothing is drilled.
	own := must[season.Criterion](t)(season.NewCriterion("own", units.Fahrenheit(10), units.Fahrenheit(5)))
	cold := must[season.TapTiming](t)(season.NewTapTiming(season.Weather{}, season.Rule{Criterion: own}, 35*oneDay))
	if got := cold.Call(spells(t, spell("2031-01-01", "2031-01-09", 0, 20)), date("2031-01-05")); got.Verdict != season.TapWait {
		t.Errorf("%+v", got)
	}
}

// The 29th of February counts as the 28th. A hole that lives 30 days catches 14 + 8 =
// 22 of the running days of past springs from then on, through March 29, 23 from
// March 1, and 14 + 12 = 26 from March 4, through April 2.
func TestTapCallOfALeapDay(t *testing.T) {
	past := timing(t, likeSprings(t, "2021", "2022", "2023"), 30)
	got := past.Call(spells(t, spell("2032-01-01", "2032-02-28", 5, 25), spell("2032-02-29", "2032-03-06", 25, 42)), date("2032-02-29"))
	if got.Verdict != season.TapWait || got.On.Format(time.DateOnly) != "2032-03-04" || !strings.Contains(got.Why, "26.0 running days, one of February 28 22.0") {
		t.Errorf("%+v", got)
	}
}

func frostUntil(t *testing.T, to string) season.Weather {
	return spells(t, spell("2031-01-01", to, 5, 25))
}
