package enum_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// A refusal names the method, what came in, and all the names that there are;
// the nearest one first, if there is one.
func TestRefusals(t *testing.T) {
	out := func(v pan) error {
		b, err := pans.Marshal(v)
		if b != nil {
			t.Errorf("%d goes out as %s", v, b)
		}
		return err
	}
	in := func(s string) error { v := pan(1); return pans.Unmarshal(&v, []byte(s)) }
	for _, tc := range []struct {
		err  error
		want units.ParseError
	}{
		{out(7), units.ParseError{Func: "boil.Pan.MarshalText", Input: "Pan(7)", Hint: "use one of: flat pan, flue pan, kettle"}},
		{out(3), units.ParseError{Func: "boil.Pan.MarshalText", Input: "Pan(3)", Hint: "use one of: flat pan, flue pan, kettle"}},
		{in(" kettles "), units.ParseError{Func: "boil.Pan.UnmarshalText", Input: " kettles ", Hint: `did you mean "kettle"? Use one of: flat pan, flue pan, kettle`}},
		{in("stove"), units.ParseError{Func: "boil.Pan.UnmarshalText", Input: "stove", Hint: "use one of: flat pan, flue pan, kettle"}},
		{in(""), units.ParseError{Func: "boil.Pan.UnmarshalText", Input: "", Hint: "use one of: flat pan, flue pan, kettle"}},
	} {
		tc.want.Err = units.ErrName
		var e *units.ParseError
		if !errors.As(tc.err, &e) || *e != tc.want {
			t.Errorf("%q: %+v, want %+v", tc.want.Input, tc.err, tc.want)
		}
	}
}

// A value between two that have names has none, and is not listed.
func TestGap(t *testing.T) {
	doors := enum.Names[door]{Type: "cellar.Door", Of: []string{1: "left", 3: "right"}}
	if got := doors.List(); !slices.Equal(got, []door{1, 3}) {
		t.Errorf("%v", got)
	}
	for v, want := range []string{"Door(0)", "left", "Door(2)", "right", "Door(4)"} {
		if s := doors.String(door(v)); s != want {
			t.Errorf("%d is %s, want %s", v, s, want)
		}
	}
	for _, v := range []door{0, 2, 4} {
		if b, err := doors.Marshal(v); !errors.Is(err, units.ErrName) {
			t.Errorf("%d goes out as %q, %v", v, b, err)
		}
	}
	d := door(3)
	if err := doors.Unmarshal(&d, nil); !errors.Is(err, units.ErrName) || d != 3 {
		t.Errorf("no text is %d, %v", d, err)
	}
}

// A third of the letters may be wrong, no more: none of two, one of three and of
// five, two of six. Of two names as near the first is told. A text of 64 bytes is
// compared, one of 65 is not.
func TestNearestEdges(t *testing.T) {
	long := strings.Repeat("e", 64)
	for _, c := range []struct {
		text  string
		names []string
		want  string
	}{
		{"ta", []string{"tap"}, ""}, {"ta", []string{"ta"}, "ta"},
		{"tab", []string{"tap"}, "tap"}, {"tba", []string{"taps"}, ""}, {"brixx", []string{"brix"}, "brix"}, {"brxxx", []string{"brix"}, ""},
		{"sugary", []string{"suga"}, "suga"}, {"sugary", []string{"sug"}, ""},
		{"tap", []string{"tab", "tar"}, "tab"}, {"tap", []string{"tabs", "tar"}, "tar"},
		{long, []string{long[1:]}, long[1:]}, {long + "e", []string{long}, ""},
		{"TAB", []string{"Tap"}, "Tap"}, {"tap", nil, ""},
	} {
		got, ok := enum.Nearest(c.text, slices.Values(c.names))
		if got != c.want || ok != (c.want != "") {
			t.Errorf("%s of %v: %q, %v, want %q", c.text, c.names, got, ok, c.want)
		}
	}
}

// By hand: letters changed about count once at the start, in the middle and at
// the end, and the way is as long back.
func TestSlipsBothWays(t *testing.T) {
	for _, c := range []struct {
		a, b string
		n    int
	}{{"abcd", "bacd", 1}, {"abcd", "acbd", 1}, {"abcd", "abdc", 1}, {"ab", "ba", 1}, {"aab", "aba", 1}, {"abcd", "badc", 2}, {"abcd", "cdab", 4}, {"a", "", 1}, {"ab", "b", 1}, {"abc", "xyz", 3}} {
		if n, m := enum.Slips([]rune(c.a), []rune(c.b)), enum.Slips([]rune(c.b), []rune(c.a)); n != c.n || m != c.n {
			t.Errorf("%s to %s: %d, and back %d, want %d", c.a, c.b, n, m, c.n)
		}
	}
}
