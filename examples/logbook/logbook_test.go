package main

import (
	"encoding/xml"
	"errors"
	"io"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestLogbook(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("JSON", func(t *testing.T) { balances(t, b) })
	t.Run("taps", func(t *testing.T) { tapsOfThen(t, b) })
	t.Run("staircase", func(t *testing.T) { staircase(t, b) })
	t.Run("known figures", func(t *testing.T) { known(t, b) })
	t.Run("mid-season", func(t *testing.T) { midSeason(t, b) })
	t.Run("thrown out", func(t *testing.T) { thrown(t, b) })
	t.Run("days alone", func(t *testing.T) { daysAlone(t, b) })
	t.Run("cups", func(t *testing.T) { cups(t, b) })
	t.Run("mold", func(t *testing.T) { moldy(t, b); moldyBlend(t, b) })
	t.Run("stairs", func(t *testing.T) { stairsAddUp(t, b) })
	t.Run("drums", func(t *testing.T) { drums(t, b) })
	t.Run("unlikely batches", func(t *testing.T) { unlikely(t, b) })
	t.Run("chart", func(t *testing.T) { chart(t, b) })
	t.Run("cost", func(t *testing.T) { costs(t, b) })
	t.Run("trace", func(t *testing.T) { traces(t, b) })
	t.Run("trace refused", func(t *testing.T) { traceRefused(t, b) })
	t.Run("few files", func(t *testing.T) { fewFiles(t, b) })
	b.Refuses(t, "logbook", badFlags())
	b.Refuses(t, "logbook", badFiles(t))
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "full-metric.txt", "-full", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "demo.svg", "-svg", "-")
	b.Golden(t, "demo-metric.svg", "-svg", "-", "-metric")
	b.Golden(t, "trace.txt", "-trace", "33-3", "-full")
	b.Golden(t, "cost.txt", "-cost", "-wage", "15/h", "-price", "60/US gal", "-full")
	b.Golden(t, "help.txt", "-h")
	b.Brief(t, "", "-trace", "33-5")
	b.Brief(t, "", "-season", "2032")
	b.Brief(t, "", "-season", "2033", "-metric")
	b.Brief(t, "", "-dir", clitest.Folder(t, map[string]string{"days.csv": someSap}))
}

// The sugar of the days, of the tanks and of the balance is one, and what went out,
// is kept and is lost adds up to it.
func balances(t *testing.T, b clitest.Binary) {
	var page struct {
		Balance struct {
			In   float64 `json:"sugar_in_kg"`
			Out  float64 `json:"sugar_out_kg"`
			Kept float64 `json:"kept_kg"`
			Lost float64 `json:"lost_kg"`
		} `json:"balance"`
		Days struct {
			Days []struct {
				Sugar any `json:"sugar_kg"`
			} `json:"days"`
		} `json:"days"`
		Sources struct {
			Sources []struct {
				Sugar float64 `json:"sugar_kg"`
				Rows  int     `json:"gatherings"`
			} `json:"sources"`
		} `json:"sources"`
	}
	parts(t, b, &page, "-metric")
	var days, sources float64
	rows := 0
	for _, d := range page.Days.Days {
		if x, ok := d.Sugar.(float64); ok {
			days += x
		}
	}
	for _, s := range page.Sources.Sources {
		sources += s.Sugar
		rows += s.Rows
	}
	bal := page.Balance
	for name, x := range map[string]float64{"days": days, "sources": sources, "out, kept and lost": bal.Out + bal.Kept + bal.Lost} {
		if !(math.Abs(x-bal.In) < 1e-6) {
			t.Errorf("%s: %v kg of sugar, %v went in", name, x, bal.In)
		}
	}
	if rows != 22 {
		t.Errorf("%d gatherings of 22", rows)
	}
	// 629 US gal of some 2.09 Brix, whose density is 8.4 lb to the gallon, hold about
	// 50 kg. 3/4 in over 12 ft2 is 5.61 gal; at 11.5 Brix of 8.72 lb: 5.63 lb, 2.55 kg.
	if !(math.Abs(bal.In-629*8.4*0.0209*0.45359) < 0.3) || !(math.Abs(bal.Kept-2.55) < 0.01) {
		t.Errorf("%v kg of sugar in, %v held", bal.In, bal.Kept)
	}
}

// An earlier season has the taps of its own: holes.csv has 52 rows of 2033.
func tapsOfThen(t *testing.T, b clitest.Binary) {
	var page struct {
		Season struct {
			Taps int `json:"taps"`
		} `json:"season"`
	}
	for args, want := range map[string]int{"-season|2033": 52, "-season|2033|-set|taps: 50": 50, "-season|2034": 60} {
		if parts(t, b, &page, strings.Split(args, "|")...); page.Season.Taps != want {
			t.Errorf("%s: %d taps, want %d", args, page.Season.Taps, want)
		}
	}
}

// What the first page says of 2034 is what its files say, added up by hand: 629 US
// gal gathered and 617 boiled; 13.22 gal drawn, which are 52.9 qt (the sum of the
// batches at 68 F); 9 qt, 16 pt and 11 half pints bottled, 19.75 qt. Batches 1 to 3, which are bottled,
// were 1.881, 2.170 and 1.110 gal and filled 5.161 - 4.938 = 0.223 gal less, 0.89 qt
// and 0.223 x 11.08 lb x 0.67 = 1.7 lb of sugar.
func staircase(t *testing.T, b clitest.Binary) {
	_, page := b.Brief(t, "")
	want := map[string]float64{"gathered": 629, "boiled": 617, "drawn": 52.9, "bottled": 19.75, "stock": 32.2}
	for _, a := range page.Answers {
		x, ok := a.US.Value.(float64)
		if a.Key == "bottled" && !strings.Contains(a.Note, "; 2 lb filtered") {
			t.Errorf("bottled: %s", a.Note)
		}
		if w, asked := want[a.Key]; asked && (!ok || !(math.Abs(x-w) < 1.5)) {
			t.Errorf("%s: %v, want %v", a.Key, a.US.Value, w)
		}
		delete(want, a.Key)
	}
	if len(want) > 0 {
		t.Errorf("not told: %v", want)
	}
}

// The lines of an axis stand at round numbers, few enough to read, and the top
// is not far above the highest bar.
func TestScale(t *testing.T) {
	for _, most := range []float64{0.013, 0.4, 1, 3, 7.9, 8, 19.99, 41, 50, 99, 1234, 5e6} {
		step, top := scale(most)
		lines := top / step
		if !(top >= most) || !(top < most+step) || !(lines >= 4 && lines <= 10+1e-9) {
			t.Errorf("%v: %v lines of %v up to %v", most, lines, step, top)
		}
		digit := step / math.Pow(10, math.Floor(math.Log10(step)+1e-9))
		if !(math.Abs(digit-1)*math.Abs(digit-2)*math.Abs(digit-5) < 1e-6) {
			t.Errorf("%v: a step of %v", most, step)
		}
	}
	if step, top := scale(0); step <= 0 || top <= 0 {
		t.Errorf("nothing: %v to %v", step, top)
	}
}

// The chart is XML, says what it shows, and has a bar a day and kind.
func chart(t *testing.T, b clitest.Binary) {
	name := filepath.Join(t.TempDir(), "season.svg")
	status, page, errs := b.Run(t, "", "-svg", name)
	if status != 0 || !strings.Contains(page, "Gathered") {
		t.Fatalf("status %d, %s", status, errs)
	}
	drawn, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	count := map[string]int{}
	for d := xml.NewDecoder(strings.NewReader(string(drawn))); ; {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
		if start, ok := token.(xml.StartElement); ok {
			count[start.Name.Local]++
		}
	}
	// 18 days with sap, two bars each with a title of its own, on a white ground.
	if count["rect"] != 2*18+1 || count["title"] != 2*18+1 || count["desc"] != 1 {
		t.Errorf("elements %v", count)
	}
	if left, err := filepath.Glob(filepath.Join(filepath.Dir(name), ".unfinished-*")); err != nil || len(left) > 0 {
		t.Errorf("left behind: %v %v", left, err)
	}
}

// The days alone give a page, and a tank need not be named.
func fewFiles(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "", "-full", "-dir", clitest.Folder(t, map[string]string{"days.csv": "date,sap_gal\n2034-03-01,40\n"}))
	words := strings.Join(strings.Fields(out), " ")
	for _, want := range []string{"(not named)", "Nothing of the season in batches.csv, bottled.csv, pan.csv.", "no syrup is written down yet", "Of 1 gathering nobody read the sugar: counted at 2.0 Brix."} {
		if status != 0 || !strings.Contains(words, want) {
			t.Errorf("status %d, no %q: %s\n%s", status, want, errs, out)
		}
	}
	// In the winter after, the season is still the last that has days.
	dir := clitest.Folder(t, map[string]string{"days.csv": someSap, "weather.csv": "date,tmin_f,tmax_f\n2035-01-03,10,20\n"})
	if status, out, errs = b.Run(t, "", "-dir", dir); status != 0 || !strings.Contains(out, "season 2034") {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
	// More syrup than sap can give is called by its name.
	dir = clitest.Folder(t, map[string]string{"days.csv": "date,sap_gal,sugar_brix,read_at_f\n2034-03-01,40,2,38\n", "batches.csv": "batch,date,weight_kg,reading_brix,cup_c\nA,2034-03-03,60,59,98\n"})
	if status, out, errs = b.Run(t, "", "-dir", dir); status != 0 || !strings.Contains(out, "More sugar came out than went in") {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
}
