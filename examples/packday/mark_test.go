package main

import (
	"bytes"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
)

// Leave it, mend it or read again. The stem reads within 0.36 Brix. By hand, as
// standard uncertainties: half a step of 0.5 over the root of 3 is 0.144, half of
// the scale's 0.2 is 0.100, surface tension (185e-6 of 1,330 kg/m3, at 6.16 kg/m3
// for a Brix) 0.040, and 1 F over the root of 3, at 0.04 Brix for 1 F, 0.023. The
// root of their squares is 0.18, twice of it 0.36. From 66 to 68.9 Brix what lies
// from 66.36 to 68.54 is left, what lies under 65.64 or over 69.26 is mended, and
// what lies between is read again.
func TestMark(t *testing.T) {
	for _, c := range []struct{ args, want, not string }{
		{"-reading|67.0 Brix", "To do leave it", "Thin with"},
		{"-reading|67.0 Brix|-target|66.9 Brix", "To do leave it (no reading tells it from the target:", "inside the rule:"},
		// 68.4 is 1.5 from the target, four times the 0.36, and 0.5 under the 68.9 of the rule.
		{"-reading|68.4 Brix", "To do leave it (inside the rule:", "no reading tells"},
		{"-reading|66.5 Brix", "To do leave it", "Boil off"},
		{"-reading|66.1 Brix", "To do read again", "Boil off"},
		{"-reading|65.0 Brix", "Boil off, water", "To do"},
		{"-reading|68.4 Brix", "from 68 Brix on crystals are likely", "Thin with"},
		{"-reading|68.8 Brix", "To do read again", "Thin with"},
		{"-reading|68.8 Brix", "What stays as close to the most is thinned off the fire", "boiled on"},
		{"-reading|66.1 Brix", "What stays as close to the least strength is boiled on", "thinned"},
		{"-reading|66.1 Brix", "Give or take holds 19 times of 20 (k = 2), on all of this page.", "lus or minus"},
		// Water boils at 210.1 F at 1,000 ft. What is boiled is read at 211 F there, under
		// 2 F under 217.6; at 6,000 ft 2 F under 208 and more; what is only warmed, 2 F
		// under the filter's 190.
		{"-reading|65.0 Brix|-elevation|1000 ft", "in the cup at 211.0 F, as is usual: measure yours and give -cup; above 194 F", "they agree"},
		{"-reading|65.0 Brix|-elevation|6000 ft", "in the cup at 206.0 F, as is usual", "211"},
		{"-reading|67.0 Brix|-elevation|6000 ft", "in the cup at 188.0 F, as is usual", "extrapolated"},
		{"-reading|65.0 Brix|-water-boils|209.8 F|-elevation|1000 ft", "which the weather of most days explains: they agree", "write"},
		{"-reading|70 Brix", "Off the fire first. Thin it there with hot water or hot sap", "To do"},
		{"-reading|67.6 Brix|-target|66.9 Brix", "Thin with", "To do"},
		{"-reading|67.0 Brix|-place|Vermont", "To do read again", "Boil off"},
		{"-reading|64 Brix|-target|64 Brix", "it ferments or molds in the jar", "Boil off"},
		{"-reading|64 Brix|-target|64 Brix", "from the target that you gave, which the rule forbids", "cost color"},
		{"-reading|70 Brix|-thin-with|64.5 Brix", "Thin it there with the lighter syrup, hot, in small pours", "hot sap"},
		// 66.9 + 0.37 = 67.27: 66.9 cannot be told from too thin, 67.3 can.
		{"-reading|64 Brix|-target|66.9 Brix|-place|Vermont", "To be sure of it finish denser, at 67.3 Brix", "To do"},
		{"-reading|64 Brix|-target|67.3 Brix|-place|Vermont", "By the rule on density inside (Vermont", "finish denser"},
	} {
		var out, complaint bytes.Buffer
		args := append([]string{"-full", "-volume", "3 US gal"}, strings.Split(c.args, "|")...)
		if status := program().Main(args, strings.NewReader(""), &out, &complaint); status != 0 {
			t.Errorf("%s: status %d, %s", c.args, status, complaint.String())
		}
		flat := strings.Join(strings.Fields(out.String()), " ")
		if !strings.Contains(flat, c.want) || strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q and not %q\n%s", c.args, c.want, c.not, out.String())
		}
	}
}

// What the settings say of the instruments is counted: a hydrometer that reads 0.5
// Brix high has 67 Brix for 67.5, and must read 0.5 more at the mark.
func TestOff(t *testing.T) {
	read := func(settings, reading string) string {
		var out, complaint bytes.Buffer
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings})
		if status := program().Main([]string{"-dir", dir, "-full", "-volume", "3 US gal", "-reading", reading}, strings.NewReader(""), &out, &complaint); status != 0 {
			t.Fatal(complaint.String())
		}
		return out.String()
	}
	high, true := read("hydrometer off: 0.5 Brix high\n", "67.5 Brix"), read("", "67.0 Brix")
	if !strings.Contains(high, "67.5 Brix  60.0 F  67.00 Brix") || !strings.Contains(high, "61.0 Brix (in the cup") || !strings.Contains(true, "60.5 Brix (in the cup") ||
		!strings.Contains(strings.Join(strings.Fields(high), " "), "yours reads 0.5 Brix high") {
		t.Errorf("%s\n%s", high, true)
	}
}

// A lot is told by its weight in words as by the flag, and what is left over is told
// where it fills something: 11.07 lb of 66.9 Brix are a US gallon at 68 F, as is the check
// value of density.InAir.
func TestWeightInWords(t *testing.T) {
	page := func(args ...string) string {
		t.Helper()
		var out, complaint bytes.Buffer
		if status := program().Main(args, strings.NewReader(""), &out, &complaint); status != 0 {
			t.Fatalf("%q: %s", args, complaint.String())
		}
		return out.String()
	}
	words := page("-hydrometer", "68 F", "11.076 lb 66.9 at 68 F")
	if !strings.Contains(words, "1 US gal") || words != page("-hydrometer", "68 F", "-weight", "11.076 lb", "-reading", "66.9 Brix", "-read-at", "68 F", "-temp", "68 F") {
		t.Errorf("%s", words)
	}
	if strings.Contains(words, "0 US qt (keep it cold") {
		t.Errorf("nothing is left over:\n%s", words)
	}
}

// What nobody tells is said as assumed: a stem that is marked at 68 F reads 0.3 Brix more
// than one at 60 F, which is as much as the reading is known. What the folder tells, is
// not.
func TestStemThatNobodyTold(t *testing.T) {
	batches := "batch,date,volume_l,reading_brix,cup_c\na,2034-03-01,5,66.9,20\n"
	for settings, assumed := range map[string]bool{
		"units: metric\nelevation: 350 m\n":                                   true,
		"units: metric\nelevation: 350 m\nsyrup hydrometer: marked at 20 C\n": false,
	} {
		dir := clitest.Folder(t, map[string]string{folder.SettingsFile: settings, folder.BatchesFile: batches})
		for _, args := range [][]string{{"-dir", dir}, {"-dir", dir, "-reach", "66 to 68 Brix"}} {
			var out, complaint bytes.Buffer
			if status := program().Main(args, strings.NewReader(""), &out, &complaint); status != 0 {
				t.Fatal(complaint.String())
			}
			if said := strings.Contains(strings.Join(strings.Fields(out.String()), " "), "Assumed: hydrometer marked at 15.6 C"); said != assumed {
				t.Errorf("%q, %v: %s", settings, args, out.String())
			}
		}
	}
}

// Syrup that fills no container says why, and what becomes of it; and no heat to pour at
// is told. 10 US fl oz, less 6 in the filter, do not fill a pint.
func TestNothingToFill(t *testing.T) {
	for args, want := range map[string]string{
		"-volume|10 US fl oz|-containers|any 1 US pt":                  "Filter it hot. It is too little for the smallest container: keep it cold, and use it first.",
		"-volume|3 US gal|-containers|0x1 US pt":                       "Filter it hot. No container is on hand for it: keep it cold",
		"-volume|10 US fl oz|-reading|64 Brix|-containers|any 1 US pt": "boil it on to 66.9 Brix, filter it hot. It is too little",
		"-volume|10 US fl oz|-reading|66 Brix|-containers|any 1 US pt": "Read again before you warm it.",
	} {
		var out, complaint bytes.Buffer
		if status := program().Main(strings.Split(args, "|"), strings.NewReader(""), &out, &complaint); status != 0 {
			t.Fatal(complaint.String())
		}
		if got := strings.Join(strings.Fields(out.String()), " "); !strings.Contains(got, want) || strings.Contains(got, "Pour at") {
			t.Errorf("%s: %s", args, out.String())
		}
	}
}
