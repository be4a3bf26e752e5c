// Boilday plans one day of boiling: how much syrup a day's sap makes, when the
// last of it is in the pan and when it is syrup, what that burns, at what
// temperature to stop and what the hydrometer must read.
//
//	go run ./examples/boilday
//	go run ./examples/boilday -h
package main

import (
	"cmp"
	"errors"
	"fmt"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/examples/sugarhouse"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "boilday",
		Does: "Plans one day of boiling in one pan: syrup to expect, water to boil off, hours and fuel, the boiling points of today, what the hydrometer must read, and how to finish in a pot when the batch is too small for the pan. It plans the sap that waits by the record of your folder, or what is told behind its name; without either it plans a day of an invented sugarhouse.",
		Calls: []string{
			`go run ./examples/boilday -dir sugar`,
			`go run ./examples/boilday -dir sugar 40 gal 2.1 at 41 F -write`,
			`go run ./examples/boilday -sap "60 US gal" -reading "2.4 Brix" -read-at "41 F"`,
			`go run ./examples/boilday -refractometer plain -reading "1.8 Brix" -read-at "64 F"`,
			`go run ./examples/boilday -water-boils "209.3 F" -pan-area "8 ft2"`,
			`go run ./examples/boilday -sap-file gatherings.csv -metric`,
		},
		Reads: "From the folder sugarhouse.txt, days.csv (what was gathered and boiled), pan.csv (what stands in the pan) and weather.csv (the lows of the nights over it).\n" +
			"-sap-file: one gathering a line, with the columns time (15:04), source, volume_us_gal (or volume_l, volume_imp_gal), reading_brix, read_at_f (or read_at_c: the temperature of the cup, or of drop and prism; a compensated refractometer goes without) and, if known, temp_f or temp_c of the sap. Lines that begin with # are remarks.",
		Caution: "Sap near 212 F and syrup near 219 F scald at once and stick. Never leave a pan over a fire. Local code on fire, smoke and chimneys comes first.",
		Demo:    sugarhouse.Files(), DemoAlone: true,
		Needs: []string{folder.DaysFile, folder.PanFile},
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			f.Words("40 US gal 2.1 at 41 F", s.hear)
			return func(e *cli.Env) error {
				if shown, err := s.alone(e, f); shown || err != nil {
					return err
				}
				p, err := s.work(e, f)
				if err != nil {
					return err
				}
				return p.show(e)
			}
		},
	}
}

// hear takes the sap of the day: how much, and what the hydrometer reads in it.
func (s *setup) hear(said *cli.Spoken) error {
	switch {
	case said.HasShow:
		return errors.New("a temperature belongs to a reading here: write it as 40 gal 2.1 at 41 F")
	case said.Weight != "":
		return fmt.Errorf("%s: sap is told by its volume here: write it as 40 gal 2.1 at 41 F", said.Weight)
	}
	if err := cmp.Or(said.Say("sap", said.Amount), said.SayHeat("read-at", "")); err != nil {
		return err
	}
	const sweetest = 12 // as of a bare number in days.csv
	if r := said.Reading; r.IsRead && r.Bare && !r.Baume && r.Value > sweetest {
		return fmt.Errorf("sap of %g Brix? it is 1 to 4: is a point lost? write %[1]g Brix if it is so", r.Value)
	}
	return said.SayReading("reading", s.sapStem, s.readAt)
}
