package sweep

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// folder is the name of the package under test.
func folder() string {
	dir, err := os.Getwd()
	if err != nil {
		return ""
	}
	return filepath.Base(dir)
}

// A source is what the files of the package in the working directory export.
type source struct {
	funcs  []string            // exported functions, and methods of exported types as Type.Method
	params map[string][]string // the parameters of each by name, the receiver left out
	types  []string            // exported types that may have values: no interfaces and no functions
}

// read reads the package in the working directory.
func read(t *testing.T) source {
	t.Helper()
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	s := source{params: map[string][]string{}}
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		for _, decl := range tree.Decls {
			switch d := decl.(type) {
			case *ast.FuncDecl:
				s.function(d)
			case *ast.GenDecl:
				for _, spec := range d.Specs {
					if typ, ok := spec.(*ast.TypeSpec); ok {
						s.typ(typ)
					}
				}
			}
		}
	}
	if len(s.funcs) == 0 {
		t.Fatal("nothing is exported here")
	}
	return s
}

func (s *source) function(f *ast.FuncDecl) {
	if !f.Name.IsExported() {
		return
	}
	name := f.Name.Name
	if f.Recv != nil {
		of := receiver(f.Recv.List[0].Type)
		if !ast.IsExported(of) {
			return
		}
		name = of + "." + name
	}
	s.funcs = append(s.funcs, name)
	for _, field := range f.Type.Params.List {
		if len(field.Names) == 0 {
			s.params[name] = append(s.params[name], "_")
		}
		for _, n := range field.Names {
			s.params[name] = append(s.params[name], n.Name)
		}
	}
}

func (s *source) typ(spec *ast.TypeSpec) {
	if !spec.Name.IsExported() || spec.Assign.IsValid() { // an alias is of another type
		return
	}
	switch spec.Type.(type) {
	case *ast.InterfaceType, *ast.FuncType:
		return
	}
	s.types = append(s.types, spec.Name.Name)
}

func receiver(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.StarExpr:
		return receiver(x.X)
	case *ast.IndexExpr:
		return receiver(x.X)
	case *ast.IndexListExpr:
		return receiver(x.X)
	case *ast.Ident:
		return x.Name
	}
	return ""
}
