package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// Trunks on standard input, looked at for twenty seasons. 53.4 in round is 16.998 in
// through: at 0.06 in on the radius it is over 18 in 0.12 x 9 = 1.08 in later. 40 in
// round, from 38 five years ago, grew 2/(10 pi) = 0.0637 in a year, give or take
// 0.25 sqrt(2)/2 = 17.7 percent. One of 0.03 in a year grows less than the 0.045 that
// tapping asks for. Of the last nothing is told.
func aheads(t *testing.T, b clitest.Binary) {
	const trees = "tree,girth_in,species,vigor,growth_in,first_girth_in,years_since\n" +
		"a,53.4,sugar maple,healthy,0.06,,\nb,40,sugar maple,healthy,,38,5\nc,50,sugar maple,healthy,0.03,,\nd,60,sugar maple,healthy,,,\ne,45,sugar maple,unhealthy,0.06,,\n"
	status, out, errs := b.Run(t, trees, "-tree-file", "-", "-full")
	if status != 0 {
		t.Fatal(errs)
	}
	page := flat(out)
	for _, want := range []string{
		"Taps now and in the last 5 to 6 (of 4 trunks tapped or small yet)", "Grow enough for it 2 (by the least that is published; of 3 trunks whose growth is told)",
		"a 0.060 in told yes in 9 years 19.3 in", "b 0.064 in girths, 18 % yes", "c 0.030 in told no", "assumed not known", "Of 1 trunk no growth is told",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	if strings.Contains(page, "e 0.060") {
		t.Error("an unhealthy trunk is looked at")
	}
	// One tree year by year: as many places as it takes taps, in each of the seasons.
	_, out, _ = b.Run(t, "", "-full", "-ahead", "G7", "-years", "3")
	_, part, _ := strings.Cut(out, "Holes of G7, year by year")
	if n := strings.Count(part, " deg "); n != 6 || !strings.Contains(part, "2037") || strings.Contains(part, "2038") {
		t.Errorf("%d places\n%s", n, part)
	}
	if _, out, _ = b.Run(t, "", "-full", "-ahead", "G4"); !strings.Contains(flat(out), "Nothing to tell of G4") {
		t.Errorf("%s", out)
	}
}

func flat(page string) string { return strings.Join(strings.Fields(page), " ") }
