// Folder begins the folder of a sugarhouse, adds a day to it, and checks one: what stands in it that
// cannot be read, and what the other programs learn from it.
//
//	go run ./examples/folder new sugar -set "gallons: US"
//	go run ./examples/folder check -dir sugar
//	go run ./examples/folder day -dir sugar 3/10 40 gal 2.1 lit 2pm out 8pm wood 6
//	go run ./examples/folder -h
package main

import (
	"errors"
	"fmt"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/internal/base/clip"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "folder",
		Does: "Keeps the folder of a sugarhouse: new begins one, with all settings and empty files; check reads all of one and tells every mistake, every file that is not read, and what is learned from the record; day shows a day that was typed as one short line, and adds it with -write. Without a folder it checks the invented one.",
		Calls: []string{
			`go run ./examples/folder new sugar -set "gallons: US" -set "elevation: 1150 ft"`,
			`go run ./examples/folder check -dir sugar`,
			`go run ./examples/folder day -dir sugar ` + folder.DayLine + ` -write`,
			`go run ./examples/folder check -dir sugar -season 2034 -full`,
		},
		Reads: "All files of the folder: sugarhouse.txt with the settings, and those that a person fills: days.csv, batches.csv, bottled.csv, trees.csv, holes.csv, stops.csv; for who wants them weather.csv, jars.csv, people.csv, costs.csv, bought.csv, paid.csv, blends.csv, seasons.csv, pan.csv. new makes the first seven and leaves a file that is there as it is.",
		Demo:  sugarhouse.Files(),
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var metric bool
			run := func(e *cli.Env) error { return check(e, f, metric) }
			f.Commands(func(words []string) (reads bool, err error) {
				switch {
				case len(words) == 0, len(words) == 1 && words[0] == "check":
					return true, nil
				case words[0] == "day":
					f.Needs(folder.DaysFile)
					run = func(e *cli.Env) error { return day(e, f, metric, words[1:]) }
					return true, nil
				case words[0] == "check":
					return true, fmt.Errorf("%q: name the folder with -dir", clip.Text(strings.Join(words[1:], " ")))
				case words[0] == "new" && len(words) == 2:
					run = func(e *cli.Env) error { return begin(e, f, words[1]) }
					return false, nil
				case words[0] == "new":
					return false, errors.New("name one folder behind new, in quotes if it has a space")
				}
				return false, fmt.Errorf("%q is nothing that is done here: say new, check or day", clip.Text(words[0]))
			})
			f.Page(&metric)
			f.Adds("the day that was typed")
			return func(e *cli.Env) error { return run(e) }
		},
	}
}
