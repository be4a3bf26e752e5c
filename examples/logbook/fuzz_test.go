package main

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/internal/cli"
)

// Whatever the files hold, the book is read or refused, what is counted is
// finite, and the page and the chart can be drawn.
func FuzzBook(f *testing.F) {
	seed := func(dir string) {
		var files [5]string
		for i, name := range names {
			content, err := os.ReadFile(filepath.Join("testdata", dir, name))
			if err != nil && !errors.Is(err, fs.ErrNotExist) {
				f.Fatal(err)
			}
			files[i] = string(content)
		}
		f.Add(files[0], files[1], files[2], files[3], files[4])
	}
	seed("season")
	seed("torn")
	f.Fuzz(func(t *testing.T, sap, boils, draws, packing, fuel string) {
		files := fstest.MapFS{}
		for i, content := range []string{sap, boils, draws, packing, fuel} {
			files[names[i]] = &fstest.MapFile{Data: []byte(content)}
		}
		b := seasonOf(files, io.Discard)
		b.given.sapGauge, b.given.sapLimit, b.given.syrupGauge, b.given.syrupLimit, b.given.heldGauge, b.given.heldLimit = 2, 0.1, 2, 0.3, 5, 1
		if b.read() != nil {
			return
		}
		account, err := b.balance()
		if err != nil {
			t.Fatal(err)
		}
		if !(account.SugarIn > 0) || math.IsInf(float64(account.SugarIn), 0) || math.IsNaN(float64(account.Lost)) {
			t.Errorf("account %+v", account)
		}
		page, err := b.sheet(account)
		if err != nil {
			t.Fatal(err)
		}
		var e cli.Env
		e.Out = new(bytes.Buffer)
		if err := page.JSON(&e); err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(b.chart()), "NaN") {
			t.Errorf("chart:\n%s", b.chart())
		}
	})
}

// names are the files of a season.
var names = [...]string{"gatherings.csv", "boils.csv", "draws.csv", "packing.csv", "fuel.csv"}
