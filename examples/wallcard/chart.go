package main

import (
	_ "embed"
	"fmt"
	"html/template"
	"math"
	"strings"
)

//go:embed chart.svg.tmpl
var chartText string

var chartTemplate = template.Must(template.New("chart").Parse(chartText))

// Size of a chart on the sheet, 91 by 38 mm in points, and the room around the
// plot for numbers and names.
const (
	chartWidth  = 91 * 72 / 25.4
	chartHeight = 38 * 72 / 25.4
	plotLeft    = 34
	plotRight   = chartWidth - 12
	plotTop     = 6
	plotBottom  = chartHeight - 25
)

// A point of a curve, in the units of the axes.
type xy struct{ X, Y float64 }

// A curve is a line through points, with a name over its middle one.
type curve struct {
	label  string
	points []xy
}

func (l *curve) add(x, y float64) { l.points = append(l.points, xy{x, y}) }

// A chart is a small plot of curves with a title and a description for those
// who do not see it.
type chart struct {
	id, title    string
	x, y         string // units of the axes, with words
	curves       []curve
	xStep, yStep float64 // between the marks of the axes
	xDecimals    int
}

// A spot is where something is drawn, in points; numbers are text, so that
// every machine prints the same.
type spot struct{ X, Y string }

// A mark stands at a line of the grid.
type mark struct{ At, Base, Label string }

// A drawnCurve is a curve in points.
type drawnCurve struct {
	Points                []spot
	Label, LabelX, LabelY string
}

// svg draws the chart as an element to stand inside a page.
func (c chart) svg() (template.HTML, error) {
	across, up := c.axes()
	view := struct {
		ID, Title, Text, X, Y    string
		Width, Height            string
		Left, Right, Top, Bottom string
		MiddleX, MiddleY         string
		NameX, NameY             string
		NumberX, NumberY         string
		Across, Up               []mark
		Curves                   []drawnCurve
	}{
		ID: c.id, Title: c.title, Text: c.text(), X: c.x, Y: c.y,
		Width: drawn(chartWidth), Height: drawn(chartHeight),
		Left: drawn(plotLeft), Right: drawn(plotRight), Top: drawn(plotTop), Bottom: drawn(plotBottom),
		MiddleX: drawn((plotLeft + plotRight) / 2), MiddleY: drawn((plotTop + plotBottom) / 2),
		NameX: drawn(8), NameY: drawn(chartHeight - 3),
		NumberX: drawn(plotLeft - 5), NumberY: drawn(plotBottom + 12),
		Across: across.marks(c.xDecimals), Up: up.marks(0),
	}
	for _, l := range c.curves {
		d := drawnCurve{Label: l.label}
		for _, p := range l.points {
			d.Points = append(d.Points, spot{drawn(across.at(p.X)), drawn(up.at(p.Y))})
		}
		middle := l.points[len(l.points)/2]
		d.LabelX, d.LabelY = drawn(across.at(middle.X)), drawn(up.at(middle.Y)-5)
		view.Curves = append(view.Curves, d)
	}
	var b strings.Builder
	if err := chartTemplate.Execute(&b, view); err != nil {
		return "", fmt.Errorf("the chart %q: %w", c.id, err)
	}
	return template.HTML(strings.TrimSuffix(b.String(), "\n")), nil // the template has escaped it
}

// drawn is a place on the sheet to a hundredth of a point.
func drawn(x float64) string { return number(x, 2) }

// text tells in words what the curves show.
func (c chart) text() string {
	var parts []string
	for _, l := range c.curves {
		from, to := l.points[0], l.points[len(l.points)-1]
		if from.X > to.X {
			from, to = to, from
		}
		what := l.label
		if what == "" {
			what = "reading"
		}
		parts = append(parts, fmt.Sprintf("%s from %s %s at %s to %s %s at %s", what,
			number(from.Y, 1), c.y, number(from.X, c.xDecimals), number(to.Y, 1), c.y, number(to.X, c.xDecimals)))
	}
	return "Along the axis (" + c.x + "): " + strings.Join(parts, "; ") + "."
}

// An axis has marks at whole steps, from the one below the data to the one above.
type axis struct {
	first, last, step float64 // the marks, counted in steps
	from, to          float64 // where the first and the last are drawn
}

func (c chart) axes() (across, up axis) {
	low, high := xy{math.Inf(1), math.Inf(1)}, xy{math.Inf(-1), math.Inf(-1)}
	for _, l := range c.curves {
		for _, p := range l.points {
			low, high = xy{min(low.X, p.X), min(low.Y, p.Y)}, xy{max(high.X, p.X), max(high.Y, p.Y)}
		}
	}
	steps := func(low, high, step, from, to float64) axis {
		return axis{math.Floor(low/step + 1e-9), math.Ceil(high/step - 1e-9), step, from, to}
	}
	return steps(low.X, high.X, c.xStep, plotLeft, plotRight), steps(low.Y, high.Y, c.yStep, plotBottom, plotTop)
}

// at is where a figure is drawn. The product is rounded by itself, so that a
// machine that fuses it with the sum prints the same.
func (a axis) at(x float64) float64 {
	return a.from + float64((x/a.step-a.first)/(a.last-a.first)*(a.to-a.from))
}

func (a axis) marks(decimals int) []mark {
	var list []mark
	for i := a.first; i <= a.last; i++ {
		at := a.at(i * a.step)
		list = append(list, mark{drawn(at), drawn(at + 3), number(i*a.step, decimals)})
	}
	return list
}
