package main

import (
	"bytes"
	"fmt"
	"html"
	"html/template"
	"image/color"
	"math"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"
)

// Size of a chart on the sheet, and its type.
const (
	chartWidth  = 91 * vg.Millimeter
	chartHeight = 38 * vg.Millimeter
	chartType   = 9 // points
)

// chartFont is what the chart is laid out in. The page says which font is
// drawn, so that charts and tables look alike.
var chartFont = font.Font{Typeface: "Liberation", Variant: "Sans", Size: chartType}

// fontStack replaces the one font name that the library writes.
const fontStack = "Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif"

var (
	ink  = color.Gray{Y: 0}
	grid = color.Gray{Y: 0x73} // light, but readable by the rule for text
)

// A curve is a line through points, with a name beside its last one.
type curve struct {
	label  string
	points plotter.XYs
}

func (l *curve) add(x, y float64) { l.points = append(l.points, plotter.XY{X: x, Y: y}) }

// A chart is a small plot of curves with a title and a description for those
// who do not see it.
type chart struct {
	id, title    string
	x, y         string // units of the axes, with words
	curves       []curve
	xStep, yStep float64 // between the marks of the axes
	xDecimals    int
}

// svg draws the chart as an element to stand inside a page.
func (c chart) svg() (template.HTML, error) {
	p := plot.New()
	p.BackgroundColor = nil
	lines := plotter.NewGrid()
	lines.Vertical = draw.LineStyle{Color: grid, Width: 0.3}
	lines.Horizontal = lines.Vertical
	p.Add(lines)
	for _, l := range c.curves {
		line, dots, err := plotter.NewLinePoints(l.points)
		if err != nil {
			return "", err
		}
		line.LineStyle = draw.LineStyle{Color: ink, Width: 1.2}
		dots.GlyphStyle = draw.GlyphStyle{Color: ink, Radius: 1.6, Shape: draw.CircleGlyph{}}
		p.Add(line, dots)
		if l.label == "" {
			continue
		}
		middle := l.points[len(l.points)/2]
		names, err := plotter.NewLabels(plotter.XYLabels{XYs: plotter.XYs{middle}, Labels: []string{l.label}})
		if err != nil {
			return "", err
		}
		names.TextStyle[0].Font = chartFont
		names.TextStyle[0].XAlign = draw.XCenter
		names.Offset.Y = 5
		p.Add(names)
	}
	c.axis(&p.X, c.x, c.xStep, c.xDecimals)
	c.axis(&p.Y, c.y, c.yStep, 0)

	canvas := vgsvg.New(chartWidth, chartHeight)
	p.Draw(draw.Crop(draw.New(canvas), 1, -chartType, 1, -3)) // room for half a number at the ends of the axes
	var b bytes.Buffer
	if _, err := canvas.WriteTo(&b); err != nil {
		return "", err
	}
	// What stands before the first group is the head of a file of its own.
	_, body, ok := strings.Cut(b.String(), "<g ")
	if !ok {
		return "", fmt.Errorf("the chart %q was drawn without a group", c.id)
	}
	body = strings.ReplaceAll(body, "font-family:Liberation Sans;font-variant:normal;font-weight:normal;font-style:normal;", "")
	head := fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.2f %.2f" font-family="%s" role="img" aria-labelledby="%s-title %s-text">
<title id="%s-title">%s</title>
<desc id="%s-text">%s</desc>
<g `, chartWidth.Points(), chartHeight.Points(), fontStack, c.id, c.id, c.id, html.EscapeString(c.title), c.id, html.EscapeString(c.text()))
	return template.HTML(head + body), nil // the words are escaped, the rest is drawn by the library
}

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

// axis sets marks at whole steps, from the one below the data to the one above.
func (c chart) axis(a *plot.Axis, label string, step float64, decimals int) {
	first, last := math.Floor(a.Min/step+1e-9), math.Ceil(a.Max/step-1e-9)
	a.Min, a.Max = first*step, last*step
	var marks plot.ConstantTicks
	for i := first; i <= last; i++ {
		marks = append(marks, plot.Tick{Value: i * step, Label: number(i*step, decimals)})
	}
	a.Tick.Marker = marks
	a.Tick.Label.Font = chartFont
	a.Tick.Length = 3
	a.Label.Text = label
	a.Label.TextStyle.Font = chartFont
	a.Padding = 2
}
