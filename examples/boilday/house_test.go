package main

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"regexp"
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

// Sap that is over a week old is neither planned nor lost: the page asks after it, and a
// flag plans it. 12 gal of the 2nd are 9 days old on the 11th, 30 of the 4th are 7.
func TestOldSap(t *testing.T) {
	b := clitest.Build(t)
	const settings, head = "gallons: US\nelevation: 1150 ft\npan: 2 x 4 ft\n", "date,sap_gal,sugar_brix,read_at_f,thrown_gal\n2034-03-02,12,2.1,40,\n"
	both := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": head + "2034-03-04,30,2.1,40,\n2034-03-11,20,2.1,40,\n"})
	const asks = "Not counted: 12 US gal of sap over a week old. Sour, cloudy or ropy: pour it out untasted and write it down as thrown."
	for args, want := range map[string][2]string{
		"":         {"50 US gal of sap make", asks},
		"-old-sap": {"62 US gal of sap make", "Sap of 9 days: cloudy, ropy or sour goes out untasted."},
	} {
		page, _ := b.Brief(t, "", append([]string{"-dir", both}, strings.Fields(args)...)...)
		flat := strings.Join(strings.Fields(page), " ")
		if !strings.Contains(flat, want[0]) || !strings.Contains(flat, want[1]) || strings.Contains(flat, "Not counted") != (args == "") {
			t.Errorf("%q: %s", args, page)
		}
	}
	alone := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": head})
	if status, out, errs := b.Run(t, "", "-dir", alone, "-day", "2034-03-11"); status != 2 || out != "" || !strings.Contains(errs, asks) || strings.Contains(errs, "no sap waits") {
		t.Errorf("%d %s%s", status, out, errs)
	}
	thrown := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": head + "2034-03-11,20,2.1,40,12\n"})
	if page, _ := b.Brief(t, "", "-dir", thrown); strings.Contains(page, "Not counted") {
		t.Error(page)
	}
}

// Sweet that stood for over a week is no longer a plan of the day, and syrup beside sweet
// is drawn first: 12 Brix and 66.9 side by side.
func TestSweetThatStoodLong(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\ncompartments: 2 x 3 ft, 2 x 1 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-03,90,2.1,40,90\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-03,1,1,12\n2034-03-03,2,2,66.9\n"})
	for day, want := range map[string]string{"2034-03-10": "boil it down in a pot today, or drain it", "2034-03-11": "over a week. Sour, cloudy or ropy: drain it untasted. Only if it is clear and smells fresh boil it down in a pot today."} {
		page, _ := b.Brief(t, "", "-dir", dir, "-day", day)
		if flat := strings.Join(strings.Fields(page), " "); !strings.Contains(flat, want) || !strings.Contains(flat, "Draw first no. 2 (it is syrup:") {
			t.Errorf("%s: %s", day, page)
		}
	}
}

// What -write adds stands in the numbers of the page: 380 L of a metric folder come back
// as 380, and depths in tenths of a centimeter.
func TestWritesRoundNumbers(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "units: metric\nelevation: 350 m\ncompartments: 60 x 90 cm, 60 x 30 cm\n",
		"days.csv": "date,sap_l,sugar_brix,read_at_c,boiled_l,lit\n2034-04-02,380,2.2,3,,\n"})
	if status, _, errs := b.Run(t, "", "-dir", dir, "-write"); status != 0 {
		t.Fatal(errs)
	}
	days, err := os.ReadFile(filepath.Join(dir, "days.csv"))
	if err != nil || !strings.Contains(string(days), "2034-04-02,,,,380,08:00") {
		t.Errorf("%v: %s", err, days)
	}
	pan, err := os.ReadFile(filepath.Join(dir, "pan.csv"))
	if lines := strings.Split(strings.TrimSpace(string(pan)), "\n"); err != nil || len(lines) != 3 || !regexp.MustCompile(`^2034-04-02,1,[0-9]+(\.[0-9])?,`).MatchString(lines[1]) {
		t.Errorf("%v: %s", err, pan)
	}
}

// A fire that is not to be lit is no line of the record. 8 gal/h with coals of 2 h boil off
// 227 lb, and 12 gal hold 98 lb to boil off: see [TestLookAgainAndWait].
func TestRunawayIsNotWritten(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\npan: 2 x 4 ft\ncoals: 2 h\n"})
	page, _ := b.Brief(t, "", "-dir", dir, "12", "gal", "2.1", "at", "40", "F")
	if !strings.Contains(page, "Do not light this fire") || strings.Contains(page, "-write") {
		t.Error(page)
	}
	if status, _, errs := b.Run(t, "", "-dir", dir, "-write", "12", "gal", "2.1", "at", "40", "F"); status != 2 || !strings.Contains(errs, "this fire is not to be lit") {
		t.Errorf("%d %s", status, errs)
	}
}

// A fire of more than 16 hours is no day's work of one person. By hand: 8 gal/h take 150 gal
// near 18 h and 90 near 11, less what is syrup.
func TestLongDay(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\npan: 2 x 4 ft\nboils off: 8 gallons an hour\n"})
	for sap, long := range map[string]bool{"150": true, "90": false} {
		page, _ := b.Brief(t, "", "-dir", dir, sap, "gal", "2.1", "at", "40", "F")
		if strings.Contains(page, "Into the night: -done-by tells what fits in a day.") != long {
			t.Error(page)
		}
	}
	// The older of sap and sweet is named.
	dir = clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nelevation: 1150 ft\npan: 2 x 6 ft\n",
		"days.csv": "date,sap_gal,sugar_brix,read_at_f,boiled_gal\n2034-03-01,20,2.1,40,\n2034-03-08,30,2.1,40,10\n2034-03-10,40,2.1,40,\n",
		"pan.csv":  "date,compartment,depth_in,brix\n2034-03-08,1,1.25,5\n"})
	if page, _ := b.Brief(t, "", "-dir", dir, "-old-sap"); !strings.Contains(page, "Sap of 9 days") {
		t.Error(page)
	}
}

// The thermometer of the settings is in the cup too: one that is 0.9 F high shows 205.9 F of
// a cup of 205 F, and the hydrometer must read the same in it.
func TestCupOfAThermometerThatIsOff(t *testing.T) {
	b := clitest.Build(t)
	const settings = "gallons: US\nelevation: 1150 ft\npan: 2 x 4 ft\n"
	reads := func(settings, cup string) (brix float64) {
		var page struct {
			Finish struct {
				Reads float64 `json:"reads_brix"`
			} `json:"finish"`
		}
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings})
		_, out, errs := b.Run(t, "", "-json", "-dir", dir, "-cup", cup, "40", "gal", "2.1", "at", "40", "F")
		if err := json.Unmarshal([]byte(out), &struct{ Parts any }{&page}); err != nil {
			t.Fatalf("%v %s", err, errs)
		}
		return page.Finish.Reads
	}
	if right, off := reads(settings, "205 F"), reads(settings+"thermometer off: 0.9 F deg high\n", "205.9 F"); !(right > 50) || math.Abs(right-off) > 1e-6 {
		t.Errorf("%v and %v Brix", right, off)
	}
}
