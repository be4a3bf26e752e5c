package season_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

func TestCriteria(t *testing.T) {
	f := func(low, high float64) season.Day {
		return season.Day{Min: units.Fahrenheit(low), Max: units.Fahrenheit(high)}
	}
	c := func(low, high float64) season.Day { return day("2024-03-01", low, high) }
	own := must[season.Criterion](t)(season.NewCriterion("mine", units.Celsius(0), units.Celsius(4)))
	for _, x := range []struct {
		name string
		c    season.Criterion
		d    season.Day
		want bool
	}{
		{"cold night, warm day", season.SapFlowDay(), c(-5, 5), true},
		{"minimum on the limit", season.SapFlowDay(), c(-1.1, 5), false},
		{"minimum below it", season.SapFlowDay(), c(-1.2, 5), true},
		{"maximum on the limit", season.SapFlowDay(), c(-5, 2.2), false},
		{"maximum above it", season.SapFlowDay(), c(-5, 2.3), true},
		{"frost all day", season.SapFlowDay(), c(-9, -2), false},
		{"no frost", season.SapFlowDay(), c(2, 9), false},
		{"not a number", season.SapFlowDay(), c(math.NaN(), 9), false},
		{"run, low ends", season.VigorousRun(), f(20, 35), true},
		{"run, high ends", season.VigorousRun(), f(29.9, 49.9), true},
		{"night in the 30s", season.VigorousRun(), f(30, 45), false},
		{"night in the teens", season.VigorousRun(), f(19.9, 45), false},
		{"day too warm", season.VigorousRun(), f(25, 50), false},
		{"day too cold", season.VigorousRun(), f(25, 34.9), false},
		{"event", season.FreezeThawEvent(), c(2.9, 3.1), true},
		{"no thaw", season.FreezeThawEvent(), c(-4, 3), false},
		{"no freeze", season.FreezeThawEvent(), c(3, 9), false},
		{"own", own, c(-0.1, 4.1), true},
		{"own, on the limit", own, c(0, 4.1), false},
		{"zero criterion", season.Criterion{}, c(-5, 5), false},
	} {
		if got := x.c.Met(x.d); got != x.want {
			t.Errorf("%s: %v", x.name, got)
		}
	}
	for _, c := range season.Criteria() {
		if c.Name() == "" || c.Source() == "" {
			t.Errorf("a criterion without name or source: %+v", c)
		}
	}
	checkRange(t, "below", -95, 60, func(x float64) error {
		_, err := season.NewCriterion("x", units.Celsius(x), units.Celsius(1))
		return err
	})
	checkRange(t, "above", -95, 60, func(x float64) error {
		_, err := season.NewCriterion("x", units.Celsius(1), units.Celsius(x))
		return err
	})
	if _, err := season.NewCriterion("", units.Celsius(0), units.Celsius(0)); err == nil {
		t.Error("a criterion without a name was made")
	}
}

func TestGrowingDegreeDays(t *testing.T) {
	base := units.Fahrenheit(50)
	d := season.Day{Min: units.Fahrenheit(40), Max: units.Fahrenheit(64)}
	if got := season.GrowingDegreeDays(d, base).Fahrenheit(); !near(got, 2) {
		t.Errorf("40 to 64 F: %v, want 2", got)
	}
	d.Max = units.Fahrenheit(60)
	if got := season.GrowingDegreeDays(d, base); got != 0 {
		t.Errorf("40 to 60 F: %v, want 0", got)
	}
	d.Max = units.Celsius(math.NaN())
	if got := season.GrowingDegreeDays(d, base); got != 0 {
		t.Errorf("NaN: %v, want 0", got)
	}
	if got := season.FahrenheitDegreeDays(42).Fahrenheit(); !near(got, 42) {
		t.Errorf("42 came back as %v", got)
	}
}

// course makes days of hard frost, with running days at the given offsets.
func course(t *testing.T, from, to string, running ...string) season.Weather {
	runs := map[string]bool{}
	for _, s := range running {
		runs[s] = true
	}
	var days []season.Day
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
	rule := season.Rule{Criterion: season.SapFlowDay()}
	w := course(t, "2023-11-01", "2024-12-31", "2023-11-05", "2024-01-10", "2024-02-29", "2024-03-02", "2024-03-06", "2024-03-20", "2024-07-04", "2024-11-11")
	got := must[[]season.Season](t)(season.Seasons(w, rule))
	if len(got) != 1 {
		t.Fatalf("%d seasons: %+v", len(got), got)
	}
	s := got[0]
	if s.Year != 2024 || s.FlowDays != 5 || s.Days != 182 || s.Missing != 0 || !s.First.Equal(date("2024-01-10")) || !s.Last.Equal(date("2024-03-20")) {
		t.Errorf("%+v", s)
	}
	// Three running days in a week: 29 February, 2 March and 6 March.
	rule.RunDays = 3
	s = must[[]season.Season](t)(season.Seasons(w, rule))[0]
	if !s.First.Equal(date("2024-02-29")) || !s.Last.Equal(date("2024-03-06")) {
		t.Errorf("run of three: %v to %v", s.First, s.Last)
	}
	rule.RunDays = 4
	s = must[[]season.Season](t)(season.Seasons(w, rule))[0]
	if !s.First.IsZero() || !s.Last.IsZero() || s.FlowDays != 5 {
		t.Errorf("no run of four, but %+v", s)
	}
	// South of the equator the other half of the year is the season.
	south := season.Rule{Criterion: season.SapFlowDay(), Hemisphere: season.South}
	got = must[[]season.Season](t)(season.Seasons(w, south))
	if len(got) != 2 || got[0].Year != 2023 || got[0].Missing != 123 || got[1].FlowDays != 2 || got[1].Days != 184 {
		t.Errorf("south: %+v", got)
	}
}

func TestSeasonRuleRefuses(t *testing.T) {
	w := course(t, "2024-01-01", "2024-01-31")
	good := season.Rule{Criterion: season.SapFlowDay()}
	for name, spoil := range map[string]func(*season.Rule){
		"no criterion": func(r *season.Rule) { r.Criterion = season.Criterion{} },
		"minus days":   func(r *season.Rule) { r.RunDays = -1 },
		"eight days":   func(r *season.Rule) { r.RunDays = 8 },
		"hemisphere":   func(r *season.Rule) { r.Hemisphere = 2 },
	} {
		rule := good
		spoil(&rule)
		if _, err := season.Seasons(w, rule); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: Seasons: %v", name, err)
		}
		if _, err := season.History(w, rule); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: History: %v", name, err)
		}
		if _, _, _, err := season.Sensitivity(w, rule, 1); !errors.Is(err, units.ErrRange) {
			t.Errorf("%s: Sensitivity: %v", name, err)
		}
	}
	if _, _, _, err := season.Sensitivity(w, good, units.TempDiff(math.NaN())); !errors.Is(err, units.ErrRange) {
		t.Errorf("NaN: %v", err)
	}
	if got := season.Hemisphere(7).String(); got != "Hemisphere(7)" {
		t.Errorf("hemisphere 7 prints as %q", got)
	}
}

// The warmth of a season is that of its days: two with a mean of 8 C are 3 over
// the base of 5 C each, and a third with a mean of 4 adds nothing.
func TestSeasonWarmth(t *testing.T) {
	w := weather(t, day("2024-04-01", 4, 12), day("2024-04-02", -2, 10), day("2024-04-03", 6, 10))
	seasons := must[[]season.Season](t)(season.Seasons(w, season.Rule{Criterion: season.SapFlowDay()}))
	if len(seasons) != 1 || !near(float64(seasons[0].Warmth), 6) {
		t.Errorf("%+v", seasons)
	}
}
