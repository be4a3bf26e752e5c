package lookagain_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/yield/lookagain"
)

var march = time.Date(2031, 3, 10, 0, 0, 0, 0, time.UTC)

// found lists findings as line, kind and text.
func found(l *lookagain.List) string {
	var b strings.Builder
	for _, f := range l.Findings() {
		fmt.Fprintf(&b, "%s:%d: %s: %s\n", f.File, f.Line, f.Kind, f.Text)
	}
	return b.String()
}

// rows makes a list of strengths of one seller, from line 2 on.
func strengths(name string, values ...float64) *lookagain.List {
	l := new(lookagain.List)
	for i, x := range values {
		l.Add(lookagain.Row{File: "r.csv", Line: 2 + i, Name: name, Strength: x})
	}
	return l
}

// By hand: of 2.0 2.1 2.2 2.3 2.4 the median is 2.2, the distances 0.2 0.1 0 0.1 0.2
// with the median 0.1, and 3.5 x 1.4826 x 0.1 = 0.519. With a sixth value x far
// above, the median is (2.2+2.3)/2 = 2.25, the distances 0.25 0.15 0.05 0.05 0.15
// and x's, in the middle 0.15: the reach is 0.778. The band is 1.125 to 3.375.
func TestFarByHand(t *testing.T) {
	for _, c := range []struct {
		last float64
		far  bool
	}{
		{23, true},    // for 2.3
		{0.23, true},  // by the mirror: the median is 2.15, the band 1.075 to 3.225
		{3.37, false}, // 1.12 away, over the reach and within the band
		{3.38, true},
		{1.08, false},
		{1.07, true},
		{math.NaN(), false}, {math.Inf(1), false}, {0, false}, {-2, false},
	} {
		got := found(strengths("Abbott", 2.0, 2.1, 2.2, 2.3, 2.4, c.last))
		if c.far != strings.HasPrefix(got, "r.csv:7: far from the usual: strength ") || !c.far && got != "" {
			t.Errorf("%v: %q", c.last, got)
		}
	}
	const want = `r.csv:7: far from the usual: strength 23 Brix is far from that of "Abbott", 2.25 Brix in the middle: has the point slipped?` + "\n"
	if got := found(strengths("Abbott", 2.0, 2.1, 2.2, 2.3, 2.4, 23)); got != want {
		t.Errorf("%q", got)
	}
}

// What is far from the middle is what a plain sort finds, for lists of any length, with
// many values that are equal, rising, falling or in any order.
func TestFarBySorting(t *testing.T) {
	draw := rand.New(rand.NewPCG(8, 1))
	middle := func(values []float64) float64 {
		slices.Sort(values)
		n := len(values)
		return (values[(n-1)/2] + values[n/2]) / 2
	}
	for round := range 400 {
		values := make([]float64, 5+draw.IntN(200))
		for i := range values {
			values[i] = []float64{2 + draw.Float64(), float64(1 + draw.IntN(3)), 1 + float64(i)/50, 6 - float64(i)/50, 2}[round%5]
			if draw.IntN(20) == 0 {
				values[i] *= 10
			}
		}
		m := middle(slices.Clone(values))
		away := make([]float64, len(values))
		for i, x := range values {
			away[i] = math.Abs(x - m)
		}
		reach := 3.5 * 1.4826 * middle(away)
		var want []int
		for i, x := range values {
			if math.Abs(x-m) > reach && (x < 0.5*m || x > 1.5*m) {
				want = append(want, 2+i)
			}
		}
		var got []int
		for _, f := range strengths("Abbott", values...).Findings() {
			got = append(got, f.Line)
		}
		if !slices.Equal(got, want) {
			t.Fatalf("round %d: lines %v, by sorting %v, of %v", round, got, want, values)
		}
	}
}

// Values that scatter widely are beyond the band, and not found: of 1 2 3 4 5 6 the
// median is 3.5, the distances 2.5 1.5 0.5 0.5 1.5 2.5, in the middle 1.5, and the
// reach is 7.78.
func TestScatter(t *testing.T) {
	if got := found(strengths("a", 1, 2, 3, 4, 5, 6)); got != "" {
		t.Error(got)
	}
}

// Sellers of few rows are held against all; with fewer than three rows in all,
// what is stronger than 6 Brix is no sap.
func TestFew(t *testing.T) {
	l := new(lookagain.List)
	l.VolumeUnit = "US gal"
	for i, v := range []float64{206, 180, 2062, 210} {
		l.Add(lookagain.Row{File: "r.csv", Line: 2 + i, Name: fmt.Sprint("P", i), Strength: 2, Volume: v})
	}
	// By hand: median (206+210)/2 = 208; distances 2 28 1854 2, in the middle
	// (2+28)/2 = 15; the reach is 77.8, the band 20.8 to 624.
	const want = "r.csv:4: far from the usual: volume 2062 US gal is far from that of all rows, 208 US gal in the middle: has the point slipped?\n"
	if got := found(l); got != want {
		t.Errorf("%q", got)
	}
	if got := found(strengths("a", 2.3, 23)); !strings.HasPrefix(got, "r.csv:3: far from the usual: strength 23 Brix is more than sap has") || strings.Count(got, "\n") != 1 {
		t.Errorf("%q", got)
	}
}

// Syrup is held against syrup: a single can, two, or many. 66.12 is a can a little
// thin, 56.12 and 76.9 are not in what rules allow by ten and eight.
func TestSyrup(t *testing.T) {
	for _, c := range []struct {
		values []float64
		found  int // first line, 0 for none
	}{
		{[]float64{66.12}, 0}, {[]float64{66.9, 63.8}, 0}, {[]float64{59.9}, 2}, {[]float64{60, 72}, 0}, {[]float64{66.9, 72.1}, 3},
		{[]float64{66.9, 67, 66.8, 66.9, 67.1, 56.12}, 7}, // half the median would be 33
		{[]float64{66.9, 66.9, 66.9, 66.9, 76.9}, 6},
	} {
		l := strengths("hill side", c.values...)
		l.Of = lookagain.Syrup
		got := found(l)
		if c.found == 0 && got != "" || c.found != 0 && (!strings.HasPrefix(got, fmt.Sprintf("r.csv:%d: far from the usual: strength ", c.found)) ||
			!strings.HasSuffix(got, " Brix is far from that of syrup, 66 to 69 Brix: read it again\n") || strings.Count(got, "\n") != 1) {
			t.Errorf("%v: %q", c.values, got)
		}
	}
}

func TestTwiceAndSeason(t *testing.T) {
	l := new(lookagain.List)
	for i, r := range []lookagain.Row{
		{Whole: "a", Day: march}, {Whole: "b", Day: march.AddDate(0, 0, 20)}, {Whole: "a", Day: march}, {Day: march}, {Day: march},
		{Whole: "c", Day: march.AddDate(0, 0, 60)}, {Whole: "d", Day: march.AddDate(0, 0, 61)}, {Whole: "e", Day: march.AddDate(-1, 0, 0)},
		{Whole: "a", Day: march}, {Whole: "f", Day: march}, {Whole: "g", Day: march},
	} {
		r.File, r.Line = "r.csv", 2+i
		l.Add(r)
	}
	// The middle day is March 10: 61 days later and a year earlier are too far.
	const want = "r.csv:4: the same row twice: the same row as line 2: it counts twice\n" +
		"r.csv:8: out of season: 2031-05-10 is 61 days from 2031-03-10, the middle of the rows: check month and year\n" +
		"r.csv:9: out of season: 2030-03-10 is 365 days from 2031-03-10, the middle of the rows: check month and year\n" +
		"r.csv:10: the same row twice: the same row as line 2: it counts twice\n"
	if got := found(l); got != want {
		t.Errorf("%s", got)
	}
}

func names(all ...string) *lookagain.List {
	l := new(lookagain.List)
	for i, n := range all {
		l.Add(lookagain.Row{File: "r.csv", Line: 2 + i, Name: n})
	}
	return l
}

func TestNames(t *testing.T) {
	for _, c := range []struct{ names, want string }{ // names parted by |
		{"Abbott|abbott", `r.csv:3: a name like another: the name "abbott" differs only in capitals from "Abbott" of line 2: one or two?`},
		{"abbott|Abbott|Abbott", `r.csv:2: a name like another: the name "abbott" differs only in capitals`}, // the rarer one
		{"Abbott|Abbot", `the name "Abbot" differs by a letter from "Abbott"`},
		{"Abbott|Abbptt", `differs by a letter`},
		{"Abbott|Abbtot", `differs by a letter`},
		{"Abbott|Abbott Hill", ""},
		{"Line 1|Line 2|Line 12|Line 21", ""},
		{"Bush A|Bush B", ""},
		{"Ann|Ana", ""}, // three letters
		{"Abbott|Abb\u200bott", `r.csv:3: a hidden sign in a name: the name "Abb\u200bott" has a sign`},
		{"Abbott|Abb\u200bott", `the name "Abb\u200bott" differs only by spaces or signs that are not seen from "Abbott"`},
		{"Mill lane|Mill\u00a0lane", `"Mill\u00a0lane" differs only by spaces or signs`},
		{"Abbott|\u202eAbbott", `"\u202eAbbott" has a sign`},
		{"Abbott|\u0410bbott", `"\u0410bbott" differs only by letters that look alike`},
		{"\u0410\u0432\u0432\u043e|\u0418\u0432\u0430\u043d", ""}, // Cyrillic alone is a name
		{"=1+1|=1+1\"", `the name "=1+1\"" differs by a letter from "=1+1" of line 2`},
		{"|", ""},
	} {
		got := found(names(strings.Split(c.names, "|")...))
		if !strings.Contains(got, c.want) || c.want == "" && got != "" {
			t.Errorf("%q: %q, want %q", c.names, got, c.want)
		}
	}
}

// No text from outside breaks a line or turns what stands beside it.
func TestHostileNames(t *testing.T) {
	got := found(names("=cmd()", "=cmd()\n", "=Cmd()\x1b[2J", "=cmd()\u202e\u2066", "\xff\xfe", strings.Repeat("x", 1e5), strings.Repeat("x", 1e5)+"\u200d"))
	for _, c := range got {
		if c != '\n' && (c < ' ' || c > '~') {
			t.Fatalf("%q in %q", c, got)
		}
	}
	for _, line := range strings.Split(strings.TrimSpace(got), "\n") {
		if !strings.HasPrefix(line, "r.csv:") || len(line) > 400 {
			t.Errorf("%q", line)
		}
	}
	var zero lookagain.List
	if zero.Findings() != nil || zero.Skipped() != 0 {
		t.Error("an empty list finds something")
	}
}

func TestPackedEarly(t *testing.T) {
	l := new(lookagain.List)
	l.Add(lookagain.Row{File: "packing.csv", Line: 2, Day: march, Name: "A", Packed: true})
	l.Add(lookagain.Row{File: "packing.csv", Line: 3, Day: march.AddDate(0, 0, 1), Name: "A", Packed: true})
	l.Add(lookagain.Row{File: "packing.csv", Line: 4, Day: march, Name: "never drawn", Packed: true})
	l.Add(lookagain.Row{File: "draws.csv", Line: 2, Day: march.AddDate(0, 0, 2), Name: "A", Drawn: true})
	l.Add(lookagain.Row{File: "draws.csv", Line: 3, Day: march.Add(25 * time.Hour), Name: "A", Drawn: true})
	const want = `packing.csv:2: packed before drawn: lot "A" was packed on 2031-03-10, before it was drawn: 2031-03-11, draws.csv:3` + "\n"
	if got := found(l); got != want {
		t.Errorf("%q", got)
	}
}

// Most bounds the rows that are held and tells of the rest.
func TestMost(t *testing.T) {
	l := &lookagain.List{Most: 2}
	for i := range 5 {
		l.Add(lookagain.Row{Line: i, Whole: "x"})
	}
	if l.Skipped() != 3 || len(l.Findings()) != 1 {
		t.Error(l.Skipped(), l.Findings())
	}
}

// A hundred thousand rows of as many names that begin alike, where comparing all
// pairs would take five thousand million steps.
func BenchmarkFindings(b *testing.B) {
	draw := rand.New(rand.NewPCG(1, 2))
	word := make([]byte, 20)
	l := new(lookagain.List)
	for i := range 100_000 {
		for k := 10; k < len(word); k++ {
			word[k] = byte('a' + draw.IntN(26))
		}
		l.Add(lookagain.Row{File: "r.csv", Line: i, Whole: fmt.Sprint(i), Day: march, Name: string(word), Strength: 2 + draw.Float64(), Volume: 100 * draw.Float64()})
	}
	b.ReportAllocs()
	for b.Loop() {
		l.Findings()
	}
}

func ExampleList() {
	l := lookagain.List{VolumeUnit: "US gal"}
	for i, read := range []float64{2.0, 2.1, 23, 2.2, 2.3} {
		l.Add(lookagain.Row{File: "deliveries.csv", Line: 2 + i, Name: "Mill lane", Strength: read, Volume: 200})
	}
	for _, f := range l.Findings() {
		fmt.Printf("%s:%d: %s\n", f.File, f.Line, f.Text)
	}
	// Output:
	// deliveries.csv:4: strength 23 Brix is far from that of "Mill lane", 2.2 Brix in the middle: has the point slipped?
}

// Of three rows two are looked at. Syrup of 56.1 Brix is no syrup; by the point
// that slipped, 661 would not be either.
func ExampleList_Looks() {
	l := lookagain.List{Of: lookagain.Syrup, Most: 2}
	for i, read := range []float64{66.2, 56.1, 661} {
		if l.Looks() {
			l.Add(lookagain.Row{File: "cans.csv", Line: 2 + i, Name: "steel can", Strength: read})
		}
	}
	var why lookagain.Kind
	for _, f := range l.Findings() {
		why = f.Kind
		fmt.Println(f.Line, why)
	}
	fmt.Println(l.Skipped(), "not looked at")
	// Output:
	// 3 far from the usual
	// 1 not looked at
}
