package tapping_test

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

const standTable = "\ufeffTree, girth_in ,species,vigor,note\r\n" +
	"# invented trees\r\n" +
	"A1,37.699112,sugar maple,healthy,\"by the gate, \"\"old\"\"\"\r\n" +
	"\r\n" +
	"A2,60,Red Maple,slow,\r\n" +
	"A2,62.8318531,,,second stem\r\n" +
	",40,birch,unhealthy,\r\n" +
	",\"41\",,,"

func TestReadStand(t *testing.T) {
	trees, err := tapping.ReadStand(strings.NewReader(standTable))
	if err != nil {
		t.Fatal(err)
	}
	trunk := func(girth float64, s tapping.Species, v tapping.Vigor) tapping.Trunk {
		return must[tapping.Trunk](t)(tapping.NewTrunk(units.Inches(girth)/math.Pi, s, v))
	}
	want := []tapping.Tree{
		{Label: "A1", Stems: []tapping.Trunk{trunk(37.699112, tapping.SugarMaple, tapping.Healthy)}},
		{Label: "A2", Stems: []tapping.Trunk{trunk(60, tapping.RedMaple, tapping.Slow), trunk(62.8318531, tapping.Maple, tapping.NotJudged)}},
		{Stems: []tapping.Trunk{trunk(40, tapping.Birch, tapping.Unhealthy)}},
		{Stems: []tapping.Trunk{trunk(41, tapping.Maple, tapping.NotJudged)}},
	}
	if d := cmp.Diff(want, trees, cmp.Comparer(func(a, b tapping.Trunk) bool {
		return a.Species() == b.Species() && a.Vigor() == b.Vigor() && near(float64(a.DBH()), float64(b.DBH()))
	})); d != "" {
		t.Error(d)
	}
	trees = must[[]tapping.Tree](t)(tapping.ReadStand(strings.NewReader("dbh_cm\n30.48\n")))
	if len(trees) != 1 || !near(trees[0].Stems[0].DBH().Inches(), 12) {
		t.Errorf("dbh_cm: %+v", trees)
	}
}

// The first tree of a stand may have two stems, too.
func TestReadStandFirstTree(t *testing.T) {
	trees := must[[]tapping.Tree](t)(tapping.ReadStand(strings.NewReader("tree,dbh_in\nA1,12\nA1,10\n")))
	if len(trees) != 1 || len(trees[0].Stems) != 2 {
		t.Errorf("two stems of the first tree: %+v", trees)
	}
}

// says is a reason that is told by its message alone.
type says string

func (s says) Error() string { return string(s) }

// rowError checks that err names the line and column and wraps or tells the
// reason. Line 0 is the table as a whole.
func rowError(t *testing.T, name string, err error, line int, column string, reason error) {
	t.Helper()
	var re *records.RowError
	if !errors.As(err, &re) || re.Line != line || re.Column != column {
		t.Errorf("%s: error %v, want line %d, column %q", name, err, line, column)
		return
	}
	if s, ok := reason.(says); ok && !strings.Contains(err.Error(), string(s)) || !ok && !errors.Is(err, reason) {
		t.Errorf("%s: error %q, want %v", name, err, reason)
	}
	if line > 0 && !strings.Contains(err.Error(), fmt.Sprintf("line %d", line)) || !strings.Contains(err.Error(), column) {
		t.Errorf("%s: the message %q does not name line and column", name, err)
	}
}

func TestReadStandRefuses(t *testing.T) {
	for _, c := range []struct {
		name, table string
		line        int
		column      string
		reason      error
	}{
		{"empty", "", 0, "", says("the table is empty")},
		{"comments alone", "# nothing\n\n", 0, "", says("the table is empty")},
		{"no size", "tree,species\n", 1, "", says("no column for dbh")},
		{"no unit", "tree,girth\n", 1, "girth", says("no unit that is known")},
		{"two sizes", "dbh_in,girth_in\n", 1, "dbh_in", says("one of dbh_in and girth_in")},
		{"misspelled", "dbh_in,vigour\n", 1, "vigour", says("want tree")},
		{"twice", "dbh_in,tree,tree\n", 1, "tree", says("a second column for tree")},
		{"no number", "dbh_in\n12\n12 in\n", 3, "dbh_in", says("not a plain number")},
		{"hex", "dbh_in\n0x1p4\n", 2, "dbh_in", says("not a plain number")},
		{"inf", "dbh_in\nInf\n", 2, "dbh_in", says("not a plain number")},
		{"huge", "dbh_in\n1e999\n", 2, "dbh_in", says("not a plain number")},
		{"empty cell", "tree,dbh_in\nA,\n", 2, "dbh_in", says("not a plain number")},
		{"negative", "dbh_in\n-1\n", 2, "dbh_in", units.ErrRange},
		{"girth for diameter", "dbh_cm\n501\n", 2, "dbh_cm", units.ErrRange},
		{"girth too large", "girth_in\n700\n", 2, "girth_in", units.ErrRange},
		{"species", "dbh_in,species\n12,gum\n", 2, "species", says("not one of the names")},
		{"vigor", "dbh_in,vigor\n12,so so\n", 2, "vigor", says("not one of the names")},
		{"cells missing", "tree,dbh_in\nA\n", 2, "", says("1 cells where")},
		{"decimal comma", "tree,dbh_in\nA,12,5\n", 2, "", says("3 cells where")},
		{"open quote", "tree,dbh_in\n\"A,12\n", 2, "", says("a quote that is not closed")},
		{"text after quote", "tree,dbh_in\n\"A\"B,12\n", 2, "", says("quote")},
		{"tree again", "tree,dbh_in\nA,12\nB,13\nA,14\n", 4, "tree", records.ErrDuplicate},
		{"not UTF-8", "tree,dbh_in\n\xff\xfe,12\n", 2, "tree", says("UTF-8")},
		{"long line", "tree,dbh_in\n" + strings.Repeat("A", 80<<10) + ",12\n", 2, "", says("longer than 64 KiB")},
	} {
		trees, err := tapping.ReadStand(strings.NewReader(c.table))
		rowError(t, c.name, err, c.line, c.column, c.reason)
		if trees != nil {
			t.Errorf("%s: trees with an error", c.name)
		}
	}
}

// A row may be as long as promised, and not much longer.
func TestRowLimit(t *testing.T) {
	row := func(n int) string { return "note,dbh_in\n" + strings.Repeat("x", n-len(",12\n")) + ",12\n" }
	if _, err := tapping.ReadStand(strings.NewReader(row(64 << 10))); err != nil {
		t.Errorf("a row of 64 KiB: %v", err)
	}
	_, err := tapping.ReadStand(strings.NewReader(row(80 << 10)))
	rowError(t, "a longer one", err, 2, "", says("longer than 64 KiB"))
}

func stand(t testing.TB, inches ...float64) []tapping.Tree {
	var trees []tapping.Tree
	for _, in := range inches {
		trees = append(trees, tapping.Tree{Stems: []tapping.Trunk{must[tapping.Trunk](t)(tapping.NewTrunk(units.Inches(in), tapping.SugarMaple, tapping.Healthy))}})
	}
	return trees
}

func TestCountStand(t *testing.T) {
	trees := stand(t, 4, 11, 12, 17.9, 18, 19, 26)
	trees[0].Stems = append(trees[0].Stems, trees[6].Stems[0])
	c := must[tapping.StandCount](t)(tapping.CountStand(trees, tapping.DefaultGuideline(), 6*units.Inch))
	if c.Trees != 7 || c.Trunks != 8 || c.Taps != 1+1+1+2+2+2 || c.Tapped != 6 || c.NotCovered != 0 {
		t.Errorf("%+v", c)
	}
	if d := cmp.Diff([]int{2, 3, 3}, c.ByTaps); d != "" {
		t.Errorf("trunks by taps: %s", d)
	}
	want := []tapping.StandClass{
		{From: 0, To: 6 * units.Inch, Trunks: 1, Taps: 0}, {From: 6 * units.Inch, To: 12 * units.Inch, Trunks: 1, Taps: 0}, {From: 12 * units.Inch, To: 18 * units.Inch, Trunks: 2, Taps: 2},
		{From: 18 * units.Inch, To: 24 * units.Inch, Trunks: 2, Taps: 3}, {From: 24 * units.Inch, To: 30 * units.Inch, Trunks: 2, Taps: 4},
	}
	if d := cmp.Diff(want, c.Classes, cmp.Comparer(func(a, b units.Length) bool { return near(float64(a), float64(b)) })); d != "" {
		t.Errorf("classes: %s", d)
	}
	for _, o := range c.Others {
		switch o.Guideline.ID() {
		case "UVM-school":
			if o.NotCovered != 3 || o.Taps != 1+1+1+2+2 {
				t.Errorf("UVM-school: %+v", o)
			}
		case "NAMSPM-traditional":
			if o.NotCovered != 0 || o.Taps != 1+1+2+2+2+4+4 {
				t.Errorf("NAMSPM-traditional: %+v", o)
			}
		}
	}
}

// Sums over a random stand, against the plain way.
func TestCountStandSums(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 16))
	var inches []float64
	area := 0.0
	for range 3000 {
		in := math.Floor(400*r.Float64()) / 10
		inches = append(inches, in)
		area += math.Pi / 4 * in * in
	}
	trees := stand(t, inches...)
	c := must[tapping.StandCount](t)(tapping.CountStand(trees, tapping.DefaultGuideline(), 2*units.Inch))
	taps, trunks, byTaps := 0, 0, 0
	for _, tree := range trees {
		taps += must[int](t)(tree.Taps(tapping.DefaultGuideline()))
	}
	for _, class := range c.Classes {
		trunks += class.Trunks
	}
	for n, k := range c.ByTaps {
		byTaps += n * k
	}
	if c.Taps != taps || trunks != 3000 || byTaps != taps || math.Abs(c.BasalArea.SquareInches()/area-1) > 1e-12 {
		t.Errorf("taps %d want %d, %d in classes, %d by taps, area %v want %v", c.Taps, taps, trunks, byTaps, c.BasalArea.SquareInches(), area)
	}
	for _, o := range append(c.Others, c.GuidelineTotal) {
		taps, silent := 0, 0
		for _, tree := range trees {
			n, err := tree.Taps(o.Guideline)
			if err != nil {
				silent++
			}
			taps += n
		}
		if o.Taps != taps || o.NotCovered != silent {
			t.Errorf("%s: %+v, want %d taps, %d not covered", o.Guideline.ID(), o, taps, silent)
		}
	}
}

func TestStandPerGround(t *testing.T) {
	c := tapping.StandCount{GuidelineTotal: tapping.GuidelineTotal{Taps: 360}, BasalArea: 400 * units.SquareFoot}
	for unit, want := range map[units.Area]float64{units.Acre: 90, units.Hectare: 222.39484} {
		if got := must[float64](t)(c.TapsPer(unit, 4*units.Acre)); math.Abs(got-want) > 1e-4 {
			t.Errorf("%v taps on %v, want %v", got, unit, want)
		}
	}
	if got := must[units.Area](t)(c.BasalAreaPer(units.Acre, 4*units.Acre)); !near(got.SquareFeet(), 100) {
		t.Errorf("basal area %v ft2/ac, want 100", got.SquareFeet())
	}
	checkRange(t, "ground", 1, 1e10, func(x float64) error { _, err := c.TapsPer(units.Acre, units.Area(x)); return err })
	checkRange(t, "unit", 1, 1e10, func(x float64) error { _, err := c.BasalAreaPer(units.Area(x), units.Acre); return err })
	checkRange(t, "class", 0.01, 1, func(x float64) error {
		_, err := tapping.CountStand(nil, tapping.DefaultGuideline(), units.Length(x))
		return err
	})
}

func FuzzReadStand(f *testing.F) {
	f.Add([]byte(standTable))
	f.Add([]byte("dbh_cm\n\n30.48\n"))
	f.Add([]byte("tree,dbh_in\n\"a\"\"b\",1e1\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		trees, err := tapping.ReadStand(bytes.NewReader(data))
		if err != nil {
			var re *records.RowError
			if !errors.As(err, &re) || re.Line < 0 || trees != nil || len(err.Error()) > 1000 {
				t.Fatalf("error %v with %d trees", err, len(trees))
			}
			return
		}
		c, err := tapping.CountStand(trees, tapping.DefaultGuideline(), 2*units.Inch)
		if err != nil || c.Trunks < c.Trees || c.NotCovered > c.Trunks {
			t.Fatalf("count %+v, %v", c, err)
		}
	})
}

func BenchmarkCountStand(b *testing.B) {
	r := rand.New(rand.NewPCG(17, 18))
	inches := make([]float64, 100_000)
	for i := range inches {
		inches[i] = 4 + 26*r.Float64()
	}
	trees := stand(b, inches...)
	g := tapping.DefaultGuideline()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := tapping.CountStand(trees, g, 2*units.Inch); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadStand(b *testing.B) {
	var text strings.Builder
	text.WriteString("tree,girth_in,species,vigor\n")
	for i := range 100_000 {
		fmt.Fprintf(&text, "T%d,%d.5,sugar maple,healthy\n", i, 20+i%70)
	}
	b.SetBytes(int64(text.Len()))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := tapping.ReadStand(strings.NewReader(text.String())); err != nil {
			b.Fatal(err)
		}
	}
}
