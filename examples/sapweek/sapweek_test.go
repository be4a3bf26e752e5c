package main

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestSapweek(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("briefs", func(t *testing.T) { briefs(t, b) })
	t.Run("reckoned anew", func(t *testing.T) { reckonedAnew(t, b) })
	t.Run("one content", func(t *testing.T) { oneContent(t, b) })
	t.Run("words", func(t *testing.T) { words(t, b) })
	t.Run("limits", func(t *testing.T) { limits(t, b) })
	t.Run("few seasons", func(t *testing.T) { fewSeasons(t, b) })
	t.Run("end", func(t *testing.T) { endOfSeason(t, b) })
	t.Run("warmth", func(t *testing.T) { warm(t, b) })
	// By its name the test is linked to all of the program: go test would else hold
	// an old answer for good, since what the built binary is made of is not seen.
	b.Refuses(t, program().Name, badInput())
}

// grove is a call that reads the invented grove of these tests on a day of it.
func grove(args ...string) []string {
	return append([]string{"-dir", "testdata/grove", "-today", groveToday}, args...)
}

const groveToday = "2031-03-12"

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "demo-metric.txt", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "line.txt", grove("-full", "-taps", "200", "-drop", "14 ft", "-storage", "300 US gal",
		"-sap-temp", "36 F", "-sugar", "2.2 Brix", "-boil-rate", "25 US gal/h", "-efficiency", "45 %", "-days", "9")...)
	b.Golden(t, "help.txt", "-h", "-full")
}

// One season of one's own is told to be few.
func fewSeasons(t *testing.T, b clitest.Binary) {
	dir := t.TempDir()
	for name, content := range map[string]string{"sugarhouse.txt": "gallons: US\n", "seasons.csv": "year,taps,syrup_l\n2029,50,38\n", "days.csv": "date\n2031-03-01\n"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	_, out, errs := b.Run(t, "", "-dir", dir, "-weather", "testdata/grove/weather.csv", "-today", groveToday, "-full")
	if !strings.Contains(out, "So few seasons") {
		t.Errorf("%s%s", out, errs)
	}
}

// Page, metric page and JSON tell the same.
func oneContent(t *testing.T, b clitest.Binary) {
	var read [2]struct {
		Parts struct {
			Evenings struct {
				Storage_us_gal, Storage_l float64
				Peak_us_gal, Peak_l       [2]float64
			}
		}
	}
	for i, args := range [][]string{{"-json"}, {"-json", "-metric"}} {
		status, out, errs := b.Run(t, "", args...)
		if status != 0 {
			t.Fatal(errs)
		}
		if err := json.Unmarshal([]byte(out), &read[i]); err != nil {
			t.Fatal(err)
		}
	}
	if read[0] != read[1] {
		t.Errorf("%+v\n%+v", read[0], read[1])
	}
	e := read[0].Parts.Evenings
	for gallons, liters := range map[float64]float64{e.Storage_us_gal: e.Storage_l, e.Peak_us_gal[1]: e.Peak_l[1]} {
		if !(math.Abs(liters/gallons-3.785411784) < 1e-6) {
			t.Errorf("%v US gal are %v L", gallons, liters)
		}
	}
}

// Warmth of days at 50 and 54 F: 2 F degree-days each over 50 F by every method.
// 17 such days make the 34 of the first flowers. Days of December are not
// counted. Days at 40 and 64 F have the mean 52 F too, but by the sine wave q =
// asin(-2/12) = -0.16745 and (2 (pi/2 + 0.16745) + 12 cos q)/pi = 4.873 each: 8
// of them are 39.0, past the first flowers.
func warm(t *testing.T, b clitest.Binary) {
	days := "date,tmin_f,tmax_f\n2029-12-30,50,54\n2029-12-31,50,54\n"
	for i := 1; i <= 31; i++ {
		days += fmt.Sprintf("2030-01-%02d,50,54\n", i)
	}
	for _, c := range []struct{ today, now, end, want string }{
		{"2030-01-05", "8.0 F degree-days", "22.0 F degree-days", "not yet in these days"},
		{"2030-01-11", "20.0 F degree-days", "34.0 F degree-days", "it begins in these days"},
		{"2030-01-15", "28.0 F degree-days", "42.0 F degree-days", "in full bloom by then"},
	} {
		_, out, errs := b.Run(t, days, "-dir", "testdata/bare", "-full", "-weather", "-", "-today", c.today)
		for _, want := range []string{"Warmth so far " + c.now, "At the end of these days " + c.end, c.want} {
			if !strings.Contains(flat(out), want) {
				t.Errorf("%s: no %q: %s%s", c.today, want, errs, out)
			}
		}
	}
	told{"-weather|-|-today|2030-01-02", table(31, 40, 64), "Warmth so far 4.9 F degree-days", ""}.check(t, b)
	told{"-weather|-|-today|2030-01-02", table(31, 40, 64), "At the end of these days 39.0 F degree-days", "not yet in these days"}.check(t, b)
}

func flat(page string) string { return strings.Join(strings.Fields(page), " ") }

// What a page says at some times and not at others.
func words(t *testing.T, b clitest.Binary) {
	const (
		cold  = "date,tmin_f,tmax_f\n2030-01-01,-4,10\n2030-01-02,-4,12\n2030-01-03,20,40\n2030-01-05,20,40\n"
		south = "date,tmin_c,tmax_c\n2030-08-01,-4,6\n2030-08-02,-4,6\n"
		at    = "-weather|-|-today|"
	)
	for _, c := range []told{
		{"-heat|60000 Btu/h", "", "60000 Btu (63.30 MJ; into the liquid, as you say)", ""},
		{at + "2030-01-01", cold, "The forecast ends, or misses a day, after Thu Jan 3", ""},
		{at + "2030-01-01", cold, "If you have not tapped now: drill on January 3 (for the run of January 3", "Fri Jan 4"},
		{at + "2030-01-01|-days|2", cold, "If you have not tapped wait until January 3 (none of the days ahead runs", "The forecast ends"},
		{at + "2030-01-05", cold, "Days without figures 1", "week from"},
		{at + "2030-01-05", cold, "Every day without figures is missing in these sums", "Springs looked at"},
		{at + "2030-01-01", cold, "gravity figures, from memory of extension leaflets", "own past seasons"},
		{at + "2030-01-01", cold, "Mind: the sap of a tap is from memory", "with what the vacuum adds"},
		{at + "2030-01-01", cold, "a guess: give -history or -flow-days", ""},
		// 16 inHg: 5 % for each, and 2.51 to the power of 16/16.5.
		{at + "2030-01-01|-vacuum|16 inHg", cold, "That gives more by 80 to 140 %", "A pail holds"},
		{at + "2030-01-01|-vacuum|16.5 inHg", cold, "with what the vacuum adds", "air takes the vacuum away"},
		// 16 inHg of 18 ft: 2.51 to the power of 16/16.5 at the most.
		{at + "2030-01-01|-drop|18 ft", cold, "That gives more by 0 to 140 %", "A pail holds"},
		// 300 and 900 US gal of sap, 43.389 to one of syrup.
		{at + "2030-01-01|-sugar|2 Brix|-syrup|66 Brix", cold, "Syrup to expect 6.9 to 21 US gal", "thin sap"},
		// 1.825 and 2.51 times as much.
		{at + "2030-01-01|-sugar|2 Brix|-syrup|66 Brix|-vacuum|16.5 inHg", cold, "Syrup to expect 13 to 52 US gal", ""},
		{at + "2030-01-01|-history|HALF", cold, "Springs looked at 0", "past springs say"},
		{at + "2030-08-01|-south", south, "since July 1", "January"},
		{"-night-below|31 F|-day-above|45 F", "", "own: own criterion, a night below 31.0 F and a day above 45.0 F. Days that run", "your own."},
		{"-criterion|vigorous", "", "vigorous run, UVM)", ""},
		{"-sap-temp|55 F", "", "This sap waits above 50 F", ""},
		// No source gives hours (sap-keeping.csv, sap-microbes.csv): words, and the
		// shortest of the contradicting days. A day's sap fits the tank all the same.
		{"-sap-temp|55 F", "", "Sap may wait boil it today", "12 h"},
		{"-sap-temp|55 F", "", "for a day's sap", "12 h"},
		{"-sap-temp|45 F", "", "Sap may wait boil it by tomorrow", "this page's reading"},
		{"-sap-temp|36 F", "", "Sap may wait boil it by tomorrow", "This sap waits"},
		{"-sap-temp|36 F", "", "Look, then smell: throw away what is cloudy, ropy or sour, and never taste it.", "72 h"},
		{"-sap-temp|55 F|-metric", "", "This sap waits above 10 C", "50 F"},
		{"-metric", "", "A tap on the best day 7.6 L (2 US gal; from memory: give -peak)", "US gal a tap"},
		{"-keep|30h", "", "Sap may wait 30 h 00 min (as you say", ""},
		{"-part|end", "", "1.5 to 2.2 Brix (sugar maple, end of the season", ""},
		{"-species|boxelder", "", "2.2 to 2.8 Brix (boxelder", ""},
		{"-round|48h", "", "Sap that hangs for days", "full at the earliest"},
		{"-pail|5 US gal", "", "lasts", "Walk again"},
		{"-in-pails|2 US gal", "", "Wed Mar 12 2 US gal will overflow", ""},
		{"-in-pails|2 US gal", "", "Thu Mar 13 0.071 to 2 US gal may overflow", ""},
		{"-syrup-per-cord|8 US gal|-peak|3 US gal", "", "Wood 2 cord", "from memory: give -peak"},
		{"-waiting|60 US gal", "", "most on Wed Mar 12", ""},
		// What was gathered yesterday is a day old by the evening, and 37 of the 60 US
		// gal are boiled: the rest is too old at either end.
		{"-waiting|60 US gal|-waiting-age|24h", "", "Sap has waited too long first on Wed Mar 12 (at either end)", ""},
		{"-evening|0s|-warmup|0s", "", "Under fire 0 min", ""},
	} {
		c.check(t, b)
	}
}
