package season

import (
	"time"

	"example.org/sapreckoner/units"
)

// GoodRun returns the sap of one tap on a day that a producer of Minnesota, with
// nearly 1000 taps, calls a pretty good run: 1 US gal.
func GoodRun() units.Volume { return 1 * units.USGallon }

// LargestRun returns the sap of one tap in the largest run of 25 years at the
// place of [GoodRun], within 20 hours: 2.2 to 2.5 US gal. How it was collected
// is not told.
func LargestRun() (low, high units.Volume) { return 2.2 * units.USGallon, 2.5 * units.USGallon }

// RunHours is when the sap of a day begins and ends to run, as times after
// midnight: means of 19 sugarbushes on tubing in Quebec.
type RunHours struct{ BeginsFrom, BeginsTo, EndsFrom, EndsTo time.Duration }

// UsualHours returns 10 to 11 in the morning and 18 to 20 in the evening. The air
// was mostly between -2 and 2 C at both. Through the season the run begins
// earlier and lasts longer.
//
// Source: Kurokawa and others 2022, Daily timings of sap production in sugar
// maple in Quebec, International Journal of Biometeorology, abstract.
func UsualHours() RunHours {
	return RunHours{10 * time.Hour, 11 * time.Hour, 18 * time.Hour, 20 * time.Hour}
}
