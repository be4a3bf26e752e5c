package kept_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/sapreckoner/units"
)

var update = flag.Bool("update", false, "add to the folder of this version what it does not have")

const module = "example.org/sapreckoner/"

// A document is a value and where its JSON is kept: a file for each package, and
// in it a name.
type document struct {
	file, name string
	value      any
}

func keep[T any](words string, value T) document {
	typ := reflect.TypeFor[T]()
	name := typ.Name()
	if words != "" {
		name += ", " + words
	}
	return document{strings.TrimPrefix(typ.PkgPath(), module) + ".json", name, value}
}

// same tells how two values differ, bit for bit and with their unexported
// fields; what is not known is the same as what is not known.
func same(want, got any) string {
	return cmp.Diff(want, got, cmp.Exporter(func(reflect.Type) bool { return true }),
		cmp.FilterValues(bothUnknown, cmp.Comparer(func(_, _ any) bool { return true })))
}

func bothUnknown(x, y any) bool {
	unknown := func(v any) bool {
		if t, ok := v.(units.Temperature); ok {
			v = t.Celsius()
		}
		r := reflect.ValueOf(v)
		return r.Kind() == reflect.Float64 && math.IsNaN(r.Float())
	}
	return unknown(x) && unknown(y)
}

// versions lists the folders.
func versions(t *testing.T) []string {
	t.Helper()
	folders, err := filepath.Glob("v*")
	if err != nil || !slices.Contains(folders, current) {
		t.Fatalf("folders %v, %v: none is %s", folders, err, current)
	}
	return folders
}

// lines reads the JSON files of a version: file, name, document.
func lines(t *testing.T, version string) map[string]map[string]json.RawMessage {
	t.Helper()
	all := map[string]map[string]json.RawMessage{}
	err := filepath.WalkDir(version, func(path string, e fs.DirEntry, err error) error {
		if err != nil || filepath.Ext(path) != ".json" {
			return err
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		file, err := filepath.Rel(version, path)
		if err != nil {
			return err
		}
		var named map[string]json.RawMessage
		if err := json.Unmarshal(text, &named); err != nil {
			return fmt.Errorf("%s: %w", path, err)
		}
		all[filepath.ToSlash(file)] = named
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

// What any version wrote, this one reads.
func TestEveryVersionIsRead(t *testing.T) {
	for _, version := range versions(t) {
		for file, named := range lines(t, version) {
			for name, text := range named {
				i := slices.IndexFunc(documents, func(d document) bool { return d.file == file && d.name == name })
				if i < 0 {
					t.Errorf("%s/%s: %q is on no list: what a version wrote is read for good", version, file, name)
					continue
				}
				want := documents[i].value
				got := reflect.New(reflect.TypeOf(want))
				if err := json.Unmarshal(text, got.Interface()); err != nil {
					t.Errorf("%s/%s: %q: %v", version, file, name, err)
				} else if d := same(want, got.Elem().Interface()); d != "" {
					t.Errorf("%s/%s: %q is read otherwise (- kept, + read):\n%s", version, file, name, d)
				}
			}
		}
	}
}

// This version writes what is kept of it.
func TestThisVersionIsKept(t *testing.T) {
	kept := lines(t, current)
	for _, d := range documents {
		p := reflect.New(reflect.TypeOf(d.value)) // methods of the pointer count
		p.Elem().Set(reflect.ValueOf(d.value))
		text, err := json.Marshal(p.Interface())
		if err != nil {
			t.Errorf("%s: %s: %v", d.file, d.name, err)
			continue
		}
		have, ok := kept[d.file][d.name]
		switch {
		case !ok && *update:
			if kept[d.file] == nil {
				kept[d.file] = map[string]json.RawMessage{}
			}
			kept[d.file][d.name] = text
		case !ok:
			t.Errorf("%s/%s has no %q: go test ./internal/proving/kept -update", current, d.file, d.name)
		case !bytes.Equal(have, text):
			t.Errorf("%s/%s: %q is written otherwise\nkept  %s\nnow   %s", current, d.file, d.name, have, text)
		}
	}
	if *update && !t.Failed() {
		for file, named := range kept {
			write(t, filepath.Join(current, filepath.FromSlash(file)), named)
		}
	}
}

// write puts one document on a line.
func write(t *testing.T, path string, named map[string]json.RawMessage) {
	t.Helper()
	var rows []string
	for _, name := range slices.Sorted(maps.Keys(named)) {
		rows = append(rows, fmt.Sprintf("\t%q: %s", name, named[name]))
	}
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte("{\n"+strings.Join(rows, ",\n")+"\n}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
}

// Every exported type that says how it encodes is kept.
func TestEveryEncodingIsKept(t *testing.T) {
	const root = "../../.."
	rooms := 0
	unseen := maps.Clone(refusals)
	err := filepath.WalkDir(root, func(path string, e fs.DirEntry, err error) error {
		if err != nil || !e.IsDir() || path == root {
			return err
		}
		room, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		room = filepath.ToSlash(room)
		if first, _, _ := strings.Cut(room, "/"); strings.HasPrefix(first, ".") || slices.Contains([]string{"internal", "examples", "docs"}, first) || e.Name() == "testdata" {
			return filepath.SkipDir
		}
		rooms++
		for _, name := range encoders(t, path) {
			delete(unseen, room+"."+name)
			held := slices.ContainsFunc(documents, func(d document) bool {
				typ, _, _ := strings.Cut(d.name, ",")
				return d.file == room+".json" && typ == name
			})
			switch refuses := refusals[room+"."+name]; {
			case !held && !refuses:
				t.Errorf("%s.%s encodes and is not kept: add a value of it to documents", room, name)
			case held && refuses:
				t.Errorf("%s.%s is kept and is said to refuse", room, name)
			}
		}
		return nil
	})
	if err != nil || rooms < 6 {
		t.Fatalf("%d rooms looked into, %v", rooms, err)
	}
	for name := range unseen {
		t.Errorf("%s is said to refuse and does not encode: take it off the list", name)
	}
}

// encoders lists the exported types of a folder with methods that encode.
func encoders(t *testing.T, dir string) (names []string) {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Recv == nil || fn.Name.Name != "MarshalJSON" && fn.Name.Name != "MarshalText" {
				continue
			}
			typ := fn.Recv.List[0].Type
			if star, ok := typ.(*ast.StarExpr); ok {
				typ = star.X
			}
			if id, ok := typ.(*ast.Ident); ok && id.IsExported() && !slices.Contains(names, id.Name) {
				names = append(names, id.Name)
			}
		}
	}
	return names
}
