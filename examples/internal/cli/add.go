package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/folder"
)

const writeFlag = "write"

// Before is what the name of a file has behind it that is the copy of it as it was
// before the first lines of the day were added.
const Before = ".before"

// Adds declares -write, by which the program adds to the folder what [Sheet.Add] is
// given: what tells it in a few words, such as "the day and what stands in the pan".
func (f *Flags) Adds(what string) {
	f.Bool(&f.write, writeFlag, "adds "+what+" to your folder; -full shows the lines first. The file as it was before the first lines of a day is kept under its name with "+Before+" behind")
}

// Writes reports whether -write is given.
func (f *Flags) Writes() bool { return f.write }

// Add shows the lines that rows of the program make at the ends of files of the
// folder, and how to add them: a sentence on the brief and a part of the full page.
// With -write it adds them. Without a folder of the user's own it does nothing.
//
// Each file is written whole or left as it was, and refused if it changed since the
// run read it. Rows that stand there already are not added twice.
func (s *Sheet) Add(e *Env, rows ...folder.Rows) error {
	some := slices.ContainsFunc(rows, func(r folder.Rows) bool { return len(r.Rows) > 0 })
	return s.add(e, some, func(h *folder.House) ([]folder.Addition, error) { return h.Append(rows...) })
}

// Set is Add of lines of the settings: one that is there gives way.
func (s *Sheet) Set(e *Env, lines ...folder.Line) error {
	return s.add(e, len(lines) > 0, func(h *folder.House) ([]folder.Addition, error) {
		a, err := h.Set(lines...)
		return []folder.Addition{a}, err
	})
}

// add shows and adds what is planned, if there is something.
func (s *Sheet) add(e *Env, some bool, plan func(*folder.House) ([]folder.Addition, error)) error {
	f := e.flags
	switch {
	case !some:
		if f.write {
			return For(writeFlag, errors.New("there is nothing to add"))
		}
		return nil
	case f.dir == "" && f.write:
		return For(writeFlag, errors.New("give the folder of your sugarhouse by -dir: the invented one takes no lines"))
	case f.dir == "":
		return nil
	}
	adds, err := plan(f.house)
	part := s.Part("lines", "Lines for the folder")
	if err != nil && !f.write {
		part.Remark("Nothing can be added yet.")
		for _, err := range each(err) {
			part.Item(Line(err))
		}
		return nil
	}
	if err != nil {
		return err
	}
	if f.write {
		if err := e.append(adds); err != nil {
			return err
		}
	}
	s.Brief.Further = append(s.Brief.Further, addedWords(adds, f.write))
	part.Remark(addedWords(adds, f.write))
	for _, a := range adds {
		for _, line := range a.Lines {
			part.Item(a.File + ": " + line)
		}
		for _, line := range a.Instead {
			part.Item(a.File + ", no longer: " + line)
		}
	}
	return nil
}

// addedWords tell what is added, or what would be.
func addedWords(adds []folder.Addition, written bool) string {
	var to []string
	there := 0
	for _, a := range adds {
		there += a.There
		instead := ""
		switch n := len(a.Instead); {
		case n > 0 && n == len(a.Lines):
			instead = " in place of what stands there"
		case n > 0:
			instead = fmt.Sprintf(", %d in place of what stands there", n)
		}
		switch n := len(a.Lines); {
		case n == 1:
			to = append(to, "1 line to "+a.File+instead)
		case n > 1:
			to = append(to, fmt.Sprintf("%d lines to %s%s", n, a.File, instead))
		}
	}
	words := "-write adds " + strings.Join(to, " and ") + "; -full shows them."
	switch {
	case len(to) == 0 && adds[0].File == folder.SettingsFile:
		return "The settings say so already."
	case len(to) == 0:
		return "The folder has these lines already: a note tells a second one apart."
	case written:
		words = "Added " + strings.Join(to, " and ") + "."
	}
	if there > 0 {
		words += fmt.Sprintf(" %d more: there already.", there)
	}
	return words
}

// append writes the files of the folder.
func (e *Env) append(adds []folder.Addition) error {
	var done []string
	for _, a := range adds {
		if len(a.Lines) == 0 {
			continue
		}
		path := filepath.Join(e.flags.dir, a.File)
		if err := e.extend(path, a); err != nil {
			if len(done) > 0 {
				err = fmt.Errorf("%w; %s took its lines already, and takes none twice", err, strings.Join(done, " and "))
			}
			return For(writeFlag, fmt.Errorf("%s: %w", path, err))
		}
		done = append(done, a.File)
	}
	return nil
}

var errChanged = errors.New("it changed while this ran: run it again")

// extend writes one file, and before it the copy.
func (e *Env) extend(path string, a folder.Addition) error {
	to, err := follow(path)
	if err != nil {
		return cause(err)
	}
	info, err := os.Stat(to)
	var mode fs.FileMode // of a new file
	_, read := e.read[path]
	switch {
	case a.Old == nil && !read && errors.Is(err, fs.ErrNotExist):
	case errors.Is(err, fs.ErrNotExist):
		return errChanged
	case err != nil:
		return cause(err)
	case a.Old == nil || !e.unchanged(path, info):
		return errChanged
	case info.Mode()&0o222 == 0:
		return errors.New("it is protected from writing")
	default:
		mode = info.Mode().Perm()
		if err := keep(path+Before, mode, a.Old); err != nil {
			return fmt.Errorf("its copy: %w", err)
		}
	}
	// As late as can be: somebody may save it meanwhile.
	return reason(replace(to, mode, writing(a.New), func() error {
		now, err := os.ReadFile(to)
		if a.Old == nil && errors.Is(err, fs.ErrNotExist) || a.Old != nil && err == nil && bytes.Equal(now, a.Old) {
			return nil
		}
		return errChanged
	}))
}

// writing is a content that is there.
func writing(content []byte) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := w.Write(content)
		return err
	}
}

// reason is why a file could not be written.
func reason(err error) error {
	var own *contentError
	if errors.As(err, &own) {
		return own.err
	}
	if err == nil {
		return nil
	}
	return cause(err)
}

// unchanged reports whether a file of the folder is what the run read first.
func (e *Env) unchanged(path string, info fs.FileInfo) bool {
	read, ok := e.read[path]
	return ok && os.SameFile(read, info) && read.Size() == info.Size() && read.ModTime().Equal(info.ModTime())
}

// keep keeps a file as it was, unless that of today is kept already.
func keep(path string, mode fs.FileMode, old []byte) error {
	to, err := follow(path)
	if err != nil {
		return cause(err)
	}
	info, err := os.Stat(to)
	if err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("%s is not a plain file", path)
	}
	if err == nil && !info.ModTime().Before(midnight(time.Now())) {
		return nil
	}
	return reason(replace(to, mode, writing(old), nil))
}

// midnight is when the day began.
func midnight(t time.Time) time.Time {
	return time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, t.Location())
}
