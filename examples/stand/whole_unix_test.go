//go:build unix

package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The record of holes is whole or as it was.
func TestWritesWhole(t *testing.T) {
	clitest.Build(t).WritesWhole(t, clitest.Writing{
		Files: map[string]string{
			"trees.csv": "tree,girth_in,species,vigor,growth_in\na,60,sugar maple,healthy,0.05\n",
			"holes.csv": strings.Repeat("# "+strings.Repeat("many springs ", 100)+"\n", 1<<11) + "tree,year,along_in,height_in\na,2033,15,40\na,2033,45,46\n",
		},
		Args: func(dir string) []string { return []string{"-dir", dir, "-season", "2034", "-write"} },
	})
}
