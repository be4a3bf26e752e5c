package boil

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Suspect is what a check of a thermometer points at. The zero value is nothing.
type Suspect uint8

// What may be off.
const (
	SuspectNothing     Suspect = iota // all agree
	SuspectThermometer                // it shows as much too much in ice as at the boil
	SuspectScale                      // it is right in ice and off at the boil, and the barometer fits the elevation
	SuspectPressure                   // it is right, and the barometer or the elevation is off
	SuspectUnclear                    // weather would explain either
)

var suspects = enum.Names[Suspect]{Type: "boil.Suspect", Of: []string{
	SuspectNothing: "nothing", SuspectThermometer: "thermometer", SuspectScale: "thermometer at the boil",
	SuspectPressure: "barometer or elevation", SuspectUnclear: "thermometer or barometer"}}

// Suspects lists what may be off.
func Suspects() []Suspect { return suspects.List() }

// String tells it in words.
func (s Suspect) String() string { return suspects.String(s) }

// MarshalText returns what String returns, and an error for what is none.
func (s Suspect) MarshalText() ([]byte, error) { return suspects.Marshal(s) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (s *Suspect) UnmarshalText(text []byte) error { return suspects.Unmarshal(s, text) }

// ThermometerCheck is what boiling water and ice tell of a thermometer: see
// [Probe.CheckedIn].
type ThermometerCheck struct {
	// Boil and Ice are what it shows too much in boiling water and in ice.
	// Readings of syrup want that of the boil taken away.
	Boil, Ice units.TempDiff
	Suspect   Suspect
	// Barometer is how the pressure given fits the elevation, and Water how that
	// of the boiling water does, by the thermometer set right in ice.
	Barometer, Water Weather
}

// What a thermometer may show when it is checked.
var (
	checkIce = limit.Range{Arg: "ice", What: "reading in ice", Low: -5, High: 5, Unit: "C",
		Below: "crushed ice and water that were stirred are at 32 F: an instrument this far off is broken",
		Above: "crushed ice and water that were stirred are at 32 F: an instrument this far off is broken"}
	checkBoil = limit.Range{Arg: "boiling", What: "reading in boiling water", Unit: "C",
		Below: "let it boil hard, and check Fahrenheit against Celsius: an instrument this far off is broken",
		Above: "check station pressure against sea level, and Fahrenheit against Celsius: an instrument this far off is broken"}
)

const (
	boilBy = 10.0 // how far off a thermometer may be at the boil, in K
	// readBy is what two readings of one thermometer may differ by and still be
	// the same, in K: half a degree Fahrenheit.
	readBy = 0.5 / 1.8
)

// CheckedIn holds a thermometer against plain water that boils hard under the
// pressure of the probe, and against crushed ice and water, at an elevation, and
// tells which of thermometer, barometer and elevation disagrees with the rest.
// The probe's depth is that in the boiling water; its sugar does not count.
//
// Range: 12 to 36 inHg, -500 to 5,000 m, 0 to 0.5 m of water, up to 10 C off at
// the boil and 5 C in ice. Uncertainty: half a degree Fahrenheit counts as the same
// reading; weather as of [WeatherAt]. A thermometer that is right at both ends may
// still be off between and above.
//
// Source: ice melts at 0 C; [Probe.Shows]; [WeatherAt]. Check value: 209.5 F and
// 32 F shown at 1,500 ft under a barometer that says 30.10 inHg are 2.8 F too
// little for it, and the barometer is off: it is set to sea level (computed).
func (p Probe) CheckedIn(boiling, ice units.Temperature, elevation units.Length) (ThermometerCheck, error) {
	const fn = "boil.Probe.CheckedIn"
	p.Sugar.Inverted = 0
	if err := p.check(fn, 0); err != nil {
		return ThermometerCheck{}, err
	}
	barometer, err := WeatherAt(p.Pressure, elevation)
	if err != nil {
		return ThermometerCheck{}, limit.Renamed(fn, units.Under(fn, err), "station", "Probe.Pressure")
	}
	right, err := p.shows(fn, 0)
	if err != nil {
		return ThermometerCheck{}, err
	}
	r := checkBoil
	r.Low, r.High = right.Celsius()-boilBy, right.Celsius()+boilBy
	if err := r.Check(fn, boiling.Celsius()); err != nil {
		return ThermometerCheck{}, err
	}
	if err := checkIce.Check(fn, ice.Celsius()); err != nil {
		return ThermometerCheck{}, err
	}
	c := ThermometerCheck{Boil: boiling.Sub(right), Ice: ice.Sub(units.Celsius(0)), Barometer: barometer}
	// What boils at the surface by the thermometer, set right in ice.
	surface := boiling.Add(-c.Ice).Add(units.Kelvin(saturation(p.Pressure.Pascals())).Sub(right))
	pressure, err := PressureFromWater(surface)
	if err != nil {
		return ThermometerCheck{}, units.Under(fn, err)
	}
	if c.Water, err = WeatherAt(pressure, elevation); err != nil {
		return ThermometerCheck{}, units.UnderArg(fn, "boiling", err)
	}
	c.Suspect = c.suspect()
	return c, nil
}

func (c *ThermometerCheck) suspect() Suspect {
	apart := math.Abs(float64(c.Boil - c.Ice))
	switch {
	case math.Abs(float64(c.Boil)) <= readBy && math.Abs(float64(c.Ice)) <= readBy:
		if c.Barometer.Fit == NoWeather { // two agree that the third is off
			return SuspectPressure
		}
		return SuspectNothing
	case apart <= readBy:
		return SuspectThermometer
	case c.Barometer.Fit == NoWeather && c.Water.Fit != NoWeather:
		return SuspectPressure
	case c.Water.Fit == NoWeather && c.Barometer.Fit != NoWeather:
		return SuspectScale
	}
	return SuspectUnclear
}
