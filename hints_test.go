package sapreckoner_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/internal/proving/sweep"
)

// prose lists the fields of errors and ranges that a person reads, and hinted the
// guards of internal/base/limit whose last argument is one.
var (
	prose  = []string{"What", "Hint", "Below", "Above", "Why", "Reason"}
	hinted = []string{"Number", "Count", "In", "Within", "WithinAs", "Liters", "InItem"}
)

// worded lists the rooms that are held to it.
var worded = []string{
	"units", "units/records", "density", "sugar", "boil", "boil/fuel", "boil/pan", "boil/finish", "yield", "yield/packing", "yield/money", "yield/lookagain", "tapping", "tapping/season", "internal/base/limit",
}

// What a person reads has no name of Go in it, and an argument whose stable name
// is a field is called in words besides.
func TestHintsNameNoGo(t *testing.T) {
	seen := 0
	for _, room := range worded {
		files, err := filepath.Glob(filepath.Join(filepath.FromSlash(room), "*.go"))
		if err != nil {
			t.Fatal(err)
		}
		set := token.NewFileSet()
		var trees []*ast.File
		for _, file := range files {
			if strings.HasSuffix(file, "_test.go") {
				continue
			}
			tree, err := parser.ParseFile(set, file, nil, parser.SkipObjectResolution)
			if err != nil {
				t.Fatal(err)
			}
			trees = append(trees, tree)
		}
		texts := constants(trees)
		for _, tree := range trees {
			ast.Inspect(tree, func(n ast.Node) bool {
				for _, said := range texts.said(n) {
					seen++
					if name := sweep.GoName.FindString(said); name != "" || strings.ContainsAny(said, "`") {
						t.Errorf("%s: a person reads %q in %q", set.Position(n.Pos()), name, said)
					}
				}
				if arg := texts.wordless(n); arg != "" {
					t.Errorf("%s: say in words what %s is", set.Position(n.Pos()), arg)
				}
				return true
			})
		}
	}
	if seen < 200 {
		t.Errorf("%d hints were read", seen)
	}
}

// named holds the texts of a package by the names of its constants.
type named map[string]string

func constants(trees []*ast.File) named {
	texts := named{}
	for _, tree := range trees {
		ast.Inspect(tree, func(n ast.Node) bool {
			if spec, ok := n.(*ast.ValueSpec); ok && len(spec.Values) == len(spec.Names) {
				for i, name := range spec.Names {
					texts[name.Name] = texts.of(spec.Values[i])
				}
			}
			return true
		})
	}
	return texts
}

// of returns what is known of a text.
func (texts named) of(x ast.Expr) string {
	switch x := x.(type) {
	case *ast.BasicLit:
		if x.Kind == token.STRING {
			s, _ := strconv.Unquote(x.Value)
			return s
		}
	case *ast.Ident:
		return texts[x.Name]
	case *ast.BinaryExpr:
		return texts.of(x.X) + texts.of(x.Y)
	case *ast.CallExpr:
		if callee(x) == "fmt.Sprintf" {
			return texts.of(x.Args[0])
		}
	}
	return ""
}

// said returns the texts for a person in a literal, an assignment or a call.
func (texts named) said(n ast.Node) (list []string) {
	add := func(x ast.Expr) {
		if s := texts.of(x); s != "" {
			list = append(list, s)
		}
	}
	switch n := n.(type) {
	case *ast.KeyValueExpr:
		if key, ok := n.Key.(*ast.Ident); ok && slices.Contains(prose, key.Name) {
			add(n.Value)
		}
	case *ast.AssignStmt:
		for i, left := range n.Lhs {
			if to, ok := left.(*ast.SelectorExpr); ok && slices.Contains(prose, to.Sel.Name) && len(n.Rhs) == len(n.Lhs) {
				add(n.Rhs[i])
			}
		}
	case *ast.CallExpr:
		name := callee(n)
		if guard, ok := strings.CutPrefix(name, "limit."); ok && slices.Contains(hinted, guard) || name == "errors.New" {
			add(n.Args[len(n.Args)-1])
		}
	}
	return list
}

// wordless returns the stable name of an argument that is a field and has no
// words beside it.
func (texts named) wordless(n ast.Node) string {
	arg := ""
	switch n := n.(type) {
	case *ast.CompositeLit:
		for _, e := range n.Elts {
			pair, ok := e.(*ast.KeyValueExpr)
			if !ok {
				continue
			}
			switch key, _ := pair.Key.(*ast.Ident); {
			case key == nil:
			case key.Name == "What":
				return ""
			case key.Name == "Arg":
				arg = texts.of(pair.Value)
			}
		}
	case *ast.CallExpr:
		if guard, ok := strings.CutPrefix(callee(n), "limit."); ok && slices.Contains(hinted, guard) && guard != "WithinAs" && len(n.Args) > 1 {
			arg = texts.of(n.Args[1])
		}
	}
	if strings.ContainsAny(arg, ".[") {
		return arg
	}
	return ""
}

func callee(call *ast.CallExpr) string {
	if s, ok := call.Fun.(*ast.SelectorExpr); ok {
		if pkg, ok := s.X.(*ast.Ident); ok {
			return pkg.Name + "." + s.Sel.Name
		}
	}
	return ""
}

// The walk finds what it is there to find.
func TestHintsAreFound(t *testing.T) {
	const source = `package p
const way = "see pan.Rig" + " and boil"
var a = limit.Range{Arg: "Rig.Heat", Above: way}
var b = limit.Range{Arg: "Rig.Heat", What: "heat", Below: "give it"}
func f() {
	limit.Number(fn, "Day.Out", x, 0, 1, fmt.Sprintf("call Run() of %s", x))
	e.Hint = "set CalibratedAt"
}`
	tree, err := parser.ParseFile(token.NewFileSet(), "p.go", source, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	texts := constants([]*ast.File{tree})
	var found, wordless []string
	ast.Inspect(tree, func(n ast.Node) bool {
		for _, said := range texts.said(n) {
			found = append(found, sweep.GoName.FindString(said))
		}
		if arg := texts.wordless(n); arg != "" {
			wordless = append(wordless, arg)
		}
		return true
	})
	if want := []string{"pan.Rig", "", "", "Run()", "CalibratedAt"}; !slices.Equal(found, want) {
		t.Errorf("found %q, want %q", found, want)
	}
	if want := []string{"Rig.Heat", "Day.Out"}; !slices.Equal(wordless, want) {
		t.Errorf("wordless %q, want %q", wordless, want)
	}
}
