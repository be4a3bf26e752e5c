// Apitext prints the exported API of a module's library packages as sorted
// lines of text, one for each name:
//
//	package kind name-and-type
//
// Programs, test packages and whatever lies below internal or examples are left
// out. The values of constants are left out too: the checks against published
// tables guard those. Parameter names are part of a line, because readers see
// them in the documentation.
//
// From the root of the module:
//
//	go -C internal/tools run ./apitext -dir ../.. > internal/proving/api/api.txt
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/sapreckoner/internal/tools/module"
)

func main() {
	if err := run(os.Args[1:], os.Stdout, os.Stderr); err != nil {
		if !errors.Is(err, flag.ErrHelp) {
			fmt.Fprintln(os.Stderr, "apitext:", err)
		}
		os.Exit(2)
	}
}

func run(args []string, stdout, stderr io.Writer) error {
	flags := flag.NewFlagSet("apitext", flag.ContinueOnError)
	flags.SetOutput(stderr)
	dir := flags.String("dir", ".", "root `folder` of the module")
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: apitext [-dir folder] [package pattern ...]\nPrints the exported API of the library packages, ./... if none are named.")
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		return err
	}
	patterns := flags.Args()
	if len(patterns) == 0 {
		patterns = []string{"./..."}
	}
	pkgs, err := module.Load(*dir, false, patterns...)
	if err != nil {
		return err
	}
	var lines []string
	for _, p := range pkgs {
		if module.IsLibrary(p) {
			lines = append(lines, packageLines(module.Short(p), p.Types)...)
		}
	}
	if len(lines) == 0 {
		return nil
	}
	_, err = io.WriteString(stdout, strings.Join(lines, "\n")+"\n")
	return err
}
