package main

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// thermometer is where the thermometer stops the syrup today.
type thermometer struct {
	pressure units.Pressure
	from     string // the flag that tells the pressure
	water    units.Temperature
	sucrose  units.Temperature // stop at the surface if none of the sugar were inverted
	plain    units.Temperature // stop at the surface
	reckoned units.Temperature // the same under the syrup over the probe
	syrup    units.Temperature // what it shows at the stop: reckoned, or learned
	sap      sugar.Solute
	stop     finish.ThermometerStop
	parts    finish.ThermometerParts

	over    units.Length // 0 if it was not told
	cost    units.Brix   // of the syrup over the probe; NaN if it was not told
	learned *own         // past stops that tell the stop better; nil if none do

	off units.TempDiff // what it shows too much, by the settings
}

// thermometer finds the stop by thermometer.
func (s *setup) thermometer(f *cli.Flags) (*thermometer, error) {
	pressure, from, err := s.place.Pressure()
	if err != nil {
		return nil, err
	}
	t := &thermometer{pressure: pressure, from: from, off: f.Off(from).Thermometer, sap: sugar.Solute{Inverted: s.inverted}, cost: units.Brix(math.NaN())}
	if t.water, err = boil.Water(pressure); err != nil {
		return nil, cli.For(from, err)
	}
	if t.sucrose, err = boil.SyrupPoint(s.target, pressure); err != nil {
		return nil, cli.For(from, err)
	}
	if t.plain, err = boil.SyrupPointOf(t.sap, s.target, pressure); err != nil {
		return nil, cli.For(from, err)
	}
	t.stop = finish.ThermometerStop{Target: s.target, Pressure: pressure, ProbeBy: s.probeBy, DepthBy: s.depthBy,
		BarometerBy: s.barometerBy, Inverted: s.inverted, InvertedBy: s.invertedBy}
	if from == cli.ByElevation && !f.Given("barometer-by") {
		// Weather that nobody measured: common practice, as of finish.ThermometerStop.
		t.stop.BarometerBy = 0.3 * units.InchMercury
	}
	if t.parts, err = t.stop.Parts(); err != nil {
		return nil, cli.For(from, err)
	}
	if f.Given("over") {
		t.over = s.over
		if t.cost, err = finish.DepthCost(s.target, pressure, s.over); err != nil {
			return nil, cli.For("over", err)
		}
	}
	t.reckoned, err = t.shows(s.target)
	t.syrup = t.reckoned
	return t, cli.For("over", err)
}

// float is where the hydrometer stops the syrup.
type float struct {
	stem  density.Hydrometer
	cup   units.Temperature // as hot as it truly is
	reads units.Brix
	off   units.Brix // what it reads too much, by the settings
	baume density.Baume145
	stop  finish.HydrometerStop
	parts finish.HydrometerParts
	marks []mark
}

// mark is one line of a stem with two.
type mark struct {
	name string
	density.Mark
	on   units.Brix // where it stands on a graduated scale
	here units.Brix // strength of what floats the stem to it in the cup
}

// standard is the standard uncertainty of a value that is as likely anywhere
// within plus or minus limit: JCGM 100:2008 (GUM), 4.3.7.
func standard(limit units.TempDiff) units.TempDiff { return limit / units.TempDiff(math.Sqrt(3)) }

// cupOf checks the temperature in the cup against boiling syrup, or takes the
// usual one. Where nobody said where water boils it is that of the sea.
func (s *setup) cupOf(t *thermometer, f *cli.Flags) error {
	boils := units.Fahrenheit(219)
	if t != nil {
		boils = t.plain
	}
	if s.cupTold = f.Given("cup"); !s.cupTold {
		s.cup = cli.UsualCup(boils, s.metric)
		return nil
	}
	if t == nil {
		return nil
	}
	return (&cli.Sheet{Metric: s.metric}).Cup("cup", f.TrueCup(s.cup, true), boils, s.doubt.Thermometer)
}

// float finds the stop by hydrometer.
func (s *setup) float(f *cli.Flags) (*float, error) {
	h := &float{stem: density.Hydrometer{GraduatedAt: s.stem}, cup: f.TrueCup(s.cup, s.cupTold)}
	var err error
	if h.reads, err = h.stem.Reading(s.target, h.cup); err != nil {
		return nil, cli.For("cup", err)
	}
	// What a doubt of the scale and of the eye is worth in strength is told by a
	// reading at the mark.
	m, err := h.stem.Measure(h.reads, h.cup, s.doubt)
	if err != nil {
		return nil, cli.For("cup", err)
	}
	h.stop = finish.HydrometerStop{Target: s.target, Instrument: h.stem, Cup: h.cup, CupBy: standard(s.doubt.Thermometer),
		ScaleBy: m.Parts.Calibration, ReadingBy: m.Parts.Division}
	if h.parts, err = h.stop.Parts(); err != nil {
		return nil, cli.For("cup", err)
	}
	for _, k := range []struct {
		name string
		at   units.Temperature
	}{{hot, s.hotMark}, {cold, s.coldMark}} {
		flag := k.name + "-mark"
		if !f.Given(flag) {
			continue
		}
		line := mark{name: k.name, Mark: density.Mark{For: s.markFor, At: k.at}}
		if line.on, err = line.On(h.stem); err != nil {
			return nil, cli.ForArg(err, flag, "Mark.For", "mark-for")
		}
		if line.here, err = line.Brix(h.cup); err != nil {
			return nil, cli.For(flag, err)
		}
		h.marks = append(h.marks, line)
	}
	h.off = f.Off("").Hydrometer
	h.reads += h.off // what it shows then
	h.baume, err = density.BaumeFromBrix(h.reads)
	if err != nil {
		return nil, cli.For("cup", err)
	}
	return h, nil
}

// share is one of the parts that make a stop uncertain: as the page gives it, and
// its standard uncertainty.
type share struct {
	what  string
	given cli.Value
	brix  units.Brix
}

func (t *thermometer) shares() []share {
	if t.learned != nil {
		return []share{{"your past stops", cli.TempDiff(k2 * t.learned.by), t.learned.cost}}
	}
	all := []share{
		{"the probe", cli.TempDiff(k2 * t.stop.ProbeBy), t.parts.Probe},
		{"the depth of the probe", cli.Rough(cli.Length(k2 * t.stop.DepthBy)), t.parts.Depth},
		{"the barometer", cli.Rough(cli.Pressure(k2 * t.stop.BarometerBy)), t.parts.Barometer},
	}
	// A share that is taken as sure has no part, but the library solves for one.
	if t.stop.InvertedBy > 0 {
		all = append(all, share{"the inverted sugar", cli.Share(k2*t.stop.InvertedBy, 1), t.parts.Inverted})
	}
	return append(all, share{"the formula", cli.Words(""), t.parts.Formula})
}

func (h *float) shares() []share {
	return []share{
		{"the temperature of the cup", cli.TempDiff(k2 * h.stop.CupBy), h.parts.Cup},
		{"the scale", cli.Brix(k2*h.stop.ScaleBy, 2), h.parts.Scale},
		{"the eye at the stem", cli.Brix(k2*h.stop.ReadingBy, 2), h.parts.Reading},
		{"surface tension", cli.Words(""), h.parts.Float},
		{"expansion near the boil", cli.Words(""), h.parts.Expansion},
	}
}

// largest names the part that counts most.
func largest(shares []share) string {
	most := shares[0]
	for _, s := range shares {
		if s.brix > most.brix {
			most = s
		}
	}
	return most.what
}
