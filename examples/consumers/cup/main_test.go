package main

import (
	"bytes"
	"flag"
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

func cup(args ...string) (string, error) {
	var out bytes.Buffer
	flags := flag.NewFlagSet("cup", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	err := run(flags, args, &out)
	return out.String(), err
}

// Water boils at 99.974 C, 211.95 F, under 1 atm (29.92 inHg), and syrup of 66.9
// Brix 4.199 K, 7.56 F, above: the tables syrup-point-worked and
// boiling-rise-exact. A 60 F scale reads 59.0 in it at 211 F: hydrometer-worked.
func TestCup(t *testing.T) {
	got, err := cup("-cup", "211 F")
	if want := "Take it off at 219.5 F. In a cup at 211 F the hydrometer reads 59.0 Brix.\n"; err != nil || !strings.HasPrefix(got, want) {
		t.Errorf("%q, %v, want %q", got, err, want)
	}
	metric, err := cup("-cup", "99.4444 C", "-barometer", "101.32 kPa", "-scale", "15.5556 C", "-target", "66.9 Brix")
	if answer, _, _ := strings.Cut(got, "Not told"); err != nil || metric != answer {
		t.Errorf("in metric units: %q, %v", metric, err)
	}
}

// What nobody told stands behind the answer: 0.5 inHg is near a degree of the boiling
// point, and a stem for another temperature reads otherwise.
func TestCupSaysWhatItTook(t *testing.T) {
	for args, want := range map[string]string{
		"":                     `Not told, and so taken as -barometer "29.92 inHg", -cup "205 F", -scale "60 F", -target "66.9 Brix".`,
		"-barometer|28.6 inHg": `Not told, and so taken as -cup "205 F", -scale "60 F", -target "66.9 Brix".`,
	} {
		got, err := cup(strings.FieldsFunc(args, func(r rune) bool { return r == '|' })...)
		if err != nil || !strings.HasSuffix(got, "\n"+want+"\n") {
			t.Errorf("%s: %q, %v", args, got, err)
		}
	}
}

func TestCupRefuses(t *testing.T) {
	for _, tt := range []struct{ flag, value, want string }{
		{"-barometer", "28.6", "no unit"},
		{"-barometer", "28.6 F", "28.6 F"},
		{"-barometer", "0.1 inHg", "inHg"}, // SyrupPoint begins at 20 kPa, 5.9 inHg
		{"-cup", "300 F", "300 F is outside 32 to 230 F"},
		{"-scale", "NaN F", "NaN"},
		{"-target", "95 Brix", "95 Brix"},
		{"-target", "66.9 Brix extra", "extra"},
	} {
		got, err := cup(tt.flag, tt.value)
		if err == nil || got != "" || !strings.Contains(units.Reason(err, units.US), tt.want) {
			t.Errorf("%s %q: printed %q, error %v, want %q in it", tt.flag, tt.value, got, err, tt.want)
		}
	}
	if got, err := cup("-cup", "205", "F"); err == nil || got != "" {
		t.Errorf("a unit outside the quotes: %q, %v", got, err)
	}
}
