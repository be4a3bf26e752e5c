package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// pasture is a call that reads the invented pasture of these tests.
func pasture(args ...string) []string { return append([]string{"-dir", "testdata/pasture"}, args...) }

// The first page stays small beside its list, and says what there is to do.
func briefs(t *testing.T, b clitest.Binary) {
	const head = "tree,girth_in,species,vigor\n"
	for _, c := range []struct {
		args, stdin string
		want        []string
	}{
		{"", "", []string{"Fifth Gate is invented."}},
		// Counted on the list: P1, P6, P9/1, P9/2, P12, P14 one each, P2, P3, P7, P13, P15
		// two each; P6, P12 and P14 have no record.
		{"-dir|testdata/pasture", "", []string{"Drill 16 holes in 11 of 16 trunks in 2034; leave 5 alone.", "Holes to drill 16 (3 to choose by the scars)",
			"P4 leave: small", "P6 choose 1", "P7 drill B", "Taps by guidelines 14 to 21 (this is 16)", "1 unjudged trunk healthy"}},
		{"-dir|testdata/pasture|-metric", "", []string{"P1 drill A 30.5 cm 104 deg"}},                       // 12 in
		{"-dir|testdata/pasture|-season|2033", "", []string{"P3 noted A 19 1/4 in 110 deg 42 in 1 1/2 in"}}, // 63 x 110/360 = 19.25
		{"-dir|testdata/pasture|-bark|0.3 in", "", []string{"Stop on the bit at 1 3/4 in (bark and wood)"}}, // 1.8, down
		// The widest spout is of 7/16 in (University of Vermont Extension).
		{"-dir|testdata/pasture|-bit|5/8 in", "", []string{"- This bit is wider than any spout: 7/16 in at most. Is it meant?"}},
		{"-dir|testdata/pasture|-bit|5/8 in|P3", "", []string{"- This bit is wider than any spout: 7/16 in at most. Is it meant?"}},
		{"-dir|testdata/pasture|-bit|7/16 in", "", []string{"Bit 7/16 in", "this is 16) tree", "- Look up first"}},
		{"-dir|testdata/pasture|-open|40 in", "", []string{"No clear place", "no place for 1"}},
		// One tree: P3 of 63 in (20.05 in through) has two, P4 of 30 in (9.55 in) none.
		{"-dir|testdata/pasture|P3", "", []string{"P3: drill ", "NAMSPM-conservative gives 2)", "Hole A", "Without P3: the whole stand."}},
		{"-dir|testdata/pasture|P4", "", []string{"P4: leave it alone: small: the guideline gives it no tap.", "Taps by guidelines"}},
		{"-dir|testdata/pasture|-guideline|UVM-school|P4", "", []string{"(UVM-school says nothing)"}}, // below 10 in
		{"-dir|testdata/pasture|P6", "", []string{"P6: choose 1 place by the scars"}},
		{"-tree-file|-", head + "a,12,sugar maple,healthy\n", []string{"Drill none of 1 trunk: leave all alone.", "a leave: small"}},
		{"-tree-file|-", head + "a,60,sugar maple,healthy\n", []string{"Drill 2 holes in 1 of 1 trunk.", "a choose 2"}},
		{"-dir|testdata/pasture|-slow|tap|-guideline|UVM-school", "", []string{"P5 choose 1", "P13 leave: no rule"}},
	} {
		page, read := b.Brief(t, c.stdin, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(page), " ")
		for _, want := range c.want {
			if !strings.Contains(flat, want) {
				t.Errorf("%s: no %q in\n%s", c.args, want, page)
			}
		}
		if strings.Contains(c.args, "5/8") != strings.Contains(flat, "wider than any spout") {
			t.Errorf("%s: %s", c.args, page)
		}
		if read.Program != "stand" || len(read.List) == 0 {
			t.Errorf("%s: %d rows of %s", c.args, len(read.List), read.Program)
		}
	}
}
