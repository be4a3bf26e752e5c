package main

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The day is shown, and added only where that is asked for; then its sap waits no more.
func TestDayIsAdded(t *testing.T) {
	b := clitest.Build(t)
	dir := t.TempDir()
	put := func(name, text string) {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	days := func() string {
		text, err := os.ReadFile(filepath.Join(dir, "days.csv"))
		if err != nil {
			t.Fatal(err)
		}
		return string(text)
	}
	const head = "date,sap_gal,sugar_brix,read_at_f,boiled_gal,lit,out\n"
	put("sugarhouse.txt", "gallons: US\nelevation: 1150 ft\nfire lit: 9:00\n")
	put("days.csv", head+"2034-03-10,40,2.1,41,,,\n2034-03-11,30,2.0,42,,,\n")
	before := days()
	page, _ := b.Brief(t, "", "-dir", dir)
	page = strings.Join(strings.Fields(page), " ")
	if !strings.Contains(page, "Light at 09:00: 70 US gal of sap make") || !strings.Contains(page, "-write adds 1 line to days.csv") || days() != before {
		t.Errorf("shown:\n%s\n%s", page, days())
	}
	status, out, errs := b.Run(t, "", "-dir", dir, "-write")
	if want := before + "2034-03-11,,,,70,9:00,\n"; status != 0 || strings.ReplaceAll(days(), "09:00", "9:00") != want || !strings.Contains(strings.Join(strings.Fields(out), " "), "Added 1 line to days.csv.") {
		t.Errorf("%d %s%s\n%s", status, out, errs, days())
	}
	if status, _, errs = b.Run(t, "", "-dir", dir); status != 2 || !strings.Contains(errs, "no sap waits by") || strings.Count(errs, "\n") != 1 {
		t.Errorf("%d %s", status, errs)
	}
	// The next day is told in words.
	status, out, errs = b.Run(t, "", "-dir", dir, "-day", "2034-03-13", "-write", "40", "gal", "2.1", "at", "41", "F")
	if !strings.HasSuffix(strings.ReplaceAll(days(), "09:00", "9:00"), "\n2034-03-13,40,2.1,41,40,9:00,\n") {
		t.Errorf("%d %s%s\n%s", status, out, errs, days())
	}
}

// What stands in the pans is added, too; a new file begins with its header.
func TestSweetIsAdded(t *testing.T) {
	b := clitest.Build(t)
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "sugarhouse.txt"), []byte("gallons: US\nelevation: 1150 ft\ncompartments: 2 x 3 ft, 2 x 1 ft\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	status, out, errs := b.Run(t, "", "-dir", dir, "-day", "2034-03-13", "-write", "90", "gal", "2.1", "at", "41", "F")
	text, err := os.ReadFile(filepath.Join(dir, "pan.csv"))
	if status != 0 || err != nil || strings.Count(string(text), "2034-03-13,") != 2 || !strings.Contains(strings.Join(strings.Fields(out), " "), "Added 2 lines to days.csv and 3 lines to pan.csv") {
		t.Errorf("%d %s%s\n%s %v", status, out, errs, text, err)
	}
	if _, _, errs := b.Run(t, "", "-dir", dir, "-day", "2034-02-01"); !strings.Contains(errs, "no sap waits") {
		t.Error(errs)
	}
}

// Sweet that waits for days is as doubtful as sap that does: 8 to 15 March are 7 days.
func TestOldSweet(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\npan: 2 x 6 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-08,30,2.1,40,30\n2034-03-15,40,2.1,40,\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-08,1,1.25,5\n"})
	if page, _ := b.Brief(t, "", "-dir", dir); !strings.Contains(page, "Sweet of 7 days: cloudy, ropy or sour goes out untasted.") {
		t.Error(page)
	}
	// What is told is not planned with it, and the cautions do not speak of its age.
	if page, _ := b.Brief(t, "", "-dir", dir, "40", "gal", "2.1", "at", "40", "F"); !strings.Contains(page, "Not counted is the sweet") || strings.Contains(page, " days:") {
		t.Error(page)
	}
}

// Sweet counts where little sap comes to it, and goes into the pot with it. By hand: half
// an inch on 12 ft2 is 3.74 US gal, of 12 Brix 32.7 lb with 3.93 lb of sugar, and 3 US gal
// of 2.1 Brix have 0.53: 6.66 lb of syrup, 2.4 qt. With 2 in there is enough for a fire.
func TestLittleSapOnSweet(t *testing.T) {
	b := clitest.Build(t)
	for depth, want := range map[string]string{"0.5": "boil it in a pot from the start. It makes 2 1/4 US qt of syrup.", "2": "No syrup is drawn today"} {
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\ncompartments: 6 ft2, 6 ft2\n",
			"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-10,60,2.1,38,60\n2034-03-11,3,2.1,38,\n",
			"pan.csv":  "date,compartment,depth_in,brix\n2034-03-10,1," + depth + ",12\n2034-03-10,2," + depth + ",12\n"})
		if page, _ := b.Brief(t, "", "-dir", dir); !strings.Contains(strings.Join(strings.Fields(page), " "), want) {
			t.Errorf("%s in: want %q\n%s", depth, want, page)
		}
	}
}

// Where no sap waits, the sweet in the pan is not passed over. By hand: 1 1/2 in on 6 and
// 2 ft2 are 1296 and 432 in3, 7.48 US gal of 231 in3. At 8.345 lb a gallon of water and
// gravities of 1.036 and 1.106 (9 and 25 Brix) they hold 4.37 + 4.31 = 8.68 lb of sugar:
// 12.97 lb of syrup of 66.9 Brix, at 11.05 lb a gallon 4.7 qt. A pan that was drained
// holds nothing, nor does one before its fire.
func TestSweetAlone(t *testing.T) {
	b := clitest.Build(t)
	files := map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\ncompartments: 2 x 3 ft, 2 x 1 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-11,90,2.1,40,90\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-11,1,1.5,9\n2034-03-11,2,1.5,25\n"}
	dir := clitest.Folder(t, files)
	page, read := b.Brief(t, "", "-dir", dir)
	flat := strings.Join(strings.Fields(page), " ")
	for _, want := range []string{"boil it down in a pot today, or drain it and keep it below 40 F", "7 1/2 US gal (13.2 Brix, since Mar 11)", "4 1/2 US qt", "Light no fire under a pan that is less than 1 in deep"} {
		if !strings.Contains(flat, want) {
			t.Errorf("no %q in\n%s", want, page)
		}
	}
	if len(read.Answers) != 4 {
		t.Errorf("%v", read.Answers)
	}
	var parts struct {
		Sweet struct {
			Sugar float64 `json:"sugar_lb"`
		} `json:"sweet"`
	}
	_, out, _ := b.Run(t, "", "-dir", dir, "-json")
	if err := json.Unmarshal([]byte(out), &struct{ Parts any }{&parts}); err != nil || !(math.Abs(parts.Sweet.Sugar-8.68) < 0.03) {
		t.Errorf("%v: %v lb of sugar in %s", err, parts.Sweet.Sugar, out)
	}
	if status, _, errs := b.Run(t, "", "-dir", dir, "-write"); status != 2 || !strings.Contains(errs, "no sap waits, so there is no day to add") {
		t.Errorf("%d %s", status, errs)
	}
	if status, _, errs := b.Run(t, "", "-dir", dir, "-day", "2034-03-10"); status != 2 || !strings.Contains(errs, "no sap waits by") {
		t.Errorf("%d %s", status, errs)
	}
	files["pan.csv"] += "2034-03-12,1,0,0\n2034-03-12,2,0,0\n"
	if status, _, errs := b.Run(t, "", "-dir", clitest.Folder(t, files)); status != 2 || !strings.Contains(errs, "no sap waits by") {
		t.Errorf("%d %s", status, errs)
	}
	// A finished draw is read, and not boiled on.
	files["pan.csv"] = "date,compartment,depth_in,brix\n2034-03-11,2,1.5,67\n"
	if page, _ := b.Brief(t, "", "-dir", clitest.Folder(t, files)); !strings.Contains(page, "syrup stands in the pan") || strings.Contains(page, "In a pot ") {
		t.Error(page)
	}
}

// The air of the night over sweet in the pan comes from weather.csv where it stands, or
// is told. By hand: 25 F freezes what freezes at 31.5 F (5.1 Brix: 5.1/94.9/0.3423 = 0.157
// mol/kg, times 1.86 K). From 212 F that takes log2(187/6.5) = 4.8 halvings, 9.7 h of 2 h
// each. An empty cell is no low.
func TestNightAir(t *testing.T) {
	b := clitest.Build(t)
	files := map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\ncompartments: 2 x 3 ft, 2 x 1 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-10,90,2.1,40,90\n2034-03-12,80,2.1,40,\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-10,1,1.5,5.1\n2034-03-10,2,1.5,25\n"}
	const weather = "date,tmin_f,tmax_f\n2034-03-10,5,39\n2034-03-11,25,39\n"
	for _, c := range []struct{ weather, args, want, not string }{
		{weather + "2034-03-12,28,41\n", "", "air down to 25 F: expect ice; no fire under ice.", "Tonight"},
		{weather + "2034-03-12,28,41\n", "", "nights to 25 F", "5 F freezes"}, // that of its own morning was before the fire
		{weather + "2034-03-12,28,41\n", "-full", "Coldest air 25.0 F (-3.9 C; by weather.csv; ice forms", "of 1 of 2"},
		{weather + "2034-03-12,28,41\n", "-full", "First ice after the fire 9 h 30 min", ""},
		{weather + "2034-03-12,,41\n", "-full", "Coldest air 25.0 F (-3.9 C; by weather.csv, of 1 of 2 nights", ""},
		{weather + "2034-03-12,28,41\n2034-03-13,20,30\n", "", "Tonight's 20 F freezes the pan: leave it deep, cover it", ""},
		{weather, "-night|38 F", "look for ice first; no fire under ice.", "freezes"},
		{weather, "-night|38 F|-full", "Coldest air 38.0 F (3.3 C; as told; no ice by that: look all the same)", "First ice"},
		{"", "", "look for ice first; no fire under ice.", "nights to"},
		{"", "-full", "Give -night, the coldest that the air gets", "Coldest air"},
		{"date,tmin_f\n2034-03-11,x\n", "", "look for ice first; no fire under ice.", "nights to"}, // the check of the folder tells it
	} {
		if files["weather.csv"] = c.weather; c.weather == "" {
			delete(files, "weather.csv")
		}
		args := append([]string{"-dir", clitest.Folder(t, files)}, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		_, page, errs := b.Run(t, "", args...)
		flat := strings.Join(strings.Fields(page), " ")
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q\n%s%s", c.args, c.want, c.not, page, errs)
		}
	}
	// Where no sap waits the sweet freezes as well.
	files["days.csv"], files["weather.csv"] = "date,sap_gal,boiled_gal\n2034-03-10,90,90\n", weather
	if page, _ := b.Brief(t, "", "-dir", clitest.Folder(t, files)); !strings.Contains(page, "Air down to 25 F since: ice may lie in it.") {
		t.Error(page)
	}
	for args, want := range map[string]string{
		"-night|20 F": "no sweet stands in the pan",
		"-compartments|8 ft2, 4 ft2|-night|-100 C": "-night: temperature of the air",
	} {
		if status, _, errs := b.Run(t, "", strings.Split(args, "|")...); status != 2 || !strings.Contains(errs, want) {
			t.Errorf("%s: %d %s", args, status, errs)
		}
	}
}
