package boil_test

import (
	"errors"
	"testing"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// Each part of a refusal stands in its own place.
func TestLevelRateRefusal(t *testing.T) {
	at := func(minutes int, inches float64) boil.LevelReading {
		return boil.LevelReading{At: time.Duration(minutes) * time.Minute, Level: units.Inches(inches)}
	}
	for _, tc := range []struct {
		area      units.Area
		readings  []boil.LevelReading
		arg, what string
		unit      string
	}{
		{0, nil, "area", "area of the pan", "m2"},
		{1, []boil.LevelReading{at(10, 2), at(5, 1)}, "readings[1].At", "time of a reading", "s"},
		{1, []boil.LevelReading{at(10, 2)}, "readings", "readings after the cold start", ""},
	} {
		_, err := boil.LevelRate(tc.area, 0, tc.readings...)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != tc.arg || e.Unit != tc.unit || e.Hint == "" || e.What != tc.what {
			t.Errorf("%v of %v: %+v, want %s, %s in %q", tc.readings, tc.area, err, tc.arg, tc.what, tc.unit)
		}
	}
}
