package main

import (
	"fmt"
	"go/ast"
	"go/doc"
	"go/doc/comment"
	"go/parser"
	"go/token"
	"go/types"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/tools/go/packages"

	"example.org/sapreckoner/internal/tools/module"
)

// brokenLinks returns the doc links in the comments of p that lead nowhere.
func brokenLinks(p *packages.Package, targets *targets) ([]problem, error) {
	links, err := newParser(p)
	if err != nil {
		return nil, err
	}
	var problems []problem
	for _, file := range p.Syntax {
		for _, group := range docComments(file) {
			for _, text := range brokenTexts(p, links, targets, group.Text()) {
				for _, pos := range find(p.Fset, group, "["+text+"]") {
					problems = append(problems, problem{pos, fmt.Sprintf("doc link [%s] leads nowhere", text)})
				}
			}
		}
	}
	return problems, nil
}

// newParser returns the parser for the comments of p, as the go command sets it
// up: a link can lead to exported names alone. It reads the files anew, because
// go/doc cuts down the trees that it is given.
func newParser(p *packages.Package) (*comment.Parser, error) {
	fset := token.NewFileSet()
	var files []*ast.File
	for _, name := range p.CompiledGoFiles {
		file, err := parser.ParseFile(fset, name, nil, parser.ParseComments)
		if err != nil {
			return nil, err
		}
		files = append(files, file)
	}
	d, err := doc.NewFromFiles(fset, files, p.PkgPath)
	if err != nil {
		return nil, err
	}
	return d.Parser(), nil
}

// brokenTexts returns what stands between the brackets of the broken links in
// one doc comment.
func brokenTexts(p *packages.Package, links *comment.Parser, targets *targets, text string) []string {
	var broken []string
	var inText func([]comment.Text)
	inText = func(parts []comment.Text) {
		for _, part := range parts {
			switch part := part.(type) {
			case comment.Plain:
				broken = append(broken, missed(string(part), targets)...)
			case comment.Italic:
				broken = append(broken, missed(string(part), targets)...)
			case *comment.Link:
				inText(part.Text)
			case *comment.DocLink:
				path := part.ImportPath
				if path == "" {
					if links.LookupSym(part.Recv, part.Name) {
						continue
					}
					path = p.PkgPath
				}
				if !targets.has(path, part.Recv, part.Name) {
					broken = append(broken, plain(part.Text))
				}
			}
		}
	}
	var inBlocks func([]comment.Block)
	inBlocks = func(blocks []comment.Block) {
		for _, block := range blocks {
			switch block := block.(type) {
			case *comment.Paragraph:
				inText(block.Text)
			case *comment.Heading:
				inText(block.Text)
			case *comment.List:
				for _, item := range block.Items {
					inBlocks(item.Content)
				}
			}
		}
	}
	inBlocks(links.Parse(text).Content)
	return broken
}

func plain(parts []comment.Text) string {
	var b strings.Builder
	for _, part := range parts {
		switch part := part.(type) {
		case comment.Plain:
			b.WriteString(string(part))
		case comment.Italic:
			b.WriteString(string(part))
		}
	}
	return b.String()
}

var (
	brackets = regexp.MustCompile(`\[([^\[\]\s]+)\]`)
	// meant is what a writer can only have meant as a link: an exported name of
	// two letters or more, alone or behind a package, or a member of a type. [i],
	// [0,1] and [n-1] are not, nor is [T].
	meant = regexp.MustCompile(`^\*?([A-Z]\w+|[A-Za-z]\w*\.[A-Z]\w*|[A-Z]\w*\.[A-Za-z]\w*|[A-Za-z]\w*\.[A-Z]\w*\.[A-Za-z]\w*)$`)
)

// missed returns the texts in brackets that the parser left as they were though
// a link was meant.
func missed(text string, targets *targets) []string {
	var texts []string
	for _, m := range brackets.FindAllStringSubmatchIndex(text, -1) {
		name := text[m[2]:m[3]]
		before, _ := utf8.DecodeLastRuneInString(text[:m[0]])
		after, _ := utf8.DecodeRuneInString(text[m[1]:])
		if boundary(before) && boundary(after) && (meant.MatchString(name) || targets.names[name]) {
			texts = append(texts, name)
		}
	}
	return texts
}

// boundary reports whether a link may stand beside r; [utf8.RuneError] stands
// for the start or the end of the text.
func boundary(r rune) bool {
	return r == utf8.RuneError || unicode.IsPunct(r) || unicode.IsSpace(r)
}

// find returns the positions of text in the lines of a comment.
func find(fset *token.FileSet, group *ast.CommentGroup, text string) []token.Position {
	var found []token.Position
	for _, c := range group.List {
		pos := fset.Position(c.Pos())
		for i, line := range strings.Split(c.Text, "\n") {
			if strings.Contains(line, text) {
				at := pos
				at.Line += i
				found = append(found, at)
			}
		}
	}
	if found == nil { // the link runs over the end of a line
		found = append(found, fset.Position(group.Pos()))
	}
	return found
}

// targets are the packages that a link may lead to.
type targets struct {
	dir   string
	types map[string]*types.Package // nil for an import path that cannot be loaded
	names map[string]bool           // names of the module's own packages
}

func newTargets(dir string, pkgs []*packages.Package) *targets {
	t := &targets{dir: dir, types: make(map[string]*types.Package), names: make(map[string]bool)}
	t.add(pkgs)
	for _, p := range pkgs {
		if !module.IsTest(p) && p.Name != "main" {
			t.names[p.Name] = true
		}
	}
	return t
}

// add takes in pkgs and all that they import.
func (t *targets) add(pkgs []*packages.Package) {
	packages.Visit(pkgs, nil, func(p *packages.Package) {
		if !module.IsTest(p) {
			t.types[p.PkgPath] = p.Types
		}
	})
}

// has reports whether path can be imported and has the exported name, or the
// exported field or method name of recv. An empty name stands for the package.
func (t *targets) has(path, recv, name string) bool {
	if _, ok := t.types[path]; !ok {
		t.types[path] = nil
		if pkgs, err := module.Load(t.dir, false, path); err == nil {
			t.add(pkgs)
		}
	}
	pkg := t.types[path]
	switch {
	case pkg == nil:
		return false
	case name == "":
		return true
	case recv == "":
		return token.IsExported(name) && pkg.Scope().Lookup(name) != nil
	}
	base, ok := pkg.Scope().Lookup(recv).(*types.TypeName)
	if !ok || !token.IsExported(recv) || !token.IsExported(name) {
		return false
	}
	obj, _, _ := types.LookupFieldOrMethod(base.Type(), true, pkg, name)
	return obj != nil
}
