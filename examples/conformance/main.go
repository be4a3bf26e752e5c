// Conformance prints how well the library reproduces the published figures: one
// line for each table and function, with the number of figures, the worst
// deviation as a share of the tolerance, and how the figures were obtained.
// docs/sources.md shows its output. With -jsonl it writes every figure as a line of
// JSON, from which a port to another language can prove itself: docs/figures.jsonl.
//
//	go run ./examples/conformance
//	go run ./examples/conformance -table boiling-rise-exact
//	go run ./examples/conformance -jsonl
package main

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name:  "conformance",
		Apart: true,
		Does:  "Prints how well the library reproduces the published figures: the number of figures of each source, the worst deviation as a share of the tolerance, and how the figures were obtained. With -table, prints one source with its tolerances and remarks. With -jsonl, writes every figure as a line of JSON.",
		Calls: []string{
			"go run ./examples/conformance",
			"go run ./examples/conformance -table boiling-rise-exact",
			"go run ./examples/conformance -jsonl",
		},
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var table string
			f.String(&table, "table", "", "id of one table, as in the first column")
			var lines bool
			f.Bool(&lines, "jsonl", "a line of JSON for every figure: function, arguments with their units, what it must give, tolerance, source")
			return func(e *cli.Env) error {
				if table != "" && !slices.Contains(check.IDs(), table) {
					return cli.For("table", fmt.Errorf("no table %q: call without -table to see all", table))
				}
				switch {
				case lines:
					return check.WriteFigures(e.Out, claims(table)...)
				case table != "":
					return one(e.Out, table)
				}
				return all(e.Out)
			}
		},
	}
}

// A line is what one function makes of one table.
type line struct {
	table    *check.Table
	fn       string
	figures  int
	exact    int
	apart    int
	failures int
	worst    float64
}

// lines evaluates every claim, those of one table and function together.
func lines() ([]line, *split, error) {
	var all []line
	by := newSplit()
	for _, c := range proof.All() {
		r, err := check.Evaluate(c)
		if err != nil {
			return nil, nil, err
		}
		by.count(r)
		i := slices.IndexFunc(all, func(l line) bool { return l.table.ID == c.Table && l.fn == c.Func })
		if i < 0 {
			i = len(all)
			all = append(all, line{table: r.Table, fn: c.Func})
		}
		l := &all[i]
		l.figures += r.Rows
		l.exact += r.Exact
		l.apart += r.Apart
		l.failures += len(r.Failures)
		l.worst = max(l.worst, r.Worst) // NaN stays NaN
	}
	return all, by, nil
}

// all prints the table of tables in Markdown.
func all(w io.Writer) error {
	lines, by, err := lines()
	if err != nil {
		return err
	}
	fmt.Fprintln(w, "| source table | obtained | function | figures | apart | worst, of tolerance |")
	fmt.Fprintln(w, "|---|---|---|--:|--:|--:|")
	var sum line
	tables := map[string]bool{}
	for _, l := range lines {
		sum.figures += l.figures
		sum.apart += l.apart
		sum.failures += l.failures
		tables[l.table.ID] = true
		fmt.Fprintf(w, "| %s | %s | %s | %d | %s | %s |\n", l.table.ID, obtained(l.table), l.fn, l.figures, some(l.apart), l.deviation())
	}
	fmt.Fprintf(w, "\n%d comparisons with %d tables, %d outside their tolerance.\n", sum.figures, len(tables), sum.failures)
	fmt.Fprintf(w, "%d stand apart: the table documents by how much, and the deviation is what is left.\n\n", sum.apart)
	by.print(w)
	return nil
}

// some prints a count, and nothing for none.
func some(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// met reports whether every figure of the line is met exactly.
func (l line) met() bool { return l.exact == l.figures }

// deviation prints the worst of a line: a share says nothing of figures that are
// met exactly or not at all.
func (l line) deviation() string {
	if l.met() {
		return "exact"
	}
	return percent(l.worst)
}

// obtained shortens how a table was obtained to its first words.
func obtained(t *check.Table) string {
	for _, word := range []string{"read", "computed", "memory", "common practice"} {
		if strings.HasPrefix(t.Obtained, word) {
			return word
		}
	}
	return "by row"
}

// percent prints a share of the tolerance, rounded up, so that a last bit that
// differs from one processor to another does not show.
func percent(share float64) string {
	const bits = 1e-6 // percent
	return fmt.Sprintf("%.0f %%", max(0, math.Ceil(100*share-bits)))
}

// claims returns those of one table, and all for no id.
func claims(id string) []check.Claim {
	return slices.DeleteFunc(proof.All(), func(c check.Claim) bool { return id != "" && c.Table != id })
}

// one prints the header of a table and the result of its claims.
func one(w io.Writer, id string) error {
	t, err := check.Load(id)
	if err != nil {
		return err
	}
	p := cli.NewPage(w)
	p.Title(t.Title)
	p.Row("Table", t.ID)
	p.Row("Source", t.Source)
	if len(t.Keys) > 0 {
		p.Row("Cited as", strings.Join(t.Keys, ", "), "in docs/bibliography.md")
	}
	p.Row("Obtained", t.Obtained)
	if t.Basis != "" {
		p.Row("Basis", t.Basis)
	}
	for _, n := range t.Notes {
		p.Row("Remark", n)
	}
	for _, c := range claims(id) {
		r, err := check.Evaluate(c)
		if err != nil {
			return err
		}
		p.Heading(c.Func)
		column, _ := t.Column(c.Column)
		p.Row("Column", c.Column)
		p.Row("Figures", fmt.Sprint(r.Rows))
		p.Row("Tolerance", column.Tolerance.String(), column.Reason)
		l := line{figures: r.Rows, exact: r.Exact, worst: r.Worst}
		if l.met() {
			p.Row("Worst", l.deviation())
		} else {
			p.Row("Worst", l.deviation(), r.WorstRow)
		}
		for _, row := range t.Rows {
			if by := row.Text(c.Column + "_deviation"); by != "" && (c.Select == nil || c.Select(row)) {
				p.Row("Apart by", by, row.Name()+", where "+row.Text(c.Column)+" is printed")
			}
		}
		for _, f := range r.Failures {
			p.Item(f.String())
		}
	}
	return nil
}
