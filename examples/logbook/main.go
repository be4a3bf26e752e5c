// Logbook reads a season that is kept in plain CSV files and draws its balance:
// the sugar that came in with the sap, the sugar that went out as syrup, what
// was lost between them, what the fire made of its fuel, and what stands packed.
//
//	go run ./examples/logbook
//	go run ./examples/logbook -dir season -taps 64 -svg season.svg
//	go run ./examples/logbook -h
package main

import "example.org/sapreckoner/examples/internal/cli"

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "logbook",
		Does: "Reads a season kept in plain CSV files of one folder and draws its balance: sugar in and out and what was lost, by day and by source; what the fire made of its fuel; what was drawn, packed and is left. Without -dir it reads an invented season.",
		Calls: []string{
			`go run ./examples/logbook -dir season -taps 64`,
			`go run ./examples/logbook -dir season -held-after "3 US gal"`,
			`go run ./examples/logbook -dir season -svg season.svg -metric`,
			`go run ./examples/logbook -dir season -svg - > season.svg`,
		},
		Reads:   files,
		Caution: "This page counts sugar and tells nothing of safety. Moldy syrup may hold toxins that boiling leaves: it is not for eating, whatever the balance says. Records by lot are asked for where syrup is sold: local rules come first.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			return func(e *cli.Env) error { return s.run(e, f) }
		},
	}
}

// files explains the files.
const files = `Only gatherings.csv must be there. The first line of a file names its columns and their units; cells are plain numbers; columns with other names are yours; lines that begin with # are remarks. Times are written 2031-03-08 16:30, days 2031-03-08.
- gatherings.csv: time, source, volume_us_gal (volume_l, volume_imp_gal), reading_brix, read_at_f (read_at_c: the sap in the cup) and, if the volume was measured at another temperature, temp_f.
- boils.csv: lit (a time), fired_h (fired_min), sap_us_gal with reading_brix, read_at_f and temp_f as above, end_brix if the boil did not end at -target, kind of fuel (wood, if there is no such column; a species; oil, propane, pellets), and what burned: burned_cord, burned_m3, burned_us_gal or burned_l by volume, weighed_lb or weighed_kg by weight; moisture_pct of wood if it was not -moisture. The water boiled off follows from these.
- draws.csv: time, lot, volume_us_gal as drawn or weight_lb, reading_brix, cup_f (the syrup in the cup, and in the measure too if there is no temp_f).
- packing.csv: day, lot, size_us_fl_oz (size_us_qt, size_us_gal, size_ml, size_l) on the label, count.
- fuel.csv: day, kind, and what was laid in: laid_cord, laid_m3, laid_us_gal or laid_l by volume, weighed_lb or weighed_kg by weight. No more is asked for, since what burned stands in boils.csv.
A row that is wrong is told on standard error with file, line and column and left out of the count; the page says how many, and the exit status is 1. A file that cannot be read to its end, or lacks a column, ends the program with status 2 and no page.
A season is a year: a day more than half a year away from the first gathering of the file is refused as a slip of the pen. Files may be long: a million gatherings take a few seconds and no more memory than ten.`
