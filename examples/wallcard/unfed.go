package main

import (
	"fmt"
	"time"

	"example.org/sapreckoner/boil/pan"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// Sap as it is fed, and the strength of what stands in the pan when it stops: how
// strong either is hardly counts.
var (
	fed   = pan.Sap{Brix: 2, Temperature: units.Fahrenheit(40)}
	sweet = units.Brix(15)
)

// unfed tells how long a pan of any size lasts when the sap stops: an inch of it, or
// two centimeters, at the rate of a flat pan and of a flue pan.
func (c *card) unfed(_ *flags, s system, p place) error {
	drop, rates, unit := units.Inch, []float64{1, 2}, units.USGallonPerSquareFootHour
	what, per := "an inch", "US\u00a0gal/ft²/h"
	if s.metric {
		drop, rates, unit = 2*units.Centimeter, []float64{40, 80}, units.Flux(units.Liter)/units.Flux(time.Hour.Seconds())
		what, per = "2\u00a0cm", "L/m²/h"
	}
	water, err := density.Water(labelTemperature)
	if err != nil {
		return err
	}
	var minutes [2]int
	for i, rate := range rates {
		rig := pan.Rig{
			Compartments: []pan.Compartment{{Area: units.SquareMeter, Depth: 2 * drop, SafeDepth: drop}},
			Draw:         pan.DrawOff{At: 66.9},
		}
		boils := water.MassRate((units.Flux(rate) * unit).Through(units.SquareMeter))
		if rig.Heat, err = rig.HeatFor(boils, fed, p.station); err != nil {
			return err
		}
		held, err := rig.Fill(sweet, units.Celsius(100), p.station)
		if err != nil {
			return err
		}
		stopped, err := rig.FeedStopped(held, p.station)
		if err != nil {
			return err
		}
		minutes[i] = int(stopped.After.Minutes())
	}
	c.Unfed = fmt.Sprintf("Unfed it loses %s in %d\u00a0min at %g\u00a0%s, in %d at %g", what, minutes[0], rates[0], per, minutes[1], rates[1])
	return nil
}
