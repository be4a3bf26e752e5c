package main

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestStand(t *testing.T) {
	b := clitest.Build(t)
	t.Run("pages", func(t *testing.T) { pages(t, b) })
	t.Run("briefs", func(t *testing.T) { briefs(t, b) })
	t.Run("paper", func(t *testing.T) { paper(t, b) })
	t.Run("added", func(t *testing.T) { added(t, b) })
	t.Run("sums agree", func(t *testing.T) { sums(t, b) })
	t.Run("counted by hand", func(t *testing.T) { byHand(t, b) })
	t.Run("distances", func(t *testing.T) { distances(t, b) })
	t.Run("columns", func(t *testing.T) { columns(t, b) })
	t.Run("years", func(t *testing.T) { years(t, b) })
	t.Run("ahead", func(t *testing.T) { aheads(t, b) })
	t.Run("gear", func(t *testing.T) { gears(t, b) })
	t.Run("drawings", func(t *testing.T) { drawings(t, b) })
	b.Refuses(t, "stand", badFlags())
	b.Refuses(t, "stand", badTrees())
	b.Refuses(t, "stand", badHoles())
}

func pages(t *testing.T, b clitest.Binary) {
	b.Golden(t, "demo.txt")
	b.Golden(t, "demo-metric.txt", "-metric")
	b.Golden(t, "demo.json", "-json")
	b.Golden(t, "full.txt", "-full")
	b.Golden(t, "quebec.txt", pasture("-full", "-guideline", "QC-public-2004", "-slow", "tap", "-bit", "7/16 in", "-depth", "2 in", "-bark", "0.5 in", "-metric")...)
	b.Golden(t, "help.txt", "-h", "-full")
	b.Golden(t, "../../../docs/trunk.svg", "-map", "G7", "-season", "2035", "-svg", "-") // the README shows it
	b.Golden(t, "stem-metric.svg", pasture("-map", "P9/2", "-metric", "-svg", "-")...)
	b.Golden(t, "alone.svg", pasture("-map", "P8", "-svg", "-")...)
	b.Golden(t, "sheet.html", pasture("-print", "-")...)
}

// sheet is what the tests read of the JSON.
type sheet struct {
	Verdict string `json:"verdict"`
	Parts   `json:"parts"`
}

type Parts struct {
	Stand struct {
		Trunks   int     `json:"trunks"`
		Taps     int     `json:"taps"`
		Basal    float64 `json:"basal_area_ft2"`
		PerAcre  float64 `json:"taps_per_acre"`
		PerHa    float64 `json:"taps_per_hectare"`
		BasalAc  float64 `json:"basal_area_per_acre_ft2"`
		BasalHa  float64 `json:"basal_area_per_hectare_m2"`
		OldHoles int     `json:"old_holes"`
	} `json:"stand"`
	Guidelines struct {
		Totals []struct {
			Guideline string `json:"guideline"`
			Taps      int    `json:"taps"`
			Tapped    int    `json:"tapped"`
			Silent    int    `json:"silent"`
		} `json:"totals"`
	} `json:"guidelines"`
	Classes struct {
		Histogram []struct {
			From   float64 `json:"from_in"`
			Trunks int     `json:"trunks"`
			Taps   int     `json:"taps"`
		} `json:"histogram"`
	} `json:"classes"`
	Trees struct {
		Trees []struct {
			Tree  string  `json:"tree"`
			Girth float64 `json:"girth_in"`
			Taps  int     `json:"taps"`
			All   [2]int  `json:"all"`
		} `json:"trees"`
	} `json:"trees"`
	Alone struct {
		Reasons []struct {
			Reason string `json:"reason"`
			Trunks int    `json:"trunks"`
		} `json:"reasons"`
		Trees []struct {
			Tree   string `json:"tree"`
			Reason string `json:"reason"`
		} `json:"trees"`
	} `json:"alone"`
	Places struct {
		Choose   int `json:"choose"`
		ToChoose []struct {
			Tree  string   `json:"tree"`
			Holes int      `json:"holes"`
			Apart *float64 `json:"apart_in"`
			Depth float64  `json:"depth_in"`
		} `json:"to_choose"`
		Holes   int      `json:"holes"`
		Open    int      `json:"open"`
		At      []place  `json:"holes_at"`
		Remarks []string `json:"remarks"`
	} `json:"places"`
}

type place struct {
	Tree     string   `json:"tree"`
	Bearing  float64  `json:"bearing_deg"`
	FromMark float64  `json:"from_mark_in"`
	Height   float64  `json:"height_in"`
	Depth    float64  `json:"depth_in"`
	Nearest  *float64 `json:"nearest_in"`
	Year     *int     `json:"nearest_year"`
}

func run(t *testing.T, b clitest.Binary, stdin string, args ...string) (s sheet) {
	t.Helper()
	status, out, errs := b.Run(t, stdin, append([]string{"-json"}, args...)...)
	if status != 0 || errs != "" {
		t.Fatalf("%v: status %d, %s", args, status, errs)
	}
	if err := json.Unmarshal([]byte(out), &s); err != nil {
		t.Fatal(err)
	}
	return s
}

// What stands tree by tree on the page adds up to its totals, by whatever
// guideline.
func sums(t *testing.T, b clitest.Binary) {
	big := invent(t, 2000, 3)
	for _, args := range [][]string{
		{}, pasture(), pasture("-slow", "tap"), pasture("-guideline", "UVM-school"), pasture("-guideline", "QC-public-2018to2022"), pasture("-class", "1 in"),
		pasture("-open", "40 in"), big, append([]string{"-guideline", "NAMSPM-traditional", "-slow", "tap", "-growth", "0.05 in"}, big...),
	} {
		t.Run(strings.Join(args, " "), func(t *testing.T) {
			s := run(t, b, "", args...)
			taps, holes := 0, map[string]int{}
			for _, tree := range s.Trees.Trees {
				taps += tree.Taps
				holes[tree.Tree] = tree.Taps
				if tree.Taps < tree.All[0] || tree.Taps > tree.All[1] || tree.Taps < 1 {
					t.Errorf("%s: %d taps, all guidelines %v", tree.Tree, tree.Taps, tree.All)
				}
			}
			first := s.Guidelines.Totals[0]
			if taps != s.Stand.Taps || taps != first.Taps || len(s.Trees.Trees) != first.Tapped || taps == 0 || len(s.Guidelines.Totals) != 6 {
				t.Errorf("%d taps tree by tree on %d trunks; the page says %d and %+v", taps, len(s.Trees.Trees), s.Stand.Taps, first)
			}
			if n := len(s.Trees.Trees) + len(s.Alone.Trees); n != s.Stand.Trunks {
				t.Errorf("%d trunks tapped or left alone of %d", n, s.Stand.Trunks)
			}
			alone := 0
			for _, r := range s.Alone.Reasons {
				alone += r.Trunks
			}
			if alone != len(s.Alone.Trees) {
				t.Errorf("%d left alone by reason, %d by tree", alone, len(s.Alone.Trees))
			}
			trunks, byClass := 0, 0
			for _, c := range s.Classes.Histogram {
				trunks, byClass = trunks+c.Trunks, byClass+c.Taps
			}
			if trunks != s.Stand.Trunks || byClass != taps {
				t.Errorf("%d trunks and %d taps by class", trunks, byClass)
			}
			// Taps without a hole are told.
			for _, p := range s.Places.At {
				holes[p.Tree]--
			}
			// A trunk without a record has none, and is told.
			for _, c := range s.Places.ToChoose {
				if holes[c.Tree] != c.Holes {
					t.Errorf("%s: %d holes to choose of %d", c.Tree, c.Holes, holes[c.Tree])
				}
				holes[c.Tree] = 0
			}
			short := 0
			for tree, n := range holes {
				short += n
				told := false
				for _, r := range s.Places.Remarks {
					told = told || strings.HasPrefix(r, tree+": no clear place for "+strconv.Itoa(n)+" hole")
				}
				if n < 0 || told != (n > 0) {
					t.Errorf("%s: %d taps without a hole, told %v", tree, n, told)
				}
			}
			if len(s.Places.At) != s.Places.Holes || s.Places.Holes+s.Places.Choose+short != taps {
				t.Errorf("%d holes in the list, %d told, %d short of %d taps", len(s.Places.At), s.Places.Holes, short, taps)
			}
		})
	}
}

// An invented stand small enough to count by hand.
func byHand(t *testing.T, b clitest.Binary) {
	const trees = "tree,dbh_in,species,vigor\n" +
		"a,11.9,sugar maple,healthy\nb,12,sugar maple,healthy\nc,18,red maple,\nd,18.1,sugar maple,healthy\ne,30,sugar maple,slow\n" +
		"f,30,sugar maple,unhealthy\ng,20,,healthy\nh,20,maple?,healthy\ni,20,birch,healthy\nj,24.5,maple,healthy\nj,13,maple,healthy\n"
	s := run(t, b, trees, "-tree-file", "-", "-area", "2 ac")
	taps := map[string]int{}
	for _, tree := range s.Trees.Trees {
		taps[tree.Tree] = tree.Taps
	}
	for tree, want := range map[string]int{"b": 1, "c": 1, "d": 2, "j/1": 2, "j/2": 1} {
		if taps[tree] != want {
			t.Errorf("%s: %d taps, want %d", tree, taps[tree], want)
		}
	}
	why := map[string]string{}
	for _, tree := range s.Alone.Trees {
		why[tree.Tree] = tree.Reason
	}
	for tree, want := range map[string]string{"a": "small", "e": "slow", "f": "unhealthy", "g": "species not sure", "h": "species not sure", "i": "no maple"} {
		if !strings.HasPrefix(why[tree], want) {
			t.Errorf("%s: %q, want %q", tree, why[tree], want)
		}
	}
	if len(taps) != 5 || len(why) != 6 || s.Stand.Taps != 7 || math.Abs(s.Stand.PerAcre-3.5) > 1e-9 {
		t.Errorf("%v, %v, %+v", taps, why, s.Stand)
	}
	// A hectare is 2.4710538 acres.
	if math.Abs(s.Stand.PerHa-3.5*2.4710538) > 1e-6 {
		t.Errorf("%v taps to the hectare", s.Stand.PerHa)
	}
	// pi/4 of the sum of squares of the diameters, over 144.
	squares := 11.9*11.9 + 144 + 18*18 + 18.1*18.1 + 2*30*30 + 3*20*20 + 24.5*24.5 + 13*13
	if want := math.Pi / 4 * squares / 144; math.Abs(s.Stand.Basal-want) > 1e-6 || math.Abs(s.Stand.BasalAc-want/2) > 1e-6 {
		t.Errorf("basal area %v and %v to the acre, want %v", s.Stand.Basal, s.Stand.BasalAc, want)
	}
	// Of the trunks that are asked about, by the school sheet: 11.9, 12, 13 in one
	// each, 18 and 18.1 in two each, none of 24.5 in (rounded down to 24: two), the
	// unhealthy one and the birch.
	for _, g := range s.Guidelines.Totals {
		if g.Guideline == "UVM-school" && (g.Taps != 9 || g.Silent != 2) {
			t.Errorf("%+v", g)
		}
	}
	// A slow trunk that is tapped gets one tap, an inch deep.
	s = run(t, b, "tree,girth_cm,species,vigor\ne,240,sugar maple,slow\n", "-tree-file", "-", "-slow", "tap")
	if s.Stand.Taps != 1 || len(s.Places.ToChoose) != 1 || math.Abs(s.Places.ToChoose[0].Depth-1) > 1e-9 || s.Places.ToChoose[0].Apart != nil || s.Verdict != "Drill 1 hole in 1 of 1 trunk." {
		t.Errorf("%+v", s)
	}
}

// Columns may come in any of their units, a hole by bearing or by tape.
func columns(t *testing.T, b clitest.Binary) {
	const trees = "note,vigor,tree,species,girth_%s,growth_%s\nx,healthy,a,sugar maple,%s,%s\n"
	write := func(unit, grown, girth, growth string) string {
		path := filepath.Join(t.TempDir(), "trees.csv")
		text := strings.NewReplacer("girth_%s", "girth_"+unit, "growth_%s", "growth_"+grown, "%s,%s", girth+","+growth).Replace(trees)
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
		return path
	}
	want := run(t, b, "tree,year,bearing_deg,height_in\na,2033,90,40\n", "-tree-file", write("in", "in", "60", "0.05"), "-hole-file", "-")
	for _, got := range []sheet{
		run(t, b, "tree,year,along_cm,height_cm,bit_mm,depth_cm\na,2033,38.1,101.6,8,4\n", "-tree-file", write("cm", "mm", "152.4", "1.27"), "-hole-file", "-"),
		run(t, b, "tree,year,bearing_deg,along_in,height_ft,bit_in\na,2033,,15,3.33333333333,\n", "-tree-file", write("ft", "cm", "5", "0.127"), "-hole-file", "-"),
	} {
		if len(got.Places.At) != 2 || math.Abs(got.Places.At[0].FromMark-want.Places.At[0].FromMark) > 1e-6 || math.Abs(got.Places.At[0].Height-want.Places.At[0].Height) > 1e-6 {
			t.Errorf("got %+v, want %+v", got.Places.At, want.Places.At)
		}
	}
}

// The year is the one after the record unless it is told; holes of that year
// are not drilled twice.
func years(t *testing.T, b clitest.Binary) {
	const holes = "tree,year,bearing_deg,height_in\nP7,2033,90,40\nP7,2033,270,40\nP3,2033,90,40\n"
	path := filepath.Join(t.TempDir(), "holes.csv")
	if err := os.WriteFile(path, []byte(holes), 0o644); err != nil {
		t.Fatal(err)
	}
	trees := "testdata/pasture/trees.csv"
	if s := run(t, b, "", "-tree-file", trees, "-hole-file", path); !strings.HasSuffix(s.Verdict, " in 2034; leave 5 alone.") || s.Places.Holes+s.Places.Choose != s.Stand.Taps || s.Places.Open != 0 {
		t.Errorf("%s, %+v", s.Verdict, s.Places)
	}
	s := run(t, b, "", "-tree-file", trees, "-hole-file", path, "-season", "2033")
	if !strings.HasSuffix(s.Verdict, " in 2033; leave 5 alone.") || s.Places.Open != 3 || s.Places.Holes+s.Places.Choose != s.Stand.Taps-3 {
		t.Errorf("%s, %+v", s.Verdict, s.Places)
	}
	for _, p := range s.Places.At {
		if p.Tree == "P7" {
			t.Error("P7 is drilled a third time")
		}
	}
	// Holes of later years are not of the plan.
	if s := run(t, b, "", "-tree-file", trees, "-hole-file", path, "-season", "2032"); s.Stand.OldHoles != 0 || s.Places.Choose != s.Stand.Taps {
		t.Errorf("%s, %+v", s.Verdict, s.Places)
	}
}
