package check

import (
	"embed"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strings"
)

//go:embed tables/*.csv
var files embed.FS

// The kinds of a table.
const (
	Figures = "figures" // has published figures that functions must reproduce
	Facts   = "facts"   // has statements that nothing computes
)

// The kinds of a column.
const (
	Input     = "input"
	Want      = "want"
	Deviation = "deviation"
	Text      = "text"
)

// deviationSuffix makes the name of a deviation column from its want column.
const deviationSuffix = "_deviation"

// obtainedColumn is the text column that tells how each row was obtained.
const obtainedColumn = "obtained"

// A Table is a published table with the statement of where it comes from.
type Table struct {
	ID       string
	Title    string
	Source   string
	Keys     []string // of the bibliography
	Keyed    bool     // the header says which, or that there is none
	Obtained string
	Basis    string // molar masses, weights in air or vacuum, scale: what a figure stands on
	Kind     string
	Notes    []string
	Columns  []Column
	Rows     []Row
}

// A Column describes one column of a [Table]. Tolerance and Reason are set for
// want columns alone.
type Column struct {
	Name      string
	Kind      string
	Unit      string
	Words     string
	Tolerance Tolerance
	Reason    string
}

// A Row is one line of a [Table].
type Row struct {
	table  *Table
	cells  []string
	values []float64
	name   string
	line   int
}

// IDs lists the tables, sorted.
func IDs() []string {
	entries, err := files.ReadDir("tables")
	if err != nil {
		return nil
	}
	ids := make([]string, 0, len(entries))
	for _, e := range entries {
		ids = append(ids, strings.TrimSuffix(e.Name(), ".csv"))
	}
	slices.Sort(ids) // "a-b.csv" sorts before "a.csv", "a-b" after "a"
	return ids
}

// Load reads and checks the table with the given id.
func Load(id string) (*Table, error) {
	text, err := files.ReadFile("tables/" + id + ".csv")
	if err != nil {
		return nil, fmt.Errorf("check: no table %q", id)
	}
	t, err := parse(id, string(text))
	if err != nil {
		return nil, fmt.Errorf("check: %s.csv: %w", id, err)
	}
	return t, nil
}

// Column finds a column by name.
func (t *Table) Column(name string) (Column, bool) {
	i := t.index(name)
	if i < 0 {
		return Column{}, false
	}
	return t.Columns[i], true
}

func (t *Table) index(name string) int {
	return slices.IndexFunc(t.Columns, func(c Column) bool { return c.Name == name })
}

// Float gives the number in the named column, NaN where the cell is empty, or
// the column is one of text or unknown.
func (r Row) Float(col string) float64 {
	if i := r.index(col); i >= 0 {
		return r.values[i]
	}
	return math.NaN()
}

// Text gives the cell of the named column as it is printed, empty where the
// column is unknown.
func (r Row) Text(col string) string {
	if i := r.index(col); i >= 0 {
		return r.cells[i]
	}
	return ""
}

// index is -1 for an unknown column and for any column of the zero Row.
func (r Row) index(col string) int {
	if r.table == nil {
		return -1
	}
	return r.table.index(col)
}

// Name tells the row from the others of its table, such as "brix=66".
func (r Row) Name() string { return r.name }

// Line is the row's line number in its file.
func (r Row) Line() int { return r.line }

// Obtained tells how the row's figures were obtained: by its own cell, or as
// the whole table was.
func (r Row) Obtained() string {
	if r.table == nil {
		return ""
	}
	if own := r.Text(obtainedColumn); own != "" {
		return own
	}
	return r.table.Obtained
}

// Key gives the source in which the row's figures were found, as bibliography.json
// calls it: its own cell, or the first key of the table. It is empty where
// geometry or a definition is all.
func (r Row) Key() string {
	if r.table == nil {
		return ""
	}
	if own := r.Text(keyColumn); own != "" {
		return own
	}
	if len(r.table.Keys) > 0 {
		return r.table.Keys[0]
	}
	return ""
}

// FromMemory reports whether the row's figures were recalled and not read.
func (r Row) FromMemory() bool { return strings.HasPrefix(r.Obtained(), "memory") }

// Inputs gives all input cells of the row as "name=value name=value".
func (r Row) Inputs() string {
	if r.table == nil {
		return ""
	}
	var parts []string
	for i, c := range r.table.Columns {
		if c.Kind == Input && r.cells[i] != "" {
			parts = append(parts, c.Name+"="+r.cells[i])
		}
	}
	return strings.Join(parts, " ")
}

// parse reads a whole table; its errors name the line.
func parse(id, text string) (*Table, error) {
	t, body, err := parseHeader(id, text)
	if err != nil {
		return nil, err
	}
	offset := strings.Count(text[:len(text)-len(body)], "\n")
	rd := csv.NewReader(strings.NewReader(body))
	rd.FieldsPerRecord = len(t.Columns)
	names, err := rd.Read()
	if err != nil {
		return nil, fmt.Errorf("line of column names: %w", err)
	}
	for i, c := range t.Columns {
		if names[i] != c.Name {
			return nil, fmt.Errorf("line %d: column %d is %q, the header declares %q", offset+1, i+1, names[i], c.Name)
		}
	}
	lines := map[string]int{}
	for {
		cells, err := rd.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, fmt.Errorf("after line %d: %w", offset, err)
		}
		line, _ := rd.FieldPos(0)
		row := Row{table: t, cells: cells, line: offset + line}
		if err := row.check(); err != nil {
			return nil, fmt.Errorf("line %d: %w", row.line, err)
		}
		if first, twice := lines[row.name]; twice {
			return nil, fmt.Errorf("line %d: row name %q is taken by line %d", row.line, row.name, first)
		}
		lines[row.name] = row.line
		t.Rows = append(t.Rows, row)
	}
	if len(t.Rows) == 0 {
		return nil, errors.New("no rows")
	}
	return t, nil
}

// check fills the row's numbers and name, and refuses what cannot be used.
func (r *Row) check() error {
	r.values = make([]float64, len(r.cells))
	for i, c := range r.table.Columns {
		cell := r.cells[i]
		r.values[i] = math.NaN()
		if c.Kind == Text || cell == "" {
			continue
		}
		v, err := decimal(cell)
		if err != nil {
			return fmt.Errorf("column %s: %w", c.Name, err)
		}
		r.values[i] = v
		if c.Kind == Deviation && r.Text(strings.TrimSuffix(c.Name, deviationSuffix)) == "" {
			return fmt.Errorf("column %s: a deviation without a published figure", c.Name)
		}
	}
	if r.table.Obtained == byRow && !knownObtained(r.Text(obtainedColumn)) {
		return fmt.Errorf("column %s: %q does not start with one of %s", obtainedColumn, r.Text(obtainedColumn), strings.Join(obtainedWords, ", "))
	}
	if key := r.Text(keyColumn); key != "" && !slices.Contains(r.table.Keys, key) {
		return fmt.Errorf("column %s: %q is no key of the table", keyColumn, key)
	}
	r.name = r.makeName()
	if r.name == "" {
		return errors.New("the row has no name: every cell left of its figures is empty")
	}
	return nil
}

func (r *Row) makeName() string {
	if r.table.Kind == Facts {
		return r.cells[0]
	}
	var parts []string
	for i, c := range r.table.Columns {
		switch {
		case c.Kind == Want:
			return strings.Join(parts, " ")
		case r.cells[i] == "":
		case c.Kind == Input:
			parts = append(parts, c.Name+"="+r.cells[i])
		case c.Kind == Text:
			parts = append(parts, r.cells[i])
		}
	}
	return strings.Join(parts, " ")
}
