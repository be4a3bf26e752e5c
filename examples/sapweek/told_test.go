package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/internal/cli/clitest"
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
	args := strings.FieldsFunc(c.args, func(r rune) bool { return r == '|' })
	if i := slices.Index(args, "HALF"); i >= 0 { // of a spring
		args[i] = filepath.Join(t.TempDir(), "half.csv")
		if err := os.WriteFile(args[i], []byte(table(79, 20, 40)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if slices.Contains(args, "-weather") {
		args = append([]string{"-dir", "testdata/bare"}, args...)
	} else {
		args = grove(args...)
	}
	_, out, errs := b.Run(t, c.stdin, append(args, "-full")...)
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
		{at + "2030-01-08", table(31, -20, 10), "If you have not tapped wait until January 15 (none of the days ahead runs", "lasts to"},
		{at + "2030-01-08", table(31, 10, 31), "Tue Jan 8 no 0 to 0.16 US gal", ", frozen"},
		{at + "2030-01-08|-night-below|20 F|-day-above|25 F", table(31, 10, 28), "Tue Jan 8 yes 0.054 to 2 US gal", ", frozen"},
		{at + "2030-01-03", table(2, 20, 40) + rest("2030-01-03", 7, -20, 10), "Thu Jan 3 no, frozen", ""},
		// 55 and 80 F add 17.5 F degree-days a day: 35 after 2 days, 52.5 after 3.
		{at + "2030-01-08", table(31, 55, 80), "The season over by the bloom of silver maple: pull the spouts", ""},
		{at + "2030-01-08", table(31, 55, 80), "In all these days 0 US gal (0 L)", ""},
		{at + "2030-01-08", table(31, 55, 80), "If you have not tapped too late (by its warmth silver maple flowers", "Jan 14 ("},
		{at + "2030-01-02", table(31, 55, 80), "The season over from Jan 3 on, by the bloom of silver maple", ""},
		{at + "2030-01-02", table(31, 55, 80), "Wed Jan 2 no 0 to 0.16 US gal", ""},
		{at + "2030-01-02", table(31, 55, 80), "Thu Jan 3 no, in bloom 0 US gal 0 US gal", ""},
		{at + "2030-01-02", table(31, 55, 80), "If you have not tapped too late (within a week silver maple flowers", "drill on"},
		{at + "2030-01-08", table(7, 55, 80) + rest("2030-01-08", 7, 20, 40), "Tue Jan 8 yes, in bloom 0.054 to 2 US gal", "The season not"},
		{at + "2030-01-08", table(31, 20, 40), "A hole of Jan 8 lasts to Mon Feb 4", "too late ("},
		// The drill waits for January 3: its 28th day is January 30.
		{at + "2030-01-08|-hole-life|35", table(31, 20, 40), "A hole of Jan 8 lasts to Mon Feb 11", ""},
		{at + "2030-01-01", table(2, -20, 10) + rest("2030-01-03", 7, 20, 40), "A hole of Jan 3 lasts to Wed Jan 30", "Jan 1 lasts"},
		{at + "2030-01-08|-history|HALF", table(31, 20, 40), "No spring of -history is whole: give all days of January to June", "look at -criterion"},
		{"-night-below|0 C|-day-above|5 C|-metric", "", "own: own criterion, a night below 0.0 C and a day above 5.0 C.", ""},
		// By gravity the tank is for 2 US gal a tap. With a pump one of the best days of
		// 46 gives 15/46 x 0.74/0.2 = 1.207 US gal, 3.052 times as much at 20 inHg: 3.68
		// of a tap and 221 of 60. That of 14 ft is 2.002 times as much: 2.416 US gal or
		// 9.14 L a tap, 1829 L of 200.
		{"", "", "Tank 120 US gal (450 L; the best day, as in Sap to come; for", "a tap on"},
		{"-vacuum|20 inHg", "", "A tap on the best day 3.7 US gal (14 L; the mean of the best fifth of days of a good season: give -peak)", "from memory: give -peak"},
		{"-vacuum|20 inHg", "", "Tank 220 US gal (840 L", ""},
		{"-taps|200|-drop|14 ft|-metric", "", "Tank 1800 L (480 US gal", ""},
		{"-vacuum|20 inHg|-peak|3 US gal", "", "A tap on the best day 3 US gal (11 L; as you say)", ""},
		{"-vacuum|20 inHg|-peak|3 US gal", "", "to 180 US gal", ""},
		{"-vacuum|20 inHg|-peak|4 US gal", "", "Tank 240 US gal", ""},
		// A longer fall counts as one of 31.5 ft: 28 inHg, 2.51 to the power of 28/16.5 is 4.77.
		{"-drop|40 ft", "", "That gives more by 0 to 380 %", ""},
		{"-drop|40 ft", "", "A fall of more than 31.5 ft (9.6 m) counts as that", ""},
		// A winter of frost but for five days that run.
		{"-history|-", table(60, 0, 20) + rest("2030-03-02", 5, 20, 40) + rest("2030-03-07", 116, 0, 20), "Running days of a season 10 (median of 1 spring is 5: fewer than 10 bring less sap in all, and not more on a day)", ""},
		{"-species|silver maple|-part|end", "", "Sugar in it 1.7 Brix (silver maple; a mean of whole seasons, from memory: no range is known, and at the end there is less", ""},
		{"-water-boils|209.6 F|-elevation|1150 ft", "", "shows 0.3 F deg less, which the weather of most days explains: they agree.", ""},
		{"-water-boils|213.5 F|-elevation|1000 ft", "", "3.4 F deg more, which no weather explains", "they agree"},
		{"-water-boils|209.6 F", "", "by your thermometer in boiling water) Give -elevation beside -water-boils", "they agree"},
		{"-syrup|62 Brix", "", "below 66 Brix it ferments or molds in the jar", ""},
		{"-flow-days|46", "", "Running days of a season 46 (as you say)", "46.0"},
		// 8 US gal/h of 8.330 lb, each taking 970 Btu to steam and 170 to warm up.
		{"", "", "An hour of fire brings 76000 Btu (80 MJ;", ""},
		{"", "", "Under fire 3 h 03 min to 35 h 00 min", ""},
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
		_, err := (&setup{south: c.south}).spring(c.today, c.told, time.Time{})
		if got := fmt.Sprint(err); (err == nil) != (c.want == "") || !strings.Contains(got, c.want) {
			t.Errorf("%v south %t told %t: %v", c.today, c.south, c.told, err)
		}
	}
	if _, err := new(setup).spring(fall, false, spring); !strings.HasSuffix(fmt.Sprint(err), "such as the last day on record: -today 2031-03-01") {
		t.Error(err)
	}
}

// Of a past season the last day that was written down and has weather is named.
func TestPastSeason(t *testing.T) {
	b := clitest.Build(t)
	dir := clitest.Folder(t, map[string]string{
		"sugarhouse.txt": "gallons: US\ntaps: 20\n",
		"days.csv":       "date,sap_gal\n2030-03-09,10\n2030-03-11,10\n2031-03-02,5\n",
		"weather.csv":    "date,tmin_f,tmax_f\n2030-03-09,20,40\n2030-03-10,20,40\n2030-03-11,20,40\n2030-03-12,20,40\n2031-03-01,20,40\n",
	})
	for season, want := range map[string]string{"2030": "-today 2030-03-11, the last day on record", "2031": "-today 2031-03-01, the last day on record", "2029": "a day of 2029"} {
		if status, _, errs := b.Run(t, "", "-dir", dir, "-season", season); status != 2 || !strings.Contains(errs, want) {
			t.Errorf("%s: %d %s", season, status, errs)
		}
	}
	// 5 gal of March 2 are nine days old on the 11th, and no source lets sap wait so long: the
	// page asks after it.
	old := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "days.csv": "date,sap_gal\n2031-03-02,5\n",
		"weather.csv": "date,tmin_f,tmax_f\n2031-03-10,20,40\n2031-03-11,20,40\n2031-03-12,20,40\n"})
	page, _ := b.Brief(t, "", "-dir", old, "-today", "2031-03-11")
	if !strings.Contains(strings.Join(strings.Fields(page), " "), "Not counted: 5 US gal of sap over a week old. Sour, cloudy or ropy: pour it out untasted") {
		t.Error(page)
	}
}

// Who thinks in liters lays in half liters where no jar is told, and what is told stays.
func TestMetricJar(t *testing.T) {
	b := clitest.Build(t)
	for want, extra := range map[string]string{"(of 500 mL;": "", "(of 250 mL;": "jar: 250 mL\n"} {
		dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "units: metric\ntaps: 50\n" + extra, "weather.csv": table(79, 20, 40)})
		if status, out, errs := b.Run(t, "", "-dir", dir, "-today", "2030-03-11", "-full"); status != 0 || !strings.Contains(out, want) {
			t.Errorf("%d, no %s: %s\n%s", status, want, errs, out)
		}
	}
}
