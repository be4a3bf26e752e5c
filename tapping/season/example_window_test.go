package season_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// exampleStation is five invented springs: frost to the end of February, thaws
// from a day in March that shifts by two days a year, and leaves from 20 April.
func exampleStation() season.Weather {
	var days []season.Day
	for year := 2018; year < 2023; year++ {
		thaw := time.Date(year, 3, 1+2*(year-2018), 0, 0, 0, 0, time.UTC)
		leaves := time.Date(year, 4, 20, 0, 0, 0, 0, time.UTC)
		for d := time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC); d.Month() < time.July; d = d.AddDate(0, 0, 1) {
			low, high := -12.0, -3.0
			switch {
			case !d.Before(leaves):
				low, high = 6, 18
			case !d.Before(thaw):
				low, high = -4, 5
			}
			days = append(days, season.Day{Date: d, Min: units.Celsius(low), Max: units.Celsius(high)})
		}
	}
	w, _ := season.NewWeather(days)
	return w
}

func exampleRule() season.Rule {
	return season.Rule{Criterion: season.SapFlowDay(), RunDays: 3}
}

// When to have the taps in.
func ExampleHistory() {
	w, err := season.History(exampleStation(), exampleRule())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("first run", w.First.Earliest, "to", w.First.Latest, "- median", w.First.Median)
	fmt.Println("last run", w.Last.Median)
	fmt.Println(w.FlowDays, "running days")
	// Output:
	// first run March 1 to March 9 - median March 5
	// last run April 19
	// 46 running days
}

func ExampleWindow() {
	w, _ := season.History(exampleStation(), exampleRule())
	fmt.Println(w.Years, "years, skipped", w.Skipped)
	// Output: 5 years, skipped []
}

func ExampleSpread() {
	w, _ := season.History(exampleStation(), exampleRule())
	fmt.Println("three years in four not before", w.First.Lower)
	// Output: three years in four not before March 3
}

func ExampleCalendarDay() {
	fmt.Println(season.CalendarDay{Month: time.March, Day: 9})
	// Output: March 9
}

func ExampleCalendarDay_In() {
	d := season.CalendarDay{Month: time.March, Day: 9}
	fmt.Println(d.In(2026).Format(time.DateOnly))
	// Output: 2026-03-09
}

func ExampleCalendarDay_String() {
	fmt.Println(season.CalendarDay{Month: time.April, Day: 1}.String())
	// Output: April 1
}

func ExampleSensitivity() {
	_, asRead, warmer, err := season.Sensitivity(exampleStation(), exampleRule(), 3*units.CelsiusDegree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(asRead.FlowDays, "running days, 3 C warmer", warmer.FlowDays)
	// Output: 46 running days, 3 C warmer 0
}

func ExampleSeasons() {
	seasons, _ := season.Seasons(exampleStation(), exampleRule())
	for _, s := range seasons[:2] {
		fmt.Println(s.Year, s.FlowDays, s.First.Format("2 January"))
	}
	// Output:
	// 2018 50 1 March
	// 2019 48 3 March
}

func ExampleSeason() {
	seasons, _ := season.Seasons(exampleStation(), exampleRule())
	fmt.Println(seasons[0].Days, "days,", seasons[0].Missing, "missing")
	// Output: 181 days, 0 missing
}

func ExampleRule() {
	_, err := season.Seasons(exampleStation(), season.Rule{})
	fmt.Println(err)
	// Output: season.Seasons: no criterion is set: take the sap-flow day to start with
}

func ExampleHemisphere() {
	south := season.Rule{Criterion: season.SapFlowDay(), Hemisphere: season.South}
	seasons, _ := season.Seasons(exampleStation(), south)
	fmt.Println(len(seasons), "seasons in these half-years")
	// Output: 0 seasons in these half-years
}

func ExampleHemisphere_String() {
	fmt.Println(season.North.String(), season.South.String())
	// Output: north south
}

func ExampleLookAhead() {
	o := season.LookAhead(exampleWeather(), season.SapFlowDay())
	fmt.Println("drill on", o.DrillOn[0].Format("2 January"))
	fmt.Println("sap from", o.FlowDays[0].Format("2 January"))
	// Output:
	// drill on 2 March
	// sap from 4 March
}

func ExampleOutlook() {
	o := season.LookAhead(exampleWeather(), season.SapFlowDay())
	fmt.Println(len(o.FlowDays), "running days")
	// Output: 3 running days
}

func ExampleProducingWeeks() {
	for _, w := range season.ProducingWeeks(exampleStation(), 2018, season.North)[8:12] {
		fmt.Println(w.Start.Format("2 January"), w.Events, w.Producing)
	}
	// Output:
	// 26 February 4 false
	// 5 March 11 true
	// 12 March 18 true
	// 19 March 25 true
}

func ExampleWeek() {
	w := season.ProducingWeeks(exampleStation(), 2018, season.North)[0]
	fmt.Println(w.Start.Format("2 January"), w.Missing)
	// Output: 1 January 0
}

// threeSprings are like springs of frost whose sap runs February 14-19, March
// 4-17 and March 22 to April 2. Invented.
func threeSprings() season.Weather {
	var days []season.Day
	for year := 2021; year <= 2023; year++ {
		for d := time.Date(year, time.January, 1, 0, 0, 0, 0, time.UTC); d.Month() <= time.June; d = d.AddDate(0, 0, 1) {
			day := season.Day{Date: d, Min: units.Celsius(-15), Max: units.Celsius(-5)}
			switch at := d.Format("01-02"); {
			case at >= "02-14" && at <= "02-19", at >= "03-04" && at <= "03-17", at >= "03-22" && at <= "04-02":
				day.Min, day.Max = units.Celsius(-5), units.Celsius(5)
			}
			days = append(days, day)
		}
	}
	w, _ := season.NewWeather(days)
	return w
}

// A hole of 35 days drilled from February 27 to March 4 catches the 14 and the
// 12 running days of March and April: 78 of 96 in three springs. One drilled
// before the first run, on February 9, lives through March 15: 6 + 12 a spring.
func ExampleTapTiming() {
	timing, err := season.NewTapTiming(threeSprings(), season.Rule{Criterion: season.SapFlowDay()}, 35*24*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	best := timing.Best()
	early, _ := timing.Caught(season.CalendarDay{Month: time.February, Day: 9})
	fmt.Println(best, best.Caught, "of", best.All, "in", timing.Springs(), "springs")
	fmt.Println("February 9:", early)
	// Output:
	// February 27 to March 4 78 of 96 in 3 springs
	// February 9: 54
}

// A thaw on February 14: a hole of that day lives through March 20 and would
// catch 6 + 14 running days, and one of February 27 catches 26.
func ExampleTapTiming_Call() {
	timing, err := season.NewTapTiming(threeSprings(), season.Rule{Criterion: season.SapFlowDay()}, 35*24*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	today := time.Date(2031, time.February, 14, 0, 0, 0, 0, time.UTC)
	forecast, err := season.NewWeather([]season.Day{{Date: today, Min: units.Celsius(-5), Max: units.Celsius(5)}})
	if err != nil {
		fmt.Println(err)
		return
	}
	call := timing.Call(forecast, today)
	fmt.Println(call.Verdict, "until", call.On.Format("January 2"), call.Today, call.Best)
	// Output: wait until February 27 20 26
}
