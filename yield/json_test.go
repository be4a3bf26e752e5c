package yield_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// back sends a value out and in again.
func back[T any](t *testing.T, v T) T {
	t.Helper()
	b, err := json.Marshal(v)
	var got T
	if err == nil {
		err = json.Unmarshal(b, &got)
	}
	if err != nil {
		t.Fatalf("%s: %v", b, err)
	}
	return got
}

// A tank of any shape comes back to the last bit, and holds as much.
func TestTankJSON(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 4))
	side := func() units.Length { return units.Length(0.05 + 3*r.Float64()) }
	for range 100 {
		for i, made := range []func() (yield.Tank, error){
			func() (yield.Tank, error) { return yield.RectangularTank(side(), side(), side()) },
			func() (yield.Tank, error) { return yield.UprightCylinder(side(), side()) },
			func() (yield.Tank, error) { return yield.LyingCylinder(side(), side()) },
			func() (yield.Tank, error) { return yield.LyingEllipse(side(), side(), side()) },
			func() (yield.Tank, error) { return yield.HalfEllipseTrough(side(), side(), side()) },
			func() (yield.Tank, error) { return yield.Pail(side(), side(), side()) },
		} {
			tank, err := made()
			if err != nil {
				t.Fatal(err)
			}
			if got := back(t, tank); got != tank || got.String() == "no tank" {
				t.Fatalf("%d: %v came back as %v", i, tank, got)
			}
		}
	}
	if got := back(t, yield.Tank{}); got != (yield.Tank{}) {
		t.Errorf("the zero tank came back as %v", got)
	}
}

// What a shape needs is asked for, and what it does not have is refused.
func TestTankJSONRefused(t *testing.T) {
	want, err := yield.UprightCylinder(units.Meter, units.Meter)
	if err != nil {
		t.Fatal(err)
	}
	for text, says := range map[string]string{
		`{}`: "shape: missing",
		`{"shape":"upright cylindr","height":"1 m","diameter":"1 m"}`:                 `did you mean "upright cylinder"?`,
		`{"shape":"upright cylinder","height":"1 m"}`:                                 "diameter",
		`{"shape":"upright cylinder","height":"1 m","diameter":null}`:                 "diameter",
		`{"shape":"upright cylinder","height":"1 m","diameter":"1 m","length":"1 m"}`: "has no length",
		`{"shape":"upright cylinder","height":"1 m","diameter":"31 m"}`:               "31 m is outside",
		`{"shape":"none","height":"1 m"}`:                                             "has no height",
	} {
		tank := want
		if err := json.Unmarshal([]byte(text), &tank); err == nil || !strings.Contains(err.Error(), says) || tank != want {
			t.Errorf("%s: %v, %v, want %s", text, tank, err, says)
		}
	}
	var e *units.RangeError
	err = json.Unmarshal([]byte(`{"shape":"pail","height":"1 m","top":"1 m"}`), new(yield.Tank))
	if !errors.As(err, &e) || e.Arg != "bottom" || e.Func != "yield.Tank.UnmarshalJSON" {
		t.Errorf("a pail without its bottom: %v", err)
	}
}

// An account of a season without syrup has no ratio, and goes out all the same.
func TestAccountJSON(t *testing.T) {
	sap, err := sugar.NewLot(1000*units.USGallon, 2, units.Celsius(4))
	if err != nil {
		t.Fatal(err)
	}
	a, err := yield.Season{Sap: []sugar.Lot{sap}, SapMeasured: yield.Measured{Volume: 2, Brix: 0.1}}.Account()
	if err != nil || !math.IsNaN(a.Ratio) {
		t.Fatalf("%v, %v", a, err)
	}
	got := back(t, a)
	if !math.IsNaN(got.Ratio) || !math.IsNaN(float64(got.SyrupBrix)) || got.Lost != a.Lost || got.SapPerTap == got.SapPerTap {
		t.Errorf("%+v came back as %+v", a, got)
	}
	got = a
	if err := json.Unmarshal([]byte(`{"Ratio":40}`), &got); err == nil || got.Lost != a.Lost {
		t.Errorf("half an account: %v", err)
	}
	if _, err := json.Marshal(&yield.Books{}); err == nil || !strings.Contains(err.Error(), "encode the boils") {
		t.Errorf("books go out: %v", err)
	}
}
