package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// sugarhouse writes the folder of a buyer.
func sugarhouse(t *testing.T, files map[string]string) (dir string) {
	t.Helper()
	dir = t.TempDir()
	if files["sugarhouse.txt"] == "" {
		files["sugarhouse.txt"] = "gallons: US\n"
	}
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// read reads a file of a folder, empty if it is not there.
func read(t *testing.T, dir, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(dir, name))
	if err != nil && !os.IsNotExist(err) {
		t.Fatal(err)
	}
	return string(text)
}

var (
	boughtOf = strings.Replace(twoLanes, "producer", "seller", 1)
	bargain  = []string{"-syrup-price", "2.50 USD/lb", "-share", "50 %", "-minimum", "1.5 Brix"}
)

// By hand, as in TestPeriodsByHand: to the 15th North lane is due 21.22 less 5 in
// advance, 16.22. It is shown first and added on request; then nothing is due, and the
// second period owes the 34.51 of its own sap alone.
func TestPayoutsByHand(t *testing.T) {
	const before = "# checks of the co-op\ndate,seller,kind,amount,what\n2026-03-01,North lane,advanced,5,\n"
	dir := sugarhouse(t, map[string]string{"bought.csv": boughtOf, "paid.csv": before})
	first := append([]string{"-dir", dir, "-period", "2026-03-01 to 2026-03-15", "-pay", "2026-03-16"}, bargain...)
	page := string(written(t, "", first...))
	for _, want := range []string{"1 account is due 16.22 USD on 2026-03-16.", "North lane  16.22", "-write adds 1 line to paid.csv"} {
		if !strings.Contains(strings.Join(strings.Fields(page), " "), strings.Join(strings.Fields(want), " ")) {
			t.Errorf("no %q in\n%s", want, page)
		}
	}
	const line = "2026-03-16,North lane,paid,16.22,settled through 2026-03-15"
	if full := string(written(t, "", append(first, "-full")...)); !strings.Contains(full, "paid.csv: "+line) || strings.Contains(page, line) {
		t.Errorf("-full does not show the line:\n%s", full)
	}
	if got := read(t, dir, "paid.csv"); got != before {
		t.Errorf("the file changed without -write:\n%s", got)
	}
	if page := string(written(t, "", append(first, "-write")...)); !strings.Contains(strings.Join(strings.Fields(page), " "), "Added 1 line to paid.csv.") {
		t.Errorf("%s", page)
	}
	if got := read(t, dir, "paid.csv"); got != before+line+"\n" {
		t.Errorf("the file is\n%s", got)
	}
	if got := read(t, dir, "paid.csv.before"); got != before {
		t.Errorf("the copy is\n%s", got)
	}
	// Once more: nothing is due, and nothing is added.
	if page := string(written(t, "", first...)); !strings.HasPrefix(page, "Nothing is due.") {
		t.Errorf("%s", page)
	}
	status, out, errs := call(t, "", append(first, "-write")...)
	if status != cli.BadInput || len(out) != 0 || !strings.Contains(errs, "-write: there is nothing to add") || read(t, dir, "paid.csv") != before+line+"\n" {
		t.Errorf("status %d, %s%s", status, out, errs)
	}
	statements := filepath.Join(t.TempDir(), "second.txt")
	second := append([]string{"-dir", dir, "-period", "2026-03-16 to 2026-03-31", "-pay", "2026-04-01", "-write", "-out", statements}, bargain...)
	if page := string(written(t, "", second...)); !strings.HasPrefix(page, "1 account is due 34.51 USD on 2026-04-01.") {
		t.Errorf("%s", page)
	}
	text, err := os.ReadFile(statements)
	if err != nil {
		t.Fatal(err)
	}
	_, got := statement(t, string(text), "North lane")
	for what, want := range map[string]string{"Carried from before": "16.22", "Sap of this period": "34.51", "Paid: settled through 2026-03-15": "-16.22", "To be paid now": "34.51"} {
		if got[what] != want {
			t.Errorf("second period: %s: %q, not %q", what, got[what], want)
		}
	}
	if got := read(t, dir, "paid.csv"); strings.Count(got, "\n") != 5 || !strings.HasSuffix(got, "\n2026-04-01,North lane,paid,34.51,settled through 2026-03-31\n") {
		t.Errorf("the file is\n%s", got)
	}
}

// The bargain of the settings is what was agreed, and a price on the command line
// overrules it; a pound of sugar takes the place of syrup and share.
func TestPayoutsByTheSettings(t *testing.T) {
	const settings = "gallons: US\nsyrup price: 2.50 USD/lb\nsap share: 50 %\nleast sap: 1.5 Brix\n"
	for _, c := range []struct {
		want string
		args []string
	}{
		{"1 account is due 55.73 USD on", nil},                                     // 21.22 and 34.51
		{"1 account is due 57.96 USD on", []string{"-syrup-price", "2.60 USD/lb"}}, // 61.5 gal at 0.3589 are 22.07, and 35.89
		{"1 account is due 55.78 on", []string{"-sugar-price", "1.87/lb"}},         // at 0.3454: 21.24 and 34.54
	} {
		dir := sugarhouse(t, map[string]string{"bought.csv": boughtOf, "sugarhouse.txt": settings})
		if page := string(written(t, "", append(c.args, "-dir", dir, "-pay", "2026-03-31", "-write")...)); !strings.HasPrefix(page, c.want) || strings.Contains(page, "Assumed") {
			t.Errorf("%q: %s", c.args, page)
		}
	}
	dir := sugarhouse(t, map[string]string{"bought.csv": boughtOf, "sugarhouse.txt": "gallons: US\nsyrup price: 2.50\n"})
	if status, _, errs := call(t, "", "-dir", dir, "-pay", "2026-03-31"); status != cli.BadInput || !strings.Contains(errs, `sugarhouse.txt:2: syrup price: "2.50" has no unit`) {
		t.Errorf("status %d, %s", status, errs)
	}
}

// A file that is not there is begun; one that calls sellers producers stays so.
func TestPayoutsKeepTheHeader(t *testing.T) {
	for had, want := range map[string]string{"": "date,seller,kind,amount,what\n2026-03-31,North lane,paid,55.73,settled through 2026-03-20\n",
		"what,amount,kind,producer,date\n,0.73,deducted,North lane,2026-03-12\n": "what,amount,kind,producer,date\n,0.73,deducted,North lane,2026-03-12\nsettled through 2026-03-20,55.00,paid,North lane,2026-03-31\n"} {
		files := map[string]string{"bought.csv": boughtOf}
		if had != "" {
			files["paid.csv"] = had
		}
		dir := sugarhouse(t, files)
		written(t, "", append([]string{"-dir", dir, "-pay", "2026-03-31", "-write"}, bargain...)...)
		if got := read(t, dir, "paid.csv"); got != want {
			t.Errorf("%q became\n%s", had, got)
		}
		if page := string(written(t, "", append([]string{"-dir", dir, "-pay", "2026-03-31"}, bargain...)...)); !strings.HasPrefix(page, "Nothing is due.") {
			t.Errorf("%s", page)
		}
	}
}

// Where something is not plain nothing is kept, and the file stays as it was.
func TestPayoutsAreRefused(t *testing.T) {
	other := put(t, "other.csv", twoLanes)
	for name, tt := range map[string]struct {
		files map[string]string
		args  []string
		want  string
	}{
		"no day":       {nil, append([]string{"-write"}, bargain...), "-write: say by -pay on which day"},
		"early":        {nil, append([]string{"-write", "-pay", "2026-03-19"}, bargain...), "-pay: 2026-03-19 comes before 2026-03-20, the last day of the period"},
		"price":        {nil, []string{"-write", "-pay", "2026-03-31", "-share", "50 %", "-minimum", "1.5 Brix"}, "-syrup-price: say what was agreed"},
		"share":        {nil, []string{"-write", "-pay", "2026-03-31", "-syrup-price", "2.50/lb", "-minimum", "1.5 Brix"}, "-share: say what was agreed"},
		"minimum":      {nil, []string{"-write", "-pay", "2026-03-31", "-syrup-price", "2.50/lb", "-share", "50 %"}, "-minimum: say what was agreed"},
		"other file":   {nil, append([]string{"-write", "-pay", "2026-03-31", "-in", other}, bargain...), "-in: the folder keeps what its own files settle"},
		"standard out": {nil, append([]string{"-pay", "2026-03-31", "-out", "-"}, bargain...), "-out: the page of -pay takes standard output"},
		"JSON alone":   {nil, []string{"-json"}, "-json: it has the page of -pay"},
		"spaces": {map[string]string{"bought.csv": strings.ReplaceAll(boughtOf, "North lane", "North  lane")},
			append([]string{"-write", "-pay", "2026-03-31"}, bargain...), `-write: the name "North lane" has two spaces together`},
		"look again": {map[string]string{"bought.csv": boughtOf + "2026-03-20,North lane,100,2.2,38\n"},
			append([]string{"-write", "-pay", "2026-03-31"}, bargain...), "the same row as line 4"},
		// What was paid and cannot be read is not passed over: it would be paid again.
		"paid is broken": {map[string]string{"paid.csv": "date,seller,kind,amount,what\n2026-03-32,North lane,paid,21.22,\n"},
			append([]string{"-pay", "2026-03-31"}, bargain...), "paid.csv:2: column date"},
	} {
		files := map[string]string{"bought.csv": boughtOf, "paid.csv": "date,seller,kind,amount,what\n"}
		for name, text := range tt.files {
			files[name] = text
		}
		dir := sugarhouse(t, files)
		status, out, errs := call(t, "", append([]string{"-dir", dir}, tt.args...)...)
		if status != cli.BadInput || len(out) != 0 || !strings.Contains(errs, tt.want) {
			t.Errorf("%s: status %d, %s%s", name, status, out, errs)
		}
		if read(t, dir, "paid.csv") != files["paid.csv"] || read(t, dir, "paid.csv.before") != "" {
			t.Errorf("%s: the folder changed", name)
		}
	}
	if status, _, errs := call(t, "", append([]string{"-pay", "2026-03-31", "-write"}, bargain...)...); status != cli.BadInput || !strings.Contains(errs, "give the folder of your sugarhouse by -dir") {
		t.Errorf("the demo: status %d, %s", status, errs)
	}
}

// The page fits a telephone, and JSON has the same amounts, each with its cents.
func TestPayoutPage(t *testing.T) {
	args := []string{"-pay", "2026-03-31", "-period", "2026-03-01 to 2026-03-14"}
	page := string(written(t, "", args...))
	lines := strings.Split(strings.TrimSuffix(page, "\n"), "\n")
	for _, l := range lines {
		if len([]rune(l)) > cli.BriefColumns {
			t.Errorf("a long line: %s", l)
		}
	}
	var doc struct {
		Verdict string
		List    []struct {
			Seller string
			Due    json.Number
		}
		Known struct{ House string }
	}
	if err := json.Unmarshal(written(t, "", append(args, "-json")...), &doc); err != nil {
		t.Fatal(err)
	}
	if len(lines) > cli.BriefLines+len(doc.List)+2 {
		t.Errorf("%d lines:\n%s", len(lines), page)
	}
	// By hand: 64.30 less the cheque of 30; 4.15 + 95.61 - 12.50; 32.55 - 20; 5.34.
	want := []string{"North lane 34.30", "Creek lot 87.26", "Hill house 12.55", "Schoolhouse buckets 5.34"}
	for i, l := range doc.List {
		if i >= len(want) || l.Seller+" "+l.Due.String() != want[i] {
			t.Errorf("row %d is %v", i, l)
		}
	}
	if len(doc.List) != len(want) || doc.Verdict != "4 accounts are due 139.45 on 2026-03-31." || !strings.Contains(doc.Known.House, "invented") {
		t.Errorf("%+v", doc)
	}
}

// The folder of the invented co-op settles as the demo does: that is its files.
func TestDemoFolder(t *testing.T) {
	page := string(written(t, "", "-dir", "testdata/coop", "-pay", "2026-03-31"))
	if !strings.HasPrefix(page, "4 accounts are due 139.45 USD on 2026-03-31.") || strings.Contains(page, "Assumed") || !strings.Contains(strings.Join(strings.Fields(page), " "), "-write adds 4 lines to paid.csv") {
		t.Error(page)
	}
	if status, out, errs := call(t, "", "-pay", "2026-03-31"); status != cli.OK || errs != "" || !strings.HasPrefix(string(out), "4 accounts are due 139.45 on 2026-03-31.") {
		t.Errorf("%s%s", out, errs)
	}
}
