package main

import (
	"cmp"
	"errors"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// setup is what the flags say.
type setup struct {
	target               units.Brix
	inverted, invertedBy units.Share

	place cli.Place

	probeBy, waterBy units.TempDiff
	depthBy, over    units.Length
	barometerBy      units.Pressure
	shows            units.Temperature
	day              time.Time
	readings, stops  string

	stem     units.Temperature
	cup      units.Temperature
	cupTold  bool
	reading  units.Brix
	doubt    density.Doubt
	hotMark  units.Temperature
	coldMark units.Temperature
	markFor  units.Brix
	floatsAt string

	refractometer units.Brix
	compensated   bool
	prism         units.Temperature
	prismDoubt    density.Doubt

	tare, gross, grossNow units.Mass
	potBrix, potBrixBy    units.Brix
	scaleBy               units.Mass
	boilsOff              units.MassRate
	coals                 time.Duration

	making string
	checks checks
	metric bool
}

// demo is the moment of the invented sugarhouse: the sap of its 11 March, taken off
// the pan into a pot, with a small fire under it.
var demo = []string{
	cli.ByWaterBoils, "209.6 F", "cup", "209 F", "reading", "54.5 Brix", "shows", "215.9 F",
	"tare", "6.2 lb", "gross", "41.4 lb", "pot-brix", "38.5 Brix", "gross-now", "27.9 lb",
	"boils-off", "8 lb/h", "coals", "2m",
}

// declare declares the flags.
func (s *setup) declare(f *cli.Flags) {
	f.Group("Now")
	f.Quantity(&s.reading, "reading", "", "what the hydrometer reads now in the hot cup")
	f.Quantity(&s.cup, "cup", "", "temperature of the syrup in the cup when it is read; without it 211 F, or just below today's boiling point of syrup where that is cooler")
	f.Quantity(&s.shows, "shows", "", "what the thermometer in the pot shows now")
	f.Date(&s.day, "day", "day of a stop that -write adds, as 2034-03-11; without it today")
	f.Page(&s.metric)
	f.Adds("this stop, or what a check tells of an instrument,")
	f.More()
	f.Group("Syrup")
	f.Target(&s.target, "target")
	f.Quantity(&s.inverted, "inverted", "0 %", "share of the sugar that is glucose and fructose: late sap has a few percent")
	f.Quantity(&s.invertedBy, "inverted-by", "", "how well that share is known; without it the share itself is taken, since it is seldom known better")
	f.Place(&s.place, "")
	f.Group("Thermometer in the pot (what ends in -by holds 19 times of 20, k = 2)")
	f.Quantity(&s.probeBy, "probe-by", "0.4 F deg", "how well a difference of two of its readings is known")
	f.Quantity(&s.waterBy, "water-by", "0.2 F deg", "how well the boiling point of water is known, which all readings share")
	f.Quantity(&s.depthBy, "depth-by", "1/2 in", "how well the depth of liquid over the probe is that of the boiling water it was set by")
	f.Quantity(&s.barometerBy, "barometer-by", "0.1 inHg", "how far the barometer may have moved since; with -elevation alone 0.6 inHg is taken")
	f.Quantity(&s.over, "over", "", "syrup over the probe, if boiling water was read with the probe at the surface: it counts in all that the thermometer says, save in -make")
	f.Input(&s.readings, "readings", "CSV of timed readings instead of -shows: how fast it climbs and how long is left; - is standard input")
	f.Input(&s.stops, "stops", "CSV of your own past stops: what your thermometer shows at syrup. Where they tell it better, they count in the stop and in -shows and -readings, instead of -inverted and -over; - is standard input")
	f.Group("Hydrometer in the hot cup")
	f.Stem(&s.stem, "hydrometer", "60 F", "syrup")
	f.Doubt(&s.doubt, "", "hydrometer", "0.5 Brix", "2 F deg", "0.2 Brix")
	f.Quantity(&s.hotMark, "hot-mark", "", "temperature of the hot mark of a stem with two marks")
	f.Quantity(&s.coldMark, "cold-mark", "", "temperature of its cold mark")
	f.Quantity(&s.markFor, "mark-for", "", "strength that the marks stand for, if not the target")
	f.Choice(&s.floatsAt, "floats-at", "", []string{hot, cold}, "hot or cold: the mark that the stem floats at now, instead of -reading")
	f.Group("Refractometer")
	f.Quantity(&s.refractometer, "refractometer", "", "what it reads now, in a drop that has cooled")
	f.Bool(&s.compensated, "compensated", "it corrects itself for temperature")
	f.Quantity(&s.prism, "prism", "", "temperature of drop and prism, if it does not")
	f.Doubt(&s.prismDoubt, "prism-", "refractometer", "0.2 Brix", "2 F deg", "0.3 Brix")
	f.Group("Pot on a scale")
	f.Quantity(&s.tare, "tare", "", "weight of the empty pot")
	f.Quantity(&s.gross, "gross", "", "weight of pot and sap when the strength was read")
	f.Quantity(&s.potBrix, "pot-brix", "", "strength read then, in a cooled cup; best at 30 to 50 Brix")
	f.Quantity(&s.grossNow, "gross-now", "", "weight now, if it has boiled on since; nothing poured in or spilled")
	f.Quantity(&s.scaleBy, "scale-by", "0.1 lb", "how well a weighing is known")
	f.Quantity(&s.potBrixBy, "pot-brix-by", "0.4 Brix", "how well that strength is known")
	f.Quantity(&s.boilsOff, "boils-off", "", "water that the pot loses, as between two weighings: then the page tells the time")
	f.Duration(&s.coals, "coals", "0s", "time in which the boil falls to half once no more wood goes on; 0s for gas")
	f.Group("Further product")
	f.Choice(&s.making, "make", "", products(), "where it is done today and what a US gallon of syrup gives: "+strings.Join(products(), ", "))
	s.checks.declare(f)
}

const hot, cold = "hot", "cold"

// placed tells whether it was said where water boils today.
func placed(f *cli.Flags) bool {
	return slices.ContainsFunc(places, f.Given)
}

var places = []string{cli.ByElevation, cli.ByStation, cli.ByAltimeter, cli.ByWaterBoils}

// check tests what the library does not, and which flags go together.
func (s *setup) check(f *cli.Flags) error {
	if placed(f) {
		if _, err := s.place.Given(); err != nil {
			return err
		}
	}
	needs := func(other, why string, names ...string) error {
		return f.With([]string{other}, "give -"+other+" too: "+why, names...)
	}
	err := cmp.Or(
		f.With(places, "say where water boils today too: give -water-boils, -pressure or -elevation", "readings", "shows", "over", "make"),
		f.Alone("readings", "shows"), f.Alone("reading", "floats-at"), f.Alone("compensated", "prism"),
		needs("cup", "the temperature of the syrup when it was read", "reading", "floats-at"),
		needs("refractometer", "what the instrument reads", "prism", "compensated"),
		needs("tare", "the weight of the empty pot", "gross"),
		needs("pot-brix", "the strength that was read when the pot was weighed", "gross"),
		needs("gross", "the weight of pot and sap", "tare"),
		needs("gross", "the weight of the pot when it was read", "pot-brix"),
		needs("gross", "the weight of the pot when its strength was read", "gross-now"),
		needs("gross", "the weight of the pot that loses it", "boils-off"),
		f.With([]string{"boils-off", "readings"}, "give -boils-off or -readings too: how fast it climbs", "coals"),
		needs(s.floatsAt+"-mark", "the temperature of that mark", "floats-at"),
	)
	if err != nil {
		return err
	}
	if f.Given("refractometer") && !s.compensated && !f.Given("prism") {
		return cli.For("refractometer", errors.New("give -prism, the temperature of drop and prism, or -compensated"))
	}
	if !f.Given("mark-for") {
		s.markFor = s.target
	}
	if !f.Given("inverted-by") {
		s.invertedBy = s.inverted
	}
	if err := s.ranges(f); err != nil {
		return err
	}
	s.standardize()
	return nil
}

// standardize turns what holds 19 times of 20, as it is given and printed, into
// the standard uncertainties that the library takes.
func (s *setup) standardize() {
	s.probeBy /= density.Coverage
	s.waterBy /= density.Coverage
	s.depthBy /= density.Coverage
	s.barometerBy /= density.Coverage
	s.invertedBy /= density.Coverage
	s.scaleBy /= density.Coverage
	s.potBrixBy /= density.Coverage
}

// ranges holds the values against ranges of the program, where the library's
// message would not tell which flag is meant.
func (s *setup) ranges(f *cli.Flags) error {
	const (
		doubt  = "every instrument has one: give what is known of yours"
		share  = "a sap of glucose and fructose, as of birch, is finished by density and not by temperature"
		weight = "check its unit"
	)
	degrees := func(name string, d, low units.TempDiff) error {
		return cli.Within(name, "error", d, low, 10, units.FahrenheitDegree, "F deg", doubt)
	}
	err := cmp.Or(
		cli.Within("inverted", "inverted share", s.inverted, 0, 12, 1, "%", share),
		cli.Within("inverted-by", "uncertainty", s.invertedBy, 0, 12, 1, "%", share),
		degrees("probe-by", s.probeBy, 0.02),
		degrees("water-by", s.waterBy, 0),
		cli.Within("depth-by", "depth", s.depthBy, 0, 20*units.Inch, units.Inch, "in", weight),
		cli.Within("barometer-by", "pressure", s.barometerBy, 0, 1.8*units.InchMercury, units.InchMercury, "inHg", "a barometer moves by 0.3 inHg in a day"),
		cli.Within("mark-for", "strength", s.markFor, 50, 80, 1, "Brix", "what the marks of a syrup stem stand for, such as 66.9 Brix"),
		cli.Within("scale-by", "weight", s.scaleBy, 0, 20*units.Pound, units.Pound, "lb", weight),
		cli.Within("pot-brix-by", "uncertainty", s.potBrixBy, 0, 10, 1, "Brix", doubt),
	)
	if err == nil && f.Given("over") {
		err = cli.Within("over", "depth", s.over, 0, 10*units.Inch, units.Inch, "in", "the syrup over the probe, not the depth of the pot")
	}
	if err == nil && f.Given("coals") && !(s.coals <= time.Hour) {
		err = cli.For("coals", errors.New("a fire that holds up the boil for hours is no finishing fire: give up to 1h"))
	}
	return err
}
