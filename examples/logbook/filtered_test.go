package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A US gallon of 66.9 Brix at 20 C weighs 11.0759 lb in air (the check value of
// [yield.Weighed]): a drum of 50 lb that weighs 61.0759 lb full holds one, and one of
// 160.759 lb holds ten. Of a gallon A 7 pints are bottled, seven eighths: the eighth may
// wait for jars and is in stock. Of B 15 half pints are bottled, 0.9375 gal: 0.0625 gal
// were filtered. C is moldy. Of E 37 qt are bottled, 9.25 gal: three quarts can be filled
// yet, though they are but 7.5 percent.
func drums(t *testing.T, b clitest.Binary) {
	dir := clitest.Folder(t, map[string]string{"days.csv": someSap, "sugarhouse.txt": "gallons: US\nsyrup hydrometer: marked at 68 F\n",
		"batches.csv": "batch,date,volume_gal,weight_lb,gross_lb,tare_lb,reading_brix,cup_f,temp_f,mold\nA,2034-03-02,,,61.0759,50,66.9,68,68,\nB,2034-03-02,1,,,,66.9,68,68,\n" +
			"C,2034-03-02,1,,,,66.9,68,68,yes\nE,2034-03-03,,,160.759,50,66.9,68,68,\n",
		"bottled.csv": "date,batch,size,count\n2034-03-05,A,1 pt,7\n2034-03-05,B,1/2 pt,15\n2034-03-05,E,1 qt,37\n"})
	var page struct {
		Batches struct {
			Batches []struct {
				Batch    string
				Drawn    float64 `json:"drawn_us_gal"`
				Filtered float64 `json:"filtered_us_gal"`
				Left     float64 `json:"left_us_gal"`
			}
		}
	}
	parts(t, b, &page, "-dir", dir)
	want := []struct {
		batch                 string
		drawn, filtered, left float64
	}{{"A, drum", 1, 0, 0.125}, {"B", 1, 0.0625, 0}, {"C", 1, 0, 0}, {"E, drum", 10, 0, 0.75}}
	if len(page.Batches.Batches) != len(want) {
		t.Fatalf("%+v", page)
	}
	for i, w := range want {
		if g := page.Batches.Batches[i]; g.Batch != w.batch || !near(g.Drawn, w.drawn, 1e-3) || !near(g.Filtered, w.filtered, 1e-3) || !near(g.Left, w.left, 1e-3) {
			t.Errorf("%+v, not %+v", g, w)
		}
	}
	// Without a bottle nothing tells what the filter kept.
	none := clitest.Folder(t, map[string]string{"days.csv": someSap, "sugarhouse.txt": "gallons: US\n", "batches.csv": "batch,date,volume_gal,reading_brix,cup_f\nA,2034-03-02,1,66.9,60\n"})
	for path, inside := range map[string]bool{dir: false, none: true} {
		text, _ := b.Brief(t, "", "-dir", path)
		if strings.Contains(text, "with what filters") != inside || strings.Contains(text, "filtered or left") == inside {
			t.Errorf("filtered inside stock: not %v\n%s", inside, text)
		}
	}
}
