package cli_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
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
				for _, line := range p.Told(new(cli.Sheet)) {
					fmt.Fprintln(e.Out, line)
				}
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

// The elevation beside an instrument. By hand: average weather is 29.92 inHg and
// 211.95 F at the sea, 28.86 inHg and 210.1 F at 1,000 ft, 28.33 inHg at 1,500 ft;
// a setting of 29.32 to 30.52 inHg is usual, of 28.2 to 31.4 all that weather
// brings, 26.69 to 29.75 inHg on the spot at 1,500 ft, told rounded inward. Usual weather moves boiling
// water by 0.6 inHg x 1.7 F = 1.0 F.
func TestPlaceHeld(t *testing.T) {
	for _, c := range []struct{ args, want, told string }{
		{"-pressure=30.10 inHg|-elevation=1500 ft", "barometer: -pressure: station pressure 30.1 inHg (101.9 kPa) is outside 26.69 to 29.74 inHg", "set to sea level is given as -altimeter"},
		{"-pressure=30.10 inHg|-elevation=6000 ft", "barometer: -pressure: station pressure 30.1 inHg (101.9 kPa) is outside 22.55 to 25.2", "set to sea level is given as -altimeter"},
		{"-pressure=28.4 inHg|-elevation=1500 ft", "96.2 kPa by pressure\n", "and yours 0.065 inHg more, which the weather of most days explains: they agree"},
		// (29.4^0.1903 - 1.313e-5 x 1500)^(1/0.1903) = 27.84 inHg, 1.56 inHg less: 2.7 F.
		{"-pressure=29.4 inHg|-elevation=1500 ft", "99.6 kPa by pressure\n", "and yours 1.1 inHg more, which the weather of few days explains. If it is set to sea level, as most are, give its reading as -altimeter: water then boils at 208.3 F, 2.7 F deg cooler"},
		{"-pressure=27.2 inHg|-elevation=1500 ft", "92.1 kPa by pressure\n", "and yours 1.1 inHg less, which the weather of few days explains. Check it against"},
		{"-pressure=29.9 inHg", "101.3 kPa by pressure\n", "Give -elevation beside -pressure"},
		{"-water-boils=213.5 F|-elevation=1000 ft", "104.5 kPa by water-boils\n", `At 1000 ft water boils at 210.1 F in average weather, and your thermometer shows 3.4 F deg more, which no weather explains: it is off. Boil plain water again to be sure, then write "reads 3.4 F deg high" on it, give or take 1.0 F deg by the weather.`},
		{"-water-boils=206.8 F|-elevation=1000 ft", "91.4 kPa by water-boils\n", `write "reads 3.3 F deg low" on it`},
		{"-water-boils=211.6 F|-elevation=1000 ft", "100.6 kPa by water-boils\n", `which the weather of few days explains. Boil plain water again; where a barometer tells of nothing unusual it is the thermometer: write "reads 1.5 F deg high" on it`},
		{"-water-boils=209.8 F|-elevation=1000 ft", "97.1 kPa by water-boils\n", "they agree"},
		{"-water-boils=216 F|-elevation=1000 ft", "barometer: -water-boils: boiling point of water 216 F (102.2 C) is outside 205.2 to 215.1 F", "at this -elevation"},
		{"-water-boils=209.8 F", "97.1 kPa by water-boils\n", "Give -elevation beside -water-boils"},
		{"-water-boils=209.8 F|-elevation=9 km", "barometer: -elevation: elevation 29530 ft (9000 m) is outside -1640 to 16400 ft", ""},
		{"-altimeter=29 inHg|-elevation=1000 ft", "94.7 kPa by altimeter\n", "a setting lies on few days"},
		{"-altimeter=30 inHg|-elevation=1000 ft", "98.0 kPa by altimeter\n", ""},
		{"-altimeter=28 inHg|-elevation=1500 ft", "barometer: -altimeter: altimeter setting 28 inHg (94.82 kPa) is outside 28.2 to 31.4 inHg", "given as -pressure"},
	} {
		var out, complaint bytes.Buffer
		barometer().Main(strings.Split(c.args, "|"), strings.NewReader(""), &out, &complaint)
		got := out.String() + complaint.String()
		if !strings.HasPrefix(got, c.want) || !strings.Contains(got, c.told) || c.told == "" && strings.Count(got, "\n") > 1 {
			t.Errorf("%s:\n%s\nwant %q and %q", c.args, got, c.want, c.told)
		}
	}
}
