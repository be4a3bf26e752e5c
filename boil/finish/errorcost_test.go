package finish_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/units"
)

// At the end of the range a probe deep in syrup boils under more than 120 kPa:
// half a meter of it adds 6. That is refused and no answer.
func TestDepthCostBeyondRange(t *testing.T) {
	missed, err := finish.DepthCost(66, units.Kilopascals(120), 0.5*units.Meter)
	if !math.IsNaN(float64(missed)) || !errors.Is(err, units.ErrRange) {
		t.Errorf("%v, %v, want it refused", missed, err)
	}
}
