package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// The invented sugarhouse on April 6: the page sums 28 F degree-days of warmth, past
// the 17 that warn of red maple and short of the 34 that warn of sugar maple. Four
// nights did not freeze, and sap first came 40 days ago.
func endOfSeason(t *testing.T, b clitest.Binary) {
	for _, c := range []struct {
		args []string
		want string
	}{
		{nil, "warmth near 28 F deg-days 17 to 34"},
		{[]string{"-buds", "sugar maple"}, "warmth no sign 28 F deg-days 34 to 44"},
		{nil, "nights without frost near 4 nights 3"},
		{nil, "age of the holes near 40 days 21 to 42"},
		{[]string{"-vacuum", "20 inHg"}, "age of the holes no sign 40 days 56 to 63"},
		{nil, "is never tasted"},
		{nil, "At the end of these days 27.7"}, // today is in it
	} {
		status, out, errs := b.Run(t, "", append([]string{"-today", "2034-04-06", "-days", "1", "-full"}, c.args...)...)
		if status != 0 {
			t.Fatal(errs)
		}
		if !strings.Contains(flat(out), c.want) {
			t.Errorf("%v: no %q in\n%s", c.args, c.want, out)
		}
	}
}
