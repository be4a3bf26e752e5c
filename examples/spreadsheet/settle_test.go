package main

import (
	"encoding/csv"
	"math/big"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/examples/internal/cli"
)

// put writes a file into a folder of the test.
func put(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

// asked runs the program on readings and payments and returns the file that it
// writes.
func asked(t *testing.T, ending, readings, paid string, args ...string) string {
	t.Helper()
	out := filepath.Join(t.TempDir(), "out"+ending)
	if got := written(t, "", append([]string{"-in", put(t, "bought.csv", readings), "-paid", put(t, "paid.csv", paid), "-out", out}, args...)...); len(got) != 0 {
		t.Errorf("%d bytes on standard output", len(got))
	}
	text, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// statement returns the page of a seller, and its amounts by their names.
func statement(t *testing.T, text, seller string) (page string, amounts map[string]string) {
	t.Helper()
	for _, page := range strings.Split(text, "\f") {
		lines := strings.Split(page, "\n")
		if len(lines) < 2 || lines[1] != seller {
			continue
		}
		amounts = map[string]string{}
		for _, l := range lines {
			if len(l) > 78 {
				t.Errorf("a long line: %s", l)
			}
			if len(l) == 56 && l[0] != ' ' {
				amounts[strings.TrimSpace(l[:44])] = strings.TrimSpace(l[44:])
			}
		}
		return page, amounts
	}
	t.Fatalf("no statement of %s in\n%s", seller, text)
	return "", nil
}

const twoLanes = header + "2026-03-09,North lane,61.5,2.2,38\n2026-03-09,Creek lot,50,1.2,38\n2026-03-20,North lane,100,2.2,38\n"
const paidHeader = "date,producer,kind,amount,what\n"

// By hand: 61.5 gal at 0.3451 are 21.22 and 100 are 34.51 (TestPaymentsByHand). To
// the 15th North lane has 21.22, less 1.22 of trucking and 5 in advance: 15 are due.
// Once 15 are paid, the second period owes 34.51 and not 49.51. Sap of 1.2 Brix is
// listed and not paid.
func TestPeriodsByHand(t *testing.T) {
	const posted = paidHeader + "2026-03-01,North lane,advanced,5,\n2026-03-12,North lane,deducted,1.22,trucking\n"
	first := asked(t, ".txt", twoLanes, posted, "-period", "2026-03-01 to 2026-03-15", "-syrup-price", "2.50 USD/lb")
	page, got := statement(t, first, "North lane")
	for what, want := range map[string]string{"Carried from before": "0.00", "Sap of this period": "21.22", "Deducted: trucking": "-1.22", "Advanced": "-5.00", "Owed": "15.00", "To be paid now": "15.00"} {
		if got[what] != want {
			t.Errorf("first period: %s: %q, not %q", what, got[what], want)
		}
	}
	for _, want := range []string{"page 1 of 2", "Season 2026: 2026-03-01 to 2026-03-15, in USD.", "2026-03-09       61.50    2.20        0.3451       21.22\n", "61.50 US gal at 2.20 Brix", ", once.", "Received ____"} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, page)
		}
	}
	if strings.Contains(page, "2026-03-20") {
		t.Errorf("a delivery of the next period:\n%s", page)
	}
	page, got = statement(t, first, "Creek lot")
	if !strings.Contains(page, "2026-03-09       50.00    1.20  not paid: below 1.5 Brix\n") || !strings.Contains(page, "Not paid for: 50.00 US gal, once.") || got["To be paid now"] != "0.00" {
		t.Errorf("thin sap:\n%s", page)
	}
	// The first statement once more, after the check of the 16th: it is not to be
	// paid again.
	again := asked(t, ".txt", twoLanes, posted+"2026-03-16,North lane,paid,15,cheque 7\n", "-period", "2026-03-01 to 2026-03-15")
	_, got = statement(t, again, "North lane")
	for what, want := range map[string]string{"Owed": "15.00", "Paid since": "-15.00", "To be paid now": "0.00"} {
		if got[what] != want {
			t.Errorf("first period once more: %s: %q, not %q", what, got[what], want)
		}
	}
	second := asked(t, ".txt", twoLanes, posted+"2026-03-16,North lane,paid,15,cheque 7\n", "-period", "2026-03-16 to 2026-03-31")
	_, got = statement(t, second, "North lane")
	for what, want := range map[string]string{"Carried from before": "15.00", "Sap of this period": "34.51", "Paid: cheque 7": "-15.00", "Owed": "34.51", "To be paid now": "34.51"} {
		if got[what] != want {
			t.Errorf("second period: %s: %q, not %q", what, got[what], want)
		}
	}
}

// Who delivered nothing in the period has no mean strength: what was advanced stands, and
// no zero is called a reading.
func TestNothingDelivered(t *testing.T) {
	page, got := statement(t, asked(t, ".txt", twoLanes, paidHeader+"2026-03-12,The far lane,advanced,5,\n"), "The far lane")
	if !strings.Contains(page, "nothing in this period\n\n") || strings.Contains(page, "Brix in the mean") || got["Owed"] != "-5.00" || got["To be paid now"] != "0.00" {
		t.Error(page)
	}
}

// Statements add up to what is paid: the lines of the ledger of a season, added up in
// fractions of whole numbers, are the statements' sums, to the cent.
func TestLedgerAgrees(t *testing.T) {
	rows, err := csv.NewReader(strings.NewReader(asked(t, ".csv", string(demo), string(demoPaid)))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	owed, all := map[string]*big.Rat{}, new(big.Rat)
	for _, r := range rows[1:] {
		x, ok := new(big.Rat).SetString(r[4])
		if !ok {
			t.Fatalf("%q", r)
		}
		if r[2] != "earned" && r[2] != "carried" {
			x.Neg(x)
		}
		if owed[r[1]] == nil {
			owed[r[1]] = new(big.Rat)
		}
		owed[r[1]].Add(owed[r[1]], x)
		all.Add(all, x)
	}
	text, sum := asked(t, ".txt", string(demo), string(demoPaid)), new(big.Rat)
	for seller, want := range owed {
		_, got := statement(t, text, seller)
		if got["Owed"] != want.FloatString(2) {
			t.Errorf("%s: the statement owes %s, the ledger %s", seller, got["Owed"], want.FloatString(2))
		}
		x, _ := new(big.Rat).SetString(got["Owed"])
		sum.Add(sum, x)
	}
	// Earned are 64.30, 95.61, 32.55 and 5.34, 197.80 in all (the workbook's total), and
	// 4.15 - 12.50 - 20 - 30 = -58.35 were posted.
	if len(owed) != 4 || sum.Cmp(all) != 0 || sum.FloatString(2) != "139.45" {
		t.Errorf("%d sellers, %s owed, %s in the ledger", len(owed), sum.FloatString(2), all.FloatString(2))
	}
}

func TestPaidIsRefused(t *testing.T) {
	in := put(t, "bought.csv", twoLanes)
	for name, tt := range map[string]struct{ row, want string }{
		"earned":    {"2026-03-01,North lane,earned,5,", "column kind: write carried, deducted"},
		"kind":      {"2026-03-01,North lane,payed,5,", `column kind: "payed": not one of the names: use one of: carried`},
		"no kind":   {"2026-03-01,North lane,,5,", "column kind: write carried"},
		"half cent": {"2026-03-01,North lane,paid,0.005,", "column amount: 0.005 is not a multiple of 0.01"},
		"negative":  {"2026-03-01,North lane,paid,-5,", "column amount: it is negative"},
		"day":       {"March,North lane,paid,5,", `column date: "March" is not a day`},
		"nobody":    {"2026-03-01,,paid,5,", "column producer: it is empty"},
		"slip":      {"2026-03-01,Nort lane,paid,5,", `column producer: no sap of "Nort lane": did you mean "North lane"?`},
		"twice":     {"2026-03-01,North lane,paid,5,\n2026-03-01,North lane,paid,5.00,", "the same row as line 2"},
	} {
		out := filepath.Join(t.TempDir(), "out.txt")
		status, page, errs := call(t, "", "-in", in, "-paid", put(t, "paid.csv", paidHeader+tt.row+"\n"), "-out", out)
		if status != cli.BadInput || len(page) != 0 || !strings.Contains(errs, tt.want) || !strings.Contains(errs, "paid.csv:") {
			t.Errorf("%s: status %d, %s", name, status, errs)
		}
		if _, err := os.Stat(out); err == nil {
			t.Errorf("%s: the file was written", name)
		}
	}
}

// What a name holds stays a name: signs that turn the order of reading are spelled
// out, and no program takes a cell of the ledger for a formula.
func TestHostileNamesAreInert(t *testing.T) {
	for name, tt := range map[string]struct{ cell, shown string }{
		"formula": {"=1+1", "'=1+1"}, "at": {"@SUM(A1)", "'@SUM(A1)"}, "minus": {"-lane", "'-lane"}, "bidi": {"ab\u202ecd", `ab\u202ecd`}, "quote": {`a"b`, `a"b`},
	} {
		readings := header + `2026-03-09,"` + strings.ReplaceAll(tt.cell, `"`, `""`) + `",61.5,2.2,38` + "\n"
		args := []string{}
		if name == "bidi" {
			args = []string{"-accept", "2"}
		}
		rows, err := csv.NewReader(strings.NewReader(asked(t, ".csv", readings, paidHeader, args...))).ReadAll()
		if err != nil || len(rows) != 2 || rows[1][1] != tt.shown {
			t.Errorf("%s: %q, %v", name, rows, err)
		}
		statement(t, asked(t, ".txt", readings, paidHeader, args...), strings.TrimPrefix(tt.shown, "'"))
	}
}

// A text of another hand is not replaced, and one of this program is.
func TestKeepsTexts(t *testing.T) {
	for ending, first := range map[string]string{".txt": statementMark, ".csv": ledgerMark} {
		out := put(t, "out"+ending, "my own notes\n")
		if status, _, errs := call(t, "", "-out", out); status != cli.BadInput || !strings.Contains(errs, "-out: ") {
			t.Errorf("status %d, %s", status, errs)
		}
		if err := os.WriteFile(out, []byte(first+"\nold\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		written(t, "", "-out", out)
		if text, err := os.ReadFile(out); err != nil || strings.Contains(string(text), "old") {
			t.Errorf("%s, %v", text, err)
		}
	}
}

// Statements are of the sugarhouse that the folder names, and its name stays a name.
func TestStatementsNameTheHouse(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{"sugarhouse.txt": "name: =Fifth Gate\ngallons: US\n", "bought.csv": strings.Replace(twoLanes, "producer", "seller", 1)} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	out := filepath.Join(t.TempDir(), "out.txt")
	written(t, "", "-dir", dir, "-out", out)
	text, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	for _, page := range strings.Split(string(text), "\f") {
		first, _, _ := strings.Cut(page, "\n")
		if !strings.HasPrefix(first, statementMark+": =Fifth Gate ") || !strings.HasSuffix(first, " of 2") || len(first) != 76 {
			t.Errorf("%q", first)
		}
	}
	written(t, "", "-dir", dir, "-out", out) // it is its own text, and replaced
	book := filepath.Join(t.TempDir(), "out.xlsx")
	written(t, "", "-dir", dir, "-out", book)
	f, err := excelize.OpenFile(book)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	title, err := f.GetCellValue(sheetStatements, "A1")
	formula, _ := f.GetCellFormula(sheetStatements, "A1")
	if err != nil || formula != "" || !strings.HasPrefix(title, `=Fifth Gate: Statement for sap, in `) {
		t.Errorf("%q, %q, %v", title, formula, err)
	}
}
