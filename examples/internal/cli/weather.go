package cli

import (
	"fmt"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// KnownBy words how the pressure was found, by the flag that tells it.
var KnownBy = map[string]string{
	ByWaterBoils: "by your thermometer in boiling water",
	ByStation:    "as your barometer shows",
	ByAltimeter:  "by altimeter setting and elevation",
	ByElevation:  "standard weather at the elevation",
}

// slipped is how far a thermometer may be off before a slip is likelier: a wrong
// elevation, a wrong key, or water that did not boil. Common practice.
const slipped = 5 * units.FahrenheitDegree

// hold holds the pressure against the elevation, and asks back what neither
// weather nor an instrument explains. A thermometer that is off still stops the
// syrup where it should, since it shows boiling water and boiling syrup alike; a
// barometer that is off does not.
func (p *Place) hold(flag string, pressure units.Pressure) error {
	w, err := boil.WeatherAt(pressure, p.Elevation)
	if err != nil {
		return err
	}
	p.held = &w
	const inHg = units.InchMercury
	switch {
	case flag == ByWaterBoils:
		average := units.TempDiff(w.Water.Celsius())
		return limit.Within("", "boiling point of water", units.TempDiff(p.WaterBoils.Celsius()), average-slipped, average+slipped, 1, "C",
			"neither weather nor a thermometer worth reading does that at this -elevation: check both, and boil plain water again")
	case w.Fit != boil.NoWeather:
		return nil
	case flag == ByStation:
		return limit.Within("", "station pressure", pressure, w.Most.Low, w.Most.High, inHg, "inHg",
			"no weather brings that to a pan at this -elevation: the reading of a barometer that is set to sea level is given as -altimeter; or check the elevation")
	}
	low, err := boil.AltimeterSetting(w.Most.Low, p.Elevation)
	if err != nil {
		return err
	}
	high, err := boil.AltimeterSetting(w.Most.High, p.Elevation)
	if err != nil {
		return err
	}
	return limit.Within("", "altimeter setting", p.Altimeter, low, high, inHg, "inHg",
		"a setting is near 30 inHg at any elevation: the reading of a barometer that is not set to sea level is given as -pressure")
}

// Told tells, after [Place.Pressure], what the elevation says of the instrument:
// whether they agree, and else what to write on the thermometer.
func (p *Place) Told(s *Sheet) []string {
	if p.held == nil {
		switch p.by {
		case ByWaterBoils:
			return []string{"Give -elevation beside -water-boils: then a thermometer that is off is told."}
		case ByStation:
			return []string{"Give -elevation beside -pressure: then a barometer that is set to sea level is found."}
		}
		return nil
	}
	w := p.held
	here := "At " + p.height(s) + " "
	switch p.by {
	case ByWaterBoils:
		return []string{here + "water boils at " + s.In(Temperature(w.Water)) + " in average weather, and your thermometer shows " + p.thermometer(s)}
	case ByStation:
		return []string{here + "a barometer shows " + s.In(Pressure(w.Most.Middle)) + " in average weather, and yours " + p.barometer(s)}
	}
	if w.Fit == boil.RareWeather {
		return []string{"So far from 29.92 inHg (1013 hPa) a setting lies on few days: make sure that it is today's."}
	}
	return nil
}

// Words tells, after [Place.Pressure], by what the boiling points are known: the
// elevation, or where water boils.
func (p *Place) Words(s *Sheet, water units.Temperature) string {
	if p.by == ByElevation {
		return "at " + s.In(Feet(p.Elevation))
	}
	return "water boils at " + s.In(Temperature(water))
}

// height is the elevation of the pan.
func (p *Place) height(s *Sheet) string {
	if s.Metric {
		return p.Elevation.Text(units.Meter, 0)
	}
	return p.Elevation.Text(units.Foot, 0)
}

// Difference is the size of a difference of temperature, to a tenth.
func (s *Sheet) Difference(d units.TempDiff) string {
	if d < 0 {
		d = -d
	}
	if s.Metric {
		return d.Text(units.CelsiusDegree, 1)
	}
	return d.Text(units.FahrenheitDegree, 1)
}

func (p *Place) thermometer(s *Sheet) string {
	w := p.held
	off, more, reads := s.Difference(w.Hotter), "more", "high"
	if w.Hotter < 0 {
		more, reads = "less", "low"
	}
	mark := fmt.Sprintf("write %q on it", "reads "+off+" "+reads)
	const holds = "The boiling points on this page are as this thermometer shows them, and hold for no other."
	switch w.Fit {
	case boil.UsualWeather:
		return off + " " + more + ", which the weather of most days explains: they agree."
	case boil.RareWeather:
		return off + " " + more + ", which the weather of few days explains. Boil plain water again; where a barometer tells of nothing unusual it is the thermometer: " + mark + ". " + holds
	}
	weather, err := boil.Water(w.Usual.High)
	if err != nil {
		return off + " " + more + "." // the span lies in the range of boiling water
	}
	return off + " " + more + ", which no weather explains: it is off. Boil plain water again to be sure, then " + mark +
		", give or take " + s.Difference(weather.Sub(w.Water)) + " by the weather. " + holds + " The pressure that it stands for is not today's."
}

func (p *Place) barometer(s *Sheet) string {
	w := p.held
	off, more := p.Station-w.Most.Middle, "more"
	if off < 0 {
		off, more = -off, "less"
	}
	differs := s.In(Rough(Pressure(off))) + " " + more
	if w.Fit == boil.UsualWeather {
		return differs + ", which the weather of most days explains: they agree."
	}
	differs += ", which the weather of few days explains. "
	reduced, err := boil.StationPressure(p.Station, p.Elevation)
	if err != nil || p.Station < w.Most.Middle {
		return differs + "Check it against a weather report."
	}
	boils, err := boil.Water(reduced)
	if err != nil {
		return differs + "Check it against a weather report."
	}
	counted := w.Water.Add(w.Hotter)
	return differs + "If it is set to sea level, as most are, give its reading as -altimeter: water then boils at " + s.In(Temperature(boils)) + ", " +
		s.Difference(counted.Sub(boils)) + " cooler than is counted here."
}
