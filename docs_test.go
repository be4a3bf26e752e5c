package sapreckoner_test

import (
	"bytes"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// cookbookPage has commands and code that the tests of examples/cookbook run.
const cookbookPage = "docs/cookbook.md"

// prosePages lists what a person reads: README.md, the guide and the book.
func prosePages(t *testing.T) map[string]string {
	t.Helper()
	pages := map[string]string{}
	for _, name := range []string{"README.md", "DEVELOPERS.md", "docs"} {
		err := filepath.WalkDir(name, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || filepath.Ext(path) != ".md" {
				return err
			}
			text, err := os.ReadFile(path)
			pages[filepath.ToSlash(path)] = string(text)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return pages
}

var (
	docLink    = regexp.MustCompile(`\]\(([^)\s]+)\)`)
	docHeading = regexp.MustCompile(`(?m)^#+ (.*)$`)
	docFence   = regexp.MustCompile("(?ms)^```([a-z]*)\n(.*?)^```$")
	docInline  = regexp.MustCompile("`([^`\n]+)`")
	docName    = regexp.MustCompile(`^([a-z]+)\.([A-Z]\w*)(?:\.([A-Z]\w*))?$`)
)

// slug is what a heading is linked by.
func slug(heading string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(heading) {
		switch {
		case r == ' ':
			b.WriteByte('-')
		case r == '-' || r == '_' || r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			b.WriteRune(r)
		}
	}
	return b.String()
}

// No link leads nowhere: files exist, and headings too.
func TestDocLinks(t *testing.T) {
	pages := prosePages(t)
	links := 0
	for name, text := range pages {
		for _, m := range docLink.FindAllStringSubmatch(docFence.ReplaceAllString(text, ""), -1) {
			if strings.Contains(m[1], "://") {
				continue
			}
			links++
			file, heading, _ := strings.Cut(m[1], "#")
			to := name
			if file != "" {
				to = path.Join(path.Dir(name), file)
			}
			if _, err := os.Stat(filepath.FromSlash(to)); err != nil {
				t.Errorf("%s links to %s, which is not there", name, m[1])
				continue
			}
			if heading == "" {
				continue
			}
			var slugs []string
			for _, h := range docHeading.FindAllStringSubmatch(pages[to], -1) {
				slugs = append(slugs, slug(h[1]))
			}
			if !slices.Contains(slugs, heading) {
				t.Errorf("%s links to %s, and %s has no such heading", name, m[1], to)
			}
		}
	}
	if links < 100 {
		t.Errorf("%d links were looked at", links)
	}
}

// What a page calls by a name of Go is there: a function, a type, a method.
func TestDocNames(t *testing.T) {
	names := exportedNames(t)
	seen := 0
	for page, text := range prosePages(t) {
		for _, m := range docInline.FindAllStringSubmatch(docFence.ReplaceAllString(text, ""), -1) {
			n := docName.FindStringSubmatch(m[1])
			if n == nil || names[n[1]] == nil {
				continue
			}
			seen++
			want := strings.TrimSuffix(n[2]+"."+n[3], ".")
			if !names[n[1]][want] {
				t.Errorf("%s speaks of %s, which is not there", page, m[1])
			}
		}
	}
	if seen < 150 {
		t.Errorf("%d names were looked at", seen)
	}
}

// exportedNames holds, by package name, what it exports: Name, Type.Method and
// Type.Field.
func exportedNames(t *testing.T) map[string]map[string]bool {
	t.Helper()
	names := map[string]map[string]bool{}
	for room := range arrows {
		pkg := path.Base(room)
		names[pkg] = map[string]bool{}
		files, err := filepath.Glob(filepath.Join(filepath.FromSlash(room), "*.go"))
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
				exported(d, names[pkg])
			}
		}
	}
	return names
}

func exported(d ast.Decl, into map[string]bool) {
	switch d := d.(type) {
	case *ast.FuncDecl:
		name := d.Name.Name
		if d.Recv != nil {
			of := d.Recv.List[0].Type
			if star, ok := of.(*ast.StarExpr); ok {
				of = star.X
			}
			if index, ok := of.(*ast.IndexExpr); ok {
				of = index.X
			}
			if id, ok := of.(*ast.Ident); ok {
				name = id.Name + "." + name
			}
		}
		into[name] = true
	case *ast.GenDecl:
		for _, spec := range d.Specs {
			switch s := spec.(type) {
			case *ast.TypeSpec:
				into[s.Name.Name] = true
				if fields, ok := s.Type.(*ast.StructType); ok {
					for _, f := range fields.Fields.List {
						for _, n := range f.Names {
							into[s.Name.Name+"."+n.Name] = true
						}
					}
				}
			case *ast.ValueSpec:
				for _, n := range s.Names {
					into[n.Name] = true
				}
			}
		}
	}
}

// Every block of Go on a page is the body of an example, which runs; README.md's
// program is run by TestConsumer, and the diff of docs/adding.md by TestAdding.
func TestDocCode(t *testing.T) {
	bodies := exampleBodies(t)
	blocks := 0
	for page, text := range prosePages(t) {
		for _, m := range docFence.FindAllStringSubmatch(text, -1) {
			if page != cookbookPage && m[1] == "go" && !strings.HasPrefix(m[2], "package main") {
				blocks++
				if !bodies[squeezed(m[2])] {
					t.Errorf("%s: no example has this body:\n%s", page, m[2])
				}
			}
		}
	}
	if blocks < 12 {
		t.Errorf("%d blocks were looked at", blocks)
	}
}

// squeezed takes away all space at the ends of lines.
func squeezed(code string) string {
	var lines []string
	for line := range strings.Lines(code) {
		if line = strings.TrimSpace(line); line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, "\n")
}

// exampleBodies holds the bodies of all examples of the tree.
func exampleBodies(t *testing.T) map[string]bool {
	t.Helper()
	bodies := map[string]bool{}
	err := filepath.WalkDir(".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(name, "_test.go") {
			return err
		}
		text, err := os.ReadFile(name)
		if err != nil || !bytes.Contains(text, []byte("func Example")) {
			return err
		}
		set := token.NewFileSet()
		f, err := parser.ParseFile(set, name, text, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range f.Decls {
			if fn, ok := d.(*ast.FuncDecl); ok && strings.HasPrefix(fn.Name.Name, "Example") {
				bodies[squeezed(string(text[set.Position(fn.Body.Lbrace).Offset+1:set.Position(fn.Body.Rbrace).Offset]))] = true
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return bodies
}

// chapterNamed finds the pages that a package comment names.
var chapterNamed = regexp.MustCompile(`docs/[a-z/]+\.md`)

// Every package comment leads to its chapter and to the cookbook.
func TestPackageComments(t *testing.T) {
	docs, err := filepath.Glob("*/doc.go")
	if err != nil {
		t.Fatal(err)
	}
	inner, err := filepath.Glob("*/*/doc.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range append(docs, inner...) {
		if room := filepath.ToSlash(filepath.Dir(name)); arrows[room] == "" && room != "units" && room != "yield/lookagain" {
			continue
		}
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		pages := chapterNamed.FindAllString(string(text), -1)
		if len(pages) < 2 {
			t.Errorf("%s names %q: a chapter of docs/theory and docs/cookbook.md", name, pages)
		}
		for _, page := range pages {
			if _, err := os.Stat(page); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
}
