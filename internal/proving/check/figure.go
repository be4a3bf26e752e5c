package check

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
)

// A figure is a published figure with what a program in any language needs to be
// held to it: the function of the arguments must give what is wanted, plus the
// deviation where there is one, within the tolerance. Numbers of the table are
// as printed there; the tolerance is reckoned, to 12 digits.
type figure struct {
	Function  string      `json:"function"`
	Arguments []argument  `json:"arguments"`
	With      string      `json:"with,omitempty"` // arguments that are the same in all rows, and what of the answer is meant
	Want      json.Number `json:"want"`
	Deviation json.Number `json:"deviation,omitempty"` // documented: the function must give this much more
	Tolerance json.Number `json:"tolerance"`
	Unit      string      `json:"unit"` // of want, deviation and tolerance; 1 for a pure number
	Of        string      `json:"of,omitempty"`
	Table     string      `json:"table"`
	Row       string      `json:"row"`
	Column    string      `json:"column"`
	Obtained  string      `json:"obtained"`
	Source    string      `json:"source"`
	Note      string      `json:"note,omitempty"`
}

// An argument is a cell that a figure goes with: a number with its unit, or a
// word that chooses.
type argument struct {
	Name  string      `json:"name"`
	Value json.Number `json:"value,omitempty"`
	Unit  string      `json:"unit,omitempty"`
	Of    string      `json:"of,omitempty"`
	Text  string      `json:"text,omitempty"`
}

// figuresOf gives the figures of a claim in the order of the table.
func figuresOf(c Claim) ([]figure, error) {
	t, outcomes, err := evaluate(c)
	if err != nil {
		return nil, err
	}
	col, _ := t.Column(c.Column)
	var figures []figure
	for _, o := range outcomes {
		f := figure{
			Function: c.Func, Arguments: o.row.arguments(), With: c.With,
			Want: number(o.row.Text(c.Column)), Deviation: number(o.row.Text(c.Column + deviationSuffix)),
			Tolerance: json.Number(strconv.FormatFloat(o.tol, 'g', 12, 64)),
			Unit:      o.row.unit(col), Of: col.of(),
			Table: t.ID, Row: o.row.Name(), Column: c.Column,
			Obtained: o.row.Obtained(), Source: t.Source, Note: o.row.Text(noteColumn),
		}
		if own := o.row.Text(sourceColumn); own != "" {
			f.Source = own
		}
		figures = append(figures, f)
	}
	return figures, nil
}

// WriteFigures writes the figures of all claims, one JSON object a line.
func WriteFigures(w io.Writer, claims ...Claim) error {
	lines := json.NewEncoder(w)
	lines.SetEscapeHTML(false)
	for _, c := range claims {
		figures, err := figuresOf(c)
		if err != nil {
			return err
		}
		for _, f := range figures {
			if err := lines.Encode(f); err != nil {
				return err
			}
		}
	}
	return nil
}

// number takes away the plus sign, which JSON does not have.
func number(printed string) json.Number { return json.Number(strings.TrimPrefix(printed, "+")) }

// Text columns that say something about a row, and do not choose.
const (
	sourceColumn = "source"
	keyColumn    = "key"
	noteColumn   = "note"
)

// arguments gives the inputs of the row and the words that choose.
func (r Row) arguments() []argument {
	args := []argument{}
	for i, c := range r.table.Columns {
		switch cell := r.cells[i]; {
		case cell == "":
		case c.Kind == Input:
			args = append(args, argument{Name: c.Name, Value: number(cell), Unit: r.unit(c), Of: c.of()})
		case c.Kind == Text && !slices.Contains([]string{obtainedColumn, sourceColumn, keyColumn, noteColumn}, c.Name) && !r.table.isUnit(c.Name):
			args = append(args, argument{Name: c.Name, Text: cell})
		}
	}
	return args
}

// unitInRow stands for the unit of a column that another column tells row by
// row: the one that the words name, or the column unit.
const (
	unitInRow = "unit"
	seeColumn = "see the column "
)

// unitColumn names the column that tells the unit of c; empty if c itself does.
func (c Column) unitColumn() string {
	if c.Unit != unitInRow {
		return ""
	}
	if _, after, ok := strings.Cut(c.Words, seeColumn); ok {
		return strings.Fields(after)[0]
	}
	return unitInRow
}

// of gives the words of a column, but not where its unit stands.
func (c Column) of() string {
	before, _, _ := strings.Cut(c.Words, seeColumn)
	return strings.TrimRight(before, " ,;")
}

func (r Row) unit(c Column) string {
	if in := c.unitColumn(); in != "" {
		return r.Text(in)
	}
	return c.Unit
}

// isUnit reports whether the named column tells the unit of another.
func (t *Table) isUnit(name string) bool {
	return slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Kind != Text && c.unitColumn() == name })
}

// completeUnits refuses a column whose unit no column of the table tells.
func (t *Table) completeUnits() error {
	for _, c := range t.Columns {
		in := c.unitColumn()
		if in == "" || c.Kind == Text {
			continue
		}
		if told, ok := t.Column(in); !ok || told.Kind != Text {
			return fmt.Errorf("column %s: no column of text %q tells its unit", c.Name, in)
		}
	}
	return nil
}
