package main

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/internal/cli/clitest"
)

// table is a weather file of like days from January 1, 2030 on.
func table(n, low, high int) string { return "date,tmin_f,tmax_f\n" + rest("2030-01-01", n, low, high) }

// rest is more such days.
func rest(from string, n, low, high int) string {
	var b strings.Builder
	day, err := time.Parse(time.DateOnly, from)
	for range n {
		fmt.Fprintf(&b, "%s,%d,%d\n", day.Format(time.DateOnly), low, high)
		day = day.AddDate(0, 0, 1)
	}
	if err != nil {
		return err.Error()
	}
	return b.String()
}

// A told is a page that must say something, and not something else.
type told struct{ args, stdin, want, not string }

func (c told) check(t *testing.T, b clitest.Binary) {
	t.Helper()
	_, out, errs := b.Run(t, c.stdin, strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })...)
	if page := flat(out); !strings.Contains(page, flat(c.want)) || c.not != "" && strings.Contains(page, c.not) {
		t.Errorf("%s: want %q and not %q\n%s%s", c.args, c.want, c.not, errs, out)
	}
}

// What the page does not know or what cannot be, it says.
func limits(t *testing.T, b clitest.Binary) {
	const at = "-weather|-|-today|"
	for _, c := range []told{
		// 0.722/0.028 = 25.8 events are the top of the curve.
		{at + "2030-01-22", table(31, 20, 40), "21 0.0 F degree-days 0.98 yes", ""},
		{at + "2030-01-22", table(31, 20, 40), "28 0.0 F degree-days - not told", "0.00 no"},
		{at + "2030-01-22", table(31, 20, 40), "past 25 events", ""},
		{at + "2030-01-08", table(31, 20, 40), "where the paper begins to count was not seen", "past 25 events"},
		// Whole days of frost: by a degree C (1.8 F) off, a high of 30 F may thaw.
		{at + "2030-01-08", table(31, -20, 10), "The season not on: all of these days stay frozen", ""},
		{at + "2030-01-08", table(31, -20, 10), "In all these days 0 US gal (0 L)", "no 0 to"},
		{at + "2030-01-08", table(31, -20, 10), "Tue Jan 8 no, frozen 0 US gal 0 US gal", " a day that does not run by"},
		{at + "2030-01-08", table(31, -20, 10), "drill on none of these days (", "is dry by"},
		{at + "2030-01-08", table(31, 10, 31), "Tue Jan 8 no 0 to 0.16 US gal", ", frozen"},
		{at + "2030-01-08|-night-below|20 F|-day-above|25 F", table(31, 10, 28), "Tue Jan 8 yes 0.054 to 1.", ", frozen"},
		{at + "2030-01-03", table(2, 20, 40) + rest("2030-01-03", 7, -20, 10), "Thu Jan 3 no, frozen", ""},
		// 55 and 80 F add 17.5 F degree-days a day: 35 after 2 days, 52.5 after 3.
		{at + "2030-01-08", table(31, 55, 80), "The season over by the bloom of silver maple: pull the spouts", ""},
		{at + "2030-01-08", table(31, 55, 80), "In all these days 0 US gal (0 L)", ""},
		{at + "2030-01-08", table(31, 55, 80), "Jan 14 (but too late to tap: silver maple flowers", ""},
		{at + "2030-01-02", table(31, 55, 80), "The season over from Jan 3 on, by the bloom of silver maple", ""},
		{at + "2030-01-02", table(31, 55, 80), "Wed Jan 2 no 0 to 0.16 US gal", ""},
		{at + "2030-01-02", table(31, 55, 80), "Thu Jan 3 no, in bloom 0 US gal 0 US gal", ""},
		{at + "2030-01-02", table(31, 55, 80), "Jan 8 (but late to tap: silver maple begins to flower in these days", "too late"},
		{at + "2030-01-08", table(7, 55, 80) + rest("2030-01-08", 7, 20, 40), "Tue Jan 8 yes, in bloom 0.054 to 1.", "The season not"},
		{at + "2030-01-08", table(31, 20, 40), "A hole of Jan 8 is dry by Tue Feb 5 to Tue Feb 19", "late to tap"},
		// The drill waits for January 3: 28 days are to the end of the month.
		{at + "2030-01-01", table(2, -20, 10) + rest("2030-01-03", 7, 20, 40), "A hole of Jan 3 is dry by Thu Jan 31 to Thu Feb 14", "Jan 1 is dry"},
		{at + "2030-01-08|-history|testdata/weather.csv", table(31, 20, 40), "No spring of -history is whole: give all days of January to June", "look at -criterion"},
	} {
		c.check(t, b)
	}
}

// The way out of a day in the wrong half of the year goes to whoever told it:
// without -today that is the computer.
func TestSpring(t *testing.T) {
	fall, spring := time.Date(2031, time.November, 25, 0, 0, 0, 0, time.UTC), time.Date(2031, time.March, 1, 0, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		today       time.Time
		south, told bool
		want        string
	}{
		{spring, false, false, ""},
		{fall, true, true, ""},
		{fall, false, false, "2031-11-25 is not in the half-year of the season, which begins with January: give -today, the first of the days ahead"},
		{fall, false, true, "in the south give -south"},
		{spring, true, true, "in the north leave out -south"},
		{spring, true, false, "begins with July: give -today"},
	} {
		_, err := (&setup{south: c.south}).spring(c.today, c.told)
		if got := fmt.Sprint(err); (err == nil) != (c.want == "") || !strings.Contains(got, c.want) {
			t.Errorf("%v south %t told %t: %v", c.today, c.south, c.told, err)
		}
	}
}
