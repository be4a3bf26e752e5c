package folder

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// Each mistake is told with its line and the way out, all of them at once, in the
// order of the file.
func TestAllMistakes(t *testing.T) {
	_, err := open("elevation: 1150\nname: Hollow Road\ntapps: 60\npan: 2 x 4 ft\npan: 2 x 5 ft\ncompartments: 2 x 3 ft\njust words\nplace: Vermnot\nsafe depht: 1 in\nguideline: my own\nscale: Baumme\ncollected by: pump\ndepth:\n")
	want := []string{
		`sugarhouse.txt:1: elevation: `, `write the unit behind the number`,
		`:3: tapps: no setting is called so: is it "taps"?`,
		`:5: pan: set twice, in line 4 and here: keep one`,
		`:6: compartments: says the same as "pan" in line 4: keep one`,
		`:7: "just words" is no setting: write it as "elevation: 1150 ft"`,
		`:8: place: "Vermnot" is not known: is it "Vermont"?`,
		`:9: safe depht: no setting is called so: is it "safe depth"?`,
		`:10: guideline: "my own" is not the short name of a guideline`,
		`:11: scale: "Baumme" is not known: is it "Baume"?`,
		`:12: collected by: tell the vacuum at the holes, as: pump at 20 inHg`,
		`:13: depth: nothing is set: write the value behind the colon, or begin the line with #`,
	}
	if err == nil || strings.Count(err.Error(), "\n") != 10 {
		t.Fatalf("%v", err)
	}
	rest := err.Error()
	for _, w := range want {
		_, after, ok := strings.Cut(rest, w)
		if !ok {
			t.Fatalf("%q does not follow in:\n%v", w, err)
		}
		rest = after
	}
}

func TestFirstTwenty(t *testing.T) {
	var text strings.Builder
	for i := range 25 {
		fmt.Fprintf(&text, "nothing like it %d: 1\n", i)
	}
	_, err := open(text.String())
	if err == nil || strings.Count(err.Error(), "\n") != 19 || !strings.Contains(err.Error(), ":20: ") {
		t.Errorf("%v", err)
	}
}

// A file that is no settings file is refused in one line that can be printed and
// is short.
func TestHostile(t *testing.T) {
	long := strings.Repeat("x", 1<<20)
	for name, c := range map[string]struct{ text, want string }{
		"megabyte":    {long, "longer than 256 KiB"},
		"long line":   {"elevation: " + long[:2000] + "\n", "a line of 2011 characters"},
		"long name":   {long[:900] + ": 1", "no setting is called so"},
		"long value":  {"pan: " + long[:900], "begin with a number"},
		"zero bytes":  {"elevation: 11\x0050 ft", "not a text"},
		"UTF-16":      {"\xff\xfee\x00l\x00", "save it as UTF-8"},
		"Latin-1":     {"name: \xc9rabli\xe8re", ":1: not UTF-8"},
		"bidi":        {"\nname: a\u202eb", ":2: holds the character U+202E"},
		"escape":      {"name: a\x1b[2Jb", "U+001B"},
		"zero width":  {"na\u200bme: a", "U+200B"},
		"NaN":         {"elevation: NaN ft", "begin with a number"},
		"infinite":    {"elevation: 1e999 ft", "too large"},
		"huge":        {"elevation: 1e300 ft", "outside"},
		"bare colon":  {":", "is no setting"},
		"no value":    {"name:  # soon", "nothing is set"},
		"equals":      {"elevation = 1150 ft", "is no setting"},
		"many taps":   {"taps: 99999999999999999999", "taps"},
		"half a tap":  {"taps: 1.5", "taps"},
		"no taps":     {"taps: 0", "taps"},
		"quick":       {"evening: 9999999 hours", "longer than a week"},
		"when":        {"fire lit: 8", "not a time of the day"},
		"no such":     {"fire lit: 25:00", "not a time of the day"},
		"13 pm":       {"fire lit: 13pm", "not a time of the day"},
		"moist oil":   {"fuel: oil, 25 %", "no moisture"},
		"too hot":     {"fill at: 212 F", "outside"},
		"bare degree": {"shelf: 50", "50"},
		"pail taps":   {"pail: 2 US gal, 300 taps", "one pail"},
	} {
		_, err := open(c.text)
		if err == nil || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") || len(err.Error()) > 600 || !strings.HasPrefix(err.Error(), "here/sugarhouse.txt:") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// What editors and people do to a text without meaning anything by it.
func TestHarmless(t *testing.T) {
	for _, text := range []string{
		"\ufeffelevation: 1150 ft\r\n\r\n# taps: 3\r\n", "ELEVATION :1150 ft", " elevation:  1150   ft  ", "elevation: 1150 ft # from the map",
		"elevation:\u00a01150\u00a0ft", "\televation: 1150 ft", "elevation: 1150 ft\n\n\n", "# \u200d\u202e in a remark\nelevation: 1150 ft",
	} {
		h, err := open(text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
			continue
		}
		if got := h.Settings.Spell(filled(h, "boilday", "elevation")); got != "1150 ft" {
			t.Errorf("%q: %q", text, got)
		}
	}
	// A # inside a word begins no remark.
	if got := must(t, "name: Lot #7").Settings.Name + must(t, "name: Lot#7").Settings.Name; got != "LotLot#7" {
		t.Errorf("%q", got)
	}
}

// A line of the command line stands in the place of that of the file, and of all
// that says the same.
func TestSet(t *testing.T) {
	h := must(t, "taps: 60\ncompartments: 2 x 3 ft, 2 x 1 ft\nbarrow: 1/25 cord", "pan: 2 x 3 ft", "armful: 1/200 cord")
	if got := filled(h, "boilday", "pan-area") + filled(h, "boilday", "compartments"); got != "6 ft2" {
		t.Errorf("%q", got)
	}
	if h.Settings.Measure.Name != "armful" || h.Settings.Taps != 60 {
		t.Errorf("%+v", h.Settings)
	}
	for _, set := range []string{"pan", "pan: 2", "pann: 2 x 4 ft", "pan:", "\x00: 1", "elevation: 1 ft\nelevation: 2 ft"} {
		if _, err := open("taps: 60", set); err == nil || !strings.HasPrefix(err.Error(), "-set: ") {
			t.Errorf("%q: %v", set, err)
		}
	}
	// What is wrong there is told alone, whatever follows from it.
	if _, err := open("pan: 2 x\npail: 2 gal", "gallons: metric"); err == nil || err.Error() != `-set: gallons: "metric" is not known: use one of US, imperial` {
		t.Errorf("%v", err)
	}
	// One tank takes the place of its namesake, and another comes beside it.
	h = must(t, "gallons: US\ntank: big, 120 gal\ntank: old, 30 gal", "tank: Big, 150 gal", "tank: new, 20 gal")
	if got := filled(h, "sapweek", "storage"); got != "200 US gal" || len(h.Settings.Tanks) != 3 {
		t.Errorf("%q, %v", got, h.Settings.Tanks)
	}
	// A wrong line that is overruled does not count.
	must(t, "pan: 2 x", "pan: 2 x 4 ft")
}

// A name that is nearly right is told, and a folder of something else.
func TestMisnamed(t *testing.T) {
	for _, name := range []string{"Sugarhouse.txt", "sugarhouse.txt.txt", "sugar house.txt", "sugarhouse", "SUGAR_HOUSE.TXT"} {
		_, err := Open(fstest.MapFS{name: {Data: []byte("taps: 60")}}, "here", 0)
		if err == nil || err.Error() != "here/"+name+": not read: name it sugarhouse.txt" {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := Open(fstest.MapFS{"letter.odt": {}}, "here", 0); err == nil || !strings.Contains(err.Error(), "here: no sugarhouse") {
		t.Errorf("%v", err)
	}
	if _, err := Open(fstest.MapFS{SettingsFile + "/days.csv": {}}, "here", 0); err == nil {
		t.Error("a folder of that name is read")
	}
	if h, err := Open(nil, "", 0, "taps: 7"); err != nil || h.Settings.Taps != 7 {
		t.Errorf("%v", err)
	}
}

// Whatever stands in the file, it is read or refused in short lines of one mistake
// each, and what is read fills flags with text.
func FuzzSettings(f *testing.F) {
	f.Add("gallons: US\ntank: big, 120 gallons, 2.5 gallons an inch\npan: 2 x 4 ft\n", "evening: 5 hours")
	f.Add("\ufeffname: Lot #7 # remark\r\nfuel: sugar maple, 25 %", "thermometer off: 0.4 F high")
	f.Add("collected by: pump at 20 inHg\nboils off: 8 gal/h", "pail: 2 gal, 2 taps")
	f.Fuzz(func(t *testing.T, text, set string) {
		h, err := open(text, set)
		if err != nil {
			if n := strings.Count(err.Error(), "\n"); n >= mostMistakes || len(err.Error()) > 800*(n+1) {
				t.Errorf("%d lines, %d bytes", n+1, len(err.Error()))
			}
			return
		}
		for _, l := range h.Settings.Lines() {
			for _, fill := range l.Fills {
				if fill.Text == "" || strings.ContainsAny(fill.Text, "\n\x00\x1b") {
					t.Errorf("%s fills -%s with %q", l.Name, fill.Flag, fill.Text)
				}
			}
		}
	})
}
