package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/sugarhouse"
)

// The season's own files are never replaced by the chart, nor is a file that
// somebody else made.
func TestKeepsRecords(t *testing.T) {
	b := clitest.Build(t)
	dir := t.TempDir()
	if err := os.CopyFS(dir, sugarhouse.Files()); err != nil {
		t.Fatal(err)
	}
	log := filepath.Join(dir, "days.csv")
	before, err := os.ReadFile(log)
	if err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(t.TempDir(), "link.svg")
	targets := []string{log, filepath.Join(dir, "notes.txt")}
	if err := os.WriteFile(targets[1], []byte("a word"), 0o644); err != nil {
		t.Fatal(err)
	}
	if os.Link(log, link) == nil {
		targets = append(targets, link)
	}
	for _, to := range targets {
		status, out, errs := b.Run(t, "", "-dir", dir, "-svg", to)
		if status != 2 || out != "" || !strings.HasPrefix(errs, "logbook: -svg: "+to+": it is ") || !strings.Contains(errs, "name another file") {
			t.Errorf("status %d, %d bytes, %q", status, len(out), errs)
		}
	}
	if after, err := os.ReadFile(log); err != nil || string(after) != string(before) {
		t.Errorf("the log is not as it was: %v", err)
	}
	chart := filepath.Join(dir, "season.svg")
	for range 2 { // the second time over its own
		if status, _, errs := b.Run(t, "", "-dir", dir, "-svg", chart); status != 0 {
			t.Errorf("status %d, %q", status, errs)
		}
	}
}
