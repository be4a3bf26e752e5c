package folder

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/units"
)

// taught opens a folder with these days and returns what it teaches, as name,
// value and from what.
func taught(t *testing.T, settings, days string, season int) (all map[string]string, remarks []string) {
	t.Helper()
	h, err := Open(fstest.MapFS{
		SettingsFile: {Data: []byte("gallons: US\nbarrow: 1/50 cord\n" + settings)},
		DaysFile:     {Data: []byte("date,sap_gal,sugar_brix,boiled_gal,lit,out,syrup_gal,wood\n" + days)},
	}, "here", season)
	if err != nil {
		t.Fatal(err)
	}
	lessons, remarks := h.Learned()
	all = map[string]string{}
	for _, l := range lessons {
		all[l.Name] = l.Value + " from " + l.From
		for _, f := range l.Fills {
			if f.Text == "" || l.From == "" {
				t.Errorf("%+v", l)
			}
		}
	}
	return all, remarks
}

// Four boils put 10, 10, 11 and 10 gallons of sap of 2 Brix an hour through the
// pan. Of a gallon of 2 Brix 1 - 2/66.9 = 0.970 goes off, so the rate is 9.70. A
// fifth, of 60 gallons in half an hour, is a slip of the pen: it is told and left
// out.
func TestLearnRate(t *testing.T) {
	const days = "2034-03-01,20,2,10,17:00,18:00,,\n2034-03-02,30,,20,17:00,19:00,,\n2034-03-04,40,2,33,16:00,19:00,,\n2034-03-05,,,10,23:30,0:30,,\n"
	got, remarks := taught(t, "", days, 0)
	if got["boils off"] != "9.7 US gal/h from 4 boils" || len(remarks) > 0 {
		t.Errorf("%q, %q", got, remarks)
	}
	got, remarks = taught(t, "", days+"2034-03-07,60,,60,17:00,17:30,,\n", 0)
	if !strings.HasSuffix(got["boils off"], " from 4 boils") || len(remarks) != 1 || !strings.HasPrefix(remarks[0], "here/days.csv:6: water went off at 12 times the usual rate: ") {
		t.Errorf("%q, %q", got, remarks)
	}
	// Two boils teach nothing, and the season before then does.
	got, _ = taught(t, "", days+"2035-03-01,20,2,30,17:00,18:00,,\n2035-03-02,20,2,30,17:00,18:00,,\n", 0)
	if !strings.HasSuffix(got["boils off"], " from 4 boils of 2034") {
		t.Errorf("%q", got)
	}
	if got, _ = taught(t, "", "2034-03-01,20,2,10,17:00,18:00,,\n2034-03-02,30,,20,17:00,19:00,,\n", 0); got["boils off"] != "" {
		t.Errorf("%q", got)
	}
}

// Ten gallons of sap of 2 Brix weigh 84.1 lb (8.345 lb of water a gallon at 40 F,
// 1.0077 times as dense): 81.6 lb of water go off, and every pound takes 404,680 /
// 353.22 = 1146 Btu, as of [boil.Heat]: 93,500 Btu. A fiftieth of a cord of sugar
// maple at 25 percent, 3144 x 1.25 / 50 = 78.6 lb of 6,216 Btu, holds 488,600 Btu
// net. The fire made 19.1 percent of it.
func TestLearnEfficiency(t *testing.T) {
	days := ""
	for d := 1; d <= 4; d++ {
		days += fmt.Sprintf("2034-03-%02d,10,2,10,17:00,18:00,,1\n", d)
	}
	for settings, want := range map[string]bool{"": true, "fuel: sugar maple, 25 %": true, "fuel: propane": false} {
		got, _ := taught(t, settings, days, 0)
		var percent float64
		if _, err := fmt.Sscanf(got["efficiency"], "%f %% from 4 boils", &percent); want && (err != nil || percent < 18.9 || percent > 19.3) || !want && got["efficiency"] != "" {
			t.Errorf("%q: %q", settings, got)
		}
	}
	// Wetter wood weighs more and gives less: the fire made more of what it gives.
	wet, _ := taught(t, "fuel: sugar maple, 60 %", days, 0)
	dry, _ := taught(t, "fuel: sugar maple, 10 %", days, 0)
	if !(wet["efficiency"] > dry["efficiency"]) {
		t.Errorf("%q, %q", wet, dry)
	}
}

// Of three days 24, 12 and 10 gallons by 10 taps the best gave a tap 2.4 gallons; 36
// and more would be three times the next best, and a slip.
func TestLearnBestDay(t *testing.T) {
	const days = "2034-03-01,12,,,,,,\n2034-03-02,10,,,,,,\n2034-03-03,9,,,,,,\n"
	if got, _ := taught(t, "taps: 10", days+"2034-03-04,24,,,,,,\n", 0); got["best day"] != "2.4 US gal from 4 days" {
		t.Errorf("%q", got)
	}
	got, remarks := taught(t, "taps: 10", days+"2034-03-04,120,,,,,,\n", 0)
	if got["best day"] != "1.2 US gal from 3 days" || len(remarks) != 1 || !strings.Contains(remarks[0], "days.csv:5: a tap gave 10 times as much") {
		t.Errorf("%q, %q", got, remarks)
	}
	// Two tanks of a day are one day.
	if got, _ := taught(t, "taps: 10", days+"2034-03-03,9,,,,,,\n", 0); got["best day"] != "1.8 US gal from 3 days" {
		t.Errorf("%q", got)
	}
	if got, _ := taught(t, "", days, 0); got["best day"] != "" {
		t.Errorf("nobody told the taps: %q", got)
	}
}

// The readings of the last three days that have some are 1.8, 2.2 and 2.0.
func TestLearnSugar(t *testing.T) {
	const days = "2034-03-01,9,2.6,,,,,\n2034-03-02,9,1.8,,,,,\n2034-03-03,9,,,,,,\n2034-03-04,9,2.2,,,,,\n2034-03-06,9,2.0,,,,,\n"
	if got, _ := taught(t, "", days, 0); got["sugar"] != "2.00 Brix from 3 readings" {
		t.Errorf("%q", got)
	}
	// Two tanks are read on the last day: 2.0 and 2.4 join 2.2 and 1.8, whose middle
	// is 2.1.
	if got, _ := taught(t, "", days+"2034-03-06,9,2.4,,,,,\n", 0); got["sugar"] != "2.10 Brix from 4 readings" {
		t.Errorf("%q", got)
	}
	// What stands in a later season does not count for this one.
	if got, _ := taught(t, "", days+"2035-03-01,9,3,,,,,\n", 2034); got["sugar"] != "2.00 Brix from 3 readings" {
		t.Errorf("%q", got)
	}
}

// What reads the sap is what the settings say. By the international table of 1936 a prism
// of 10 C has 0.50 taken off at 0 Brix and 0.54 at 5, so 0.52 at 2.52; one that
// compensates, or that stands at 20 C, has nothing taken off. A hydrometer marked at 38 F
// has nothing either, where nobody tells how warm the cup was.
func TestTrueSap(t *testing.T) {
	cold, unknown := units.Celsius(10), units.Celsius(math.NaN())
	for _, c := range []struct {
		settings string
		at       units.Temperature
		want     float64
	}{
		{"sap refractometer: plain", cold, 2.00}, {"sap refractometer: plain", units.Celsius(20), 2.52}, {"sap refractometer: plain", unknown, 2.52},
		{"sap refractometer: compensated", cold, 2.52}, {"sap refractometer: compensated", units.Celsius(4), 2.52}, {"sap hydrometer: marked at 38 F", unknown, 2.52},
	} {
		h, err := Open(fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\n" + c.settings + "\n")}}, "", 0)
		if err != nil {
			t.Fatal(err)
		}
		if got, err := h.Settings.TrueSap(2.52, c.at); err != nil || math.Abs(float64(got)-c.want) > 0.03 { // as the table's tolerance
			t.Errorf("%s at %v: %v, %v", c.settings, c.at, got, err)
		}
	}
}

// Before the first reading of 2035 the sap is as sweet as that of all of 2034, whose
// readings are 1.4, 1.6, 2.0, 2.4 and 2.6, and not as that of its last days, 1.6; and
// ten taps of the settings gave 2 of 20 gallons on its best day, though no hole is written
// down. Two readings of the new season count alone; 2034 is not looked at.
func TestLearnNextYear(t *testing.T) {
	const days = "2034-03-01,20,2.6,,,,,\n2034-03-02,9,2.4,,,,,\n2034-03-03,9,2.0,,,,,\n2034-03-04,9,1.6,,,,,\n2034-03-06,9,1.4,,,,,\n"
	for season, want := range map[int]string{2034: "1.60 Brix from 3 readings", 2035: "2.00 Brix from 5 readings of 2034", 2039: ""} {
		if got, _ := taught(t, "taps: 10", days, season); got["sugar"] != want || got["taps"] != "" || got["best day"] != "2 US gal from 5 days" {
			t.Errorf("%d: %q", season, got)
		}
	}
	got, _ := taught(t, "taps: 10", days+"2035-03-01,9,3,,,,,\n2035-03-02,9,2.8,,,,,\n", 0)
	if got["sugar"] != "2.90 Brix from 2 readings" {
		t.Errorf("%q", got)
	}
	// Two days with readings are no season.
	if got, _ = taught(t, "", "2034-03-01,20,2.6,,,,,\n2034-03-02,9,2.4,,,,,\n", 2035); got["sugar"] != "" {
		t.Errorf("%q", got)
	}
}

// The figures are in the units of the pages: 2 of 20 gallons are 7.57 L, and boils of
// 400 gallons an hour, less the 3 parts of 100 that stay as syrup, 1470 L.
func TestLearnMetric(t *testing.T) {
	days := ""
	for _, day := range []string{"01", "04", "07"} {
		days += "2034-03-" + day + ",20,2.0,400,14:00,15:00,,\n"
	}
	got, _ := taught(t, "units: metric\ntaps: 10", days, 0)
	if got["best day"] != "7.57 L from 3 days" || got["boils off"] != "1470 L/h from 3 boils" {
		t.Errorf("%q", got)
	}
}

// Where no setting tells the taps, the holes of last year do: three.
func TestLearnTaps(t *testing.T) {
	for settings, want := range map[string]string{"gallons: US\n": "3 from the holes of 2034", "gallons: US\ntaps: 9\n": ""} {
		h, err := Open(fstest.MapFS{
			SettingsFile: {Data: []byte(settings)},
			HolesFile:    {Data: []byte("tree,year,bearing_deg,height_in,bit_in,depth_in\nA,2033,10,40,5/16,1.5\nA,2034,90,40,5/16,1.5\nB,2034,80,40,5/16,1.5\nC,2034,80,40,5/16,1.5\n")},
		}, "here", 2035)
		if err != nil {
			t.Fatal(err)
		}
		got := ""
		lessons, _ := h.Learned()
		for _, l := range lessons {
			if l.Name == "taps" {
				got = l.Value + " from " + l.From
			}
		}
		if got != want {
			t.Errorf("%q: %q, not %q", settings, got, want)
		}
	}
}

// Forty gallons of a day are 20 of a tap if 2 holes are all of 2033: more than any tap
// gives. Then they do not count as its taps, neither for the best day nor for the next
// year, and a doubt is told. Four holes, 10 gallons of each, are let pass.
func TestDoubtHoles(t *testing.T) {
	const hole = "A,2033,10,40,5/16,1.5\n"
	for n, want := range map[int]int{2: 0, 4: 4} {
		h, err := Open(fstest.MapFS{
			SettingsFile: {Data: []byte("gallons: US\n")},
			HolesFile:    {Data: []byte("tree,year,bearing_deg,height_in,bit_in,depth_in\n" + strings.Repeat(hole, n))},
			DaysFile:     {Data: []byte("date,sap_gal\n2033-03-01,25\n2033-03-01,15\n2033-03-02,4\n2033-03-03,4\n2034-03-01,9\n")},
		}, "hill", 0)
		if err != nil {
			t.Fatal(err)
		}
		learned := false
		lessons, _ := h.Learned()
		for _, l := range lessons {
			learned = learned || l.Name == "taps" || l.Name == "best day"
		}
		doubts := h.Doubts()
		if got := h.Taps(2033); got != want || learned != (want > 0) || len(doubts) != 1-want/4 {
			t.Errorf("%d holes: %d taps, learned %v, doubts %q", n, got, learned, doubts)
		}
		for _, doubt := range doubts {
			if doubt != "hill/holes.csv: too few holes of 2033 for the sap of their days. Write down all, or the taps into seasons.csv." {
				t.Errorf("%s", doubt)
			}
		}
	}
}

// A gallon of 2 Brix sap takes some 9,500 Btu to syrup (8.59 lb, 7 of it water driven
// off near 970 Btu/lb and all warmed by 170 F), 30 gallons 285,000. Half a cord of sugar
// maple at 25 % has about 10 million: 3 %, and a fifth of that wood 14 %.
func TestDoubtWood(t *testing.T) {
	for wood, want := range map[string]bool{"1/2 cord": true, "1/10 cord": false} {
		days := ""
		for _, day := range []string{"01", "04", "07"} {
			days += "2034-03-" + day + ",30,2,14:00,18:00," + wood + "\n"
		}
		h, err := Open(fstest.MapFS{
			SettingsFile: {Data: []byte("gallons: US\n")},
			DaysFile:     {Data: []byte("date,boiled_gal,sugar_brix,lit,out,wood\n" + days)},
		}, "", 0)
		if err != nil {
			t.Fatal(err)
		}
		got := h.Doubts()
		if (len(got) == 1) != want || want && !strings.HasPrefix(got[0], "days.csv: the sap took 2.") && !strings.HasPrefix(got[0], "days.csv: the sap took 3") {
			t.Errorf("%s: %q", wood, got)
		}
	}
}

// A fifth of a cord made 2 gallons in 2033: 10 to the cord. This season's own wood
// is not all burned.
func TestLearnSyrupByCord(t *testing.T) {
	const days = "2033-03-01,,,,,,1.5,4\n2033-03-05,,,,,,0.5,6\n2034-03-01,,,,,,1,20\n"
	if got, _ := taught(t, "", days, 0); got["syrup to the cord"] != "10 US gal from 2033" {
		t.Errorf("%q", got)
	}
}

// Seasons whose days were written down stand beside those told in a row, whose taps
// nobody tells twice.
func TestPastSeasons(t *testing.T) {
	h, err := Open(fstest.MapFS{
		SettingsFile: {Data: []byte("gallons: US\ntaps: 60\n")},
		SeasonsFile:  {Data: []byte("year,taps,syrup_gal\n2030,30,6\n2031,32,7\n2033,44,9\n")},
		HolesFile:    {Data: []byte("tree,year,bearing_deg,height_in,bit_in,depth_in\nA,2032,10,40,5/16,1.5\nA,2032,90,40,5/16,1.5\nB,2033,80,40,5/16,1.5\n")},
		DaysFile:     {Data: []byte("date,syrup_gal\n2029-03-01,2\n2032-03-01,1\n2032-03-09,0.5\n2033-03-01,8\n2034-03-01,2\n")},
	}, "here", 0)
	if err != nil {
		t.Fatal(err)
	}
	var got strings.Builder
	for _, s := range h.PastSeasons() {
		fmt.Fprintf(&got, "%d %d %.1f, ", s.Year, s.Taps, s.Syrup.USGallons())
	}
	if got.String() != "2030 30 6.0, 2031 32 7.0, 2032 2 1.5, 2033 44 9.0, " {
		t.Errorf("%s", got.String())
	}
	if h.Taps(2034) != 60 || h.Taps(2033) != 1 || h.Taps(2031) != 32 || h.Taps(2020) != 0 {
		t.Errorf("%d, %d, %d, %d", h.Taps(2034), h.Taps(2033), h.Taps(2031), h.Taps(2020))
	}
}
