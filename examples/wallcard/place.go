package main

import (
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

// A place is the pressure at the pan and how it is known.
type place struct {
	station units.Pressure
	today   bool   // measured today, not average weather
	flag    string // the flag that says so
	known   string // the same in words
	told    []string
}

func newPlace(in *flags, s system) (place, error) {
	station, flag, err := in.place.Pressure()
	if err != nil {
		return place{}, err
	}
	p := place{station: station, today: true, flag: flag}
	if in.held {
		// Paper has no flags: without an elevation there is nothing to hold against.
		p.told = in.place.Told(&cli.Sheet{Metric: in.metric})
	}
	switch flag {
	case cli.ByWaterBoils:
		p.known = "Water measured to boil at " + s.temperature(in.place.WaterBoils)
	case cli.ByStation:
		p.known = "Barometer in the sugarhouse"
	case cli.ByAltimeter:
		p.known = "Altimeter setting " + s.pressure(in.place.Altimeter) + " at " + s.length(in.place.Elevation)
	default:
		p.today = false
		p.known = "Elevation " + s.length(in.place.Elevation) + ", average weather"
	}
	return p, nil
}
