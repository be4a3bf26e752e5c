package main

import (
	"errors"
	"fmt"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// instrument is what one instrument says now.
type instrument struct {
	name  string
	shows cli.Value
	density.Measurement
}

// apart is two instruments that disagree.
type apart struct {
	a, b string
	density.DisagreeError
}

// pair is two instruments that agree.
type pair struct {
	a, b string
	density.Combination
}

// byStem reads the hydrometer in the cup, on its scale or at one of its marks.
func (h *float) byStem(s *setup, f *cli.Flags) (*instrument, error) {
	reading, flag, shows := s.reading-h.off, "reading", cli.Brix(s.reading, 1)
	switch {
	case f.Given("floats-at"):
		flag, shows = "floats-at", cli.Words("the "+s.floatsAt+" mark")
		for _, m := range h.marks {
			if m.name == s.floatsAt {
				reading = m.on
			}
		}
	case !f.Given("reading"):
		return nil, nil
	}
	m, err := h.stem.Measure(reading, h.cup, s.doubt)
	if err != nil {
		return nil, cli.For(flag, err)
	}
	return &instrument{"hydrometer", shows, m}, nil
}

// byPrism reads the refractometer.
func byPrism(s *setup, f *cli.Flags) (*instrument, error) {
	if !f.Given("refractometer") {
		return nil, nil
	}
	m, err := density.Refractometer{Compensated: s.compensated}.Measure(s.refractometer, s.at(), s.prismDoubt)
	if err != nil {
		return nil, cli.ForArg(err, "refractometer", "at", "prism")
	}
	return &instrument{"refractometer", cli.Brix(s.refractometer, 1), m}, nil
}

// at is the temperature of the prism; 20 C, where every scale is true, if the
// instrument corrects itself.
func (s *setup) at() units.Temperature {
	if s.compensated {
		return units.Celsius(20)
	}
	return s.prism
}

// instruments asks all that were given.
func (p *evening) instruments(f *cli.Flags) error {
	s := p.given
	var all []instrument
	stem, err := p.float.byStem(s, f)
	if err != nil {
		return err
	}
	prism, err := byPrism(s, f)
	if err != nil {
		return err
	}
	for _, i := range []*instrument{stem, prism} {
		if i != nil {
			all = append(all, *i)
		}
	}
	if err := p.byThermometer(f); err != nil {
		return err
	}
	if p.heated != nil {
		all = append(all, *p.heated)
	}
	// No two of these share an error.
	for i, a := range all {
		for _, b := range all[i+1:] {
			c, err := density.Combine(a.Measurement, b.Measurement)
			var disagree *density.DisagreeError
			if errors.As(err, &disagree) {
				p.apart = append(p.apart, apart{a.name, b.name, *disagree})
				continue
			}
			if err != nil {
				return err
			}
			p.pairs = append(p.pairs, pair{a.name, b.name, c})
		}
	}
	if p.pot != nil && p.pot.now > 0 {
		all = append(all, instrument{"scale", cli.Mass(s.grossNow), density.Measurement{Brix: p.pot.now, Uncertainty: density.Coverage * p.pot.nowBy}})
	}
	p.all = all
	return nil
}

// byThermometer takes the strength from what the thermometer shows, or from the
// line through its readings.
func (p *evening) byThermometer(f *cli.Flags) error {
	s, t, w := p.given, p.thermometer, p.watch
	var (
		shows   cli.Value
		at      units.Temperature
		scatter units.Brix
		err     error
	)
	switch {
	case w != nil && w.Used > 0:
		at, p.heat, scatter = w.readings[w.Last].Shown, w.Now, w.NowBy
		shows = cli.Words(fmt.Sprintf("line of %d", w.Used))
	case f.Given("shows"):
		at, shows = s.shows, cli.Temperature(s.shows)
		p.cool = s.shows.Compare(t.boilingShows()) < 0
		if p.heat, err = t.strength(t.surface(s.shows)); err != nil {
			return cli.For("shows", err)
		}
	default:
		return nil
	}
	var ok bool
	if p.heated, ok = t.byHeat(shows, at, p.heat, scatter); !ok {
		p.tooThick = p.heat > s.target
		p.tooThin = !p.tooThick && !p.cool
	}
	return nil
}

// pot is a pot on a scale.
type pot struct {
	read       finish.PotReading
	stop       finish.PotTarget
	now, nowBy units.Brix // 0 if it was not weighed again

	batch finish.Batch // of what it loses; zero if that was not told
	fire  fire
}

// pot finds the weight at which to stop.
func (s *setup) pot(f *cli.Flags, t *thermometer) (*pot, error) {
	if !f.Given("gross") {
		return nil, nil
	}
	k := &pot{read: finish.PotReading{Gross: s.gross, Tare: s.tare, Brix: s.potBrix, ScaleBy: s.scaleBy, BrixBy: s.potBrixBy}}
	var err error
	if k.stop, err = k.read.Target(s.target); err != nil {
		return nil, cli.ForArg(err, "gross", "PotReading.Brix", "pot-brix", "to", "pot-brix")
	}
	mass, brix := s.gross-s.tare, s.potBrix
	if f.Given("gross-now") {
		if k.now, err = k.read.At(s.grossNow); err != nil {
			return nil, cli.For("gross-now", err)
		}
		then, err := k.read.Target(k.now)
		if err != nil {
			return nil, cli.For("gross-now", err)
		}
		k.nowBy = then.BrixBy
		mass, brix = s.grossNow-s.tare, k.now
	}
	if f.Given("boils-off") {
		k.batch = finish.Batch{Mass: mass, Brix: brix, Evaporation: s.boilsOff}
		k.fire, err = watchFire(k.batch, "boils-off", s, t)
	}
	return k, err
}
