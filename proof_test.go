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

var update = flag.Bool("update", false, "write the generated pages and figures of docs, and the generated parts of README.md and doc.go anew")

// Every published figure is bound to the function that must reproduce it.
func TestEveryFigureIsBound(t *testing.T) {
	for _, o := range check.Orphans(proof.All()) {
		t.Error("no claim covers", o)
	}
}

// The table of sources in docs is what the program prints, and README.md has its
// count.
func TestSources(t *testing.T) {
	out, err := exec.Command("go", "run", "./examples/conformance").Output()
	if err != nil {
		t.Fatal(err)
	}
	between(t, "docs/sources.md", "<!-- go run ./examples/conformance -->\n", "<!-- end -->", string(out))
	_, rest, _ := strings.Cut(string(out), "\n\n") // below the table
	count, _, _ := strings.Cut(rest, "\n\n")
	between(t, "README.md", "<!-- the count of go run ./examples/conformance -->\n", "<!-- end -->", count+"\n")
	if !strings.Contains(count, ", 0 outside their tolerance.") {
		t.Error("a figure is outside its tolerance: go run ./examples/conformance shows it")
	}
}

// between holds what a file has between two marks to what it should have, or
// writes it there.
func between(t *testing.T, file, begin, end, want string) {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	_, rest, ok := strings.Cut(string(text), begin)
	shown, _, ok2 := strings.Cut(rest, end)
	switch {
	case !ok || !ok2:
		t.Fatalf("%s does not hold %q and %q", file, begin, end)
	case shown == want:
	case !*update:
		t.Errorf("%s is stale: go test -update .", file)
	default:
		text := strings.Replace(string(text), begin+shown+end, begin+want+end, 1)
		if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// The map in doc.go leads from every table to the functions that it checks.
func TestDocMap(t *testing.T) {
	const begin, end = "by the package that tests it:\n//\n", "//\n// The other tables there"
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
	between(t, "doc.go", begin, end, b.String())
}
