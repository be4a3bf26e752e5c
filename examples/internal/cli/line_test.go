package cli

import (
	"bytes"
	"errors"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What a terminal would obey, or show in another order, is spelled out; letters
// of any script stay.
func TestLine(t *testing.T) {
	for in, want := range map[string]string{
		"a\x1b[2Jb.csv":      `a\x1b[2Jb.csv`,
		"a\u009b2J":          `a\u009b2J`, // the same in one character
		"a\u202egnp.csv":     `a\u202egnp.csv`,
		"a\u2067b\u200f":     `a\u2067b\u200f`,
		"a\xffb":             `a\xffb`,
		"a\ufffdb":           "a\ufffdb",
		"a\nb\tc\rd":         "a b c d",
		"\x07\x08\x7f":       `\a\b\x7f`,
		"érable à sucre, 樹.": "érable à sucre, 樹.",
		`it's "so"`:          `it's "so"`,
	} {
		if got := Line(errors.New(in)); got != want {
			t.Errorf("%q: %q, not %q", in, got, want)
		}
	}
}

// The name of a file reaches the terminal so, and a flag that nobody knows.
func TestNamesOfFilesAreSpelledOut(t *testing.T) {
	p := Program{Name: "p", Setup: func(f *Flags) func(*Env) error {
		var name string
		f.String(&name, "in", "", "a file")
		return func(e *Env) error { _, err := e.Open("in", name); return err }
	}}
	name := filepath.Join(t.TempDir(), "\x1b]0;x\x07\u202e.csv")
	for _, args := range [][]string{{"-in", name}, {"-\x1b[1m"}, {"\x1b[1m"}} {
		var errw bytes.Buffer
		if status := p.Main(args, nil, new(bytes.Buffer), &errw); status != BadInput {
			t.Errorf("status %d", status)
		}
		if strings.ContainsAny(errw.String(), "\x1b\x07\u202e") || !strings.Contains(errw.String(), `x1b`) {
			t.Errorf("%q", errw.String())
		}
	}
}

// A field of Go is no way out for a person.
func TestReasonNamesNoField(t *testing.T) {
	_, graduation := density.Hydrometer{}.Brix(2, units.Celsius(10))
	_, flask := density.Flask{Volume: 500 * units.Milliliter, CalibratedAt: units.Celsius(-5)}.Net(66, units.Celsius(20))
	_, membrane := sugar.Membrane{}.Time(units.Liter, 100)
	_, feed := boil.PressureAt(9 * units.Kilometer)
	for name, c := range map[string]struct {
		err  error
		want string
	}{
		"graduation": {graduation, "give the temperature printed on the scale"},
		"flask":      {flask, "give the temperature at which the volume holds"},
		"membrane":   {membrane, "give the permeate flow that the maker rates"},
		"elevation":  {feed, "check feet against meters"},
	} {
		if c.err == nil {
			t.Errorf("%s: no error", name)
			continue
		}
		got := Reason(c.err)
		if !strings.Contains(got, c.want) || regexp.MustCompile(`\bset [A-Z]|[a-z][A-Z]`).MatchString(strings.ReplaceAll(got, "kPa", "")) {
			t.Errorf("%s: %s", name, got)
		}
	}
}
