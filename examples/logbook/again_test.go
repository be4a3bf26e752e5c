package main

import (
	"bytes"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A season with a gathering given twice, a point that slipped, a batch bottled on the
// day before it was drawn, a tank in small letters and wood that holds less than what
// was boiled: all count, and are told.
func TestLookAgain(t *testing.T) {
	dir := clitest.Folder(t, map[string]string{
		"days.csv": "date,tank,sap_l,sugar_brix,read_at_f,boiled_l,wood\n2031-03-08,Ridge,200,2.1,38,,\n2031-03-08,Ridge,200,2.1,38,,\n" +
			"2031-03-09,Ridge,210,23 Brix,38,,\n2031-03-10,Ridge,2062,2.2,38,,\n2031-03-11,Ridge,190,2.3,38,,\n2031-03-12,ridge,195,2.2,38,,\n2031-03-13,,,,,190,0.001 cord\n",
		"batches.csv": "batch,date,weight_lb,reading_brix,cup_f\nA1,2031-03-09,10,59,211\n",
		"bottled.csv": "date,batch,size,count\n2031-03-08,A1,250 mL,4\n2031-03-09,A1,250 mL,5\n",
	})
	for _, form := range []string{"-full", "-json"} {
		var out, errs bytes.Buffer
		if status := program().Main([]string{"-dir", dir, form}, nil, &out, &errs); status != 0 {
			t.Fatalf("status %d: %s", status, errs.String())
		}
		page := strings.Join(strings.Fields(out.String()), " ")
		for _, want := range []string{"days.csv:3: the same row as line 2", "days.csv:4: strength 23 Brix is far", "days.csv:5: volume 2062 L is far",
			"differs only in capitals", "bottled.csv:2: lot", "was packed on 2031-03-08, before it was drawn: 2031-03-09", "days.csv:8: column wood: efficiency of this boil",
			"Look again at 6 rows: -full lists them."} {
			if !strings.Contains(page, want) {
				t.Errorf("%v: no %q in %s", form, want, page)
			}
		}
		if strings.Contains(page, "bottled.csv:3") || strings.Contains(page, "days.csv:6") {
			t.Errorf("says too much: %s", page)
		}
	}
}
