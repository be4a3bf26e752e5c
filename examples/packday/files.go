package main

import (
	"errors"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Limits on what is read.
const (
	mostCans    = 1000
	mostHelpers = 60
	mostKinds   = 32
	leastLabel  = 5 * units.Milliliter
	mostLabel   = 60 * units.Liter
)

// eachRow reads a file of the folder and calls row for each record, most at the
// most. It reports whether there are any.
func eachRow(h *folder.House, name string, most int, cols []records.Col, row func(*records.Reader) error) (there bool, err error) {
	in, there := h.File(name)
	if !there {
		return false, nil
	}
	defer in.Close()
	r, err := records.New(h.Shown(name), in, cols...)
	if err != nil {
		return true, err
	}
	if err = cli.Rows(r, most, ": pack them on several days", func() error { return row(r) }); errors.Is(err, cli.ErrNoRows) {
		return false, nil
	}
	return true, err
}

// inFile names the file of the folder that an error of the library comes from.
func (d *day) inFile(name string, err error) error {
	if err == nil {
		return nil
	}
	return &records.Error{File: d.flags.House().Shown(name), Err: err}
}
