package main

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// ended reads off the page when the fire was lit and when all is done, in minutes
// of the day, and the sap of the day in gallons.
func ended(t *testing.T, b clitest.Binary, args ...string) (lit, done, sap float64) {
	t.Helper()
	_, page := b.Brief(t, "", args...)
	clock := func(s string) float64 {
		at, err := time.Parse("15:04", strings.Fields(s)[0])
		if err != nil {
			t.Fatalf("%q: %v", args, err)
		}
		return at.Sub(time.Date(0, 1, 1, 0, 0, 0, 0, time.UTC)).Minutes()
	}
	for _, a := range page.Answers {
		if a.Key == "lit" {
			lit = clock(a.Text)
		}
	}
	for _, key := range []string{"clock", "timeline", "pot"} { // the pot comes last
		var part struct{ Done string }
		if raw, ok := page.Parts[key]; ok && json.Unmarshal(raw, &part) == nil && part.Done != "" {
			done = clock(part.Done)
		}
	}
	var part struct {
		Sap float64 `json:"volume_us_gal"`
	}
	if err := json.Unmarshal(page.Parts["sap"], &part); err != nil {
		t.Fatal(err)
	}
	return lit, done, part.Sap
}

// Lit when the page says for an end at 22:00, the day that is told forwards ends
// there, within two minutes; and so does the day of the sap that fits.
func deadlines(t *testing.T, b clitest.Binary) {
	const by = 22 * 60
	for _, args := range [][]string{
		{"-sap", "90 US gal"},
		{"-sap", "90 US gal", "-coals", "0s", "-boil-rate", "15 US gal/h"},
		{"-sap", "700 US gal", "-boil-rate", "90 US gal/h", "-pan-area", "24 ft2", "-pot-rate", "8 US gal/h"},
		{"-sap", "7 US gal"},
		{"-sap", "120 US gal", "-compartments", "6 ft2, 3 ft2, 3 ft2", "-depth", "2 in", "-boil-rate", "26 US gal/h"},
		{"-dir", "../sugarhouse", "-day", "2034-03-11"},
	} {
		lit, _, _ := ended(t, b, append([]string{"-done-by", "22:00"}, args...)...)
		start := time.Date(0, 1, 1, 0, int(lit), 0, 0, time.UTC).Format("15:04")
		if slices.Contains(args, "-compartments") {
			args = append(args, "-out", "23:30")
		}
		_, done, sap := ended(t, b, append([]string{"-start", start}, args...)...)
		if done > by || by-done > 2 {
			t.Errorf("%q: lit at %s, done %v min before 22:00", args, start, by-done)
		}
		// Lit two hours later less of it fits, and as much is done by then.
		late := time.Date(0, 1, 1, 0, int(lit)+120, 0, 0, time.UTC).Format("15:04")
		if args[1] == "7 US gal" {
			continue // a pot of less is not worth a fire
		}
		_, done, part := ended(t, b, append([]string{"-done-by", "22:00", "-start", late}, args...)...)
		if !(part < 0.95*sap) || done > by || by-done > 8 {
			t.Errorf("%q from %s: %v of %v gal, done %v min before 22:00", args, late, part, sap, by-done)
		}
	}
}
