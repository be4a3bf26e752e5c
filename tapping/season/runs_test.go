package season_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// The air passes freezing on the way from the low at 6:00 to the high at 15:00: at
// once from a low of 32 F, at half the way at 10:30, never below.
func TestThaws(t *testing.T) {
	for _, c := range []struct {
		low, high float64 // F
		want      time.Duration
	}{{32, 50, 6 * time.Hour}, {40, 50, 6 * time.Hour}, {22, 42, 10*time.Hour + 30*time.Minute}, {20, 32, -1}, {0, 20, -1}, {math.NaN(), 40, -1}, {20, math.NaN(), -1}, {math.Inf(-1), 40, -1}, {20, math.Inf(1), -1}} {
		got, ok := season.Day{Min: units.Fahrenheit(c.low), Max: units.Fahrenheit(c.high)}.Thaws()
		if ok != (c.want >= 0) || ok && (got-c.want).Abs() > time.Second {
			t.Errorf("%v to %v F: %v %v, want %v", c.low, c.high, got, ok, c.want)
		}
	}
}
