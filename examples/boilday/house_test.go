package main

import (
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
