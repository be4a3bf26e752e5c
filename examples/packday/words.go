package main

import (
	"cmp"
	"errors"

	"example.org/sapreckoner/examples/internal/cli"
)

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
		if err := said.SayTemperature("temp", said.At); err != nil {
			return err
		}
	}
	return said.SayReading("reading", s.stem, s.readAt)
}
