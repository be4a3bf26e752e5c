package main

import (
	"bytes"
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
)

// names are the files of a season.
var names = [...]string{folder.DaysFile, folder.BatchesFile, folder.BottledFile, folder.BlendsFile, folder.PanFile}

// Whatever the files hold, the folder is refused, or its book is read or refused,
// what is counted is finite, and the page and the chart can be drawn.
func FuzzBook(f *testing.F) {
	var seed [len(names)]string
	for i, name := range names {
		content, err := sugarhouse.Files().ReadFile(name)
		if err != nil && name != folder.BlendsFile {
			f.Fatal(err)
		}
		seed[i] = string(content)
	}
	f.Add(seed[0], seed[1], seed[2], "date,from,into,volume\n2034-03-12,34-4,34-5,1 qt\n", seed[4])
	f.Fuzz(func(t *testing.T, days, batches, bottled, blends, pan string) {
		files := fstest.MapFS{folder.SettingsFile: {Data: []byte("gallons: US\npan: 2 x 6 ft\ntank: big, 120 gallons, 2.5 gallons an inch\nbarrow: 1/25 cord\n")}}
		for i, content := range []string{days, batches, bottled, blends, pan} {
			files[names[i]] = &fstest.MapFile{Data: []byte(content)}
		}
		house, err := folder.Open(files, "", 0)
		if err != nil {
			return
		}
		b := newSeason()
		b.house = house
		b.given.sapGauge, b.given.sapLimit, b.given.syrupGauge, b.given.syrupLimit, b.given.heldGauge, b.given.heldLimit = 2, 0.1, 2, 0.3, 5, 1
		if b.open() != nil {
			return
		}
		account, err := b.balance()
		if err != nil {
			return
		}
		if !(account.SugarIn > 0) || math.IsInf(float64(account.SugarIn), 0) || math.IsNaN(float64(account.Lost)) {
			t.Errorf("account %+v", account)
		}
		page, err := b.sheet(account)
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(page.Brief.Verdict, "NaN") || bytes.Contains(b.chart(), []byte("NaN")) {
			t.Errorf("%s\n%s", page.Brief.Verdict, b.chart())
		}
	})
}
