package cli_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// A person reads a range in US customary and metric units, in numbers that can
// be told apart.
func TestReason(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		err  units.RangeError
		want string
	}{
		{units.RangeError{Func: "boil.Heat", Arg: "temperature", Value: 40.0 / 9, Low: 20, High: 105, Unit: "C", Hint: "warm it"},
			"temperature 40 F (4.4 C) is outside 68 to 221 F (20 to 105 C): warm it"},
		{units.RangeError{Func: "sugar.Lot.At", Arg: "temperature", Value: 1840.0 / 9, Low: 0, High: 110, Unit: "C"},
			"temperature 400 F (204.4 C) is outside 32 to 230 F (0 to 110 C)"},
		// Neither of them may read as if it were the limit.
		{units.RangeError{Arg: "temperature", Value: 110.0004, Low: 0, High: 110, Unit: "C"},
			"temperature 230.0007 F (110.0004 C) is outside 32 to 230 F (0 to 110 C)"},
		{units.RangeError{Arg: "strength", Value: 39.99999, Low: 40, High: 80, Unit: "Brix"},
			"strength 39.99999 Brix is outside 40 to 80 Brix"},
		{units.RangeError{Func: "money.Jars", Arg: "Container.Label", What: "label", Value: 0, Low: 1e-6, High: 0.25, Unit: "m3"},
			"label 0 US fl oz (0 mL) is outside 0.03382 US fl oz (1 mL) to 66.04 US gal (250 L)"},
		{units.RangeError{Arg: "Habits.PeakPerTap", What: "peak per tap", Value: 0.05, Low: 0.1, High: 20, Unit: "US gal"},
			"peak per tap 6.4 US fl oz (189.3 mL) is outside 12.8 US fl oz (378.6 mL) to 20 US gal (75.7 L)"},
		{units.RangeError{Arg: "volume", Value: -143.84565, Low: 0.001, High: 1e6, Unit: "L"},
			"volume -38 US gal (-143.8 L) is outside 0.03382 US fl oz (1 mL) to 264100 US gal (1000000 L)"},
		{units.RangeError{Arg: "depth", Value: 3, Low: 0, High: 2, Unit: "m"},
			"depth 118.1 in (300 cm) is outside 0 to 78.74 in (0 to 200 cm)"},
		{units.RangeError{Arg: "rise", Value: 20, Low: 0, High: 10, Unit: "C deg"},
			"rise 36 F deg (20 C deg) is outside 0 to 18 F deg (0 to 10 C deg)"},
		{units.RangeError{Arg: "altimeter setting", Value: 20, Low: 25, High: 32.5, Unit: "inHg"},
			"altimeter setting 20 inHg (67.73 kPa) is outside 25 to 32.5 inHg (84.66 to 110 kPa)"},
		{units.RangeError{Arg: "count", Value: 0.5, Low: 1, High: 9}, "count 0.5 is outside 1 to 9"},
		// Open ends, ranges without an end, and no number at all.
		{units.RangeError{Arg: "weight", Value: 0, Low: 0, High: 1, Unit: "kg"},
			"weight must be more than 0 oz (0 g) and at most 2.204 lb (1 kg)"},
		{units.RangeError{Arg: "share", Value: 1, Low: 0, High: 1}, "share must be less than 1 and at least 0"},
		{units.RangeError{Arg: "water", Value: 0, Low: 0, High: math.MaxFloat64, Unit: "kg"}, "water must be more than 0 oz (0 g)"},
		{units.RangeError{Arg: "stops", Value: 0, Low: 1, High: math.MaxInt32}, "stops 0 is less than 1"},
		{units.RangeError{Arg: "volume", Value: math.NaN(), Low: 0, High: 1, Unit: "m3"},
			"volume is not a number; it must lie in 0 to 264.1 US gal (0 to 1000 L)"},
		{units.RangeError{Arg: "volume", Value: inf, Low: 0, High: 1, Unit: "m3"},
			"volume +Inf US gal (+Inf L) is outside 0 to 264.1 US gal (0 to 1000 L)"},
		{units.RangeError{Arg: "volume", Value: 1e300, Low: 0, High: 1, Unit: "m3"},
			"volume 2.642e+302 US gal (1e+303 L) is outside 0 to 264.1 US gal (0 to 1000 L)"},
	} {
		if got := cli.Reason(&c.err); got != c.want {
			t.Errorf("%v\n got %s\nwant %s", &c.err, got, c.want)
		}
		// Words around it stay, and a flag is named once.
		around := cli.For("bottle", fmt.Errorf("line 3: %w", &c.err))
		if got := cli.Reason(around); got != "-bottle: line 3: "+c.want {
			t.Errorf("around it: %s", got)
		}
	}
}

// No number may read as the limit that it passed, in either system.
func TestReasonTells(t *testing.T) {
	for _, unit := range []string{"C", "C deg", "m3", "L", "kg", "m", "in", "kPa", "bar", "kg/m3", "Brix", "%", ""} {
		for _, off := range []float64{1e-3, 1e-6, 1e-8} {
			e := &units.RangeError{Arg: "x", Value: 7 + off, Low: 3, High: 7, Unit: unit}
			value, limits, _ := strings.Cut(strings.NewReplacer("(", "", ")", "").Replace(cli.Reason(e)), " is outside ")
			for _, number := range strings.Fields(value) {
				if strings.Contains(limits+" ", " to "+number+" ") {
					t.Errorf("%s: %s", unit, cli.Reason(e))
				}
			}
		}
	}
}
