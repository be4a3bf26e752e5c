package sugar_test

import (
	"encoding/json"
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What goes out comes back to the last bit, whatever the arithmetic made of it.
func TestLotJSON(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 1))
	for range 2000 {
		l, err := sugar.NewLotByMass(units.Mass(1e4*r.Float64()), units.Brix(85*r.Float64()), units.Celsius(110*r.Float64()))
		if err != nil {
			t.Fatal(err)
		}
		if other, err := sugar.NewLot(units.Volume(r.Float64()), 2, units.Celsius(4)); err == nil {
			if l, err = sugar.Blend(l, other); err != nil {
				t.Fatal(err)
			}
		}
		b, err := json.Marshal(l)
		var back sugar.Lot
		if err == nil {
			err = json.Unmarshal(b, &back)
		}
		if err != nil || back != l {
			t.Fatalf("%s came back as %v, want %v: %v", b, back, l, err)
		}
	}
	var back sugar.Lot
	b, err := json.Marshal(sugar.Lot{})
	if err != nil || string(b) != `{"mass":"0 kg","brix":null,"sugar":"0 kg","temperature":null}` || json.Unmarshal(b, &back) != nil || !back.Empty() {
		t.Errorf("the empty lot: %s, %v, %v", b, back, err)
	}
}

// A person writes mass, strength and temperature. What the constructor refuses is
// refused with the range of the field, and the lot is left alone.
func TestLotJSONRefused(t *testing.T) {
	want, err := sugar.NewLotByMass(10, 66, units.Celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{
		`{"mass":"10 kg","brix":"66 Brix","temperature":"20 C"}`, `{"mass":"10 kg","sugar":"6.6 kg","temperature":"68 F"}`,
		`{"temperature":"20 C","mass":"10000 g","brix":null,"sugar":"6.6 kg"}`,
	} {
		var l sugar.Lot
		if err := json.Unmarshal([]byte(text), &l); err != nil || !(math.Abs(float64(l.Mass()-want.Mass())) <= 1e-12) || !(math.Abs(float64(l.Sugar()-want.Sugar())) <= 1e-12) {
			t.Errorf("%s: %v, %v", text, l, err)
		}
	}
	for text, arg := range map[string]string{
		`{}`: "brix", `{"mass":"10 kg"}`: "brix", `{"mass":"10 kg","brix":"66 Brix"}`: "at", `{"brix":"66 Brix","temperature":"20 C"}`: "mass",
		`{"mass":"-1 kg","brix":"66 Brix","temperature":"20 C"}`: "mass", `{"mass":"10 kg","brix":"86 Brix","temperature":"20 C"}`: "brix",
		`{"mass":"10 kg","brix":"66 Brix","temperature":"120 C"}`:                  "at",
		`{"mass":"10 kg","brix":"66 Brix","sugar":"7 kg","temperature":"20 C"}`:    "sugar",
		`{"mass":"10 kg","brix":"66 Brix","sugar":"-6.6 kg","temperature":"20 C"}`: "sugar",
		`{"mass":"10 kg","sugar":"11 kg","temperature":"20 C"}`:                    "brix",
		`{"mass":null,"brix":"66 Brix","temperature":"20 C"}`:                      "mass",
		// Of nothing too, as NewLotByMass refuses it.
		`{"mass":"0 kg","brix":"86 Brix","temperature":"20 C"}`:  "brix",
		`{"mass":"0 kg","brix":"-1 Brix"}`:                       "brix",
		`{"mass":"0 kg","brix":"66 Brix","temperature":"120 C"}`: "at",
	} {
		l := want
		err := json.Unmarshal([]byte(text), &l)
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != arg || e.Func != "sugar.Lot.UnmarshalJSON" || l != want {
			t.Errorf("%s: %v, %v, want an error about %s", text, l, err, arg)
		}
	}
}

// Whatever comes in is refused and touches nothing, or goes out and comes back.
func FuzzLotJSON(f *testing.F) {
	for _, s := range []string{
		`{"mass":"10 kg","brix":"66 Brix","temperature":"20 C"}`, `{"mass":"10 kg","sugar":"6.6 kg","temperature":"68 F"}`, `{}`, `null`,
		`{"mass":"0 kg","brix":null,"sugar":"0 kg","temperature":null}`, `{"mass":"1e-320 kg","brix":"66 Brix","temperature":"20 C"}`,
		`{"mass":"0 kg","mass":"1 kg","brix":"0 Brix","sugar":"0 kg","temperature":"110 C"}`, `{"mass":"-0 kg"}`,
	} {
		f.Add([]byte(s))
	}
	before, err := sugar.NewLotByMass(7, 50, units.Celsius(30))
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		l := before
		if err := json.Unmarshal(b, &l); err != nil {
			if l != before {
				t.Fatalf("%q: %v beside %v", b, l, err)
			}
			return
		}
		if m := float64(l.Mass()); !(m >= 0 && m <= 1e9*(1+1e-9) && l.Sugar() >= 0 && l.Sugar() <= l.Mass()) {
			t.Fatalf("%q: %v kg with %v", b, m, l.Sugar())
		}
		out, err := json.Marshal(l)
		var back sugar.Lot
		if err == nil {
			err = json.Unmarshal(out, &back)
		}
		if err != nil || back != l {
			t.Fatalf("%q goes out as %s and is then %v, want %v: %v", b, out, back, l, err)
		}
	})
}
