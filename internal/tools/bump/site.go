package main

import (
	"go/ast"
	"go/constant"
	"go/token"
	"go/types"
	"path/filepath"
	"strings"

	"golang.org/x/tools/go/ast/inspector"
	"golang.org/x/tools/go/packages"
)

// A site is a numeric literal, or a step of a function, that can be changed.
type site struct {
	target       *target
	file         string // below the root of the module, with slashes
	offset       int
	line, column int
	source       string // the line it stands in, without spaces at the ends
	text         string
	tok          token.Token
	onlySign     bool // only its sign says anything
	known        [kinds]bool

	// Of a step, how it can be left out; wraps is empty for a literal.
	step  kind
	wraps []wrap

	// The constant expression around it, and how it reads with each change;
	// empty where it would not compile. A variable takes the place of the whole,
	// since constants are computed exactly and variables are not.
	whole    whole
	variants [literals]string
}

// A whole is a constant expression that no larger one holds.
type whole struct {
	offset int
	text   string
	typ    types.Type // nil if no variable may stand in its place
}

func (s *site) bumped(k kind) (string, bool) {
	if s.wraps != nil {
		return kindNames[k], k == s.step
	}
	if k >= literals || s.onlySign && k != sign {
		return "", false
	}
	return bump(s.text, s.tok, k)
}

// sites lists the numeric literals of a package by position.
func (t *target) sites(root string) ([]*site, error) {
	var list []*site
	in := inspector.New(t.pkg.Syntax)
	for cur := range in.Root().Preorder((*ast.BasicLit)(nil)) {
		lit := cur.Node().(*ast.BasicLit)
		if lit.Kind != token.INT && lit.Kind != token.FLOAT {
			continue
		}
		pos := t.pkg.Fset.Position(lit.Pos())
		src, err := t.source(pos.Filename)
		if err != nil {
			return nil, err
		}
		rel, err := filepath.Rel(root, pos.Filename)
		if err != nil {
			return nil, err
		}
		s := &site{
			target: t, file: filepath.ToSlash(rel),
			offset: pos.Offset, line: pos.Line, column: pos.Column,
			source: lineAt(src, pos.Offset), text: lit.Value, tok: lit.Kind,
		}
		if s.place(cur, t.pkg, src) {
			list = append(list, s)
		}
	}
	return list, nil
}

// place looks at what surrounds the literal: whether it is to be changed at
// all, and whether a variable could stand there.
func (s *site) place(cur inspector.Cursor, pkg *packages.Package, src []byte) bool {
	lit := cur.Node().(*ast.BasicLit)
	outer := ast.Expr(lit)
	constantOnly := false
	child := ast.Node(lit)
	for c := cur.Parent(); c.Node() != nil; c = c.Parent() {
		if e, ok := c.Node().(ast.Expr); ok && child == outer && pkg.TypesInfo.Types[e].Value != nil {
			outer = e
		}
		switch n := c.Node().(type) {
		case *ast.ArrayType:
			if n.Len == child {
				return false
			}
		case *ast.ValueSpec:
			if decl, ok := c.Parent().Node().(*ast.GenDecl); ok && decl.Tok == token.CONST {
				if usesIota(n, pkg.TypesInfo) {
					return false
				}
				constantOnly = true
			}
		case *ast.BinaryExpr:
			// What a constant is when shifted by a variable depends on the context.
			if (n.Op == token.SHL || n.Op == token.SHR) && child == outer {
				constantOnly = true
			}
		case *ast.KeyValueExpr:
			if n.Key == child && pkg.TypesInfo.Types[n.Key].Value != nil {
				constantOnly = true
			}
		case *ast.CallExpr:
			if child == ast.Node(lit) || isNegative(child, lit) {
				s.onlySign = s.onlySign || tellsSign(n, lit, pkg.TypesInfo)
			}
		}
		child = c.Node()
	}
	start, end := pkg.Fset.Position(outer.Pos()).Offset, pkg.Fset.Position(outer.End()).Offset
	s.whole = whole{offset: start, text: string(src[start:end])}
	t := pkg.TypesInfo.TypeOf(outer)
	if constantOnly || t == nil || !nameable(t, pkg.Types) {
		return true
	}
	s.whole.typ = types.Unalias(t)
	for k := range literals {
		to, ok := s.bumped(k)
		if !ok {
			continue
		}
		text := string(splice(src[start:end], []edit{{s.offset - start, len(s.text), to}}))
		if v, err := types.Eval(pkg.Fset, pkg.Types, lit.Pos(), text); err == nil && representable(v.Value, s.whole.typ) {
			s.variants[k] = text
		}
	}
	return true
}

// isNegative reports whether n is the literal with a sign.
func isNegative(n ast.Node, lit *ast.BasicLit) bool {
	u, ok := n.(*ast.UnaryExpr)
	return ok && u.X == lit
}

// tellsSign reports whether the literal is the sign in math.Inf or math.IsInf.
func tellsSign(call *ast.CallExpr, lit *ast.BasicLit, info *types.Info) bool {
	sel, ok := call.Fun.(*ast.SelectorExpr)
	if !ok {
		return false
	}
	f, ok := info.Uses[sel.Sel].(*types.Func)
	return ok && (f.FullName() == "math.Inf" || f.FullName() == "math.IsInf" && lit.Value != "0")
}

func usesIota(spec *ast.ValueSpec, info *types.Info) bool {
	found := false
	ast.Inspect(spec, func(n ast.Node) bool {
		if id, ok := n.(*ast.Ident); ok && info.Uses[id] == types.Universe.Lookup("iota") {
			found = true
		}
		return !found
	})
	return found
}

// nameable reports whether a file of pkg can name the type.
func nameable(t types.Type, pkg *types.Package) bool {
	switch t := types.Unalias(t).(type) {
	case *types.Basic:
		return t.Info()&types.IsUntyped == 0
	case *types.Named:
		obj := t.Obj()
		return t.TypeArgs().Len() == 0 && obj.Pkg() != nil && obj.Parent() == obj.Pkg().Scope() &&
			(obj.Pkg() == pkg || obj.Exported())
	}
	return false
}

// representable reports whether a constant fits the type.
func representable(x constant.Value, t types.Type) bool {
	basic, ok := t.Underlying().(*types.Basic)
	if !ok || x == nil {
		return false
	}
	if basic.Info()&types.IsInteger == 0 {
		return true // floats, of which the library has none near their limits, and truth
	}
	x = constant.ToInt(x)
	if x.Kind() != constant.Int {
		return false
	}
	size := int(types.SizesFor("gc", "amd64").Sizeof(basic) * 8)
	if basic.Info()&types.IsUnsigned != 0 {
		return constant.Sign(x) >= 0 && constant.BitLen(x) <= size
	}
	return constant.BitLen(x) < size
}

// lineAt returns the line around an offset.
func lineAt(src []byte, offset int) string {
	text := string(src)
	from := strings.LastIndexByte(text[:offset], '\n') + 1
	line, _, _ := strings.Cut(text[from:], "\n")
	return strings.TrimSpace(line)
}

// changes reports whether the kind changes the site.
func (s *site) changes(k kind) bool {
	_, ok := s.bumped(k)
	return ok
}
