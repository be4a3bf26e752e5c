package season

import (
	"math"
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

// Between these hours the air is taken to warm from the low of a night to the high of the
// day.
const (
	coldest = 6 * time.Hour
	warmest = 15 * time.Hour
)

// Thaws returns when the air passes freezing on its way from the low at 6:00 to the high at
// 15:00, as time after midnight, and whether it does. The way is half a wave: it is coldest
// about sunrise and warmest in mid-afternoon (common practice).
//
// A day whose low is not under freezing thaws at 6:00; one with a figure that is not known,
// or outside -95 to 60 C, does not. Uncertainty: an hour and more by clouds, wind and sun.
// Check value: 10:30 where low and high lie as far from freezing.
func (d Day) Thaws() (after time.Duration, ok bool) {
	low, high := d.Min.Celsius(), d.Max.Celsius()
	switch {
	case !(low >= -95 && high > 0 && high <= 60):
		return 0, false
	case low >= 0:
		return coldest, true
	}
	part := math.Acos(1-2*(-low)/(high-low)) / math.Pi
	return coldest + time.Duration(part*float64(warmest-coldest)), true
}
