package main

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// The drawing is the bark unrolled: the mark at both sides, clockwise to the
// right, one scale for width and height, so that distances look as they are.
const (
	drawWide = 720
	barkLeft = 62
	barkTop  = 92
	mostWide = drawWide - barkLeft - 26
	mostHigh = 440
)

// The drawing must read in black and white: everything is told apart by shape
// and pattern, and color only repeats it.
const (
	ink    = "#222222"
	fresh  = "#9a3300" // what is to be drilled
	halo   = `stroke="#ffffff" stroke-width="3.5" stroke-linejoin="round" paint-order="stroke"`
	hatchs = `<pattern id="stain" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="7" height="7" fill="#ead9bd"/><path d="M0 0v7" stroke="#8f7442" stroke-width="2"/></pattern>` +
		`<pattern id="near" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path d="M0 0v9" stroke="#555555" stroke-width="1.2"/></pattern>`
)

// A drawing is a trunk unrolled in the year of the plan.
type drawing struct {
	bytes.Buffer
	st        *stand
	t         *trunk
	girth     units.Length
	low, high units.Length // drawn
	scale     float64      // pixels a meter
}

// draw draws a trunk with its old holes and this year's.
func (st *stand) draw(t *trunk) ([]byte, error) {
	planner, err := st.planner(t)
	if err != nil {
		return nil, err
	}
	stains, err := planner.Stains(t.record, st.year)
	if err != nil {
		return nil, err
	}
	d := &drawing{st: st, t: t, girth: t.girth(), low: st.given.low, high: st.given.high}
	for _, s := range stains {
		d.low, d.high = min(d.low, s.Height), max(d.high, s.Height)
	}
	const edge = 3 * units.Inch
	d.low, d.high = max(0, d.low-edge), d.high+edge
	d.scale = min(mostWide/float64(d.girth), mostHigh/float64(d.high-d.low))
	d.head(stains)
	d.bark(stains)
	for _, s := range stains {
		d.old(s)
	}
	for i, at := range t.next {
		d.new(i, at)
	}
	d.foot()
	return d.Bytes(), nil
}

func (d *drawing) wide() float64 { return float64(d.girth) * d.scale }
func (d *drawing) tall() float64 { return float64(d.high-d.low) * d.scale }

// x and y are where a place lies on the drawing.
func (d *drawing) x(at tapping.Position) float64 {
	return barkLeft + float64(at.Along(d.girth))*d.scale
}
func (d *drawing) y(height units.Length) float64 { return barkTop + float64(d.high-height)*d.scale }

// length prints a length in the system of the page.
func (d *drawing) length(l units.Length) string {
	if d.st.given.metric {
		return l.Text(units.Centimeter, 1)
	}
	return l.Text(units.Inch, 1)
}

// px prints a coordinate to a tenth, so that every processor prints the same.
func px(x float64) string { return strconv.FormatFloat(math.Round(x*10)/10, 'f', -1, 64) }

func escape(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a Builder does not fail
	return b.String()
}

// title words what is drawn.
func (d *drawing) title() string {
	s := "Trunk of " + d.t.name()
	if d.st.invented {
		s += " in an invented stand"
	}
	if d.st.year > 0 {
		s += ", " + strconv.Itoa(d.st.year)
	}
	return s
}

// letter names a hole of the year, those of the record first.
func letter(i int) string {
	if i < 26 {
		return string(rune('A' + i))
	}
	return strconv.Itoa(i + 1)
}

// toDrill tells where a hole of this year goes.
func (d *drawing) toDrill(i int, at tapping.Position) string {
	return fmt.Sprintf("%s: %s from the mark (%s), %s high, %s into the wood, bark not counted", letter(d.t.open+i),
		d.length(at.Along(d.girth)), at.At.Text(units.Degree, 0), d.length(at.Height), d.length(d.st.hole(d.t).Depth()))
}

// none tells why no hole is to be drilled, empty if there is one.
func (d *drawing) none() string {
	switch {
	case len(d.t.next) > 0:
		return ""
	case d.t.why != tapped:
		return "Left alone: " + reasons[d.t.why]
	case d.t.choose > 0:
		return "No old hole is recorded: " + chooseWords
	case d.t.open > 0:
		return "No hole more: drilled already this year"
	}
	return "No clear place this year: let it rest"
}

func (d *drawing) head(stains []tapping.Stain) {
	rows := max(1, len(d.t.next))
	high := barkTop + d.tall() + 144 + 20*float64(rows)
	fmt.Fprintf(d, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%s" viewBox="0 0 %d %s" role="img" aria-labelledby="title desc" font-family="sans-serif" font-size="13" fill="%s">`+"\n",
		drawWide, px(high), drawWide, px(high), ink)
	fmt.Fprintf(d, `<title id="title">%s</title>`+"\n", escape(d.title()))
	inReach := 0
	for _, s := range stains {
		if s.InReach {
			inReach++
		}
	}
	desc := fmt.Sprintf("The bark unrolled, %s round, clockwise from the mark. %s, %d with a stain that the bit would still meet.", d.length(d.girth), cli.Plural(len(stains), "old hole"), inReach)
	for i, at := range d.t.next {
		desc += " Drill " + d.toDrill(i, at) + "."
	}
	if none := d.none(); none != "" {
		desc += " " + none + "."
	}
	fmt.Fprintf(d, `<desc id="desc">%s</desc>`+"\n", escape(desc))
	fmt.Fprintf(d, `<defs>%s<clipPath id="bark"><rect x="%d" y="%d" width="%s" height="%s"/></clipPath></defs>`+"\n", hatchs, barkLeft, barkTop, px(d.wide()), px(d.tall()))
	fmt.Fprintf(d, `<rect width="%d" height="%s" fill="#ffffff"/>`+"\n", drawWide, px(high))
	fmt.Fprintf(d, `<text x="%d" y="28" font-size="17" font-weight="bold">%s</text>`+"\n", barkLeft, escape(d.title()))
	fmt.Fprintf(d, `<text x="%d" y="48">the bark unrolled, %s round; %s through</text>`+"\n", barkLeft, d.length(d.girth), d.length(d.t.DBH()))
}

// A box is a part of the bark.
type box struct{ x, y, wide, high float64 }

// around is the box of a hole that reaches so far to the side and up and down,
// also where it goes over the mark. Without a height it goes from end to end.
func (d *drawing) around(at tapping.Position, side, up units.Length) (boxes []box) {
	b := box{d.x(at) - float64(side)*d.scale, d.y(at.Height + up), 2 * float64(side) * d.scale, 2 * float64(up) * d.scale}
	if up == 0 {
		b.y, b.high = barkTop, d.tall()
	}
	for _, turn := range []float64{0, -d.wide(), d.wide()} {
		if c := (box{b.x + turn, b.y, b.wide, b.high}); c.x < barkLeft+d.wide() && c.x+c.wide > barkLeft {
			boxes = append(boxes, c)
		}
	}
	return boxes
}

// path draws boxes as one surface, so that a pattern goes on through all.
func path(boxes []box, attributes string) string {
	if len(boxes) == 0 {
		return ""
	}
	var b strings.Builder
	for _, r := range boxes {
		fmt.Fprintf(&b, "M%s %sh%sv%sh%sz", px(r.x), px(r.y), px(r.wide), px(r.high), px(-r.wide))
	}
	return fmt.Sprintf(`<path d="%s" %s/>`+"\n", b.String(), attributes)
}

// bark draws the frame, the scales, and the wood that is not drilled.
func (d *drawing) bark(stains []tapping.Stain) {
	keep := d.st.given.keep
	var stained, near []box
	for _, s := range stains {
		if !s.InReach {
			continue
		}
		stained = append(stained, d.around(s.Position, s.Side, s.Column)...)
		switch d.st.year - s.Year {
		case 0:
			near = append(near, d.around(s.Position, keep.Open, 0)...)
		case 1:
			near = append(near, d.around(s.Position, keep.Side, 0)...)
			if keep.Up > 0 {
				near = append(near, d.around(s.Position, keep.Open, keep.Up)...)
			}
		}
	}
	d.WriteString(`<g clip-path="url(#bark)">` + "\n")
	d.WriteString(path(stained, `fill="url(#stain)"`))
	d.WriteString(path(near, `fill="url(#near)"`))
	for _, b := range stained {
		d.WriteString(path([]box{b}, `fill="none" stroke="#8f7442" stroke-width="0.8"`))
	}
	d.WriteString("</g>\n")
	d.scales()
	fmt.Fprintf(d, `<rect x="%d" y="%d" width="%s" height="%s" fill="none" stroke="%s" stroke-width="1.5"/>`+"\n", barkLeft, barkTop, px(d.wide()), px(d.tall()), ink)
	for _, z := range []units.Length{d.st.given.low, d.st.given.high} {
		fmt.Fprintf(d, `<path d="M%d %sh%s" stroke="%s" stroke-dasharray="9 4"/>`+"\n", barkLeft, px(d.y(z)), px(d.wide()), ink)
	}
}

// scales draws heights on the left, distances below, bearings above.
func (d *drawing) scales() {
	unit, step := units.Inch, 6.0
	if d.st.given.metric {
		unit, step = units.Centimeter, 20.0
	}
	symbol := strings.TrimPrefix(unit.Text(unit, 0), "1 ")
	for n := math.Ceil(float64(d.low/unit) / step); n*step <= float64(d.high/unit); n++ {
		y := px(d.y(units.Length(n*step) * unit))
		fmt.Fprintf(d, `<path d="M%d %sh-6" stroke="%s"/><text x="%d" y="%s" dy="4.5" text-anchor="end">%s</text>`+"\n", barkLeft, y, ink, barkLeft-9, y, px(n*step))
	}
	fmt.Fprintf(d, `<text x="16" y="%s" text-anchor="middle" transform="rotate(-90 16 %[1]s)">above the ground, %s</text>`+"\n", px(barkTop+d.tall()/2), symbol)
	bottom := barkTop + d.tall()
	for n := 0.0; n*step <= float64(d.girth/unit); n++ {
		x := px(barkLeft + n*step*float64(unit)*d.scale)
		fmt.Fprintf(d, `<path d="M%s %sv6" stroke="%s"/><text x="%[1]s" y="%[4]s" text-anchor="middle">%[5]s</text>`+"\n", x, px(bottom), ink, px(bottom+20), px(n*step))
	}
	fmt.Fprintf(d, `<text x="%s" y="%s" text-anchor="middle">from the mark along the girth, clockwise seen from above, %s</text>`+"\n", px(barkLeft+d.wide()/2), px(bottom+38), symbol)
	for deg := 0.0; deg <= 360; deg += 90 {
		x := px(barkLeft + deg/360*d.wide())
		name := px(deg) + " deg"
		if deg == 0 || deg == 360 {
			name = "mark"
		}
		fmt.Fprintf(d, `<path d="M%s %dv-6" stroke="%s"/><text x="%[1]s" y="%[4]d" text-anchor="middle">%[5]s</text>`+"\n", x, barkTop, ink, barkTop-10, name)
	}
}
