package folder

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/units/records"
)

// A tolerant reads a file as people write it and hands it on as the readers of
// the library want it: commas, plain numbers in the unit of the header, dates as
// 2034-03-10, nothing for a missing figure. Lines keep their numbers. What it
// cannot make sense of it tells, and leaves the row out.
type tolerant struct {
	file    string // as messages name it
	s       *Settings
	in      io.Closer
	r       *records.Reader
	cols    []*column
	dates   []int // columns with dates
	order   dateOrder
	wrong   []error
	full    bool // more mistakes than are told
	handed  map[string]string
	buf     bytes.Buffer
	line    int // that comes next
	cells   []string
	done    bool
	course  course
	strays  bool    // rows need not follow each other
	spring  *spring // of a weather file
	highest int     // column of the highs; -1 if they carry no F
	lowest  int     // column of the lows; -1 if they carry no F
}

// open opens a file of the folder. Of one that is not there the error is
// [fs.ErrNotExist].
func (h *House) open(name string) (*tolerant, error) {
	if h.aside[name] {
		return nil, fs.ErrNotExist
	}
	sp, _ := specOf(name)
	order, err := h.settle(sp)
	if err != nil {
		return nil, err
	}
	f, err := h.files.Open(name)
	if err != nil {
		return nil, err
	}
	t := &tolerant{file: h.Shown(name), s: &h.Settings, in: f, order: order, line: 1, handed: map[string]string{}, highest: -1, lowest: -1,
		course: course{season: h.season}, strays: name == CostsFile}
	t.r, err = records.Open(t.file, f)
	switch {
	case err == io.EOF: // the reader tells what belongs into the first line
		t.done = true
		return t, nil
	case err != nil:
		f.Close()
		return nil, err
	}
	t.r.AllowShort()
	t.header(sp)
	return t, nil
}

func lower(cells []string) []string {
	names := trimmed(cells)
	for i, name := range names {
		names[i] = strings.ToLower(name)
	}
	return names
}

// header binds the columns and hands the header on.
func (t *tolerant) header(sp spec) {
	names := lower(t.r.Cells())
	for i, name := range names {
		c, base := sp.column(name)
		if near := sp.misspelled(name, names); base == "" && near != "" {
			t.tell(t.fail(name, fmt.Errorf("is it %s? name it so; a column of your own needs a name less like it", near)))
		}
		if err := c.bind(t.s, base); err != nil {
			t.tell(t.fail(name, err))
		}
		if c.kind == dateCell {
			t.dates = append(t.dates, i)
		}
		if base == "tmax" && c.out.suffix == "f" {
			t.highest, t.spring = i, &spring{}
		}
		if base == "tmin" && c.out.suffix == "f" {
			t.lowest = i
		}
		t.cols = append(t.cols, c)
		t.cells = append(t.cells, c.handed)
		t.handed[c.handed] = c.name
	}
	t.hand(t.r.Line())
}

func (t *tolerant) fail(column string, err error) error {
	return &records.Error{File: t.file, Line: t.r.Line(), Column: column, Err: err}
}

// tell keeps a mistake, if it is among the first.
func (t *tolerant) tell(err error) {
	if err == nil {
		return
	}
	if len(t.wrong) == mostMistakes {
		t.full = true
		return
	}
	t.wrong = append(t.wrong, err)
}

// hand writes the cells at their line.
func (t *tolerant) hand(line int) {
	for ; t.line < line; t.line++ {
		t.buf.WriteString("#\n")
	}
	for i, cell := range t.cells {
		if i > 0 {
			t.buf.WriteByte(',')
		}
		if cell == "" && len(t.cells) > 1 || cell != "" && !strings.ContainsAny(cell, ",\"\n\r#") && cell[0] != ' ' {
			t.buf.WriteString(cell)
			continue
		}
		t.buf.WriteString(`"` + strings.ReplaceAll(cell, `"`, `""`) + `"`)
		t.line += strings.Count(cell, "\n")
	}
	t.buf.WriteByte('\n')
	t.line++
}

// Read hands on what the rows are.
func (t *tolerant) Read(p []byte) (int, error) {
	for t.buf.Len() == 0 {
		if t.done {
			return 0, io.EOF
		}
		t.next()
	}
	return t.buf.Read(p)
}

// Close closes the file.
func (t *tolerant) Close() error { return t.in.Close() }

// next reads a row.
func (t *tolerant) next() {
	err := t.r.Next()
	switch {
	case err == io.EOF:
		t.end()
		return
	case t.r.Broken():
		t.tell(err)
		t.done = true
		return
	case t.full:
		t.done = true
		return
	case err != nil:
		if !slices.ContainsFunc(t.r.Cells(), func(c string) bool { return strings.TrimSpace(c) != "" }) {
			return
		}
		t.tell(err)
		return
	}
	t.row(t.r.Cells())
}

// row hands on a row, or tells what is wrong with it. An empty row is none.
func (t *tolerant) row(cells []string) {
	empty, good := true, true
	var on time.Time
	for _, i := range t.dates {
		if text, err := t.order.cell(strings.TrimSpace(cells[i])); err == nil && len(text) >= len(time.DateOnly) {
			on, _ = time.Parse(time.DateOnly, text[:len(time.DateOnly)])
		}
	}
	for i := range t.cols {
		text := strings.TrimSpace(cells[i])
		empty = empty && text == ""
		t.cells[i] = text
	}
	if empty {
		return
	}
	for i, c := range t.cols {
		text, err := c.cell(t.s, t.order, t.cells[i], t.r.Comma(), on)
		if err != nil {
			t.tell(t.fail(c.name, err))
			good = false
			continue
		}
		t.cells[i] = text
	}
	if !on.IsZero() && !t.strays {
		t.tell(t.course.row(t.file, t.cols[t.dates[0]].name, on.Year(), t.r.Line()))
	}
	if good {
		t.thaw(on, cells)
		t.hand(t.r.Line())
	}
}

// end tells what only the whole file tells.
func (t *tolerant) end() {
	t.done = true
	if t.spring != nil {
		t.tell(t.spring.told(t.file))
	}
	if len(t.dates) > 0 {
		t.tell(t.course.end(t.file, t.cols[t.dates[0]].name))
	}
}

// mistakes are those of the reading, and of a reader behind it in rows that were
// handed on, in order of the lines.
func (t *tolerant) mistakes(behind []error) []error {
	for _, err := range behind {
		var e *records.Error
		if errors.As(err, &e) && t.handed[e.Column] != "" {
			own := *e
			own.Column = t.handed[e.Column]
			err = &own
		}
		t.tell(err)
	}
	slices.SortStableFunc(t.wrong, func(a, b error) int { return lineOf(a) - lineOf(b) })
	return t.wrong
}
