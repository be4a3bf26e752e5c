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

// exported names the exported functions of the package in the working directory,
// and the methods of its exported types.
func exported(t *testing.T) []string {
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		tree, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		for _, decl := range tree.Decls {
			f, ok := decl.(*ast.FuncDecl)
			if !ok || !f.Name.IsExported() {
				continue
			}
			name := f.Name.Name
			if f.Recv != nil {
				of := receiver(f.Recv.List[0].Type)
				if !ast.IsExported(of) {
					continue
				}
				name = of + "." + name
			}
			names = append(names, name)
		}
	}
	if len(names) == 0 {
		t.Fatal("nothing is exported here")
	}
	return names
}

func receiver(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.StarExpr:
		return receiver(x.X)
	case *ast.IndexExpr:
		return receiver(x.X)
	case *ast.Ident:
		return x.Name
	}
	return ""
}
