package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestFolder(t *testing.T) {
	b := clitest.Build(t)
	b.Golden(t, "help.txt", "-h")
	b.Golden(t, "demo.txt")
	b.Golden(t, "full.txt", "check", "-full")
	if page, read := b.Brief(t, "", "check"); !strings.Contains(page, "An invented sugarhouse") || len(read.List) != 5 {
		t.Errorf("%d learned:\n%s", len(read.List), page)
	}
	b.Refuses(t, "folder", []clitest.Bad{
		{Args: []string{"frobnicate"}, Want: "say new, check or day"},
		{Args: []string{"new"}, Want: "name one folder"},
		{Args: []string{"new", "my", "sugar"}, Want: "in quotes if it has a space"},
		{Args: []string{"new", t.TempDir()}, Want: `-set "gallons: imperial"`},
		{Args: []string{"new", t.TempDir(), "-set", "gallons: metric"}, Want: `-set: gallons: "metric" is not known`},
		{Args: []string{"new", "main.go", "-set", "gallons: US"}, Want: "main.go: not a directory"},
		{Args: []string{"check", "sugar"}, Want: "name the folder with -dir"},
		{Args: []string{"check", "-dir", "nowhere"}, Want: "-dir: nowhere: no such file"},
	})
}

// A folder of which a file is not read is not called read.
func TestUnread(t *testing.T) {
	b := clitest.Build(t)
	page, _ := b.Brief(t, "", "check", "-dir", clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "day.csv": "date,sap_gal\n2034-03-10,40\n"}))
	page = strings.Join(strings.Fields(page), " ")
	if !strings.Contains(page, "What is read of the folder is whole, but 1 file is not read, and no day is written down yet.") || !strings.Contains(page, "day.csv is not read: name it days.csv.") {
		t.Error(page)
	}
}

// One line that turns all dates of a file around is told by every program on the way,
// and by the check on its page.
func TestTurned(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "days.csv": "date,sap_gal\n3/4/2034,40\n14/3/2034,30\n"})
	status, out, errs := b.Run(t, "", "check", "-dir", dir)
	const want = "days.csv: dates are read day first, so that 3/4/2034 is April 3, by line 3 alone, 14/3/2034: if that is a slip, mend it"
	if status != 0 || !strings.Contains(errs, want) || strings.Count(errs, "\n") != 1 || !strings.Contains(strings.Join(strings.Fields(out), " "), want) {
		t.Errorf("%d %s\n%s", status, errs, out)
	}
}

// What is whole by the check, stand can plan: a species that is none, and a file without
// the column of vigor, are told here already, all at once.
func TestTrees(t *testing.T) {
	b := clitest.Build(t)
	for text, want := range map[string][]string{
		"tree,girth_in,species,vigor\n1,44,sugar mapel,\n2,50,red maple?,healty\n3,50,,\n": {`trees.csv:2: column species: "sugar mapel"`, `did you mean "sugar maple"?`, "trees.csv:3: column vigor: "},
		"tree,girth_in,species\n1,44,sugar maple\n":                                        {"trees.csv:1: no column vigor: add it, its cells may be empty"},
	} {
		status, _, errs := b.Run(t, "", "check", "-dir", clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "trees.csv": text}))
		for _, want := range want {
			if status != 2 || !strings.Contains(errs, want) {
				t.Errorf("status %d, no %s in %s", status, want, errs)
			}
		}
	}
}

// A new folder can be checked at once, and a second start changes nothing that
// stands in it.
func TestNew(t *testing.T) {
	b := clitest.Build(t)
	dir := filepath.Join(t.TempDir(), "my sugar", "house")
	status, out, errs := b.Run(t, "", "new", dir, "-set", "gallons: US", "-set", "taps: 44")
	if status != 0 || errs != "" || strings.Count(out, "begun: ") != 7 {
		t.Fatalf("status %d, %s\n%s", status, errs, out)
	}
	if !strings.Contains(strings.Join(strings.Fields(out), " "), `folder check -dir "`+dir+`".`) {
		t.Errorf("the next call is not written as it is typed:\n%s", out)
	}
	if page, _ := b.Brief(t, "", "check", "-dir", dir); !strings.Contains(page, "2 set") {
		t.Error(page)
	}
	days := filepath.Join(dir, "days.csv")
	text, err := os.ReadFile(days)
	if err != nil {
		t.Fatal(err)
	}
	text = append(text, "2034-03-10,,40,,2.1,44,,,,,,,\n"...)
	if err := os.WriteFile(days, text, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(filepath.Join(dir, "stops.csv")); err != nil {
		t.Fatal(err)
	}
	status, out, errs = b.Run(t, "", "new", dir, "-set", "gallons: imperial")
	if status != 0 || errs != "" || strings.Count(out, "begun: ") != 1 || strings.Count(out, "left as it is: ") != 6 {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
	if again, err := os.ReadFile(days); err != nil || string(again) != string(text) {
		t.Errorf("%v: %s", err, again)
	}
	if page, _ := b.Brief(t, "", "check", "-dir", dir); !strings.Contains(page, "Season              2034") {
		t.Error(page)
	}
}

// What is missing in a folder is begun as its own settings have it, whatever -set says.
func TestNewAgain(t *testing.T) {
	b := clitest.Build(t)
	for _, set := range []string{"", "gallons: US"} {
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "units: metric\n"})
		call := []string{"new", dir}
		if set != "" {
			call = append(call, "-set", set)
		}
		if status, _, errs := b.Run(t, "", call...); status != 0 {
			t.Fatal(errs)
		}
		if text, err := os.ReadFile(filepath.Join(dir, "days.csv")); err != nil || !strings.Contains(string(text), "date,tank,sap_l,dip_cm,") {
			t.Errorf("%v: %s", err, text)
		}
		if status, _, errs := b.Run(t, "", "check", "-dir", dir); status != 0 {
			t.Error(errs)
		}
	}
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "galons: US\n"})
	if status, _, errs := b.Run(t, "", "new", dir); status != 2 || !strings.Contains(errs, "sugarhouse.txt:1: galons: ") {
		t.Errorf("%d %s", status, errs)
	}
}

// Mistakes of all files are told at once, a line each, and what is not read.
func TestMistakes(t *testing.T) {
	b := clitest.Build(t)
	dir := t.TempDir()
	for name, text := range map[string]string{
		"sugarhouse.txt": "gallons: US\ntapps: 60\nguideline: NAMSPM-conservative\n",
		"days.csv":       "date,sap_gal\n2034-03-10,forty\n33-03-11,5\n",
		"holes.csv":      "tree,year,bearing_deg,height_in,bit_in,depth_in\nA,2033,10,4,5/16,1.5\n",
		"Batches.csv":    "batch,date\n",
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	status, out, errs := b.Run(t, "", "check", "-dir", dir)
	if status != 2 || out != "" {
		t.Errorf("status %d, %s", status, out)
	}
	for _, want := range []string{"sugarhouse.txt:2: tapps: ", "days.csv:2: column sap_gal: ", "days.csv:3: column date: ", "holes.csv:2: column height_in: "} {
		if strings.Count(errs, "folder: "+filepath.Join(dir, want)) != 1 {
			t.Errorf("%q is not told once:\n%s", want, errs)
		}
	}
	if err := os.WriteFile(filepath.Join(dir, "sugarhouse.txt"), []byte("guideline: mine\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"days.csv", "holes.csv"} {
		if err := os.Remove(filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	_, _, errs = b.Run(t, "", "check", "-dir", dir)
	if !strings.Contains(errs, "Batches.csv is not read: name it batches.csv\n") || !strings.Contains(errs, "sugarhouse.txt:1: guideline: \"mine\": not one of the names") {
		t.Error(errs)
	}
}

// A day is typed, shown, and written where it is asked for.
func TestDay(t *testing.T) {
	b := clitest.Build(t)
	dir := filepath.Join(t.TempDir(), "sugar")
	if status, _, errs := b.Run(t, "", "new", dir, "-set", "gallons: US", "-set", "barrow: 1/25 cord"); status != 0 {
		t.Fatal(errs)
	}
	days := filepath.Join(dir, "days.csv")
	before, err := os.ReadFile(days)
	if err != nil {
		t.Fatal(err)
	}
	call := strings.Fields("day -dir " + dir + " -season 2034 3/10 40 gal 2.1 lit 2pm out 8pm wood 6")
	page, _ := b.Brief(t, "", call...)
	for _, want := range []string{"Is it as you mean it?", "Friday, March 10, 2034\n", "sap     40 gal", "wood    6 barrows", "-write adds 1 line to days.csv"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q:\n%s", want, page)
		}
	}
	// 3/10 where the day stands first is in October, when leaves are still on: asked. In
	// the south half a year on, October is spring.
	for _, south := range []string{"first half", "second half"} {
		page, _ := b.Brief(t, "", "day", "-dir", dir, "-set", "spring: "+south, "2034-10-03 40 gal")
		if asked := strings.Contains(page, "Sap hardly runs in October: is the day meant?"); asked != (south == "first half") {
			t.Errorf("%s:\n%s", south, page)
		}
	}
	if now, err := os.ReadFile(days); err != nil || string(now) != string(before) {
		t.Errorf("%v\n%s", err, now)
	}
	status, page, errs := b.Run(t, "", append(call, "-write")...)
	if status != 0 || !strings.Contains(page, "The day is written down.") || !strings.Contains(page, "Added 1 line to days.csv.") {
		t.Errorf("%d\n%s%s", status, page, errs)
	}
	if now, err := os.ReadFile(days); err != nil || string(now) != string(before)+"2034-03-10,,40,,2.1,,,,14:00,20:00,,6,\n" {
		t.Errorf("%v\n%s", err, now)
	}
	// A mistake elsewhere does not stop it.
	if err := os.WriteFile(filepath.Join(dir, "weather.csv"), []byte("date,tmin_f,tmax_f\n2034-03-10,20,113\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if status, _, errs := b.Run(t, "", append(call, "-write")...); status != 0 || !strings.Contains(errs, "left aside for the mistakes in it: weather.csv") {
		t.Errorf("%d, %s", status, errs)
	}
	if err := os.Remove(filepath.Join(dir, "weather.csv")); err != nil {
		t.Fatal(err)
	}
	b.Refuses(t, "folder", []clitest.Bad{
		{Args: []string{"day"}, Want: "type the day, as 3/10 40 gal"},
		{Args: []string{"day", "3/10 40 gal", "-write"}, Want: "-write: give the folder of your sugarhouse by -dir"},
		{Args: []string{"day", "-dir", dir, "3/10/2034 21"}, Want: "is a point lost?"},
		{Args: []string{"day", "-dir", dir, "3/10/2034 21", "-write"}, Want: "is a point lost?"},
	})
}

// A dip tells its sap, too: 14 in of 2.5 gal are 35 gal by hand; and what a figure is
// learned from stands beside it.
func TestDipInGallons(t *testing.T) {
	b := clitest.Build(t)
	page, _ := b.Brief(t, "", strings.Fields("day 3/27 big dip 14 in thrown 12 gal")...)
	for _, want := range []string{"dip     14 in: 35 US gal", "thrown  12 gal"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, page)
		}
	}
	if page, _ = b.Brief(t, "", "check"); !strings.Contains(page, "middle of 12 boils") {
		t.Error(page)
	}
}
