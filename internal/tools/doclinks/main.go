// Doclinks checks what the go command does not: the documentation of a module.
// It prints a line for each of these and exits with status 1 if there is any:
//
//   - a doc link in a doc comment that leads nowhere. The go command prints it
//     as plain text in brackets and says nothing;
//   - a package or an exported name without a doc comment, programs' names left
//     out;
//   - an exported function, type or method of a library package that no runnable
//     example of that package shows (see [unshown] for what counts).
//
// From the root of the module:
//
//	go -C internal/tools run ./doclinks -dir ../..
package main

import (
	"cmp"
	"errors"
	"flag"
	"fmt"
	"go/token"
	"io"
	"os"
	"slices"

	"golang.org/x/tools/go/packages"

	"example.org/sapreckoner/internal/tools/module"
)

func main() {
	found, err := run(os.Args[1:], os.Stdout, os.Stderr)
	switch {
	case err != nil:
		if !errors.Is(err, flag.ErrHelp) {
			fmt.Fprintln(os.Stderr, "doclinks:", err)
		}
		os.Exit(2)
	case found > 0:
		fmt.Fprintf(os.Stderr, "doclinks: %d to mend\n", found)
		os.Exit(1)
	}
}

// problem is one line of the report.
type problem struct {
	pos  token.Position
	text string
}

// run returns the number of lines that it wrote to stdout.
func run(args []string, stdout, stderr io.Writer) (int, error) {
	flags := flag.NewFlagSet("doclinks", flag.ContinueOnError)
	flags.SetOutput(stderr)
	dir := flags.String("dir", ".", "root `folder` of the module")
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: doclinks [-dir folder]\nChecks doc links, doc comments and examples of the module.")
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		return 0, err
	}
	if flags.NArg() > 0 {
		return 0, fmt.Errorf("unexpected argument %q", flags.Arg(0))
	}
	pkgs, err := module.Load(*dir, true, "./...")
	if err != nil {
		return 0, err
	}
	problems, err := check(*dir, pkgs)
	if err != nil {
		return 0, err
	}
	for i := range problems {
		problems[i].pos.Filename = module.Rel(*dir, problems[i].pos.Filename)
	}
	slices.SortFunc(problems, func(a, b problem) int {
		return cmp.Or(cmp.Compare(a.pos.Filename, b.pos.Filename), cmp.Compare(a.pos.Line, b.pos.Line), cmp.Compare(a.text, b.text))
	})
	problems = slices.Compact(problems)
	for _, p := range problems {
		fmt.Fprintf(stdout, "%s:%d: %s\n", p.pos.Filename, p.pos.Line, p.text)
	}
	return len(problems), nil
}

// check returns everything to mend in pkgs, in no order.
func check(dir string, pkgs []*packages.Package) ([]problem, error) {
	var problems []problem
	targets := newTargets(dir, pkgs)
	for _, p := range pkgs {
		if module.IsTest(p) || len(p.Syntax) == 0 {
			continue
		}
		broken, err := brokenLinks(p, targets)
		if err != nil {
			return nil, err
		}
		problems = append(problems, broken...)
		problems = append(problems, undocumented(p)...)
		if module.IsLibrary(p) {
			problems = append(problems, unshown(p, pkgs)...)
		}
	}
	return problems, nil
}
