package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
)

// refuseOutput keeps a spreadsheet, which is not text, off a terminal.
func (s *settings) refuseOutput(stdout *os.File) error {
	if s.out == "-" && isTerminal(stdout) {
		return flagError("out", errors.New("a spreadsheet is not text for a terminal: write -out payments.xlsx, or send it to a file with >"))
	}
	return nil
}

// isTerminal reports whether f is a character device other than the null device.
func isTerminal(f *os.File) bool {
	info, err := f.Stat()
	if err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return false
	}
	null, err := os.Stat(os.DevNull)
	return err != nil || !os.SameFile(info, null)
}

// write writes to standard output or to the file that -out names. That file is
// whole or as it was: what is written goes into a file beside it, which takes its
// name in the end.
func (s *settings) write(stdout io.Writer, content func(io.Writer) error) error {
	if s.out == "-" {
		return content(stdout)
	}
	if info, err := os.Stat(s.out); err == nil && !info.Mode().IsRegular() {
		return flagError("out", fmt.Errorf("%s is not a file that can be replaced", s.out))
	}
	part := fmt.Sprintf("%s.%d.part", s.out, os.Getpid())
	f, err := os.OpenFile(part, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return flagError("out", fmt.Errorf("%s: %w", s.out, reason(err)))
	}
	err = fill(f, content)
	if err == nil {
		err = asMachine(os.Rename(part, s.out))
	}
	if err != nil {
		_ = os.Remove(part)
	}
	return err
}

// fill writes the content and closes the file.
func fill(f *os.File, content func(io.Writer) error) error {
	w := bufio.NewWriter(f)
	err := content(w)
	if err == nil {
		err = asMachine(w.Flush())
	}
	return errors.Join(err, asMachine(f.Close()))
}

// reason is what the system said, without the name of the file.
func reason(err error) error {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err
	}
	return err
}
