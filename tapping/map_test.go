package tapping_test

import (
	"math"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// mapOf returns the rows of a map of a trunk 47.5 in round, reached from 24 to
// 60 in: 48 columns of 0.99 in and 12 rows of 3 in.
func mapOf(t *testing.T, record []tapping.OldHole, next ...tapping.Position) []string {
	t.Helper()
	d := must[units.Length](t)(tapping.DiameterFromGirth(47.5 * units.Inch))
	p := planner(t, d.Inches(), 0, byHand(t, 24, 60))
	text := must[string](t)(p.Map(record, 2025, next))
	var rows []string
	for _, line := range strings.Split(text, "\n") {
		if _, row, ok := strings.Cut(line, "|"); ok {
			rows = append(rows, strings.TrimSuffix(row, "|"))
		}
	}
	if len(rows) != 12 || len(rows[0]) != 48 {
		t.Fatalf("%d rows of %d, want 12 of 48\n%s", len(rows), len(rows[0]), text)
	}
	return rows
}

func old(t *testing.T, year int, at units.Angle, inches float64) tapping.OldHole {
	t.Helper()
	return tapping.OldHole{Year: year, Position: tapping.Position{At: at, Height: units.Inches(inches)}, Hole: hole(t, 0.3125, 1.5)}
}

// A character stands for the middle of its place. The column of a hole 43.35 in
// high reaches to 55.35 in and 31.35 in: over the middle of the third row,
// 52.5 in, not of the second, 55.5 in, and down to the tenth, 31.5 in. It is
// 2 in wide on each side: the middles of the first two columns are 0.495 and
// 1.484 in away, of the third 2.474.
func TestMapMiddles(t *testing.T) {
	rows := mapOf(t, []tapping.OldHole{old(t, 2000, 0, 43.35)})
	for i, row := range rows {
		want := "."
		if i >= 2 && i <= 9 {
			want = ":"
		}
		if row[1:2] != want || row[46:47] != want {
			t.Errorf("row %d, beside the column's hole: %s, want %s", i, row, want)
		}
	}
	if row := rows[4]; row[2:46] != strings.Repeat(".", 44) {
		t.Errorf("over the width of the column: %s", row)
	}
	// A column 1.5 in wide takes the middle at 1.484 in and not one at 1.583.
	keep := tapping.DefaultDistances()
	keep.Side = 1.5 * units.Inch
	d := must[units.Length](t)(tapping.DiameterFromGirth(47.5 * units.Inch))
	p := must[tapping.Planner](t)(tapping.NewPlanner(d, 2025, 0, byHand(t, 24, 60), hole(t, 0.3125, 1.5), keep))
	text := must[string](t)(p.Map([]tapping.OldHole{old(t, 2000, 0, 43.35)}, 2025, nil))
	if !strings.Contains(text, "|::..") || !strings.Contains(text, "..::|") {
		t.Errorf("a column 1.5 in wide:\n%s", text)
	}
}

// What a dropline does not reach is left blank: further than it is long from
// its fitting, which is at half a turn and at the foot of the map.
func TestMapOfADropline(t *testing.T) {
	const girth = 47.5
	d := must[units.Length](t)(tapping.DiameterFromGirth(girth * units.Inch))
	fitting := tapping.Position{At: 180 * units.Degree, Height: 24 * units.Inch}
	p := planner(t, d.Inches(), 0, must[tapping.Reach](t)(tapping.ReachByDropline(fitting, 18*units.Inch)))
	text := must[string](t)(p.Map(nil, 2025, nil))
	row := 0
	for _, line := range strings.Split(text, "\n") {
		_, cells, ok := strings.Cut(line, "|")
		if !ok {
			continue
		}
		up := 16.5 - 3*float64(row) // of the middle of the line over the fitting
		for c, got := range strings.TrimSuffix(cells, "|") {
			side := girth * ((float64(c)+0.5)/48 - 0.5)
			want := '.'
			if math.Hypot(side, up) > 18 {
				want = ' '
			}
			if got != want {
				t.Errorf("%.1f in to the side and %v in up: %q, want %q", side, up, got, want)
			}
		}
		row++
	}
	if row != 6 {
		t.Errorf("%d rows, want 6", row)
	}
}

// Holes at the very ends of the map: the mark, just short of a turn, the top
// and the bottom of the reach.
func TestMapEnds(t *testing.T) {
	rows := mapOf(t, nil,
		tapping.Position{Height: 60 * units.Inch},
		tapping.Position{At: 359.9 * units.Degree, Height: 24 * units.Inch},
		tapping.Position{At: 180 * units.Degree, Height: 61 * units.Inch}, // out of reach
	)
	for i, row := range rows {
		want := strings.Repeat(".", 48)
		switch i {
		case 0:
			want = "X" + want[1:]
		case 11:
			want = want[1:] + "X"
		}
		if row != want {
			t.Errorf("row %d: %s, want %s", i, row, want)
		}
	}
}

// A hole is covered by what has grown since its year, nothing at first.
func TestStainsCover(t *testing.T) {
	p := planner(t, 12, 0.1, byHand(t, 24, 60))
	record := []tapping.OldHole{old(t, 2026, 0, 40), old(t, 2025, 0, 40), old(t, 2024, 0, 40)}
	stains := must[[]tapping.Stain](t)(p.Stains(record, 2025))
	for i, want := range []float64{0, 0, 0.1} {
		if got := stains[i].Covered.Inches(); !near(got, want) {
			t.Errorf("a hole of %d is covered by %v in, want %v", record[i].Year, got, want)
		}
	}
}
