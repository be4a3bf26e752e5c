package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units/records"
)

// trees tells what the program stand would refuse of the words of trees.csv, which no
// other program reads.
func trees(f *cli.Flags) error {
	const most = 20 // mistakes that are told at once
	h := f.House()
	in, ok := h.File(folder.TreesFile)
	if !ok {
		return nil
	}
	defer in.Close()
	var species, vigor string
	r, err := records.New(h.Shown(folder.TreesFile), in, records.Text("species", &species).Optional(), records.Text("vigor", &vigor).Optional())
	if err != nil {
		return err
	}
	for _, name := range []string{"species", "vigor"} {
		if !r.Has(name) {
			return r.Fail("", fmt.Errorf("no column %s: add it, its cells may be empty", name))
		}
	}
	var all []error
	for len(all) < most {
		switch err := r.Next(); {
		case err == io.EOF:
			return errors.Join(all...)
		case err != nil:
			return errors.Join(append(all, err)...)
		}
		var kind tapping.Species
		if err := kind.UnmarshalText([]byte(strings.TrimSpace(strings.TrimSuffix(species, "?")))); err != nil {
			all = append(all, r.Fail("species", err))
		}
		var health tapping.Vigor
		if err := health.UnmarshalText([]byte(vigor)); err != nil {
			all = append(all, r.Fail("vigor", err))
		}
	}
	return errors.Join(all...)
}
