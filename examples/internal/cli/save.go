package cli

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// Save writes the file that a flag names, or leaves the old one as it was. It
// replaces only what this program made, which made tells by the old content,
// and never what the run reads. An old file keeps its permissions, a link stays a
// link, and what is no file of a disk, such as a pipe or a device, is written to
// and not replaced.
func (e *Env) Save(flagName, path string, made func(old io.ReaderAt, size int64) bool, content func(io.Writer) error) error {
	to, mode, err := e.target(path, made)
	switch {
	case err != nil:
	case mode.IsRegular():
		err = replace(to, mode, content, nil)
	default:
		err = through(to, content)
	}
	var own *contentError
	if errors.As(err, &own) {
		return own.err
	}
	if err != nil {
		return For(flagName, fmt.Errorf("%s: %w", path, cause(err)))
	}
	return nil
}

// Draw writes a drawing to the file that a flag names, or prints it if that is -.
// Its first line is the mark of the program, by which Save knows it again.
func (e *Env) Draw(flagName, path string, svg []byte) error {
	mark := []byte("<!-- Drawn by " + e.program + ", which may replace this file. -->\n")
	write := func(w io.Writer) error {
		_, err := w.Write(append(slices.Clip(mark), svg...))
		return err
	}
	if path == "-" {
		return write(e.Out)
	}
	return e.Save(flagName, path, func(old io.ReaderAt, _ int64) bool {
		head := make([]byte, len(mark))
		n, _ := old.ReadAt(head, 0)
		return bytes.Equal(head[:n], mark)
	}, write)
}

// target finds the file that is to be written behind a path, and its mode: of a
// new one 0.
func (e *Env) target(path string, made func(io.ReaderAt, int64) bool) (to string, mode fs.FileMode, err error) {
	info, err := os.Stat(path)
	switch {
	case err == nil && info.IsDir():
		return "", 0, errors.New("is a directory")
	case err == nil && !info.Mode().IsRegular():
		return path, info.Mode(), nil
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return "", 0, err
	}
	if to, err = follow(path); err != nil || info == nil {
		return to, 0, err
	}
	if slices.ContainsFunc(e.inputs, func(in fs.FileInfo) bool { return os.SameFile(in, info) }) {
		return "", 0, errors.New("it is what this run reads, and would be lost: name another file")
	}
	if info.Mode()&0o222 == 0 {
		return "", 0, errors.New("it is protected from writing: name another file")
	}
	old, err := os.Open(to)
	if err != nil {
		return "", 0, err
	}
	defer old.Close()
	if !made(old, info.Size()) {
		return "", 0, fmt.Errorf("it is there already and %s did not make it, or it was changed since: name another file, or delete that one if nobody needs it", e.program)
	}
	return to, info.Mode().Perm(), nil
}

// Reads tells that the run reads a file, so that it is not replaced.
func (e *Env) Reads(f fs.File) {
	if info, err := f.Stat(); err == nil {
		e.inputs = append(e.inputs, info)
	}
}

// follow follows the links at the end of a path, also to what is not there yet.
func follow(path string) (string, error) {
	const most = 40 // as many as Linux follows
	for range most {
		folder, err := filepath.EvalSymlinks(filepath.Dir(path))
		if err != nil {
			return "", err
		}
		path = filepath.Join(folder, filepath.Base(path))
		info, err := os.Lstat(path)
		if errors.Is(err, fs.ErrNotExist) {
			return path, nil
		}
		if err != nil || info.Mode()&fs.ModeSymlink == 0 {
			return path, err
		}
		next, err := os.Readlink(path)
		if err != nil {
			return "", err
		}
		if !filepath.IsAbs(next) {
			// Not joined, which would shorten x/.. although x may be a link.
			next = folder + string(filepath.Separator) + next
		}
		path = next
	}
	return "", errors.New("too many links")
}

// through writes to a pipe or a device.
func through(path string, content func(io.Writer) error) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return fill(f, content)
}

// A contentError is why there is no content: not the fault of the file.
type contentError struct{ err error }

func (e *contentError) Error() string { return e.err.Error() }

// fill writes the content and closes the file.
func fill(f *os.File, content func(io.Writer) error) error {
	w := bufio.NewWriter(f)
	err := content(w)
	if flush := w.Flush(); flush != nil {
		err = flush // whatever the content made of it
	} else if err != nil {
		err = &contentError{err}
	}
	if info, statErr := f.Stat(); err == nil && statErr == nil && info.Mode().IsRegular() {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

// cause is an error without the name of a file that the user does not know.
func cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	var l *os.LinkError
	if errors.As(err, &l) {
		return l.Err
	}
	return err
}
