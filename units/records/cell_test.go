package records_test

import (
	"fmt"
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/units/records"
)

// Cells that the caller reads come as they are written, the unit apart.
func TestCell(t *testing.T) {
	var who, much, unit string
	cols := func() []records.Col {
		return []records.Col{records.Cell("who", &who, nil), records.Cell("much", &much, &unit, "us_gal", "l")}
	}
	r, err := records.New("f", strings.NewReader("note,much_l,who\n x, 0.10 ,\n,\" 2e9\",a\u200bb\n"), cols()...)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"l|0.10|", "l|2e9|a\u200bb"} {
		if err := r.Next(); err != nil {
			t.Fatal(err)
		}
		if got := unit + "|" + much + "|" + who; got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got := r.Fail("much", io.ErrUnexpectedEOF).Error(); got != "f:3: column much_l: unexpected EOF" {
		t.Error(got)
	}
	for header, want := range map[string]string{
		"who,much":        "f:1: column much: no unit that is known: name the column much_us_gal or much_l",
		"much_l":          "f:1: no column for who: name it who",
		"who_x,much_l":    "f:1: column who_x: no unit that is known: name the column who",
		"who,much_l,who":  "f:1: column who: a second column for who, beside who",
		"who,much_l,much": "",
	} {
		_, err := records.New("f", strings.NewReader(header+"\n"), cols()...)
		if got := fmt.Sprint(err); got != want && (err != nil || want != "") {
			t.Errorf("%s: %s", header, got)
		}
	}
}
