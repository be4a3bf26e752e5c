package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A season with a gathering given twice, a point that slipped, a lot packed on the
// day before it was drawn and a source in small letters: all count, and are told.
func TestLookAgain(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{
		"gatherings.csv": "time,source,volume_l,reading_brix,read_at_f\n2031-03-08 16:00,Ridge,200,2.1,38\n2031-03-08 16:00,Ridge,200,2.1,38\n" +
			"2031-03-09 16:00,Ridge,210,23,38\n2031-03-10 16:00,Ridge,2062,2.2,38\n2031-03-11 16:00,Ridge,190,2.3,38\n2031-03-12 16:00,ridge,195,2.2,38\n",
		"draws.csv":   "time,lot,weight_lb,reading_brix,cup_f\n2031-03-09 20:00,A1,10,59,211\n",
		"packing.csv": "day,lot,size_ml,count\n2031-03-08,A1,250,4\n2031-03-09,A1,250,5\n",
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, json := range []string{"", "-json"} {
		args := []string{"-dir", dir}
		if json != "" {
			args = append(args, json)
		}
		var out, errs bytes.Buffer
		if status := program().Main(args, nil, &out, &errs); status != 0 {
			t.Fatalf("status %d: %s", status, errs.String())
		}
		page := strings.Join(strings.Fields(out.String()), " ")
		for _, want := range []string{"gatherings.csv:3: the same row as line 2", "gatherings.csv:4: strength 23 Brix is far", "gatherings.csv:5: volume 2062 L is far",
			"differs only in capitals", "packing.csv:2: lot", "was packed on 2031-03-08, before it was drawn: 2031-03-09"} {
			if !strings.Contains(page, want) {
				t.Errorf("%v: no %q in %s", args, want, page)
			}
		}
		if strings.Contains(page, "packing.csv:3") || strings.Contains(page, "gatherings.csv:6") {
			t.Errorf("says too much: %s", page)
		}
	}
}
