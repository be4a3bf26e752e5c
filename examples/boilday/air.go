package main

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// A night is the air over a pan in which sweet stands.
type night struct {
	air  units.Temperature // the coldest
	from string            // who tells it; empty if nobody does
	ice  bool              // it freezes the sweet, or some of it
	soon time.Duration     // after the fire, to the first ice
}

// halving is in how long a covered pan is taken to come half of the way to the air: an
// assumption. Only the hour of the first ice depends on it.
const halving = 2 * time.Hour

// air finds the coldest of the nights that end on the days from first to last.
func (s *setup) air(f *cli.Flags, first, last time.Time) (n night) {
	if f.Given("night") {
		return night{air: s.night, from: "as told"}
	}
	file, ok := f.House().File(folder.WeatherFile)
	if !ok {
		return n
	}
	defer file.Close()
	w, err := season.ReadWeather(file)
	if err != nil { // the folder's check tells what is wrong there
		return n
	}
	known := 0
	for _, d := range w.Days() {
		if d.Date.Before(first) || d.Date.After(last) {
			continue
		}
		if known == 0 || d.Min.Compare(n.air) < 0 {
			n.air = d.Min
		}
		known++
	}
	switch all := nights(first, last); {
	case known == 0:
	case known < all:
		n.from = fmt.Sprintf("by %s, of %d of %d nights", folder.WeatherFile, known, all)
	default:
		n.from = "by " + folder.WeatherFile
	}
	return n
}

// nights counts those that end on the days from first to last.
func nights(first, last time.Time) int { return int(last.Sub(first).Hours()/24+0.5) + 1 }

// cool lets sweet stand through so many nights of that air.
func (n *night) cool(c pan.Contents, nights int) (pan.Contents, error) {
	const most = 50 // by then it is as cold as the air
	m, err := c.Overnight(pan.Night{Length: time.Duration(24*min(nights, most)-12) * time.Hour, Air: n.air, Halving: halving})
	if err != nil {
		return nil, cli.ForArg(err, "night", "Night.Air", "night")
	}
	for _, i := range m.Ice {
		if i.Forms && (!n.ice || i.After < n.soon) {
			n.ice, n.soon = true, i.After
		}
	}
	return m.Contents.Thawed(), nil
}

// cool lets the sweet in the pan stand since its fire until the one of today.
func (w *sweet) cool(s *setup, f *cli.Flags) error {
	first, today := w.since.AddDate(0, 0, 1), s.today(f.House())
	if today.Before(first) { // all was boiled, so the next fire is to come
		today = first
	}
	if w.night = s.air(f, first, today); w.night.from == "" {
		return nil
	}
	boils := units.Celsius(100) // about as hot as it was left
	for i := range w.in {
		w.in[i].Temperature = boils
	}
	in, err := w.night.cool(w.in, nights(first, today))
	w.in = in
	return err
}

// coming is the night over what stays in a pan of compartments.
func (p *plan) coming(s *setup, f *cli.Flags) (err error) {
	if p.run == nil || p.small || !(p.run.Held.Mass() > 0) {
		if f.Given("night") && p.sweet.Empty() {
			return cli.For("night", errors.New("no sweet stands in the pan, neither by the record nor after this fire: leave it out"))
		}
		return nil
	}
	if p.recorded() || f.Given("night") {
		next := s.today(f.House()).AddDate(0, 0, 1)
		p.night = s.air(f, next, next)
	}
	if p.night.from != "" {
		_, err = p.night.cool(p.run.Held, 1)
	}
	return err
}

// nightRow tells of the air of a night and what it does.
func (p page) nightRow(part *cli.Part, n night) {
	if n.from == "" {
		part.Remark("Give -night, the coldest that the air gets: then the page tells whether it freezes.")
		return
	}
	what := "no ice by that: look all the same"
	if n.ice {
		what = "ice forms from the thin end on"
	}
	part.Row("air", "Coldest air", cli.Temperature(n.air), n.from, what)
	if n.ice {
		part.Row("ice", "First ice after the fire", cli.Hours(n.soon.Round(time.Hour/2)), fmt.Sprintf("if it cools half of the way in %.0f hours, which is assumed: sooner bare or in wind", halving.Hours()))
	}
}
