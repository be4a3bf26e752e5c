package main

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

var (
	pathElement = regexp.MustCompile(`<path d="M([^"A-KN-Zhv]*)" style="([^"]*)"`)
	textElement = regexp.MustCompile(`(?s)<text [^>]*>([^<]*)</text>`)
)

type point struct{ x, y float64 }

func points(t *testing.T, d string) []point {
	t.Helper()
	var ps []point
	for _, xy := range strings.Split(d, "L") {
		x, y, _ := strings.Cut(xy, ",")
		fx, errX := strconv.ParseFloat(x, 64)
		fy, errY := strconv.ParseFloat(y, 64)
		if errX != nil || errY != nil {
			t.Fatalf("%v, %v", errX, errY)
		}
		ps = append(ps, point{fx, fy})
	}
	return ps
}

// The curves lie over the grid where the tables say.
func TestChartsShowTables(t *testing.T) {
	for _, args := range [][]string{nil, {"-metric"}} {
		page := page(t, args...)
		all := tables(t, page)
		for i, chart := range svgElement.FindAllString(page, -1) {
			var across, up []float64 // lines of the grid
			var curves [][]point
			for _, m := range pathElement.FindAllStringSubmatch(chart, -1) {
				ps := points(t, m[1])
				switch {
				case strings.Contains(m[2], "stroke:#737373") && ps[0].x == ps[1].x:
					across = append(across, ps[0].x)
				case strings.Contains(m[2], "stroke:#737373"):
					up = append(up, ps[0].y)
				case strings.Contains(m[2], "stroke-width:1.2"):
					curves = append(curves, ps)
				}
			}
			var marks []float64 // numbers along the axes, x first
			for _, m := range textElement.FindAllStringSubmatch(chart, -1) {
				if x, err := strconv.ParseFloat(m[1], 64); err == nil {
					marks = append(marks, x)
				}
			}
			if len(across) < 4 || len(up) < 4 || len(marks) != len(across)+len(up) {
				t.Fatalf("%q: chart %d has %d and %d lines and %d numbers", args, i, len(across), len(up), len(marks))
			}
			along := func(at float64, lines, marks []float64) float64 {
				last := len(lines) - 1
				return marks[0] + (at-lines[0])/(lines[last]-lines[0])*(marks[last]-marks[0])
			}
			table, columns := all["boiling"], []int{4, 2}
			if i == 1 {
				table, columns = all["cup"], []int{2}
			}
			if len(curves) != len(columns) {
				t.Fatalf("%q: chart %d has %d curves", args, i, len(curves))
			}
			for k, curve := range curves {
				if len(curve) != len(table) {
					t.Fatalf("%q: curve of %d points, table of %d rows", args, len(curve), len(table))
				}
				for n, p := range curve {
					x, _ := read(t, table[n][0])
					y, half := read(t, table[n][columns[k]])
					gotX, gotY := along(p.x, across, marks[:len(across)]), along(p.y, up, marks[len(across):])
					// A hundredth of a point is what the drawing keeps.
					if !(math.Abs(gotX-x) <= 0.01+1e-3*math.Abs(x)) || !(math.Abs(gotY-y) <= half+0.01) {
						t.Errorf("%q: chart %d draws %.3f, %.3f where the table says %v, %v", args, i, gotX, gotY, x, y)
					}
				}
			}
		}
	}
}
