package tapping

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"
)

// What may be wrong with a table. A [*RowError] unwraps to one of them, to
// units.ErrRange where a number is out of range, or to the reader's own error.
var (
	ErrSyntax    = errors.New("cannot be read")
	ErrColumns   = errors.New("wrong columns")
	ErrDuplicate = errors.New("given twice")
	ErrOrder     = errors.New("out of order")
	ErrTooLong   = errors.New("line longer than 64 KiB")
)

// RowError says which cell of a table could not be used, and why. Lines count
// from 1; Column is empty where the whole line is meant.
type RowError struct {
	Line   int
	Column string
	Hint   string
	Err    error
}

// Error tells line, column, reason and the way out.
func (e *RowError) Error() string {
	s := fmt.Sprintf("line %d", e.Line)
	if e.Column != "" {
		s += ", column " + e.Column
	}
	s += ": " + e.Err.Error()
	if e.Hint != "" {
		s += ": " + e.Hint
	}
	return s
}

// Unwrap returns the reason.
func (e *RowError) Unwrap() error { return e.Err }

// maxLine bounds one line of a table.
const maxLine = 64 << 10

// rows reads a table line by line, so that a file of any length needs the
// memory of one line. Cells are trimmed; lines that are empty or start with #
// are passed over; a byte order mark and CRLF do no harm. A quoted cell ends on
// its line.
type rows struct {
	r      *bufio.Reader
	line   int
	names  []string
	cells  [][]byte
	unread error
}

// newRows reads the header. Names are in lower case.
func newRows(r io.Reader) (*rows, error) {
	t := &rows{r: bufio.NewReaderSize(r, maxLine)}
	ok, err := t.next()
	if err != nil {
		return nil, err
	}
	if !ok {
		return nil, &RowError{Line: max(1, t.line), Hint: "the table is empty; its first line names the columns", Err: ErrColumns}
	}
	for _, c := range t.cells {
		name := strings.ToLower(string(c))
		for _, other := range t.names {
			if name == other && name != "" {
				return nil, &RowError{t.line, clip(name), "two columns of that name", ErrColumns}
			}
		}
		t.names = append(t.names, name)
	}
	return t, nil
}

// column returns the index of the one of the names that the header has, -1 for none.
func (t *rows) column(names ...string) (int, error) {
	found := -1
	for i, have := range t.names {
		for _, want := range names {
			if have != want {
				continue
			}
			if found >= 0 {
				return -1, t.fail(i, "give one of "+strings.Join(names, ", "), ErrColumns)
			}
			found = i
		}
	}
	return found, nil
}

// next reads the next row; false at the end.
func (t *rows) next() (bool, error) {
	for {
		if t.unread != nil {
			if errors.Is(t.unread, io.EOF) {
				return false, nil
			}
			return false, &RowError{Line: t.line + 1, Err: t.unread}
		}
		line, err := t.r.ReadSlice('\n')
		if errors.Is(err, bufio.ErrBufferFull) {
			return false, &RowError{Line: t.line + 1, Hint: "is this the right file?", Err: ErrTooLong}
		}
		t.unread = err
		if len(line) == 0 {
			continue
		}
		t.line++
		if t.line == 1 {
			line = bytes.TrimPrefix(line, []byte("\ufeff"))
		}
		line = bytes.TrimRight(line, "\r\n")
		if trimmed := bytes.TrimSpace(line); len(trimmed) == 0 || trimmed[0] == '#' {
			continue
		}
		if !utf8.Valid(line) {
			return false, &RowError{Line: t.line, Hint: "save the table as UTF-8 text", Err: ErrSyntax}
		}
		if err := t.split(line); err != nil {
			return false, err
		}
		if t.names != nil && len(t.cells) != len(t.names) {
			return false, &RowError{Line: t.line, Hint: fmt.Sprintf("%d cells under %d column names", len(t.cells), len(t.names)), Err: ErrSyntax}
		}
		return true, nil
	}
}

// split cuts a line into cells, in place.
func (t *rows) split(line []byte) error {
	t.cells = t.cells[:0]
	for {
		line = bytes.TrimLeft(line, " \t")
		if len(line) == 0 || line[0] != '"' {
			cell, rest, more := bytes.Cut(line, []byte(","))
			t.cells = append(t.cells, bytes.TrimSpace(cell))
			if !more {
				return nil
			}
			line = rest
			continue
		}
		cell, rest, ok := unquote(line[1:])
		rest = bytes.TrimLeft(rest, " \t")
		if !ok || len(rest) > 0 && rest[0] != ',' {
			return &RowError{Line: t.line, Hint: fmt.Sprintf("the quotes of cell %d do not match", len(t.cells)+1), Err: ErrSyntax}
		}
		t.cells = append(t.cells, bytes.TrimSpace(cell))
		if len(rest) == 0 {
			return nil
		}
		line = rest[1:]
	}
}

// unquote reads up to the closing quote; a doubled quote stands for one.
func unquote(b []byte) (cell, rest []byte, ok bool) {
	n := 0
	for i := 0; i < len(b); i++ {
		if b[i] == '"' {
			if i+1 == len(b) || b[i+1] != '"' {
				return b[:n], b[i+1:], true
			}
			i++
		}
		b[n] = b[i]
		n++
	}
	return nil, nil, false
}

// fail makes the error of cell i of the present line.
func (t *rows) fail(i int, hint string, err error) error {
	name := t.names[i]
	if name == "" {
		name = strconv.Itoa(i + 1)
	}
	return &RowError{t.line, clip(name), hint, err}
}

// number reads cell i as a plain decimal number.
func (t *rows) number(i int) (float64, error) {
	cell := t.cells[i]
	for _, c := range cell {
		if (c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E' {
			return 0, t.fail(i, "want a plain number, the unit stands in the header; have "+quote(cell), ErrSyntax)
		}
	}
	x, err := strconv.ParseFloat(string(cell), 64)
	if err != nil {
		return 0, t.fail(i, "want a number; have "+quote(cell), ErrSyntax)
	}
	return x, nil
}

// date reads cell i as a calendar date such as 2024-03-01.
func (t *rows) date(i int) (time.Time, error) {
	d, err := time.Parse(time.DateOnly, string(t.cells[i]))
	if err != nil {
		return time.Time{}, t.fail(i, "want a date such as 2024-03-01; have "+quote(t.cells[i]), ErrSyntax)
	}
	return d, nil
}

func quote(cell []byte) string { return strconv.Quote(clip(string(cell))) }

// clip bounds what a message repeats.
func clip(s string) string {
	const most = 48
	if len(s) > most {
		return strings.ToValidUTF8(s[:most], "") + "..."
	}
	return s
}
