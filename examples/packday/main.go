// Packday packs the syrup of a season: cans of different strength and color are
// poured together, brought to the mark, filtered, put into containers and
// shared.
//
//	go run ./examples/packday
//	go run ./examples/packday -h
package main

import (
	"cmp"
	"errors"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/sugar"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "packday",
		Does: "Plans a day of packing syrup: what the cans make together, how much water to boil off or what to thin with, how it stands to the rule on density, filters, color, how many containers to fill and how far, what is left over, who gets which jars, and how it keeps. Without a folder it packs invented batches.",
		Calls: []string{
			`go run ./examples/packday -dir sugarhouse`,
			`go run ./examples/packday -dir sugarhouse -batch "34-4 + 34-5"`,
			`go run ./examples/packday -dir sugarhouse -reach "Amber, 66.5 to 67.5 Brix"`,
			`go run ./examples/packday -dir sugarhouse -weigh weighed.csv -place Canada`,
			`go run ./examples/packday -dir sugarhouse -write`,
			`go run ./examples/packday -dir sugarhouse -write -batch 34-8 3 gal 67.8 at 66 F`,
			`go run ./examples/packday -weight "33 lb" -reading "69.5 Brix" -thin-with "64.5 Brix" -thin-temp "65 F"`,
		},
		Demo:  sugarhouse.Files(),
		Needs: []string{folder.BatchesFile, folder.BottledFile, folder.BlendsFile, folder.JarsFile, folder.PeopleFile},
		Reads: "- batches.csv: those of the season that are not bottled are poured together, and a batch marked yes under mold enters no blend.\n" +
			"- jars.csv: one kind a line, with the columns container, label_ml (or label_qt) and, if known, on_hand (empty: as many as are needed), at_least and at_most (what is ordered), brim_ml, empty_g (or empty_oz) and material: glass, steel or plastic.\n" +
			"- people.csv: who shares the jars, with the column name and worked_h, taps, sugar_lb (or sugar_kg), wood_cord or parts; of several columns each counts an equal part. taken_qt is what one took already, and counts in the share.",
		Caution: "Syrup is filtered and packed near 185 F: it scalds at once and sticks. Keep children away, and never lift a full pot alone.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			f.Words("3 gal 67.8 at 66 F", func(said *cli.Spoken) error { return s.hear(said, f) })
			return func(e *cli.Env) error {
				if s.reach != "" || s.weigh != "" {
					return s.instead(e, f)
				}
				d, err := s.work(e, f)
				if err != nil {
					return err
				}
				if d.batches && d.do == sugar.ReadAgain && f.Writes() {
					return cli.For("write", errors.New("it is too close to a limit to tell: read it again, mend the reading in "+folder.BatchesFile+", and then fill"))
				}
				sheet := d.sheet()
				if err := sheet.Add(e, d.record()...); err != nil {
					return err
				}
				return sheet.Show(e)
			}
		},
	}
}

// instead answers what is asked instead of a day.
func (s *setup) instead(e *cli.Env, f *cli.Flags) error {
	if err := f.Alone("reach", "weigh"); err != nil {
		return err
	}
	if f.Writes() {
		return cli.For("write", errors.New("nothing is packed by that page: leave -reach and -weigh out"))
	}
	var sheet *cli.Sheet
	var err error
	if s.reach != "" {
		sheet, err = s.reachSheet(f)
	} else {
		sheet, err = s.weighSheet(e, f)
	}
	if err != nil {
		return err
	}
	return sheet.Show(e)
}

// hear takes one lot: how much, and what the hydrometer reads in it. It is as warm as
// its cup, unless a flag says else.
func (s *setup) hear(said *cli.Spoken, f *cli.Flags) error {
	const as = ": write it as 3 gal 67.8 at 66 F"
	switch {
	case said.HasShow:
		return errors.New("a temperature belongs to a reading here" + as)
	case said.Amount == "" && said.Weight == "" && !f.Given("weight"):
		return errors.New("how much syrup?" + as + ", or by its weight, as 12 lb")
	case said.Reading.IsRead && !said.HasAt && !f.Given("read-at"):
		return errors.New("how warm is the cup? A hot reading is far lower than a cold one" + as)
	}
	if err := cmp.Or(said.Say("volume", said.Amount), said.Say("weight", said.Weight), said.SayHeat("read-at", "")); err != nil {
		return err
	}
	if said.HasAt && !f.Given("temp") {
		if err := said.SayValue("temp", said.At); err != nil {
			return err
		}
	}
	return said.SayReading("reading", s.stem, s.readAt)
}
