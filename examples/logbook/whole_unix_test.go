//go:build unix

package main

import (
	"path/filepath"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The chart of the season is whole or as it was.
func TestWritesWhole(t *testing.T) {
	clitest.Build(t).WritesWhole(t, clitest.Writing{
		Files: map[string]string{"chart.svg": "<!-- Drawn by logbook, which may replace this file. -->\n<svg/>\n"},
		Args:  func(dir string) []string { return []string{"-svg", filepath.Join(dir, "chart.svg")} },
	})
}
