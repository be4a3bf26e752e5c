package main

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// parts reads the parts of the JSON of a folder.
func parts(t *testing.T, b clitest.Binary, into any, args ...string) {
	t.Helper()
	status, out, errs := b.Run(t, "", append(args, "-json")...)
	if status != 0 {
		t.Fatal(errs)
	}
	page := struct{ Parts any }{into}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
}

// A season of one gallon, whose figures are known: 43.389 US gal of sap of 2.0
// Brix make one of syrup of 66.0 (by the balance of sugar), boiling them takes
// 400,000 Btu (Ohio State University Extension; 404,680 computed from sap at 40
// F), and 6 US gal of oil hold 832,140 Btu (138,690 a gallon, US DOE, Federal
// Register 2007-03-21), of which that is 48.63 percent. A US gallon of syrup of 66.9
// Brix has a mass of 11.0843 lb and weighs 11.0759 lb on a scale in air (the check
// value of density.InAir). Instruments are read at the temperature they are
// graduated at.
func known(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{
		"sugarhouse.txt": "gallons: US\nfuel: oil\ntaps: 4\nelevation: 0 ft\nsap hydrometer: marked at 68 F\n",
		"days.csv":       "date,tank,sap_gal,sugar_brix,read_at_f,boiled_gal,lit,out,wood\n2034-03-01,hill,43.389,2.0,68,,,,\n2034-03-02,,,,40,43.316,8:00,12:00,6 gal\n",
		"batches.csv":    "batch,date,weight_lb,reading_brix,cup_f\nA,2034-03-02,5.53795,66.9,60\nB,2034-03-02,5.53795,66.9,60\n",
		"bottled.csv":    "date,batch,size,count\n2034-03-02,A,1 qt,1\n2034-03-02,B,1 qt,2\n2034-03-02,A,1 pt,1\n",
		"blends.csv":     "date,from,into,volume\n2034-03-02,B,A,1 pt\n",
	})
	var page struct {
		Balance struct {
			Sap   float64 `json:"sap_us_gal"`
			Exact float64 `json:"exact"`
			Tap   float64 `json:"sap_a_tap_us_gal"`
			Out   float64 `json:"sugar_out_lb"`
		} `json:"balance"`
		Boils struct {
			Hours float64 `json:"hours_h"`
			Water float64 `json:"water_lb"`
		} `json:"boils"`
		Fire struct {
			Note string     `json:"efficiency_note"`
			In   float64    `json:"efficiency_pct"`
			Next [2]float64 `json:"next_pct"`
			Left float64    `json:"left_us_gal"`
		} `json:"fire"`
		Batches struct {
			Batches []struct {
				Drawn float64 `json:"drawn_us_gal"`
				Left  float64 `json:"left_us_gal"`
			} `json:"batches"`
		} `json:"batches"`
		Bottled struct {
			Containers int     `json:"containers"`
			Volume     float64 `json:"volume_us_gal"`
		} `json:"bottled"`
	}
	parts(t, b, &page, "-dir", dir, "-set", "target: 66 Brix", "-laid-in", "10 US gal")
	if len(page.Batches.Batches) != 2 || page.Fire.Note != "of the gross heat, by 1 boil" || page.Bottled.Containers != 4 {
		t.Fatalf("page %+v", page)
	}
	for _, c := range []struct {
		what            string
		got, want, free float64
	}{
		{"sap", page.Balance.Sap, 43.389, 0.001},
		{"sap to one of 66.9 Brix", page.Balance.Exact, 43.389 * 66.9 * 11.0843 / (66.0 * 1.32516 * 8.3304), 0.007}, // NBS C440: 66.0 Brix is 1.32516 times water, 8.3304 lb to the gallon
		{"sap by the tap", page.Balance.Tap, 43.389 / 4, 0.001},
		{"sugar out", page.Balance.Out, 0.669 * 11.0843, 0.0001},
		{"hours", page.Boils.Hours, 4, 1e-9},
		{"water boiled off", page.Boils.Water, 353.22, 0.4},
		{"efficiency", page.Fire.In, 48.63, 0.06},
		{"of the next boil at least", page.Fire.Next[0], 48.63 * 0.8, 0.06}, // one boil: a fifth to each side
		{"of the next boil at most", page.Fire.Next[1], 48.63 * 1.2, 0.06},
		{"oil left", page.Fire.Left, 4, 1e-7},
		{"drawn", page.Batches.Batches[0].Drawn, 0.5, 1e-4},
		{"left of A, which got a pint of B", page.Batches.Batches[0].Left, 0.5 + 0.125 - 0.375, 1e-4},
		{"left of B", page.Batches.Batches[1].Left, 0.5 - 0.125 - 0.5, 1e-4},
		{"bottled", page.Bottled.Volume, 0.875, 1e-9},
	} {
		if !(math.Abs(c.got-c.want) <= c.free) {
			t.Errorf("%s: %v, want %v within %v", c.what, c.got, c.want, c.free)
		}
	}
}

const someSap = "date,tank,sap_gal,sugar_brix,read_at_f\n2034-03-01,hill,600,2.0,38\n"

// A hot cup of syrup reads 59 Brix; written down as a cup of 60 F it is no syrup.
func unlikely(t *testing.T, b clitest.Binary) {
	for cup, odd := range map[string]bool{"208": false, "60": true} {
		dir := clitest.Folder(t, map[string]string{"days.csv": someSap, "batches.csv": "batch,date,volume_gal,reading_brix,cup_f\nA,2034-03-02,1,59,208\nB,2034-03-02,1,59," + cup + "\n"})
		status, out, errs := b.Run(t, "", "-dir", dir, "-full")
		words := strings.Join(strings.Fields(out), " ")
		if status != 0 || strings.Contains(words, "B is under 60 Brix or over 72 Brix") != odd {
			t.Errorf("a cup of %s F: %s%s", cup, out, errs)
		}
	}
}

// Each cup of syrup tells how hot its own measure was, where the file has no temp
// column and where its cells are empty. 10 US gal at 70 F shrink to 9.9955 at 68 F:
// by the correction of a stem graduated at 20 C, 1.65 Brix at 40 C in 60 Brix (NBS
// Circular C440), syrup of 66 Brix, 6.1 kg/m3 denser with each Brix, expands by 0.04
// percent a degree C, the glass of the stem with it.
func cups(t *testing.T, b clitest.Binary) {
	for _, batches := range []string{
		"batch,date,volume_gal,reading_brix,cup_f\nA,2034-03-02,1,59.5,208\nB,2034-03-02,10,66,70\n",
		"batch,date,volume_gal,reading_brix,cup_f,temp_f\nA,2034-03-02,1,59.5,208,\nB,2034-03-02,10,66,70,\n",
	} {
		var page struct {
			Batches struct {
				Batches []struct {
					Drawn float64 `json:"drawn_us_gal"`
				} `json:"batches"`
			} `json:"batches"`
		}
		parts(t, b, &page, "-dir", clitest.Folder(t, map[string]string{"days.csv": someSap, "batches.csv": batches}))
		if len(page.Batches.Batches) != 2 {
			t.Fatalf("%+v", page)
		}
		if got := page.Batches.Batches[1].Drawn; !(math.Abs(got-9.9955) < 0.001) {
			t.Errorf("10 US gal at 70 F are %v at 68 F", got)
		}
	}
}

// Where the season has no batches, the days tell what was drawn; sap that nobody read
// counts at the strength of the rest: 100 and 300 gal of 2 and 3 Brix hold 2.75, and
// 400 gal more of that twice as much.
func daysAlone(t *testing.T, b clitest.Binary) {
	const days = "date,sap_gal,sugar_brix,read_at_f,syrup_gal\n2034-03-01,100,2,38,\n2034-03-02,300,3,38,2\n"
	in := func(days string) (sugar, syrup float64) {
		var page struct {
			Balance struct {
				In    float64 `json:"sugar_in_lb"`
				Syrup float64 `json:"syrup_us_gal"`
			} `json:"balance"`
		}
		parts(t, b, &page, "-dir", clitest.Folder(t, map[string]string{"days.csv": days}))
		return page.Balance.In, page.Balance.Syrup
	}
	read, syrup := in(days)
	all, more := in(days + "2034-03-03,400,,,1\n")
	if !(math.Abs(all/read-2) < 1e-6) || !(math.Abs(syrup-2) < 1e-6) || !(math.Abs(more-3) < 1e-6) {
		t.Errorf("%v lb, and %v with the unread; %v and %v gal of syrup", read, all, syrup, more)
	}
}

// Sap that came after the last fire waits, and is not lost. Of three like gatherings one
// was boiled, 43.389 US gal of 2.0 Brix to one of 66.0: two thirds of the sugar wait, and
// nothing is missing. What a fire left waits as well, as the plan of the next fire has it: of
// 43.389 gal less 20 it is 23.389/43.389 of the sugar. Sap older than a week is not counted.
func midSeason(t *testing.T, b clitest.Binary) {
	const settings = "gallons: US\nsap hydrometer: marked at 68 F\nsyrup hydrometer: marked at 68 F\ntarget: 66 Brix\n"
	const days = "date,sap_gal,sugar_brix,read_at_f,boiled_gal,syrup_gal\n2034-03-01,43.389,2,68,,\n2034-03-02,,,,43.389,1\n2034-03-03,43.389,2,68,,\n2034-03-04,43.389,2,68,,\n"
	var page struct {
		Balance struct {
			In   float64 `json:"sugar_in_lb"`
			Kept float64 `json:"kept_lb"`
			Lost float64 `json:"lost_lb"`
		} `json:"balance"`
	}
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": days})
	parts(t, b, &page, "-dir", dir)
	if bal := page.Balance; !(math.Abs(bal.Kept/bal.In-2./3) < 1e-3) || !(math.Abs(bal.Lost/bal.In) < 1e-3) {
		t.Errorf("of %v lb %v wait and %v are lost", bal.In, bal.Kept, bal.Lost)
	}
	if _, out, _ := b.Run(t, "", "-dir", dir); strings.Contains(out, "lost,") || !strings.Contains(strings.Join(strings.Fields(out), " "), "is held") {
		t.Errorf("the first line is\n%s", out)
	}
	past := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": days + "2035-03-01,43.389,2,68,,\n"})
	if parts(t, b, &page, "-dir", past, "-season", "2034"); page.Balance.Kept != 0 {
		t.Errorf("%v lb wait since last year", page.Balance.Kept)
	}
	const first = "date,sap_gal,sugar_brix,read_at_f,boiled_gal,syrup_gal\n2034-03-01,43.389,2,68,,\n2034-03-02,,,,20,0.4609\n"
	for more, want := range map[string]float64{"": 23.389 / 43.389, "2034-03-08,,,,,\n": 23.389 / 43.389, "2034-03-09,,,,,\n": 0} {
		left := clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": first + more})
		parts(t, b, &page, "-dir", left)
		_, out, _ := b.Run(t, "", "-dir", left)
		out = strings.Join(strings.Fields(out), " ")
		if bal := page.Balance; !(math.Abs(bal.Kept/bal.In-want) < 1e-3) || !(math.Abs((bal.Kept+bal.Lost)/bal.In-23.389/43.389) < 1e-3) || strings.Contains(out, "lost or stands unboiled,") != (want == 0) || strings.Contains(out, "lb waits for the fire)") == (want == 0) {
			t.Errorf("%s: of %v lb %v wait and %v are lost\n%s", more, bal.In, bal.Kept, bal.Lost, out)
		}
	}
	// Where the batches tell less than the days, the first page says so.
	dir = clitest.Folder(t, map[string]string{"sugarhouse.txt": settings, "days.csv": days, "batches.csv": "batch,date,volume_gal,reading_brix,cup_f\nA,2034-03-02,0.5,66.9,68\n"})
	if _, out, _ := b.Run(t, "", "-dir", dir); !strings.Contains(strings.Join(strings.Fields(out), " "), "The days tell of 1 US gal of syrup and the batches, which count, of 0.500 US gal") {
		t.Errorf("the first page is\n%s", out)
	}
}

// A moldy batch was drawn, and is in no stock: of 3 and 1 gal at 68 F it is 3 gal, 12
// qt.
func moldy(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{"days.csv": someSap, "sugarhouse.txt": "gallons: US\nsyrup hydrometer: marked at 68 F\n",
		"batches.csv": "batch,date,volume_gal,reading_brix,cup_f,mold\nA,2034-03-02,3,66.9,68,no\nB,2034-03-02,1,66.9,68,yes\n"})
	page, read := b.Brief(t, "", "-dir", dir)
	for _, a := range read.Answers {
		if a.Key == "stock" && a.US.Value != 12.0 || a.Key == "drawn" && a.US.Value != 16.0 {
			t.Errorf("%s: %v", a.Key, a.US.Value)
		}
	}
	if !strings.Contains(strings.Join(strings.Fields(page), " "), "lb moldy, thrown away") {
		t.Error(page)
	}
}

// Mold goes where its syrup is poured. Of A, 3 gal, B, 1 gal and marked, and C, 2 gal, a
// quart of B is poured into A: what stands in A, 3.25 gal less 2 qt in jars, is moldy as
// are the 0.75 gal of B, and in stock are the 2 gal of C alone, 8 qt. The jars of A are to
// come back. Every page adds up: drawn 24 qt, bottled 2, moldy 14, in stock 8.
func moldyBlend(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{"days.csv": someSap, "sugarhouse.txt": "gallons: US\nsyrup hydrometer: marked at 68 F\n",
		"batches.csv": "batch,date,volume_gal,reading_brix,cup_f,mold\nA,2034-03-02,3,66.9,68,no\nB,2034-03-02,1,66.9,68,yes\nC,2034-03-02,2,66.9,68,\n",
		"blends.csv":  "date,from,into,volume_gal\n2034-03-04,b,A,0.25\n", "bottled.csv": "date,batch,size,count\n2034-03-05,A,1 qt,2\n"})
	page, read := b.Brief(t, "", "-dir", dir)
	for _, a := range read.Answers {
		if want := map[string]float64{"drawn": 24, "bottled": 2, "stock": 8}[a.Key]; want > 0 && a.US.Value != want {
			t.Errorf("%s: %v, not %v", a.Key, a.US.Value, want)
		}
	}
	_, full, _ := b.Run(t, "", "-full", "-dir", dir)
	for _, want := range []string{"Moldy syrup was poured into A: throw away what stands there.", "Jars of A hold moldy syrup: get them back",
		"A had moldy syrup poured into it: thrown away, and in no stock", "B was moldy: thrown away"} {
		if !strings.Contains(strings.Join(strings.Fields(full), " "), want) {
			t.Errorf("no %q: %s", want, page)
		}
	}
}
