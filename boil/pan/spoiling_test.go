package pan

import (
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

func TestSpoiling(t *testing.T) {
	for _, tc := range []struct {
		f    float64
		want Growth
	}{{39.9, GrowthSlow}, {40, GrowthBetween}, {40.1, GrowthBetween}, {49.9, GrowthBetween}, {50, GrowthBetween}, {50.1, GrowthFast}, {math.NaN(), GrowthUnknown}, {math.Inf(1), GrowthFast}, {math.Inf(-1), GrowthSlow}} {
		if got := Spoiling(units.Fahrenheit(tc.f)); got != tc.want {
			t.Errorf("%v F: %v, want %v", tc.f, got, tc.want)
		}
	}
	if Growth(9).String() != "Growth(9)" {
		t.Error("a growth without a name")
	}
}
