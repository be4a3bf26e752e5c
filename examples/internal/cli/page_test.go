package cli

import (
	"bytes"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/units"
)

// Lines are filled to the width and no further, whatever the words.
func TestWrap(t *testing.T) {
	for letters := 1; letters < 12; letters++ {
		word := strings.Repeat("x", letters)
		words := strings.TrimSpace(strings.Repeat(word+" ", 100))
		for name, print := range map[string]func(p *Page){
			"Row":      func(p *Page) { p.Row("Label", words) },
			"Text":     func(p *Page) { p.Text(words) },
			"Item":     func(p *Page) { p.Item(words) },
			"indented": func(p *Page) { p.indented("      ", words) },
		} {
			var b bytes.Buffer
			print(NewPage(&b))
			lines := strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
			for i, line := range lines {
				if len(line) > width {
					t.Errorf("%s: %d columns: %q", name, len(line), line)
				}
				if i < len(lines)-1 && len(line+" "+word) <= width {
					t.Errorf("%s: room for another word: %q", name, line)
				}
			}
		}
	}
}

func TestHours(t *testing.T) {
	s := Sheet{}
	for d, want := range map[time.Duration]string{
		0: "0 min", 59 * time.Minute: "59 min", 59*time.Minute + 31*time.Second: "1 h 00 min",
		time.Hour: "1 h 00 min", 125 * time.Minute: "2 h 05 min", 25*time.Hour + 9*time.Minute: "25 h 09 min",
	} {
		if got := s.In(Hours(d)); got != want {
			t.Errorf("%v is %q, want %q", d, got, want)
		}
	}
}

// A range says its unit once, and its words all.
func TestRanges(t *testing.T) {
	s := Sheet{}
	for want, v := range map[string]Value{
		"mid March to late March":  Between(Words("mid March"), Words("late March")),
		"2.0 to 2.5 Brix":          Between(Brix(2, 1), Brix(2.5, 1)),
		"2.0 Brix":                 Between(Brix(2, 1), Brix(2.01, 1)),
		"1 to 1":                   Between(Count(1, ""), Count(1, "")),
		"3 h 00 min to 5 h 00 min": Between(Hours(3*time.Hour), Hours(5*time.Hour)),
		"1.5 mPa s":                Number(1.5, 1, "mPa s"),
	} {
		if got := s.In(v); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Columns of words are set left and those of numbers right, a dash like its
// column. A part without remarks has none in JSON.
func TestTableOfWords(t *testing.T) {
	s := &Sheet{Title: "Pails"}
	s.Part("pails", "Pails").Table("list", []Column{{Key: "at", Head: "at"}, {Key: "full", Head: "full"}, {Key: "of", Head: "of"}}, [][]Value{
		{Words("north"), Number(12, 0, ""), Words("sap")},
		{Words("se"), Number(7, 0, ""), Length(units.Length(math.NaN()))},
	})
	e := &Env{Out: new(bytes.Buffer)}
	s.Print(e)
	const want = "at     full  of\nnorth    12  sap\nse        7  -\n"
	if got := e.Out.String(); !strings.HasSuffix(got, want) {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	e.Out.Reset()
	if err := s.JSON(e); err != nil || strings.Contains(e.Out.String(), "remarks") {
		t.Errorf("%v: %s", err, e.Out.String())
	}
}
