package main

import "example.org/sapreckoner/internal/cli"

func (s *setup) declareFuel(f *cli.Flags) {}
func (p page) fuelPart(part *cli.Part)    {}
