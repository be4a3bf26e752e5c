package cli_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units/records"
)

// A mistake in a cell does not hide those of the rows behind it, up to 20; one that
// is about the whole file, or no error of a cell, is told alone, and so is that there
// are too many rows or none.
func TestRows(t *testing.T) {
	in := func(column string, n int) string { return "a\n" + strings.Repeat(column+"\n", n) }
	for _, c := range []struct {
		name, text string
		most       int
		fail       func(*records.Reader, string) error
		want       []string
	}{
		{"two cells", in("x", 2), 9, func(r *records.Reader, s string) error { return r.Fail("a", errors.New("is "+s)) },
			[]string{"in.csv:2: column a: is x", "in.csv:3: column a: is x"}},
		{"the file", in("x", 2), 9, func(r *records.Reader, s string) error { return r.Fail("", errors.New("is "+s)) }, []string{"in.csv:2: is x"}},
		{"no cell", in("x", 2), 9, func(_ *records.Reader, s string) error { return errors.New("is " + s) }, []string{"is x"}},
		{"good", in("x", 9), 9, func(*records.Reader, string) error { return nil }, nil},
		{"too many", in("x", 10), 9, func(*records.Reader, string) error { return nil }, []string{"in.csv:11: more than 9 rows: take fewer"}},
		{"none", "a\n", 9, func(*records.Reader, string) error { return nil }, []string{"in.csv:1: " + cli.ErrNoRows.Error()}},
	} {
		var text string
		r, err := records.New("in.csv", strings.NewReader(c.text), records.Text("a", &text))
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		if err := cli.Rows(r, c.most, ": take fewer", func() error { return c.fail(r, text) }); err != nil {
			got = err.Error()
		}
		if got != strings.Join(c.want, "\n") {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	var text string
	r, err := records.New("in.csv", strings.NewReader(in("x", 30)), records.Text("a", &text))
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	err = cli.Rows(r, 99, "", func() error { n++; return r.Fail("a", fmt.Errorf("mistake %d", n)) })
	if err == nil || strings.Count(err.Error(), "mistake") != 20 || n != 20 {
		t.Errorf("after %d rows: %v", n, err)
	}
}
