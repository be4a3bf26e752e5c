package folder

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/units"
)

// open opens a folder that has these settings.
func open(text string, set ...string) (*House, error) {
	return Open(fstest.MapFS{SettingsFile: {Data: []byte(text)}}, "here", 0, set...)
}

// must opens a folder whose settings are right.
func must(t *testing.T, text string, set ...string) *House {
	t.Helper()
	h, err := open(text, set...)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return h
}

// filled is the text that the settings give a flag of a program.
func filled(h *House, program, flag string) string {
	for _, l := range h.Settings.Lines() {
		for _, f := range l.Fills {
			if (f.Program == "" || f.Program == program) && f.Flag == flag {
				return f.Text
			}
		}
	}
	return ""
}

// The example of each setting is one that can be read, and a folder that has all
// of them but for what two say is one sugarhouse.
func TestExamples(t *testing.T) {
	var all strings.Builder
	subjects := map[string]bool{}
	for i := range table {
		r := &table[i]
		must(t, fmt.Sprintf("gallons: US\n%s: %s\n", r.name, r.example), "gallons: US")
		if r.metric != "" {
			must(t, r.name+": "+r.metric)
		}
		if r.remark == "" || len(r.name+r.example) > 60 {
			t.Errorf("%s: %q, %q", r.name, r.example, r.remark)
		}
		if !subjects[r.subject()] {
			fmt.Fprintf(&all, "%s: %s # %s\n", r.name, r.example, r.remark)
		}
		subjects[r.subject()] = true
	}
	must(t, all.String())
}

// What a setting fills is a flag that its program has.
func TestFillsAreFlags(t *testing.T) {
	tried := 0
	check := func(from string, f Fill) {
		if f.Program == "" || f.Flag == "" || f.Program == "wallcard" || f.Program == "spreadsheet" { // they have no such page of help
			return
		}
		help, err := os.ReadFile(filepath.Join("..", "..", f.Program, "testdata", "help.txt"))
		if err != nil {
			t.Fatal(err)
		}
		for _, flag := range append(append([]string{f.Flag}, f.Needs...), f.Unless...) {
			tried++
			if !regexp.MustCompile(`(?m)(^|[ ,])-` + flag + `\b[^-]`).Match(help) {
				t.Errorf("%s fills -%s of %s, which has none", from, flag, f.Program)
			}
		}
	}
	for _, r := range table {
		for _, f := range r.fills {
			check(r.name, f)
		}
	}
	for _, f := range files {
		check(f.name, f.fill)
	}
	if tried < 50 {
		t.Errorf("%d flags tried", tried)
	}
}

// A bare gallon is that of the settings wherever the line stands, and refused
// where no line names it. By hand: an imperial gallon is 4.54609 L.
func TestGallon(t *testing.T) {
	for _, text := range []string{"gallons: imperial\ntank: 100 gallons", "tank: 100 gallons\ngallons: imperial"} {
		if got := must(t, text).Settings.Tanks[0].Holds.Liters(); !(got > 454.608 && got < 454.610) {
			t.Errorf("%q: %v L", text, got)
		}
	}
	for _, line := range []string{"tank: 100 gallons", "boils off: 8 gallons an hour", "pail: 2 gal", "jar: 1 quart", "jar: 1 pint"} {
		if _, err := open("elevation: 900 ft\n" + line); err == nil || !strings.Contains(err.Error(), "here/sugarhouse.txt:2: ") || !strings.Contains(err.Error(), "gallons: US") {
			t.Errorf("%s: %v", line, err)
		}
	}
	// A country beside the gallon counts, whatever the folder's is.
	if got := filled(must(t, "gallons: imperial\njar: 1 US qt"), "sapweek", "jar"); got != "1 US qt" {
		t.Errorf("%q", got)
	}
}

// Quantities as people write them.
func TestSpell(t *testing.T) {
	us, imperial := Settings{Gallon: units.USGallon}, Settings{Gallon: units.ImperialGallon}
	for in, want := range map[string][2]string{
		"8 gallons an hour":       {"8 US gal/h", "8 imp gal/h"},
		"8 gal/h":                 {"8 US gal/h", "8 imp gal/h"},
		"8 Gallons per hour":      {"8 US gal/h", "8 imp gal/h"},
		"0.5 gal a minute":        {"0.5 US gal/min", "0.5 imp gal/min"},
		"7 1/2 gal":               {"7 1/2 US gal", "7 1/2 imp gal"},
		"3qt":                     {"3 US qt", "3 imp qt"},
		"1 pint":                  {"1 US pt", "1 imp pt"},
		"8 fl oz":                 {"8 US fl oz", "8 imp fl oz"},
		"2 imperial gallons":      {"2 imp gal", "2 imp gal"},
		"2 US gallons an hour":    {"2 US gal/h", "2 US gal/h"},
		"30 L/h":                  {"30 L/h", "30 L/h"},
		"30 L an hour":            {"30 L/h", "30 L/h"},
		"gallons":                 {"gallons", "gallons"},
		"a few gallons":           {"a few gallons", "a few gallons"},
		"5/16 in":                 {"5/16 in", "5/16 in"},
		"  66.9   Brix ":          {"66.9 Brix", "66.9 Brix"},
		"12 gallons of the first": {"12 gallons of the first", "12 gallons of the first"},
	} {
		if got := [2]string{us.Spell(in), imperial.Spell(in)}; got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
	}
}

// Capitals do not count, and the scale of Baume has its sign.
func TestCapitals(t *testing.T) {
	if h := must(t, "sap hydrometer: Marked at 60 F\nsyrup hydrometer: MARKED AT 68 F\nscale: be"); h.Settings.Scale != BaumeScale ||
		!h.Settings.SapHydrometer.Equal(units.Fahrenheit(60)) || !h.Settings.SyrupHydrometer.Equal(units.Fahrenheit(68)) {
		t.Errorf("%+v", h.Settings)
	}
}

// A pan is width times length: 2 by 4 ft is 8 ft2, 24 by 48 in the same, and 61 by
// 122 cm is 0.7442 m2 or 8.0107 ft2.
func TestPan(t *testing.T) {
	for in, want := range map[string]string{"2 x 4 ft": "8 ft2", "2ft x 4ft": "8 ft2", "24 x 48 in": "8 ft2", "2 by 4 ft": "8 ft2", "8 ft2": "8 ft2", "24 in x 4 ft": "8 ft2"} {
		if got := filled(must(t, "pan: "+in), "boilday", "pan-area"); got != want {
			t.Errorf("%s: %q, want %q", in, got, want)
		}
	}
	if got := filled(must(t, "pan: 61 x 122 cm"), "boilday", "pan-area"); !strings.HasPrefix(got, "8.010") {
		t.Errorf("61 x 122 cm: %q", got)
	}
	h := must(t, "compartments: 2 x 3 ft, 2 x 1 ft")
	if got := filled(h, "boilday", "compartments") + "; " + filled(h, "sapweek", "pan-area"); got != "6 ft2, 2 ft2; 8 ft2" {
		t.Errorf("%q", got)
	}
	for _, in := range []string{"2 x", "x 4 ft", "2 x 4", "8", "2 x 4 gal", "NaN x 4 ft", "0 x 4 ft", "2 x 3 ft, 2 x 1 ft", "-2 x -4 ft"} {
		if h, err := open("pan: " + in); err == nil {
			t.Errorf("%q is %s", in, filled(h, "boilday", "pan-area"))
		}
	}
}

// A dip of 10 in of a tank of 2.5 gallons an inch is 25 gallons; a centimeter of 1 L
// makes 2.54 L an inch. All tanks together are what can be stored.
func TestTanks(t *testing.T) {
	h := must(t, "gallons: US\ntank: big, 120 gallons, 2.5 gallons an inch\ntank: The Old One, 30 gal\ntank: third, 200 L, 1 L a cm")
	big, ok := h.Settings.Tank("Big")
	if got := big.At(10 * units.Inch).USGallons(); !ok || !(got > 24.999 && got < 25.001) {
		t.Errorf("%v gallons, %v", got, ok)
	}
	if third, ok := h.Settings.Tank("third"); !ok || !(third.ByInch.Liters() > 2.539 && third.ByInch.Liters() < 2.541) {
		t.Errorf("%v, %v", third, ok)
	}
	if old, ok := h.Settings.Tank("the old-one"); !ok || old.ByInch != 0 {
		t.Errorf("%v, %v", old, ok)
	}
	if _, ok := h.Settings.Tank(""); ok {
		t.Error("of three tanks one needs no name")
	}
	// 120 + 30 + 200/3.785 = 202.83 US gal.
	if got := filled(h, "sapweek", "storage"); !strings.HasPrefix(got, "202.83") {
		t.Errorf("%q", got)
	}
	if one, ok := must(t, "tank: 120 US gal").Settings.Tank(""); !ok || one.Name != "" {
		t.Errorf("%v, %v", one, ok)
	}
	for _, in := range []string{"big", "big, 120 gal, 2.5", "big, 120 gal, 200 gal an inch", "big, 120 gal, 0 gal an inch", "big, 1, 2, 3", ", ,", "big, NaN gal"} {
		if _, err := open("gallons: US\ntank: " + in); err == nil {
			t.Errorf("%q is a tank", in)
		}
	}
	if _, err := open("gallons: US\ntank: big, 100 gal\ntank: Big, 30 gal"); err == nil {
		t.Error("two tanks of one name")
	}
}

// A correction says which way: high is what the instrument shows too much.
func TestOff(t *testing.T) {
	for in, want := range map[string]float64{"0.4 F deg high": 0.4, "0.4 F high": 0.4, "0.4 F low": -0.4, "+0.4 F deg": 0.4, "-0.4 F deg": -0.4, "+0.4 F": 0.4} {
		if got := must(t, "thermometer off: "+in).Settings.ThermometerOff.FahrenheitDegrees(); !(got > want-1e-9 && got < want+1e-9) {
			t.Errorf("%s: %v", in, got)
		}
	}
	if got := must(t, "hydrometer off: 0.3 Brix low").Settings.HydrometerOff; !(got > -0.3001 && got < -0.2999) {
		t.Errorf("%v", got)
	}
	for _, in := range []string{"0.4 F deg", "-0.4 F deg high", "high", "+", "40 F deg high", "0.4 high", "NaN F deg high"} {
		if _, err := open("thermometer off: " + in); err == nil {
			t.Errorf("%q is read", in)
		}
	}
}

// The measure of wood has any name; only one counts.
func TestMeasure(t *testing.T) {
	for in, cords := range map[string]float64{"barrow: 1/25 cord": 0.04, "Wheel-barrow: 1/25 cord": 0.04, "face cord: 1/3 cord": 1. / 3} {
		m := must(t, in).Settings.Measure
		if got := float64(m.Wood / units.Cord); !(got > cords-1e-9 && got < cords+1e-9) {
			t.Errorf("%s: %v", in, m)
		}
	}
	if m := must(t, "Wheel-barrow: 1/25 cord").Settings.Measure; m.Name != "wheel barrow" {
		t.Errorf("%q", m.Name)
	}
	if _, err := open("barrow: 1/25 cord\narmful: 1/200 cord"); err == nil || !strings.Contains(err.Error(), `says the same as "barrow" in line 1`) {
		t.Errorf("%v", err)
	}
}
