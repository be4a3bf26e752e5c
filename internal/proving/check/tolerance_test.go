package check

import (
	"math"
	"testing"
)

// near compares with a share of 1e-15, a few units in the last place.
func near(got, want float64) bool { return math.Abs(got-want) <= 1e-15*math.Abs(want) }

func TestHalfDigit(t *testing.T) {
	for _, tt := range []struct {
		printed string
		want    float64
	}{
		{"1.0", 0.05},
		{"0.353658941e-2", 0.5e-11},
		{"0.263889776e1", 0.5e-8},
		{"+0.39", 0.005},
		{"-0.5100", 0.00005},
		{"60", 0.5},
		{"25E-6", 0.5e-6},
		{"7.", 0.5},
	} {
		if got, err := HalfDigit(tt.printed); err != nil || !near(got, tt.want) {
			t.Errorf("HalfDigit(%q) = %v, %v, want %v", tt.printed, got, err, tt.want)
		}
	}
	for _, printed := range []string{"", "about 5", "1,000", "0x1p-2"} {
		if got, err := HalfDigit(printed); err == nil {
			t.Errorf("HalfDigit(%q) = %v without an error", printed, got)
		}
	}
}

func TestParseTolerance(t *testing.T) {
	for _, tt := range []struct {
		text string
		want float64 // of the figure 200, printed "200.0"
	}{
		{"half-digit", 0.05},
		{"half-digit + 0.006", 0.056},
		{"0.006 + half-digit", 0.056},
		{"3", 3},
		{"0", 0},
		{"0.5%", 1},
		{"half-digit + 0.5% + 0.1", 1.15},
		{"1e-3", 0.001},
	} {
		tol, err := ParseTolerance(tt.text)
		if err != nil {
			t.Errorf("ParseTolerance(%q): %v", tt.text, err)
			continue
		}
		for _, figure := range []struct {
			want    float64
			printed string
		}{{200, "200.0"}, {-200, "-200.0"}} {
			got, err := tol.of(figure.want, figure.printed)
			if err != nil || !near(got, tt.want) {
				t.Errorf("%q of %s is %v, %v, want %v", tt.text, figure.printed, got, err, tt.want)
			}
		}
		if tol.String() != tt.text {
			t.Errorf("%q prints as %q", tt.text, tol)
		}
	}
	for _, text := range []string{"", "NaN", "+Inf", "-1", "half-digit + ", "half-digit half-digit", "half-digit + half-digit", "a bit", "NaN%", "-2%", "1e999"} {
		if tol, err := ParseTolerance(text); err == nil {
			t.Errorf("ParseTolerance(%q) = %+v without an error", text, tol)
		}
	}
}
