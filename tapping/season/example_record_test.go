package season_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// exampleRecord is invented: three gatherings of a spring, of one tap.
func exampleRecord() season.SapRecord {
	var days []season.Day
	for d := 1; d <= 9; d++ {
		days = append(days, season.Day{Date: time.Date(2034, 3, d, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(25), Max: units.Fahrenheit(43)})
	}
	weather, _ := season.NewWeather(days)
	on := func(d int, gal float64) season.Gathering {
		return season.Gathering{Date: time.Date(2034, 3, d, 0, 0, 0, 0, time.UTC), PerTap: units.USGallons(gal)}
	}
	first := on(3, 0.9)
	first.Since = time.Date(2034, 2, 28, 0, 0, 0, 0, time.UTC) // drilled
	r, _ := season.NewSapRecord(exampleModel(), season.SapFlowDay(), weather, 2034, []season.Gathering{first, on(6, 0.8), on(9, 1)})
	return r
}

// Nine running days brought 2.7 US gal. Four more are likely to bring 4/9 of that,
// 1.2 US gal.
func ExampleSapRecord() {
	var days []season.Day
	for d := 10; d <= 13; d++ {
		days = append(days, season.Day{Date: time.Date(2034, 3, d, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(25), Max: units.Fahrenheit(43)})
	}
	ahead, _ := season.NewWeather(days)
	sap := exampleRecord().Sum(ahead)
	fmt.Println(sap.Middle.Text(units.USGallon, 1))
	// Output: 1.2 US gal
}

func ExampleNewSapRecord() {
	_, err := season.NewSapRecord(exampleModel(), season.SapFlowDay(), season.Weather{}, 2034,
		[]season.Gathering{{Date: time.Date(2034, 3, 1, 0, 0, 0, 0, time.UTC), PerTap: 60 * units.USGallon}})
	fmt.Println(err)
	// Output: season.NewSapRecord: entry 1: sap of one tap 227.12471 L is outside 0 to 100 L: all that was gathered over the number of taps
}

// A day's likely sap lies under its mean, since few days bring most of it.
func ExampleSapRecord_Days() {
	day := season.Day{Date: time.Date(2034, 3, 10, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(25), Max: units.Fahrenheit(43)}
	ahead, _ := season.NewWeather([]season.Day{day})
	d := exampleRecord().Days(ahead)[0]
	fmt.Println(d.Runs, d.Sap.Middle < 0.3*units.USGallon, d.Sap.High > 0.3*units.USGallon)
	// Output: true true true
}

func ExampleSapRecord_Sum() {
	fmt.Println(exampleRecord().Sum(season.Weather{}).High.Text(units.USGallon, 0))
	// Output: 0 US gal
}

func ExampleSapRecord_Taught() {
	all, own := exampleRecord().Taught()
	fmt.Println(all, own)
	// Output: 3 3
}

func ExampleSapRecord_LeftOut() {
	noWeather, tooMuch := exampleRecord().LeftOut()
	fmt.Println(len(noWeather), len(tooMuch))
	// Output: 0 0
}

func ExampleSapRecord_String() {
	fmt.Println(exampleRecord())
	// Output: 3 gatherings, 3 of them of 2034
}

func ExampleSapRecord_MarshalJSON() {
	_, err := exampleRecord().MarshalJSON()
	fmt.Println(err != nil, exampleRecordPointer().UnmarshalJSON(nil) != nil)
	// Output: true true
}

func ExampleSapRecord_UnmarshalJSON() {
	fmt.Println(exampleRecordPointer().UnmarshalJSON([]byte("{}")) != nil)
	// Output: true
}

func exampleRecordPointer() *season.SapRecord { r := exampleRecord(); return &r }

func ExampleGathering() {
	g := season.Gathering{Date: time.Date(2034, 3, 1, 0, 0, 0, 0, time.UTC), PerTap: 30 * units.USGallon / 60}
	fmt.Println(g.PerTap.Text(units.USGallon, 1))
	// Output: 0.5 US gal
}

func ExampleLikelyDay() {
	var d season.LikelyDay
	fmt.Println(d.Runs)
	// Output: false
}

func ExampleGoodRun() {
	fmt.Println(season.GoodRun().Text(units.USGallon, 0))
	// Output: 1 US gal
}

func ExampleLargestRun() {
	low, high := season.LargestRun()
	fmt.Println(low.Text(units.USGallon, 1), high.Text(units.USGallon, 1))
	// Output: 2.2 US gal 2.5 US gal
}

func ExampleUsualHours() {
	h := season.UsualHours()
	fmt.Println(h.BeginsFrom, h.EndsTo)
	// Output: 10h0m0s 20h0m0s
}

func ExampleRunHours() {
	h := season.UsualHours()
	fmt.Println(h.EndsFrom - h.BeginsTo)
	// Output: 7h0m0s
}
