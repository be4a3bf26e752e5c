package sapreckoner_test

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"example.org/sapreckoner/internal/proving/book"
)

// The pages and figures of docs are what the program makes, and none is left of
// what it no longer does.
func TestBook(t *testing.T) {
	files, err := book.Files(".")
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range files {
		if len(want) > 8000 && filepath.Ext(name) == ".svg" {
			t.Errorf("%s has %d bytes: draw less", name, len(want))
		}
		if *update {
			if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(name, []byte(want), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if got, err := os.ReadFile(name); err != nil || string(got) != want {
			t.Errorf("%s is stale: go test -update . (%v)", name, err)
		}
	}
	left, err := filepath.Glob("docs/validation/*")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range left {
		switch _, ok := files[filepath.ToSlash(name)]; {
		case ok:
		case *update:
			if err := os.Remove(name); err != nil {
				t.Fatal(err)
			}
		default:
			t.Errorf("%s: nothing makes it", name)
		}
	}
}

// Every key that is cited is in the bibliography, and every entry there is cited.
func TestBibliography(t *testing.T) {
	unknown, unused, err := book.Miscited(".")
	if err != nil {
		t.Fatal(err)
	}
	for _, key := range unknown {
		t.Errorf("not in bibliography.json: %s", key)
	}
	for _, key := range unused {
		t.Errorf("%s: no table and no doc comment cites it", key)
	}
}

// CITATION.cff names the version that CHANGELOG.md tells of last.
func TestCitation(t *testing.T) {
	citation, err := os.ReadFile("CITATION.cff")
	if err != nil {
		t.Fatal(err)
	}
	changes, err := os.ReadFile("CHANGELOG.md")
	if err != nil {
		t.Fatal(err)
	}
	last := regexp.MustCompile(`(?m)^## v([0-9.]+)$`).FindSubmatch(changes)
	cited := regexp.MustCompile(`(?m)^version: ([0-9.]+)$`).FindSubmatch(citation)
	if last == nil || cited == nil || string(last[1]) != string(cited[1]) {
		t.Errorf("CITATION.cff has %s, CHANGELOG.md %s", cited, last)
	}
}
