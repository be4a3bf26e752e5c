package measure_test

import (
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/units"
)

// A refusal says what came in, why it is refused and the way out: the units that
// there are, what package units says of the number, or the form.
func TestRefusals(t *testing.T) {
	const ours = "cellar.ParseSugar"
	_, wrong := units.ParseShare("1,5 %")
	var number *units.ParseError
	if !errors.As(wrong, &number) {
		t.Fatal(wrong)
	}
	read := func(s string) error { _, err := sugars.Read(s); return err }
	out := func(x float64) error {
		b, err := sugars.Marshal(sugar(x))
		if b != nil {
			t.Errorf("%v goes out as %s", x, b)
		}
		return err
	}
	json := func(s string) error { q := sugar(7); return sugars.FromJSON(&q, []byte(s)) }
	for _, tc := range []struct {
		err  error
		want units.ParseError
	}{
		{read("20"), units.ParseError{Input: "20", Err: units.ErrNoUnit, Hint: "write the unit behind the number, one of: mg/dL, mmol/L"}},
		{read("20 kg"), units.ParseError{Input: "20 kg", Err: units.ErrUnit, Hint: "use one of: mg/dL, mmol/L"}},
		{read("20 %"), units.ParseError{Input: "20 %", Err: units.ErrUnit, Hint: "use one of: mg/dL, mmol/L"}},
		{read("20 kg mg/dL"), units.ParseError{Input: "20 kg mg/dL", Err: units.ErrUnit, Hint: "use one of: mg/dL, mmol/L"}},
		{read("-1e308 mmol/L"), units.ParseError{Input: "-1e308 mmol/L", Err: units.ErrRange, Hint: "the number is too large"}},
		{read("1,5 mg/dL"), units.ParseError{Input: "1,5 mg/dL", Err: units.ErrSyntax, Hint: number.Hint}},
		{read("1,5"), units.ParseError{Input: "1,5", Err: units.ErrSyntax, Hint: number.Hint}},
		{read("1e308 mmol/L"), units.ParseError{Input: "1e308 mmol/L", Err: units.ErrRange, Hint: "the number is too large"}},
		{out(math.Inf(1)), units.ParseError{Input: "+Inf", Err: units.ErrRange, Hint: "only finite quantities can be written"}},
		{out(math.Inf(-1)), units.ParseError{Input: "-Inf", Err: units.ErrRange, Hint: "only finite quantities can be written"}},
		{out(math.NaN()), units.ParseError{Input: "NaN", Err: units.ErrRange, Hint: "only finite quantities can be written"}},
		{json("20"), units.ParseError{Input: "20", Err: units.ErrNoUnit, Hint: "write a text with its unit, in quotes, or null for what is not known"}},
		{json(`"20"`), units.ParseError{Input: "20", Err: units.ErrNoUnit, Hint: "write the unit behind the number, one of: mg/dL, mmol/L"}},
	} {
		tc.want.Func = ours
		var e *units.ParseError
		if !errors.As(tc.err, &e) || *e != tc.want {
			t.Errorf("%s: %+v, want %+v", tc.want.Input, tc.err, tc.want)
		}
	}
}

// A minus before nothing is not written, and JSON is the text in quotes.
func TestNoMinusNothing(t *testing.T) {
	if s := sugars.String(sugar(math.Copysign(0, -1))); s != "0 mg/dL" {
		t.Error(s)
	}
	if b, err := sugars.ToJSON(36); string(b) != `"36 mg/dL"` || err != nil {
		t.Errorf("%s, %v", b, err)
	}
	if s := sugars.Text(2.5, 2); s != "2.50 mg/dL" {
		t.Error(s)
	}
}

// Both systems put the metric text in parentheses, each alone gives its own.
func TestEither(t *testing.T) {
	for in, want := range map[units.System]string{units.US: "1 gal", units.Metric: "4 L", units.Both: "1 gal (4 L)"} {
		if got := measure.Either(in, "1 gal", "4 L"); got != want {
			t.Errorf("%v: %s, want %s", in, got, want)
		}
	}
}

// At the edges of the rule, by hand: an uncertainty of just 2 keeps one digit;
// one of 30 of 45 rounds both to tens; a sign of the uncertainty says nothing;
// what has no digit to leave is told as it is, with the unit behind it; no text
// has more than 12 decimals.
func TestPlusMinusEdges(t *testing.T) {
	inf := math.Inf(1)
	for _, tc := range []struct {
		x, u float64
		want string
	}{
		{12.34, 0.2, "12.3 +/- 0.2 Brix"}, {12.34, -0.2, "12.3 +/- 0.2 Brix"}, {45, 30, "50 +/- 30 Brix"}, {7.6, 2, "8 +/- 2 Brix"},
		{1234, 96, "1230 +/- 100 Brix"}, {inf, 1, "+Inf +/- 1 Brix"}, {-inf, 1, "-Inf +/- 1 Brix"}, {1, inf, "1 +/- +Inf Brix"}, {1, -inf, "1 +/- -Inf Brix"},
		{66.94, 0.186, "66.94 +/- 0.19 Brix"}, {1234, 225, "1200 +/- 200 Brix"}, {12.3456, 0, "12.35 +/- 0 Brix"}, {math.NaN(), 1.234, "NaN +/- 1.2 Brix"},
		{1, math.NaN(), "1 +/- NaN Brix"}, {12.34, 0, "12.34 +/- 0 Brix"},
		{1, 3e-12, "1.000000000000 +/- 0.000000000003 Brix"}, {1, 3e-15, "1.000000000000 +/- 0.000000000000 Brix"},
		{1, math.SmallestNonzeroFloat64, "1.000000000000 +/- 0.000000000000 Brix"},
		{-0.3, 30, "0 +/- 30 Brix"}, {-2.5, 0.4, "-2.5 +/- 0.4 Brix"},
	} {
		if got := measure.PlusMinus(tc.x, tc.u, "Brix"); got != tc.want {
			t.Errorf("%v within %v: %s, want %s", tc.x, tc.u, got, tc.want)
		}
	}
}
