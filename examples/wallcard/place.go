package main

import (
	"errors"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/cli"
	"example.org/sapreckoner/units"
)

// Station pressures that the card covers with its band, in kilopascals: from
// the highest farm to the lowest valley, in any weather.
const (
	minStation = 50.0
	maxStation = 110.0
)

// A place is the pressure at the pan and how it is known.
type place struct {
	station units.Pressure
	today   bool   // measured today, not average weather
	flag    string // the flag that says so
	known   string // the same in words
}

func newPlace(in *flags, s system) (place, error) {
	var p place
	var err error
	switch {
	case in.byWater:
		p = place{today: true, flag: "water-boils", known: "Water measured to boil at " + s.temperature(in.water)}
		p.station, err = boil.PressureFromWater(in.water)
	case in.byMeter:
		p = place{today: true, flag: "pressure", known: "Barometer in the sugarhouse"}
		p.station = in.pressure
	case in.byAltimeter:
		p = place{today: true, flag: "altimeter", known: "Altimeter setting " + s.pressure(in.altimeter) + " at " + s.length(in.elevation)}
		p.station, err = boil.StationPressure(in.altimeter, in.elevation)
	default:
		p = place{flag: "elevation", known: "Elevation " + s.length(in.elevation) + ", average weather"}
		p.station, err = boil.PressureAt(in.elevation)
	}
	if err != nil {
		var re *units.RangeError
		if errors.As(err, &re) && re.Arg == "elevation" {
			p.flag = "elevation"
		}
		return p, cli.For(p.flag, err)
	}
	if kPa := p.station.Kilopascals(); !(kPa >= minStation && kPa <= maxStation) {
		return p, cli.For(p.flag, &units.RangeError{Arg: "station pressure", Value: kPa, Low: minStation, High: maxStation, Unit: "kPa",
			Hint: "no weather brings that to a sugarhouse: check the unit"})
	}
	return p, nil
}
