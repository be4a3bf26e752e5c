package check

import (
	"math"
	"slices"
	"strings"
	"testing"
)

const sample = `# id: sample
# title: Two invented liquids
# source: invented for this test
# obtained: by row
# kind: figures
# column liquid: text -
# column brix: input % sugar by mass
# column density: want kg/m3 at 20 C
# column density_deviation: deviation kg/m3
# column obtained: text -
# tolerance density: half-digit + 0.1: printed digit, and an invented fit
# note: nobody has measured it
liquid,brix,density,density_deviation,obtained
first,10,1038.1,,read
second,66,1322,+0.7,memory
third,70,,,computed
`

func TestLoaderAcceptsEveryTable(t *testing.T) {
	ids := IDs()
	if len(ids) < 12 || !slices.IsSorted(ids) {
		t.Fatalf("IDs() = %d tables, sorted %t", len(ids), slices.IsSorted(ids))
	}
	for _, id := range ids {
		table, err := Load(id)
		if err != nil {
			t.Error(err)
			continue
		}
		if table.ID != id || len(table.Rows) == 0 {
			t.Errorf("%s: loaded as %q with %d rows", id, table.ID, len(table.Rows))
		}
		for _, c := range table.Columns {
			for _, r := range table.Rows {
				if c.Kind != Want || r.Text(c.Name) == "" {
					continue
				}
				if tol, err := c.Tolerance.of(r.Float(c.Name), r.Text(c.Name)); err != nil || !(tol >= 0) {
					t.Errorf("%s:%d: tolerance of %s is %v, %v", id, r.Line(), c.Name, tol, err)
				}
			}
		}
	}
}

func TestLoadUnknown(t *testing.T) {
	for _, id := range []string{"", "no-such-table", "../doc", "units.csv"} {
		if _, err := Load(id); err == nil {
			t.Errorf("Load(%q) gives no error", id)
		}
	}
}

func TestParse(t *testing.T) {
	table, err := parse("sample", sample)
	if err != nil {
		t.Fatal(err)
	}
	if table.Title != "Two invented liquids" || table.Kind != Figures || len(table.Columns) != 5 || len(table.Rows) != 3 {
		t.Errorf("parsed %+v", table)
	}
	if got := table.Notes; len(got) != 1 || got[0] != "nobody has measured it" {
		t.Errorf("notes %q", got)
	}
	if c, ok := table.Column("density"); !ok || c.Unit != "kg/m3" || c.Words != "at 20 C" || c.Tolerance.String() != "half-digit + 0.1" {
		t.Errorf("column density is %+v, %t", c, ok)
	}
	second := table.Rows[1]
	if second.Name() != "second brix=66" || second.Inputs() != "brix=66" || second.Line() != 15 {
		t.Errorf("second row: name %q, inputs %q, line %d", second.Name(), second.Inputs(), second.Line())
	}
	if got := second.Float("density_deviation"); math.Abs(got-0.7) > 1e-15 {
		t.Errorf("deviation %v", got)
	}
	if second.Obtained() != "memory" || !second.FromMemory() || table.Rows[0].FromMemory() {
		t.Error("how the rows were obtained is mixed up")
	}
	for _, col := range []string{"liquid", "no such column"} {
		if !math.IsNaN(second.Float(col)) {
			t.Errorf("Float(%q) = %v", col, second.Float(col))
		}
	}
	if v := table.Rows[2].Float("density"); !math.IsNaN(v) {
		t.Errorf("an empty cell reads as %v", v)
	}
	if second.Text("no such column") != "" {
		t.Error("Text of an unknown column is not empty")
	}
}

func TestZeroRow(t *testing.T) {
	var r Row
	if !math.IsNaN(r.Float("brix")) || r.Text("brix")+r.Obtained()+r.Inputs()+r.Name() != "" || r.Line() != 0 {
		t.Error("the zero Row is not empty")
	}
}

func TestFactsAreNamedByTheFirstColumn(t *testing.T) {
	table, err := parse("f", `# id: f
# title: f
# source: none
# obtained: common practice
# kind: facts
# column item: text -
# column low: input F
item,low
a hot pot,180
`)
	if err != nil {
		t.Fatal(err)
	}
	if got := table.Rows[0].Name(); got != "a hot pot" {
		t.Errorf("name %q", got)
	}
}

func TestParseRejects(t *testing.T) {
	tests := []struct {
		name, old, new, message string
	}{
		{"missing tolerance", "# tolerance density: half-digit + 0.1: printed digit, and an invented fit\n", "", "column density has no tolerance"},
		{"tolerance without a reason", ": printed digit, and an invented fit", "", "no reason is given"},
		{"NaN tolerance", "half-digit + 0.1", "NaN", `"NaN" is none of`},
		{"tolerance of another column", "tolerance density", "tolerance brix", "not a want column"},
		{"second tolerance", "# note: nobody", "# tolerance density: 1: again\n# note: nobody", "two tolerances"},
		{"unknown header line", "# title", "# subject", `unknown header line "subject"`},
		{"header out of order", "# id: sample\n# title: Two invented liquids\n", "# title: Two invented liquids\n# id: sample\n", `"id" stands after "title"`},
		{"empty title", "# title: Two invented liquids", "# title:", "want \"# key: value\""},
		{"no source", "# source: invented for this test\n", "", `no line "source"`},
		{"title twice", "# source", "# title: again\n# source", "given once"},
		{"another id", "# id: sample", "# id: simple", "not the name of the file"},
		{"unknown kind of table", "# kind: figures", "# kind: numbers", "is neither"},
		{"figures called facts", "# kind: figures", "# kind: facts", "a table of facts with 1 want columns"},
		{"unknown kind of column", "input %", "given %", `unknown kind "given"`},
		{"column without a unit", "text -\n# column brix", "text\n# column brix", "want a kind, a unit"},
		{"column twice", "# column brix:", "# column liquid:", "declared twice"},
		{"undeclared column", "liquid,brix,density,", "liquid,grade,density,", `column 2 is "grade", the header declares "brix"`},
		{"stray deviation", "# column density_deviation", "# column weight_deviation", "named after a want column"},
		{"deviation without a figure", "third,70,,,", "third,70,,1,", "without a published figure"},
		{"input right of the figures", "# column obtained: text -", "# column obtained: input 1", "by row"},
		{"number that is none", "first,10,", "first,ten,", `line 14: column brix: "ten" is not a decimal number`},
		{"infinite number", "1038.1", "Inf", "not a decimal number"},
		{"NaN cell", "1038.1", "NaN", "not a decimal number"},
		{"hexadecimal number", "1038.1", "0x1p4", "not a decimal number"},
		{"duplicate rows", "second,66", "first,10", `line 15: row name "first brix=10" is taken by line 14`},
		{"nameless row", "first,10,", ",,", "the row has no name"},
		{"short row", ",,computed", "", "wrong number of fields"},
		{"unknown way of obtaining", "+0.7,memory", "+0.7,guessed", `"guessed" does not start with`},
		{"unknown way for the table", "obtained: by row", "obtained: readily", `"readily" does not start with`},
		{"no rows", sample[strings.Index(sample, "first,"):], "", "no rows"},
		{"no body", sample[strings.Index(sample, "liquid,"):], "", "column names"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			text := strings.Replace(sample, tt.old, tt.new, 1)
			if text == sample {
				t.Fatalf("%q is not in the sample", tt.old)
			}
			_, err := parse("sample", text)
			if err == nil || !strings.Contains(err.Error(), tt.message) {
				t.Errorf("error %v, want one with %q", err, tt.message)
			}
		})
	}
	misplaced := strings.Replace(sample, "# column obtained: text -", "# column obtained: text -\n# column late: input 1", 1)
	if _, err := parse("sample", misplaced); err == nil || !strings.Contains(err.Error(), "inputs stand left") {
		t.Errorf("an input right of the figures gives %v", err)
	}
}
