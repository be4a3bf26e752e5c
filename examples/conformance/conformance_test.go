package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/internal/proving/check"
)

// The table of all sources is that of docs/sources.md, held by a test at the root.
func TestConformance(t *testing.T) {
	b := clitest.Build(t)
	b.Golden(t, "table.txt", "-table", "boiling-rise-exact")
	b.Golden(t, "lines.txt", "-jsonl", "-table", "hole-worked")
	b.Golden(t, "help.txt", "-h")
	b.Refuses(t, "conformance", []clitest.Bad{
		{Args: []string{"-table", "nosuch"}, Want: `-table: no table "nosuch"`},
		{Args: []string{"-jsonl", "-table", "nosuch"}, Want: `-table: no table "nosuch"`},
		{Args: []string{"stray"}, Want: "\"stray\": there are flags only\n"}, // no flag takes a quantity
	})
}

// Every table of figures has at least one line.
func TestEveryTable(t *testing.T) {
	b := clitest.Build(t)
	status, out, errs := b.Run(t, "")
	if status != 0 {
		t.Fatal(errs)
	}
	if head, _, _ := strings.Cut(out, "\n"); len(head) > 78 {
		t.Errorf("the head is too wide for a terminal: %s", head)
	}
	for _, id := range check.IDs() {
		table, err := check.Load(id)
		if err != nil {
			t.Fatal(err)
		}
		if table.Kind == check.Figures && !strings.Contains(out, "| "+id+" |") {
			t.Errorf("no line for %s", id)
		}
	}
}
