package main

import (
	"math"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What stands between the boiling point at the surface of the pot and what the
// thermometer shows: its own past stops, if they tell it better, or else the
// syrup over the probe.

// shows is what the thermometer shows in liquid of a strength.
func (t *thermometer) shows(b units.Brix) (units.Temperature, error) {
	if t.learned == nil {
		at, err := t.probe().Shows(b)
		return at.Add(t.off), err
	}
	at, err := boil.SyrupPointOf(t.sugar(), b, t.pressure)
	return at.Add(t.learned.off), err
}

// sugar is that of the sap. What a rig has learned holds the inverted share.
func (t *thermometer) sugar() sugar.Solute {
	if t.learned != nil {
		return sugar.Solute{}
	}
	return t.sap
}

// probe is the end of the thermometer.
func (t *thermometer) probe() boil.Probe {
	return boil.Probe{Pressure: t.pressure, Over: t.over, Sugar: t.sap}
}

// boilingShows is what the thermometer shows in boiling water today.
func (t *thermometer) boilingShows() units.Temperature { return t.water.Add(t.off) }

// surface is the boiling point at the surface when the thermometer shows so
// much: the inverse of shows. What is hotter than all candy comes back as it is,
// and is refused where it is read.
func (t *thermometer) surface(shown units.Temperature) units.Temperature {
	if t.learned != nil {
		return shown.Add(-t.learned.off)
	}
	at, err := t.probe().Surface(shown.Add(-t.off))
	if err != nil {
		return shown
	}
	return at
}

// strength is that of liquid which boils at a temperature at its surface.
func (t *thermometer) strength(surface units.Temperature) (units.Brix, error) {
	return boil.BrixFromRiseOf(t.sugar(), max(surface.Sub(t.water), 0), t.pressure)
}

// byHeat takes the strength from the boiling point. How uncertain it is follows
// from a stop at that strength, which the library tells from 50 to 80 Brix; of a
// line through readings, scatter is what it has instead of probe and formula.
func (t *thermometer) byHeat(shows cli.Value, at units.Temperature, b, scatter units.Brix) (*instrument, bool) {
	stop := t.stop
	stop.Target = b
	parts, err := stop.Parts()
	if err != nil {
		return nil, false
	}
	by := parts.Total
	if t.learned != nil {
		if by, err = finish.ErrorCost(b, t.pressure, t.learned.by); err != nil {
			return nil, false
		}
		by = root(by, scatter)
	} else if scatter > 0 {
		by = root(scatter, parts.Depth, parts.Barometer, parts.Inverted)
	}
	return &instrument{"thermometer", shows, density.Measurement{
		Brix: b, Uncertainty: density.Coverage * by, Caveats: density.CaveatsOf(b, at)}}, true
}

// total is the uncertainty of the stop.
func (t *thermometer) total() units.Brix {
	if t.learned != nil {
		return t.learned.cost
	}
	return t.parts.Total
}

// root is the root of a sum of squares.
func root(parts ...units.Brix) (sum units.Brix) {
	for _, p := range parts {
		sum = units.Brix(math.Hypot(float64(sum), float64(p)))
	}
	return sum
}
