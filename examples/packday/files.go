package main

import (
	"bytes"
	_ "embed"
	"fmt"
	"io"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// The invented kitchen.
var (
	//go:embed testdata/cans.csv
	demoCans []byte
	//go:embed testdata/containers.csv
	demoContainers []byte
	//go:embed testdata/helpers.csv
	demoHelpers []byte
)

// Limits on what is read.
const (
	mostCans    = 1000
	mostHelpers = 60
	mostKinds   = 32
	leastLabel  = 5 * units.Milliliter
	mostLabel   = 60 * units.Liter
)

// eachRow reads a file, or the demo if path is empty, and calls row for each
// record. It returns an error if there are no records or more than most.
func eachRow(e *cli.Env, flag, path string, demo []byte, most int, cols []records.Col, row func(*records.Reader) error) error {
	var in io.ReadCloser = io.NopCloser(bytes.NewReader(demo))
	if path != "" {
		var err error
		if in, err = e.Open(flag, path); err != nil {
			return err
		}
	}
	defer in.Close()
	r, err := records.New(path, in, cols...)
	if err != nil {
		return err
	}
	n := 0
	for ; ; n++ {
		err := r.Next()
		if err == io.EOF {
			break
		}
		if err == nil && n == most {
			err = r.Fail("", fmt.Errorf("more than %d rows: pack them on several days", most))
		}
		if err == nil {
			err = row(r)
		}
		if err != nil {
			return err
		}
	}
	if n == 0 {
		return fmt.Errorf("%s: nothing below the header", path)
	}
	return nil
}
