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

// A cell that is copied by one claim and reckoned by another is reckoned, and
// once; what is met exactly is copied unless the claim says that it reckons.
func TestSplit(t *testing.T) {
	table, err := check.Load("nass-yield-per-tap")
	if err != nil {
		t.Fatal(err)
	}
	claim := check.Claim{Column: "gal_per_tap"}
	result := func(exact int, reckons bool) check.Result {
		c := claim
		c.Exact = reckons
		return check.Result{Claim: c, Table: table, Rows: len(table.Rows), Exact: exact, Compared: table.Rows}
	}
	all := len(table.Rows)
	for _, tt := range []struct {
		name             string
		results          []check.Result
		copied, reckoned int
	}{
		{"copied", []check.Result{result(all, false)}, all, 0},
		{"reckoned after copied", []check.Result{result(all, false), result(0, false)}, 0, all},
		{"copied after reckoned", []check.Result{result(0, false), result(all, false)}, 0, all},
		{"exact arithmetic", []check.Result{result(all, true)}, 0, all},
	} {
		s := newSplit()
		for _, r := range tt.results {
			s.count(r)
		}
		by, _ := s.tally()
		if got := by["read"]; got.copied != tt.copied || got.reckoned != tt.reckoned {
			t.Errorf("%s: %d copied, %d reckoned", tt.name, got.copied, got.reckoned)
		}
	}
}
