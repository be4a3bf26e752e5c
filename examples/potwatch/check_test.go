package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// What a check tells of the instruments. At 28.70 inHg water boils 1.22 x 1.71 = 2.1 F
// below the 211.95 of 1 atm, at 209.9.
func instruments(t *testing.T, b clitest.Binary) {
	const here = "-pressure|28.7 inHg|-elevation|1150 ft|"
	for _, c := range []struct{ args, want, not string }{
		{here + "-check-boiling|211 F|-check-ice|33 F", "The thermometer is off: it shows 1.1 F deg high at the boil and as much in ice.", "Let the solution"},
		{here + "-check-boiling|211 F|-check-ice|33 F", "Settings thermometer off: 1.1 F deg high (a line of sugarhouse.txt)", ""},
		{here + "-check-boiling|209.7 F|-check-ice|32.2 F", "agrees with the pressure within half a degree", "Settings"},
		{here + "-check-boiling|205 F|-check-ice|32 F", "The thermometer is off at the boil: it shows 4.9 F deg low.", ""},
		{here + "-check-boiling|205 F|-check-ice|32 F", "Settings thermometer off: 4.9 F deg low", ""},
		{here + "-check-boiling|208.9 F|-check-ice|32 F", "Thermometer and barometer differ, 1.0 F deg low, and weather would explain it", "Settings"},
		// Right at the boil, and 1.8 F low in ice, which no barometer explains.
		{here + "-check-boiling|210 F|-check-ice|30.2 F", "agrees with the pressure at the boil, and shows 1.8 F deg low in ice: read it there again", "barometer"},
		{here + "-check-boiling|211 F", "Without -check-ice nobody knows which of the two is off", "Settings"},
		{here + "-check-boiling|211 F|-check-ice|33 F|-metric", "it shows 0.6 C deg high", "F deg"},
		{"-elevation|1150 ft|-check-boiling|211 F|-check-ice|32 F", "for average weather, which may be the weather: give the barometer too", "Settings"},

		// 669 g of a kilogram; a stem of 60 F reads 0.034 Brix less for each F, 0.4 at 70 F.
		{"-check-brix|66.9 Brix|-check-at|70 F", "Weigh out 669 g sugar, 331 g water", "Settings"},
		{"-check-brix|66.9 Brix|-check-at|70 F", "It must read 66.5 Brix (at 70 F; marked at 60 F)", ""},
		{"-check-brix|66.9 Brix|-check-at|70 F|-check-reads|67.3 Brix", "The hydrometer reads 0.8 Brix high. ", ""},
		{"-check-brix|66.9 Brix|-check-at|70 F|-check-reads|67.3 Brix", "Settings hydrometer off: 0.8 Brix high", ""},
		{"-check-brix|66.9 Brix|-check-at|60 F|-check-reads|66.9 Brix", "The hydrometer is right.", "Settings"},
		// Water of 70 F is 0.0020 lighter than at 38 F, of which the glass takes 0.0004: 0.4
		// Brix of 0.0039 each. So the stem for sap stands below zero.
		{"-check-brix|0 Brix|-check-at|70 F|-check-reads|0.3 Brix", "Weigh out plain water It must read -0.4 Brix (at 70 F; marked at 38 F)", "Settings"},
		// 66.9 Brix are 36.06 Be and 66.0 are 35.60, 0.51 to a Brix (table baume-worked): 36.1 is
		// right to the tenth that is read, and 35.1 is 0.96 Be less, 1.9 Brix.
		{"-check-brix|66.9 Brix|-check-at|60 F|-check-reads|36.1 Be", "The hydrometer is right. Weigh out 669 g sugar, 331 g water It must read 36.1 Be (at 60 F; marked at 60 F)", "Settings"},
		{"-check-brix|66.9 Brix|-check-at|60 F|-check-reads|35.1 Be", "The hydrometer reads 1.9 Brix low. ", ""},
		{"-check-brix|66.9 Brix|-check-at|60 F|-set|scale: Baume", "It must read 36.1 Be (at 60 F; marked at 60 F)", "Settings"},
		{here + "-check-boiling|211 F", "Water near 211 F scalds, and so does its steam", "sticks"},
		{"-check-brix|2 Brix|-check-at|70 F|-hydrometer|60 F", "Weigh out 20 g sugar, 980 g water It must read 1.8 Brix (at 70 F; marked at 60 F)", ""},
	} {
		page, _ := b.Brief(t, "", strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(page), " ") + " "
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q\n%s", c.args, c.want, c.not, page)
		}
	}
}

// What a check finds off is shown, and written on request into the settings, which count
// from then on: a thermometer 1.1 F high in place of 0.4 F, with the file as it was kept
// beside it. One that agrees is written only where the settings have it off.
func TestCheckWrites(t *testing.T) {
	b := clitest.Build(t)
	const before = "gallons: US\nelevation: 1150 ft\nthermometer off: 0.4 F deg high # by ice\n"
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": before})
	file := func(name string) string {
		text, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil && name == "sugarhouse.txt" {
			t.Fatal(err)
		}
		return string(text)
	}
	boiling := func(shows string, more ...string) string {
		status, page, errs := b.Run(t, "", append([]string{"-dir", dir, "-pressure", "28.7 inHg", "-check-boiling", shows, "-check-ice", "33 F"}, more...)...)
		if status != 0 {
			t.Errorf("%v: %d %s", more, status, errs)
		}
		return strings.Join(strings.Fields(page), " ")
	}
	if page := boiling("211 F"); !strings.Contains(page, "-write adds 1 line to sugarhouse.txt in place of what stands there") || file("sugarhouse.txt") != before {
		t.Errorf("%s\n%s", page, file("sugarhouse.txt"))
	}
	page := boiling("211 F", "-write", "-check-brix", "66.9 Brix", "-check-at", "70 F", "-check-reads", "67.3 Brix")
	after := strings.Replace(before, "0.4", "1.1", 1) + "hydrometer off: 0.8 Brix high\n"
	if !strings.Contains(page, "Added 2 lines to sugarhouse.txt") || file("sugarhouse.txt") != after || file("sugarhouse.txt.before") != before {
		t.Errorf("%s\n%s", page, file("sugarhouse.txt"))
	}
	if page := boiling("211 F", "-write"); !strings.Contains(page, "The settings say so already.") || file("sugarhouse.txt") != after {
		t.Errorf("%s\n%s", page, file("sugarhouse.txt"))
	}
	// Water boils at 209.9 F: right again, and the settings are told so.
	boiling("209.9 F", "-check-ice", "32 F", "-write")
	if want := strings.Replace(after, "1.1", "0.0", 1); file("sugarhouse.txt") != want {
		t.Errorf("%q, want %q", file("sugarhouse.txt"), want)
	}
	for args, want := range map[string]string{
		"-dir|" + dir + "|-check-brix|66.9 Brix|-write":                                      "-write: there is nothing to add",
		"-elevation|1150 ft|-pressure|28.7 inHg|-check-boiling|211 F|-check-ice|33 F|-write": "-write: give the folder of your sugarhouse by -dir",
	} {
		if status, _, errs := b.Run(t, "", strings.Split(args, "|")...); status != 2 || !strings.Contains(errs, want) {
			t.Errorf("%s: %d %s", args, status, errs)
		}
	}
}

func badChecks() (cases []clitest.Bad) {
	for _, c := range []struct{ args, want string }{
		{"-check-ice|32 F", "-check-ice: give -check-boiling too"},
		{"-check-reads|66 Brix", "-check-reads: give -check-brix too"},
		{"-check-boiling|211 F", "-check-boiling: say where water should boil"},
		{"-check-boiling|211 F|-water-boils|210 F", "-water-boils: that is what is checked here"},
		{"-check-boiling|211 F|-pressure|28.7 inHg", "-elevation: give it beside -pressure"},
		{"-check-boiling|170 F|-elevation|0 ft", "-check-boiling: reading in boiling water 170 F"},
		{"-check-boiling|211 F|-check-ice|60 F|-elevation|0 ft", "-check-ice: reading in ice 60 F"},
		{"-check-brix|80 Brix", "-check-brix: strength of the solution 80 Brix is outside"},
		{"-check-brix|66.9 Brix|-check-at|250 F", "-check-at: temperature 250 F"},
		{"-check-brix|66.9 Brix|-check-reads|36", `-check-reads: "36": write a reading as 59.5 Brix or 31.5 Be`},
		{"-check-brix|66.9 Brix|-check-reads|36 F", "write a reading as 59.5 Brix or 31.5 Be"},
		{"-check-brix|66.9 Brix|-check-reads|80 Brix", "-check-reads: reading 80 Brix is outside"},
		{"-check-boiling|211 F|-pressure|30.1 inHg|-elevation|1500 ft", "-pressure: station pressure 30.1 inHg"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}
