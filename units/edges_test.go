package units_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// A radian is the angle whose arc is as long as its radius.
func TestArc(t *testing.T) {
	if got := units.Angle(0.5).Arc(3 * units.Meter); math.Abs(float64(got)-1.5) > 1e-15 {
		t.Errorf("half a radian of 3 m: %v", got)
	}
}

func TestPowerIn(t *testing.T) {
	if got := (1500 * units.Watt).In(units.Kilowatt); math.Abs(got-1.5) > 1e-15 {
		t.Errorf("1500 W are %v kW", got)
	}
}

// A message repeats 48 bytes of a bad text whole, and of a longer one no more.
func TestQuotedText(t *testing.T) {
	for n, cut := range map[int]bool{47: false, 48: false, 49: true} {
		text := strings.Repeat("x", n)
		_, err := units.ParseLength(text)
		want := `"` + text + `"`
		if cut {
			want = `"` + text[:48] + `..."`
		}
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%d bytes: %v", n, err)
		}
	}
}

// Fractions with the first and the last digit above and below the bar.
func TestFractionDigits(t *testing.T) {
	for text, inches := range map[string]float64{
		"1 1/10 in": 1.1, "1 9/19 in": 1 + 9.0/19, "90 9/10 in": 90.9, "3 10/19 in": 3 + 10.0/19, "1 90/100 in": 1.9, "9/16 in": 0.5625,
	} {
		if got, err := units.ParseLength(text); err != nil || math.Abs(got.Inches()-inches) > 1e-13 {
			t.Errorf("%s: %v in, %v", text, got.Inches(), err)
		}
	}
}

// Text that ends in the middle of a number is an error like another.
func TestCutShort(t *testing.T) {
	for _, text := range []string{"", "1", "1.", "+", "-", ".", "1e", "1e+", "1e5", "1 1", "1/", "1/1", "1 7/", "1 7/1", "1 7/16", "7/16"} {
		_, err := units.ParseLength(text)
		var e *units.ParseError
		if !errors.As(err, &e) || e.Hint == "" {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// A whole number over one is a fraction too, and a negative number can be too
// large.
func TestParseAtItsEdges(t *testing.T) {
	if l, err := units.ParseLength("7/1 in"); err != nil || math.Abs(l.Inches()-7) > 1e-12 {
		t.Errorf("7/1 in: %v, %v", l, err)
	}
	for _, s := range []string{"1e308 mi", "-1e308 mi"} {
		if l, err := units.ParseLength(s); !errors.Is(err, units.ErrRange) || !math.IsNaN(float64(l)) {
			t.Errorf("%s: %v, %v", s, l, err)
		}
	}
}
