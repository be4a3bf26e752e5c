package main

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
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
	day     string

	refractometer string // how it minds its temperature; empty for a hydrometer
	sapDoubt      density.Doubt

	place cli.Place

	area  units.Area
	flux  units.Flux
	rate  units.VolumeRate
	depth units.Length
	safe  units.Length
	heel  units.Length
	start string
	coals time.Duration
	pot   units.VolumeRate

	target  units.Brix
	stem    units.Temperature
	cup     units.Temperature
	cupTold bool

	membraneTo units.Brix
	membrane   sugar.Membrane
	doubt      density.Doubt
	bottle     units.Volume
	pack       units.Temperature

	compartments compartments
	drawTo       units.Brix
	out          string

	fuel, wood string
	moisture   units.Share
	efficiency units.Share
	learned    bool // the efficiency is given

	again []lookagain.Finding // rows of -sap-file to look at again

	metric bool
}

// declare declares the flags with the values of the demo.
func (s *setup) declare(f *cli.Flags) {
	f.Group("Sap")
	f.Quantity(&s.sap, "sap", "90 US gal", "sap to boil, as measured cold")
	f.Quantity(&s.reading, "reading", "2.1 Brix", "what the sap hydrometer or refractometer reads in it")
	f.Quantity(&s.readAt, "read-at", "44 F", "temperature of the sap in the cup when it was read, or of drop and prism")
	f.String(&s.day, "day", "", "day to plan, as 2034-03-11: its sap is what the folder's days.csv tells; without it the last day there")
	f.String(&s.start, "start", "08:00", "time of the day when the fire is lit")
	f.Page(&s.metric)
	f.Adds("the day and what then stands in the pan")
	f.More()
	f.Group("Sap, more of it")
	f.Quantity(&s.sapStem, "sap-hydrometer", "38 F", "graduation temperature printed on the sap hydrometer")
	s.declareRefractometer(f)
	f.Quantity(&s.sapTemp, "sap-temp", "38 F", "temperature of the sap in the tank")
	f.String(&s.sapFile, "sap-file", "", "CSV of the day's gatherings instead of -sap, -reading and -read-at; - is standard input")
	s.declareMembrane(f)
	f.Place(&s.place, "1150 ft")
	f.Group("Pan")
	f.Quantity(&s.area, "pan-area", "12 ft2", "area of the boiling liquid")
	f.Quantity(&s.flux, "pan-rate", "1 US gal/ft2/h", "water boiled off by an area in an hour; about 1 in a flat pan (from memory)")
	f.Quantity(&s.rate, "boil-rate", "", "water boiled off in an hour, measured on your own pan, instead of -pan-rate")
	f.Quantity(&s.depth, "depth", "2 in", "depth kept in the pan while sap is added")
	f.Quantity(&s.safe, "safe-depth", "1 in", "least depth that does not scorch")
	f.Quantity(&s.heel, "heel", "1/16 in", "depth that stays in the pan when it is drained")
	f.Duration(&s.coals, "coals", "8m", "time in which the boil falls to half once no more wood goes on, measured on your own pan; of what is not wood none are counted")
	f.Quantity(&s.pot, "pot-rate", "1 US gal/h", "water that the pot boils off in an hour when a small batch is finished in it: measure it on your own burner; 1 US gal/h takes about 2.5 kW into the pot")
	s.declareRig(f)
	f.Group("Syrup")
	f.Quantity(&s.target, "target", "66.9 Brix", "strength of the syrup")
	f.Quantity(&s.stem, "hydrometer", "60 F", "graduation temperature printed on the syrup hydrometer")
	f.Quantity(&s.cup, "cup", "", "temperature of the syrup in the cup when it is read; without it 211 F, or just below today's boiling point of syrup where that is cooler")
	s.declareDoubt(f)
	s.declareBottles(f)
	s.declareFuel(f)
}

// tank is more than any sugarhouse gathers in a day.
const tank = 1e5 * units.USGallon

// check tests what the library does not.
func (s *setup) check(f *cli.Flags) error {
	if _, err := s.place.Given(); err != nil {
		return err
	}
	if err := cmp.Or(f.Alone("boil-rate", "pan-rate"), f.Alone("compartments", "pan-area")); err != nil {
		return err
	}
	for _, name := range []string{"draw-to", "out"} {
		if f.Given(name) && !f.Given("compartments") {
			return cli.For(name, errors.New("this belongs to a pan of several compartments: give -compartments too"))
		}
	}
	if f.Given("compartments") {
		s.area = 0
		for _, a := range s.compartments {
			s.area += a
		}
	}
	if err := s.checkRefractometer(f); err != nil {
		return err
	}
	for _, name := range []string{"sap", "reading", "read-at"} {
		if err := f.Alone("sap-file", name); err != nil {
			return err
		}
	}
	s.learned = f.Given("efficiency")
	if !f.Given("boil-rate") {
		s.rate = s.flux.Through(s.area)
	}
	if s.learned {
		if err := cli.Within("efficiency", "efficiency", s.efficiency, 1, 110, 1, "%", "leave it out if you have not learned yours"); err != nil {
			return err
		}
	}
	if err := s.checkDepths(f); err != nil {
		return err
	}
	if f.Given("draw-to") {
		if err := cli.Within("draw-to", "strength at which the draw ends", s.drawTo, s.target-10, s.target-0.05, 1, "Brix", "what is drawn is syrup: shut the valve a few Brix below the target, or it is sap that comes out"); err != nil {
			return err
		}
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
	const imperfect = "say how far off it may be: no instrument is perfect"
	return cmp.Or(
		cli.Within("sap-division", "division", s.sapDoubt.Division, 0.001, 5, 1, "Brix", imperfect),
		cli.Within("sap-calibration", "error of the scale", s.sapDoubt.Calibration, 0.001, 5, 1, "Brix", imperfect),
		cli.Within("division", "division", s.doubt.Division, 0.001, 5, 1, "Brix", imperfect),
		cli.Within("calibration", "error of the scale", s.doubt.Calibration, 0.001, 5, 1, "Brix", imperfect),
		cli.Within("thermometer", "error of the thermometer", s.doubt.Thermometer, 0.001, 10, units.CelsiusDegree, "C deg", imperfect),
		cli.Graduation("sap-hydrometer", s.sapStem),
		cli.Graduation("hydrometer", s.stem),
		cli.Within("sap", "sap", s.sap, 0.1*units.USGallon, tank, units.USGallon, "US gal", "check its unit"),
		cli.Within("pan-area", "area", s.area, 0.1*units.SquareFoot, 1e4*units.SquareFoot, units.SquareFoot, "ft2", "give length times width of the liquid"),
		cli.Within("pan-rate", "rate", s.flux, 0.01*units.USGallonPerSquareFootHour, 20*units.USGallonPerSquareFootHour, units.USGallonPerSquareFootHour, "US gal/ft2/h", "flat pans boil off about 1, flue pans about 2"),
		cli.Within("boil-rate", "rate", s.rate, 0.05*units.USGallonPerHour, 1e5*units.USGallonPerHour, units.USGallonPerHour, "US gal/h", "measure how far the level falls in an hour"),
		cli.Within("pot-rate", "rate", s.pot, 0.01*units.USGallonPerHour, 1e3*units.USGallonPerHour, units.USGallonPerHour, "US gal/h", "measure how far the level of the pot falls in an hour"),
		cli.Target("target", s.target),
	)
}

// checkDepths tests the depths of the pan, and blames the one that was given.
func (s *setup) checkDepths(f *cli.Flags) error {
	err := cmp.Or(
		cli.Within("depth", "depth", s.depth, units.Inch/4, 40*units.Inch, units.Inch, "in", "a pan is kept near 2 in deep"),
		cli.Within("safe-depth", "safe depth", s.safe, units.Inch/8, 40*units.Inch, units.Inch, "in", "a pan scorches near 1 in, and nobody boils below an eighth"),
	)
	most := s.depth
	if len(s.compartments) > 0 {
		most *= 0.99 // there must be something to boil off before the level is low
	}
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
	var names []string
	if p.small {
		names = append(names, "pot-rate")
	}
	for _, n := range []struct {
		flag   string
		others []string
	}{
		{"sap", []string{"sap-file"}},
		{"reading", []string{"sap-file"}},
		{"read-at", []string{"sap-file"}},
		{"elevation", []string{"pressure", "water-boils"}},
		{"pan-area", []string{"compartments"}},
		{"pan-rate", []string{"boil-rate"}},
	} {
		if p.recorded() && slices.Contains([]string{"sap", "reading", "read-at"}, n.flag) {
			continue
		}
		unasked := n.flag == "read-at" && p.given.refractometer == compensated || p.alone && n.flag == "pan-rate"
		if !unasked && !slices.ContainsFunc(n.others, f.Given) {
			names = append(names, n.flag)
		}
	}
	return f.Kept(names...)
}

// flagOf returns other if err is about the argument arg, else flag.
func flagOf(err error, flag, arg, other string) string {
	var re *units.RangeError
	if errors.As(err, &re) && re.Arg == arg {
		return other
	}
	return flag
}
