package sapreckoner_test

import (
	"flag"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

var update = flag.Bool("update", false, "write docs/figures.jsonl and the generated parts of README.md and doc.go anew")

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

// The map in doc.go leads from every table to the functions that it checks.
func TestDocMap(t *testing.T) {
	const begin, end = "by the package that tests it:\n//\n", "//\n// The other tables there"
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	_, rest, ok := strings.Cut(string(doc), begin)
	shown, _, ok2 := strings.Cut(rest, end)
	if !ok || !ok2 {
		t.Fatalf("doc.go does not hold %q and %q", begin, end)
	}
	var b strings.Builder
	bound := 0
	for _, p := range []struct {
		name   string
		claims []check.Claim
	}{
		{"units", proof.Units()},
		{"density", proof.Density()},
		{"sugar", slices.Concat(proof.SugarWater(), proof.Sugar())},
		{"boil", slices.Concat(proof.Boil(), proof.BoilHeat())},
		{"boil/fuel", proof.Fuel()},
		{"boil/pan", proof.Pan()},
		{"boil/finish", proof.Finish()},
		{"yield", proof.Yield()},
		{"yield/money", proof.Money()},
		{"yield/packing", proof.Packing()},
		{"tapping", proof.Tapping()},
		{"tapping/season", proof.Season()},
	} {
		bound += len(p.claims)
		fmt.Fprintf(&b, "//\t%s\n", p.name)
		seen := map[string]bool{}
		table := ""
		for _, c := range p.claims {
			if line := c.Table + " " + c.Func; !seen[line] {
				seen[line] = true
				id := c.Table
				if id == table {
					id = "" // said once for all its functions
				}
				fmt.Fprintf(&b, "//\t  %-34s%s\n", id, c.Func)
				table = c.Table
			}
		}
	}
	if all := len(proof.All()); bound != all {
		t.Errorf("%d claims of %d are in the map", bound, all)
	}
	if *update {
		text := strings.Replace(string(doc), begin+shown+end, begin+b.String()+end, 1)
		if err := os.WriteFile("doc.go", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	} else if shown != b.String() {
		t.Error("the map in doc.go is stale: go test -run DocMap -update .")
	}
}
