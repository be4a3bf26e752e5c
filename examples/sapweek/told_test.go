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
	} {
		c.check(t, b)
	}
}
