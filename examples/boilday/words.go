package main

import (
	"cmp"
	"errors"
	"fmt"

	"example.org/sapreckoner/examples/internal/cli"
)

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
