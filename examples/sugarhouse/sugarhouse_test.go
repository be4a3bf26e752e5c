package sugarhouse_test

import (
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"example.org/sapreckoner/examples/sugarhouse"
)

// rows reads a file without the readers that are built on this folder.
func rows(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := sugarhouse.Files().Open(name)
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
	var out []map[string]string
	for _, cells := range all[1:] {
		row := map[string]string{}
		for i, cell := range cells {
			row[all[0][i]] = cell
		}
		out = append(out, row)
	}
	return out
}

// number reads a cell such as 15 1/4; an empty one is nothing.
func number(t *testing.T, cell string) float64 {
	t.Helper()
	sum := 0.0
	for _, part := range strings.Fields(cell) {
		top, below, _ := strings.Cut(part, "/")
		x, err := strconv.ParseFloat(top, 64)
		if err == nil && below != "" {
			var y float64
			y, err = strconv.ParseFloat(below, 64)
			x /= y
		}
		if err != nil {
			t.Fatalf("%q: %v", cell, err)
		}
		sum += x
	}
	return sum
}

// gallon returns the pounds of a US gallon of a solution near 68 F: a curve
// through the density in g/mL at 0, 2, 12 and 67 Brix, 0.9982, 1.0060, 1.0465
// and 1.329 (Plato's table, from memory); a gallon of 1 g/mL weighs 8.3454 lb.
func gallon(brix float64) float64 {
	return 8.3454 * (0.99823 + brix*(0.00388+brix*1.59e-5))
}

// in reports whether a row is of a year.
func in(row map[string]string, column, year string) bool {
	return strings.HasPrefix(row[column], year+"-")
}

// TestBalance adds up the sugar of 2034 by hand: what was gathered is what was
// boiled and what was thrown out; what was boiled is what was drawn, what stands
// in the pan, and what was lost. The tanks are kept as one that is stirred.
func TestBalance(t *testing.T) {
	for _, year := range []struct {
		name        string
		held        float64 // pounds of sugar in the pan
		least, most float64 // percent of the boiled sugar that is lost
	}{
		{"2032", 0, 3, 8},
		{"2033", 0, 3, 8},
		// 3/4 in over 12 ft2 is 0.75 ft3, 5.610 gal; at 11.5 Brix of 8.72 lb: 5.63 lb.
		{"2034", 5.63, 3, 8},
	} {
		var gathered, boiled, thrown, sugarIn, sugarBoiled, stands, sweet float64
		var days []map[string]string
		for _, row := range rows(t, "days.csv") {
			if in(row, "date", year.name) {
				days = append(days, row)
			}
		}
		for i := 0; i < len(days); {
			date, fire, out := days[i]["date"], 0.0, 0.0
			for ; i < len(days) && days[i]["date"] == date; i++ {
				sap := number(t, days[i]["sap_gal"]) + 2.5*number(t, days[i]["dip_in"])
				brix := number(t, days[i]["sugar_brix"])
				lb := sap * gallon(brix) * brix / 100
				gathered, stands, sugarIn, sweet = gathered+sap, stands+sap, sugarIn+lb, sweet+lb
				fire += number(t, days[i]["boiled_gal"])
				out += number(t, days[i]["thrown_gal"])
			}
			if fire > stands+0.01 {
				t.Errorf("%s: %.2f gal boiled of %.2f", date, fire, stands)
			}
			if fire > 0 {
				part := sweet * min(1, fire/stands)
				boiled, stands, sugarBoiled, sweet = boiled+fire, stands-fire, sugarBoiled+part, sweet-part
			}
			if out > stands+0.5 { // as near as a dip is read
				t.Errorf("%s: %.2f gal thrown out of %.2f", date, out, stands)
			}
			if out > 0 {
				sweet -= sweet * min(1, out/stands)
				thrown, stands = thrown+out, stands-out
			}
		}
		// Half a gallon is as near as a dip is read.
		if off := gathered - boiled - thrown; !(math.Abs(off) < 0.5) {
			t.Errorf("%s: %.2f gal gathered, %.2f boiled, %.2f thrown out", year.name, gathered, boiled, thrown)
		}
		drawn := 0.0
		for _, row := range rows(t, "batches.csv") {
			if in(row, "date", year.name) {
				drawn += cold(t, row) * gallon(strength(t, row)) * strength(t, row) / 100
			}
		}
		t.Logf("%s: %.1f lb gathered, %.1f boiled, %.1f drawn", year.name, sugarIn, sugarBoiled, drawn)
		lost := 100 * (sugarBoiled - drawn - year.held) / sugarBoiled
		if !(lost > year.least && lost < year.most) {
			t.Errorf("%s: %.2f lb gathered, %.2f boiled, %.2f drawn, %.2f in the pan: %.1f %% lost", year.name, sugarIn, sugarBoiled, drawn, year.held, lost)
		}
	}
}

// strength is the true strength of a batch. A hydrometer marked at 60 F that
// reads 59 to 60 in a cup of 208 F floats in syrup of 67 Brix (the hot mark of the
// trade, 59 at 211 F, stands for 66.9: common practice).
func strength(t *testing.T, row map[string]string) float64 {
	t.Helper()
	if number(t, row["cup_f"]) > 190 {
		return 67
	}
	return number(t, row["reading_brix"])
}

// cold returns the gallons of a batch at 68 F: hot syrup takes up 4.7 percent more
// than cold (densities of 67 Brix at 68 and 208 F, 1.331 and 1.268, computed), and
// a gallon of 66 Brix weighs 11.03 lb.
func cold(t *testing.T, row map[string]string) float64 {
	t.Helper()
	if lb := number(t, row["weight_lb"]); lb > 0 {
		return lb / 11.03
	}
	v := number(t, row["volume_gal"])
	if number(t, row["temp_f"]) > 190 {
		v *= 0.953
	}
	return v
}

// TestJars: no batch fills more than it holds, what is left of a bottled one is
// under a pint, and the batches of 2034 are the jars and the stock: four cans
// not yet bottled, 2.6 + 26.9/11.03 + 1.45 + 17.1/11.03 = 8.04 gal.
func TestJars(t *testing.T) {
	gallons := map[string]float64{"1 qt": 1. / 4, "1 pt": 1. / 8, "1/2 pt": 1. / 16}
	jars := map[string]float64{}
	known := map[string]map[string]string{}
	for _, row := range rows(t, "batches.csv") {
		known[row["batch"]] = row
	}
	for _, row := range rows(t, "bottled.csv") {
		of, ok := gallons[row["size"]]
		batch := known[row["batch"]]
		if !ok || batch == nil || row["date"] <= batch["date"] {
			t.Fatalf("%v", row)
		}
		jars[row["batch"]] += of * number(t, row["count"])
	}
	stock, made, filled := 0.0, 0.0, 0.0
	for name, row := range known {
		left := cold(t, row) - jars[name]
		switch bottled := jars[name] > 0; {
		case !bottled && in(row, "date", "2034"):
			stock += left
		case !bottled || left < 0 || left > 1./8:
			t.Errorf("%s: %.3f gal left", name, left)
		}
		if in(row, "date", "2034") {
			made, filled = made+cold(t, row), filled+jars[name]
		}
	}
	if math.Abs(stock-8.04) > 0.01 {
		t.Errorf("stock of %.3f gal", stock)
	}
	// 3+4+2 quarts, 6+7+3 pints and 5+3+3 half pints are 2.25 + 2 + 0.6875 gal.
	if math.Abs(filled-4.9375) > 1e-9 || !(made-filled-stock > 0 && made-filled-stock < 0.2) {
		t.Errorf("%.3f gal made, %.4f filled, %.3f in stock", made, filled, stock)
	}
}

// TestTaps: the taps of the settings are the holes of the season, and every hole
// is in a tree of the list.
func TestTaps(t *testing.T) {
	stems := map[string]int{}
	for _, row := range rows(t, "trees.csv") {
		stems[row["tree"]]++
	}
	taps := map[string]int{}
	for _, row := range rows(t, "holes.csv") {
		taps[row["year"]]++
		tree, stem, forked := strings.Cut(row["tree"], "/")
		if forked != (stems[tree] > 1) || forked && number(t, stem) > float64(stems[tree]) || stems[tree] == 0 {
			t.Errorf("no tree for the hole in %s", row["tree"])
		}
	}
	settings, err := sugarhouse.Files().ReadFile("sugarhouse.txt")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(settings), "\ntaps: "+strconv.Itoa(taps["2034"])+"\n") || taps["2034"] != 60 {
		t.Errorf("%d holes in 2034", taps["2034"])
	}
	if !strings.Contains(strings.SplitN(string(settings), "\n", 2)[0], "invented") {
		t.Error("the first line does not say that it is invented")
	}
}

// TestDates: fires burn on days of the season, and a batch was drawn and a stop
// read on a day of fire; the weather goes on past the last of them.
func TestDates(t *testing.T) {
	fires := map[string]bool{}
	last := ""
	for _, row := range rows(t, "days.csv") {
		if row["date"] < last {
			t.Errorf("%s stands after %s", row["date"], last)
		}
		last = row["date"]
		if row["boiled_gal"] != "" {
			fires[row["date"]] = true
			if !(row["lit"] < row["out"]) {
				t.Errorf("%s: lit %s, out %s", row["date"], row["lit"], row["out"])
			}
		}
	}
	for _, row := range rows(t, "batches.csv") {
		if !fires[row["date"]] {
			t.Errorf("batch %s of a day without fire", row["batch"])
		}
	}
	for _, row := range rows(t, "stops.csv") {
		if !fires[row["day"]] {
			t.Errorf("stop of %s without fire", row["day"])
		}
	}
	ran, freezes := 0, map[string]bool{}
	var end string
	for _, row := range rows(t, "weather.csv") {
		end = row["date"]
		if low, high := row["tmin_f"], row["tmax_f"]; low != "" && number(t, low) < 30 && number(t, high) > 36 {
			freezes[row["date"]] = true
		}
	}
	// Sap is gathered on the day of a run or within two days after one.
	for _, row := range rows(t, "days.csv") {
		if row["sap_gal"] == "" && row["dip_in"] == "" {
			continue
		}
		day, err := time.Parse(time.DateOnly, row["date"])
		if err != nil {
			t.Fatal(err)
		}
		run := false
		for back := range 3 {
			run = run || freezes[day.AddDate(0, 0, -back).Format(time.DateOnly)]
		}
		if run {
			ran++
		} else {
			t.Errorf("sap on %s without a run", row["date"])
		}
	}
	if ran < 40 || end < last {
		t.Errorf("%d gatherings; the weather ends on %s", ran, end)
	}
	if d := sugarhouse.Today(); d.Weekday() != time.Sunday {
		t.Errorf("today is a %s", d.Weekday())
	}
}
