package pan_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// An invented sugarhouse that boils 100 gallons of sap an evening: 43.389 gallons
// take 404,680 Btu. With 150 gallons a day and room for 160, 40 gallons find no
// room on the second day and 50 on the third.
func ExampleBacklog_Plan() {
	b := pan.Backlog{
		Storage: 160 * units.USGallon,
		Hours:   5 * time.Hour,
		Heat:    404680 / 43.389 * 100 / 5 * units.BtuITPerHour,
		Syrup:   66,
		At:      1 * units.Atmosphere,
		Keep:    48 * time.Hour,
	}
	sap := pan.Gathering{Volume: 150 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}
	plan, err := b.Plan(sap, sap, sap)
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, e := range plan.Evenings {
		fmt.Printf("day %d: %.0f h, boil %s, first of day %d; spilled %s, waiting %s\n", i, e.Hours.Hours(),
			e.Boiled.Text(units.USGallon, 0), e.First, e.Spilled.Text(units.USGallon, 0), e.Waiting.Text(units.USGallon, 0))
	}
	fmt.Println("first spill: day", plan.FirstSpill)
	// Output:
	// day 0: 5 h, boil 100 US gal, first of day 0; spilled 0 US gal, waiting 50 US gal
	// day 1: 5 h, boil 100 US gal, first of day 0; spilled 40 US gal, waiting 60 US gal
	// day 2: 5 h, boil 100 US gal, first of day 1; spilled 50 US gal, waiting 60 US gal
	// first spill: day 1
}

func ExampleSpoiling() {
	for _, f := range []float64{35, 45, 55} {
		fmt.Println(f, pan.Spoiling(units.Fahrenheit(f)))
	}
	// Output:
	// 35 slow
	// 45 between slow and fast
	// 55 fast
}

// Three days of 30 gallons that keep for two, and an evening that boils 100: one
// fire, on the last evening, does.
func ExampleBacklog_Fewest() {
	b := pan.Backlog{
		Storage: 160 * units.USGallon,
		Hours:   5 * time.Hour,
		Heat:    404680 / 43.389 * 100 / 5 * units.BtuITPerHour,
		Syrup:   66,
		At:      1 * units.Atmosphere,
		Keep:    48 * time.Hour,
	}
	sap := pan.Gathering{Volume: 30 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}
	plan, err := b.Fewest(nil, []pan.Gathering{sap, sap, sap})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, e := range plan.Evenings {
		fmt.Printf("day %d: %.1f h\n", i, e.Hours.Hours())
	}
	// Output:
	// day 0: 0.0 h
	// day 1: 0.0 h
	// day 2: 4.5 h
}
