package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping/season"
)

// plan is the days ahead worked out.
type plan struct {
	given *setup
	flags *cli.Flags

	rule season.Rule
	line bool // sap runs into the tank

	record
	course
	sap
	evenings
	stores
}

// work makes the plan.
func (s *setup) work(e *cli.Env, f *cli.Flags) (*plan, error) {
	if err := s.check(f); err != nil {
		return nil, err
	}
	p := &plan{given: s, flags: f, line: s.line(f)}
	for _, step := range []func() error{
		func() error { return p.readSeason(e, f) },
		p.readRecord,
		func() error { return p.readHistory(e) },
		p.lookForEnd,
		func() error { return p.expectSap(f) },
		func() error { return p.walk(f) },
		func() error { return p.fire(f) },
		p.expectSyrup,
		p.layIn,
	} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	return p, nil
}
