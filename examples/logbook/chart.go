package main

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"time"

	"example.org/sapreckoner/units"
)

// The chart is two rows of bars over one row of days: two amounts on two scales
// in one frame would be read wrongly.
const (
	chartWide  = 860
	chartHigh  = 536
	frameLeft  = 78
	frameWide  = chartWide - frameLeft - 20
	frameHigh  = 190
	sapTop     = 58
	sugarTop   = sapTop + frameHigh + 44
	mostLabels = 12 // of days
)

// Colors on white, told apart by place and label too: contrast with white is 7
// to 1 and better for words, over 4 to 1 for bars.
const (
	ink   = "#222222"
	lines = "#d0d0d0"
	sky   = "#1f6fa8"
	amber = "#a35a00"
)

// A panel is one row of bars.
type panel struct {
	top           float64
	title, symbol string
	color         string
	values        []float64
}

// chart draws sap and sugar by day.
func (b *book) chart() []byte {
	first, last := b.span()
	sap := panel{top: sapTop, title: "Sap", symbol: "US gal", color: sky}
	sweet := panel{top: sugarTop, title: "Sugar in it", symbol: "lb", color: amber}
	gallon, pound := units.USGallon, units.Pound
	if b.given.metric {
		sap.symbol, sweet.symbol = "L", "kg"
		gallon, pound = units.Liter, units.Kilogram
	}
	for i := first; i <= last; i++ {
		// The total of a day is a sum of lots and a lot itself.
		lot, _ := b.days[i].sap.lot()
		sap.values = append(sap.values, float64(lot.Volume()/gallon))
		sweet.values = append(sweet.values, float64(lot.Sugar()/pound))
	}
	from, to := b.date(first).Format(time.DateOnly), b.date(last).Format(time.DateOnly)
	var w bytes.Buffer
	fmt.Fprintf(&w, `<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" role="img" aria-labelledby="title desc" font-family="sans-serif" font-size="13" fill="%s">`+"\n",
		chartWide, chartHigh, chartWide, chartHigh, ink)
	title := fmt.Sprintf("Sap and sugar by day, %d", b.year)
	if b.flags.Dir() == "" {
		title += ", of an invented sugarhouse"
	}
	fmt.Fprintf(&w, `<title id="title">%s</title>`+"\n", title)
	fmt.Fprintf(&w, `<desc id="desc">Bars for each day from %s to %s: above, sap in %s, at most %s on a day; below, the sugar in it in %s, at most %s.</desc>`+"\n",
		from, to, sap.symbol, short(most(sap.values)), sweet.symbol, short(most(sweet.values)))
	fmt.Fprintf(&w, `<rect width="%d" height="%d" fill="#ffffff"/>`+"\n", chartWide, chartHigh)
	fmt.Fprintf(&w, `<text x="%d" y="28" font-size="17" font-weight="bold">%s</text>`+"\n", frameLeft, title)
	b.draw(&w, sap, first)
	b.draw(&w, sweet, first)
	fmt.Fprintf(&w, `<text x="%s" y="%d" text-anchor="middle">day of gathering, %s to %s</text>`+"\n", short(frameLeft+frameWide/2.0), chartHigh-10, from, to)
	w.WriteString("</svg>\n")
	return w.Bytes()
}

func (b *book) draw(w *bytes.Buffer, p panel, first int) {
	step, top := scale(most(p.values))
	y := func(v float64) float64 { return p.top + frameHigh*(1-v/top) }
	fmt.Fprintf(w, `<g><text x="%d" y="%s" font-weight="bold">%s, %s</text>`+"\n", frameLeft, short(p.top-8), p.title, p.symbol)
	for i := 0; float64(i)*step <= top*(1+1e-9); i++ {
		v := float64(i) * step
		fmt.Fprintf(w, `<path d="M%d %sh%d" stroke="%s"/><text x="%d" y="%s" text-anchor="end">%s</text>`+"\n",
			frameLeft, short(y(v)), frameWide, lines, frameLeft-8, short(y(v)+4.5), short(v))
	}
	each := float64(frameWide) / float64(len(p.values))
	every := (len(p.values) + mostLabels - 1) / mostLabels
	for i, v := range p.values {
		x := frameLeft + float64(i)*each
		if v > 0 {
			fmt.Fprintf(w, `<rect x="%s" y="%s" width="%s" height="%s" fill="%s"><title>%s: %s %s</title></rect>`+"\n",
				short(x+each*0.12), short(y(v)), short(each*0.76), short(p.top+frameHigh-y(v)), p.color, b.date(first+i).Format(time.DateOnly), short(v), p.symbol)
		}
		if i%every == 0 {
			fmt.Fprintf(w, `<text x="%s" y="%s" text-anchor="middle">%s</text>`+"\n", short(x+each/2), short(p.top+frameHigh+18), b.date(first+i).Format("Jan 2"))
		}
	}
	fmt.Fprintf(w, `<path d="M%d %sh%d" stroke="%s"/></g>`+"\n", frameLeft, short(p.top+frameHigh), frameWide, ink)
}

// scale returns the step between lines and the top of an axis: four to eight
// steps of 1, 2 or 5 times a power of ten.
func scale(most float64) (step, top float64) {
	if !(most > 0) {
		return 1, 1
	}
	power := math.Pow(10, math.Floor(math.Log10(most/4)))
	step = power
	for _, n := range []float64{2, 5} {
		if most/(n*power) >= 4 {
			step = n * power
		}
	}
	return step, step * math.Ceil(most/step-1e-9)
}

func most(values []float64) (m float64) {
	for _, v := range values {
		m = max(m, v)
	}
	return m
}

// short prints a number to a tenth, or to three digits if it is small.
func short(x float64) string {
	if math.Abs(x) >= 10 || x == math.Trunc(x) {
		return strconv.FormatFloat(math.Round(x*10)/10, 'f', -1, 64)
	}
	return strconv.FormatFloat(x, 'g', 3, 64)
}
