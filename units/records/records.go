// Package records reads CSV files whose header names the unit of each column,
// such as volume_us_gal, and whose cells are plain numbers.
//
// A file streams: memory is bounded by the longest record, and that is capped.
// What is wrong is told with file, line and column, and what to write instead.
// A byte-order mark, CRLF line ends and lines that begin with # are accepted, and
// semicolons or tabs instead of commas: numbers may then have decimal commas.
package records

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// Limits on a hostile file.
const (
	MaxRecord  = 64 << 10 // bytes of one record, or of one line that begins with #
	MaxRemarks = 16 << 20 // bytes of lines that begin with #, between two records
	MaxColumns = 256
)

// Error says what is wrong at which place of a file.
type Error struct {
	File   string
	Line   int    // 1 is the first; 0 if the file as a whole is meant
	Column string // name of the column; empty if the whole line is meant
	Err    error
}

// Error prints file, line, column and reason on one line.
func (e *Error) Error() string { return e.say(func(err error) string { return err.Error() }) }

// Text prints the same for a person, in the given units.
func (e *Error) Text(in units.System) string {
	return e.say(func(err error) string { return units.Reason(err, in) })
}

func (e *Error) say(reason func(error) string) string {
	var b strings.Builder
	b.WriteString(e.File)
	if e.Line > 0 {
		fmt.Fprintf(&b, ":%d", e.Line)
	}
	if e.Column != "" {
		fmt.Fprintf(&b, ": column %s", e.Column)
	}
	b.WriteString(": ")
	if e.Err != nil {
		b.WriteString(reason(e.Err))
	}
	return b.String()
}

// Unwrap returns the reason.
func (e *Error) Unwrap() error { return e.Err }

// A Reader reads one file.
type Reader struct {
	file   string
	src    *capped
	csv    *csv.Reader
	header []string
	fields []field
	row    []string
	line   int
	short  bool // see [Reader.AllowShort]
	broken bool // the CSV itself is broken or over a limit: nothing follows
}

// New reads the header of r and finds the columns in it. The file name serves
// the messages.
//
// Columns of the header that no field asks for are ignored, so that a person
// may keep notes beside the numbers.
func New(file string, r io.Reader, cols ...Col) (*Reader, error) {
	rd, err := Open(file, r)
	if err == io.EOF {
		return nil, &Error{File: file, Err: errors.New("the file is empty: the first line names the columns, such as " + example(cols))}
	}
	if err != nil {
		return nil, err
	}
	if err := rd.Bind(cols...); err != nil {
		return nil, err
	}
	return rd, nil
}

// Open reads the header of r alone, for a file that may come with different
// columns: see [Reader.Names] and [Reader.Bind]. Of an empty file it returns
// [io.EOF].
func Open(file string, r io.Reader) (*Reader, error) {
	br := bufio.NewReaderSize(r, 4096)
	if bom, err := br.Peek(3); err == nil && bytes.Equal(bom, []byte("\xef\xbb\xbf")) {
		if _, err := br.Discard(3); err != nil {
			return nil, &Error{File: file, Err: err}
		}
	}
	src := &capped{r: br}
	c := csv.NewReader(src)
	c.Comma = separator(br)
	c.Comment = '#'
	c.ReuseRecord = true
	c.FieldsPerRecord = -1               // counted here, with a message of our own
	c.TrimLeadingSpace = c.Comma != '\t' // or empty cells between tabs would go
	rd := &Reader{file: file, src: src, csv: c}
	head, err := rd.record()
	if err != nil {
		return nil, err
	}
	if len(head) > MaxColumns {
		return nil, rd.fail("", fmt.Errorf("%d columns, more than %d", len(head), MaxColumns))
	}
	rd.row = head
	for _, h := range head {
		rd.header = append(rd.header, strings.ToLower(strings.TrimSpace(h)))
	}
	return rd, nil
}

// Next reads the next record. At the end of the file it returns [io.EOF]. After
// an error of one row, reading may go on: see [Reader.Broken].
func (r *Reader) Next() error {
	row, err := r.record()
	if err != nil {
		return err
	}
	for r.short && len(row) < len(r.header) {
		row = append(row, "")
	}
	r.row = row
	if len(row) != len(r.header) {
		return r.fail("", fmt.Errorf("%d cells where the header names %d columns", len(row), len(r.header)))
	}
	for i := range r.fields {
		f := &r.fields[i]
		if f.at < 0 {
			f.clear() // in each row: the caller may have put a value of its own
			continue
		}
		cell := strings.TrimSpace(row[f.at])
		if cell == "" && f.blank {
			f.clear()
			continue
		}
		if f.number && r.csv.Comma != ',' {
			if r.csv.Comma == '\t' && thousand(cell) {
				return r.fail(r.header[f.at], fmt.Errorf("%s may be %s or %s: write which, without a comma", cell, strings.Replace(cell, ",", "", 1), pointed(cell)))
			}
			cell = pointed(cell)
		}
		if err := f.set(cell); err != nil {
			return r.fail(r.header[f.at], err)
		}
	}
	return nil
}

// AllowShort takes rows with fewer cells than the header has columns: the last cells
// of such a row are empty. Rows with more cells stay refused.
func (r *Reader) AllowShort() { r.short = true }

// Broken reports whether the last error ended the file: the CSV cannot be read
// on, or a limit was passed.
func (r *Reader) Broken() bool { return r.broken }

// Has reports whether the header has a column that was asked for.
func (r *Reader) Has(column string) bool {
	for _, f := range r.fields {
		if f.name == column {
			return f.at >= 0
		}
	}
	return false
}

// Line returns the line of the record read last.
func (r *Reader) Line() int { return r.line }

// Fail returns an error at the record read last, for rules that the caller
// checks. The column is the name as the caller gave it in a Col, or empty.
func (r *Reader) Fail(column string, err error) error {
	for _, f := range r.fields {
		if f.name == column && f.at >= 0 {
			column = r.header[f.at]
		}
	}
	return r.fail(column, err)
}

func (r *Reader) fail(column string, err error) error {
	return &Error{File: r.file, Line: r.line, Column: column, Err: err}
}

// record reads one record within the limits.
func (r *Reader) record() ([]string, error) {
	r.src.next()
	row, err := r.csv.Read()
	if len(row) > 0 { // also of a record that broke off
		r.line, _ = r.csv.FieldPos(0)
	}
	if err != nil {
		return nil, r.ends(err)
	}
	for i, cell := range row {
		if !isText(cell) {
			column := ""
			if i < len(r.header) {
				column = clip.Text(r.header[i])
			}
			return nil, r.fail(column, errors.New("not text in UTF-8: save the file as CSV in UTF-8"))
		}
	}
	return row, nil
}

// ends returns the error that ends the file.
func (r *Reader) ends(err error) error {
	var pe *csv.ParseError
	switch {
	case err == io.EOF:
		return io.EOF
	case errors.Is(err, errTooLong), errors.Is(err, errRemarks):
		r.broken = true
		return r.fail("", err)
	case errors.As(err, &pe):
		r.broken = true
		r.line = pe.StartLine
		return r.fail("", fmt.Errorf("%w: look for a quote that is not closed", pe.Err))
	}
	r.broken = true
	var path *fs.PathError
	if errors.As(err, &path) {
		err = path.Err // the file is named already
	}
	return &Error{File: r.file, Err: err}
}
