package tapping

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Stain is an old hole with the column behind it, as [Planner] takes it: what a
// drawing of the trunk needs.
type Stain struct {
	OldHole
	Side    units.Length // half the width of the column
	Column  units.Length // half its height
	Covered units.Length // new wood over it
	InReach bool         // the bit would still meet it
}

// Stains returns the columns of the record as they lie in the given year. The
// record and the year as in [Planner.Check].
func (p Planner) Stains(record []OldHole, year int) ([]Stain, error) {
	if err := p.checkUse("tapping.Planner.Stains", record, year); err != nil {
		return nil, err
	}
	out := make([]Stain, 0, len(record))
	for _, h := range record {
		out = append(out, Stain{
			h, p.keep.Side, p.keep.Column,
			p.growth * units.Length(max(0, year-h.Year)), p.inReach(h.Year, year),
		})
	}
	return out, nil
}

// The map: one character for an inch round the trunk, wider where the girth is
// more than the line holds, and a line for 3 in of height.
const (
	mapColumns = 72
	mapLine    = 3 * units.Inch
)

// Map draws the trunk unrolled, as plain text: the mark on the left, clockwise
// to the right, up to the top. X is a new hole, o an old one whose stain the
// bit would meet, : the wood that its column and distance take, + a hole that
// has grown over far enough, . clear wood within reach. Year and record as in
// [Planner.Check]; next is this year's holes, such as [Planner.Next] gives, within
// the same range.
func (p Planner) Map(record []OldHole, year int, next []Position) (string, error) {
	const fn = "tapping.Planner.Map"
	if err := p.checkUse(fn, record, year); err != nil {
		return "", err
	}
	if err := limit.WithinAs(fn, "next", "new holes", float64(len(next)), 0, maxRecord, 1, "", "this year's holes"); err != nil {
		return "", err
	}
	for i, at := range next {
		if err := checkPlace(fn, "next", i, "a new hole", at, ""); err != nil {
			return "", err
		}
	}
	girth := p.girth(year)
	columns := min(mapColumns, int(math.Ceil(girth.Inches())))
	low, high := p.reach.Heights()
	lines := int(math.Ceil(float64((high-low)/mapLine) - slack))
	grid := make([][]byte, lines)
	for row := range grid {
		grid[row] = make([]byte, columns)
		z := float64(high) - (float64(row)+0.5)*float64(mapLine)
		for c := range columns {
			grid[row][c] = p.mark(record, year, (float64(c)+0.5)/float64(columns), z, float64(girth))
		}
	}
	put := func(at Position, mark byte) {
		row := int(math.Floor(float64((high - at.Height) / mapLine)))
		if at.Height >= low && at.Height <= high {
			grid[min(row, lines-1)][min(int(turn(at.At)*float64(columns)), columns-1)] = mark
		}
	}
	for _, h := range record {
		if p.inReach(h.Year, year) {
			put(h.Position, 'o')
		} else {
			put(h.Position, '+')
		}
	}
	for _, at := range next {
		put(at, 'X')
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%d, girth %s, one column %s\n", year, girth.Text(units.Inch, 1), (girth/units.Length(columns)).Text(units.Inch, 2))
	for row, cells := range grid {
		top := high - units.Length(row)*mapLine
		fmt.Fprintf(&b, "%9s |%s|\n", top.Text(units.Inch, 0), cells)
	}
	b.WriteString("X new hole  o old hole, stain in reach  : wood it takes  + grown over  . clear\n")
	return b.String(), nil
}

// mark returns the character of a place without holes.
func (p Planner) mark(record []OldHole, year int, t, z, girth float64) byte {
	if s, ok := p.reach.at(t, units.Length(girth)); !ok || z < s.low || z > s.high {
		return ' '
	}
	for _, h := range record {
		if s, ok := p.forbidden(spotOf(h), year, t, girth); ok && z > s.low && z < s.high {
			return ':'
		}
	}
	return '.'
}
