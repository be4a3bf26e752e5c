package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// The module builds from a vendored copy and writes the same bytes.
func TestVendored(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the program again")
	}
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS(".")); err != nil {
		t.Fatal(err)
	}
	run := func(args ...string) []byte {
		t.Helper()
		var errs strings.Builder
		cmd := exec.Command("go", args...)
		cmd.Dir, cmd.Stderr = dir, &errs
		cmd.Env = append(os.Environ(), "GOFLAGS=", "GOWORK=off")
		out, err := cmd.Output()
		if err != nil {
			t.Fatalf("go %v: %v\n%s", args, err, errs.String())
		}
		return out
	}
	run("mod", "edit", "-replace=example.org/sapreckoner="+root)
	run("mod", "vendor")
	if _, err := os.Stat(filepath.Join(dir, "vendor", "example.org", "sapreckoner", "density")); err != nil {
		t.Error(err)
	}
	if _, err := os.Stat(filepath.Join(dir, "vendor", "example.org", "sapreckoner", "boil", "finish")); err == nil {
		t.Error("boil/finish is not used and vendored")
	}
	if !bytes.Equal(run("run", "-mod=vendor", "."), written(t, "")) {
		t.Error("the vendored program writes something else")
	}
}

// oracle returns the program that reads spreadsheets, Debian's gnumeric.
func oracle(t *testing.T) string {
	t.Helper()
	tool, err := exec.LookPath("ssconvert")
	if err != nil {
		if os.Getenv("SAPRECKONER_ORACLES") == "required" {
			t.Fatal("ssconvert is missing: Debian's package gnumeric has it")
		}
		t.Skip("ssconvert is missing: Debian's package gnumeric has it")
	}
	return tool
}

// converted returns a sheet of a workbook as that program shows it.
func converted(t *testing.T, tool, book, sheet string) [][]string {
	t.Helper()
	out := filepath.Join(t.TempDir(), sheet+".csv")
	cmd := exec.Command(tool, "-T", "Gnumeric_stf:stf_assistant", "-O", "separator=, format=preserve sheet='"+sheet+"'", book, out)
	cmd.Env = append(os.Environ(), "LC_ALL=C.UTF-8")
	if msg, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%s: %v\n%s", sheet, err, msg)
	}
	text, err := os.Open(out)
	if err != nil {
		t.Fatal(err)
	}
	defer text.Close()
	r := csv.NewReader(text)
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// What each delivery pays is what a second program makes of its volume and strength,
// for 600 deliveries under three bargains with prices of many digits, thin sap among them.
func TestOracleLivePrices(t *testing.T) {
	tool := oracle(t)
	var b strings.Builder
	b.WriteString(header)
	for i := range 600 {
		fmt.Fprintf(&b, "2026-03-%02d,Lane %d,%d.%02d,%d.%d,%d\n", 1+i%28, i%3, 100+i%97, i*37%100, 1+i%3, i*7%10, 33+i%23)
	}
	for _, bargain := range [][]string{
		{"-syrup-price", "3.377/lb, 3.4/lb from 2026-03-09, 2.999/lb from 2026-03-20", "-share", "47.35 %", "-syrup", "67.2 Brix"},
		{"-sugar-price", "1.8734/lb", "-syrup", "66.5 Brix"},
		{"-rule", "87.1/X - 0.32", "-syrup-price", "3.377/lb"},
	} {
		book := filepath.Join(t.TempDir(), "payments.xlsx")
		data := written(t, b.String(), append(bargain, "-in", "-", "-minimum", "1.61 Brix")...)
		if err := os.WriteFile(book, data, 0o644); err != nil {
			t.Fatal(err)
		}
		compared, thin := 0, 0
		for y, row := range converted(t, tool, book, sheetStatements)[1:] {
			if len(row) < 3 || row[2] == "" {
				continue
			}
			if compared++; row[1] != row[2] {
				t.Errorf("%q: row %d: %s: %s was reckoned, %s is live", bargain, y+2, row[0], row[1], row[2])
			}
			if strings.HasSuffix(row[0], "not paid") {
				thin++
			}
		}
		if compared != 600+3*12 || thin < 20 {
			t.Errorf("%q: %d figures compared, %d of thin sap", bargain, compared, thin)
		}
		t.Logf("%d comparisons with gnumeric", compared)
	}
}

// A second program reads the spreadsheet and finds the same figures: Debian's
// gnumeric. The period ends before a payment of the demo, so that no formula has
// only zeros.
func TestOracleSsconvert(t *testing.T) {
	tool := oracle(t)
	book := filepath.Join(t.TempDir(), "payments.xlsx")
	data := written(t, "", "-period", "2026-03-01 to 2026-03-13")
	if err := os.WriteFile(book, data, 0o644); err != nil {
		t.Fatal(err)
	}
	f := opened(t, data)
	for _, sheet := range f.GetSheetList() {
		want := table(t, f, sheet, false)
		if sheet == "Deliveries" {
			want = wantDeliveries(t)
		}
		if sheet == "Statements" { // what that program makes of the formulas is what was reckoned
			live := 0
			for y := range want {
				formula, err := f.GetCellFormula(sheet, "C"+strconv.Itoa(y+1))
				if err != nil {
					t.Fatal(err)
				}
				if formula != "" {
					want[y] = append(slices.Clip(want[y][:2]), want[y][1])
					live++
				}
			}
			if live != 12*4+7 {
				t.Errorf("%d formulas, not 12 for each of four sellers and one for each of seven deliveries", live)
			}
		}
		same(t, sheet, converted(t, tool, book, sheet), want)
	}
}
