package tapping_test

import (
	"errors"
	"math"
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

// The warmth of a season is that of its days: two with a mean of 8 C are 3 over
// the base of 5 C each, and a third with a mean of 4 adds nothing.
func TestSeasonWarmth(t *testing.T) {
	w := weather(t, day("2024-04-01", 4, 12), day("2024-04-02", -2, 10), day("2024-04-03", 6, 10))
	seasons := must[[]tapping.Season](t)(tapping.Seasons(w, tapping.SeasonRule{Criterion: tapping.SapFlowDay()}))
	if len(seasons) != 1 || !near(float64(seasons[0].Warmth), 6) {
		t.Errorf("%+v", seasons)
	}
}
