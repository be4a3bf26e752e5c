package main

import (
	_ "embed"
	"html/template"
	"io"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
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
	Told                 []string // what the elevation says of barometer or thermometer
	Station, Rise        string
	Water, Syrup         []string // the first large, the other beside it
	HotCup               string
	HotReads             []string
	Unfed                string // how long an inch lasts without sap
	Slip, SlipBrix       string // what an error of the thermometer does
	Graduation           string
	SapGraduation        string
	ExtrapolatedAbove    string
	LabelTemperature     string
	SealAt               string
	Hottest              string // boiling syrup, if the rows of hotter cups are left out
	Starred              bool   // a row of the cup table is extrapolated
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
	if err := cli.Target("target", in.target); err != nil {
		return nil, err
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
		Name: in.name, Paper: in.paper, Demo: in.demo, Today: p.today, Known: p.known, Told: p.told, Station: s.pressure(p.station),
		Target:            strength(in.target) + " (" + degreesBaume(baume) + ")",
		Graduation:        s.temperature(in.syrupGraduation),
		SapGraduation:     s.temperature(in.sapGraduation),
		ExtrapolatedAbove: s.whole(extrapolatedAbove),
		LabelTemperature:  s.whole(labelTemperature),
		SealAt:            s.atLeast(sealAt),
		SapFor:            number(float64(correctedReading), 0),
		SapFrom:           number(float64(leastCorrected), 0),
		SapTo:             number(float64(mostCorrected), 0),
		SapWithin:         number(float64(correctedWithin), 2),
	}
	c.Strength = strings.ReplaceAll(cli.Keeping(in.target), " Brix", "\u00a0Brix")
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
		{p.flag, c.boiling}, {"hydrometer", c.cup}, {"target", c.ratio}, {"sap-hydrometer", c.sap}, {"target", c.packing}, {p.flag, c.unfed},
	} {
		if err := part.fill(in, s, p); err != nil {
			return nil, cli.For(part.flag, err)
		}
	}
	return c, nil
}

//go:embed card.html.tmpl
var layout string

var pageTemplate = template.Must(template.New("card").Parse(layout))

func (c *card) write(w io.Writer) error { return pageTemplate.Execute(w, c) }
