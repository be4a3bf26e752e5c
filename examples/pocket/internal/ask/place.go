package ask

import (
	"errors"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

// What weather brings to a pan, from the highest farm to the lowest valley.
const (
	leastPressure = 50 * units.Kilopascal
	mostPressure  = 110 * units.Kilopascal
)

// slipped is how far a thermometer may be off before a slip is likelier than an
// instrument: common practice.
const slipped = 5 * units.FahrenheitDegree

// placeInputs are the fields that tell the pressure at the pan.
func placeInputs() []Input {
	return []Input{
		{Key: "by", Label: "The air is known by", Start: "water", Range: choice("water", "boiling water", "station", "a barometer at the pan", "report", "a weather report", "height", "the elevation alone")},
		{Key: "water", Label: "My thermometer in boiling water", Help: "the thermometer that stops the syrup, today, in plain water at a full boil", Need: true, When: "by=water", Range: temperatures(units.Fahrenheit(178.5), units.Fahrenheit(216))},
		{Key: "station", Label: "Barometer at the pan", Help: "one that is not set to sea level", Need: true, When: "by=station", Range: pressures(leastPressure, mostPressure)},
		{Key: "report", Label: "Barometer of the report", Help: "brought to sea level, near 30 inHg or 1013 hPa anywhere", Need: true, When: "by=report", Range: pressures(80*units.Kilopascal, 110*units.Kilopascal)},
		elevationBeside(),
	}
}

func elevationBeside() Input {
	in := unfolded(setting("elevation", "elevation", ""))
	in.Help = "checks the instrument; alone it takes average weather"
	return in
}

// unfolded is a field that is not folded away, since it is looked at each time.
func unfolded(in Input) Input {
	in.More = false
	return in
}

// A place is the air at the pan.
type place struct {
	by       string
	pressure units.Pressure
	water    units.Temperature // boils at
	weather  *boil.Weather     // held against the elevation, if that is known
}

// place reads the place. It is false if a field is missing or refused.
func (f *Form) place() (p place, ok bool) {
	var err error
	p.by = f.chosen("by")
	elevation, high := read(f, "elevation", units.ParseLength)
	if (p.by == "report" || p.by == "height") && !high {
		f.failed = true
		f.note(&f.answer.Wants, "elevation of the pan")
	}
	key := p.by
	switch p.by {
	case "water":
		if p.water = f.temperature("water"); !f.failed {
			p.pressure, err = boil.PressureFromWater(p.water)
		}
	case "station":
		p.pressure = f.pressure("station")
	case "report":
		if setting := f.pressure("report"); !f.failed {
			p.pressure, err = boil.StationPressure(setting, elevation)
		}
	case "height":
		key = "elevation"
		if !f.failed {
			p.pressure, err = boil.PressureAt(elevation)
		}
	}
	if f.failed || f.blame(err, key, "elevation", "elevation") {
		return p, false
	}
	if !(p.pressure >= leastPressure && p.pressure <= mostPressure) {
		f.refuse(key, &units.RangeError{Arg: "pressure", What: "pressure at the pan", Value: p.pressure.InchesMercury(), Low: leastPressure.InchesMercury(), High: mostPressure.InchesMercury(), Unit: "inHg", Hint: "no weather brings that to a pan: check it"})
		return p, false
	}
	if p.by != "water" {
		if p.water, err = boil.Water(p.pressure); f.blame(err, key) {
			return p, false
		}
	}
	if high && p.by != "height" {
		w, err := boil.WeatherAt(p.pressure, elevation)
		if f.blame(err, key, "elevation", "elevation") {
			return p, false
		}
		p.weather = &w
		if wrong := f.held(p); wrong != nil {
			f.refuse(key, wrong)
			return p, false
		}
	}
	return p, true
}

// held asks back what neither weather nor an instrument explains.
func (f *Form) held(p place) error {
	w := p.weather
	switch {
	case p.by == "water" && w.Hotter.Abs() > slipped:
		return errors.New("neither weather nor a thermometer worth reading does that at this elevation, where water boils near " + f.temp(w.Water) + ": check both, and boil plain water again")
	case p.by == "station" && w.Fit == boil.NoWeather:
		return errors.New("no weather brings that to this elevation: is it a barometer set to sea level? Then choose the weather report")
	case p.by == "report" && w.Fit == boil.NoWeather:
		return errors.New("no weather does that: a report is near 30 inHg or 1013 hPa at any elevation")
	}
	return nil
}

// told tells what the elevation says of the thermometer.
func (f *Form) told(p place) string {
	if p.weather == nil || p.by != "water" {
		return ""
	}
	off := p.weather.Hotter
	text := off.Abs().TextIn(f.System, 2)
	reads := "high"
	if off < 0 {
		reads = "low"
	}
	switch p.weather.Fit {
	case boil.UsualWeather:
		return "thermometer and elevation agree"
	case boil.RareWeather:
		return "the thermometer reads " + text + " " + reads + " of average weather: boil plain water again"
	}
	return "no weather explains it: write on the thermometer, reads " + text + " " + reads
}
