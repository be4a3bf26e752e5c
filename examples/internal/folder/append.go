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

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units/records"
)

// Rows are rows that are to be added to a file of the folder.
type Rows struct {
	File string
	Rows []Row
}

// A Row is what is told of a row. What is empty is not told.
type Row []Cell

// A Cell is told by the name of its column without the unit, such as sap, and a
// text as a person writes it: 36.7 US gal, 2034-03-10, 14:30. A quantity comes out
// in the unit of the header; a bare number is one in that unit.
type Cell struct{ Column, Text string }

// An Addition is a file as it is to be.
type Addition struct {
	File     string
	Old, New []byte   // Old is nil of a file that is not there
	Lines    []string // that are added, and before them the header where there was none
	Instead  []string // lines of settings that give way to as many of them
	There    int      // rows that stand in the file already and are not added again
}

// Append plans what adding rows makes of the files, in the columns, the units and
// the way of writing that each file has; one that is not there begins with the
// usual header. Nothing is written. The whole is read through as [Open] does it:
// what would be refused there is refused here.
func (h *House) Append(all ...Rows) (adds []Addition, err error) {
	over := &overlay{h.files, map[string][]byte{}}
	for _, rows := range all {
		if len(rows.Rows) == 0 {
			continue
		}
		if _, twice := over.files[rows.File]; twice {
			return nil, fmt.Errorf("%s: named twice: give all its rows at once", rows.File)
		}
		a, err := h.append(rows)
		if err != nil {
			return nil, err
		}
		over.files[rows.File] = a.New
		adds = append(adds, a)
	}
	then := &House{Settings: h.Settings, files: over, path: h.path, season: h.season}
	needs := []string{}
	for _, a := range adds {
		needs = append(needs, a.File)
	}
	return adds, errors.Join(then.readRecords(needs)...)
}

// append adds to one file.
func (h *House) append(rows Rows) (a Addition, err error) {
	sp, ok := specOf(rows.File)
	if !ok {
		return a, fmt.Errorf("%s: no file of a sugarhouse", rows.File)
	}
	fail := func(err error) (Addition, error) {
		var e *records.Error
		if !errors.As(err, &e) {
			err = &records.Error{File: h.Shown(rows.File), Err: err}
		}
		return Addition{}, err
	}
	a.File = rows.File
	if a.Old, err = h.content(rows.File); err != nil {
		return fail(err)
	}
	order, err := h.settle(sp)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return fail(err)
	}
	t, err := begin(h.Shown(rows.File), a.Old)
	if err != nil {
		return fail(err)
	}
	if t.header == nil {
		t.header = h.headerFor(sp, rows.Rows)
		a.Lines = append(a.Lines, t.line(t.header))
	}
	w, err := h.writer(sp, t, order)
	if err != nil {
		return fail(err)
	}
	there := map[string]bool{} // a record may be long, and a stand have many holes to add
	for _, old := range t.rows {
		there[strings.Join(old, "\x00")] = true
	}
	var added [][]string
	for _, row := range rows.Rows {
		cells, err := w.row(row)
		if err != nil {
			return fail(err)
		}
		if there[strings.Join(cells, "\x00")] {
			a.There++
			continue
		}
		added = append(added, cells)
		a.Lines = append(a.Lines, t.line(cells))
	}
	if len(added) == 0 {
		a.New, a.Lines = a.Old, nil
		return a, nil
	}
	a.New = t.with(a.Old, a.Lines)
	return a, h.whole(a, t, added)
}

// content reads a file; of one that is not there it is nil.
func (h *House) content(name string) ([]byte, error) {
	if h.files == nil {
		return nil, errors.New("there is no folder to add to")
	}
	f, err := h.files.Open(name)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, cause(err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, mostToAdd+1))
	if err == nil && len(text) > mostToAdd {
		err = errors.New("longer than 64 MiB: this is no record of a sugarhouse")
	}
	return append([]byte{}, text...), cause(err)
}

const mostToAdd = 64 << 20

// cause is an error without the path of the file, which is named already.
func cause(err error) error {
	var pe *fs.PathError
	if errors.As(err, &pe) {
		return pe.Err
	}
	return err
}

// whole holds the new file against the old one: the same rows, and those that were
// added as they are meant. A quote that is not closed would swallow them.
func (h *House) whole(a Addition, before *csvFile, added [][]string) error {
	after, err := begin(h.Shown(a.File), a.New)
	if err != nil {
		return err
	}
	same := len(after.rows) == len(before.rows)+len(added)
	for i := 0; same && i < len(after.rows); i++ {
		if i < len(before.rows) {
			same = slices.Equal(after.rows[i], before.rows[i])
		} else {
			same = slices.Equal(after.rows[i], added[i-len(before.rows)])
		}
	}
	if !same {
		return errors.New("what is added would not be read as it is meant: look at the last lines of the file")
	}
	return nil
}

// overlay is a folder in which some files are as they will be.
type overlay struct {
	fs.FS
	files map[string][]byte
}

func (o *overlay) Open(name string) (fs.File, error) {
	content, ok := o.files[name]
	if !ok || content == nil {
		if o.FS == nil {
			return nil, fs.ErrNotExist
		}
		return o.FS.Open(name)
	}
	return &planned{bytes.NewReader(content), name}, nil
}

// planned is a file that is only planned.
type planned struct {
	*bytes.Reader
	name string
}

func (p *planned) Stat() (fs.FileInfo, error) { return p, nil }
func (p *planned) Close() error               { return nil }
func (p *planned) Name() string               { return p.name }
func (p *planned) Mode() fs.FileMode          { return 0o444 }
func (p *planned) ModTime() time.Time         { return time.Time{} }
func (p *planned) IsDir() bool                { return false }
func (p *planned) Sys() any                   { return nil }

// row writes the cells of a row in the order of the header.
func (w *lineWriter) row(row Row) ([]string, error) {
	cells := make([]string, len(w.cols))
	told := false
	var on time.Time
	for _, c := range row {
		if c.Column == w.dated {
			on, _ = time.Parse(time.DateOnly, c.Text)
		}
	}
	for _, c := range row {
		c.Text = strings.Join(strings.Fields(c.Text), " ")
		if c.Text == "" {
			continue
		}
		i := slices.IndexFunc(w.cols, func(col written) bool { return col.base == c.Column })
		if i < 0 {
			return nil, &records.Error{File: w.file, Line: w.headed, Err: fmt.Errorf("no column for %s (%s): write %s at the end of this line", c.Column, clip.Text(c.Text), w.s.suggest(w.sp, c.Column))}
		}
		text, err := w.cols[i].put(w, c.Text, on)
		if err != nil {
			return nil, &records.Error{File: w.file, Column: w.cols[i].name, Err: err}
		}
		cells[i], told = text, true
	}
	if !told {
		return nil, &records.Error{File: w.file, Err: errors.New("a row that tells nothing is not added")}
	}
	return cells, nil
}

// headerFor is the usual header of a file, and behind it what else the rows tell.
func (h *House) headerFor(sp spec, rows []Row) []string {
	header := strings.Split(h.Settings.Header(sp.name), ",")
	for _, row := range rows {
		for _, c := range row {
			if name := h.Settings.suggest(sp, c.Column); c.Text != "" && !slices.Contains(header, name) {
				header = append(header, name)
			}
		}
	}
	return header
}

// suggest is how a column is named in a header: as in the usual one, or else with the
// first of its units.
func (s *Settings) suggest(sp spec, name string) string {
	for _, c := range strings.Split(s.Header(sp.name), ",") {
		if c == name || strings.HasPrefix(c, name+"_") {
			return c
		}
	}
	if k := sp.columns[name]; k != nil && len(k.units) > 0 {
		return name + "_" + k.units[0].suffix
	}
	return name
}
