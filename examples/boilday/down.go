package main

import (
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// heatingTime is how long the first filling takes to boil over a fire that
// boils off the given rate afterwards.
func heatingTime(l sugar.Lot, boils units.Temperature, rate units.MassRate) (time.Duration, error) {
	latent, err := boil.LatentHeat(boils)
	if err != nil {
		return 0, err
	}
	specific, err := sugar.SpecificHeat(l.Brix(), l.Temperature())
	if err != nil {
		return 0, err
	}
	steam := latent.Energy(l.Mass())                              // to boil all of it off
	warm := specific.Energy(l.Mass(), boils.Sub(l.Temperature())) // to bring it to the boil
	return time.Duration(float64(rate.Time(l.Mass())) * float64(warm/steam)), nil
}

// strongest is as far as a pan is followed: beyond it densities end in warm
// weather.
const strongest units.Brix = 76

// boilDownTo returns the boiling liquid that is left of a lot when it fills no
// more than the given volume. A lot that fits already comes back hot.
func boilDownTo(l sugar.Lot, fill units.Volume, p units.Pressure) (sugar.Lot, error) {
	low, high := l.Brix(), strongest
	hot := func(b units.Brix) (sugar.Lot, error) {
		t, err := boil.SyrupPoint(b, p)
		if err != nil {
			return sugar.Lot{}, err
		}
		return sugar.NewLotByMass(b.Of(l.Sugar()), b, t)
	}
	at, err := hot(low)
	if err != nil || at.Volume() <= fill {
		return at, err
	}
	// The volume falls as the strength rises; 60 halvings reach the last bit.
	for range 60 {
		middle := (low + high) / 2
		if at, err = hot(middle); err != nil {
			return at, err
		}
		if at.Volume() > fill {
			low = middle
		} else {
			high = middle
		}
	}
	return at, nil
}
