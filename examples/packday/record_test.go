package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/units"
)

// With -write what was packed stands in the folder: the smaller batches poured into
// the largest, its jars as the page says, and nothing is left to pack. The volumes are
// those of the batches: 26.9 and 17.1 lb at the 11.05 and 10.94 lb that a US gallon of
// 66.27 and 64.14 Brix weighs (from 11.0759 of 66.9, less 0.051 lb for a Brix).
func TestWrite(t *testing.T) {
	dir := t.TempDir()
	if err := os.CopyFS(dir, sugarhouse.Files()); err != nil {
		t.Fatal(err)
	}
	run := func(args ...string) (status int, said string) {
		var out, errs bytes.Buffer
		status = program().Main(append([]string{"-dir", dir, "-day", "2034-03-30"}, args...), strings.NewReader(""), &out, &errs)
		return status, out.String() + errs.String()
	}
	tail := func(name string) string {
		content, err := os.ReadFile(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		return string(content)
	}
	before := tail(folder.BottledFile)
	if status, page := run("-full"); status != 0 || !strings.Contains(page, "bottled.csv: 2034-03-30,34-4,1 US qt,12,\n") || tail(folder.BottledFile) != before {
		t.Errorf("%d %s", status, page)
	}
	if status, page := run("-write"); status != 0 || !strings.Contains(page, "Added") {
		t.Errorf("%d %s", status, page)
	}
	for _, want := range []string{"2034-03-30,34-4,1 US qt,12,\n", "2034-03-30,34-4,1 US pt,26,\n", "2034-03-30,34-4,50 mL,20,\n"} {
		if !strings.Contains(tail(folder.BottledFile), want) {
			t.Errorf("no %q in %s", want, tail(folder.BottledFile))
		}
	}
	for _, want := range []string{"2034-03-30,34-5,34-4,2.434", "2034-03-30,34-6,34-4,1.45", "2034-03-30,34-7,34-4,1.563"} {
		if !strings.Contains(tail(folder.BlendsFile), want) {
			t.Errorf("no %q in %s", want, tail(folder.BlendsFile))
		}
	}
	if status, said := run(); status != 2 || !strings.Contains(said, "every batch of the season is bottled") {
		t.Errorf("%d %s", status, said)
	}
	// A lot becomes a batch by the name that it is given, and can then be packed.
	if status, said := run("-write", "-batch", "34-8", "2", "gal", "59.4", "at", "208", "F"); status != 0 || !strings.Contains(tail(folder.BatchesFile), "34-8,2034-03-30,2,,59.4,208,208,,\n") {
		t.Errorf("%d %s", status, said)
	}
	// Also in the winter after, when the last date of the folder is of another year.
	weather := filepath.Join(dir, folder.WeatherFile)
	if err := os.WriteFile(weather, []byte(tail(folder.WeatherFile)+"2035-01-03,10,20\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if status, page := run(); status != 0 || !strings.Contains(page, "Told: 34-8") {
		t.Errorf("%d %s", status, page)
	}
	// Once it is bottled, the new year has none yet: nobody says that its syrup is packed.
	run("-write")
	if status, said := run(); status != 2 || !strings.Contains(said, "no batch of 2035 is written down yet, and every one of 2034 is bottled: add one") {
		t.Errorf("%d %s", status, said)
	}
	if status, said := run("-season", "2035"); status != 2 || !strings.Contains(said, "no batch of 2035 is written down: add one") {
		t.Errorf("%d %s", status, said)
	}
	if status, said := run("-season", "2034"); status != 2 || !strings.Contains(said, "every batch of the season is bottled") {
		t.Errorf("%d %s", status, said)
	}
}

// Who thinks in liters is given jars of liters where none are told. By hand: of 5 L the
// filter keeps 6 US fl oz, 0.18 L, and 4.8 L fill four of 1 L, one of 500 and one of
// 250 mL. No label is a quart or a pint. What is told stays.
func TestMetricJars(t *testing.T) {
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "units: metric\nelevation: 300 m\n",
		"batches.csv": "batch,date,volume_l,reading_brix,cup_c\na,2034-03-02,5,67.2,20\n"})
	run := func(args ...string) string {
		var out, errs bytes.Buffer
		if status := program().Main(append([]string{"-dir", dir}, args...), strings.NewReader(""), &out, &errs); status != 0 {
			t.Errorf("%d %s", status, errs.String())
		}
		return out.String()
	}
	if page := run(); !strings.Contains(page, "250 mL  500 mL  1 L\nfill                 1       1    4\n") || strings.Contains(page, "qt") || strings.Contains(page, "pt ") || strings.Contains(page, "fl oz") {
		t.Error(page)
	}
	if page := run("-containers", "any 1 US pt"); !strings.Contains(page, "1 US pt") {
		t.Error(page)
	}
}

// Nothing is filled, and so written down, of syrup that stands on the limit itself:
// Vermont asks for 66.9 Brix, which no hydrometer tells from 66.8.
func TestReadAgainIsNotWritten(t *testing.T) {
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\nplace: Vermont\n",
		"batches.csv": "batch,date,volume_gal,reading_brix,cup_f\nA,2034-03-02,1,66.9,60\n", "bottled.csv": "date,batch,size,count\n"})
	var out, errs bytes.Buffer
	if status := program().Main([]string{"-dir", dir, "-write"}, strings.NewReader(""), &out, &errs); status != 2 || !strings.Contains(errs.String(), "too close to a limit to tell: read it again, mend the reading in batches.csv") {
		t.Errorf("status %d, %s%s", status, out.String(), errs.String())
	}
}

// A label is written in the measure in which it is a plain number.
func TestLabels(t *testing.T) {
	for ml, want := range map[float64]string{946.353: "1 US qt", 473.176: "1 US pt", 236.588: "0.5 US pt", 1892.7: "0.5 US gal", 100: "100 mL", 250: "250 mL", 500: "0.5 L", 354.882: "12 US fl oz"} {
		if got := asLabel(units.Milliliters(ml)); !strings.HasPrefix(got, want) {
			t.Errorf("%v mL: %q, want %q", ml, got, want)
		}
	}
}
