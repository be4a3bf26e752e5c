// Sapweek tells where the sap season stands and what the days ahead bring: which
// of them run, how much sap comes, which pails overflow, what the evenings at the
// pan can boil, and what to lay in.
//
//	go run ./examples/sapweek
//	go run ./examples/sapweek -h
package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/tapping/season"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "sapweek",
		Does: "Reads the lows and highs of the days, past ones and a forecast, and tells whether tomorrow runs, how much sap is likely, by when to walk the pails and to light the fire, and whether to tap or to pull. With -full each day ahead, where the season stands, when past springs say to tap, what the evenings at the pan leave waiting, and what to lay in. Without a folder it looks ahead in an invented one.",
		Calls: []string{
			`go run ./examples/sapweek -dir hollow`,
			`go run ./examples/sapweek -dir hollow -today 2031-03-12 -full`,
			`go run ./examples/sapweek -dir hollow -waiting "40 US gal" -waiting-age 24h`,
			`go run ./examples/sapweek -weather days.csv -taps 25 -pail "2 US gal" -evening 4h -pan-area "6 ft2"`,
		},
		Reads: "weather.csv: one day a line, with the columns date (2031-03-12), tmin_f and tmax_f (or tmin_c and tmax_c); or one hour a line, with the columns time (2031-03-12T15:00, in standard time) and temp_f (or temp_c), 20 readings or more of a day, which else counts as missing. Days ascend; an empty cell is a figure that is missing. It holds this year from January 1 on (in the south from July 1), with the forecast as its last lines: degree-days and producing weeks are counted from there. Earlier years in it are the past springs. " +
			"\ndays.csv: what was gathered and boiled this season up to today tells what waits, how sweet the sap is now, and since when the holes run. " +
			"\nseasons.csv: one season of your own a line, with the columns year, taps and syrup_us_gal (or syrup_l, syrup_imp_gal). " +
			"\nColumns with other names are yours. Lines that begin with # are remarks. A file that a flag names may be -, standard input.",
		Caution: "A forecast is no promise: look at the sky, the pails and the sap. Drill no tree that is small, slow or sick, look up for dead limbs first, and ask the owner of the land. Never leave a pan over a fire. Local rules come first.",
		Demo:    sugarhouse.Files(), Needs: []string{folder.WeatherFile, folder.DaysFile, folder.SeasonsFile},
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			return func(e *cli.Env) error {
				p, err := s.work(e, f)
				if err != nil {
					return err
				}
				return p.sheet().Show(e)
			}
		},
	}
}

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
	weather := func() error { return p.readSeason(e) }
	history := func() error { return p.readHistory(e) }
	for _, step := range []func() error{weather, p.readRecord, history, p.lookForEnd, p.expectSap, p.walk, p.fire, p.expectSyrup, p.layIn} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	return p, nil
}
