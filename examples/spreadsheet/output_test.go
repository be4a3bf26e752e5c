package main

import (
	"bytes"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A file that is there stays as it was until the new one is whole, and nothing
// else is left beside it.
func TestOutputIsWholeOrNotThere(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "payments.xlsx")
	last := written(t, header+"2025-03-09,North lane,61.5,2.2,38\n", "-in", "-")
	if err := os.WriteFile(out, last, 0o600); err != nil {
		t.Fatal(err)
	}
	left := func(want string) {
		t.Helper()
		got, err := os.ReadFile(out)
		if err != nil || string(got) != want {
			t.Errorf("the file holds %d bytes, %v", len(got), err)
		}
		if entries, err := os.ReadDir(dir); err != nil || len(entries) != 1 {
			t.Errorf("%d files, %v", len(entries), err)
		}
	}
	if status, _, _ := call(t, header+"2026-03-09,North lane,61.5,2.2,x\n", "-in", "-", "-out", out); status != cli.BadInput {
		t.Errorf("bad reading: status %d", status)
	}
	left(string(last))
	// Here the sheet is begun before the figure that it cannot hold.
	if status, _, _ := call(t, header+"2026-03-09,North lane,9999999.99,29,60\n", "-in", "-", "-out", out, "-syrup-price", "999999999.99/lb"); status != cli.BadInput {
		t.Errorf("too many digits: status %d", status)
	}
	left(string(last))
	want := written(t, "")
	if got := written(t, "", "-out", out); len(got) != 0 {
		t.Errorf("%d bytes on standard output", len(got))
	}
	left(string(want))
	if info, err := os.Stat(out); err != nil || runtime.GOOS != "windows" && info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
}

// Neither the readings, nor a workbook of another hand or one that was changed
// by hand, are replaced.
func TestKeepsRecords(t *testing.T) {
	dir := t.TempDir()
	in, link, other, edited := filepath.Join(dir, "readings.csv"), filepath.Join(dir, "link.xlsx"), filepath.Join(dir, "other.xlsx"), filepath.Join(dir, "edited.xlsx")
	if err := os.WriteFile(in, demo, 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(in, link); err != nil {
		t.Skip(err)
	}
	if err := excelize.NewFile().SaveAs(other); err != nil {
		t.Fatal(err)
	}
	f := opened(t, written(t, ""))
	props, err := f.GetDocProps()
	if err != nil {
		t.Fatal(err)
	}
	props.LastModifiedBy = "somebody"
	if err := f.SetDocProps(props); err != nil {
		t.Fatal(err)
	}
	if err := f.SaveAs(edited); err != nil {
		t.Fatal(err)
	}
	for out, want := range map[string]string{link: "it is what this run reads", other: "spreadsheet did not make it", edited: "or it was changed since"} {
		before, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		status, _, errs := call(t, "", "-in", in, "-out", out)
		if status != cli.BadInput || !strings.Contains(errs, want) {
			t.Errorf("status %d, %s", status, errs)
		}
		if after, err := os.ReadFile(out); err != nil || !bytes.Equal(after, before) {
			t.Errorf("%s is not as it was: %v", out, err)
		}
	}
}

func TestFolderIsNotReplaced(t *testing.T) {
	out := filepath.Join(t.TempDir(), "payments.xlsx")
	if err := os.Mkdir(out, 0o755); err != nil {
		t.Fatal(err)
	}
	status, _, errs := call(t, "", "-out", out)
	if status != cli.BadInput || !strings.Contains(errs, "-out: "+out+": is a directory") {
		t.Errorf("status %d, %s", status, errs)
	}
}

func TestTerminalIsSpared(t *testing.T) {
	terminal, err := os.OpenFile("/dev/ptmx", os.O_RDWR, 0)
	if err != nil {
		t.Skipf("no terminal to be had on %s: %v", runtime.GOOS, err)
	}
	defer terminal.Close()
	var errs strings.Builder
	cmd := clitest.Build(t).Command()
	cmd.Stdout, cmd.Stderr = terminal, &errs
	_ = cmd.Run()
	if cmd.ProcessState.ExitCode() != cli.BadInput || !strings.Contains(errs.String(), "-out: a spreadsheet is not text for a terminal") {
		t.Errorf("status %d, %s", cmd.ProcessState.ExitCode(), errs.String())
	}
	null, err := os.OpenFile(os.DevNull, os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	defer null.Close()
	if isTerminal(null) {
		t.Error("the null device is no terminal")
	}
}
