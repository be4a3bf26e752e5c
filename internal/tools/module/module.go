// Package module loads the packages of one Go module for the tools beside it
// and says which of them are the library.
package module

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"golang.org/x/tools/go/packages"
)

// Load loads the packages of the module whose root is dir, typed from source,
// with their test packages if tests is set. A package that does not compile is
// an error.
func Load(dir string, tests bool, patterns ...string) ([]*packages.Package, error) {
	cfg := &packages.Config{
		Mode: packages.NeedName | packages.NeedFiles | packages.NeedCompiledGoFiles | packages.NeedImports |
			packages.NeedDeps | packages.NeedTypes | packages.NeedSyntax | packages.NeedTypesInfo |
			packages.NeedModule | packages.NeedForTest,
		Dir:   dir,
		Tests: tests,
	}
	pkgs, err := packages.Load(cfg, patterns...)
	if err != nil {
		return nil, err
	}
	var errs []error
	for _, p := range pkgs {
		for _, e := range p.Errors {
			errs = append(errs, fmt.Errorf("%s: %w", p.PkgPath, e))
		}
	}
	slices.SortFunc(pkgs, func(a, b *packages.Package) int { return strings.Compare(a.ID, b.ID) })
	return pkgs, errors.Join(errs...)
}

// IsLibrary reports whether p is a package that others may import: no program,
// nothing below internal or examples, and no test package.
func IsLibrary(p *packages.Package) bool {
	elems := strings.Split(p.PkgPath, "/")
	return p.Name != "main" && !IsTest(p) &&
		!slices.Contains(elems, "internal") && !slices.Contains(elems, "examples")
}

// IsTest reports whether p holds test files: the package recompiled with its
// test files, its external test package, or the generated test program.
func IsTest(p *packages.Package) bool {
	return p.ForTest != "" || strings.HasSuffix(p.PkgPath, ".test") || strings.HasSuffix(p.PkgPath, "_test")
}

// Short returns the import path of p without that of its module, or the
// package's name at the module's root.
func Short(p *packages.Package) string {
	if p.Module != nil {
		if rel, ok := strings.CutPrefix(p.PkgPath, p.Module.Path+"/"); ok {
			return rel
		}
	}
	return p.Name
}

// Rel returns name relative to dir if that is shorter to read.
func Rel(dir, name string) string {
	abs, err := filepath.Abs(dir)
	if err != nil {
		return name
	}
	rel, err := filepath.Rel(abs, name)
	if err != nil || strings.HasPrefix(rel, "..") {
		return name
	}
	return rel
}
