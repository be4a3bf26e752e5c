package finish_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What one function passes on to another is told by the name that the caller
// wrote: see [units.RangeError].
func TestArgsByTheirNames(t *testing.T) {
	nan := math.NaN()
	stop := finish.ThermometerStop{Target: 66.9, Pressure: units.Atmosphere, ProbeBy: 0.1}
	cup := finish.HydrometerStop{Target: 66.9, Instrument: density.Hydrometer{GraduatedAt: units.Celsius(20)}, Cup: units.Celsius(90)}
	past := finish.PastStop{Pressure: units.Atmosphere, Stop: units.Celsius(104.2), Cup: 66.9}
	look := func(change func(*finish.Watch, []finish.WatchReading)) error {
		w := finish.Watch{Target: 66.9, Water: units.Celsius(100), ProbeBy: 0.1}
		readings := []finish.WatchReading{{At: 0, Shown: units.Celsius(103)}, {At: time.Minute, Shown: units.Celsius(103.5)}}
		change(&w, readings)
		_, err := w.Outlook(readings...)
		return err
	}
	thermometer := func(change func(*finish.ThermometerStop)) error {
		s := stop
		change(&s)
		_, err := s.Parts()
		return err
	}
	for want, err := range map[string]error{
		"ThermometerStop.Pressure": thermometer(func(s *finish.ThermometerStop) { s.Pressure = 10 * units.Kilopascal }),
		"ThermometerStop.Inverted": thermometer(func(s *finish.ThermometerStop) { s.Inverted = 21 }),
		"HydrometerStop.Cup":       func() error { s := cup; s.Cup = units.Celsius(111); _, err := s.Parts(); return err }(),
		"Hydrometer.GraduatedAt":   func() error { s := cup; s.Instrument.GraduatedAt = units.Celsius(0); _, err := s.Parts(); return err }(),
		"stops[1].Pressure":        func() error { p := past; p.Pressure = 0; _, err := finish.LearnOffset(past, p); return err }(),
		"stops[1].Stop": func() error {
			p := past
			p.Stop = units.Celsius(nan)
			_, err := finish.LearnOffset(past, p)
			return err
		}(),
		"Watch.Water":        look(func(w *finish.Watch, _ []finish.WatchReading) { w.Water = units.Celsius(300) }),
		"WatchReading.Shown": look(func(_ *finish.Watch, r []finish.WatchReading) { r[1].Shown = units.Celsius(nan) }),
		"readings[1].At":     look(func(_ *finish.Watch, r []finish.WatchReading) { r[1].At = 0 }),
		"Solute.Inverted":    look(func(w *finish.Watch, _ []finish.WatchReading) { w.Sugar = sugar.Solute{Inverted: 21} }),
		"off":                func() error { _, err := finish.ErrorCost(50, units.Atmosphere, -5); return err }(),
		"over":               func() error { _, err := finish.DepthCost(50, units.Kilopascals(40), 0.5); return err }(),
		"Finish.High":        func() error { _, err := finish.Finish{Low: 4, High: 40}.Moisture(); return err }(),
		"gross":              func() error { _, err := finish.PotReading{Gross: 10, Tare: 1, Brix: 60}.At(11); return err }(),
	} {
		var e *units.RangeError
		if !errors.As(err, &e) || e.Arg != want {
			t.Errorf("%v; want %s", err, want)
		}
	}
}
