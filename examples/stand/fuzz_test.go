package main

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// Whatever the files hold, the stand is planned or refused in one line; a plan
// is JSON whose taps are holes to drill, drilled or told to find no room, and
// the drawing is XML.
func FuzzStand(f *testing.F) {
	var files [2]string
	for i, name := range []string{"trees.csv", "holes.csv"} {
		text, err := os.ReadFile(filepath.Join("testdata/pasture", name))
		if err != nil {
			f.Fatal(err)
		}
		files[i] = string(text)
	}
	f.Add(files[0], files[1], "P7")
	f.Add("tree,dbh_cm,species,vigor\na,60,maple,\n", "tree,year,along_cm,height_m\na,1703,0,1\n", "a")
	f.Add("tree,girth_m,species,vigor,growth_mm\na,15.7,red maple,healthy,25\n", "tree,year,bearing_deg,height_ft\na,9998,360,20\na,1701,0,1\n", "a")
	f.Add("tree,girth_in,species,vigor\nx,60,maple,slow\nx,61,maple?,\n", "tree,year,bearing_deg,height_ft\nx/2,2030,0,4\n", "x/1")
	f.Fuzz(func(t *testing.T, trees, holes, name string) {
		path := filepath.Join(t.TempDir(), "holes.csv")
		if err := os.WriteFile(path, []byte(holes), 0o644); err != nil {
			t.Fatal(err)
		}
		run := func(args ...string) (int, string) {
			var out, errs bytes.Buffer
			status := program().Main(append([]string{"-dir", "testdata/bare", "-tree-file", "-", "-hole-file", path}, args...), strings.NewReader(trees), &out, &errs)
			bad := status == cli.BadInput
			if bad != (out.Len() == 0) || bad != (errs.Len() > 0) || status == cli.Failed {
				t.Fatalf("status %d, %q, %d bytes", status, errs.String(), out.Len())
			}
			lines := 0
			for line := range strings.Lines(errs.String()) { // a line for each mistake of a file, and the rest counted
				if lines++; !strings.HasPrefix(line, "stand: ") || !strings.HasSuffix(line, "\n") || lines > 2*20+2 {
					t.Fatalf("line %d of %q", lines, errs.String())
				}
			}
			return status, out.String()
		}
		status, out := run("-json")
		if status != cli.OK {
			return
		}
		var s sheet
		if err := json.Unmarshal([]byte(out), &s); err != nil {
			t.Fatal(err)
		}
		if s.Places.Holes > s.Stand.Taps || len(s.Trees.Trees)+len(s.Alone.Trees) != s.Stand.Trunks {
			t.Errorf("%d holes for %d taps, %d trunks", s.Places.Holes, s.Stand.Taps, s.Stand.Trunks)
		}
		if status, out = run("-print", "-"); status != cli.OK || strings.Count(out, "<script") > 0 {
			t.Errorf("drill sheet: status %d\n%s", status, out)
		}
		if status, out = run("-map", name, "-svg", "-"); status == cli.OK {
			d := xml.NewDecoder(strings.NewReader(out))
			for {
				if _, err := d.Token(); errors.Is(err, io.EOF) {
					break
				} else if err != nil {
					t.Fatalf("%v in\n%s", err, out)
				}
			}
			if strings.Contains(out, "NaN") || strings.Contains(out, "Inf") {
				t.Errorf("no number in\n%s", out)
			}
		}
	})
}
