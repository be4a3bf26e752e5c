package main

import (
	"archive/zip"
	"encoding/xml"
	"errors"
	"io"
	"os"

	"example.org/sapreckoner/examples/internal/cli"
)

// write writes what -out asks for.
func (a *account) write(e *cli.Env) error {
	content, mark := a.statements, statementMark
	switch a.settings.ending() {
	case ".txt":
		a.listed = true
	case ".csv":
		content, mark = a.book, ledgerMark
	default:
		return a.workbook(e)
	}
	if err := a.run(); err != nil {
		return err
	}
	return e.Save("out", a.out, func(old io.ReaderAt, _ int64) bool {
		head := make([]byte, len(mark))
		n, _ := old.ReadAt(head, 0)
		return string(head[:n]) == mark
	}, content)
}

// workbook writes to standard output or to the file that -out names.
func (a *account) workbook(e *cli.Env) error {
	b, err := newBook(a)
	if err != nil {
		return err
	}
	defer b.Close()
	content := func(w io.Writer) error { return b.Write(w) }
	if a.out == "-" {
		return content(e.Out)
	}
	return e.Save("out", a.out, own, content)
}

// own tells a workbook of this program, which nobody changed, by its properties:
// a spreadsheet program that saves it puts down its own name and the time.
func own(old io.ReaderAt, size int64) bool {
	z, err := zip.NewReader(old, size)
	if err != nil {
		return false
	}
	f, err := z.Open("docProps/core.xml")
	if err != nil {
		return false
	}
	defer f.Close()
	var core struct {
		Title          string `xml:"title"`
		Creator        string `xml:"creator"`
		LastModifiedBy string `xml:"lastModifiedBy"`
		Created        string `xml:"created"`
		Modified       string `xml:"modified"`
	}
	const most = 1 << 16 // bytes: ours has fewer than a thousand
	if err := xml.NewDecoder(io.LimitReader(f, most)).Decode(&core); err != nil {
		return false
	}
	return core.Title == title && core.Creator == program && core.LastModifiedBy == program && core.Modified == core.Created
}

// refuseTerminal keeps a spreadsheet, which is not text, off a terminal.
func (s *settings) refuseTerminal(stdout *os.File) error {
	if s.out == "-" && s.pay.IsZero() && isTerminal(stdout) {
		return cli.For("out", errors.New("a spreadsheet is not text for a terminal: write -out payments.xlsx, or send it to a file with >"))
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
