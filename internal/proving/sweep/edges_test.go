package sweep

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// Types that keep the rules, or break one.
type (
	hidden   struct{ mass units.Mass } // goes out as {}
	whole    struct{ mass units.Mass } // keeps the rules
	halfway  struct{ mass units.Mass } // is touched on error
	careless struct{ mass units.Mass } // reads unknown fields, and {} as nothing
	merging  struct{ mass units.Mass } // takes what is missing from what it was before
	open     struct{ Mass units.Mass } // exported fields go by themselves
	lossy    struct{ A, B units.Mass } // B is lost
	callback struct{ F func() }        // cannot go out
	engine   struct{ mass units.Mass } // refuses both ways
	oneway   struct{ mass units.Mass } // refuses to go out alone
	naked    float64                   // has no unit
	color    uint8                     // has no name
	named    uint8                     // has names
	wordy    struct{ mass units.Mass } // prints a book
	labeled  struct{ label string }    // takes any text, and gives it again
)

type object struct{ Mass units.Mass }

func strict(b []byte) (units.Mass, error) {
	o := object{units.Mass(-1)}
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	if err := d.Decode(&o); err != nil {
		return 0, err
	}
	if !(o.Mass >= 0) {
		return 0, errors.New("no mass")
	}
	return o.Mass, nil
}

func (w whole) String() string               { return w.mass.String() }
func (w whole) MarshalJSON() ([]byte, error) { return json.Marshal(object{w.mass}) }
func (w *whole) UnmarshalJSON(b []byte) error {
	m, err := strict(b)
	if err == nil {
		w.mass = m
	}
	return err
}

func (w halfway) MarshalJSON() ([]byte, error)        { return json.Marshal(object{w.mass}) }
func (w *halfway) UnmarshalJSON(b []byte) (err error) { w.mass, err = strict(b); return err }

func (w careless) MarshalJSON() ([]byte, error) { return json.Marshal(object{w.mass}) }
func (w *careless) UnmarshalJSON(b []byte) error {
	var o object
	err := json.Unmarshal(b, &o)
	if err == nil {
		w.mass = o.Mass
	}
	return err
}

func (m merging) MarshalJSON() ([]byte, error) { return json.Marshal(object{m.mass}) }
func (m *merging) UnmarshalJSON(b []byte) error {
	o := object{m.mass}
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	err := d.Decode(&o)
	if err == nil {
		m.mass = o.Mass
	}
	return err
}

func (l lossy) MarshalJSON() ([]byte, error) { return json.Marshal(object{l.A}) }
func (l *lossy) UnmarshalJSON(b []byte) (err error) {
	m, err := strict(b)
	if err == nil {
		l.A = m
	}
	return err
}

func (l labeled) String() string { return l.label }
func (l labeled) MarshalJSON() ([]byte, error) {
	return json.Marshal(map[string]string{"label": l.label})
}
func (l *labeled) UnmarshalJSON(b []byte) error {
	var in struct{ Label *string }
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	if err := d.Decode(&in); err != nil {
		return err
	}
	if in.Label == nil {
		return errors.New("no label")
	}
	l.label = *in.Label
	return nil
}

func (engine) String() string               { return "an engine" }
func (engine) MarshalJSON() ([]byte, error) { return nil, errors.New("save what it was made of") }
func (*engine) UnmarshalJSON([]byte) error  { return errors.New("make it anew") }
func (oneway) MarshalJSON() ([]byte, error) { return nil, errors.New("save what it was made of") }
func (wordy) String() string                { return strings.Repeat("3.14159265358979 ", 40) }

var names = enum.Names[named]{Type: "sweep.named", Of: []string{"one", "two"}}

func (n named) String() string                { return names.String(n) }
func (n named) MarshalText() ([]byte, error)  { return names.Marshal(n) }
func (n *named) UnmarshalText(b []byte) error { return names.Unmarshal(n, b) }

func TestEdges(t *testing.T) {
	for _, tc := range []struct {
		value      any
		json, text string // what is broken, or nothing
	}{
		{hidden{1}, "goes out as {}", "raw struct"},
		{whole{1.0 / 3}, "", ""},
		{halfway{1}, "not left alone", "raw struct"},
		{careless{1}, "reads what is not whole", "raw struct"},
		{merging{1}, "reads what is not whole", "raw struct"},
		{open{1}, "", ""},
		{lossy{1, 2}, "loses something", ""},
		{callback{func() {}}, "cannot go out", ""},
		{engine{1}, "", ""},
		{oneway{1}, "is read from {}", "raw struct"},
		{naked(1), "null does not come in", "bare number"},
		{color(1), "", "no names both ways"},
		{named(1), "", ""},
		{wordy{1}, "goes out as {}", "prints 680 bytes"},
		{labeled{"a"}, "", ""},
		{units.Foot, "", ""},
		{units.Celsius(1.0 / 3), "", ""},
		{units.RangeError{Arg: "x", Value: 3, High: 1}, "", ""},
	} {
		s := sweeping(Package{})
		v := reflect.ValueOf(tc.value)
		for _, kind := range []struct {
			name, want string
			got        []string
		}{{"json", tc.json, s.json(v)}, {"text", tc.text, s.text(v)}} {
			got := strings.Join(kind.got, "; ")
			if (got == "") != (kind.want == "") || !strings.Contains(got, kind.want) {
				t.Errorf("%T, %s: judged %q, want %q", tc.value, kind.name, got, kind.want)
			}
		}
	}
}

// A filled value has something in every field.
func TestFilled(t *testing.T) {
	type deep struct {
		A units.Mass
		B []struct{ C units.Temperature }
		D *units.Share
		E [2]named
		F string
		G bool
		H int
	}
	s := sweeping(Package{})
	v, ok := s.filled(reflect.TypeFor[deep](), 0)
	d := v.Interface().(deep)
	if !ok || d.A == 0 || len(d.B) != 1 || d.B[0].C == (units.Temperature{}) || d.D == nil || d.E[1] == 0 || d.F == "" || !d.G || d.H == 0 {
		t.Errorf("%v: %+v", ok, d)
	}
	if at := differ(v, v, 0, ""); at != "" {
		t.Errorf("a value differs from itself in %s", at)
	}
	// Types of other modules say themselves what is the same.
	sum := decimal.NewFromInt(1).Add(decimal.New(5, -1))
	if at := differ(reflect.ValueOf(sum), reflect.ValueOf(decimal.New(150, -2)), 0, ""); at != "" {
		t.Errorf("1.5 differs from 1.50 in %s", at)
	}
	if at := differ(reflect.ValueOf(sum), reflect.ValueOf(decimal.New(151, -2)), 0, ""); at == "" {
		t.Error("1.5 is the same as 1.51")
	}
	other := d
	other.B = []struct{ C units.Temperature }{{units.Celsius(1)}}
	if at := differ(v, reflect.ValueOf(other), 0, ""); !strings.Contains(fmt.Sprint(at), "c, 1") {
		t.Errorf("they differ in %q", at)
	}
}
