package main

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// An oldOne is an old hole on its trunk as the test reads them, in inches.
type oldOne struct {
	year          int
	turn, height  float64
	girth, growth float64
}

// rows reads a CSV as maps from column to cell.
func rows(t *testing.T, path string) (all []map[string]string) {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, name := range lines[0] {
			row[name] = line[i]
		}
		all = append(all, row)
	}
	return all
}

func inches(t *testing.T, cell string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// oldHoles reads the old holes of each trunk anew, without the program.
func oldHoles(t *testing.T, trees, holes string) map[string][]oldOne {
	t.Helper()
	girth, growth, stems := map[string]float64{}, map[string]float64{}, map[string]int{}
	for _, row := range rows(t, trees) {
		label := row["tree"]
		stems[label]++
		for _, name := range []string{label, label + "/" + strconv.Itoa(stems[label])} {
			girth[name] = inches(t, row["girth_in"])
			if row["growth_in"] != "" {
				growth[name] = inches(t, row["growth_in"])
			}
		}
	}
	old := map[string][]oldOne{}
	for _, row := range rows(t, holes) {
		h := oldOne{int(inches(t, row["year"])), 0, inches(t, row["height_in"]), girth[row["tree"]], growth[row["tree"]]}
		if along := row["along_in"]; along != "" {
			h.turn = inches(t, along) / h.girth
		} else {
			h.turn = inches(t, row["bearing_deg"]) / 360
		}
		old[row["tree"]] = append(old[row["tree"]], h)
	}
	return old
}

// Every hole of the plan keeps the published distances from every old hole,
// reckoned here from the files: 2 in to the side of last year's holes at any
// height and 6 in up or down within 6 in to the side; 2 in to the side of older
// ones within 12 in up or down while less new wood than the depth covers them;
// 6 in between holes of one year; between 30 and 54 in high.
func distances(t *testing.T, b clitest.Binary) {
	const year, side, up, open, column, slack = 2034, 2, 6, 6, 12, 1e-6
	big := invent(t, 1500, 4)
	for _, c := range []struct {
		trees, holes string
		args         []string
	}{
		{"testdata/pasture/trees.csv", "testdata/pasture/holes.csv", pasture()},
		{big[1], big[3], big},
		{big[1], big[3], append([]string{"-guideline", "NAMSPM-traditional", "-slow", "tap"}, big...)},
	} {
		old := oldHoles(t, c.trees, c.holes)
		s := run(t, b, "", append([]string{"-season", "2034"}, c.args...)...)
		girth, beside := map[string]float64{}, map[string][]float64{}
		for _, tree := range s.Trees.Trees {
			girth[tree.Tree] = tree.Girth
		}
		if len(s.Places.At) < 10 {
			t.Fatalf("%d holes only", len(s.Places.At))
		}
		for _, p := range s.Places.At {
			round := girth[p.Tree]
			apart := func(a, b float64) float64 {
				d := math.Abs(a - b)
				return math.Min(d, round-d)
			}
			if p.Height < 30-slack || p.Height > 54+slack || math.Abs(p.Bearing/360*round-p.FromMark) > 1e-4 || p.FromMark < 0 || p.FromMark >= round {
				t.Errorf("%+v is out of reach or off the trunk of %v", p, round)
			}
			for _, other := range beside[p.Tree] {
				if apart(other, p.FromMark) < open-slack {
					t.Errorf("%+v stands near this year's hole at %v", p, other)
				}
			}
			beside[p.Tree] = append(beside[p.Tree], p.FromMark)
			nearest := math.Inf(1)
			for _, h := range old[p.Tree] {
				dx, dz := apart(h.turn*round, p.FromMark), math.Abs(h.height-p.Height)
				nearest = math.Min(nearest, math.Hypot(dx, dz))
				age := year - h.year
				switch {
				case age == 1 && (dx < side-slack || dx < open-slack && dz < up-slack):
					t.Errorf("%+v is %v over and %v up from last year's hole %+v", p, dx, dz, h)
				case age > 1 && float64(age)*h.growth < p.Depth-slack && dx < side-slack && dz < column-slack:
					t.Errorf("%+v is %v over and %v up from the stain of %+v", p, dx, dz, h)
				}
			}
			if told := p.Nearest != nil; told != (len(old[p.Tree]) > 0) || told && math.Abs(*p.Nearest-nearest) > 1e-4 {
				t.Errorf("%+v: nearest is %v", p, nearest)
			}
		}
	}
}
