package main

import (
	"errors"
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
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

// Limits on what is read.
const (
	mostCans    = 1000
	mostHelpers = 60
	mostKinds   = 32
	leastLabel  = 5 * units.Milliliter
	mostLabel   = 60 * units.Liter
)

// eachRow reads a file of the folder and calls row for each record, most at the
// most. It reports whether there are any.
func eachRow(h *folder.House, name string, most int, cols []records.Col, row func(*records.Reader) error) (there bool, err error) {
	in, there := h.File(name)
	if !there {
		return false, nil
	}
	defer in.Close()
	r, err := records.New(h.Shown(name), in, cols...)
	if err != nil {
		return true, err
	}
	if err = cli.Rows(r, most, ": pack them on several days", func() error { return row(r) }); errors.Is(err, cli.ErrNoRows) {
		return false, nil
	}
	return true, err
}

// inFile names the file of the folder that an error of the library comes from.
func (d *day) inFile(name string, err error) error {
	if err == nil {
		return nil
	}
	return &records.Error{File: d.flags.House().Shown(name), Err: err}
}
