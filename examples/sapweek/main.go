// Sapweek tells where the sap season stands and what the days ahead bring: which
// of them run, how much sap comes, which pails overflow, what the evenings at the
// pan can boil, and what to lay in.
//
//	go run ./examples/sapweek
//	go run ./examples/sapweek -h
package main

import "example.org/sapreckoner/examples/internal/cli"

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "sapweek",
		Does: "Reads the lows and highs of the days, past ones and a forecast, and tells which days run and where the season stands, when to tap, how much sap and sugar to expect, which pails overflow before the next round, what the evenings at the pan leave waiting, and what to lay in for the season. Without flags it looks ahead in an invented grove.",
		Calls: []string{
			`go run ./examples/sapweek -weather days.csv -today 2031-03-12 -taps 60`,
			`go run ./examples/sapweek -weather days.csv -history years.csv -past seasons.csv`,
			`go run ./examples/sapweek -taps 25 -pail "2 US gal" -round 48h -evening 4h -pan-area "6 ft2"`,
			`go run ./examples/sapweek -taps 200 -drop "14 ft" -storage "300 US gal" -metric`,
		},
		Reads: "-weather and -history: one day a line, with the columns date (2031-03-12), tmin_f and tmax_f (or tmin_c and tmax_c); or one hour a line, with the columns time (2031-03-12T15:00, in standard time) and temp_f (or temp_c), 20 readings or more of a day, which else counts as missing. Days ascend; an empty cell is a figure that is missing. -weather holds this year from January 1 on (in the south from July 1), with the forecast as its last lines: degree-days and producing weeks are counted from there. -history holds whole springs of a station near by. " +
			"\n-past: one season of your own a line, with the columns year, taps and syrup_us_gal (or syrup_l, syrup_imp_gal). " +
			"\nColumns with other names are yours. Lines that begin with # are remarks. One of the files may be -, standard input.",
		Caution: "A forecast is no promise: look at the sky, the pails and the sap. Drill no tree that is small, slow or sick, look up for dead limbs first, and ask the owner of the land. Never leave a pan over a fire. Local rules come first.",
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
