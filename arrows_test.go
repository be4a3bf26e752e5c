package sapreckoner_test

import (
	"go/parser"
	"go/token"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// The map of DEVELOPERS.md, as far as a compiler does not hold it: each room and
// the packages of the library that it may import. A sister is not among them.
var arrows = map[string]string{
	"units":           "",
	"units/records":   "units",
	"density":         "units",
	"sugar":           "units density",
	"boil":            "units density sugar",
	"boil/fuel":       "units density sugar boil",
	"boil/pan":        "units density sugar boil",
	"boil/finish":     "units density sugar boil",
	"yield":           "units density sugar",
	"yield/packing":   "units density sugar yield",
	"yield/money":     "units density sugar yield",
	"yield/lookagain": "",
	"tapping":         "units units/records",
	"tapping/season":  "units units/records tapping",
}

// Imports run one way, and decimal is for money alone.
func TestArrows(t *testing.T) {
	const module = "example.org/sapreckoner/"
	rooms := 0
	for room, may := range arrows {
		files, err := filepath.Glob(filepath.Join(filepath.FromSlash(room), "*.go"))
		if err != nil || len(files) == 0 {
			t.Fatalf("%s: no files, %v", room, err)
		}
		rooms++
		for _, file := range files {
			if strings.HasSuffix(file, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ImportsOnly)
			if err != nil {
				t.Fatal(err)
			}
			for _, imported := range f.Imports {
				p, err := strconv.Unquote(imported.Path.Value)
				if err != nil {
					t.Fatal(err)
				}
				inside, ours := strings.CutPrefix(p, module)
				switch {
				case ours && strings.HasPrefix(inside, "internal/base/"):
				case ours && !strings.Contains(" "+may+" ", " "+inside+" "):
					t.Errorf("%s imports %s", file, inside)
				case !ours && strings.Contains(p, ".") && !(room == "yield/money" && path.Base(p) == "decimal"):
					t.Errorf("%s imports %s", file, p)
				}
			}
		}
	}
	all, err := filepath.Glob("*/doc.go")
	if err != nil || rooms < len(all) {
		t.Errorf("%d rooms are named, %d folders have a page: %v", rooms, len(all), err)
	}
}
