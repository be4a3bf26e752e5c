package fuel_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// A moisture without its basis is refused, and one basis is not read as the
// other: 20 percent wet is 25 dry.
func TestMoistureText(t *testing.T) {
	for text, want := range map[string]fuel.WetMoisture{"20 % wet basis": 20, "20% wet": 20, " 20 %  Wet Basis ": 20, "62.5 % wet basis": 62.5} {
		if m, err := fuel.ParseWetMoisture(text); err != nil || !near(float64(m), float64(want), 1e-12) {
			t.Errorf("%q: %v, %v", text, m, err)
		}
	}
	for _, text := range []string{"20", "20 %", "20 % dry basis", "wet", "", "NaN % wet basis", "20 % wet dry basis"} {
		m, err := fuel.ParseWetMoisture(text)
		var e *units.ParseError
		if !math.IsNaN(float64(m)) || !errors.As(err, &e) || e.Hint == "" || e.Func != "fuel.ParseWetMoisture" {
			t.Errorf("%q: %v, %v", text, m, err)
		}
	}
	if _, err := fuel.ParseDryMoisture("25 % wet basis"); !errors.Is(err, units.ErrUnit) {
		t.Errorf("wet read as dry: %v", err)
	}
	if s := fuel.WetMoisture(20).Dry().String(); s != "25 % dry basis" {
		t.Error(s)
	}
}

// A moisture comes back from its text and its JSON on its own basis; what is
// refused leaves it alone and says so.
func TestMoistureBack(t *testing.T) {
	for _, x := range []float64{0, 20, 1.0 / 3} {
		wet, dry := fuel.WetMoisture(x), fuel.DryMoisture(x)
		text, err := wet.MarshalText()
		json1, err2 := json.Marshal(wet)
		var a, b fuel.WetMoisture = -1, -1
		if err != nil || err2 != nil || a.UnmarshalText(text) != nil || json.Unmarshal(json1, &b) != nil || !near(float64(a), x, 1e-15) || !near(float64(b), x, 1e-15) || !strings.HasSuffix(string(text), " % wet basis") {
			t.Errorf("%v wet: %s is %v, %s is %v, %v, %v", x, text, a, json1, b, err, err2)
		}
		text, err = dry.MarshalText()
		json1, err2 = json.Marshal(dry)
		var c, d fuel.DryMoisture = -1, -1
		if err != nil || err2 != nil || c.UnmarshalText(text) != nil || json.Unmarshal(json1, &d) != nil || !near(float64(c), x, 1e-15) || !near(float64(d), x, 1e-15) || !strings.HasSuffix(string(text), " % dry basis") {
			t.Errorf("%v dry: %s is %v, %s is %v, %v, %v", x, text, c, json1, d, err, err2)
		}
	}
	wet, dry := fuel.WetMoisture(7), fuel.DryMoisture(7)
	for name, err := range map[string]error{
		"wet text": wet.UnmarshalText([]byte("20 % dry")), "dry text": dry.UnmarshalText([]byte("20 % wet")),
		"wet JSON": wet.UnmarshalJSON([]byte(`"20 %"`)), "dry JSON": dry.UnmarshalJSON([]byte(`"20 %"`)),
	} {
		if !errors.Is(err, units.ErrUnit) || !near(float64(wet), 7, 0) || !near(float64(dry), 7, 0) {
			t.Errorf("%s: %v, and then %v and %v", name, err, wet, dry)
		}
	}
	if s, d := wet.Text(1), dry.Text(2); s != "7.0 % wet basis" || d != "7.00 % dry basis" {
		t.Errorf("%s, %s", s, d)
	}
}

// What a person reads has no name of Go in it, whatever the bases are.
func TestBasisErrorText(t *testing.T) {
	for heat := range fuel.Delivered + 2 {
		for of := range fuel.Delivered + 2 {
			e := &fuel.BasisError{Func: "fuel.Fuel.Needed", Heat: heat, Efficiency: of}
			said := e.Text(units.Both)
			if strings.Contains(said, "fuel.") || said == "" || e.Error() != "fuel.Fuel.Needed: "+said {
				t.Errorf("%v and %v: %q", heat, of, said)
			}
		}
	}
}

// A figure that belongs to no basis keeps none on its way through JSON, and one
// that is not known does not go out.
func TestBasisJSON(t *testing.T) {
	b, err := json.Marshal(fuel.Efficiency{})
	var back fuel.Efficiency
	if err != nil || json.Unmarshal(b, &back) != nil || back != (fuel.Efficiency{}) {
		t.Errorf("%s, %v", b, err)
	}
	if b, err := json.Marshal(fuel.Efficiency{Low: 1, High: 2, Basis: 9}); !errors.Is(err, units.ErrName) {
		t.Errorf("%s, %v", b, err)
	}
}

// Whatever comes in is refused and touches nothing, or goes out and comes back.
func FuzzMoisture(f *testing.F) {
	for _, s := range []string{`"20 % wet basis"`, `"1/3 % dry basis"`, `null`, `"-0 % wet"`, `"1e400 % dry"`, `{}`, `20`, `"gross"`, `"stacked"`} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		type all struct {
			Wet   fuel.WetMoisture
			Dry   fuel.DryMoisture
			Pile  fuel.Pile
			Basis fuel.Basis
		}
		before := all{7, 8, fuel.LooseLong, fuel.Net}
		v := before
		for i, into := range []any{&v.Wet, &v.Dry, &v.Pile, &v.Basis} {
			v = before
			if err := json.Unmarshal(b, into); err != nil {
				if v != before {
					t.Fatalf("%q: %+v beside %v", b, v, err)
				}
				continue
			}
			out, err := json.Marshal(into)
			was := v
			if err == nil {
				v = before
				err = json.Unmarshal(out, into)
			}
			same := was == v || i == 0 && was.Wet != was.Wet && v.Wet != v.Wet || i == 1 && was.Dry != was.Dry && v.Dry != v.Dry
			if err != nil || !same {
				t.Fatalf("%q goes out as %s and is then %+v, want %+v: %v", b, out, v, was, err)
			}
		}
	})
}
