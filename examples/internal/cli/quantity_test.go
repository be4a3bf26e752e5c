package cli

import (
	"bytes"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// A page claims no more digits than a quantity has.
func TestSignificant(t *testing.T) {
	for _, c := range []struct {
		x    float64
		n    int
		want string
	}{
		{0, 4, "0"}, {60, 4, "60"}, {2.14890962, 4, "2.149"}, {9999.6, 4, "10000"},
		{841602.175, 4, "841600"}, {-841652.175, 4, "-841700"}, {378541, 2, "380000"},
		{0.0812357, 2, "0.081"}, {0.2166, 2, "0.22"}, {851.35, 2, "850"}, {0.097, 2, "0.097"},
		{1e-9, 4, "0"}, {-1e-9, 4, "0"}, {math.Copysign(0, -1), 4, "0"}, {math.Inf(1), 4, "+Inf"},
	} {
		if got := significant(c.x, c.n); got != c.want {
			t.Errorf("significant(%v, %d) = %s, want %s", c.x, c.n, got, c.want)
		}
	}
}

// A cubic inch is 16.387064 mL (SP 811).
func TestTinyVolume(t *testing.T) {
	v := TinyVolume(16.387064 * units.Milliliter)
	for metric, want := range map[bool]string{false: "1 in3", true: "16.39 mL"} {
		if got := (&Sheet{Metric: metric}).In(v); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

func TestRough(t *testing.T) {
	s := Sheet{}
	v := Between(Rough(Wood(0.0812357*units.Cord)), Rough(Wood(0.2166286*units.Cord)))
	if got, want := s.In(v), "0.081 to 0.22 cord"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	s.Metric = true
	if got, want := s.In(v), "0.29 to 0.79 m3"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got, want := s.In(Rough(Mass(units.Mass(math.NaN())))), "-"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// A page names a day by its weekday; a program that reads JSON needs the year.
func TestDate(t *testing.T) {
	s := Sheet{}
	v := Date(time.Date(2024, time.February, 29, 0, 0, 0, 0, time.UTC)) // a Thursday
	if got, want := s.In(v), "Thu Feb 29"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	s.Part("p", "P").Row("day", "Day", v)
	e := &Env{Out: new(bytes.Buffer)}
	if err := s.JSON(e); err != nil || !strings.Contains(e.Out.String(), `"day": "2024-02-29"`) {
		t.Errorf("%v: %s", err, e.Out)
	}
}

// 34 F degree-days are 18.9 C degree-days: a degree F is 5/9 of a degree C.
func TestDegreeDays(t *testing.T) {
	s := Sheet{}
	v := DegreeDays(units.FahrenheitDegrees(34))
	if got, want := s.In(v), "34.0 F degree-days"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	s.Metric = true
	if got, want := s.In(v), "18.9 C degree-days"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := s.In(DegreeDays(units.TempDiff(math.NaN()))); got != "-" {
		t.Errorf("unknown: %s", got)
	}
}

// No more digits are shown than the limits leave, in each system of units.
func TestKnown(t *testing.T) {
	for _, c := range []struct {
		v, limits  units.Mass
		us, metric string
	}{
		{6.124 * units.Pound, 6.824 * units.Pound, "6.1 lb", "2.8 kg"},
		{123.456 * units.Pound, 6.824 * units.Pound, "123.5 lb", "56 kg"},
		{1234.56 * units.Pound, 123 * units.Pound, "1230 lb", "560 kg"},
		{-0.4 * units.Pound, 6.824 * units.Pound, "-0.4 lb", "-0.2 kg"},
		{0.001 * units.Pound, 6.824 * units.Pound, "0 lb", "0 kg"},
		{0, 6.824 * units.Pound, "0 lb", "0 kg"},
		{6.124 * units.Pound, 0, "6.124 lb", "2.778 kg"},
		{units.Mass(math.NaN()), units.Pound, "-", "-"},
		{units.Pound, units.Mass(math.NaN()), "1 lb", "0.4536 kg"},
	} {
		for _, s := range []struct {
			Sheet
			want string
		}{{Sheet{}, c.us}, {Sheet{Metric: true}, c.metric}} {
			if got := s.In(Known(Mass(c.v), Mass(c.limits))); got != s.want {
				t.Errorf("%v known to %v: %s, want %s", c.v, c.limits, got, s.want)
			}
		}
	}
}

func TestDegrees(t *testing.T) {
	if got := (&Sheet{}).Degrees(units.Celsius(20)); got != "68 F" {
		t.Error(got)
	}
	if got := (&Sheet{Metric: true}).Degrees(units.Celsius(20)); got != "20 C" {
		t.Error(got)
	}
}

// Money keeps all its digits in JSON, where other numbers have nine.
func TestAmount(t *testing.T) {
	e := &Env{Out: new(bytes.Buffer)}
	s := Sheet{Title: "t"}
	s.Part("p", "P").Row("due", "Due", Amount("1234567890123.05"))
	if err := s.JSON(e); err != nil || !strings.Contains(e.Out.String(), `"due": 1234567890123.05`) {
		t.Errorf("%s, %v", e.Out, err)
	}
}
