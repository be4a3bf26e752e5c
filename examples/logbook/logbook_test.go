package main

import (
	"encoding/json"
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
	t.Run("known figures", func(t *testing.T) { known(t, b) })
	t.Run("cups", func(t *testing.T) { cups(t, b) })
	t.Run("unlikely draws", func(t *testing.T) { unlikely(t, b) })
	t.Run("chart", func(t *testing.T) { chart(t, b) })
	t.Run("rows to mend", func(t *testing.T) { mend(t, b) })
	t.Run("spellings", func(t *testing.T) { spellings(t, b) })
	t.Run("few files", func(t *testing.T) { fewFiles(t, b) })
	b.Refuses(t, "logbook", badFlags())
	b.Refuses(t, "logbook", badFiles(t))
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "demo-metric.txt", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "demo.svg", "-svg", "-")
	b.Golden(t, "demo-metric.svg", "-svg", "-", "-metric")
	b.Golden(t, "help.txt", "-h")
}

// The sugar of the days, of the sources and of the balance is one, and what
// went out, is kept and is lost adds up to it.
func balances(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "", "-json", "-metric")
	if status != 0 {
		t.Fatal(errs)
	}
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
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatal(err)
	}
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
	if rows != 20 {
		t.Errorf("%d gatherings of 20", rows)
	}
	// 557 US gal of some 2.06 Brix, whose density is 8.4 lb to the gallon, hold
	// about 43.8 kg: the balance is no more than arithmetic on the file.
	if !(math.Abs(bal.In-557*8.4*0.0206*0.45359) < 0.3) {
		t.Errorf("%v kg of sugar in", bal.In)
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
	if status != 0 || !strings.Contains(page, "Where the sugar went") {
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
	// 8 days with sap, two bars each with a title of its own, on a white ground.
	if count["rect"] != 2*8+1 || count["title"] != 2*8+1 || count["desc"] != 1 {
		t.Errorf("elements %v", count)
	}
	if left, err := filepath.Glob(filepath.Join(filepath.Dir(name), ".unfinished-*")); err != nil || len(left) > 0 {
		t.Errorf("left behind: %v %v", left, err)
	}
}

// Every wrong row is told by file, line and column; the others count.
func mend(t *testing.T, b clitest.Binary) {
	status, out, errs := b.Run(t, "", "-dir", "testdata/torn")
	if status != 1 {
		t.Errorf("status %d", status)
	}
	want := []string{
		`gatherings.csv:4: column volume_us_gal: "forty" is not a plain number`,
		"gatherings.csv:5: 6 cells where the header names 5 columns",
		"gatherings.csv:6: column reading_brix: true strength 66",
		"gatherings.csv:7: column read_at_f: temperature 400 F (204.4 C) is outside",
		"gatherings.csv:8: column time: 2043-03-03 is more than half a year from 2034-03-01",
		`gatherings.csv:9: column time: "March 4" is not a time such as 2006-01-02 15:04`,
		"gatherings.csv:10: column volume_us_gal: volume -38 US gal (-143.8 L)",
		"boils.csv:3: column burned_cord: efficiency of this boil",
		`boils.csv:4: column kind: "straw" is not known`,
		"boils.csv:5: column weighed_lb: the fuel is given by volume and by weight",
		"boils.csv:6: column fired_h: a boil takes longer",
		"boils.csv:7: no amount of fuel",
		"draws.csv:3: column lot: empty",
		"draws.csv:4: neither a volume nor a weight",
		"draws.csv:5: column weight_lb: the draw is given by volume and by weight",
		"draws.csv:6: column reading_brix: true strength",
		"draws.csv:7: column cup_f: temperature 400 F (204.4 C) is outside",
		"packing.csv:3: column count: containers are counted in whole numbers",
		"packing.csv:4: column size_us_fl_oz: size",
	}
	told := strings.Split(strings.TrimSuffix(errs, "\n"), "\n")
	if len(told) != len(want)+1 {
		t.Fatalf("%d lines, want %d:\n%s", len(told), len(want)+1, errs)
	}
	for i, w := range want {
		if !strings.HasPrefix(told[i], filepath.Join("testdata", "torn", w)) {
			t.Errorf("told %q\nwant %q", told[i], w)
		}
	}
	if last := told[len(want)]; last != "logbook: 19 rows are not in the count: mend them and run again" {
		t.Errorf("at the end %q", last)
	}
	for _, w := range []string{"Left out of the count         19 rows\n", "Gatherings                    2\n", "three was packed and never drawn"} {
		if !strings.Contains(out, w) {
			t.Errorf("the page does not show %q:\n%s", w, out)
		}
	}
	if err := clitest.Compare("torn.txt", out); err != nil {
		t.Error(err)
	}
}

// write writes files into a new folder.
func write(t *testing.T, files map[string]string) (dir string) {
	t.Helper()
	dir = t.TempDir()
	for name, content := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

const someSap = "time,source,volume_l,reading_brix,read_at_c\n2034-03-01 16:00,hill,150,2,5\n2034-03-02 16:00,hill,150,2,5\n"

// A byte-order mark, CRLF and mixed ends of lines, metric units and other
// layouts of time read the same.
func spellings(t *testing.T, b clitest.Binary) {
	read := func(sap string) string {
		t.Helper()
		status, out, errs := b.Run(t, "", "-dir", write(t, map[string]string{"gatherings.csv": sap}), "-metric")
		if status != 0 {
			t.Fatalf("%q: %s", sap, errs)
		}
		return out
	}
	want := read(someSap)
	for _, sap := range []string{
		"\ufeff" + someSap,
		strings.ReplaceAll(someSap, "\n", "\r\n"),
		strings.Replace(someSap, "\n", "\r\n", 1) + "\n\n# the end\n",
		strings.ReplaceAll(someSap, "150", `"150"`),
		strings.ReplaceAll(someSap, " 16:00", "T16:00"),
		strings.ReplaceAll(someSap, " 16:00", ""),
		"Time,SOURCE,volume_ml,reading_brix,read_at_f\n2034-03-01,hill,150000,2,41\n2034-03-02,hill,150e3,2,41\n",
	} {
		if got := read(sap); got != want {
			t.Errorf("%q reads as\n%s\nwant\n%s", sap, got, want)
		}
	}
}

// The gatherings alone give a page; a source may be missing; what cannot be
// printed does not reach the terminal.
func fewFiles(t *testing.T, b clitest.Binary) {
	dir := write(t, map[string]string{"gatherings.csv": "time,volume_l,reading_brix,read_at_c\n2034-03-01,150,2,5\n\x1b[31m,150,2,5\n"})
	status, out, errs := b.Run(t, "", "-dir", dir)
	if status != 1 || !strings.Contains(out, "(not named)") || !strings.Contains(out, "Not in the folder: boils.csv, draws.csv, packing.csv, fuel.csv.") {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
	if strings.Contains(out+errs, "\x1b") || !strings.Contains(errs, "gatherings.csv:3: column time:") {
		t.Errorf("told %q", errs)
	}
	for name, source := range map[string]string{"has a character that cannot be printed": "\x1b[31mhill", "a name of 61 bytes": strings.Repeat("x", 61)} {
		status, out, errs = b.Run(t, "", "-dir", write(t, map[string]string{"gatherings.csv": someSap + "2034-03-02," + source + ",150,2,5\n"}))
		if status != 1 || !strings.Contains(errs, name) || strings.Contains(out+errs, "\x1b") {
			t.Errorf("%q: status %d, told %q", source, status, errs)
		}
	}
	if !strings.Contains(out, "No syrup is written down") {
		t.Errorf("a season without syrup:\n%s", out)
	}
	// More syrup than sap can give is called by its name.
	dir = write(t, map[string]string{"gatherings.csv": someSap, "draws.csv": "time,lot,weight_kg,reading_brix,cup_c\n2034-03-03,A,60,59,98\n"})
	if status, out, errs = b.Run(t, "", "-dir", dir); status != 0 || !strings.Contains(out, "More sugar came out than went in") {
		t.Errorf("status %d, %s\n%s", status, errs, out)
	}
}
