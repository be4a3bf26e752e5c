package cli

import (
	"errors"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Place is where a pan stands and how the air presses on it today, which the
// flags tell in one of four ways. The elevation may stand beside each: then it
// checks the instrument.
type Place struct {
	Elevation  units.Length
	Station    units.Pressure
	Altimeter  units.Pressure
	WaterBoils units.Temperature

	flags *Flags
	by    string        // the flag that told the pressure
	held  *boil.Weather // it, held against the elevation; nil if that was not given
}

// The flags of a [Place].
const (
	ByElevation  = "elevation"
	ByStation    = "pressure"
	ByAltimeter  = "altimeter"
	ByWaterBoils = "water-boils"
)

// Place declares the flags of a place as a group of their own. The elevation is
// the one of the demo.
func (f *Flags) Place(p *Place, elevation string) {
	p.flags = f
	f.Group("Place and weather (give one, and -elevation beside it as a check)")
	f.Quantity(&p.Elevation, ByElevation, elevation, "elevation of the pan: standard weather is assumed, or the barometer or thermometer that is given checked by it")
	f.Quantity(&p.Station, ByStation, "", "station pressure: a barometer at the pan that is not set to sea level; of one that is, as most are, give the reading as -altimeter")
	f.Quantity(&p.Altimeter, ByAltimeter, "", "altimeter setting of a weather station nearby; give -elevation too")
	f.Quantity(&p.WaterBoils, ByWaterBoils, "", "what your thermometer shows in boiling water today: the best of all")
}

// Pressures that weather brings to a pan, from the highest farm to the lowest
// valley; the record at sea level is about 108.5 kPa (from memory).
const (
	leastPressure = 50 * units.Kilopascal
	mostPressure  = 110 * units.Kilopascal
)

// Temperatures at which water boils in that, rounded to what a thermometer
// shows and a message says: 50 kPa is 178.4 F, 110 kPa is 216.1 F (computed).
var (
	coldestBoil = units.Fahrenheit(178.5)
	hottestBoil = units.Fahrenheit(216)
)

// Given returns the flag that tells the pressure, [ByElevation] if none stands
// on the command line, or an error if they say it twice.
func (p *Place) Given() (flag string, err error) {
	if err := p.flags.Alone(ByStation, ByAltimeter, ByWaterBoils); err != nil {
		return "", err
	}
	for _, flag := range []string{ByWaterBoils, ByStation} {
		if p.flags.said(flag) {
			return flag, nil
		}
	}
	if !p.flags.said(ByAltimeter) {
		return ByElevation, nil
	}
	if !p.flags.said(ByElevation) {
		return "", For(ByAltimeter, errors.New("give -elevation too: the setting is brought from sea level to the pan"))
	}
	return ByAltimeter, nil
}

// Pressure returns the pressure at the pan and the flag that it comes from.
func (p *Place) Pressure() (pressure units.Pressure, flag string, err error) {
	if flag, err = p.Given(); err != nil {
		return pressure, flag, err
	}
	switch flag {
	case ByWaterBoils:
		// First: the equation holds far beyond what weather brings.
		if err = WithinTemperature(flag, "boiling point of water", p.WaterBoils, coldestBoil.Celsius(), hottestBoil.Celsius(), "no weather does that: check the thermometer and its unit"); err != nil {
			return pressure, flag, err
		}
		pressure, err = boil.PressureFromWater(p.WaterBoils)
	case ByStation:
		pressure = p.Station
	case ByAltimeter:
		pressure, err = boil.StationPressure(p.Altimeter, p.Elevation)
	default:
		pressure, err = boil.PressureAt(p.Elevation)
	}
	if err == nil && flag != ByWaterBoils {
		err = limit.Within("", "station pressure", pressure, leastPressure, mostPressure, units.Kilopascal, "kPa", "no weather brings that to a pan: check the unit")
	}
	p.by = flag
	if err == nil && flag != ByElevation && p.flags.said(ByElevation) {
		err = p.hold(flag, pressure)
	}
	var re *units.RangeError
	if errors.As(err, &re) && re.Arg == "elevation" {
		return pressure, flag, For(ByElevation, err)
	}
	return pressure, flag, For(flag, err)
}

// said reports whether the user said it, on the command line or in a folder: what
// stands in an invented one checks no instrument.
func (f *Flags) said(name string) bool {
	return f.Given(name) && f.Source(name).Kind != Invented
}
