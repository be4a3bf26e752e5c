package main

import (
	"go/ast"
	"go/doc"
	"go/types"
	"path/filepath"
	"strings"

	"golang.org/x/tools/go/packages"
)

// calledForYou holds methods that the standard library calls on the reader's
// behalf, so that an example shows them without naming them.
var calledForYou = map[string]bool{
	"AppendText": true, "Error": true, "Format": true, "GoString": true, "Is": true,
	"MarshalJSON": true, "MarshalText": true, "String": true, "UnmarshalJSON": true,
	"UnmarshalText": true, "Unwrap": true,
}

// unshown returns the exported functions, types and methods of p that no
// runnable example of p's own tests shows. An example runs if it has an output
// comment. It shows the functions and methods named in its body and the types
// of the values in it.
//
// Two kinds of function come with the type and need no example of their own: the
// constructor or getter of a unit, which turns a plain number into a type of p
// or back, and a method that the standard library calls, such as String.
func unshown(p *packages.Package, pkgs []*packages.Package) []problem {
	shown := shownNames(p.PkgPath, pkgs)
	var problems []problem
	check := func(obj types.Object, name string) {
		if !shown[name] {
			problems = append(problems, problem{p.Fset.Position(obj.Pos()), name + " is in no runnable example"})
		}
	}
	scope := p.Types.Scope()
	for _, name := range scope.Names() {
		obj := scope.Lookup(name)
		if !obj.Exported() {
			continue
		}
		switch obj := obj.(type) {
		case *types.Func:
			if unitType(obj) == "" {
				check(obj, name)
			}
		case *types.TypeName:
			if obj.IsAlias() {
				continue
			}
			check(obj, name)
			for f := range obj.Type().(*types.Named).Methods() {
				if f.Exported() && !calledForYou[f.Name()] && unitType(f) == "" {
					check(f, name+"."+f.Name())
				}
			}
		}
	}
	return problems
}

// unitType returns the name of the type that f makes from a plain number or
// turns into one, or "" if f does anything else.
func unitType(f *types.Func) string {
	sig := f.Signature()
	var from, to types.Type
	switch in, out := sig.Params(), sig.Results(); {
	case out.Len() != 1:
		return ""
	case sig.Recv() == nil && in.Len() == 1:
		from, to = in.At(0).Type(), out.At(0).Type()
	case sig.Recv() != nil && in.Len() == 0:
		from, to = sig.Recv().Type(), out.At(0).Type()
	default:
		return ""
	}
	number := types.Typ[types.Float64]
	if types.Identical(from, number) {
		return localName(to, f.Pkg().Path())
	}
	if types.Identical(to, number) {
		return localName(from, f.Pkg().Path())
	}
	return ""
}

// localName returns the name of t, or of what t points to, if it is a type of the
// package with that path, and "" otherwise.
func localName(t types.Type, path string) string {
	if ptr, ok := types.Unalias(t).(*types.Pointer); ok {
		t = ptr.Elem()
	}
	named, ok := types.Unalias(t).(*types.Named)
	if !ok || named.Obj().Pkg() == nil || named.Obj().Pkg().Path() != path {
		return ""
	}
	return named.Obj().Name()
}

// shownNames returns the names of the package with that path, "Func", "Type" and
// "Type.Method", that the runnable examples of its tests show.
func shownNames(path string, pkgs []*packages.Package) map[string]bool {
	shown := make(map[string]bool)
	for _, p := range pkgs {
		if p.ForTest != path {
			continue
		}
		for _, body := range runnable(p) {
			ast.Inspect(body, func(n ast.Node) bool {
				expr, ok := n.(ast.Expr)
				if !ok {
					return true
				}
				if t := p.TypesInfo.TypeOf(expr); t != nil {
					if name := localName(t, path); name != "" {
						shown[name] = true
					}
				}
				id, ok := expr.(*ast.Ident)
				if !ok {
					return true
				}
				if f, ok := p.TypesInfo.Uses[id].(*types.Func); ok && f.Pkg() != nil && f.Pkg().Path() == path {
					name := f.Name()
					if recv := f.Origin().Signature().Recv(); recv != nil {
						name = localName(recv.Type(), path) + "." + name
					}
					shown[name] = true
				}
				return true
			})
		}
	}
	return shown
}

// runnable returns the bodies of the examples in p that have an output comment.
func runnable(p *packages.Package) []*ast.BlockStmt {
	var bodies []*ast.BlockStmt
	for _, file := range p.Syntax {
		if !strings.HasSuffix(filepath.Base(p.Fset.Position(file.Pos()).Filename), "_test.go") {
			continue
		}
		runs := make(map[string]bool)
		for _, ex := range doc.Examples(file) {
			runs["Example"+ex.Name] = ex.Output != "" || ex.EmptyOutput
		}
		for _, decl := range file.Decls {
			if f, ok := decl.(*ast.FuncDecl); ok && f.Recv == nil && runs[f.Name.Name] {
				bodies = append(bodies, f.Body)
			}
		}
	}
	return bodies
}
