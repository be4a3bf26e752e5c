package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
)

// begin makes a new folder, with the settings that -set told, or what is missing in one
// whose settings are there. What is there stays as it is.
func begin(e *cli.Env, f *cli.Flags, dir string) error {
	said, err := folder.Open(nil, "", 0, f.Overrules()...)
	if err != nil {
		return err
	}
	if info, err := os.Stat(filepath.Join(dir, folder.SettingsFile)); err == nil && info.Mode().IsRegular() {
		own, err := folder.OpenFor([]string{}, os.DirFS(dir), dir, 0)
		if err != nil {
			return err
		}
		if own.Settings.Gallon != 0 || own.Settings.Metric {
			said = own
		}
	}
	files, err := folder.Begin(&said.Settings)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o777); err != nil {
		var pe *fs.PathError
		if errors.As(err, &pe) {
			err = fmt.Errorf("%s: %w", pe.Path, pe.Err)
		}
		return err
	}
	page := cli.NewPage(e.Out)
	page.Text("A folder for your sugarhouse.")
	page.Line("")
	for _, file := range files {
		path := filepath.Join(dir, file.Name)
		if _, err := os.Lstat(path); err == nil {
			page.Line("there already, and left as it is: " + path)
			continue
		}
		err := e.Save("new", path, func(io.ReaderAt, int64) bool { return false }, func(w io.Writer) error {
			_, err := io.WriteString(w, file.Text)
			return err
		})
		var fe *cli.FlagError
		if errors.As(err, &fe) {
			return fe.Err // new is no flag
		}
		if err != nil {
			return err
		}
		page.Line("begun: " + path)
	}
	page.Line("")
	page.Text("Write into " + folder.SettingsFile + " what you know of your pan, taps and tanks, and into " + folder.DaysFile +
		" a row a day. Then check it: folder check -dir " + cli.Quote(dir) + ". The other programs take the same -dir, or stand in the folder without it.")
	return nil
}
