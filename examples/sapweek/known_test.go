package main

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A sapDay is a row of a weather file, in whole degrees F.
type sapDay struct {
	date      string
	low, high float64
}

// rows reads the days of a weather file whose date begins so, without the library.
func rows(t *testing.T, file, begins string) (days []sapDay) {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range all[1:] {
		if row[1] == "" || !strings.HasPrefix(row[0], begins) {
			continue
		}
		low, err := strconv.Atoi(row[1])
		if err != nil {
			t.Fatal(err)
		}
		high, err := strconv.Atoi(row[2])
		if err != nil {
			t.Fatal(err)
		}
		days = append(days, sapDay{row[0], float64(low), float64(high)})
	}
	return days
}

// runs is Skinner's sap-flow day in whole degrees F: below -1.1 C (30.02 F) and
// above 2.2 C (35.96 F).
func (d sapDay) runs() bool { return d.low <= 30 && d.high >= 36 }

// demo is what this test looks at of the JSON.
type demo struct {
	Days struct {
		Running, Running_colder, Running_warmer float64
	}
	Standing struct {
		So_far float64
		Weeks  []struct {
			From                string
			Events, Probability float64
		}
	}
	Sap struct {
		Flow_days float64
		Ahead     []struct {
			Day, Runs  string
			Tap_us_gal [2]float64
			Sap_us_gal [2]float64
		}
	}
	Pails struct {
		Rounds []struct {
			Answer      string
			Then_us_gal [2]float64
		}
	}
	Evenings struct {
		High []struct {
			Spilled_us_gal, Boiled_us_gal, Waiting_us_gal, Overdue_us_gal float64
		}
		Spill, Overdue string
	}
	Stores struct {
		Syrup_us_gal  [2]float64
		Middle_us_gal float64
		Containers    float64
	}
}

func reckonedAnew(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "", grove("-json")...)
	if status != 0 {
		t.Fatal(errs)
	}
	var page struct{ Parts demo }
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
	d := page.Parts
	near := func(what string, got, want, within float64) {
		t.Helper()
		if !(math.Abs(got-want) <= within) {
			t.Errorf("%s: %v, want %v to %g", what, got, want, within)
		}
	}

	// Days that run, by counting rows. A degree C is 1.8 F: then 31 F and 28 F are
	// the warmest lows, and 38 F and 34 F the coolest highs.
	weather := rows(t, "testdata/grove/weather.csv", "2031")
	var soFar, ahead, colder, warmer float64
	for _, d := range weather {
		switch {
		case d.date < groveToday:
			soFar += count(d.runs())
		case d.date < "2031-03-19":
			ahead += count(d.runs())
			colder += count(d.low <= 31 && d.high >= 38)
			warmer += count(d.low <= 28 && d.high >= 35)
		}
	}
	near("running days so far", d.Standing.So_far, soFar, 0)
	near("running days ahead", d.Days.Running, ahead, 0)
	near("running days if colder", d.Days.Running_colder, colder, 0)
	near("running days if warmer", d.Days.Running_warmer, warmer, 0)

	// Houle et al. 2015, eq. 1-2, from events over and under 3 C (37.4 F) and
	// warmth over 5 C (41 F).
	if len(d.Standing.Weeks) != 3 {
		t.Fatalf("%d weeks", len(d.Standing.Weeks))
	}
	var n, g float64
	for _, day := range weather {
		if day.date > "2031-03-18" {
			break
		}
		n += count(day.low <= 37 && day.high >= 38)
		g += max(0, (day.low+day.high)/2-41) / 1.8
	}
	week := d.Standing.Weeks[2]
	near("events", week.Events, n, 0)
	near("probability", week.Probability, 1/(1+math.Exp(-(-5.09+0.722*n-0.014*n*n-0.07*g))), 1e-8)

	// The median of the springs, but for that of the broken thermometer.
	springs := map[string]float64{}
	for _, day := range rows(t, "testdata/grove/weather.csv", "20") {
		if year := day.date[:4]; year != "2027" && year != "2031" {
			springs[year] += count(day.runs())
		}
	}
	var flow []float64
	for _, n := range springs {
		flow = append(flow, n)
	}
	slices.Sort(flow)
	median := flow[len(flow)/2]
	near("running days of a season", d.Sap.Flow_days, median, 0)

	// A tap gives 5 to 15 US gal a season by gravity (extension leaflets, from
	// memory). The best fifth of the days gives 74 % of it (Kurokawa et al. 2024),
	// the others 26 % on four fifths. 60 taps.
	for i, day := range d.Sap.Ahead {
		low, high := 5/median*0.26/0.8, max(2, 15/median*0.74/0.2) // 2 US gal from memory: the best day
		if day.Runs == "no" {
			low, high = 0, 15/median*0.26/0.8
		}
		near(day.Day+" low", day.Tap_us_gal[0], low, 1e-8)
		near(day.Day+" high", day.Tap_us_gal[1], high, 1e-8)
		near(day.Day+" low of all", day.Sap_us_gal[0], 60*low, 1e-6)
		near(day.Day+" high of all", day.Sap_us_gal[1], 60*high, 1e-6)

		// Two taps to a pail of 2 US gal.
		want := "lasts"
		if 2*high > 2 {
			want = "may overflow"
		}
		if got := d.Pails.Rounds[i]; got.Answer != want {
			t.Errorf("pail of %s: %s, want %s", day.Day, got.Answer, want)
		}
		near(day.Day+" pail", d.Pails.Rounds[i].Then_us_gal[1], min(2, 2*high), 1e-8)
	}
	firstEvenings(t, d, near)

	// 6.3 of 30 taps, 9.2 of 34, 6.8 of 36 and 10 of 40 are 0.21, 0.2706, 0.1889
	// and 0.25 US gal a tap. 60 times the greatest, in pints with 5 % spare.
	near("least syrup", d.Stores.Syrup_us_gal[0], 60*6.8/36, 1e-6)
	near("middle syrup", d.Stores.Middle_us_gal, 60*0.23, 1e-6)
	near("most syrup", d.Stores.Syrup_us_gal[1], 60*9.2/34, 1e-6)
	near("pints", d.Stores.Containers, math.Ceil(60*9.2/34*8*1.05), 0)
}

// firstEvenings reckons the first two evenings of the high end by mass. In 4 h 30 min
// of boiling 8 US gal/h, 36 US gal of water go off, each of 8.330 lb (998.2 kg/m3
// at 20 C). Sap of 3.0 Brix loses 1 - 3/66.9 of its weight; a US gallon of it at
// 42 F weighs 8.444 lb (1.0117 of water at 20 C, ICUMSA, and 0.0018 denser for the
// cold). That leaves out how the boiling point climbs: 1 percent of what is boiled.
func firstEvenings(t *testing.T, d demo, near func(what string, got, want, within float64)) {
	t.Helper()
	boiled := 36 * 8.330 / (1 - 3/66.9) / 8.444
	within := 0.01 * boiled
	come := d.Sap.Ahead[0].Sap_us_gal[1]
	first := come - boiled
	high := d.Evenings.High
	near("boiled on the first evening", high[0].Boiled_us_gal, boiled, within)
	near("waiting after the first", high[0].Waiting_us_gal, first, within)
	// From the second day on the tanks of 120 US gal are full; at 42 F sap may wait
	// 24 h: what is left of the first day after the second evening has waited longer.
	near("runs over on the second", high[1].Spilled_us_gal, first+come-120, 2*within)
	near("waiting after the second", high[1].Waiting_us_gal, 120-boiled, within)
	near("too old after the second", high[1].Overdue_us_gal, first-boiled, 3*within)
	for _, first := range []string{d.Evenings.Spill, d.Evenings.Overdue} {
		if first != "first on Thu Mar 13" {
			t.Errorf("trouble %s", first)
		}
	}
}

func count(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
