package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The 62 taps of the demo by hand. By gravity they give 310 to 930 gal, worth 124 to
// 372 at 0.40; 40 rounds of an hour at 8 and 30 leave -226 to 22. The pump: twice the
// sap at 5 % an inch is 620 gal, and 2.51^(20/16.5) = 3.051 times is 2838 at the high
// end; 248 and 1135 less 10 hours and 250 leave -82 and 805. So 2500 are back after
// 2500/783 = 3.2 to 2500/144 = 17.4 seasons. A line of 12.4 inHg gives by gravity in
// the poor season: 124 less 13.3 hours and 90 leave -73, 153 more than the pails.
func gears(t *testing.T, b clitest.Binary) {
	const file = "gear,minutes,first,yearly,vacuum_inhg,drop_ft,pail_us_gal,taps_per_pail,clean_pct\n" +
		"pails,60,0,30,,,2,2,\nline,20,700,90,,14,,,\npump,15,2500,250,20,,,,\nold pump,15,0,150,20,,,,50\n"
	args := []string{"-gear-file", "-", "-full", "-sap-worth", "0.40", "-hour-worth", "8", "-flow-days", "40"}
	status, out, errs := b.Run(t, file, args...)
	if status != 0 {
		t.Fatal(errs)
	}
	page := flat(out)
	for _, want := range []string{
		"pails 310 to 930 US gal 40 h", "days -226 to 22 -", "line 310 to 1900 US gal 13 h - -73 to 548 after 1.3 to 4.6",
		"pump 620 to 2800 US gal 10 h - -82 to 805 after 3.2 to 17.4", "old pump 310 to 1400 US gal 10 h - -106 to 338 at once",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("no %q in\n%s", want, out)
		}
	}
	for _, bad := range []struct{ row, want string }{
		{"a,60,0,30,20,14,,,", "-:2: column drop_ft: a pump or a falling line"},
		{"a,60,0,30,29,,,,", "-:2: column vacuum_inhg: vacuum 29 inHg"},
		{"a,1441,0,30,,,,,", "-:2: column minutes: minutes of walking"},
		{"a,60,-1,30,,,,,", "-:2: gear 1: money to begin -1 is outside"},
		{"a,60,0,30,,,2,1.5,", "-:2: column taps_per_pail: whole taps"},
		{"a,60,0,30,,,0,,", "-:2: column pail_us_gal: what a pail holds"},
		{"a,60,0,30,,,,,120", "-:2: gear 1: sap of new spouts and lines 120 %"},
	} {
		head, _, _ := strings.Cut(file, "\n")
		if status, _, errs := b.Run(t, head+"\n"+bad.row+"\n", args...); status != 2 || !strings.Contains(errs, bad.want) {
			t.Errorf("%s: no %q in %q", bad.row, bad.want, errs)
		}
	}
}
