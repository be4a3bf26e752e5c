package season_test

import (
	"fmt"
	"strings"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// exampleWeek is a week of invented weather.
const exampleWeek = `date,tmin_f,tmax_f
2025-03-01,5,20
2025-03-02,8,24
2025-03-03,17,34
2025-03-04,24,41
2025-03-05,26,45
2025-03-06,,
2025-03-07,28,47
`

func exampleWeather() season.Weather {
	w, _ := season.ReadWeather(strings.NewReader(exampleWeek))
	return w
}

func ExampleReadWeather() {
	w, err := season.ReadWeather(strings.NewReader(exampleWeek))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(w.Len(), "days")
	for _, g := range w.Gaps() {
		fmt.Printf("line %d: %d missing from %s\n", g.Line, g.Days(), g.From.Format(time.DateOnly))
	}
	// Output:
	// 6 days
	// line 7: 1 missing from 2025-03-06
}

func ExampleNewWeather() {
	d := time.Date(2025, 3, 1, 0, 0, 0, 0, time.UTC)
	_, err := season.NewWeather([]season.Day{{Date: d}, {Date: d}})
	fmt.Println(err)
	// Output: season.NewWeather: day 2: 2025-03-01: given twice
}

func ExampleWeather() {
	var w season.Weather
	fmt.Println(w.Len())
	// Output: 0
}

func ExampleWeather_Days() {
	for _, d := range exampleWeather().Days()[:2] {
		fmt.Println(d.Date.Format("2 January"), d.Min.Text(units.ScaleFahrenheit, 0), d.Max.Text(units.ScaleFahrenheit, 0))
	}
	// Output:
	// 1 March 5 F 20 F
	// 2 March 8 F 24 F
}

func ExampleWeather_Gaps() {
	fmt.Println(len(exampleWeather().Gaps()))
	// Output: 1
}

func ExampleWeather_Len() {
	fmt.Println(exampleWeather().Len())
	// Output: 6
}

func ExampleWeather_Shift() {
	w, _ := exampleWeather().Shift(9 * units.FahrenheitDegree)
	fmt.Println(w.Days()[0].Max.Text(units.ScaleFahrenheit, 0))
	// Output: 29 F
}

func ExampleDay() {
	d := season.Day{Min: units.Fahrenheit(24), Max: units.Fahrenheit(41)}
	fmt.Println(season.SapFlowDay().Met(d))
	// Output: true
}

// As far below freezing at 6:00 as above it at 15:00: half of the way, and of the time.
func ExampleDay_Thaws() {
	after, ok := season.Day{Min: units.Fahrenheit(22), Max: units.Fahrenheit(42)}.Thaws()
	fmt.Println(after.Round(time.Minute), ok)
	// Output: 10h30m0s true
}

func ExampleGap() {
	g := exampleWeather().Gaps()[0]
	fmt.Println(g.From.Equal(g.To), g.Line)
	// Output: true 7
}

func ExampleGap_Days() {
	g := season.Gap{From: time.Date(2024, 2, 28, 0, 0, 0, 0, time.UTC), To: time.Date(2024, 3, 1, 0, 0, 0, 0, time.UTC)}
	fmt.Println(g.Days())
	// Output: 3
}

// Which days of the week run, by whom.
func ExampleCriteria() {
	for _, c := range season.Criteria() {
		n := 0
		for _, d := range exampleWeather().Days() {
			if c.Met(d) {
				n++
			}
		}
		fmt.Println(n, c.Name())
	}
	// Output:
	// 3 sap-flow day, Skinner 2010
	// 3 vigorous run, UVM
	// 3 freeze-thaw event, Houle 2015
}

func ExampleCriterion() {
	var c season.Criterion
	fmt.Println(c.Met(season.Day{}))
	// Output: false
}

func ExampleCriterion_Name() {
	fmt.Println(season.VigorousRun().Name())
	// Output: vigorous run, UVM
}

func ExampleCriterion_Source() {
	fmt.Println(season.SapFlowDay().Source())
	// Output: Skinner, DeGaetano, Chabot 2010, Climatic Change 100:685-702, from memory: minimum below -1.1 C (30 F), maximum above 2.2 C (36 F)
}

func ExampleCriterion_Met() {
	d := season.Day{Min: units.Celsius(-8), Max: units.Celsius(1)}
	fmt.Println(season.SapFlowDay().Met(d))
	// Output: false
}

func ExampleNewCriterion() {
	c, _ := season.NewCriterion("our hill", units.Celsius(-2), units.Celsius(4))
	fmt.Println(c.Met(season.Day{Min: units.Celsius(-3), Max: units.Celsius(5)}))
	// Output: true
}

func ExampleSapFlowDay() {
	fmt.Println(season.SapFlowDay().Name())
	// Output: sap-flow day, Skinner 2010
}

func ExampleVigorousRun() {
	d := season.Day{Min: units.Fahrenheit(25), Max: units.Fahrenheit(45)}
	fmt.Println(season.VigorousRun().Met(d))
	// Output: true
}

func ExampleFreezeThawEvent() {
	d := season.Day{Min: units.Celsius(-1), Max: units.Celsius(4)}
	fmt.Println(season.FreezeThawEvent().Met(d))
	// Output: true
}

func ExampleGrowingDegreeDays() {
	d := season.Day{Min: units.Fahrenheit(40), Max: units.Fahrenheit(64)}
	fmt.Printf("%.1f\n", season.GrowingDegreeDays(d, units.Fahrenheit(50)).Fahrenheit())
	// Output: 2.0
}

// 3.183 and none: the table of methods, 60 and 40 F over 50 F.
func ExampleDegreeDayRule_Day() {
	d := season.Day{Min: units.Fahrenheit(40), Max: units.Fahrenheit(60)}
	for _, m := range []season.DegreeDayMethod{season.DailyMean, season.SingleSine} {
		r, err := season.NewDegreeDayRule(m, units.Fahrenheit(50), units.Fahrenheit(86))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v: %.3f\n", m, r.Day(d).Fahrenheit())
	}
	// Output:
	// daily mean: 0.000
	// single sine wave: 3.183
}

// The night of April 2 is colder: the second half wave falls to 30 F, and the
// day is half of 3.183 and half of 2.542.
func ExampleDegreeDayRule_Days() {
	april := func(day int, low, high float64) season.Day {
		return season.Day{Date: time.Date(2031, time.April, day, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(low), Max: units.Fahrenheit(high)}
	}
	w, err := season.NewWeather([]season.Day{april(1, 40, 60), april(2, 30, 60)})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range season.BloomRule().Days(w) {
		fmt.Printf("%.2f\n", d.Fahrenheit())
	}
	// Output:
	// 2.86
	// 2.54
}

func ExampleBloomRule() {
	r := season.BloomRule()
	fmt.Println(r.Method(), r.Base().Text(units.ScaleFahrenheit, 0), r.Upper().Text(units.ScaleFahrenheit, 0))
	// Output: modified sine wave 50 F 86 F
}

func ExampleDegreeDays() {
	fmt.Println(season.DegreeDays(10).Fahrenheit())
	// Output: 18
}

func ExampleDegreeDays_Celsius() {
	fmt.Printf("%.1f\n", season.FahrenheitDegreeDays(18).Celsius())
	// Output: 10.0
}

func ExampleDegreeDays_Fahrenheit() {
	fmt.Println(season.DegreeDays(20).Fahrenheit())
	// Output: 36
}

func ExampleFahrenheitDegreeDays() {
	fmt.Printf("%.1f\n", float64(season.FahrenheitDegreeDays(9)))
	// Output: 5.0
}

func ExampleSilverMapleBloom() {
	first, full := season.SilverMapleBloom()
	fmt.Printf("%.0f and %.0f\n", first.Fahrenheit(), full.Fahrenheit())
	// Output: 34 and 42
}

// The equation of Houle et al. 2015, eq. 1-2.
func ExampleHouleProbability() {
	for _, c := range []struct {
		events int
		warmth season.DegreeDays
	}{{0, 0}, {9, 0}, {15, 10}, {25, 60}} {
		p, _ := season.HouleProbability(c.events, c.warmth)
		fmt.Printf("%.4f %v\n", p, p > season.HouleThreshold)
	}
	// Output:
	// 0.0061 false
	// 0.5681 true
	// 0.8688 true
	// 0.5025 false
}

func ExampleHouleThreshold() {
	fmt.Println(season.HouleThreshold)
	// Output: 0.51
}
