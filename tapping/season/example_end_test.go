package season_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// exampleEnd looks on March 29 at holes of March 1, sap that fell from 2.4 to 1.6
// Brix, and three warm nights: all invented.
func exampleEnd() season.EndOutlook {
	var days []season.Day
	for i := range 88 {
		d := season.Day{Date: time.Date(2034, 1, 1+i, 0, 0, 0, 0, time.UTC), Min: units.Fahrenheit(20), Max: units.Fahrenheit(36)}
		if i >= 85 {
			d.Min, d.Max = units.Fahrenheit(36), units.Fahrenheit(48)
		}
		days = append(days, d)
	}
	weather, _ := season.NewWeather(days)
	q := season.EndQuestion{
		Rule: season.Rule{Criterion: season.SapFlowDay()}, Species: tapping.RedMaple,
		Drilled: time.Date(2034, 3, 1, 0, 0, 0, 0, time.UTC),
	}
	for i, b := range []units.Brix{2.4, 2.4, 2.3, 2.0, 1.6, 1.6} {
		q.Sugar = append(q.Sugar, season.SugarReading{Date: time.Date(2034, 3, 10+3*i, 0, 0, 0, 0, time.UTC), Sugar: b})
	}
	o, _ := season.LookForEnd(weather, time.Date(2034, 3, 29, 0, 0, 0, 0, time.UTC), q)
	return o
}

// The holes are 28 days old, past 3 weeks and short of 6; sugar is at 1.6/2.4.
func ExampleLookForEnd() {
	o := exampleEnd()
	for _, s := range o.Signs[:4] {
		fmt.Println(s)
	}
	// Output:
	// warmth: 0 F degree-days, no sign (17 to 34)
	// nights without frost: 3, near (3)
	// age of the holes: 28 days, near (21 to 42)
	// sugar: 67 % of the best, near (70 to 40)
}

// Without past springs the holes alone have a window: 3 to 6 weeks from March 1.
func ExampleEndOutlook() {
	o := exampleEnd()
	fmt.Println(o.State, o.From.Format("January 2"), o.To.Format("January 2"))
	// Output: near March 22 April 12
}

func ExampleEndSign() {
	s := exampleEnd().Signs[season.HoleAge]
	fmt.Println(s.Kind, s.Figure, s.State)
	// Output: age of the holes 28 near
}

func ExampleEndSign_String() {
	fmt.Println(season.EndSign{Kind: season.Warmth})
	// Output: warmth: not known
}

func ExampleEndQuestion() {
	_, err := season.LookForEnd(season.Weather{}, time.Date(2034, 8, 1, 0, 0, 0, 0, time.UTC), season.EndQuestion{Rule: season.Rule{Criterion: season.SapFlowDay()}})
	fmt.Println(err)
	// Output: season.LookForEnd: month 8 is outside 1 to 6: the season's half of the year
}

func ExampleSugarReading() {
	fmt.Println(season.SugarReading{Sugar: 2.1}.Sugar)
	// Output: 2.1 Brix
}

func ExampleRedMapleBloom() {
	first, full := season.RedMapleBloom()
	fmt.Printf("%.0f %.0f\n", first.Fahrenheit(), full.Fahrenheit())
	// Output: 44 75
}

func ExampleEndKinds() {
	fmt.Println(season.EndKinds())
	// Output: [warmth nights without frost age of the holes sugar weeks of syrup]
}

func ExampleEndKind() {
	text, _ := season.SugarFall.MarshalText()
	var k season.EndKind
	err := k.UnmarshalText([]byte("warmth"))
	fmt.Println(string(text), k.String(), err)
	// Output: sugar warmth <nil>
}

func ExampleEndKind_MarshalText() {
	text, err := season.HoleAge.MarshalText()
	fmt.Println(string(text), err)
	// Output: age of the holes <nil>
}

func ExampleEndKind_UnmarshalText() {
	var k season.EndKind
	fmt.Println(k.UnmarshalText([]byte("sugar")), k)
	// Output: <nil> sugar
}

func ExampleEndKind_String() {
	fmt.Println(season.FrostFree.String())
	// Output: nights without frost
}

func ExampleEndStates() {
	fmt.Println(season.EndStates())
	// Output: [not known no sign near come]
}

func ExampleEndState() {
	fmt.Println(season.EndCome > season.EndNear)
	// Output: true
}

func ExampleEndState_MarshalText() {
	text, err := season.NoSign.MarshalText()
	fmt.Println(string(text), err)
	// Output: no sign <nil>
}

func ExampleEndState_UnmarshalText() {
	var s season.EndState
	fmt.Println(s.UnmarshalText([]byte("near")), s)
	// Output: <nil> near
}

func ExampleEndState_String() {
	fmt.Println(season.NotKnown.String())
	// Output: not known
}
