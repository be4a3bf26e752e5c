package finish_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// 0.2 Brix of the reading are 20 lb x 0.2/66.9, 0.06 lb, of the weight.
func ExamplePotTarget_Text() {
	pot := finish.PotReading{Gross: 25 * units.Pound, Tare: 5 * units.Pound, Brix: 33.45, BrixBy: 0.2}
	done, err := pot.Target(66.9)
	fmt.Println(done.Text(units.US), err)
	// Output: 15.00 +/- 0.06 lb <nil>
}

// 0.5 F are 0.28 C, and 0.2 F are 0.11.
func ExampleOffset_Text() {
	own := finish.Offset{Mean: 0.5 * units.FahrenheitDegree, Spread: 0.2 * units.FahrenheitDegree, Stops: 5}
	fmt.Println(own.Text(units.US))
	fmt.Println(own.Text(units.Metric))
	// Output:
	// 0.5 +/- 0.2 F deg
	// 0.28 +/- 0.11 C deg
}

// An invented outlook: each figure ends where its uncertainty begins.
func ExampleOutlook_String() {
	out := finish.Outlook{Now: 61.234, NowBy: 0.42, PerMinute: 0.7131, PerMinuteBy: 0.052, Left: 460 * time.Second, LeftBy: time.Minute, Climbs: true}
	fmt.Println(out)
	// Output: 61.2 +/- 0.4 Brix, 0.71 +/- 0.05 Brix a minute, 7.7 +/- 1.0 min left
}
