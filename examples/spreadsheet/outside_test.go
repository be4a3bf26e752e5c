package main

import (
	"bytes"
	"encoding/csv"
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

// A second program reads the spreadsheet and finds the same figures: Debian's
// gnumeric. The period ends before a payment of the demo, so that no formula has
// only zeros.
func TestOracleSsconvert(t *testing.T) {
	tool, err := exec.LookPath("ssconvert")
	if err != nil {
		if os.Getenv("SAPRECKONER_ORACLES") == "required" {
			t.Fatal("ssconvert is missing: Debian's package gnumeric has it")
		}
		t.Skip("ssconvert is missing: Debian's package gnumeric has it")
	}
	dir := t.TempDir()
	book := filepath.Join(dir, "payments.xlsx")
	data := written(t, "", "-period", "2026-03-01 to 2026-03-13")
	if err := os.WriteFile(book, data, 0o644); err != nil {
		t.Fatal(err)
	}
	f := opened(t, data)
	for n, sheet := range f.GetSheetList() {
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
			if live != 12*4 {
				t.Errorf("%d formulas, not 12 for each of four sellers", live)
			}
		}
		out := filepath.Join(dir, sheet+".csv")
		cmd := exec.Command(tool, "-T", "Gnumeric_stf:stf_assistant", "-O", "separator=, format=preserve sheet='"+sheet+"'", book, out)
		cmd.Env = append(os.Environ(), "LC_ALL=C.UTF-8")
		if msg, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("sheet %d: %v\n%s", n, err, msg)
		}
		text, err := os.Open(out)
		if err != nil {
			t.Fatal(err)
		}
		r := csv.NewReader(text)
		r.FieldsPerRecord = -1
		got, err := r.ReadAll()
		_ = text.Close()
		if err != nil {
			t.Fatal(err)
		}
		same(t, sheet, got, want)
	}
}
