// Potwatch tells the moment the boiling liquid is syrup: where the thermometer
// and the hydrometer stand then and which of them to trust, how strong the pot is
// now and how long it still takes, the weight to stop at, what your thermometer
// has shown at past stops, and the points of cream, candy and sugar.
//
//	go run ./examples/potwatch
//	go run ./examples/potwatch -h
package main

import (
	"errors"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/sugarhouse"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "potwatch",
		Does: "Tells the moment the boiling liquid is syrup: where thermometer and hydrometer must stand today and which of the two to trust, how strong the pot is now by every instrument you have, how long it still takes, at what weight to stop, what your own thermometer has shown at past stops, and where cream, candy and sugar are done. Give what you have; the rest is left out. Without any it watches the pot of an invented sugarhouse.",
		Calls: []string{
			`go run ./examples/potwatch -dir sugar 59.5 at 204 F, water 209.6 F`,
			`go run ./examples/potwatch -water-boils "209.6 F" -cup "205 F" -reading "54 Brix"`,
			`go run ./examples/potwatch -water-boils "209.6 F" -readings pot.csv -stops stops.csv`,
			`go run ./examples/potwatch -tare "6.2 lb" -gross "34.6 lb" -pot-brix "38.5 Brix"`,
			`go run ./examples/potwatch -pressure "28.6 inHg" -refractometer "64.8 Brix" -prism "80 F"`,
			`go run ./examples/potwatch -elevation "1150 ft" -make cream -metric`,
			`go run ./examples/potwatch -check-boiling "211 F" -check-ice "33 F" -pressure "28.7 inHg" -elevation "1150 ft"`,
			`go run ./examples/potwatch -check-brix "66.9 Brix" -check-reads "67.3 Brix" -check-at "70 F"`,
		},
		Reads: "From the folder sugarhouse.txt and stops.csv.\n" +
			"-readings: what the thermometer in the pot showed, one reading a line in the order of time, with the columns time (19:40 or 19:40:30) or after_min (minutes since any start) and shown_f (or shown_c). Nothing may be poured in meanwhile.\n" +
			"-stops: past boils, one a line, with the columns day (2026-03-09), water_boils_f (or water_boils_c: what the same thermometer showed in boiling water that day) or pressure_inhg (or pressure_hpa, pressure_kpa: station pressure at the pan), stop_f (or stop_c: what it showed when the pot came off) and cup_brix: the true strength of the cooled syrup.\n" +
			"Lines that begin with # are remarks. One of the files may be -, standard input.",
		Caution: "Syrup near 219 F, and candy up to 260 F, burns through the skin at once and sticks. Never leave a pot over a fire, and never lift or weigh a full one alone.",
		Demo:    sugarhouse.Files(), DemoAlone: true,
		Needs: []string{}, // at the pot nobody mends a file
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			f.Words("59.5 at 204 F, water 209.6 F", func(said *cli.Spoken) error { return s.hear(said, f) })
			return func(e *cli.Env) error {
				if asked(f) {
					return s.showChecks(e, f)
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

// hear takes the reading of the moment: the hydrometer's in the cup, or what the
// thermometer in the pot shows, or both.
func (s *setup) hear(said *cli.Spoken, f *cli.Flags) error {
	if said.Amount != "" || said.Weight != "" {
		return errors.New("no amount is asked here: write a reading as 59.5 at 204 F")
	}
	if err := said.SayHeat("cup", "shows"); err != nil {
		return err
	}
	if !said.Reading.IsRead {
		return nil
	}
	if !f.Given("cup") {
		return errors.New("say how hot the cup is, since a hot reading is far lower than a cold one: as in 59.5 at 204 F")
	}
	return said.SayReading("reading", s.stem, s.cup)
}
