//go:build unix

package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A day that is typed while the power goes, or a folder that is begun, is whole or
// not there.
func TestWritesWhole(t *testing.T) {
	b := clitest.Build(t)
	long := strings.Repeat("# "+strings.Repeat("many springs ", 100)+"\n", 1<<11) // long enough to be met half written
	for name, w := range map[string]clitest.Writing{
		"day": {
			Files: map[string]string{"days.csv": long + "date,sap_gal\n2034-03-09,30\n"},
			Args: func(dir string) []string {
				return []string{"day", "-dir", dir, "-season", "2034", "-write", "3/10", "40", "gal"}
			},
		},
		"new": {Args: func(dir string) []string { return []string{"new", dir, "-set", "gallons: US"} }},
	} {
		t.Run(name, func(t *testing.T) { b.WritesWhole(t, w) })
	}
}
