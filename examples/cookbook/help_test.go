package cookbook_test

import (
	"time"

	"example.org/sapreckoner/boil/fuel"
)

// must ends the program where the library refuses to answer.
func must[T any](answer T, err error) T {
	if err != nil {
		panic(err)
	}
	return answer
}

// clock is a time of the day, rounded down to 5 minutes.
func clock(d time.Duration) string {
	return time.Time{}.Add(d.Truncate(5 * time.Minute)).Format("15:04")
}

// sugarMaple is a row of the table of the University of Kentucky.
func sugarMaple() fuel.Firewood {
	for _, wood := range fuel.FirewoodKentucky() {
		if wood.Species == "Sugar maple" {
			return wood
		}
	}
	panic("no sugar maple")
}
