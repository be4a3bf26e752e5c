package records_test

import (
	"strings"
	"testing"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Columns lead into variables and readers into files: their functions are tried
// in their own tests. Here are the edges of the types.
func TestEdges(t *testing.T) {
	var text string
	reader, err := records.New("sap.csv", strings.NewReader("name\na\n"), records.Text("name", &text))
	if err != nil {
		t.Fatal(err)
	}
	outside := &units.RangeError{Func: "season.Day", Arg: "Day.Min", What: "minimum", Value: -9999, Low: -95, High: 60, Unit: "C"}
	sweep.Edges(t, sweep.Package{Values: []any{
		reader, records.Text("name", &text), &records.Error{File: "sap.csv", Line: 3, Column: "tmin_c", Err: outside}, &records.Error{},
		&records.RowError{Line: 3, Column: "tmin_c", Err: outside}, &records.RowError{Line: 3, Err: records.ErrOrder},
	}})
}

func TestErrorJSON(t *testing.T) {
	var e records.RowError
	if err := e.UnmarshalJSON([]byte(`{"line":2,"column":"date","reason":"given twice","text":"line 2, column date: given twice"}`)); err != nil || e.Err != records.ErrDuplicate || e.Line != 2 {
		t.Errorf("%+v, %v", e, err)
	}
	for _, into := range []interface{ UnmarshalJSON([]byte) error }{new(records.RowError), new(records.Error), new(records.Reader), new(records.Col)} {
		if err := into.UnmarshalJSON([]byte(`{"line":`)); err == nil {
			t.Errorf("%T reads half", into)
		}
	}
}
