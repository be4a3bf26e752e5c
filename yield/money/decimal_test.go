package money

import (
	"math"
	"testing"
)

// What is no number makes no amount of money, and no panic.
func TestToDecimal(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if d := toDecimal(x, 2); !d.IsZero() {
			t.Errorf("%v became %v", x, d)
		}
	}
	// Halves go away from zero.
	for x, want := range map[float64]string{2.375: "2.38", -2.375: "-2.38", 2.374: "2.37"} {
		if d := toDecimal(x, 2); d.String() != want {
			t.Errorf("%v became %v, want %s", x, d, want)
		}
	}
}
