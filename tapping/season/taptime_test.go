package season_test

import (
	"errors"
	"math/rand/v2"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

const oneDay = 24 * time.Hour

// stretch lists the dates from one to another.
func stretch(from, to string) (dates []string) {
	for d := date(from); !d.After(date(to)); d = d.AddDate(0, 0, 1) {
		dates = append(dates, d.Format(time.DateOnly))
	}
	return dates
}

// likeSprings are springs whose sap runs February 14-19, March 4-17 and March 22
// to April 2: 6, 14 and 12 days.
func likeSprings(t *testing.T, years ...string) season.Weather {
	var all []season.Weather
	for _, y := range years {
		runs := append(stretch(y+"-02-14", y+"-02-19"), stretch(y+"-03-04", y+"-03-17")...)
		all = append(all, course(t, y+"-01-01", y+"-06-30", append(runs, stretch(y+"-03-22", y+"-04-02")...)...))
	}
	return joined(t, all...)
}

func timing(t testing.TB, w season.Weather, days int) season.TapTiming {
	return must[season.TapTiming](t)(season.NewTapTiming(w, season.Rule{Criterion: season.SapFlowDay()}, time.Duration(days)*oneDay))
}

// A hole of March 1 lives through April 4: 14 + 12 = 26 of 32 days. The window
// opens on February 27, whose 35th day is April 2, and closes on March 4, the
// first running day. A hole of February 13 lives through March 19 and catches
// 6 + 14 = 20; one of February 9 through March 15, 6 + 12 = 18. With a life of 49
// days a hole of February 14 lives through April 3 and catches all 32.
func TestTapWithinTheLifeOfTheHole(t *testing.T) {
	w := likeSprings(t, "2021", "2022", "2023")
	timed := timing(t, w, 35)
	best := timed.Best()
	want := season.TapWindow{From: calendar(time.February, 27), To: calendar(time.March, 4), Caught: 3 * 26, All: 3 * 32, Springs: 3}
	if best != want {
		t.Errorf("%+v, want %+v", best, want)
	}
	if best.String() != "February 27 to March 4" || timed.Springs() != 3 {
		t.Errorf("%v, %d springs", best, timed.Springs())
	}
	for on, want := range map[season.CalendarDay]int{
		calendar(time.February, 9): 18, calendar(time.February, 13): 20, calendar(time.March, 1): 26, calendar(time.March, 5): 25,
		calendar(time.April, 2): 1, calendar(time.April, 3): 0, calendar(time.January, 1): 0,
	} {
		if caught, all := timed.Caught(on); caught != 3*want || all != 96 {
			t.Errorf("%v: %d of %d, want %d", on, caught, all, 3*want)
		}
	}
	if best := timing(t, w, 49).Best(); best.From != calendar(time.February, 13) || best.To != calendar(time.February, 14) || best.Caught != 96 {
		t.Errorf("49 days: %+v", best)
	}
	if best := timing(t, course(t, "2021-01-01", "2021-06-30"), 35).Best(); best.Caught != 0 || best.String() != "no day" {
		t.Errorf("no run: %+v", best)
	}
}

// The best window is that of brute force: every date of the half-year, every
// day of every spring, counted without the package's sums. Warm days are few
// here, so that the bloom cuts some springs short.
func TestBestTapTimeIsThatOfBruteForce(t *testing.T) {
	r := rand.New(rand.NewPCG(41, 42))
	days := fiftyYears(r)
	rule := season.Rule{Criterion: season.SapFlowDay()}
	for range 25 {
		from, n := r.IntN(45), 1+r.IntN(5)
		var some []season.Day
		for _, d := range days {
			if y := d.Date.Year() - days[0].Date.Year(); y >= from && y < from+n {
				some = append(some, d)
			}
		}
		life := 1 + r.IntN(80)
		w := weather(t, some...)
		timed := timing(t, w, life)
		// Running days before full bloom, by date.
		runs, sum, year := map[string]bool{}, season.DegreeDays(0), 0
		_, full := season.SilverMapleBloom()
		springs := map[int]int{}
		adds := season.BloomRule().Days(w)
		for i, d := range some {
			if d.Date.Month() > time.June {
				continue
			}
			if d.Date.Year() != year {
				year, sum = d.Date.Year(), 0
			}
			springs[year]++
			if sum += adds[i]; sum < full && rule.Criterion.Met(d) {
				runs[d.Date.Format(time.DateOnly)] = true
			}
		}
		count := func(on season.CalendarDay) (caught int) {
			for y, days := range springs {
				for k := 0; k < life && days > 163; k++ {
					if d := on.In(y).AddDate(0, 0, k); d.Month() <= time.June && runs[d.Format(time.DateOnly)] {
						caught++
					}
				}
			}
			return caught
		}
		most := 0
		for d := date("2023-01-01"); d.Month() <= time.June; d = d.AddDate(0, 0, 1) {
			on := calendar(d.Month(), d.Day())
			want := count(on)
			most = max(most, want)
			if got, _ := timed.Caught(on); got != want {
				t.Fatalf("%v, %d days: %d, want %d", on, life, got, want)
			}
		}
		best := timed.Best()
		if best.Caught != most || count(best.From) != most || count(best.To) != most {
			t.Errorf("%d days: %+v, brute force catches %d", life, best, most)
		}
	}
}

func TestTapTimingRefuses(t *testing.T) {
	w := likeSprings(t, "2021")
	rule := season.Rule{Criterion: season.SapFlowDay()}
	for _, life := range []time.Duration{0, oneDay - time.Second, 184*oneDay + time.Hour, -oneDay} {
		if got, err := season.NewTapTiming(w, rule, life); !errors.Is(err, units.ErrRange) || got.Springs() != 0 {
			t.Errorf("%v: %v", life, err)
		}
	}
	if _, err := season.NewTapTiming(w, season.Rule{}, 30*oneDay); !errors.Is(err, units.ErrRange) {
		t.Errorf("no criterion: %v", err)
	}
	// 19 of 181 days missing are more than a tenth.
	short := course(t, "2021-01-01", "2021-06-11", "2021-03-01")
	if n := timing(t, short, 30).Springs(); n != 0 {
		t.Errorf("%d springs", n)
	}
	if best := (season.TapTiming{}).Best(); best != (season.TapWindow{}) {
		t.Errorf("%+v", best)
	}
}
