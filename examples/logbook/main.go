// Logbook draws the balance of a season that is kept in the folder of a sugarhouse:
// the sugar that was gathered, boiled, drawn and bottled, what was lost on the way,
// what the fire made of its fuel, and what is in stock.
//
//	go run ./examples/logbook
//	go run ./examples/logbook -dir sugarhouse -svg season.svg
//	go run ./examples/logbook -h
package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "logbook",
		Does: "Draws the balance of a season from the days, batches and bottles of a folder: sugar gathered, boiled, drawn, bottled and in stock, what was lost at each step and how much of that the instruments leave open; by day and by tank; what the fire made of its fuel. Or follows one batch into its jars, to get them back. Without a folder it reads the invented one.",
		Calls: []string{
			`go run ./examples/logbook -dir sugarhouse`,
			`go run ./examples/logbook -dir sugarhouse -season 2033 -full`,
			`go run ./examples/logbook -dir sugarhouse -trace 34-2`,
			`go run ./examples/logbook -dir sugarhouse -cost -wage 15/h -price "60/US gal"`,
			`go run ./examples/logbook -dir sugarhouse -svg season.svg -metric`,
			`go run ./examples/logbook -dir sugarhouse -svg - > season.svg`,
		},
		Reads:   files,
		Demo:    sugarhouse.Files(),
		Needs:   []string{folder.DaysFile, folder.BatchesFile, folder.BottledFile, folder.BlendsFile, folder.PanFile, folder.CostsFile, folder.PeopleFile},
		Caution: "This page counts sugar and tells nothing of safety. Moldy syrup may hold toxins that boiling leaves: it is not for eating, whatever the balance says. Records by batch are asked for where syrup is sold: local rules come first.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			return func(e *cli.Env) error { return s.run(e, f) }
		},
	}
}

// files tells what is read of the folder.
const files = `- days.csv: sap by tank, its sugar and how warm it was read, what was boiled from when to when on how much wood, what was thrown out, and syrup, which counts where the season has no batches. Sap that nobody read counts at the strength of the rest.
- batches.csv: each batch of syrup by volume, by weight without the can, or as a drum by gross_lb and tare_lb, full and empty on a scale; its reading and the cup.
- bottled.csv: what was filled of each.
- blends.csv: what was poured from one batch into another.
- costs.csv, with -cost: what was paid, and over how many years it is spread; what is bought from July on is for the next season. people.csv: hours worked, of the last season.
- pan.csv: what stands in the pan at the end counts as held.
A season is a year. What was boiled on a day has the strength of all sap that then stood.`
