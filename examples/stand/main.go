// Stand plans the taps of a stand of maples: how many each trunk bears, which
// trees are left alone, and where this year's holes go.
//
//	go run ./examples/stand
//	go run ./examples/stand -map G7 -svg trunk.svg
//	go run ./examples/stand -h
package main

import (
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "stand",
		Does: "Reads the trees of your folder and, if one was kept, the record of their old holes. Tells in walking order where to drill this year, how deep, and which trees are left alone and why; with -full the taps of every trunk by a guideline, what the others say, and what the stand bears in twenty years. With the label of a tree behind its name it tells of that tree alone. Draws a trunk unrolled, and the drill sheet of the whole stand to print. Without a folder it plans an invented stand.",
		Calls: []string{
			`go run ./examples/stand -dir hollow`,
			`go run ./examples/stand -dir hollow G7`,
			`go run ./examples/stand -dir hollow -print sheet.html`,
			`go run ./examples/stand -dir hollow -guideline QC-private-plan-2023 -metric -full`,
			`go run ./examples/stand -map G7 -svg trunk.svg`,
		},
		Reads: "The plan is for the year after the last hole of the record, or for -season. Holes of later years do not count. \ntrees.csv: one trunk a line, with the columns tree (a label), girth_in (girth_cm, girth_ft, girth_m) or dbh_in and so on at breast height, species, vigor and, if known, growth_in (growth_mm): what the radius grows a year; or first_girth_in, an earlier girth, with years_since. Lines of one label that follow each other are the stems of one fork; they are then called P9/1, P9/2. " +
			"A cell of species is a name such as sugar maple; with a question mark behind it, or empty, the species is not sure and the tree is left alone. A cell of vigor is healthy, slow or unhealthy; empty, it was not judged. " +
			"\nholes.csv: one old hole a line, with the columns tree (as in the other file; P9/2 for a stem of a fork), year, bearing_deg or along_in (along_cm), height_in (height_cm) above the ground and, if known, bit_in (bit_mm) and depth_in (depth_cm); empty they are taken as -bit and -depth. Bearing and distance go clockwise, seen from above, from a mark of your own on the trunk; a distance along the girth is what a tape shows now. " +
			"\n-gear-file: one gear a line, with the columns gear (a name), minutes of walking and pouring on a running day, first (what it takes to begin) and yearly (what a season takes), in your own money; and, where it has them, vacuum_inhg at the holes or drop_ft of a falling line, depth_in of the holes, clean_pct (its sap over that of new spouts and lines), pail_us_gal and taps_per_pail. " +
			"\nColumns with other names are yours. Lines that begin with # are remarks. A plan holds at most 50,000 trunks and 200,000 old holes: plan a larger stand in parts.",
		Caution: "Over-tapping does its harm slowly: small, slow and sick trees are left alone. Be sure of the species before you drill. Look up for dead limbs first. Ask the owner of the land; the local law comes first.",
		Demo:    sugarhouse.Files(), Needs: []string{folder.TreesFile, folder.HolesFile},
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			f.Commands(func(words []string) (bool, error) {
				s.tree = strings.Join(words, " ")
				return true, nil
			})
			return func(e *cli.Env) error { return s.run(e, f) }
		},
	}
}
