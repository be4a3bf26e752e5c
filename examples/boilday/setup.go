package main

import (
	"cmp"
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/lookagain"
)

// setup is what the flags say.
type setup struct {
	sap     units.Volume
	reading units.Brix
	readAt  units.Temperature
	sapStem units.Temperature
	sapTemp units.Temperature
	sapFile string
	noTemp  bool // sap of the record goes by readAt

	readings string // of the record, from which the strength is learned; empty if it is not

	day time.Time
	old bool // sap of the record that waited too long is boiled too

	tooOld        units.Volume // of it, where it is not
	refractometer string       // how it minds its temperature; empty for a hydrometer
	sapDoubt      density.Doubt

	place cli.Place

	pan    cli.Pan
	depth  units.Length
	safe   units.Length
	heel   units.Length
	start  string
	doneBy string
	coals  time.Duration
	pot    units.VolumeRate
	night  units.Temperature

	target  units.Brix
	stem    units.Temperature
	cup     units.Temperature
	cupTold bool

	ice        units.Mass
	iceReads   units.Brix
	membraneTo units.Brix
	membrane   sugar.Membrane
	doubt      density.Doubt
	bottle     units.Volume
	pack       units.Temperature

	compartments compartments
	drawTo       units.Brix
	out          string
	chase        units.Volume

	fuel     string
	wood     cli.Firewood
	woodLeft units.Volume

	again []lookagain.Finding // rows of -sap-file to look at again

	metric bool
}

// declare declares the flags with the values of the demo.
func (s *setup) declare(f *cli.Flags) {
	f.Group("Sap")
	f.Quantity(&s.sap, "sap", "90 US gal", "sap to boil, as measured cold")
	f.Quantity(&s.reading, "reading", "2.1 Brix", "what the sap hydrometer or refractometer reads in it")
	f.Quantity(&s.readAt, "read-at", "44 F", "temperature of the sap in the cup when it was read, or of drop and prism")
	f.Date(&s.day, "day", "day to plan, as 2034-03-11: its sap is what the folder's days.csv tells; without it the last day there")
	f.String(&s.start, "start", "08:00", "time of the day when the fire is lit")
	f.String(&s.doneBy, "done-by", "", "time of the day by which it must be done, as 22:00: tells when to light or, with -start too, how much of the sap fits")
	f.Page(&s.metric)
	f.Adds("the day and what then stands in the pan")
	f.More()
	f.Group("Sap, more of it")
	f.Stem(&s.sapStem, "sap-hydrometer", "38 F", "sap")
	s.declareRefractometer(f)
	f.Bool(&s.old, "old-sap", "boil the sap of the record that is over a week old too: it is clear, and smells fresh")
	f.Quantity(&s.sapTemp, "sap-temp", "38 F", "temperature of the sap in the tank")
	f.Input(&s.sapFile, "sap-file", "CSV of the day's gatherings instead of -sap, -reading and -read-at; - is standard input")
	s.declareBefore(f)
	f.Place(&s.place, "1150 ft")
	f.Group("Pan")
	f.Pan(&s.pan, "12 ft2")
	f.Quantity(&s.depth, "depth", "2 in", "depth kept in the pan while sap is added")
	f.Quantity(&s.safe, "safe-depth", "1 in", "least depth that does not scorch")
	f.Quantity(&s.heel, "heel", "1/16 in", "depth that stays in the pan when it is drained")
	f.Quantity(&s.night, "night", "", "coldest that the air gets while sweet stands in the pan: since its last fire, and tonight. Without it the lows of the folder's weather.csv, where they stand")
	f.Duration(&s.coals, "coals", "8m", "time in which the boil falls to half once no more wood goes on, measured on your own pan; of what is not wood none are counted")
	f.Quantity(&s.pot, "pot-rate", "1 US gal/h", "water that the pot boils off in an hour when a small batch is finished in it: measure it on your own burner; 1 US gal/h takes about 2.5 kW into the pot")
	s.declareRig(f)
	f.Group("Syrup")
	f.Target(&s.target, "target")
	f.Stem(&s.stem, "hydrometer", "60 F", "syrup")
	f.Quantity(&s.cup, "cup", "", "temperature of the syrup in the cup when it is read; without it 211 F, or just below today's boiling point of syrup where that is cooler")
	f.Doubt(&s.doubt, "", "syrup hydrometer", "0.5 Brix", "2 F deg", "0.2 Brix")
	s.declareBottles(f)
	f.Group("Fire")
	f.Choice(&s.fuel, "fuel", "wood", []string{"wood", "oil", "propane", "pellets"}, "what burns: wood, oil, propane or pellets")
	f.Firewood(&s.wood)
	f.Quantity(&s.woodLeft, "wood-left", "", "wood that is left, such as 1/4 cord: the page then boils as much sap as it is sure to boil")
}

// tank is more than any sugarhouse gathers in a day.
const tank = 1e5 * units.USGallon

// check tests what the library does not.
func (s *setup) check(f *cli.Flags) error {
	if _, err := s.place.Given(); err != nil {
		return err
	}
	err := cmp.Or(f.Alone("compartments", "pan-area"),
		f.With([]string{"compartments"}, "this belongs to a pan of several compartments: give -compartments too", "draw-to", "out", "chase"))
	if err != nil {
		return err
	}
	if f.Given("compartments") {
		s.pan.Area = 0
		for _, a := range s.compartments {
			s.pan.Area += a
		}
	}
	err = cmp.Or(s.checkRefractometer(f), f.Alone("sap-file", "sap"), f.Alone("sap-file", "reading"), f.Alone("sap-file", "read-at"), s.checkDepths(f))
	if err == nil && f.Given("draw-to") {
		err = cli.Within("draw-to", "strength at which the draw ends", s.drawTo, s.target-10, s.target-0.05, 1, "Brix", "what is drawn is syrup: shut the valve a few Brix below the target, or it is sap that comes out")
	}
	if err != nil {
		return err
	}
	switch burner := s.fuel == "oil" || s.fuel == "propane"; {
	case s.fuel != "wood" && !f.Given("coals"):
		s.coals = 0
	case burner && s.coals > 0:
		return cli.For("coals", errors.New("a burner leaves none: leave this out, or give -fuel wood"))
	}
	if s.coals < 0 || s.coals > 12*time.Hour {
		return cli.For("coals", errors.New("a fire that holds for more than 12 hours cannot be steered: measure how long the boil takes to fall to half"))
	}
	return cmp.Or(
		cli.Within("sap", "sap", s.sap, 0.1*units.USGallon, tank, units.USGallon, "US gal", "check its unit"),
		s.pan.Check(),
		cli.Within("pot-rate", "rate", s.pot, 0.01*units.USGallonPerHour, 1e3*units.USGallonPerHour, units.USGallonPerHour, "US gal/h", "measure how far the level of the pot falls in an hour"),
	)
}

// checkDepths tests the depths of the pan, and blames the one that was given.
func (s *setup) checkDepths(f *cli.Flags) error {
	err := cmp.Or(
		cli.Within("depth", "depth", s.depth, units.Inch/4, 40*units.Inch, units.Inch, "in", "a pan is kept near 2 in deep"),
		cli.Within("safe-depth", "safe depth", s.safe, units.Inch/8, 40*units.Inch, units.Inch, "in", "a pan scorches near 1 in, and nobody boils below an eighth"),
	)
	most := 0.99 * s.depth // there must be something to boil off before the level is low
	switch {
	case err != nil:
		return err
	case s.safe > most && !f.Given("safe-depth"):
		return cli.For("depth", fmt.Errorf("the safe depth is %s: keep the pan deeper, or give -safe-depth too", length(s.safe, s.metric)))
	case s.safe > most:
		return cli.For("safe-depth", fmt.Errorf("it does not lie below the depth that is kept, %s: give less, or a larger -depth", length(s.depth, s.metric)))
	}
	return cli.Within("heel", "heel", s.heel, 0, s.safe, units.Inch, "in", "it is never negative, nor above the safe depth")
}

func length(l units.Length, metric bool) string {
	return (&cli.Sheet{Metric: metric}).In(cli.Length(l))
}

// borrowed lists the flags of the sap, the place and the pan that were not given,
// directly or by another way to say the same.
func (p *plan) borrowed(f *cli.Flags) string {
	told := p.recorded() || f.Given("sap-file")
	read := told || p.given.readings != ""
	var names []string
	for _, n := range []struct {
		asked bool
		flag  string
	}{
		{p.small, "pot-rate"},
		{!told, "sap"},
		{!read, "reading"},
		{!read && p.given.refractometer != compensated, "read-at"},
		{!f.Given("pressure") && !f.Given("water-boils"), "elevation"},
		{!f.Given("compartments"), "pan-area"},
		{!f.Given("boil-rate") && !p.alone, "pan-rate"},
	} {
		if n.asked {
			names = append(names, n.flag)
		}
	}
	return f.Kept(names...)
}
