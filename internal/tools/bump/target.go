package main

import (
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/tools/go/packages"

	"example.org/sapreckoner/internal/tools/module"
)

// A target is a package whose literals are changed.
type target struct {
	pkg       *packages.Package
	rel       string // its folder below the root of the module
	dir       string
	importers []*target // the module's packages that import it directly
	above     map[string]bool
	sources   map[string][]byte
}

// source returns a file as it was when it was first asked for, so that offsets
// hold even if someone edits it meanwhile.
func (t *target) source(name string) ([]byte, error) {
	if src, ok := t.sources[name]; ok {
		return src, nil
	}
	src, err := os.ReadFile(name)
	t.sources[name] = src
	return src, err
}

// load finds the packages that the patterns name, the lowest first.
func load(root string, patterns []string) ([]*target, error) {
	pkgs, err := module.Load(root, false, "./...")
	if err != nil {
		return nil, err
	}
	all := map[string]*target{}
	for _, p := range pkgs {
		if p.Module == nil || len(p.GoFiles) == 0 {
			continue
		}
		dir := filepath.Dir(p.GoFiles[0])
		all[p.PkgPath] = &target{pkg: p, rel: filepath.ToSlash(module.Rel(root, dir)), dir: dir, above: map[string]bool{}, sources: map[string][]byte{}}
	}
	wanted, err := choose(root, pkgs, patterns)
	if err != nil {
		return nil, err
	}
	for path, t := range all {
		for below := range reach(t.pkg) {
			if u := all[below]; u != nil && u != t {
				u.above[path] = true
			}
		}
		for imported := range t.pkg.Imports {
			if u := all[imported]; u != nil && t.pkg.Name != "main" && (wanted[path] || module.IsLibrary(t.pkg)) {
				u.importers = append(u.importers, t)
			}
		}
	}
	var targets []*target
	for path, t := range all {
		slices.SortFunc(t.importers, lowestFirst)
		if wanted[path] {
			targets = append(targets, t)
		}
	}
	if len(targets) == 0 {
		return nil, errors.New("no package to change")
	}
	slices.SortFunc(targets, lowestFirst)
	return targets, nil
}

// lowestFirst puts what more packages are built on first.
func lowestFirst(a, b *target) int {
	if d := len(b.above) - len(a.above); d != 0 {
		return d
	}
	return strings.Compare(a.rel, b.rel)
}

// choose returns the import paths of the packages that the patterns name, or of
// the library packages and all that they import of the module.
func choose(root string, pkgs []*packages.Package, patterns []string) (map[string]bool, error) {
	wanted := map[string]bool{}
	if len(patterns) > 0 {
		named, err := packages.Load(&packages.Config{Mode: packages.NeedName, Dir: root}, patterns...)
		if err != nil {
			return nil, err
		}
		for _, p := range named {
			if len(p.Errors) > 0 {
				return nil, fmt.Errorf("%s: %w", p.PkgPath, p.Errors[0])
			}
			wanted[p.PkgPath] = true
		}
		return wanted, nil
	}
	for _, p := range pkgs {
		if module.IsLibrary(p) {
			for path, below := range reach(p) {
				wanted[path] = wanted[path] || below.Module != nil && below.Module.Main
			}
		}
	}
	return wanted, nil
}

// reach returns p and all that it imports, directly or not.
func reach(p *packages.Package) map[string]*packages.Package {
	seen := map[string]*packages.Package{}
	var visit func(*packages.Package)
	visit = func(p *packages.Package) {
		if seen[p.PkgPath] == nil {
			seen[p.PkgPath] = p
			for _, q := range p.Imports {
				visit(q)
			}
		}
	}
	visit(p)
	return seen
}

// testsOf returns a regular expression for the names of the tests in the test
// file beside the given one, empty if there are none.
func (t *target) testsOf(file string) string {
	name := filepath.Join(t.dir, strings.TrimSuffix(filepath.Base(file), ".go")+"_test.go")
	f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.SkipObjectResolution)
	if err != nil {
		return "" // most often: no such file
	}
	var names []string
	for _, d := range f.Decls {
		if fn, ok := d.(*ast.FuncDecl); ok && fn.Recv == nil && strings.HasPrefix(fn.Name.Name, "Test") {
			names = append(names, fn.Name.Name)
		}
	}
	if names == nil {
		return ""
	}
	return "^(" + strings.Join(names, "|") + ")$"
}

// testFiles lists the test files of the package, and those among them that
// import a package built on it.
func (t *target) testFiles() (all, far []string, err error) {
	all, err = filepath.Glob(filepath.Join(t.dir, "*_test.go"))
	if err != nil {
		return nil, nil, err
	}
	for _, name := range all {
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			return nil, nil, err
		}
		for _, spec := range f.Imports {
			path, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return nil, nil, err
			}
			if t.above[path] {
				far = append(far, name)
				break
			}
		}
	}
	return all, far, nil
}
