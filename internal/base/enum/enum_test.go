package enum_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

type pan uint8

var pans = enum.Names[pan]{Type: "boil.Pan", Of: []string{"flat pan", "flue pan", "kettle"}, Also: map[string]pan{"pot": 2}}

func TestNames(t *testing.T) {
	for _, v := range pans.List() {
		b, err := pans.Marshal(v)
		if err != nil {
			t.Fatal(err)
		}
		back := pan(9)
		if err := pans.Unmarshal(&back, []byte(strings.ToUpper(string(b)))); err != nil || back != v {
			t.Errorf("%s came back as %v, %v", b, back, err)
		}
	}
	var p pan
	if err := pans.Unmarshal(&p, []byte(" Pot ")); err != nil || p != 2 {
		t.Errorf("pot: %v, %v", p, err)
	}
	if s := pans.String(7); s != "Pan(7)" {
		t.Errorf("a value without a name: %s", s)
	}
	if _, err := pans.Marshal(7); !errors.Is(err, units.ErrName) {
		t.Errorf("a value without a name: %v", err)
	}
	// What is refused leaves the value alone and tells the nearest name.
	p = 1
	err := pans.Unmarshal(&p, []byte("ketlle"))
	var pe *units.ParseError
	if !errors.As(err, &pe) || p != 1 || !strings.Contains(pe.Hint, `did you mean "kettle"?`) {
		t.Errorf("%v, %v", p, err)
	}
	if err := pans.Unmarshal(&p, []byte("")); err == nil {
		t.Error("nothing is no pan")
	}
}

// Distances of the textbooks: kitten to sitting is 3, and a swap is one slip.
func TestSlips(t *testing.T) {
	for _, c := range []struct {
		a, b string
		n    int
	}{{"kitten", "sitting", 3}, {"flaw", "lawn", 2}, {"", "abc", 3}, {"abc", "", 3}, {"ab", "ba", 1}, {"ca", "abc", 3}, {"same", "same", 0}} {
		if n := enum.Slips([]rune(c.a), []rune(c.b)); n != c.n {
			t.Errorf("%s to %s: %d, want %d", c.a, c.b, n, c.n)
		}
	}
	names := []string{"elevation", "barometer", "taps"}
	for text, want := range map[string]string{"elevatoin": "elevation", "TAP": "taps", "barometr": "barometer", "xyz": "", "": "", strings.Repeat("e", 1000): ""} {
		if got, _ := enum.Nearest(text, slices.Values(names)); got != want {
			t.Errorf("%.20q: %q, want %q", text, got, want)
		}
	}
}

type door uint8

// A zero value that is none has no name among the others, and no text reads and
// writes it.
func TestNone(t *testing.T) {
	doors := enum.Names[door]{Type: "cellar.Door", Of: []string{1: "left", 2: "right"}, Zero: true}
	if got := doors.List(); len(got) != 2 || got[0] != 1 || got[1] != 2 {
		t.Errorf("%v", got)
	}
	if s := doors.String(0); s != "Door(0)" {
		t.Error(s)
	}
	d := door(2)
	b, err := doors.Marshal(0)
	if err != nil || len(b) != 0 || doors.Unmarshal(&d, b) != nil || d != 0 {
		t.Errorf("%q, %v, %d", b, err, d)
	}
	var pe *units.ParseError
	if err := doors.Unmarshal(&d, []byte("lift")); !errors.As(err, &pe) || pe.Hint != `did you mean "left"? Use one of: left, right` {
		t.Errorf("%v", err)
	}
}

// Whatever comes in is refused and touches nothing, or has a name that comes
// back.
func FuzzUnmarshal(f *testing.F) {
	for _, s := range []string{"kettle", " POT ", "", "flu pan", "\xff", "KETTLE", "flat pan", "\x00"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		v := pan(9)
		if err := pans.Unmarshal(&v, b); err != nil {
			if v != 9 || !errors.Is(err, units.ErrName) {
				t.Fatalf("%q: %d beside %v", b, v, err)
			}
			return
		}
		out, err := pans.Marshal(v)
		back := pan(9)
		if err == nil {
			err = pans.Unmarshal(&back, out)
		}
		if err != nil || back != v {
			t.Fatalf("%q is %d, goes out as %s and is then %d: %v", b, v, out, back, err)
		}
	})
}
