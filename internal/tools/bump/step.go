package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"go/types"
	"path/filepath"
	"slices"
	"strings"

	"golang.org/x/tools/go/ast/inspector"
)

// A wrap puts text before and behind a piece of source, to make a step of the
// program one that can be left out.
type wrap struct {
	from, to      int // offsets
	before, after string
}

// symmetric functions give the same for arguments in either order.
var symmetric = map[string]bool{"math.Max": true, "math.Min": true, "math.Hypot": true, "strings.EqualFold": true, "example.org/sapreckoner/internal/base/limit.Same": true, "example.org/sapreckoner/internal/base/numeric.middle": true}

// A walker gathers the steps of one package.
type walker struct {
	t     *target
	root  string
	names *typeNames
	list  []*site
}

// steps lists what can be left out of a package, by position: a statement, the
// notice that is taken of an error, the order of two arguments of one type, and
// all that comes after a place in a function. The names are those of the types
// that the changed source needs.
func (t *target) steps(root string) (list []*site, names *typeNames, err error) {
	w := &walker{t: t, root: root, names: &typeNames{pkg: t.pkg.Types}}
	in := inspector.New(t.pkg.Syntax)
	for cur := range in.Root().Preorder((*ast.FuncDecl)(nil), (*ast.FuncLit)(nil), (*ast.BlockStmt)(nil), (*ast.CaseClause)(nil), (*ast.IfStmt)(nil), (*ast.CallExpr)(nil), (*ast.BinaryExpr)(nil), (*ast.AssignStmt)(nil)) {
		switch n := cur.Node().(type) {
		case *ast.FuncDecl:
			if n.Body != nil && n.Name.Name != "init" && n.Name.Name != "main" {
				err = w.function(n.Type, n.Body, true)
			}
		case *ast.FuncLit:
			err = w.function(n.Type, n.Body, false)
		case *ast.BlockStmt:
			err = w.statements(n.List)
		case *ast.CaseClause:
			err = w.statements(n.Body)
		case *ast.IfStmt:
			err = w.condition(n.Cond)
		case *ast.CallExpr:
			err = w.call(n)
		case *ast.BinaryExpr:
			err = w.operator(n)
		case *ast.AssignStmt:
			err = w.assigned(n)
		}
		if err != nil {
			return nil, nil, err
		}
	}
	slices.SortStableFunc(w.list, func(a, b *site) int {
		if d := strings.Compare(a.file, b.file); d != 0 {
			return d
		}
		return a.offset - b.offset
	})
	return w.list, w.names, nil
}

// add makes a site of a node, to be wrapped; %d in the text is its number.
func (w *walker) add(k kind, n ast.Node, text string, wraps ...wrap) error {
	pos := w.t.pkg.Fset.Position(n.Pos())
	src, err := w.t.source(pos.Filename)
	if err != nil {
		return err
	}
	rel, err := filepath.Rel(w.root, pos.Filename)
	if err != nil {
		return err
	}
	first, _, _ := strings.Cut(text, "\n")
	w.list = append(w.list, &site{
		target: w.t, file: filepath.ToSlash(rel), offset: pos.Offset, line: pos.Line, column: pos.Column,
		source: sourceOf(src, pos.Offset), text: strings.TrimSpace(first), step: k, wraps: wraps,
	})
	return nil
}

func (w *walker) around(n ast.Node, before, after string) wrap {
	return wrap{w.t.pkg.Fset.Position(n.Pos()).Offset, w.t.pkg.Fset.Position(n.End()).Offset, before, after}
}

func (w *walker) text(n ast.Node) string {
	from, to := w.t.pkg.Fset.Position(n.Pos()), w.t.pkg.Fset.Position(n.End())
	src, err := w.t.source(from.Filename)
	if err != nil {
		return ""
	}
	return string(src[from.Offset:to.Offset])
}

// statements adds those that can be left out: what follows still compiles.
func (w *walker) statements(list []ast.Stmt) error {
	for _, s := range list {
		switch n := s.(type) {
		case *ast.ExprStmt:
			if call, ok := n.X.(*ast.CallExpr); ok && w.builtin(call.Fun, "panic") {
				continue
			}
		case *ast.AssignStmt:
			if n.Tok == token.DEFINE || w.blank(n.Lhs) {
				continue
			}
		case *ast.IfStmt:
			if n.Else != nil {
				continue
			}
		case *ast.ForStmt:
			if n.Cond == nil {
				continue
			}
		case *ast.IncDecStmt, *ast.DeferStmt, *ast.RangeStmt:
		default:
			continue
		}
		if err := w.add(dropped, s, w.text(s), w.around(s, "if !bumpedStep(%d) { ", " }")); err != nil {
			return err
		}
	}
	return nil
}

func (w *walker) builtin(fun ast.Expr, name string) bool {
	id, ok := fun.(*ast.Ident)
	return ok && id.Name == name && w.t.pkg.TypesInfo.Uses[id] == types.Universe.Lookup(name)
}

// blank reports whether nothing is assigned to a name.
func (w *walker) blank(list []ast.Expr) bool {
	return !slices.ContainsFunc(list, func(e ast.Expr) bool {
		id, ok := e.(*ast.Ident)
		return !ok || id.Name != "_"
	})
}

// condition adds the errors that an if takes notice of.
func (w *walker) condition(e ast.Expr) error {
	b, ok := e.(*ast.BinaryExpr)
	if !ok {
		return nil
	}
	if b.Op == token.LAND || b.Op == token.LOR {
		if err := w.condition(b.X); err != nil {
			return err
		}
		return w.condition(b.Y)
	}
	if b.Op != token.NEQ || w.text(b.Y) != "nil" || !isError(w.t.pkg.TypesInfo.TypeOf(b.X)) {
		return nil
	}
	return w.add(swallowed, b, w.text(b), w.around(b, "(", " && !bumpedStep(%d))"))
}

func isError(t types.Type) bool {
	return t != nil && types.Identical(t, types.Universe.Lookup("error").Type())
}

// function adds the errors that it returns and the places where it may return
// too early: before every statement of its body but a last return.
func (w *walker) function(typ *ast.FuncType, body *ast.BlockStmt, whole bool) error {
	var results []ast.Expr
	named := false
	if typ.Results != nil {
		for _, f := range typ.Results.List {
			for range max(1, len(f.Names)) {
				results = append(results, f.Type)
			}
			named = named || len(f.Names) > 0
		}
	}
	if err := w.returned(body, results); err != nil || !whole {
		return err
	}
	leave := "return"
	for i, r := range results {
		if named {
			break
		}
		if i > 0 {
			leave += ","
		}
		name := w.text(r)
		if t := w.t.pkg.TypesInfo.TypeOf(r); nameable(t, w.t.pkg.Types) && !isError(t) {
			name = w.names.alias(types.Unalias(t))
		}
		leave += fmt.Sprintf(" *new(%s)", name)
	}
	for i, s := range body.List {
		if _, last := s.(*ast.ReturnStmt); last && i > 0 {
			continue
		}
		if _, labeled := s.(*ast.LabeledStmt); labeled {
			continue
		}
		at := w.around(s, "if bumpedStep(%d) { "+leave+" }; ", "")
		at.to = at.from
		if err := w.add(early, s, w.text(s), at); err != nil {
			return err
		}
	}
	return nil
}

// returned adds the errors of the return statements of a body, but not of the
// functions in it.
func (w *walker) returned(body *ast.BlockStmt, results []ast.Expr) (err error) {
	ast.Inspect(body, func(n ast.Node) bool {
		if _, inner := n.(*ast.FuncLit); inner || err != nil {
			return false
		}
		r, ok := n.(*ast.ReturnStmt)
		if !ok || len(r.Results) != len(results) {
			return true
		}
		for i, e := range r.Results {
			if isError(w.t.pkg.TypesInfo.TypeOf(results[i])) && w.text(e) != "nil" && err == nil {
				err = w.add(swallowed, e, w.text(e), w.around(e, "bumpedError(%d, ", ")"))
			}
		}
		return true
	})
	return err
}

// call adds neighboring arguments of one type.
func (w *walker) call(c *ast.CallExpr) error {
	info := w.t.pkg.TypesInfo
	if tv := info.Types[c.Fun]; tv.IsType() || tv.IsBuiltin() {
		return nil
	}
	sig, ok := info.TypeOf(c.Fun).Underlying().(*types.Signature)
	if !ok || len(c.Args) < 2 {
		return nil
	}
	name, _ := c.Fun.(*ast.Ident)
	if sel, ok := c.Fun.(*ast.SelectorExpr); ok {
		name = sel.Sel
	}
	if f, ok := info.Uses[name].(*types.Func); ok && symmetric[f.FullName()] {
		return nil
	}
	n := sig.Params().Len()
	if sig.Variadic() {
		n--
	}
	for i := 0; i+1 < min(n, len(c.Args)); i++ {
		t := sig.Params().At(i).Type()
		a, b := c.Args[i], c.Args[i+1]
		if !types.Identical(t, sig.Params().At(i+1).Type()) || !nameable(t, w.t.pkg.Types) || w.text(a) == w.text(b) || literal(a) || literal(b) {
			continue
		}
		name := w.names.alias(types.Unalias(t))
		if err := w.add(swapped, a, w.text(a)+", "+w.text(b),
			w.around(a, "bumpedPick["+name+"](%d, ", ", "+w.text(b)+")"),
			w.around(b, "bumpedPick["+name+"](%d, ", ", "+w.text(a)+")")); err != nil {
			return err
		}
	}
	return nil
}

// literal reports whether an argument holds a function, which cannot be
// written twice in a line.
func literal(e ast.Expr) (yes bool) {
	ast.Inspect(e, func(n ast.Node) bool {
		_, f := n.(*ast.FuncLit)
		yes = yes || f
		return !yes
	})
	return yes
}

// sourceOf returns the line around an offset, and where it only passes an error
// on, or returns, those before it up to one that says what.
func sourceOf(src []byte, offset int) string {
	line := lineAt(src, offset)
	for whole := line; ; {
		at := strings.LastIndexByte(string(src[:offset]), '\n')
		if at <= 0 || !strings.HasPrefix(line, "return") && line != "if err != nil {" {
			return whole
		}
		offset = at
		line = lineAt(src, at)
		whole = line + " " + whole
	}
}
