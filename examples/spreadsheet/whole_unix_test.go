//go:build unix

package main

import (
	"os"
	"path/filepath"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A spreadsheet, a statement and a ledger are whole or as they were.
func TestWritesWhole(t *testing.T) {
	last := put(t, "readings.csv", header+"2025-03-09,North lane,61.5,2.2,38\n")
	for _, ending := range []string{".xlsx", ".txt", ".csv"} {
		t.Run(ending, func(t *testing.T) {
			old := filepath.Join(t.TempDir(), "old"+ending)
			written(t, "", "-in", last, "-out", old)
			text, err := os.ReadFile(old)
			if err != nil {
				t.Fatal(err)
			}
			clitest.Build(t).WritesWhole(t, clitest.Writing{
				Files: map[string]string{"payments" + ending: string(text)},
				Args:  func(dir string) []string { return []string{"-out", filepath.Join(dir, "payments"+ending)} },
			})
		})
	}
}
