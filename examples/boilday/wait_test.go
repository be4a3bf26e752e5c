package main

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// What a page says once gatherings look wrong, sap waits, or coals are too much.
func TestLookAgainAndWait(t *testing.T) {
	b := clitest.Build(t)
	const head = "time,source,volume_us_gal,reading_brix,read_at_f\n"
	for _, c := range []struct{ args, stdin, want, not string }{
		// A pail written down twice, a point that slipped (of 2.1, 2.2, 2.2 and 22 the
		// middle is 2.2), and a name in small letters.
		{"-sap-file|-", head + "08:00,Hill,20,2.1,40\n09:00,Brook,25,2.2,40\n09:00,Brook,25,2.2,40\n", "Look again, -:4: the same row as line 3: it counts twice", "slipped"},
		{"-sap-file|-", head + "08:00,Hill,20,2.1,40\n09:00,Brook,25,2.2,40\n10:00,Brook,25,2.2,40\n11:00,Brook,25,22,40\n", "Look again, -:5: strength 22", "twice"},
		{"-sap-file|-", head + "08:00,Hill,20,2.1,40\n09:00,hill,25,2.2,40\n", "differs only in capitals", "twice"},
		{"-sap-file|-", head + "08:00,Hill,20,2.1,40\n09:00,Brook,25,2.2,40\n", "Sugar in it", "Look again"},

		{"-sap-temp|36 F", "", "36.0 F (2.2 C; boil it by tomorrow: hold it below 40 F, shaded and on ice)", "it keeps"},
		{"-sap-temp|45 F", "", "boil it by tomorrow", "today,"},
		{"-sap-temp|60 F", "", "boil it today, the oldest first", "by tomorrow"},
		{"", "", "Sap that is cloudy, ropy or sour is thrown away whatever the clock says, and not tasted.", "it keeps"},

		// 8 gal/h with coals of 2 h make 8 x 8.322 x 1.18 x 2/ln 2 = 227 lb, and 12 gal of
		// sap hold but 98 lb to boil off: no clock knows when somebody pours in the rest.
		{"-pan-area|8 ft2|-sap|12 US gal|-coals|2h", "", "DO NOT LIGHT THIS FIRE", "Last sap in the pan"},
		{"-pan-area|8 ft2|-sap|12 US gal|-coals|2h", "", "In the pot it takes", "Take it off the pan"},
		{"-pan-area|8 ft2|-sap|12 US gal|-coals|2h", "", "The clock starts with a hot arch", "It is syrup"},
		{"-pan-area|8 ft2|-sap|12 US gal|-coals|0s", "", "Last sap in the pan", "In the pot it takes"},
	} {
		_, out, errs := b.Run(t, c.stdin, strings.FieldsFunc("-full|"+c.args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(out), " ")
		if !strings.Contains(flat, c.want) || c.not != "" && strings.Contains(flat, c.not) {
			t.Errorf("%s: want %q without %q:\n%s%s", c.args, c.want, c.not, out, errs)
		}
	}
}

// The quarts of the draws add up to the total beside them, row by row.
func TestDrawsAddUp(t *testing.T) {
	_, out, _ := clitest.Build(t).Run(t, "", "-full", "-compartments", "6 ft2, 3 ft2", "-draw-to", "62 Brix", "-sap", "120 US gal", "-reading", "9 Brix")
	_, table, _ := strings.Cut(out, "total qt\n")
	sum, rows := 0.0, 0
	for line := range strings.Lines(table) {
		cells := strings.Fields(line)
		if len(cells) != 5 || !strings.Contains(cells[0], ":") {
			break
		}
		one, err := strconv.ParseFloat(cells[2], 64)
		total, bad := strconv.ParseFloat(cells[4], 64)
		if sum += one; err != nil || bad != nil || math.Abs(sum-total) > 0.01 {
			t.Errorf("%s: the rows add up to %.1f", line, sum)
		}
		rows++
	}
	if rows < 10 {
		t.Errorf("%d rows, want 10 or more:\n%s", rows, out)
	}
}
