package sweep

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

type cup struct {
	Depth units.Length
	Doubt doubt
	At    units.Temperature
}

type doubt struct{ Step float64 }

// refuse answers NaN for the first of the places with a range error in its name.
func refuse(places ...any) error {
	for i := 0; i < len(places); i += 2 {
		x := places[i+1].(float64)
		if !(x >= 0 && x <= 10) {
			return &units.RangeError{Arg: places[i].(string), Value: x, High: 10}
		}
	}
	return nil
}

func (c cup) brix(reading float64) (float64, error) {
	return math.NaN(), refuse("cup.Depth", float64(c.Depth), "doubt.Step", c.Doubt.Step, "cup.At", c.At.Celsius(), "reading", reading)
}

func (c cup) vague(reading float64) (float64, error) {
	return math.NaN(), refuse("Cup", float64(c.Depth), "reading", reading)
}

type depths []units.Length

func (d depths) first() error { return refuse("depths[0]", float64(d[0])) }

type Lid struct{ Step float64 }

type lidded struct{ Lid }

func mean[Q ~float64](weights ...Q) (Q, error) {
	for i, w := range weights {
		if err := refuse([]string{"weights[0]", "weights[1]"}[i], float64(w)); err != nil {
			return 0, err
		}
	}
	return 1, nil
}

// The contract is kept or not, and the message says where.
func TestContract(t *testing.T) {
	value := func(x float64) error { return refuse("x", x) }
	for _, tc := range []struct {
		name   string
		f      any
		method bool
		params []string
		broken []string // one for each place, empty if it is kept
	}{
		{"kept", func(x, y float64) error { return refuse("x", x, "y", y) }, false, []string{"x", "y"}, []string{"", ""}},
		{"other name", func(x, y float64) error { return refuse("x", x, "x", y) }, false, []string{"x", "y"}, []string{"", `names "x", want "y"`}},
		{"first only", func(x, y float64) error { return value(x) }, false, []string{"x", "y"}, []string{"", ""}}, // it has no use for y
		{"no range", func(x float64) error {
			if math.IsNaN(x) {
				return errors.New("no")
			}
			return nil
		}, false, []string{"x"}, []string{"want its range"}},
		{"no limits", func(x float64) error {
			if math.IsNaN(x) {
				return &units.RangeError{Arg: "x", Value: x, Low: math.Inf(-1), High: math.Inf(1)}
			}
			return nil
		}, false, []string{"x"}, []string{"no limits"}},
		{"no value", func(x float64) error {
			if math.IsNaN(x) {
				return &units.RangeError{Arg: "x", High: 1}
			}
			return nil
		}, false, []string{"x"}, []string{"tells the value 0"}},
		{"method", cup.brix, true, []string{"reading"}, []string{"", "", "", ""}},
		{"vague", cup.vague, true, []string{"reading"}, []string{`want "cup.Depth or Depth"`, "", "", ""}},
		{"generic", mean[float64], false, []string{"weights"}, []string{""}},
		{"pointer", func(c *cup) error { _, err := c.brix(1); return err }, false, []string{"c"}, []string{"", "", ""}},
		{"list of cups", func(list []cup) error {
			for _, c := range list {
				if _, err := c.brix(1); err != nil {
					return err
				}
			}
			return nil
		}, false, []string{"list"}, []string{"", "", ""}},
		{"receiver that is a list", depths.first, true, nil, []string{""}},
		{"field of a field that has no name", func(c lidded) error { return refuse("c.Step", c.Step) }, false, []string{"c"}, []string{""}},
		{"the same by its type", func(c lidded) error { return refuse("c.Lid.Step", c.Step) }, false, []string{"c"}, []string{""}},
	} {
		s := sweeping(Package{Values: []any{depths{1}, lidded{Lid{2}}, 5.0, 3.0, cup{1, doubt{2}, units.Celsius(3)}, &cup{1, doubt{2}, units.Celsius(3)}}})
		f := reflect.ValueOf(tc.f)
		params := tc.params
		if tc.method {
			params = append([]string{""}, params...)
		}
		good, err := s.goodCall(f)
		if good == nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		places := holes(good, params)
		if len(places) != len(tc.broken) {
			t.Errorf("%s: the places %+v, want %d", tc.name, places, len(tc.broken))
			continue
		}
		for i, h := range places {
			got := s.fill(f, good, h)
			if (got == "") != (tc.broken[i] == "") || !strings.Contains(got, tc.broken[i]) {
				t.Errorf("%s, %v: judged %q, want %q", tc.name, h.names, got, tc.broken[i])
			}
		}
	}
	// The good values are left as they were.
	s := sweeping(Package{Values: []any{cup{1, doubt{2}, units.Celsius(3)}}})
	if c := s.pool[reflect.TypeFor[cup]()][0].Interface().(cup); c != (cup{1, doubt{2}, units.Celsius(3)}) {
		t.Errorf("the cup is now %+v", c)
	}
}

func TestFuncName(t *testing.T) {
	for full, want := range map[string]string{
		"a.org/b/pkg.Func": "Func", "a.org/b/pkg.Mean[...]": "Mean", "a.org/b.c/pkg.(*Type).Method": "Type.Method",
		"pkg.Type.Method": "Type.Method", "pkg.Type[...].Method": "Type.Method", "pkg.(*Type[...]).Method": "Type.Method", "pkg.Type.Method-fm": "Type.Method",
	} {
		name, method := funcName(full)
		if name != want || method != (strings.Contains(want, ".") && !strings.HasSuffix(full, "-fm")) {
			t.Errorf("%s: %s, %v; want %s", full, name, method, want)
		}
	}
}
