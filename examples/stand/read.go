package main

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Limits on what is read. A page holds all its rows until it is whole. Measured
// on amd64 (time -v, most resident memory): 50,000 trunks of 100 to 200 in girth
// with labels of 34 letters and 200,000 old holes take 217 MB as a first page, 479 MB
// with -full, 635 MB as JSON and 422 MB as a drill sheet.
const (
	mostTrunks   = 50_000
	mostHoles    = 200_000
	mostOnATrunk = 10_000 // as tapping.Planner takes
	mostStems    = 20
	longestLabel = 40
	firstYear    = 1700
	mostYear     = 9999
	mostGrowth   = 1 * units.Inch
	growthHint   = "growth of the radius a year: half the growth of the diameter, often 0.02 to 0.15 in"
)

// A trunk is one stem of the stand.
type trunk struct {
	tapping.Trunk
	label       string
	stem, stems int    // of the fork; 1 of 1 otherwise
	sure        bool   // of the species
	called      string // the species as the file has it, of a tree that is no maple
	growth      units.Length
	doubt       units.Share // of the growth, where it is from two girths
	record      []tapping.OldHole
	answer
}

// name is the label, with the number of the stem in a fork.
func (t *trunk) name() string {
	if t.stems == 1 {
		return t.label
	}
	return t.label + "/" + strconv.Itoa(t.stem)
}

// girth is the girth at breast height.
func (t *trunk) girth() units.Length { return t.DBH() * math.Pi }

// A stand is the trees that were read, and the plan for them.
type stand struct {
	given  *setup
	trunks []trunk
	byName map[string]int // name of a trunk, and label of a fork
	trees  int
	holes  int
	year   int // 0 if neither record nor flag tell
	counts
	gears []gear

	house    string // its name
	invented bool   // nobody's own trees
}

// read reads the trees and their old holes.
func (s *setup) read(e *cli.Env) (*stand, error) {
	st := &stand{given: s, byName: map[string]int{}, year: s.year}
	progress := e.Progress()
	defer progress.Done()
	err := eachRow(e, progress, "tree-file", s.treeFile, st.treeColumns())
	if err == nil && s.holeFile != "" {
		err = eachRow(e, progress, "hole-file", s.holeFile, st.holeColumns())
	}
	return st, err
}

// A table is how a file is read: its columns, those that the header must have
// although a cell may be empty, and what is done with each row.
type table struct {
	cols   []records.Col
	header []string
	row    func(*records.Reader) error
}

// eachRow reads a file and wants a row at least.
func eachRow(e *cli.Env, progress *cli.Progress, flag, path string, t table) error {
	in, err := e.Open(flag, path)
	if err != nil {
		return err
	}
	defer in.Close()
	r, err := records.New(path, progress.Reader(path, 0, in), t.cols...)
	if err != nil {
		return err
	}
	for _, name := range t.header {
		if !r.Has(name) {
			return r.Fail("", fmt.Errorf("no column %s: cells may be empty, but a misspelled column would be missed", name))
		}
	}
	return cli.Rows(r, math.MaxInt, "", func() error { return t.row(r) })
}

// species names the species of a trunk as the page does.
func (t *trunk) species() string {
	return cmp.Or(t.called, t.Species().String())
}

// treeColumns reads the trees.
func (st *stand) treeColumns() table {
	var label, species, vigor string
	var girth, dbh, growth, first units.Length
	var since float64
	last := "" // label of the row before
	return table{
		cols: []records.Col{
			records.Text("tree", &label), records.Length("girth", &girth).Optional(), records.Length("dbh", &dbh).Optional(),
			records.Text("species", &species).Optional(), records.Text("vigor", &vigor).Optional(), records.Length("growth", &growth).Optional(),
			records.Length("first_girth", &first).Optional(), records.Number("years_since", &since).Optional(),
		},
		header: []string{"species", "vigor"},
		row: func(r *records.Reader) error {
			if len(st.trunks) == mostTrunks {
				return r.Fail("", fmt.Errorf("more than %d trunks: plan the stand in parts, a file for each bush or section", mostTrunks))
			}
			if err := checkLabel(label); err != nil {
				return r.Fail("tree", err)
			}
			if _, again := st.byName[label]; again && label != last {
				return r.Fail("tree", fmt.Errorf("%s stands further up: stems of one tree follow each other", label))
			}
			t, wrong, err := newTrunk(girth, dbh, species, vigor)
			if err != nil {
				return r.Fail(wrong, err)
			}
			t.label, t.growth = label, st.given.growth
			if !math.IsNaN(float64(growth)) {
				if !(growth >= 0 && growth <= mostGrowth) {
					return r.Fail("growth", errors.New(growthHint))
				}
				t.growth = growth
			} else if wrong, err := t.regrow(first, since); err != nil {
				return r.Fail(wrong, err)
			}
			if label == last && st.trunks[len(st.trunks)-1].stems == mostStems {
				return r.Fail("tree", fmt.Errorf("more than %d stems of %s: give each tree a label of its own", mostStems, label))
			}
			st.add(t, label == last)
			last = label
			return nil
		},
	}
}

// regrow finds the growth from an earlier girth, if it was told.
func (t *trunk) regrow(first units.Length, since float64) (wrong string, err error) {
	told := !math.IsNaN(float64(first))
	if told == math.IsNaN(since) {
		return "years_since", errors.New("an earlier girth goes with the years since: give both or none")
	}
	if !told {
		return "", nil
	}
	if since != math.Trunc(since) || !(since >= 1 && since <= 200) {
		return "years_since", errors.New("whole years between the two girths, 1 to 200")
	}
	g, err := tapping.GrowthFromGirths(first, t.girth(), int(since), tapeOff)
	if err != nil {
		return "first_girth", err
	}
	t.growth, t.doubt = g.PerYear, g.DoubtShare()
	return "", nil
}

// checkLabel refuses what cannot be told on a page or mistaken for a stem.
func checkLabel(label string) error {
	switch {
	case utf8.RuneCountInString(label) > longestLabel:
		return fmt.Errorf("a label of more than %d letters", longestLabel)
	case strings.Contains(label, "/"):
		return errors.New("a label has no slash: P9/2 is the second stem of tree P9, and its stems are lines of the same label")
	}
	return nil
}

// newTrunk makes a trunk of the cells. The error goes with the column that is
// wrong.
func newTrunk(girth, dbh units.Length, species, vigor string) (t trunk, wrong string, err error) {
	wrong = "dbh"
	if measured := !math.IsNaN(float64(girth)); measured == !math.IsNaN(float64(dbh)) {
		return t, "girth", errors.New("give either the girth or the diameter (dbh) at breast height")
	} else if measured {
		wrong = "girth"
		if dbh, err = tapping.DiameterFromGirth(girth); err != nil {
			return t, wrong, err
		}
	}
	if !(dbh >= units.Inch) {
		return t, wrong, errors.New("less than 1 in through: not a trunk; mind the unit in the header")
	}
	name, unsure := strings.CutSuffix(species, "?")
	t.sure = species != "" && !unsure
	var kind tapping.Species
	if err := kind.UnmarshalText([]byte(strings.TrimSpace(name))); err != nil {
		return t, "species", err
	}
	if kind == tapping.OtherTree {
		t.called = strings.TrimSpace(name)
	}
	var health tapping.Vigor
	if err := health.UnmarshalText([]byte(vigor)); err != nil {
		return t, "vigor", err
	}
	t.Trunk, err = tapping.NewTrunk(dbh, kind, health)
	return t, wrong, err
}

// add adds a trunk, a further stem of the last tree if it is one.
func (st *stand) add(t trunk, further bool) {
	t.stem, t.stems = 1, 1
	n := len(st.trunks)
	if further {
		t.stem = st.trunks[n-1].stem + 1
		for i := n - t.stem + 1; i < n; i++ {
			st.trunks[i].stems = t.stem
			st.byName[st.trunks[i].name()] = i
		}
		t.stems = t.stem
		st.byName[t.name()] = n
	} else {
		st.byName[t.label] = n
		st.trees++
	}
	st.trunks = append(st.trunks, t)
}
