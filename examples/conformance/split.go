package main

import (
	"fmt"
	"io"
	"math"
	"strings"

	"example.org/sapreckoner/internal/proving/check"
)

// How figures are obtained, in the order in which they are shown.
var ways = []struct{ word, said string }{
	{"read", "read in a public copy of the source, in its abstract or second-hand: each table says which"},
	{"memory", "from memory, not seen again"},
	{"common practice", "common practice without a source"},
	{"computed", "computed by this project from the formula of the source: not published"},
}

// Regions of the domain, by the strength and the temperature that a row states.
var (
	strengths = []region{{"water and sap, below 15 Brix", 0, 15}, {"between, 15 to 60", 15, 60}, {"syrup, 60 to 75", 60, 75}, {"candy, 75 and above", 75, 101}, {"no strength", math.NaN(), math.NaN()}}
	warmths   = []region{{"below 10 C", -100, 10}, {"10 to 35", 10, 35}, {"35 to 90", 35, 90}, {"90 and above", 90, 400}, {"no temperature", math.NaN(), math.NaN()}}
)

type region struct {
	name      string
	low, high float64
}

// of returns the region that x lies in, the last one for what no row states.
func of(regions []region, x float64) int {
	for i, r := range regions {
		if x >= r.low && x < r.high {
			return i
		}
	}
	return len(regions) - 1
}

// A split counts the cells of the tables: a cell that two functions must
// reproduce is one, and reckoned if one of them reckons it.
type split struct{ cells map[string]cell }

// A cell is a figure in a table.
type cell struct {
	way, key, table string
	reckoned        bool
	strength        int
	warmth          int
}

func newSplit() *split { return &split{cells: map[string]cell{}} }

// count takes in what one claim compared. A claim that is met exactly in every
// row copies constants, or counts, unless it says that its arithmetic is exact.
func (s *split) count(r check.Result) {
	reckons := r.Exact < r.Rows || r.Claim.Exact
	for _, row := range r.Compared {
		id := r.Table.ID + "\x00" + row.Name() + "\x00" + r.Claim.Column
		c, seen := s.cells[id]
		if !seen {
			c = cell{way: way(row), key: row.Key(), table: r.Table.ID,
				strength: of(strengths, strength(r.Table, row)), warmth: of(warmths, warmth(r.Table, row))}
		}
		c.reckoned = c.reckoned || reckons
		s.cells[id] = c
	}
}

// A tally is what came of the cells that were obtained in one way.
type tally struct {
	copied, reckoned int
	tables, sources  map[string]bool // of the reckoned
}

// tally counts them up. The last answer is of those that were read and reckoned,
// by strength and temperature.
func (s *split) tally() (map[string]*tally, [][]int) {
	by := map[string]*tally{}
	for _, w := range ways {
		by[w.word] = &tally{tables: map[string]bool{}, sources: map[string]bool{}}
	}
	regions := make([][]int, len(strengths))
	for i := range regions {
		regions[i] = make([]int, len(warmths))
	}
	for _, c := range s.cells {
		t := by[c.way]
		if !c.reckoned {
			t.copied++
			continue
		}
		t.reckoned++
		t.tables[c.table] = true
		if c.key != "" {
			t.sources[c.key] = true
		}
		if c.way == "read" {
			regions[c.strength][c.warmth]++
		}
	}
	return by, regions
}

// print writes both counts in Markdown.
func (s *split) print(w io.Writer) {
	by, regions := s.tally()
	fmt.Fprintln(w, "| how the figures were obtained | distinct | copied constants and counts | reckoned | tables of these | sources of these |")
	fmt.Fprintln(w, "|---|--:|--:|--:|--:|--:|")
	for _, way := range ways {
		if t := by[way.word]; t.copied+t.reckoned > 0 {
			fmt.Fprintf(w, "| %s | %d | %d | %d | %d | %d |\n", way.said, t.copied+t.reckoned, t.copied, t.reckoned, len(t.tables), len(t.sources))
		}
	}
	fmt.Fprint(w, "\nThe figures that were read and reckoned, by region of the domain:\n\n| |")
	for _, c := range warmths {
		fmt.Fprintf(w, " %s |", c.name)
	}
	fmt.Fprintln(w, "\n|---|"+strings.Repeat("--:|", len(warmths)))
	for i, r := range strengths {
		fmt.Fprintf(w, "| %s |", r.name)
		for j := range warmths {
			fmt.Fprintf(w, " %s |", some(regions[i][j]))
		}
		fmt.Fprintln(w)
	}
}

// way tells how the figures of a row were obtained.
func way(row check.Row) string {
	for _, way := range ways {
		if strings.HasPrefix(row.Obtained(), way.word) {
			return way.word
		}
	}
	return "memory" // the weakest of them
}

// strength is the sugar content that a row states, NaN if none.
func strength(t *check.Table, row check.Row) float64 {
	for _, c := range t.Columns {
		if c.Kind != check.Text && strings.HasPrefix(c.Unit, "%") && strings.Contains(c.Words, "sugar") || c.Name == "brix" {
			return row.Float(c.Name)
		}
	}
	return math.NaN()
}

// warmth is the temperature that a row states in Celsius, NaN if none.
func warmth(t *check.Table, row check.Row) float64 {
	for _, c := range t.Columns {
		if c.Kind == check.Text || math.IsNaN(row.Float(c.Name)) || strings.Contains(c.Words, "a difference") {
			continue
		}
		switch c.Unit {
		case "C":
			return row.Float(c.Name)
		case "F":
			return (row.Float(c.Name) - 32) / 1.8
		case "K":
			if strings.HasPrefix(c.Name, "t") || strings.HasPrefix(c.Name, "T") {
				return row.Float(c.Name) - 273.15
			}
		}
	}
	return math.NaN()
}
