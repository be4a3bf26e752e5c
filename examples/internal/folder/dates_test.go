package folder

import "testing"

// One line that turns all dates around is told, with what it makes of the first date
// that could be either: 3/4/2034 is April 3 where the day stands first, and March 4
// where the month does. Two lines that agree, or none in doubt, are not told.
func TestTurned(t *testing.T) {
	for text, want := range map[string]string{
		"3/4/2034\n3/5/2034\n14/3/2034\n":  "days.csv: dates are read day first, so that 3/4/2034 is April 3, by line 4 alone, 14/3/2034: if that is a slip, mend it; dates as 2034-04-03 leave no doubt",
		"3/4/2034\n3/14/2034\n3/14/2034\n": "days.csv: dates are read month first, so that 3/4/2034 is March 4, by line 3 alone, 3/14/2034: if that is a slip, mend it; dates as 2034-03-04 leave no doubt",
		"3/4/2034\n14/3/2034\n15/3/2034\n": "",
		"3/3/2034\n14/3/2034\n":            "",
		"2034-03-04\n14/3/2034\n":          "",
		"2034-03-04\n":                     "",
	} {
		h, err := house(DaysFile, "date\n"+text)
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		if all := h.Turned(); len(all) == 1 {
			got = all[0]
		} else if len(all) > 1 {
			t.Error(all)
		}
		if got != want {
			t.Errorf("%s: got %q\nwant %q", text, got, want)
		}
	}
}
