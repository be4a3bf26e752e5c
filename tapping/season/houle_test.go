package season_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
)

func TestHouleRange(t *testing.T) {
	checkRange(t, "degree-days", 0, 10000, func(x float64) error {
		p, err := season.HouleProbability(10, season.DegreeDays(x))
		if (err != nil) != math.IsNaN(p) {
			t.Errorf("p %v with error %v", p, err)
		}
		return err
	})
	for n, ok := range map[int]bool{-1: false, 0: true, 366: true, 367: false} {
		if _, err := season.HouleProbability(n, 0); (err == nil) != ok {
			t.Errorf("%d events: %v", n, err)
		}
	}
	for g := season.DegreeDays(0); g < 200; g += 10 {
		if a, b := must[float64](t)(season.HouleProbability(15, g)), must[float64](t)(season.HouleProbability(15, g+10)); b >= a {
			t.Errorf("more warmth raises p from %v to %v", a, b)
		}
	}
}

// The top of 0.722 N - 0.014 N^2 is at N = 0.722/0.028 = 25.8: on either side of
// it the probability falls off, as it is documented.
func TestHouleTop(t *testing.T) {
	p := func(n int) float64 { return must[float64](t)(season.HouleProbability(n, 10)) }
	for n := range 60 {
		if rises := p(n+1) > p(n); rises != (n < 26) {
			t.Errorf("from %d to %d events: %v to %v", n, n+1, p(n), p(n+1))
		}
	}
	// At twice the top it is that of no event, where 7 of 7 days may run.
	if p(52) > season.HouleThreshold {
		t.Errorf("52 events: %v", p(52))
	}
}

func TestProducingWeeks(t *testing.T) {
	// 30 thaws in a row from 1 March, in a spring without warmth over 5 C.
	var running []string
	for d := date("2024-03-01"); len(running) < 30; d = d.AddDate(0, 0, 1) {
		running = append(running, d.Format(time.DateOnly))
	}
	w := course(t, "2024-01-01", "2024-04-30", running...)
	weeks := season.ProducingWeeks(w, 2024, season.North)
	if len(weeks) != 18 {
		t.Fatalf("%d weeks", len(weeks))
	}
	for i, week := range weeks {
		end := week.Start.AddDate(0, 0, 6)
		events := min(30, max(0, int(end.Sub(date("2024-03-01")).Hours()/24)+1))
		p := must[float64](t)(season.HouleProbability(events, 0))
		missing := 0
		if end.After(date("2024-04-30")) {
			missing = int(end.Sub(date("2024-04-30")).Hours() / 24)
		}
		if week.Events != events || week.Warmth != 0 || !near(week.Probability, p) || week.Producing != (p > 0.51) || week.Missing != missing {
			t.Errorf("week %d: %+v, want %d events, p %v, %d missing", i, week, events, p, missing)
		}
	}
	if got := season.ProducingWeeks(w, 2023, season.North); len(got) != 0 {
		t.Errorf("a year without weather has %d weeks", len(got))
	}
}
