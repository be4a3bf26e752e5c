package object_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

func TestRead(t *testing.T) {
	type tank struct {
		Volume units.Volume `json:"volume"`
	}
	for text, want := range map[string]string{
		`{"volume":"2 L"}`: "", ` {"volume":"2 L"} `: "", `{}`: "", `{"volume":null}`: "",
		`null`: "braces", ``: "braces", `[]`: "braces", `"2 L"`: "braces", `2`: "braces",
		`{"volume":"2 L"`: "unexpected", `{"volume":"2 L"}{}`: "follows", `{"volume":"2 L"} x`: "follows",
		`{"volume":"2 L","vat":1}`: "unknown field", `{"volume":2}`: "in quotes", `{"volume":"2 gal"}`: "ambiguous",
	} {
		in := tank{units.Volume(math.NaN())}
		err := object.Read("cellar.Tank.UnmarshalJSON", []byte(text), &in)
		if (err == nil) != (want == "") || err != nil && (!strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "cellar.Tank.UnmarshalJSON: ")) {
			t.Errorf("%s: %v, want %q", text, err, want)
		}
		if text == `{}` || text == `{"volume":null}` {
			if !math.IsNaN(float64(in.Volume)) {
				t.Errorf("%s: %v is not unknown", text, in.Volume)
			}
		}
	}
	// The reason of a quantity comes through.
	var pe *units.ParseError
	if err := object.Read("f", []byte(`{"volume":"2 gal"}`), new(tank)); !errors.As(err, &pe) || !errors.Is(err, units.ErrAmbiguous) {
		t.Errorf("%v", err)
	}
}

// A count of none, a name and a yes must be written. Null is what a quantity
// makes of it.
func TestWhole(t *testing.T) {
	type pail struct {
		Size units.Volume `json:"size"`
		Taps int
		Full bool `json:"full"`
	}
	for text, ok := range map[string]bool{
		`{"size":"2 L","Taps":0,"full":false}`:    true,
		`{"SIZE":"2 L","taps":1,"full":true}`:     true,
		`{"size":null,"Taps":0,"full":false}`:     true, // NaN, for the constructor
		`{"size":"2 L","Taps":null,"full":false}`: false,
		`{"size":"2 L","full":false}`:             false,
		`{"Taps":0,"full":false}`:                 false,
		`{"size":"2 L","Taps":0}`:                 false,
		`{}`:                                      false,
	} {
		var in pail
		err := object.Whole("f", []byte(text), &in)
		if (err == nil) != ok || !ok && !errors.Is(err, object.ErrMissing) {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func TestNumber(t *testing.T) {
	for text, want := range map[string]float64{`1.5`: 1.5, `"+Inf"`: math.Inf(1), `"-Inf"`: math.Inf(-1), `null`: math.NaN()} {
		var n object.Number
		err := json.Unmarshal([]byte(text), &n)
		out, err2 := json.Marshal(n)
		if err != nil || err2 != nil || string(out) != text || !(float64(n) == want || math.IsNaN(want) && math.IsNaN(float64(n))) {
			t.Errorf("%s: %v, %s, %v, %v", text, n, out, err, err2)
		}
	}
	n := object.Number(7)
	if err := json.Unmarshal([]byte(`"7"`), &n); err == nil || n != 7 {
		t.Errorf("a text: %v, %v", n, err)
	}
}
