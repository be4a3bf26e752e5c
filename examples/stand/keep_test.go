package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The list of trees and the record of holes are never replaced by the drawing.
func TestKeepsRecords(t *testing.T) {
	b := clitest.Build(t)
	dir := t.TempDir()
	text := map[string]string{"trees.csv": "tree,girth_in,species,vigor\nX,60,sugar maple,healthy\n", "holes.csv": "tree,year,along_in,height_in\nX,2033,10,40\n"}
	for name, content := range text {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for name, content := range text {
		to := filepath.Join(dir, name)
		status, out, errs := b.Run(t, "", "-tree-file", filepath.Join(dir, "trees.csv"), "-hole-file", filepath.Join(dir, "holes.csv"), "-map", "X", "-svg", to)
		if status != 2 || out != "" || !strings.HasPrefix(errs, "stand: -svg: "+to+": it is what this run reads") {
			t.Errorf("status %d, %d bytes, %q", status, len(out), errs)
		}
		if after, err := os.ReadFile(to); err != nil || string(after) != content {
			t.Errorf("%s is not as it was: %v", name, err)
		}
	}
}
