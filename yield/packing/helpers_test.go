package packing_test

import (
	"errors"
	"math"
	"strconv"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
)

func dec(s string) decimal.Decimal { return decimal.RequireFromString(s) }

var inf = math.Inf(1)

var notNum = math.NaN()

// refused checks that an answer is NaN and its error names the function and
// tells the range.
func refused(t *testing.T, what, fn string, got float64, err error) {
	t.Helper()
	var e *units.RangeError
	if !math.IsNaN(got) || !errors.As(err, &e) || !errors.Is(err, units.ErrRange) || e.Func != fn {
		t.Errorf("%s: %v, %v; want NaN and a RangeError of %s", what, got, err, fn)
	}
}

func weights(ws ...string) []money.Contribution {
	out := make([]money.Contribution, len(ws))
	for i, w := range ws {
		out[i] = money.Contribution{Name: strconv.Itoa(i), Weight: dec(w)}
	}
	return out
}

func gallons(v units.Volume) float64 { return v.USGallons() }

func syrupLot(t *testing.T, v units.Volume) sugar.Lot {
	t.Helper()
	l, err := sugar.NewLot(v, 66.9, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	return l
}
