package object_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// An error names the function before its reason; to a person it tells the reason
// alone, in the units that are asked for: 2 L are 0.528 gallons (NIST Handbook 44,
// 3.785411784 L each).
func TestErrorTells(t *testing.T) {
	inner := &units.RangeError{Func: "g", Arg: "volume", Value: 2, Low: 3, High: 4, Unit: "L"}
	e := &object.Error{Func: "f", Err: inner}
	if got, want := e.Error(), "f: "+inner.Error(); got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got := e.Text(units.US); !strings.Contains(got, "0.528") || strings.Contains(got, "f: ") || strings.Contains(got, " L") {
		t.Errorf("in gallons: %s", got)
	}
	if got := e.Text(units.Metric); !strings.Contains(got, "2 L") || strings.Contains(got, "gal") {
		t.Errorf("in liters: %s", got)
	}
	if !errors.Is(e, units.ErrRange) {
		t.Error("the reason does not come through")
	}
	if got, want := object.Refuse("cellar.Rack.MarshalJSON", "encode its bottles").Error(), "cellar.Rack.MarshalJSON: it has no JSON: encode its bottles"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// Each reason can be asked for.
func TestReasons(t *testing.T) {
	type tank struct{ Volume units.Volume }
	for text, want := range map[string]error{
		`[]`: object.ErrObject, ``: object.ErrObject, `{} {}`: object.ErrMore, `{"Volume":"2 furlongs"}`: units.ErrUnit, `{}`: object.ErrMissing,
	} {
		var e *object.Error
		if err := object.Whole("f", []byte(text), new(tank)); !errors.Is(err, want) || !errors.As(err, &e) || e.Func != "f" {
			t.Errorf("%s: %v, want %v", text, err, want)
		}
	}
}

// Fields of an embedded struct must be given too, and the first that is missing
// is told by its name in JSON. Where the outer struct has a field of the name, it
// is that which is read, and that whose type says what null is.
func TestWholeEmbedded(t *testing.T) {
	type Size struct {
		Wide int `json:"wide"`
		Deep int `json:"deep"`
	}
	type Tagged struct{ Color string }
	type tank struct {
		Size
		Wide  units.Length `json:"wide"`
		Paint Tagged       `json:"paint"`
		Taps  int          `json:",omitempty"`
	}
	for _, tc := range []struct{ text, missing string }{
		{`{"wide":"1 m","deep":2,"paint":{},"taps":3}`, ""},
		{`{"deep":2,"paint":{},"taps":3}`, "wide"},
		{`{"wide":null,"paint":{},"taps":3}`, "deep"}, // null is what a length makes of it
		{`{"wide":"1 m","paint":{},"taps":3}`, "deep"},
		{`{"wide":"1 m","deep":null,"paint":{},"taps":3}`, "deep"},
		{`{"wide":"1 m","deep":2,"taps":3}`, "paint"},
		{`{"wide":"1 m","deep":2,"paint":{}}`, "Taps"},
		{`{"wide":"1 m"}`, "paint"}, // before the embedded one
	} {
		var in tank
		err := object.Whole("f", []byte(tc.text), &in)
		if tc.missing == "" {
			if err != nil || math.Abs(in.Wide.Meters()-1) > 1e-12 || in.Size.Wide != 0 || in.Deep != 2 || in.Taps != 3 {
				t.Errorf("%s: %+v, %v", tc.text, in, err)
			}
		} else if want := "f: " + tc.missing + ": missing"; !errors.Is(err, object.ErrMissing) || err.Error() != want {
			t.Errorf("%s: %v, want %s", tc.text, err, want)
		}
	}
}

// A number beside an error stays as it was, and NaN does not become a text.
func TestNumberText(t *testing.T) {
	for want, x := range map[string]float64{"null": math.NaN(), `"+Inf"`: math.Inf(1), `"-Inf"`: math.Inf(-1), "-0.25": -0.25, "0": 0} {
		if b, err := object.Number(x).MarshalJSON(); string(b) != want || err != nil {
			t.Errorf("%v: %s, %v, want %s", x, b, err, want)
		}
	}
	for _, text := range []string{`"Inf"`, `{}`, `1e999`, ``} {
		n := object.Number(7)
		if err := n.UnmarshalJSON([]byte(text)); err == nil || n < 7 || n > 7 {
			t.Errorf("%s is %v, %v", text, n, err)
		}
	}
}
