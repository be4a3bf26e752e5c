package sapreckoner_test

import (
	"flag"
	"os"
	"os/exec"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/internal/proof"
)

var update = flag.Bool("update", false, "write the generated part of README.md anew")

// Every published figure is bound to the function that must reproduce it.
func TestEveryFigureIsBound(t *testing.T) {
	for _, o := range check.Orphans(proof.All()) {
		t.Error("no claim covers", o)
	}
}

// The table of sources in README.md is what the program prints.
func TestReadmeConformance(t *testing.T) {
	const begin, end = "<!-- go run ./examples/conformance -->\n", "<!-- end -->"
	readme, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	_, rest, ok := strings.Cut(string(readme), begin)
	shown, _, ok2 := strings.Cut(rest, end)
	if !ok || !ok2 {
		t.Fatalf("README.md does not hold %q and %q", begin, end)
	}
	out, err := exec.Command("go", "run", "./examples/conformance").Output()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		text := strings.Replace(string(readme), begin+shown+end, begin+string(out)+end, 1)
		if err := os.WriteFile("README.md", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	} else if shown != string(out) {
		t.Error("README.md is stale: go test -run Conformance -update .")
	}
	if !strings.Contains(string(out), ", 0 outside their tolerance.") {
		t.Error("a figure is outside its tolerance: go run ./examples/conformance shows it")
	}
}
