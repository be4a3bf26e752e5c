package shelf

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/units"
)

// A cubic meter of 66 Brix weighs 1322.662 kg at 20 C and one of 66.9 1328.191
// (ICUMSA): they hold 872.957 and 888.560 kg of sugar. The way back gives the
// strength.
func TestStrength(t *testing.T) {
	for b, want := range map[units.Brix]float64{66: 1322.662 * 0.66, 66.9: 1328.191 * 0.669} {
		s, err := Sugar("f", b)
		if err != nil || math.Abs(s-want) > 0.001 {
			t.Errorf("%v holds %v, want %v, %v", b, s, want, err)
		}
		back, err := Strength("f", "a", want)
		if err != nil || math.Abs(float64(back-b)) > 1e-4 { // 0.001 kg of the print
			t.Errorf("%v kg are %v, want %v, %v", want, back, b, err)
		}
	}
	most, err := Sugar("f", MaxBrix)
	if err != nil {
		t.Fatal(err)
	}
	// A hair beyond the end is the end.
	for sugar, want := range map[float64]units.Brix{0: 0, most: MaxBrix, most * (1 + 5e-12): MaxBrix} {
		if b, err := Strength("f", "a", sugar); err != nil || math.Abs(float64(b-want)) > 1e-9 {
			t.Errorf("%v kg are %v, want %v, %v", sugar, b, want, err)
		}
	}
	for _, sugar := range []float64{-1, most + 1, math.NaN()} {
		b, err := Strength("f", "a", sugar)
		var e *units.RangeError
		if !math.IsNaN(float64(b)) || !errors.As(err, &e) || e.Func != "f" || e.Arg != "a" {
			t.Errorf("%v kg are %v, %v", sugar, b, err)
		}
	}
}

// A refusal names the argument that the caller calls it by, and the function that
// was called; a strength is named as density names it. At 20 C 85 Brix has 1.445388
// times the density of water at 4 C, 999.972 kg/m3 (NBS Circular C440): 1228.6 kg
// of sugar, and by ICUMSA up to 0.5 more. Ten times the sugar of 66 is 8729.57.
func TestRefusalsNamed(t *testing.T) {
	_, tooMuch := Missed("f", "v", -1, 66, 66)
	_, meant := Missed("f", "v", 1, 86, 66)
	_, made := Missed("f", "v", 1, 66, 86)
	_, promise := Promised("f", "v", 1, 0.1, 66)
	_, to := Promised("f", "v", 1, 1, 86)
	_, of := Sugar("f", -1)
	for name, tc := range map[string]struct {
		err  error
		want units.RangeError
	}{
		"volume":   {tooMuch, units.RangeError{Arg: "v", What: "volume", Value: -1, Low: 0, High: 1e6, Unit: "m3", Hint: "a volume is not negative"}},
		"amount":   {Amount("f", "v", 2e6), units.RangeError{Arg: "v", What: "volume", Value: 2e6, Low: 0, High: 1e6, Unit: "m3", Hint: "check its unit: no tank holds that"}},
		"meant":    {meant, units.RangeError{Arg: "brix", Value: 86, Low: 0, High: 85}},
		"made":     {made, units.RangeError{Arg: "brix", Value: 86, Low: 0, High: 85}},
		"promised": {promise, units.RangeError{Arg: "v", What: "sugar in a volume", Value: 8729.57, Low: 0, High: 1228.6, Unit: "kg/m3", Hint: "beyond 85 Brix it sets as candy"}},
		"to":       {to, units.RangeError{Arg: "brix", Value: 86, Low: 0, High: 85}},
		"of":       {of, units.RangeError{Arg: "brix", Value: -1, Low: 0, High: 85}},
	} {
		var e *units.RangeError
		if !errors.As(tc.err, &e) {
			t.Errorf("%s: %v", name, tc.err)
			continue
		}
		w := tc.want
		if e.Func != "f" || e.Arg != w.Arg || w.What != "" && (e.What != w.What || e.Unit != w.Unit || e.Hint != w.Hint) ||
			math.Abs(e.Value-w.Value) > 0.01 || math.Abs(e.Low-w.Low) > 1e-9 || math.Abs(e.High-w.High) > 1 {
			t.Errorf("%s: %+v, want %+v", name, *e, w)
		}
	}
}

// Sugar is kept: 872.957 liters of 66.9 hold that of 888.560 of 66.
func TestMissed(t *testing.T) {
	m, err := Missed("f", "v", 872.957*units.Liter, 66.9, 66)
	if err != nil || math.Abs(float64(m.Brix)+0.9) > 1e-9 || math.Abs(m.Syrup.Liters()-(888.560-872.957)) > 0.002 {
		t.Errorf("%v, %v", m, err)
	}
	m, err = Promised("f", "v", 872.957*units.Liter, 888.560*units.Liter, 66.9)
	if err != nil || math.Abs(float64(m.Brix)+0.9) > 2e-4 || math.Abs(m.Syrup.Liters()-(888.560-872.957)) > 1e-9 {
		t.Errorf("boiled down to 888.560 L it is %v, %v", m, err)
	}
	if m, err := Promised("f", "v", 0, 0, 66); err != nil || m != (units.Miss{}) {
		t.Errorf("of nothing: %v, %v", m, err)
	}
	for name, ask := range map[string]func() (units.Miss, error){
		"a volume under none":  func() (units.Miss, error) { return Missed("f", "v", -1, 66, 66) },
		"a strength too much":  func() (units.Miss, error) { return Missed("f", "v", 1, 86, 66) },
		"a strength made":      func() (units.Miss, error) { return Missed("f", "v", 1, 66, 86) },
		"a promise too small":  func() (units.Miss, error) { return Promised("f", "v", 1, 0.1, 66) },
		"a promise of no Brix": func() (units.Miss, error) { return Promised("f", "v", 1, 1, 86) },
	} {
		m, err := ask()
		var e *units.RangeError
		if !math.IsNaN(float64(m.Brix)) || !math.IsNaN(float64(m.Syrup)) || !errors.As(err, &e) || e.Func != "f" {
			t.Errorf("%s: %v, %v", name, m, err)
		}
	}
	if Amount("f", "v", units.Liter) != nil || Amount("f", "v", 2e6) == nil {
		t.Error("the amounts that pass are others")
	}
}
