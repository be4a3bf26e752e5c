package main

import (
	"go/ast"
	"go/token"

	"golang.org/x/tools/go/packages"
)

// docComments returns every doc comment of a file: of the package, of
// declarations, exported or not, and of the fields and methods inside types.
func docComments(file *ast.File) []*ast.CommentGroup {
	var docs []*ast.CommentGroup
	add := func(group *ast.CommentGroup) {
		if group != nil {
			docs = append(docs, group)
		}
	}
	add(file.Doc)
	for _, decl := range file.Decls {
		switch decl := decl.(type) {
		case *ast.FuncDecl:
			add(decl.Doc)
		case *ast.GenDecl:
			add(decl.Doc)
			for _, spec := range decl.Specs {
				switch spec := spec.(type) {
				case *ast.TypeSpec:
					add(spec.Doc)
					ast.Inspect(spec.Type, func(n ast.Node) bool {
						if field, ok := n.(*ast.Field); ok {
							add(field.Doc)
						}
						return true
					})
				case *ast.ValueSpec:
					add(spec.Doc)
				}
			}
		}
	}
	return docs
}

// undocumented returns the exported names of p that have no doc comment, and p
// itself if it has none.
func undocumented(p *packages.Package) []problem {
	var problems []problem
	missing := func(pos token.Pos, what string) {
		problems = append(problems, problem{p.Fset.Position(pos), what + " has no doc comment"})
	}
	described := false
	for _, file := range p.Syntax {
		described = described || file.Doc != nil
	}
	if !described {
		missing(p.Syntax[0].Package, "package "+p.Name)
	}
	if p.Name == "main" {
		return problems
	}
	for _, file := range p.Syntax {
		for _, decl := range file.Decls {
			switch decl := decl.(type) {
			case *ast.FuncDecl:
				if exportedFunc(decl) && decl.Doc == nil {
					missing(decl.Name.Pos(), decl.Name.Name)
				}
			case *ast.GenDecl:
				for _, spec := range decl.Specs {
					switch spec := spec.(type) {
					case *ast.TypeSpec:
						if spec.Name.IsExported() && spec.Doc == nil && decl.Doc == nil {
							missing(spec.Name.Pos(), spec.Name.Name)
						}
					case *ast.ValueSpec:
						if exportedValue(spec) && spec.Doc == nil && spec.Comment == nil && decl.Doc == nil {
							missing(spec.Names[0].Pos(), spec.Names[0].Name)
						}
					}
				}
			}
		}
	}
	return problems
}

// exportedFunc reports whether f is exported and, if it is a method, its
// receiver's type too.
func exportedFunc(f *ast.FuncDecl) bool {
	if f.Recv != nil && len(f.Recv.List) > 0 {
		t := f.Recv.List[0].Type
		for {
			switch x := t.(type) {
			case *ast.StarExpr:
				t = x.X
			case *ast.IndexExpr:
				t = x.X
			case *ast.IndexListExpr:
				t = x.X
			case *ast.ParenExpr:
				t = x.X
			case *ast.Ident:
				return x.IsExported() && f.Name.IsExported()
			default:
				return false
			}
		}
	}
	return f.Name.IsExported()
}

func exportedValue(spec *ast.ValueSpec) bool {
	for _, name := range spec.Names {
		if name.IsExported() {
			return true
		}
	}
	return false
}
