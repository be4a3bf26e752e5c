package book

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// cites finds the line of a doc comment that names sources by key.
var cites = regexp.MustCompile(`(?s)\bCites ([a-z0-9][-a-z0-9., \n]*)\.\n`)

// rooms are the folders of the library.
var rooms = []string{"units", "density", "sugar", "boil", "yield", "tapping"}

// Cited lists, by key, the names whose doc comments cite a source.
func Cited(root string) (map[string][]string, error) {
	by := map[string][]string{}
	for _, room := range rooms {
		err := filepath.WalkDir(filepath.Join(root, room), func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ParseComments|parser.SkipObjectResolution)
			if err != nil {
				return err
			}
			return citedIn(file, by)
		})
		if err != nil {
			return nil, err
		}
	}
	for key := range by {
		slices.Sort(by[key])
	}
	return by, nil
}

// citedIn adds what a file cites. A key that one comment has twice is an error.
func citedIn(file *ast.File, by map[string][]string) (err error) {
	add := func(doc *ast.CommentGroup, name string) {
		for _, m := range cites.FindAllStringSubmatch(doc.Text(), -1) {
			for key := range strings.SplitSeq(m[1], ",") {
				key = strings.TrimSpace(key)
				if slices.Contains(by[key], name) {
					err = fmt.Errorf("%s cites %s twice", name, key)
				}
				by[key] = append(by[key], name)
			}
		}
	}
	pkg := file.Name.Name
	add(file.Doc, "package "+pkg)
	for _, decl := range file.Decls {
		switch d := decl.(type) {
		case *ast.FuncDecl:
			name := d.Name.Name
			if d.Recv != nil {
				t := d.Recv.List[0].Type
				if star, ok := t.(*ast.StarExpr); ok {
					t = star.X
				}
				if id, ok := t.(*ast.Ident); ok {
					name = id.Name + "." + name
				}
			}
			add(d.Doc, pkg+"."+name)
		case *ast.GenDecl:
			add(d.Doc, pkg+"."+declared(d))
		}
	}
	return err
}

// declared names the first of a declaration.
func declared(d *ast.GenDecl) string {
	for _, spec := range d.Specs {
		switch s := spec.(type) {
		case *ast.TypeSpec:
			return s.Name.Name
		case *ast.ValueSpec:
			return s.Names[0].Name
		}
	}
	return ""
}
