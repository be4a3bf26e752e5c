package main

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// Two batches of a gallon of 66.9 Brix, 11.0843 lb each (the check value of
// density.InAir).
const twoBatches = "batch,date,volume_gal,reading_brix,cup_f,temp_f\nA,2034-03-01,1,66.9,60,68\nB,2034-03-02,1,66.9,60,68\n"

// traces follows a batch forwards and backwards. Of B a pint is bottled before a quart
// of A is poured into it: the pint holds nothing of A, and of the 7/8 + 1/4 = 9/8 gal
// then in B a part of 2/9 is A.
func traces(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "batches.csv": twoBatches,
		"blends.csv":  "date,from,into,volume_gal\n2034-03-03,A,B,1/4\n",
		"bottled.csv": "date,batch,size,count\n2034-03-02,B,1 pt,1\n2034-03-05,B,1 pt,4\n2034-03-05,A,1 pt,2\n"})
	var page struct {
		List []struct {
			Date  string  `json:"date"`
			Label string  `json:"label"`
			Jars  int     `json:"count"`
			Share float64 `json:"share_pct"`
			Of    float64 `json:"syrup_lb"`
		} `json:"list"`
		Parts struct {
			Inside struct {
				Inside []struct {
					Filled string  `json:"filled"`
					Of     string  `json:"boil"`
					Share  float64 `json:"share_pct"`
				} `json:"inside"`
			} `json:"inside"`
			Cellar struct {
				Cellar []struct {
					Sugar float64 `json:"sugar_lb"`
				} `json:"cellar"`
			} `json:"cellar"`
		} `json:"parts"`
	}
	status, out, errs := b.Run(t, "", "-dir", dir, "-trace", "a", "-json")
	if status != 0 {
		t.Fatal(errs)
	}
	if err := json.Unmarshal([]byte(out), &page); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	type row struct {
		label string
		jars  int
		share float64
	}
	want := []row{{"B", 4, 200. / 9}, {"A", 2, 100}}
	if len(page.List) != len(want) {
		t.Fatalf("%+v", page.List)
	}
	for i, w := range want {
		if g := page.List[i]; g.Label != w.label || g.Jars != w.jars || !near(g.Share, w.share, 0.05) {
			t.Errorf("row %d: %+v, not %+v", i, g, w)
		}
	}
	// 4 pints of 11.0843/8 lb, 2/9 of them.
	if !near(page.List[0].Of, 4*11.0843/8*2/9, 0.001) {
		t.Errorf("%v lb", page.List[0].Of)
	}
	status, out, errs = b.Run(t, "", "-dir", dir, "-trace", "B", "-json")
	if err := json.Unmarshal([]byte(out), &page); err != nil || status != 0 {
		t.Fatalf("%v, %s", err, errs)
	}
	in := page.Parts.Inside.Inside
	if len(in) != 5 || in[0].Of != "B" || !near(in[0].Share, 100, 0.01) || in[1].Of != "A" || !near(in[1].Share, 200./9, 0.05) || in[2].Of != "B" || !near(in[2].Share, 700./9, 0.05) {
		t.Errorf("%+v", in)
	}
	// What was drawn and taken out over it is what stands in jars, was thrown out, is to
	// be and is in stock: 2 x 11.0843 x 0.669 lb of sugar, in the nine digits of JSON.
	if c := page.Parts.Cellar.Cellar; len(c) != 6 || !near(c[0].Sugar, 14.831, 0.001) || !near(c[0].Sugar+c[1].Sugar, c[2].Sugar+c[3].Sugar+c[4].Sugar+c[5].Sugar, 1e-7) {
		t.Errorf("%+v", c)
	}
}

func near(got, want, by float64) bool { return got-want <= by && want-got <= by }

// traceRefused are calls that cannot be followed.
func traceRefused(t *testing.T, b clitest.Binary) {
	early := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "batches.csv": twoBatches, "blends.csv": "date,from,into,volume_gal\n2034-02-28,A,B,1/4\n"})
	for _, tt := range []struct {
		args []string
		want string
	}{
		{[]string{"-trace", "99-1"}, `-trace: no batch "99-1" in batches.csv`},
		{[]string{"-trace", "34-1", "-svg", "x.svg"}, "-svg: it draws a season"},
		{[]string{"-dir", early, "-trace", "A"}, `blends.csv:2: no syrup of "A" on that day`},
	} {
		status, out, errs := b.Run(t, "", tt.args...)
		if status != cli.BadInput || out != "" || !strings.Contains(errs, tt.want) {
			t.Errorf("%v: status %d, %s%s", tt.args, status, errs, out)
		}
	}
	// Moldy: the jars are called back, and what was left is in no stock.
	moldy := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "batches.csv": "batch,date,volume_gal,reading_brix,cup_f,temp_f,mold\nA,2034-03-01,1,66.9,60,68,yes\n",
		"bottled.csv": "date,batch,size,count\n2034-03-05,A,1 pt,2\n"})
	status, out, errs := b.Run(t, "", "-dir", moldy, "-trace", "A")
	if words := strings.Join(strings.Fields(out), " "); status != 0 || !strings.Contains(words, "was moldy: get back the 2 jars that hold it and throw them away.") ||
		!strings.Contains(words, "Of it thrown out 8.31 lb (moldy)") || strings.Contains(words, "Of it in stock") {
		t.Errorf("status %d, %s%s", status, errs, out)
	}
	b.Brief(t, "", "-dir", moldy, "-trace", "A")

	// Moldy, and in no jar but poured into B: what stands there is thrown away, whichever
	// of the two is asked about.
	poured := clitest.Folder(t, map[string]string{"sugarhouse.txt": "gallons: US\n", "batches.csv": "batch,date,volume_gal,reading_brix,cup_f,temp_f,mold\nA,2034-03-01,1,66.9,60,68,yes\nB,2034-03-02,1,66.9,60,68,\n",
		"blends.csv": "date,from,into,volume_gal\n2034-03-04,A,B,0.5\n"})
	for name, want := range map[string]string{"A": "Batch A was moldy: throw away what stands in B.", "B": "Batch B had moldy syrup poured into it: throw away what stands in B."} {
		status, out, errs := b.Run(t, "", "-dir", poured, "-trace", name, "-full")
		words := strings.Join(strings.Fields(out), " ")
		if status != 0 || !strings.HasPrefix(words, want) || !strings.Contains(words, "To throw away") || !strings.Contains(words, "In stock 0 lb 0 lb") {
			t.Errorf("status %d, %s%s", status, errs, out)
		}
	}
}
