package records

import (
	"io"
	"slices"
	"strings"
	"testing"
)

// What nobody asked for is there as the file has it, the header first.
func TestCells(t *testing.T) {
	var x float64
	r, err := New("f.csv", strings.NewReader("\xef\xbb\xbf# a remark\nX,Who did it,\n1,\"Doe, J.\",\n2,,=1+1\n"), Number("x", &x))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range [][]string{{"X", "Who did it", ""}, {"1", "Doe, J.", ""}, {"2", "", "=1+1"}} {
		if got := r.Cells(); !slices.Equal(got, want) {
			t.Errorf("%q, want %q", got, want)
		}
		if err := r.Next(); err != nil && err != io.EOF {
			t.Fatal(err)
		}
	}
}

// A record that is refused is told as it stands too: its line may be shown.
func TestCellsOfARefusedRow(t *testing.T) {
	var x float64
	r, err := New("f.csv", strings.NewReader("x,y\none,2\n"), Number("x", &x))
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Next(); err == nil || !slices.Equal(r.Cells(), []string{"one", "2"}) {
		t.Errorf("%v, %q", err, r.Cells())
	}
}
