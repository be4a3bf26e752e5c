package cli

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// What is not to be told leaves no trace, on the page and in JSON; what is empty neither.
func TestIf(t *testing.T) {
	page := func(told bool) string {
		env := &Env{program: "try", Out: new(bytes.Buffer)}
		s := &Sheet{Title: "A page"}
		s.Brief.Verdict = "So it is."
		s.Brief.If(told).Answer("key", "label", Count(3, ""))
		s.Brief.If(told).Told("words")
		s.Brief.Caution(told, "Mind it.")
		s.Brief.Caution(true, "")
		part := s.Part("part", "A part")
		part.If(told).Row("row", "Row", Count(4, ""))
		part.If(told).Remark("A remark.", "")
		part.If(told).Item("", "An item.")
		s.PartIf(told, "other", "Another part", func(p *Part) { p.Remark("In it.") })
		if err := s.JSON(env); err != nil {
			t.Fatal(err)
		}
		s.printBrief(env)
		s.Print(env)
		return env.Out.String()
	}
	told, untold := page(true), page(false)
	for _, words := range []string{"label", "words", "Mind it.", "Row", "A remark.", "An item.", "Another part", "In it.", `"row"`} {
		if !strings.Contains(told, words) || strings.Contains(untold, words) {
			t.Errorf("%s:\n%s\n%s", words, told, untold)
		}
	}
	if strings.Count(told, `""`) > 1 { // of the house alone
		t.Errorf("an empty text is told:\n%s", told)
	}
}

// Counts agree with their words; an irregular plural is given.
func TestPlural(t *testing.T) {
	for want, got := range map[string]string{
		"0 rows": Plural(0, "row"), "1 row": Plural(1, "row"), "2 rows": Plural(2, "row"),
		"1 row looks": Plural(1, "row looks", "rows look"), "2 rows look": Plural(2, "row looks", "rows look"),
	} {
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// An empty cell, which is NaN, takes what stands for it, and zero is no empty cell.
func TestOr(t *testing.T) {
	if a, b := Or(units.Volume(math.NaN()), units.Liter), Or(0, units.Liter); a != units.Liter || b != 0 {
		t.Error(a, b)
	}
	room, none := units.Celsius(20), units.Celsius(math.NaN())
	if a, b := OrAt(none, room), OrAt(units.Celsius(0), room); !a.Equal(room) || !b.Equal(units.Celsius(0)) {
		t.Error(a, b)
	}
}

// A flag that needs one of several others is refused without all of them, and named.
func TestWith(t *testing.T) {
	for args, refused := range map[string]bool{"-a 1": true, "-a 1 -b 1": false, "-a 1 -c 1": false, "-b 1": false, "": false} {
		program := Program{Name: "try", Apart: true, Setup: func(f *Flags) func(*Env) error {
			var a, b, c string
			f.String(&a, "a", "", "")
			f.String(&b, "b", "", "")
			f.String(&c, "c", "", "")
			return func(*Env) error { return f.With([]string{"b", "c"}, "give -b too", "d", "a") }
		}}
		var errs strings.Builder
		status := program.Main(strings.Fields(args), strings.NewReader(""), &strings.Builder{}, &errs)
		if (status == BadInput) != refused || refused && errs.String() != "try: -a: give -b too\n" {
			t.Errorf("%s: %d %s", args, status, errs.String())
		}
	}
}
