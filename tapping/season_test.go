package tapping_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

func TestCriteria(t *testing.T) {
	f := func(low, high float64) tapping.Day {
		return tapping.Day{Min: units.Fahrenheit(low), Max: units.Fahrenheit(high)}
	}
	c := func(low, high float64) tapping.Day { return day("2024-03-01", low, high) }
	own := must[tapping.Criterion](t)(tapping.NewCriterion("mine", units.Celsius(0), units.Celsius(4)))
	for _, x := range []struct {
		name string
		c    tapping.Criterion
		d    tapping.Day
		want bool
	}{
		{"cold night, warm day", tapping.SapFlowDay(), c(-5, 5), true},
		{"minimum on the limit", tapping.SapFlowDay(), c(-1.1, 5), false},
		{"minimum below it", tapping.SapFlowDay(), c(-1.2, 5), true},
		{"maximum on the limit", tapping.SapFlowDay(), c(-5, 2.2), false},
		{"maximum above it", tapping.SapFlowDay(), c(-5, 2.3), true},
		{"frost all day", tapping.SapFlowDay(), c(-9, -2), false},
		{"no frost", tapping.SapFlowDay(), c(2, 9), false},
		{"not a number", tapping.SapFlowDay(), c(math.NaN(), 9), false},
		{"run, low ends", tapping.VigorousRun(), f(20, 35), true},
		{"run, high ends", tapping.VigorousRun(), f(29.9, 49.9), true},
		{"night in the 30s", tapping.VigorousRun(), f(30, 45), false},
		{"night in the teens", tapping.VigorousRun(), f(19.9, 45), false},
		{"day too warm", tapping.VigorousRun(), f(25, 50), false},
		{"day too cold", tapping.VigorousRun(), f(25, 34.9), false},
		{"event", tapping.FreezeThawEvent(), c(2.9, 3.1), true},
		{"no thaw", tapping.FreezeThawEvent(), c(-4, 3), false},
		{"no freeze", tapping.FreezeThawEvent(), c(3, 9), false},
		{"own", own, c(-0.1, 4.1), true},
		{"own, on the limit", own, c(0, 4.1), false},
		{"zero criterion", tapping.Criterion{}, c(-5, 5), false},
	} {
		if got := x.c.Met(x.d); got != x.want {
			t.Errorf("%s: %v", x.name, got)
		}
	}
	for _, c := range tapping.Criteria() {
		if c.Name() == "" || c.Source() == "" {
			t.Errorf("a criterion without name or source: %+v", c)
		}
	}
	checkRange(t, "below", -95, 60, func(x float64) error {
		_, err := tapping.NewCriterion("x", units.Celsius(x), units.Celsius(1))
		return err
	})
	checkRange(t, "above", -95, 60, func(x float64) error {
		_, err := tapping.NewCriterion("x", units.Celsius(1), units.Celsius(x))
		return err
	})
	if _, err := tapping.NewCriterion("", units.Celsius(0), units.Celsius(0)); err == nil {
		t.Error("a criterion without a name was made")
	}
}

func TestGrowingDegreeDays(t *testing.T) {
	base := units.Fahrenheit(50)
	d := tapping.Day{Min: units.Fahrenheit(40), Max: units.Fahrenheit(64)}
	if got := tapping.GrowingDegreeDays(d, base).Fahrenheit(); !near(got, 2) {
		t.Errorf("40 to 64 F: %v, want 2", got)
	}
	d.Max = units.Fahrenheit(60)
	if got := tapping.GrowingDegreeDays(d, base); got != 0 {
		t.Errorf("40 to 60 F: %v, want 0", got)
	}
	d.Max = units.Celsius(math.NaN())
	if got := tapping.GrowingDegreeDays(d, base); got != 0 {
		t.Errorf("NaN: %v, want 0", got)
	}
	if got := tapping.FahrenheitDegreeDays(42).Fahrenheit(); !near(got, 42) {
		t.Errorf("42 came back as %v", got)
	}
}

// season makes days of hard frost, with running days at the given offsets.
func season(t *testing.T, from, to string, running ...string) tapping.Weather {
	runs := map[string]bool{}
	for _, s := range running {
		runs[s] = true
	}
	var days []tapping.Day
	for d := date(from); !d.After(date(to)); d = d.AddDate(0, 0, 1) {
		s := d.Format(time.DateOnly)
		if runs[s] {
			days = append(days, day(s, -5, 5))
		} else {
			days = append(days, day(s, -15, -5))
		}
	}
	return weather(t, days...)
}

func TestSeasons(t *testing.T) {
	rule := tapping.SeasonRule{Criterion: tapping.SapFlowDay()}
	w := season(t, "2023-11-01", "2024-12-31", "2023-11-05", "2024-01-10", "2024-02-29", "2024-03-02", "2024-03-06", "2024-03-20", "2024-07-04", "2024-11-11")
	got := must[[]tapping.Season](t)(tapping.Seasons(w, rule))
	if len(got) != 1 {
		t.Fatalf("%d seasons: %+v", len(got), got)
	}
	s := got[0]
	if s.Year != 2024 || s.FlowDays != 5 || s.Days != 182 || s.Missing != 0 || !s.First.Equal(date("2024-01-10")) || !s.Last.Equal(date("2024-03-20")) {
		t.Errorf("%+v", s)
	}
	// Three running days in a week: 29 February, 2 March and 6 March.
	rule.RunDays = 3
	s = must[[]tapping.Season](t)(tapping.Seasons(w, rule))[0]
	if !s.First.Equal(date("2024-02-29")) || !s.Last.Equal(date("2024-03-06")) {
		t.Errorf("run of three: %v to %v", s.First, s.Last)
	}
	rule.RunDays = 4
	s = must[[]tapping.Season](t)(tapping.Seasons(w, rule))[0]
	if !s.First.IsZero() || !s.Last.IsZero() || s.FlowDays != 5 {
		t.Errorf("no run of four, but %+v", s)
	}
	// South of the equator the other half of the year is the season.
	south := tapping.SeasonRule{Criterion: tapping.SapFlowDay(), Hemisphere: tapping.South}
	got = must[[]tapping.Season](t)(tapping.Seasons(w, south))
	if len(got) != 2 || got[0].Year != 2023 || got[0].Missing != 123 || got[1].FlowDays != 2 || got[1].Days != 184 {
		t.Errorf("south: %+v", got)
	}
}

func TestSeasonRuleRefuses(t *testing.T) {
	w := season(t, "2024-01-01", "2024-01-31")
	good := tapping.SeasonRule{Criterion: tapping.SapFlowDay()}
	for name, spoil := range map[string]func(*tapping.SeasonRule){
		"no criterion": func(r *tapping.SeasonRule) { r.Criterion = tapping.Criterion{} },
		"minus days":   func(r *tapping.SeasonRule) { r.RunDays = -1 },
		"eight days":   func(r *tapping.SeasonRule) { r.RunDays = 8 },
		"hemisphere":   func(r *tapping.SeasonRule) { r.Hemisphere = 2 },
	} {
		rule := good
		spoil(&rule)
		if _, err := tapping.Seasons(w, rule); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: Seasons: %v", name, err)
		}
		if _, err := tapping.History(w, rule); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: History: %v", name, err)
		}
		if _, _, _, err := tapping.Sensitivity(w, rule, 1); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: Sensitivity: %v", name, err)
		}
	}
	if _, _, _, err := tapping.Sensitivity(w, good, units.TempDiff(math.NaN())); !errors.Is(err, units.ErrRange) {
		t.Errorf("NaN: %v", err)
	}
	if got := tapping.Hemisphere(7).String(); got != "unknown (7)" {
		t.Errorf("hemisphere 7 prints as %q", got)
	}
}

func calendar(m time.Month, d int) tapping.CalendarDay { return tapping.CalendarDay{Month: m, Day: d} }

// joined puts seasons of several years behind each other.
func joined(t *testing.T, seasons ...tapping.Weather) tapping.Weather {
	var days []tapping.Day
	for _, s := range seasons {
		days = append(days, s.Days()...)
	}
	return weather(t, days...)
}

func TestHistory(t *testing.T) {
	w := joined(t,
		season(t, "2020-01-01", "2020-06-30", "2020-02-29", "2020-04-01"),
		season(t, "2021-01-01", "2021-06-30", "2021-02-28", "2021-04-03"),
		season(t, "2022-01-01", "2022-06-30", "2022-03-04", "2022-03-20", "2022-04-05"),
		season(t, "2023-01-01", "2023-03-31", "2023-01-02"), // half of it is missing
		season(t, "2024-01-01", "2024-06-30"),               // no run at all
	)
	h := must[tapping.Window](t)(tapping.History(w, tapping.SeasonRule{Criterion: tapping.SapFlowDay()}))
	if h.Years != 4 || len(h.Skipped) != 1 || h.Skipped[0] != 2023 || !near(h.FlowDays, 2) {
		t.Errorf("%+v", h)
	}
	first := tapping.Spread{
		Years: 3, Earliest: calendar(time.February, 28), Lower: calendar(time.February, 28), Median: calendar(time.February, 28),
		Upper: calendar(time.March, 2), Latest: calendar(time.March, 4),
	}
	if h.First != first {
		t.Errorf("first run %+v, want %+v", h.First, first)
	}
	last := tapping.Spread{
		Years: 3, Earliest: calendar(time.April, 1), Lower: calendar(time.April, 2), Median: calendar(time.April, 3),
		Upper: calendar(time.April, 4), Latest: calendar(time.April, 5),
	}
	if h.Last != last {
		t.Errorf("last run %+v, want %+v", h.Last, last)
	}
	if got := h.Last.Median.In(2026); !got.Equal(date("2026-04-03")) {
		t.Errorf("median of 2026: %v", got)
	}
	if got := (tapping.Weather{}); must[tapping.Window](t)(tapping.History(got, tapping.SeasonRule{Criterion: tapping.SapFlowDay()})).First.Years != 0 {
		t.Error("no weather has a history")
	}
}

// Leap years and their 29 February change no median: the same weather on the
// same dates gives the same window in 4 leap years and in 4 common ones.
func TestLeapYearsAreHarmless(t *testing.T) {
	window := func(years ...string) tapping.Window {
		var parts []tapping.Weather
		for i, y := range years {
			parts = append(parts, season(t, y+"-01-01", y+"-06-30", y+"-03-0"+string(rune('1'+i)), y+"-04-1"+string(rune('1'+i))))
		}
		return must[tapping.Window](t)(tapping.History(joined(t, parts...), tapping.SeasonRule{Criterion: tapping.SapFlowDay()}))
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
	var south []tapping.Day
	for _, d := range north {
		m := d.Date.AddDate(0, 0, 181)
		south = append(south, tapping.Day{Date: m, Min: d.Min, Max: d.Max})
	}
	rule := tapping.SeasonRule{Criterion: tapping.SapFlowDay(), RunDays: 3}
	a := must[tapping.Window](t)(tapping.History(weather(t, north...), rule))
	rule.Hemisphere = tapping.South
	b := must[tapping.Window](t)(tapping.History(weather(t, south...), rule))
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
	rule := tapping.SeasonRule{Criterion: tapping.SapFlowDay(), RunDays: 3}
	colder, asRead, warmer, err := tapping.Sensitivity(w, rule, 1*units.CelsiusDegree)
	if err != nil {
		t.Fatal(err)
	}
	at := func(x tapping.Window) (first, last time.Time) { return x.First.Median.In(2023), x.Last.Median.In(2023) }
	cf, cl := at(colder)
	f, l := at(asRead)
	wf, wl := at(warmer)
	if !wf.Before(f) || !f.Before(cf) || !wl.Before(l) || !l.Before(cl) {
		t.Errorf("first runs: warmer %v, as read %v, colder %v; last runs %v, %v, %v", wf, f, cf, wl, l, cl)
	}
}

func TestLookAhead(t *testing.T) {
	w := weather(t, day("2024-03-01", -12, -6), day("2024-03-02", -9, -5), day("2024-03-03", -6, 1), day("2024-03-04", -4, 4), day("2024-03-05", 1, 6), day("2024-03-06", -3, 6))
	o := tapping.LookAhead(w, tapping.SapFlowDay())
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
	if o := tapping.LookAhead(w, tapping.Criterion{}); o.DrillOn != nil || o.FlowDays != nil {
		t.Errorf("zero criterion: %+v", o)
	}
}

func TestHouleRange(t *testing.T) {
	checkRange(t, "degree-days", 0, 10000, func(x float64) error {
		p, err := tapping.HouleProbability(10, tapping.DegreeDays(x))
		if (err != nil) != math.IsNaN(p) {
			t.Errorf("p %v with error %v", p, err)
		}
		return err
	})
	for n, ok := range map[int]bool{-1: false, 0: true, 366: true, 367: false} {
		if _, err := tapping.HouleProbability(n, 0); (err == nil) != ok {
			t.Errorf("%d events: %v", n, err)
		}
	}
	for g := tapping.DegreeDays(0); g < 200; g += 10 {
		if a, b := must[float64](t)(tapping.HouleProbability(15, g)), must[float64](t)(tapping.HouleProbability(15, g+10)); b >= a {
			t.Errorf("more warmth raises p from %v to %v", a, b)
		}
	}
}

func TestProducingWeeks(t *testing.T) {
	// 30 thaws in a row from 1 March, in a spring without warmth over 5 C.
	var running []string
	for d := date("2024-03-01"); len(running) < 30; d = d.AddDate(0, 0, 1) {
		running = append(running, d.Format(time.DateOnly))
	}
	w := season(t, "2024-01-01", "2024-04-30", running...)
	weeks := tapping.ProducingWeeks(w, 2024, tapping.North)
	if len(weeks) != 18 {
		t.Fatalf("%d weeks", len(weeks))
	}
	for i, week := range weeks {
		end := week.Start.AddDate(0, 0, 6)
		events := min(30, max(0, int(end.Sub(date("2024-03-01")).Hours()/24)+1))
		p := must[float64](t)(tapping.HouleProbability(events, 0))
		missing := 0
		if end.After(date("2024-04-30")) {
			missing = int(end.Sub(date("2024-04-30")).Hours() / 24)
		}
		if week.Events != events || week.Warmth != 0 || !near(week.Probability, p) || week.Producing != (p > 0.51) || week.Missing != missing {
			t.Errorf("week %d: %+v, want %d events, p %v, %d missing", i, week, events, p, missing)
		}
	}
	if got := tapping.ProducingWeeks(w, 2023, tapping.North); len(got) != 0 {
		t.Errorf("a year without weather has %d weeks", len(got))
	}
}
