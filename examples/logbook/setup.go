package main

import (
	"cmp"
	"errors"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// setup is what the flags say.
type setup struct {
	folder.Settings

	heldBefore, heldAfter           units.Volume
	heldBeforeBrix, heldAfterBrix   units.Brix
	laid                            units.Volume
	sapGauge, syrupGauge, heldGauge units.Share
	sapLimit, syrupLimit, heldLimit units.Brix

	trace  string
	cost   bool
	wage   string
	price  string
	svg    string
	metric bool

	miss     cli.Off // what the settings say of the instruments
	asked    bool    // for a season
	heldTold bool    // the sweet held after is of the flag, and not of pan.csv
}

func (s *setup) declare(f *cli.Flags) {
	f.Group("Instead of the season")
	f.String(&s.trace, "trace", "", "a batch: which jars it stands in and with what share, to get them back if something was wrong with it, and what is in the jars that bear its name")
	f.Bool(&s.cost, "cost", "what a gallon and a pint cost by costs.csv, without wages and with them, and what an hour earned")
	f.String(&s.wage, "wage", "", "with -cost: what an hour of people.csv is counted at, as 15/h")
	f.String(&s.price, "price", "", "with -cost: what syrup sells at, as 60/US gal or 9/US pt")
	f.Group("Chart")
	f.Drawing(&s.svg, "svg", "write a chart of sap and sugar by day to this file")
	f.Page(&s.metric)
	f.More()
	f.Group("Season")
	f.Quantity(&s.heldBefore, "held-before", "0 US gal", "sweet that stood in pans and tanks before the first gathering")
	f.Quantity(&s.heldBeforeBrix, "held-before-brix", "35 Brix", "its true strength")
	f.Quantity(&s.heldAfter, "held-after", "0 US gal", "sweet that stands in pans and tanks now, instead of what pan.csv tells")
	f.Quantity(&s.heldAfterBrix, "held-after-brix", "35 Brix", "its true strength")
	f.Group("Instruments")
	f.Quantity(&s.sapGauge, "sap-gauge", "2 %", "limits of the measured volumes of sap")
	f.Quantity(&s.sapLimit, "sap-limit", "0.1 Brix", "limits of the readings of sap")
	f.Quantity(&s.syrupGauge, "syrup-gauge", "1 %", "limits of the volumes or weights of syrup")
	f.Quantity(&s.syrupLimit, "syrup-limit", "0.3 Brix", "limits of the readings of syrup")
	f.Quantity(&s.heldGauge, "held-gauge", "5 %", "limits of the volumes held")
	f.Quantity(&s.heldLimit, "held-limit", "1 Brix", "limits of the strengths held")
	f.Group("Fire")
	f.Quantity(&s.laid, "laid-in", "", "wood, or oil or propane, that was laid in for the season")
}

// check tests the flags that the library does not test, or only once the files
// are read.
func (s *setup) check(f *cli.Flags) (err error) {
	if s.svg != "" && s.trace != "" {
		return cli.For("svg", errors.New("it draws a season, and -trace asks for a batch: give one of them"))
	}
	if s.svg != "" && s.cost {
		return cli.For("svg", errors.New("it draws a season, and -cost counts its money: give one of them"))
	}
	err = cmp.Or(f.With([]string{"cost"}, "it belongs to -cost: give that too", "wage", "price"), f.Alone("trace", "cost"))
	if err != nil {
		return err
	}
	err = cli.Within("laid-in", "volume", s.laid, 0, 1000*units.Cord, units.Cord, "cord", "what a season burns")
	for _, limits := range []struct {
		kind  string
		gauge units.Share
		brix  units.Brix
	}{{"sap", s.sapGauge, s.sapLimit}, {"syrup", s.syrupGauge, s.syrupLimit}, {"held", s.heldGauge, s.heldLimit}} {
		err = cmp.Or(err,
			cli.Within(limits.kind+"-gauge", "limits", limits.gauge, 0.01, 50, units.Percent, "%", "nobody measures without error"),
			cli.Within(limits.kind+"-limit", "limits", limits.brix, 0.01, 5, units.DegreeBrix, "Brix", "nobody reads without error"))
	}
	for _, sweet := range []struct {
		when   string
		volume units.Volume
		brix   units.Brix
	}{{"before", s.heldBefore, s.heldBeforeBrix}, {"after", s.heldAfter, s.heldAfterBrix}} {
		volumeErr := cli.Within("held-"+sweet.when, sapVolume.Arg, sweet.volume, 0, units.Liters(sapVolume.High), units.Liter, "L", "check its unit")
		_, brixErr := held(0, sweet.brix)
		err = cmp.Or(err, volumeErr, cli.For("held-"+sweet.when+"-brix", brixErr))
	}
	return err
}

func (s *setup) syrupHydrometer() density.Hydrometer {
	return density.Hydrometer{GraduatedAt: s.SyrupHydrometer}
}

// held returns a lot held in a tank: sweet at the temperature of a room.
func held(v units.Volume, b units.Brix) (sugar.Lot, error) {
	return sugar.NewLot(v, b, label)
}

// measured returns the limits that the flags give to a kind of lots.
func measured(gauge units.Share, limit units.Brix) yield.Measured {
	return yield.Measured{Volume: gauge, Brix: limit}
}

// run reads the season and answers.
func (s *setup) run(e *cli.Env, f *cli.Flags) error {
	if err := s.check(f); err != nil {
		return err
	}
	s.Settings, s.miss = f.House().Settings, f.Off("")
	if s.trace != "" {
		page, err := s.traceSheet(f)
		if err != nil {
			return err
		}
		return page.Show(e)
	}
	s.asked = f.Given("season")
	s.heldTold = f.Given("held-after")
	b := newBook(s, f)
	if err := b.open(); err != nil {
		return err
	}
	if l, ok := s.Set("taps"); !ok || l.Number > 0 { // not said for this run
		s.Taps = b.house.Taps(b.year) // an earlier season had its own
	}
	account, err := b.balance()
	if err != nil {
		return err
	}
	page, err := b.sheet(account)
	if s.cost {
		page, err = b.costSheet(account.Syrup)
	}
	if err != nil {
		return err
	}
	if s.svg != "-" {
		err = page.Show(e)
	}
	if err == nil && s.svg != "" {
		err = e.Draw("svg", s.svg, b.chart())
	}
	return err
}
