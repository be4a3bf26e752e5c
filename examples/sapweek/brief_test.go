package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The first page stays small, and says of each day what to do.
func briefs(t *testing.T, b clitest.Binary) {
	const (
		at    = "-dir|testdata/bare|-weather|-|-today|"
		inv   = "-dir|testdata/grove|-today|2031-03-12|"
		house = "-today|2034-"
	)
	for _, c := range []told{
		{"", "", "Tomorrow, Mon Mar 13, runs: 27 F to 48 F.", ""},
		{"", "", "Fifth Gate is invented.", ""},
		{"", "", "Today, Sun Mar 12 runs (21 F to 41 F)", ""},
		{"-metric", "", "Tomorrow, Mon Mar 13, runs: -3 C to 9 C.", ""},
		// A cup fills in half of the 8 h of a thaw; the air passes 32 F on the way from 21 F
		// at 6:00 to 41 F at 15:00, as half a wave after 4.79 h.
		{inv, "", "Walk the pails today by 14:30 (if it pours; thaw 11:00)", ""},
		// By gravity 5 to 15 US gal of a tap in 46 running days: 6.5 to 19.6 of 60 taps.
		{inv, "", "Sap tomorrow 6 1/2 to 20 US gal (at most 120 US gal)", ""},
		{inv + "-pail|5 US gal", "", "Walk the pails no hurry", ""},
		{inv + "-round|48h", "", "Walk the pails sooner than every 48 h 00 min", ""},
		{inv + "-vacuum|20 inHg", "", "Sap tomorrow", "Walk"},
		{inv + "-days|1", "", "Today, Wed Mar 12, runs: 21 F to 41 F.", "Tomorrow"},
		// Sap of today is boiled by tomorrow; of 55 F today.
		{inv + "-storage|300 US gal", "", "Light the fire tomorrow evening at the latest", ""},
		{inv + "-storage|300 US gal|-sap-temp|55 F", "", "Light the fire this evening", ""},
		{inv + "-storage|300 US gal|-waiting|20 US gal|-waiting-age|24h", "", "Light the fire this evening", ""},
		{inv, "", "Light the fire this evening", ""}, // else two days of 120 overflow the tanks of 120
		{inv, "", "Tap or pull tap by Wed Mar 12 (if you have not; for the run of March 12)", ""},
		{inv + "-waiting|20 US gal", "", "Sap waiting now 20 US gal", ""},
		// At 42 F sap waits a day at most by the shortest of the sources.
		{inv + "-waiting|20 US gal|-waiting-age|24h", "", "(oldest first; 1 day old)", "look and smell"},
		{inv + "-waiting|20 US gal|-waiting-age|100h", "", "(look and smell first; 4 days old)", "oldest first"},
		// What stays frozen or is in bloom.
		{at + "2030-01-08", table(31, -20, 10), "Tomorrow, Wed Jan 9, stays frozen", "at most"},
		{at + "2030-01-08", table(31, -20, 10), "Light the fire not in these days", ""},
		// Sap that may wait until tomorrow is all there then, though a fire this evening would
		// have boiled it.
		{at + "2030-01-08|-waiting|10 US gal|-boil-rate|8 US gal/h", table(31, -20, 10), "min; 10 US gal)", ""},
		{at + "2030-01-08|-waiting|10 US gal|-boil-rate|8 US gal/h", table(31, -20, 10), "Light the fire tomorrow evening at the latest", ""},
		{at + "2030-01-08", table(31, 55, 80), "Tap or pull pull the spouts (silver maple is in full bloom)", ""},
		{at + "2030-01-02", table(31, 55, 80), "Tap or pull pull on Thu Jan 3", ""},
		{at + "2030-01-08", table(31, 31, 44), "may run, it is close", ""}, // 29.2 F a degree C colder
		{at + "2030-01-08", table(31, 29, 44), "runs, but it is close", ""},
		{at + "2030-01-08", table(31, 35, 44), "does not run", ""},
		// The invented sugarhouse by hand. On March 9 15 1/4 in of 2.5 US gal came and on the
		// 10th 41; 44 were boiled that evening: 35.1 wait. On February 27 31 came and no fire
		// burned. On March 11 all was boiled.
		{house + "03-10", "", "Sap waiting now 36 US gal (oldest first)", "days old"},
		{house + "02-27", "", "Sap waiting now 31 US gal (oldest first)", ""},
		{house + "02-27", "", "Light the fire tomorrow evening at the latest", ""},
		{house + "03-12", "", "Tap or pull leave in (holes dry about Sat Mar 25)", "waiting"}, // Feb 25 and 28 days
		{house + "03-11", "", "Walk the pails tomorrow by", "waiting"},                        // what came that day stands in the record
		{house + "03-12", "", "sap of a running day from 39 gatherings", ""},
		{house + "03-12", "", "Sap tomorrow 23 US gal (8 in 10: 7 to 54 US gal; in 7 days likely", "at most"},
		// Sugar is at 1.1 of 1.7 Brix and the nights of March 28 to 30 did not freeze; both
		// warn. On April 8 the warmth of the days ahead is past the 42 of full bloom.
		{house + "03-30", "", "Tap or pull leave in, but the end is near (nights without frost, sugar; smell the steam)", "holes dry"},
		{house + "04-08", "", "Tap or pull pull on Mon Apr 10", ""},
		{house + "02-10", "", "Sap tomorrow 0 US gal", "8 in 10"},
		// The 12 gal that stood cloudy on March 26 were thrown out: nothing waits, and nothing is guessed gone.
		{house + "04-10", "", "pull the spouts", "gone"},
		{"-today|2034-02-10", "", "Tap or pull wait to tap until", "waiting"},
		{"-set|fire: under a roof", "", "Carbon monoxide", ""},
	} {
		args := strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })
		page, _ := b.Brief(t, c.stdin, args...)
		if !strings.Contains(flat(page), c.want) || c.not != "" && strings.Contains(page, c.not) {
			t.Errorf("%s: want %q and not %q\n%s", c.args, c.want, c.not, page)
		}
	}
}
