package measure_test

import (
	"encoding/json"
	"errors"
	"math"
	"testing"

	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/units"
)

type sugar float64

var sugars = measure.Of[sugar]{Parse: "cellar.ParseSugar", Units: []measure.Symbol{
	{1, "mg/dL", nil}, {18, "mmol/L", []string{"mM"}},
}}

func TestRead(t *testing.T) {
	for text, want := range map[string]float64{
		"20 mg/dL": 20, "20mg/dl": 20, " 2 mmol/L ": 36, "2 mM": 36, "1/2 mg/dL": 0.5, "1 1/2 mmol/L": 27, "-3 mg/dL": -3, "2° mM": 36, "2e1 mg/dL": 20,
	} {
		if got, err := sugars.Read(text); err != nil || math.Abs(float64(got)-want) > 1e-12 {
			t.Errorf("%q: %v, %v, want %v", text, got, err, want)
		}
	}
	for text, want := range map[string]error{
		"": units.ErrSyntax, "mg/dL": units.ErrSyntax, "x mg/dL": units.ErrSyntax, "20": units.ErrNoUnit, "20 %": units.ErrUnit, "20 kg": units.ErrUnit,
		"1,5 mg/dL": units.ErrSyntax, "NaN mg/dL": units.ErrSyntax, "Inf mg/dL": units.ErrSyntax, "1e400 mg/dL": units.ErrRange, "1e308 mmol/L": units.ErrRange,
		"20 % mg/dL": units.ErrUnit, "20 kg mg/dL": units.ErrUnit, "20 mg/dL mg/dL": units.ErrUnit,
	} {
		got, err := sugars.Read(text)
		var e *units.ParseError
		if !errors.As(err, &e) || !errors.Is(err, want) || !math.IsNaN(float64(got)) || e.Func != "cellar.ParseSugar" || e.Input != text || e.Hint == "" {
			t.Errorf("%q: %v, %v, want %v", text, got, err, want)
		}
	}
}

func TestTextBack(t *testing.T) {
	for _, x := range []sugar{0, 1.0 / 3, -7, 1e-300, 1e300} {
		b, err := sugars.Marshal(x)
		back := sugar(9)
		if err == nil {
			err = sugars.Unmarshal(&back, b)
		}
		if err != nil || math.Float64bits(float64(back)) != math.Float64bits(float64(x)) {
			t.Errorf("%v came back as %v: %s, %v", x, back, b, err)
		}
	}
	if b, err := sugars.ToJSON(sugar(math.NaN())); string(b) != "null" || err != nil {
		t.Errorf("NaN: %s, %v", b, err)
	}
	if _, err := sugars.ToJSON(sugar(math.Inf(1))); err == nil {
		t.Error("infinity goes out")
	}
	if s := sugars.String(1.0 / 3); s != "0.333333333333 mg/dL" {
		t.Error(s)
	}
	if s := sugars.Text(-0.01, 1); s != "0.0 mg/dL" {
		t.Error(s)
	}
	q := sugar(7)
	if err := sugars.FromJSON(&q, []byte("null")); err != nil || !math.IsNaN(float64(q)) {
		t.Errorf("null: %v, %v", q, err)
	}
}

// Whatever comes in is refused, or goes out and comes back; on error nothing is
// touched.
func FuzzRead(f *testing.F) {
	for _, s := range []string{"20 mg/dL", `"20 mg/dL"`, "null", `"2 mmol/L"`, "1/2 mM", "{}", `"°mM"`, "K mM"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		q := sugar(7)
		if err := sugars.Unmarshal(&q, b); err != nil && !(q == 7) {
			t.Errorf("%q: %v beside %v", b, q, err)
		}
		q = 7
		if err := sugars.FromJSON(&q, b); err != nil {
			if !(q == 7) {
				t.Errorf("%q: %v beside %v", b, q, err)
			}
			return
		}
		out, err := sugars.ToJSON(q)
		back := sugar(8)
		if err == nil {
			err = json.Unmarshal(out, new(any))
		}
		if err == nil {
			err = sugars.FromJSON(&back, out)
		}
		if err != nil || !(back == q || math.IsNaN(float64(back)) && math.IsNaN(float64(q))) {
			t.Errorf("%q is %v, goes out as %s and is then %v: %v", b, q, out, back, err)
		}
	})
}

// By hand: the last digit is the first of the uncertainty, or the second if the
// first is 1.
func TestPlusMinus(t *testing.T) {
	for _, tc := range []struct {
		x, u float64
		want string
	}{
		{12.34, 0.56, "12.3 +/- 0.6 Brix"}, {66.58, 0.179, "66.58 +/- 0.18 Brix"}, {66.9, 0.33, "66.9 +/- 0.3 Brix"},
		{66.94, 0.96, "66.9 +/- 1.0 Brix"}, {66.94, 0.196, "66.9 +/- 0.2 Brix"}, {1234, 56, "1230 +/- 60 Brix"}, {1250, 140, "1250 +/- 140 Brix"},
		{-0.001, 0.3, "0.0 +/- 0.3 Brix"}, {5, 3, "5 +/- 3 Brix"}, {4.6, 1, "4.6 +/- 1.0 Brix"}, {0, 0, "0 +/- 0 Brix"}, {math.NaN(), 1, "NaN +/- 1 Brix"},
	} {
		if got := measure.PlusMinus(tc.x, tc.u, "Brix"); got != tc.want {
			t.Errorf("%v within %v: %s, want %s", tc.x, tc.u, got, tc.want)
		}
	}
	if got := measure.PlusMinus(0.5, 0.02, ""); got != "0.50 +/- 0.02" {
		t.Error(got)
	}
}
