package main

import (
	_ "embed"
	"html/template"
	"io"
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// Strengths that are sold as syrup, in Brix: thinner it ferments, thicker it
// crystallizes in the bottle.
const (
	minTarget = 60
	maxTarget = 75
)

// Strengths at which syrup keeps on the shelf. Sources: thinner it ferments,
// common practice; thicker it is likely to crystallize from room temperature
// down, OMAFRA 2013.
const (
	thinnest units.Brix = 66
	thickest units.Brix = 68
)

// bandSteps is how many steps of the barometer the card shows to either side:
// an inch of mercury or 25 hPa, which few days leave.
const bandSteps = 5

// correctedReading is the reading for which the sap corrections stand; from
// leastCorrected to mostCorrected they differ from it by less than
// correctedWithin.
const (
	correctedReading units.Brix = 2
	leastCorrected   units.Brix = 1
	mostCorrected    units.Brix = 4
	correctedWithin  units.Brix = 0.05
)

// labelTemperature is where the volume on a label is measured. Source: Maine
// Department of Agriculture, rules ch. 117.
var labelTemperature = units.Fahrenheit(68)

// sealAt is the least heat for packing. Source: Ontario food safety manual.
var sealAt = units.Fahrenheit(180)

// extrapolatedAbove is where [density.Extrapolated] begins.
var extrapolatedAbove = units.Celsius(90)

// slip is an error that a kitchen thermometer may have.
const slip = 0.5 * units.FahrenheitDegree

// sapStrengths are the rows of the sap table, in Brix: sap, then what a
// membrane makes of it.
var sapStrengths = []units.Brix{1, 1.5, 1.8, 2, 2.2, 2.5, 3, 4, 6, 10, 20}

// A card is what the page shows.
type card struct {
	Name, Paper          string
	Demo, Today          bool
	Target, Known        string
	Station, Rise        string
	Water, Syrup         []string // the first large, the other beside it
	HotCup               string
	HotReads             []string
	Slip, SlipBrix       string // what an error of the thermometer does
	Graduation           string
	SapGraduation        string
	ExtrapolatedAbove    string
	LabelTemperature     string
	SealAt               string
	Hottest              string // boiling syrup, if the rows of hotter cups are left out
	Starred, Daggered    bool   // a row of the cup table is extrapolated, one of the filling is too hot
	Strength             string // what is wrong with syrup so thin or thick
	SapFor, SapFrom      string // the strength that the sap corrections stand for, and
	SapTo, SapWithin     string // the strengths for which they serve
	Boiling, Cup         table
	Ratio, Sap, Fill     table
	BoilingPlot, CupPlot template.HTML
}

// A table has the same number of cells in every row; the first heads the row.
type table struct {
	ID, Caption string
	Head        []string
	Rows        []row
}

type row struct {
	Cells []string
	Here  bool // the row nearest to the pressure at the pan
}

func newCard(in *flags) (*card, error) {
	if b := in.target; !(b >= minTarget && b <= maxTarget) {
		return nil, cli.For("target", &units.RangeError{Arg: "syrup", Value: float64(b), Low: minTarget, High: maxTarget, Unit: "Brix",
			Hint: "thinner it ferments, thicker it crystallizes; most laws ask for 66 to 68.9"})
	}
	s := newSystem(in.metric)
	p, err := newPlace(in, s)
	if err != nil {
		return nil, err
	}
	baume, err := density.BaumeFromBrix(in.target)
	if err != nil {
		return nil, cli.For("target", err)
	}
	c := &card{
		Name: in.name, Paper: in.paper, Demo: in.demo, Today: p.today, Known: p.known, Station: s.pressure(p.station),
		Target:            strength(in.target) + " (" + degreesBaume(baume) + ")",
		Graduation:        s.temperature(in.syrupGraduation),
		SapGraduation:     s.temperature(in.sapGraduation),
		ExtrapolatedAbove: s.whole(extrapolatedAbove),
		LabelTemperature:  s.whole(labelTemperature),
		SealAt:            s.whole(sealAt),
		SapFor:            number(float64(correctedReading), 0),
		SapFrom:           number(float64(leastCorrected), 0),
		SapTo:             number(float64(mostCorrected), 0),
		SapWithin:         number(float64(correctedWithin), 2),
	}
	switch {
	case in.target < thinnest:
		c.Strength = "Below " + number(float64(thinnest), 0) + " Brix it ferments or molds in the jar, and may not be sold as syrup."
	case in.target > thickest:
		c.Strength = "Above " + number(float64(thickest), 0) + " Brix crystals are likely in the jar."
	}
	boils, err := boil.SyrupPoint(in.target, p.station)
	if err != nil {
		return nil, cli.For(p.flag, err)
	}
	all := len(s.cups)
	if s = s.below(boils); len(s.cups) < all {
		c.Hottest = s.both(boils, 1)[0]
	}
	if c.Name == "" {
		c.Name = "Sugarhouse"
		if in.demo {
			c.Name = "Demo sugarhouse"
		}
	}
	for _, part := range []struct {
		flag string // whose fault an error is
		fill func(*flags, system, place) error
	}{
		{p.flag, c.boiling}, {"hydrometer", c.cup}, {"target", c.ratio}, {"sap-hydrometer", c.sap}, {"target", c.packing},
	} {
		if err := part.fill(in, s, p); err != nil {
			return nil, cli.For(part.flag, err)
		}
	}
	return c, nil
}

// boiling fills in the boiling points by the barometer.
func (c *card) boiling(in *flags, s system, p place) error {
	water, err := boil.Water(p.station)
	if err != nil {
		return err
	}
	syrup, err := boil.SyrupPoint(in.target, p.station)
	if err != nil {
		return err
	}
	rise := syrup.Sub(water)
	over, err := boil.BrixFromRise(rise+slip, p.station)
	if err != nil {
		return err
	}
	c.Water, c.Syrup, c.Rise = s.both(water, 1), s.both(syrup, 1), s.rise(rise)
	c.Slip, c.SlipBrix = s.rise(slip), strength(over-in.target)

	deg := s.degrees()
	unit := s.pair("inHg", "hPa")
	c.Boiling = table{ID: "boiling", Caption: "Boiling points by the barometer at the pan",
		Head: []string{unit[0], unit[1], "Water " + deg[0], deg[1], "Syrup " + deg[0], deg[1]}}
	waterLine, syrupLine := curve{label: "water"}, curve{label: "syrup"}
	middle := math.Round(float64(p.station / s.band))
	for i := -bandSteps; i <= bandSteps; i++ {
		at := units.Pressure(middle+float64(i)) * s.band
		w, err := boil.Water(at)
		if err != nil {
			return err
		}
		y, err := boil.SyrupPoint(in.target, at)
		if err != nil {
			return err
		}
		cells := s.pair(number(at.InchesMercury(), 1), number(at.Hectopascals(), 0))
		cells = append(cells, s.temperatures(w, false)...)
		cells = append(cells, s.temperatures(y, false)...)
		c.Boiling.Rows = append(c.Boiling.Rows, row{cells, i == 0})
		x := s.first(at.InchesMercury(), at.Hectopascals())
		waterLine.add(x, s.first(w.Fahrenheit(), w.Celsius()))
		syrupLine.add(x, s.first(y.Fahrenheit(), y.Celsius()))
	}
	c.BoilingPlot, err = chart{
		id: "boiling-plot", title: "Boiling points against the barometer",
		x: "barometer, " + unit[0], y: deg[0], curves: []curve{syrupLine, waterLine},
		xStep: s.first(0.4, 10), yStep: s.first(4, 2), xDecimals: int(s.first(1, 0)),
	}.svg()
	return err
}

// cup fills in what the hydrometer reads in finished syrup.
func (c *card) cup(in *flags, s system, _ place) error {
	h := density.Hydrometer{GraduatedAt: in.syrupGraduation}
	deg := s.degrees()
	c.Cup = table{ID: "cup", Caption: "Hydrometer in a cup of finished syrup",
		Head: []string{"Cup " + deg[0], deg[1], "Brix", "Baumé"}}
	rows := make([]density.CupRow, len(s.cups))
	for i, at := range s.cups {
		rows[i].At = at
	}
	if err := h.FillCupTable(in.target, rows); err != nil {
		return err
	}
	line := curve{}
	for _, r := range rows {
		cells := s.temperatures(r.At, true)
		if r.Extrapolated {
			cells[0] += "*"
			c.Starred = true
		}
		c.Cup.Rows = append(c.Cup.Rows, row{Cells: append(cells, number(float64(r.Brix), 1), number(float64(r.Baume), 1))})
		line.add(s.first(r.At.Fahrenheit(), r.At.Celsius()), float64(r.Brix))
	}
	c.HotCup, c.HotReads = s.whole(rows[0].At), []string{strength(rows[0].Brix), degreesBaume(rows[0].Baume)}
	var err error
	c.CupPlot, err = chart{
		id: "cup-plot", title: "Hydrometer reading of finished syrup against the temperature of the cup",
		x: "cup, " + deg[0], y: "Brix", curves: []curve{line}, xStep: s.first(30, 20), yStep: 2,
	}.svg()
	return err
}

// ratio fills in the sap that a gallon of syrup takes.
func (c *card) ratio(in *flags, _ system, _ place) error {
	c.Ratio = table{ID: "ratio", Caption: "Gallons of sap to one of syrup, or L to L",
		Head: []string{"Sap Brix", "Exact", "Rule of 86", "is off by"}}
	for _, sap := range sapStrengths {
		exact, err := yield.Ratio(sap, in.target)
		if err != nil {
			return err
		}
		rule, err := yield.RuleOf86(sap)
		if err != nil {
			return err
		}
		c.Ratio.Rows = append(c.Ratio.Rows, row{Cells: []string{
			number(float64(sap), 1), number(exact, 1), number(rule, 1), signed(100*(rule/exact-1), 1) + " %"}})
	}
	return nil
}

// sap fills in the corrections of the sap hydrometer.
func (c *card) sap(in *flags, s system, _ place) error {
	h := density.Hydrometer{GraduatedAt: in.sapGraduation}
	deg := s.degrees()
	c.Sap = table{ID: "sap", Caption: "Sap reading: add",
		Head: []string{"Sap " + deg[0], deg[1], "Brix"}}
	for _, at := range s.saps {
		b, err := h.Brix(correctedReading, at)
		if err != nil {
			return err
		}
		c.Sap.Rows = append(c.Sap.Rows, row{Cells: append(s.temperatures(at, true), signed(float64(b-correctedReading), 2))})
	}
	return nil
}

// packing fills in how much more to fill hot, for the volume on the label.
func (c *card) packing(in *flags, s system, _ place) error {
	deg := s.degrees()
	per := s.pair("fl oz to US qt", "mL to L")
	c.Fill = table{ID: "fill", Caption: "Hot filling: add",
		Head: []string{"Syrup " + deg[0], deg[1], per[0], per[1]}}
	for _, at := range s.fills {
		quart, err := density.HotVolume(units.USQuart, in.target, at)
		if err != nil {
			return err
		}
		liter, err := density.HotVolume(units.Liter, in.target, at)
		if err != nil {
			return err
		}
		more := s.pair(number((quart-units.USQuart).USFluidOunces(), 2), number((liter-units.Liter).Milliliters(), 0))
		heat, err := yield.PackingHeatOf(at)
		if err != nil {
			return err
		}
		cells := s.temperatures(at, true)
		if heat == yield.HotterThanRead {
			cells[0] += "†"
			c.Daggered = true
		}
		c.Fill.Rows = append(c.Fill.Rows, row{Cells: append(cells, more...)})
	}
	return nil
}

//go:embed card.html.tmpl
var layout string

var pageTemplate = template.Must(template.New("card").Parse(layout))

func (c *card) write(w io.Writer) error { return pageTemplate.Execute(w, c) }
