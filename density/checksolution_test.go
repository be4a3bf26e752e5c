package density_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func TestCheckSolutionLimits(t *testing.T) {
	for arg, q := range map[string]struct {
		total units.Mass
		brix  units.Brix
	}{"total": {9 * units.Gram, 66}, "brix": {units.Kilogram, 70.1}} {
		var e *units.RangeError
		if c, err := density.NewCheckSolution(q.total, q.brix); !errors.As(err, &e) || e.Arg != arg || c != (density.CheckSolution{}) {
			t.Errorf("%s: %v, %v", arg, c, err)
		}
	}
	for _, b := range []units.Brix{0, 70} {
		c, err := density.NewCheckSolution(100*units.Kilogram, b)
		if err != nil {
			t.Fatal(err)
		}
		if got, err := c.Brix(0); err != nil || math.Abs(float64(got-b)) > 1e-12 {
			t.Errorf("nothing lost of %v: %v, %v", b, got, err)
		}
	}
	// Of 669 g and 331 g, 213 g of water leave 669/787 = 85.0 Brix, which is the end.
	c := density.CheckSolution{Sugar: 669 * units.Gram, Water: 331 * units.Gram}
	for lost, ok := range map[float64]bool{0: true, 5: true, 211: true, 214: false, -1: false, math.NaN(): false} {
		if b, err := c.Brix(units.Grams(lost)); ok != (err == nil) || !ok && !math.IsNaN(float64(b)) {
			t.Errorf("%v g lost: %v, %v", lost, b, err)
		}
	}
	if _, err := (density.CheckSolution{Sugar: 1}).Brix(0); err == nil {
		t.Error("sugar alone is a solution")
	}
}
