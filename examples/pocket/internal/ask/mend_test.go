package ask

import (
	"fmt"
	"testing"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// What the page says of pouring is what package packing has from its sources: in
// Fahrenheit to the digit, in Celsius no end outside.
func TestPours(t *testing.T) {
	var least, most, capped [2]float64
	if _, err := fmt.Sscanf(pours, "Pour at %f to %f F (%f to %f C), never above, so that it is still %f F (%f C)",
		&least[0], &most[0], &least[1], &most[1], &capped[0], &capped[1]); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name  string
		said  [2]float64
		limit units.Temperature
		sign  float64
	}{
		{"least", least, packing.PourLeast(), 1}, {"most", most, packing.PourMost(), -1}, {"capped", capped, packing.CappingLeast(), 1},
	} {
		if inside := c.sign * (c.said[1] - c.limit.Celsius()); !(inside >= -1e-9 && inside < 1) {
			t.Errorf("%s: %g C, the limit is %v", c.name, c.said[1], c.limit)
		}
		if off := c.said[0] - c.limit.Fahrenheit(); !(off < 1e-9 && off > -1e-9) {
			t.Errorf("%s: %g F, the limit is %v", c.name, c.said[0], c.limit)
		}
	}
}
