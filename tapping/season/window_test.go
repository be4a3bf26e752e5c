package season_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

func calendar(m time.Month, d int) season.CalendarDay { return season.CalendarDay{Month: m, Day: d} }

// joined puts seasons of several years behind each other.
func joined(t *testing.T, seasons ...season.Weather) season.Weather {
	var days []season.Day
	for _, s := range seasons {
		days = append(days, s.Days()...)
	}
	return weather(t, days...)
}

func TestHistory(t *testing.T) {
	w := joined(t,
		course(t, "2020-01-01", "2020-06-30", "2020-02-29", "2020-04-01"),
		course(t, "2021-01-01", "2021-06-30", "2021-02-28", "2021-04-03"),
		course(t, "2022-01-01", "2022-06-30", "2022-03-04", "2022-03-20", "2022-04-05"),
		course(t, "2023-01-01", "2023-03-31", "2023-01-02"), // half of it is missing
		course(t, "2024-01-01", "2024-06-30"),               // no run at all
	)
	h := must[season.Window](t)(season.History(w, season.Rule{Criterion: season.SapFlowDay()}))
	if h.Years != 4 || len(h.Skipped) != 1 || h.Skipped[0] != 2023 || !near(h.FlowDays, 2) {
		t.Errorf("%+v", h)
	}
	first := season.Spread{
		Years: 3, Earliest: calendar(time.February, 28), Lower: calendar(time.February, 28), Median: calendar(time.February, 28),
		Upper: calendar(time.March, 2), Latest: calendar(time.March, 4),
	}
	if h.First != first {
		t.Errorf("first run %+v, want %+v", h.First, first)
	}
	last := season.Spread{
		Years: 3, Earliest: calendar(time.April, 1), Lower: calendar(time.April, 2), Median: calendar(time.April, 3),
		Upper: calendar(time.April, 4), Latest: calendar(time.April, 5),
	}
	if h.Last != last {
		t.Errorf("last run %+v, want %+v", h.Last, last)
	}
	if got := h.Last.Median.In(2026); !got.Equal(date("2026-04-03")) {
		t.Errorf("median of 2026: %v", got)
	}
	if got := (season.Weather{}); must[season.Window](t)(season.History(got, season.Rule{Criterion: season.SapFlowDay()})).First.Years != 0 {
		t.Error("no weather has a history")
	}
}

// Leap years and their 29 February change no median: the same weather on the
// same dates gives the same window in 4 leap years and in 4 common ones.
func TestLeapYearsAreHarmless(t *testing.T) {
	window := func(years ...string) season.Window {
		var parts []season.Weather
		for i, y := range years {
			parts = append(parts, course(t, y+"-01-01", y+"-06-30", y+"-03-0"+string(rune('1'+i)), y+"-04-1"+string(rune('1'+i))))
		}
		return must[season.Window](t)(season.History(joined(t, parts...), season.Rule{Criterion: season.SapFlowDay()}))
	}
	leap, common := window("2008", "2012", "2016", "2020"), window("2009", "2013", "2017", "2021")
	if leap.First != common.First || leap.Last != common.Last {
		t.Errorf("leap years %+v, common years %+v", leap, common)
	}
}

// The same weather half a year later, south of the equator, gives the same
// counts.
func TestHemispheresAgree(t *testing.T) {
	north := fiftyYears(rand.New(rand.NewPCG(21, 22)))
	var south []season.Day
	for _, d := range north {
		m := d.Date.AddDate(0, 0, 181)
		south = append(south, season.Day{Date: m, Min: d.Min, Max: d.Max})
	}
	rule := season.Rule{Criterion: season.SapFlowDay(), RunDays: 3}
	a := must[season.Window](t)(season.History(weather(t, north...), rule))
	rule.Hemisphere = season.South
	b := must[season.Window](t)(season.History(weather(t, south...), rule))
	if a.Years != b.Years || math.Abs(a.FlowDays-b.FlowDays) > 1 {
		t.Errorf("north %+v, south %+v", a, b)
	}
	shift := b.First.Median.In(2023).Sub(a.First.Median.In(2023)).Hours() / 24
	if math.Abs(shift-181) > 1 {
		t.Errorf("first runs lie %v days apart, want 181", shift)
	}
}

func TestWarmerComesEarlier(t *testing.T) {
	w := weather(t, fiftyYears(rand.New(rand.NewPCG(23, 24)))...)
	rule := season.Rule{Criterion: season.SapFlowDay(), RunDays: 3}
	colder, asRead, warmer, err := season.Sensitivity(w, rule, 1*units.CelsiusDegree)
	if err != nil {
		t.Fatal(err)
	}
	at := func(x season.Window) (first, last time.Time) { return x.First.Median.In(2023), x.Last.Median.In(2023) }
	cf, cl := at(colder)
	f, l := at(asRead)
	wf, wl := at(warmer)
	if !wf.Before(f) || !f.Before(cf) || !wl.Before(l) || !l.Before(cl) {
		t.Errorf("first runs: warmer %v, as read %v, colder %v; last runs %v, %v, %v", wf, f, cf, wl, l, cl)
	}
}

func TestLookAhead(t *testing.T) {
	w := weather(t, day("2024-03-01", -12, -6), day("2024-03-02", -9, -5), day("2024-03-03", -6, 1), day("2024-03-04", -4, 4), day("2024-03-05", 1, 6), day("2024-03-06", -3, 6))
	o := season.LookAhead(w, season.SapFlowDay())
	dates := func(list []time.Time) (s []string) {
		for _, d := range list {
			s = append(s, d.Format("02"))
		}
		return s
	}
	if got := dates(o.FlowDays); len(got) != 2 || got[0] != "04" || got[1] != "06" {
		t.Errorf("running days %v", got)
	}
	if got := dates(o.DrillOn); len(got) != 3 || got[0] != "02" || got[2] != "04" {
		t.Errorf("drill on %v", got)
	}
	if o := season.LookAhead(w, season.Criterion{}); o.DrillOn != nil || o.FlowDays != nil {
		t.Errorf("zero criterion: %+v", o)
	}
}

// One season has its own median.
func TestHistoryOfOneSeason(t *testing.T) {
	w := course(t, "2022-01-01", "2022-06-30", "2022-03-04", "2022-03-20", "2022-04-05")
	h := must[season.Window](t)(season.History(w, season.Rule{Criterion: season.SapFlowDay()}))
	if h.Years != 1 || !near(h.FlowDays, 3) || h.First.Median != calendar(time.March, 4) {
		t.Errorf("%+v", h)
	}
}

// The quarters of five years are years of their own, and as many days of a
// season may be missing as are told.
func TestSpreadTakesQuarters(t *testing.T) {
	w := joined(t,
		course(t, "2017-01-01", "2017-06-30", "2017-05-20"),
		course(t, "2018-01-01", "2018-06-30", "2018-01-01"),
		course(t, "2019-01-01", "2019-06-12", "2019-04-01"), // 18 days are missing
		course(t, "2021-01-01", "2021-06-11", "2021-03-01"), // 19 are
		course(t, "2022-01-01", "2022-06-30", "2022-06-29"),
		course(t, "2023-01-01", "2023-06-30", "2023-02-01"),
	)
	h := must[season.Window](t)(season.History(w, season.Rule{Criterion: season.SapFlowDay()}))
	want := season.Spread{
		Years: 5, Earliest: calendar(time.January, 1), Lower: calendar(time.February, 1), Median: calendar(time.April, 1),
		Upper: calendar(time.May, 20), Latest: calendar(time.June, 29),
	}
	if h.First != want || len(h.Skipped) != 1 || h.Skipped[0] != 2021 {
		t.Errorf("%+v, skipped %v, want %+v", h.First, h.Skipped, want)
	}
}

// Seven days on is the next week.
func TestRunLiesWithinAWeek(t *testing.T) {
	rule := season.Rule{Criterion: season.SapFlowDay(), RunDays: 2}
	for last, want := range map[string]bool{"2024-03-07": true, "2024-03-08": false} {
		s := must[[]season.Season](t)(season.Seasons(course(t, "2024-01-01", "2024-06-30", "2024-03-01", last), rule))[0]
		if s.First.IsZero() == want {
			t.Errorf("1 March and %s: run from %v", last, s.First)
		}
	}
}
