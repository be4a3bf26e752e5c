package main

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
)

// setup is what the flags say.
type setup struct {
	weather, history string // files

	today     time.Time
	days      int
	south     bool
	criterion string
	night     units.Temperature
	thaw      units.Temperature
	runDays   int

	taps     int
	vacuum   units.Pressure
	drop     units.Length
	flowDays int
	species  tapping.Species
	buds     tapping.Species
	part     string
	reading  units.Brix

	pail    units.Volume
	perPail int
	inPails units.Volume
	round   time.Duration
	flowing time.Duration
	life    int // days
	storage units.Volume
	waiting units.Volume
	age     time.Duration // of what waits
	sapTemp units.Temperature
	keep    time.Duration
	evening time.Duration
	warmup  time.Duration
	pan     cli.Pan
	heat    units.Power
	syrup   units.Brix
	place   cli.Place
	wood    cli.Firewood

	jar     units.Volume
	spare   units.Share
	perCord ofACord
	peak    units.Volume

	metric bool
}

// criteria are the published ones, by the words of a flag.
var criteria = map[string]func() season.Criterion{
	"flow":     season.SapFlowDay,
	"vigorous": season.VigorousRun,
	"event":    season.FreezeThawEvent,
}

// parts are the parts of the season, by the words of a flag.
var parts = map[string]season.Part{"whole": season.WholeSeason, "end": season.SeasonEnd}

// declare declares the flags with the values of the demo.
func (s *setup) declare(f *cli.Flags) {
	f.Group("Now")
	f.Date(&s.today, "today", "first of the days ahead, as 2031-03-12; without it the date of this computer")
	f.Quantity(&s.waiting, "waiting", "0 US gal", "sap in the tanks now, instead of what days.csv comes to")
	f.Duration(&s.age, "waiting-age", "0s", "how long ago that was gathered, such as 24h: old sap is boiled first, and counts as older")
	f.Quantity(&s.inPails, "in-pails", "0 US gal", "sap in each pail now")
	f.Count(&s.days, "days", 7, 1, 31, "days to look ahead; fewer if the forecast ends")
	f.Page(&s.metric)
	f.More()
	f.Group("Files")
	f.Input(&s.weather, "weather", "CSV of the lows and highs of the days, past and forecast, instead of weather.csv of the folder")
	f.Input(&s.history, "history", "CSV of past springs of a station near by, instead of the earlier years of the weather: when to tap")
	f.Group("Weather")
	f.Choice(&s.criterion, "criterion", "flow", []string{"flow", "vigorous", "event"}, "which days run: flow, vigorous or event, as the page names them with their papers")
	f.Quantity(&s.night, "night-below", "", "your own criterion instead: the night is colder than this")
	f.Quantity(&s.thaw, "day-above", "", "and the day is warmer than this, which is no colder than the night")
	f.Count(&s.runDays, "run-days", 3, 1, 7, "running days within a week that make a run, for the first and the last run of a spring")
	f.Bool(&s.south, "south", "spring is in the second half of the year")
	f.Group("Taps and sap")
	f.Count(&s.life, "hole-life", 0, 0, 184, "days that a hole gives sap; 0 takes 28 with a pail, 42 for a line without a pump, 61 with one")
	f.Count(&s.taps, "taps", 60, 1, 1e6, "taps that are out")
	f.Quantity(&s.vacuum, "vacuum", "", "vacuum at the holes of a line with a pump; without it and -drop sap comes by gravity")
	f.Quantity(&s.drop, "drop", "", "height that a tight line without a pump falls: full of sap it draws a vacuum of its own")
	f.Count(&s.flowDays, "flow-days", 30, 1, 120, "running days of a whole season, 10 or more; without it the median of -history, else a guess of 30")
	f.Quantity(&s.species, "species", "sugar maple", "kind of maple, for the sugar that is published of it")
	f.Quantity(&s.buds, "buds", "maple", "the maple that buds first of those that you tap: sugar maple if there is no other; else the page warns early, as of red maple")
	f.Choice(&s.part, "part", "whole", []string{"whole", "end"}, "part of the season: whole, or end when sugar falls")
	f.Quantity(&s.reading, "sugar", "", "true strength of your own sap, instead of the published range")
	f.Group("Pails")
	f.Quantity(&s.pail, "pail", "2 US gal", "what a pail holds to the brim")
	f.Count(&s.perPail, "taps-per-pail", 2, 1, 100, "taps that run into a pail")
	f.Duration(&s.round, "round", "24h", "time from one round of the pails to the next")
	f.Duration(&s.flowing, "flowing", "8h", "hours in which the sap of a day flows")
	f.Group("Tank and evenings")
	f.Quantity(&s.storage, "storage", "120 US gal", "what all tanks hold")
	f.Quantity(&s.sapTemp, "sap-temp", "42 F", "temperature at which sap waits")
	f.Duration(&s.keep, "keep", "0s", "how long sap may wait; 0 goes by -sap-temp")
	f.Duration(&s.evening, "evening", "5h", "hours of fire that you are willing to keep in a day")
	f.Duration(&s.warmup, "warmup", "30m", "of these, until the pan boils")
	f.Pan(&s.pan, "8 ft2")
	f.Quantity(&s.heat, "heat", "", "heat that reaches the liquid, instead of all these, such as \"80000 Btu/h\"")
	f.Target(&s.syrup, "syrup")
	f.Place(&s.place, "900 ft")
	f.Group("Fire")
	f.Firewood(&s.wood)
	f.Group("Stores for the season")
	f.Quantity(&s.jar, "jar", "1 US pt", "label volume of your containers; with -metric 500 mL")
	f.Quantity(&s.spare, "spare", "5 %", "containers beyond the count, for breakage")
	f.Quantity(&s.perCord, "syrup-per-cord", "", "syrup that a full cord made in a past season, a volume")
	f.Quantity(&s.peak, "peak", "", "sap of one tap on the best day of past seasons")
}

// check tests what the library does not.
func (s *setup) check(f *cli.Flags) error {
	_, err := s.place.Given()
	if err = cmp.Or(err, f.Alone("vacuum", "drop"), f.Alone("criterion", "night-below"), f.Alone("criterion", "day-above"), f.Alone("species", "sugar"),
		f.Alone("part", "sugar"), f.Alone("heat", "boil-rate", "pan-area"), f.Alone("heat", "boil-rate", "pan-rate")); err != nil {
		return err
	}
	for _, pair := range [][2]string{{"night-below", "day-above"}, {"day-above", "night-below"}, {"moisture", "efficiency"}, {"waiting-age", "waiting"}} {
		if err := f.With(pair[1:], "give -"+pair[1]+" too", pair[0]); err != nil {
			return err
		}
	}
	for _, name := range []string{"pail", "taps-per-pail", "in-pails", "round"} {
		if f.Given(name) && s.line(f) {
			return cli.For(name, errors.New("sap of a line runs into the tank: leave out -vacuum and -drop, or the pails"))
		}
	}
	if !s.species.IsMaple() {
		return cli.For("species", errors.New(s.species.String()+" is no maple: its sap gives another syrup, and these figures are not for it"))
	}
	if err := s.checkRound(); err != nil {
		return err
	}
	if s.life != 0 && s.life < 7 {
		return cli.For("hole-life", errors.New("7 days or more, or 0: 3 to 6 weeks with an open spout, about two months under vacuum"))
	}
	if f.Given("keep") && s.keep != 0 && s.keep < time.Hour {
		return cli.For("keep", errors.New("an hour or more, or 0 to go by -sap-temp"))
	}
	if f.Given("flow-days") {
		err = cli.Within("flow-days", "running days", float64(s.flowDays), fewestFlowDays, 120, 1, "", "fewer bring less sap in all, and not more on a day")
	}
	const least, most = 0.3, 20
	if err == nil && f.Given("sugar") {
		err = cli.Within("sugar", "sap", s.reading, least, most, 1, "Brix", "sap is near 2 Brix: check the hydrometer in water")
	}
	return cmp.Or(err,
		cli.WithinTemperature("sap-temp", "sap", s.sapTemp, 0, 40, "the sap that waits in the tanks, thawed and before it goes to the fire"),
		s.pan.Check(),
		cli.Within("storage", "storage", s.storage, 1*units.USGallon, 1e6*units.USGallon, units.USGallon, "US gal", "the tanks together"),
		cli.Within("waiting", "sap", s.waiting, 0, s.storage, units.USGallon, "US gal", "no more than -storage holds"),
		cli.Within("pail", "size", s.pail, 0.1*units.USGallon, 100*units.USGallon, units.USGallon, "US gal", "the volume to the brim"),
		cli.Within("in-pails", "sap", s.inPails, 0, s.pail, units.USGallon, "US gal", "no more than -pail holds"),
	)
}

// ofACord is the syrup of a cord. Asked by its cord, a person writes a ratio.
type ofACord units.Volume

func (v *ofACord) UnmarshalText(text []byte) error {
	err := (*units.Volume)(v).UnmarshalText(text)
	if err != nil && bytes.ContainsRune(text, '/') {
		err = fmt.Errorf("%q: give the syrup of one cord as a volume, such as 10 US gal", clip.Text(string(text)))
	}
	return err
}

const day = 24 * time.Hour

// checkRound wants rounds that fall on whole days, or within one.
func (s *setup) checkRound() error {
	switch {
	case s.round < time.Hour:
		return cli.For("round", errors.New("an hour or more, such as 12h or 24h"))
	case s.round > day && s.round%day != 0:
		return cli.For("round", errors.New("rounds further apart than a day come after whole days: 48h, 72h"))
	case s.flowing < time.Hour || s.flowing > day:
		return cli.For("flowing", errors.New("1h to 24h: the thaw of one day"))
	}
	return nil
}

// line reports whether sap runs in a line and not into pails.
func (s *setup) line(f *cli.Flags) bool { return f.Given("vacuum") || f.Given("drop") }

// hemisphere is where the spring is.
func (s *setup) hemisphere() season.Hemisphere {
	if s.south {
		return season.South
	}
	return season.North
}
