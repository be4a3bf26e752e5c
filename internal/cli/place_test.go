package cli_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/cli"
)

// barometer prints the pressure that its flags tell.
func barometer() cli.Program {
	return cli.Program{
		Name: "barometer", Does: "Tells how the air presses.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var p cli.Place
			f.Place(&p, "1000 ft")
			return func(e *cli.Env) error {
				pressure, flag, err := p.Pressure()
				if err != nil {
					return err
				}
				fmt.Fprintf(e.Out, "%.1f kPa by %s\n", pressure.Kilopascals(), flag)
				return nil
			}
		},
	}
}

// The pressures: the standard atmosphere of 1976 at sea level and 1000 ft
// (97.716 kPa), and water that boils at 100 C (IAPWS-IF97: 101.42 kPa).
func TestPlace(t *testing.T) {
	for _, c := range []struct{ args, want string }{
		{"", "97.7 kPa by elevation\n"},
		{"-elevation=0 ft", "101.3 kPa by elevation\n"},
		{"-pressure=98 kPa", "98.0 kPa by pressure\n"},
		{"-altimeter=1013.25 hPa|-elevation=1000 ft", "97.7 kPa by altimeter\n"},
		{"-water-boils=100 C", "101.4 kPa by water-boils\n"},
		{"-altimeter=30 inHg", "barometer: -altimeter: give -elevation too"},
		{"-altimeter=30 inHg|-elevation=9 km", "barometer: -elevation: elevation 29530 ft (9000 m) is outside -1640 to 16400 ft"},
		{"-altimeter=20 inHg|-elevation=9 m", "barometer: -altimeter: altimeter setting 20 inHg (67.73 kPa) is outside"},
		{"-elevation=9 km", "barometer: -elevation: elevation 29530 ft (9000 m) is outside -1640 to 16400 ft"},
		{"-water-boils=-20 C", "barometer: -water-boils: boiling point of water -4 F (-20 C) is outside"},
		{"-water-boils=102.2 C", "109.6 kPa by water-boils\n"},
		{"-water-boils=220 F", "barometer: -water-boils: boiling point of water "},
		{"-water-boils=81 C", "barometer: -water-boils: boiling point of water "},
		{"-pressure=50 kPa", "50.0 kPa by pressure\n"},
		{"-pressure=110 kPa", "110.0 kPa by pressure\n"},
		{"-pressure=49.9 kPa", "barometer: -pressure: station pressure "},
		{"-pressure=110.1 kPa", "barometer: -pressure: station pressure "},
		{"-elevation=5000 m", "54.0 kPa by elevation\n"},
		{"-pressure=98 kPa|-elevation=9 m", "barometer: -pressure: says the same as -elevation"},
		{"-water-boils=99 C|-elevation=9 m", "barometer: -water-boils: says the same as -elevation"},
		{"-water-boils=99 C|-pressure=98 kPa", "barometer: -water-boils: says the same as -pressure"},
		{"-altimeter=30 inHg|-pressure=98 kPa", "barometer: -altimeter: says the same as -pressure"},
	} {
		var args []string
		if c.args != "" {
			args = strings.Split(c.args, "|")
		}
		var out, complaint bytes.Buffer
		barometer().Main(args, strings.NewReader(""), &out, &complaint)
		if got := out.String() + complaint.String(); !strings.HasPrefix(got, c.want) {
			t.Errorf("%s: %q, want %q", c.args, got, c.want)
		}
	}
}

// One range of boiling points, and its ends as they are printed are taken.
func TestWaterBoilsHasOneRange(t *testing.T) {
	run := func(at string) string {
		var errw strings.Builder
		barometer().Main([]string{"-water-boils", at}, nil, new(bytes.Buffer), &errw)
		return errw.String()
	}
	for _, at := range []string{"-400 F", "30 F", "170 F", "178.4 F", "81.3 C", "216.1 F", "102.3 C", "217 F", "460 F", "100000 F"} {
		if got := run(at); !strings.Contains(got, " is outside 178.5 to 216 F (81.4 to 102.2 C): no weather does that") {
			t.Errorf("%s: %q", at, got)
		}
	}
	for _, at := range []string{"178.5 F", "81.4 C", "216 F", "102.2 C"} {
		if got := run(at); got != "" {
			t.Errorf("%s: %q", at, got)
		}
	}
}
