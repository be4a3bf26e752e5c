package cli

import (
	"math"
	"testing"

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
