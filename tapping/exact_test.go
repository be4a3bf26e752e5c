package tapping_test

import (
	"errors"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// The paper's degree-days count from 5 C: a week of days from 4 to 12 C, 8 in
// the mean, adds seven times 3, and none of them freezes.
func TestProducingWeeksCountWarmth(t *testing.T) {
	var days []tapping.Day
	for d := date("2024-01-01"); d.Before(date("2024-01-15")); d = d.AddDate(0, 0, 1) {
		days = append(days, day(d.Format(time.DateOnly), 4, 12))
	}
	weeks := tapping.ProducingWeeks(weather(t, days...), 2024, tapping.North)
	if len(weeks) != 2 {
		t.Fatalf("%d weeks, want 2", len(weeks))
	}
	for i, w := range weeks {
		if !near(float64(w.Warmth), float64(21*(i+1))) || w.Events != 0 {
			t.Errorf("week %d: %v degree-days and %d events", i, w.Warmth, w.Events)
		}
	}
}

// As its sources say: 1.5 to 2 in (University of Vermont Extension), 1 in for a
// slow tree (Cornell 2005).
func TestDepthAdvisedAsPublished(t *testing.T) {
	for v, want := range map[tapping.Vigor][2]float64{
		tapping.NotJudged: {1.5, 2}, tapping.Healthy: {1.5, 2}, tapping.Slow: {1, 1}, tapping.Unhealthy: {0, 0},
	} {
		if low, high := tapping.DepthAdvised(v); !near(low.Inches(), want[0]) || !near(high.Inches(), want[1]) {
			t.Errorf("%v: %v to %v in, want %v", v, low.Inches(), high.Inches(), want)
		}
	}
}

// Breast height is 4.5 ft in the United States and 1.30 m in Quebec.
func TestBreastHeights(t *testing.T) {
	for _, g := range tapping.Guidelines() {
		want := 1.3716 // 4.5 ft
		if strings.Contains(g.Info().Jurisdiction, "Quebec") {
			want = 1.30
		}
		if got := g.Info().Height.Meters(); !near(got, want) {
			t.Errorf("%s: breast height %v m, want %v", g.ID(), got, want)
		}
	}
}

// 1 to 100 steps, as documented.
func TestGuidelineSteps(t *testing.T) {
	for n, ok := range map[int]bool{0: false, 1: true, 100: true, 101: false} {
		info := tapping.GuidelineInfo{ID: "by the inch", Unit: units.Inch}
		for i := range n {
			info.Steps = append(info.Steps, tapping.Step{From: float64(i), To: float64(i + 1), Before: true})
		}
		_, err := tapping.NewGuideline(info)
		var e *units.RangeError
		if ok != (err == nil) || !ok && (!errors.As(err, &e) || e.Low != 1 || e.High != 100) {
			t.Errorf("%d steps: %v", n, err)
		}
	}
}

// Rounds of 1 minute to 31 days, as documented.
func TestPailRoundTimes(t *testing.T) {
	pails := []tapping.Pail{{Size: units.USGallon, Taps: 1}}
	for d, ok := range map[time.Duration]bool{
		time.Minute - 1: false, time.Minute: true, 744 * time.Hour: true, 744*time.Hour + 1: false,
	} {
		for _, times := range [][2]time.Duration{{d, time.Hour}, {time.Hour, d}} {
			_, err := tapping.PailRound(pails, tapping.Span[units.Volume]{High: units.Liter}, times[0], times[1])
			var e *units.RangeError
			if ok != (err == nil) || !ok && (!errors.As(err, &e) || !near(e.High, 744)) {
				t.Errorf("%v: %v", times, err)
			}
		}
	}
}
