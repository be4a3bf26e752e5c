package main

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/tapping"
)

// symbol draws an old hole by its age: full if it is last year's or this
// year's, half full while its stain is in reach, open once it has grown over.
func symbol(x, y float64, age int, inReach bool) string {
	switch {
	case !inReach:
		return fmt.Sprintf(`<circle cx="%s" cy="%s" r="5" fill="#ffffff" stroke="%s" stroke-width="1.4" stroke-dasharray="2 1.6"/>`, px(x), px(y), ink)
	case age <= 1:
		return fmt.Sprintf(`<circle cx="%s" cy="%s" r="5.5" fill="%s" stroke="#ffffff"/>`, px(x), px(y), ink)
	}
	return fmt.Sprintf(`<circle cx="%s" cy="%s" r="5" fill="#ffffff" stroke="%s" stroke-width="1.4"/><circle cx="%[1]s" cy="%[2]s" r="2" fill="%[3]s"/>`, px(x), px(y), ink)
}

// old draws a hole of the record with its year.
func (d *drawing) old(s tapping.Stain) {
	x, y := d.x(s.Position), d.y(s.Height)
	anchor, dx := "start", 9.0
	if x+45 > barkLeft+d.wide() {
		anchor, dx = "end", -9
	}
	fmt.Fprintf(d, `<g>%s<text x="%s" y="%s" dy="4" font-size="12" text-anchor="%s" %s>%d</text></g>`+"\n", symbol(x, y, d.st.year-s.Year, s.InReach), px(x+dx), px(y), anchor, halo, s.Year)
}

// target draws a hole to drill.
func target(x, y float64) string {
	return fmt.Sprintf(`<circle cx="%s" cy="%s" r="9" fill="#ffffff" stroke="%s" stroke-width="2.6"/><path d="M%s %sl8 8m0 -8l-8 8" stroke="%[3]s" stroke-width="2.6"/>`, px(x), px(y), fresh, px(x-4), px(y-4))
}

// new draws a hole of this year, with lines to the scales.
func (d *drawing) new(i int, at tapping.Position) {
	x, y := d.x(at), d.y(at.Height)
	fmt.Fprintf(d, `<path d="M%s %sH%dM%[1]s %[2]sV%[4]s" fill="none" stroke="%[5]s" stroke-dasharray="2 4"/>`+"\n", px(x), px(y), barkLeft, px(barkTop+d.tall()), fresh)
	anchor, dx := "start", 13.0
	if x+30 > barkLeft+d.wide() {
		anchor, dx = "end", -13
	}
	fmt.Fprintf(d, `<g>%s<text x="%s" y="%s" dy="6" font-size="18" font-weight="bold" text-anchor="%s" fill="%s" %s>%s</text></g>`+"\n", target(x, y), px(x+dx), px(y), anchor, fresh, halo, letter(d.t.open+i))
}

// foot draws what to drill and what the signs mean.
func (d *drawing) foot() {
	y := barkTop + d.tall() + 64
	for i, at := range d.t.next {
		fmt.Fprintf(d, `<text x="%d" y="%s" fill="%s"><tspan font-weight="bold">Drill %s</tspan>%s.</text>`+"\n", barkLeft, px(y), fresh, letter(d.t.open+i), escape(strings.TrimPrefix(d.toDrill(i, at), letter(d.t.open+i))))
		y += 20
	}
	if none := d.none(); none != "" {
		fmt.Fprintf(d, `<text x="%d" y="%s" font-weight="bold">%s.</text>`+"\n", barkLeft, px(y), escape(none))
		y += 20
	}
	y += 8
	for i, k := range []struct{ sign, words string }{
		{target(0, 0), "drill here"},
		{symbol(0, 0, 1, true), "last year's hole"},
		{symbol(0, 0, 2, true), "older, its stain in reach"},
		{symbol(0, 0, 2, false), "older, grown over"},
		{`<rect x="-11" y="-8" width="22" height="16" fill="url(#stain)" stroke="#8f7442"/>`, "stained column"},
		{`<rect x="-11" y="-8" width="22" height="16" fill="url(#near)" stroke="#555555"/>`, "near last year's hole"},
		{`<path d="M-11 0h22" stroke="` + ink + `" stroke-dasharray="9 4"/>`, "reach, low and high"},
	} {
		x := barkLeft + 12 + float64(i%3)*214
		fmt.Fprintf(d, `<g transform="translate(%s %s)">%s<text x="17" y="4.5">%s</text></g>`+"\n", px(x), px(y+float64(i/3)*26), k.sign, k.words)
	}
	d.WriteString("</svg>\n")
}
