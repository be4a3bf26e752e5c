package records_test

import (
	"fmt"
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/units/records"
)

// Lines that begin with # are no record, however many stand together: notes
// above a file, or a part of it that is left out.
func TestRemarks(t *testing.T) {
	note := "# a note of the season, with \"a quotation mark, of more than sixty-six bytes in all\n"
	many := strings.Repeat(note, 1000) // 83 KB: more than one record may take
	var x float64
	r, err := records.New("f.csv", strings.NewReader(many+"x,word\n"+many+"1,a\n"+many+"2,\"b\n# is no note, but part of the cell\"\n"+many+"3,c\n"+many),
		records.Number("x", &x))
	if err != nil {
		t.Fatal(err)
	}
	for i, line := range []int{2002, 3003, 4005} {
		if err := r.Next(); err != nil || r.Line() != line {
			t.Fatalf("line %d, not %d: %v", r.Line(), line, err)
		}
		if got := fmt.Sprint(x); got != fmt.Sprint(i+1) {
			t.Errorf("row %d reads %s", i+1, got)
		}
	}
	if err := r.Next(); err != io.EOF {
		t.Error(err)
	}
}

// What stands in a quoted cell is held, whatever its lines begin with.
func TestRemarksInACell(t *testing.T) {
	var x float64
	r, err := records.New("f.csv", strings.NewReader("x,note\n1,\"a\n"+strings.Repeat("# no end\n", 20_000)+"\"\n"), records.Number("x", &x))
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err == nil || !strings.Contains(err.Error(), "a record longer than 64 KiB") || !r.Broken() {
		t.Error(err)
	}
}

type endless string

func (e endless) Read(p []byte) (int, error) { return copy(p, e), nil }

// A file of nothing but notes ends all the same.
func TestEndlessRemarks(t *testing.T) {
	for in, want := range map[endless]string{
		"#\n": "more than 16 MiB of lines that begin with #",
		"#":   "a record longer than 64 KiB",
	} {
		if _, err := records.Open("f.csv", in); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v", in, err)
		}
	}
}
