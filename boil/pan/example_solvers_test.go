package pan_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/units"
)

// Sap of the day before stands in the tanks: 100 gallons are boiled in an evening,
// see [pan.Backlog.Plan], the old first, and what came today waits.
func ExampleBacklog_PlanFrom() {
	b := pan.Backlog{
		Storage: 300 * units.USGallon,
		Hours:   5 * time.Hour,
		Heat:    404680 / 43.389 * 100 / 5 * units.BtuITPerHour,
		Syrup:   66,
		At:      units.Atmosphere,
		Keep:    24 * time.Hour,
	}
	sap := pan.Gathering{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}
	plan, err := b.PlanFrom([]pan.Standing{{Gathering: sap, Age: 24 * time.Hour}}, sap, pan.Gathering{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, e := range plan.Evenings {
		fmt.Printf("day %d: boil %s, waiting %s\n", i, e.Boiled.Text(units.USGallon, 0), e.Waiting.Text(units.USGallon, 0))
	}
	// Output:
	// day 0: boil 100 US gal, waiting 100 US gal
	// day 1: boil 100 US gal, waiting 0 US gal
}

func ExampleStanding() {
	s := pan.Standing{Gathering: pan.Gathering{Volume: 100 * units.USGallon, Brix: 2, Temperature: units.Fahrenheit(40)}, Age: 36 * time.Hour}
	fmt.Println(s.Volume.Text(units.USGallon, 0), "for", s.Age.Hours(), "hours")
	// Output: 100 US gal for 36 hours
}
