package main

import (
	"slices"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// evening is all that the page tells; nil is what was not asked.
type evening struct {
	given *setup
	flags *cli.Flags
	demo  bool
	kept  string // flags that keep their default and move the answer

	thermometer *thermometer
	float       *float
	watch       *watch
	pot         *pot
	own         *own
	aside       string // why the past stops of the folder are not counted
	product     *product

	all    []instrument
	pairs  []pair
	apart  []apart
	most   units.Brix  // that the rule of most places allows
	heat   units.Brix  // strength by the thermometer; 0 if it was not asked
	heated *instrument // the same, with how uncertain it is
	// For a thermometer to tell how uncertain it is.
	tooThin, tooThick bool
	cool              bool // it shows less than in boiling water
}

// work finds everything that was asked.
func (s *setup) work(e *cli.Env, f *cli.Flags) (*evening, error) {
	p := &evening{given: s, flags: f, demo: !f.Other()}
	if p.demo {
		if err := f.Invent(demo...); err != nil {
			return nil, err
		}
	}
	if err := s.check(f); err != nil {
		return nil, err
	}
	rule, err := sugar.UnitedStates.Standard()
	if err != nil {
		return nil, err
	}
	p.most = rule.Max
	p.kept = f.Kept("target", "hydrometer")
	if placed(f) {
		if p.thermometer, err = s.thermometer(f); err != nil {
			return nil, err
		}
	}
	if err := s.cupOf(p.thermometer, f); err != nil {
		return nil, err
	}
	if p.float, err = s.float(f); err != nil {
		return nil, err
	}
	if s.stops != "" {
		if p.own, err = p.stops(e); err != nil && f.Source("stops").File == "" {
			return nil, err
		} else if err != nil { // at the pot nobody mends a file
			p.own, p.aside = nil, cli.Line(err)
		}
	}
	if s.readings != "" {
		if p.watch, err = p.readings(e); err != nil {
			return nil, err
		}
	}
	if p.pot, err = s.pot(f, p.thermometer); err != nil {
		return nil, err
	}
	if err := p.instruments(f); err != nil {
		return nil, err
	}
	if s.making != "" {
		p.product, err = s.product(p.thermometer)
	}
	return p, err
}

// has tells whether an instrument says how strong it is now.
func (p *evening) has(name string) bool {
	return slices.ContainsFunc(p.all, func(i instrument) bool { return i.name == name })
}

// missing lists what the page leaves out, with the flag that gives it.
func (p *evening) missing() (lines []string) {
	for _, m := range []struct {
		out  bool
		line string
	}{
		{p.thermometer == nil, "where the thermometer stops today: -water-boils, or -pressure, -altimeter, -elevation"},
		{p.thermometer != nil && p.thermometer.learned == nil && !(p.thermometer.cost <= 0), "what the depth over the probe does: -over"},
		{len(p.float.marks) == 0, "a stem with two marks: -hot-mark, -cold-mark"},
		{!p.has("hydrometer"), "the strength now by hydrometer: -reading, or -floats-at"},
		{!p.has("refractometer"), "the strength now by refractometer: -refractometer"},
		{p.heat <= 0 && p.watch == nil, "the strength now by thermometer: -shows, or -readings"},
		{p.watch == nil, "how fast it climbs and how long is left: -readings"},
		{p.pot == nil, "the weight to stop at: -tare, -gross, -pot-brix"},
		{p.pot != nil && p.pot.now == 0, "the strength now by the scale: -gross-now"},
		{p.pot != nil && p.pot.batch.Mass == 0, "the time left by the scale: -boils-off"},
		{p.given.coals == 0 && (p.watch != nil || p.pot != nil && p.pot.batch.Mass > 0), "when to stop firing: -coals"},
		{p.own == nil, "what your thermometer has shown at syrup: -stops"},
		{p.product == nil, "cream, candy or sugar: -make"},
	} {
		if m.out {
			lines = append(lines, m.line)
		}
	}
	return lines
}
