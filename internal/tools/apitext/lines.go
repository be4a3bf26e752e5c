package main

import (
	"fmt"
	"go/types"
	"slices"
	"strings"
)

// packageLines returns one line for each exported name of pkg, its exported
// struct fields and its methods included, sorted. short stands for the package
// at the head of each line.
func packageLines(short string, pkg *types.Package) []string {
	l := lister{short: short, pkg: pkg}
	scope := pkg.Scope()
	for _, name := range scope.Names() {
		obj := scope.Lookup(name)
		if !obj.Exported() {
			continue
		}
		switch obj := obj.(type) {
		case *types.Const:
			l.add("const", "%s %s", name, l.str(obj.Type()))
		case *types.Var:
			l.add("var", "%s %s", name, l.str(obj.Type()))
		case *types.Func:
			l.add("func", "%s%s", name, l.signature(obj))
		case *types.TypeName:
			l.typeName(obj)
		}
	}
	slices.Sort(l.lines)
	return l.lines
}

// lister gathers the lines of one package.
type lister struct {
	short string
	pkg   *types.Package
	lines []string
}

func (l *lister) add(kind, format string, args ...any) {
	l.lines = append(l.lines, l.short+" "+kind+" "+fmt.Sprintf(format, args...))
}

// str prints t with the names of other packages, but not of this one.
func (l *lister) str(t types.Type) string {
	return types.TypeString(t, func(p *types.Package) string {
		if p == l.pkg {
			return ""
		}
		return p.Name()
	})
}

func (l *lister) signature(f *types.Func) string {
	return strings.TrimPrefix(l.str(f.Type()), "func")
}

// typeName adds a type, its exported fields, and its methods, promoted ones
// included.
func (l *lister) typeName(obj *types.TypeName) {
	name := obj.Name()
	if obj.IsAlias() {
		l.add("type", "%s = %s", name, l.str(types.Unalias(obj.Type())))
		return
	}
	named := obj.Type().(*types.Named)
	head := strings.TrimPrefix(l.str(named), "*")
	switch under := named.Underlying().(type) {
	case *types.Struct:
		hidden := ""
		for f := range under.Fields() {
			switch {
			case !f.Exported():
				hidden = " with unexported fields"
			case f.Embedded():
				l.add("field", "%s.%s embedded %s", name, f.Name(), l.str(f.Type()))
			default:
				l.add("field", "%s.%s %s", name, f.Name(), l.str(f.Type()))
			}
		}
		l.add("type", "%s struct%s", head, hidden)
	case *types.Interface:
		l.add("type", "%s %s", head, l.str(under))
		return // its methods stand in the line
	default:
		l.add("type", "%s %s", head, l.str(under))
	}

	byValue := types.NewMethodSet(named)
	for sel := range types.NewMethodSet(types.NewPointer(named)).Methods() {
		f := sel.Obj().(*types.Func)
		if !f.Exported() {
			continue
		}
		receiver := name
		if byValue.Lookup(l.pkg, f.Name()) == nil {
			receiver = "*" + name
		}
		l.add("method", "(%s) %s%s", receiver, f.Name(), l.signature(f))
	}
}
