package book

import (
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"
)

// A plot is a figure of one or more panels, one above the other, in SVG.
type plot struct {
	title string
	body  strings.Builder
	high  float64 // so far
}

// Sizes in units of the drawing.
const (
	wide     = 640.0
	left     = 64.0
	right    = 16.0
	headroom = 22.0
	footroom = 34.0
)

// A panel maps data to a rectangle of the plot.
type panel struct {
	*plot
	x0, x1, y0, y1 float64 // data
	top, bottom    float64 // drawing
}

// Colors that differ in brightness too, for those who see no hues.
const (
	ink   = "#222"
	faint = "#ddd"
	band  = "#e8eef7"
	blue  = "#1f5fa8"
	red   = "#c0392b"
	green = "#2e7d32"
	gold  = "#b8860b"
)

// panel adds one of the given height below those that are there.
func (p *plot) panel(title string, height, x0, x1, y0, y1 float64) *panel {
	a := &panel{plot: p, x0: x0, x1: x1, y0: y0, y1: y1, top: p.high + headroom, bottom: p.high + headroom + height}
	p.high = a.bottom + footroom
	p.text(left, a.top-7, "start", title)
	return a
}

func (p *plot) text(x, y float64, anchor, s string) {
	at := ""
	if anchor != "start" {
		at = ` text-anchor="` + anchor + `"`
	}
	fmt.Fprintf(&p.body, "<text x=\"%.0f\" y=\"%.0f\"%s>%s</text>\n", x, y, at, html.EscapeString(s))
}

// px and py are whole drawing units, so that a last bit does not show.
func (a *panel) px(x float64) float64 {
	return math.Round(left + (wide-left-right)*(x-a.x0)/(a.x1-a.x0))
}

func (a *panel) py(y float64) float64 {
	return math.Round(a.bottom - (a.bottom-a.top)*(y-a.y0)/(a.y1-a.y0))
}

// axes draws frame, ticks and names.
func (a *panel) axes(xName, yName string, xTick, yTick float64) {
	w := wide - right - left
	fmt.Fprintf(&a.body, "<rect x=\"%.0f\" y=\"%.0f\" width=\"%.0f\" height=\"%.0f\" fill=\"none\" stroke=\"#888\"/>\n", left, a.top, w, a.bottom-a.top)
	var ticks strings.Builder
	for i := math.Ceil(a.x0/xTick - 1e-9); i*xTick <= a.x1+1e-9*xTick; i++ {
		x := a.px(i * xTick)
		fmt.Fprintf(&ticks, "M%.0f %.0fv4", x, a.bottom)
		a.text(x, a.bottom+15, "middle", short(i*xTick))
	}
	for i := math.Ceil(a.y0/yTick - 1e-9); i*yTick <= a.y1+1e-9*yTick; i++ {
		y := a.py(i * yTick)
		fmt.Fprintf(&ticks, "M%.0f %.0fh-4", left, y)
		a.text(left-7, y+4, "end", short(i*yTick))
	}
	fmt.Fprintf(&a.body, "<path d=\"%s\" stroke=\"#888\"/>\n", ticks.String())
	a.text(wide-right, a.bottom+29, "end", xName)
	fmt.Fprintf(&a.body, "<text transform=\"translate(14 %.0f) rotate(-90)\" text-anchor=\"middle\">%s</text>\n", (a.top+a.bottom)/2, html.EscapeString(yName))
}

// band shades between two curves of the same places.
func (a *panel) band(xs, low, high []float64, fill string) {
	var d strings.Builder
	for i, x := range xs {
		fmt.Fprintf(&d, "%s%.0f %.0f", move(i), a.px(x), a.py(low[i]))
	}
	for i := len(xs) - 1; i >= 0; i-- {
		fmt.Fprintf(&d, "L%.0f %.0f", a.px(xs[i]), a.py(high[i]))
	}
	fmt.Fprintf(&a.body, "<path d=\"%sz\" fill=\"%s\"/>\n", d.String(), fill)
}

func (a *panel) line(xs, ys []float64, color, dash string) {
	var d strings.Builder
	fresh := 0
	for i, x := range xs {
		if math.IsNaN(ys[i]) {
			fresh = 0
			continue
		}
		fmt.Fprintf(&d, "%s%.0f %.0f", move(fresh), a.px(x), a.py(ys[i]))
		fresh++
	}
	if dash != "" {
		dash = ` stroke-dasharray="` + dash + `"`
	}
	fmt.Fprintf(&a.body, "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"%s/>\n", d.String(), color, dash)
}

func move(i int) string {
	if i == 0 {
		return "M"
	}
	return "L"
}

// dots draws points; those that fall on one another are drawn once.
func (a *panel) dots(xs, ys []float64, color string, size float64) {
	if len(xs) == 0 {
		return
	}
	seen := map[[2]float64]bool{}
	var d strings.Builder
	for i := range xs {
		at := [2]float64{a.px(xs[i]), a.py(ys[i])}
		if !seen[at] {
			seen[at] = true
			fmt.Fprintf(&d, "M%.0f %.0fh0", at[0], at[1])
		}
	}
	fmt.Fprintf(&a.body, "<path d=\"%s\" stroke=\"%s\" stroke-width=\"%s\" stroke-linecap=\"round\"/>\n", d.String(), color, short(size))
}

// key names a color at the top of a panel, n-th from the right.
func (a *panel) key(n int, color, name string) {
	x, y := left+8, a.top+14+15*float64(n)
	fmt.Fprintf(&a.body, "<path d=\"M%.0f %.0fh14\" stroke=\"%s\" stroke-width=\"3\"/>\n", x, y-4, color)
	a.text(x+20, y, "start", name)
}

func (p *plot) svg() string {
	return fmt.Sprintf("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" font-family=\"sans-serif\" font-size=\"11\" fill=\"%s\">\n<title>%s</title>\n<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>\n%s</svg>\n",
		wide, p.high, ink, html.EscapeString(p.title), p.body.String())
}

// short prints a number with no more digits than it needs.
func short(x float64) string {
	return strconv.FormatFloat(math.Round(x*1e6)/1e6+0, 'g', 6, 64)
}

// tick returns a step of 1, 2 or 5 times a power of ten that parts a range into
// at most n.
func tick(low, high float64, n int) float64 {
	raw := (high - low) / float64(n)
	power := math.Pow(10, math.Floor(math.Log10(raw)))
	for _, step := range []float64{1, 2, 5, 10} {
		if step*power >= raw*(1-1e-9) {
			return step * power
		}
	}
	return 10 * power
}
