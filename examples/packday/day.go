package main

import (
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/money"
	"example.org/sapreckoner/yield/packing"
)

// label is the temperature at which syrup is sold by volume: 68 F.
var label = units.Celsius(20)

// day is the packing worked out.
type day struct {
	given    *setup
	flags    *cli.Flags
	from     string // the flag that told the pressure
	batches  bool   // of the folder, and not a lot of the flags
	borrowed string // the flags that were not given, with their defaults
	standard sugar.Standard

	cans  []can
	pool  syrup
	mark  syrup // brought to the mark, at the temperature of the filter
	own   bool  // the target was asked for, and is not what is taken else
	do    sugar.Remedy
	off   units.Mass
	added sugar.Lot
	heat  units.Energy
	boils units.Temperature // at the mark
	water units.Temperature // boils today
	reads units.Brix        // the hydrometer in the cup, at the mark

	filters          int
	aid              units.Mass // NaN without a press
	kept             sugar.Lot  // by the filters
	thick, thickCold units.Viscosity

	pack      sugar.Lot // what is packed, at the temperature of packing
	plan      packing.PackPlan
	short     bool   // the containers run out
	seals     []seal // of each kind
	coldest   int    // of those filled; -1 if none is known
	packed    units.Mass
	leftSugar units.Mass

	helpers []money.Contribution
	by      string
	taken   []units.Volume // by each already
	took    bool           // one of them something
	baskets []money.Basket
}

// syrup is a lot with what is known about it.
type syrup struct {
	lot     sugar.Lot
	doubt   units.Brix // expanded uncertainty of its strength
	verdict sugar.Verdict
	light   units.Share // NaN if it is not known
}

// work plans the day.
func (s *setup) work(e *cli.Env, f *cli.Flags) (*day, error) {
	if err := s.check(f); err != nil {
		return nil, err
	}
	d := &day{given: s, flags: f, aid: units.Mass(math.NaN()), coldest: -1}
	d.batches = !f.Given("volume") && !f.Given("weight")
	d.own = f.Source("target").Kind == cli.Told
	h := f.House()
	s.miss = f.Off("")
	var err error
	var place sugar.Jurisdiction
	if err := place.UnmarshalText([]byte(s.place)); err != nil {
		return nil, cli.For("place", err)
	}
	if d.standard, err = place.Standard(); err != nil {
		return nil, cli.For("place", err)
	}
	if d.cans, err = s.cans(h, f); err != nil {
		return nil, err
	}
	var pan []string // that was not told
	if !f.Given(cli.ByStation) && !f.Given(cli.ByWaterBoils) {
		pan = []string{cli.ByElevation}
	}
	s.told = f.Given("cup")
	switch {
	case !d.batches:
		pan = append(pan, "reading", "read-at", "temp")
	case s.tempTaken:
		pan = append(pan, "temp")
	}
	d.borrowed = f.Kept(pan...)
	invented := !d.batches && f.Dir() == "" // jars and people of whom the lot is not
	if s.metric && !f.Given("containers") {
		s.containers = metricJars
	}
	supplies, err := s.supplies(h, f.Given("containers") || invented)
	if err != nil {
		return nil, err
	}
	if !invented {
		if err = d.helpersOf(h); err != nil {
			return nil, err
		}
	}
	for _, step := range []func() error{d.blend, d.toMark, d.atMark, d.filter, func() error { return d.fill(supplies) }, d.share} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	return d, nil
}
