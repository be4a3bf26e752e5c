package main

import (
	"errors"

	"example.org/sapreckoner/examples/internal/cli"
)

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
