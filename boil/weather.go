package boil

import (
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// Altimeter settings that weather brings, in inches of mercury: from memory, of
// the northeast of North America in the sap season. Most days lie within 0.6 of
// the average; the deepest storms and the coldest highs over land do not leave
// the wider span.
const (
	usualLow, usualHigh = 29.32, 30.52
	mostLow, mostHigh   = 28.2, 31.4
)

// A Fit tells how a pressure fits an elevation. The zero value fits none.
type Fit uint8

// How a pressure fits.
const (
	NoWeather    Fit = iota // none brings it: the instrument, the elevation or the kind of pressure is wrong
	RareWeather             // a deep storm or a strong high, or one of these
	UsualWeather            // most days
)

var fits = enum.Names[Fit]{Type: "boil.Fit", Of: []string{NoWeather: "no weather", RareWeather: "rare weather", UsualWeather: "usual weather"}}

// String returns the fit in words.
func (f Fit) String() string { return fits.String(f) }

// MarshalText returns what String returns, and an error for what is no fit.
func (f Fit) MarshalText() ([]byte, error) { return fits.Marshal(f) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (f *Fit) UnmarshalText(text []byte) error { return fits.Unmarshal(f, text) }

// A Weather is a pressure at the pan held against the elevation of the pan.
type Weather struct {
	Fit Fit
	// Usual and Most are what most days bring there, and all weather; the Middle
	// of both is the standard atmosphere.
	Usual, Most units.Span[units.Pressure]
	// Water is where water boils there in average weather, and Hotter by how much
	// it boils hotter under the pressure held against it: negative where cooler. If
	// the pressure comes of a thermometer in boiling water, and weather does not
	// explain it, the thermometer shows so much too much.
	Water  units.Temperature
	Hotter units.TempDiff
	// Setting is the altimeter setting that a station beside the pan would
	// report: near 30 inHg at any elevation.
	Setting units.Pressure
}

// WeatherAt holds a station pressure against an elevation: of a barometer in the
// sugarhouse, or of boiling water by [PressureFromWater]. It finds the barometer
// that is set to sea level and the thermometer that is off.
//
// Range: 12 to 36 inHg, -500 to 5,000 m. Uncertainty: the spans of weather are
// from memory: altimeter settings of 29.32 to 30.52 inHg on most days, and 28.2
// to 31.4 in all.
//
// Source: as of [PressureAt], [AltimeterSetting] and [Water]. Check value: 30.10
// inHg at 1,500 ft are a setting of 31.77 inHg, 1.77 above average weather, and
// no weather brings them (computed).
func WeatherAt(station units.Pressure, elevation units.Length) (Weather, error) {
	const fn = "boil.WeatherAt"
	if err := stationRange.Check(fn, station.InchesMercury()); err != nil {
		return Weather{}, err
	}
	average, err := PressureAt(elevation)
	if err != nil {
		return Weather{}, units.Under(fn, err)
	}
	w := Weather{Setting: altimetry(station, elevation)}
	span := func(low, high float64) units.Span[units.Pressure] {
		return units.Span[units.Pressure]{
			Low:    altimetry(units.InchesMercury(low), -elevation),
			Middle: average,
			High:   altimetry(units.InchesMercury(high), -elevation),
		}
	}
	w.Usual, w.Most = span(usualLow, usualHigh), span(mostLow, mostHigh)
	// The guards above hold both in the range of Water.
	w.Water, _ = Water(average)
	boils, _ := Water(station)
	w.Hotter = boils.Sub(w.Water)
	switch {
	case station >= w.Usual.Low && station <= w.Usual.High:
		w.Fit = UsualWeather
	case station >= w.Most.Low && station <= w.Most.High:
		w.Fit = RareWeather
	}
	return w, nil
}
