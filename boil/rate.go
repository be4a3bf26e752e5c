package boil

import (
	"math"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/measure"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// A PanKind is a kind of pan. The zero value is none and is refused.
type PanKind uint8

// The kinds of pan with a published rate.
const (
	// FlatPan has a flat bottom.
	FlatPan PanKind = iota + 1
	// FluePan has a bottom folded into flues, which the fire heats on all sides.
	FluePan
)

var panKinds = enum.Names[PanKind]{Type: "boil.PanKind", Of: []string{FlatPan: "flat pan", FluePan: "flue pan"}}

// PanKinds lists the kinds of pan.
func PanKinds() []PanKind { return panKinds.List() }

// String names the kind, "flat pan" or "flue pan".
func (k PanKind) String() string {
	if k < FlatPan || k > FluePan {
		return "no kind of pan"
	}
	return panKinds.String(k)
}

// MarshalText returns the name, and an error for no kind of pan.
func (k PanKind) MarshalText() ([]byte, error) { return panKinds.Marshal(k) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (k *PanKind) UnmarshalText(text []byte) error { return panKinds.Unmarshal(k, text) }

// What rates may be asked for.
var (
	panRange = limit.Range{Arg: "area", What: "area of the pan", Low: 0, High: 1000, Unit: "m2",
		Below: "an area cannot be less than none",
		Above: "check square feet against square inches"}
	levelRange = limit.Range{Arg: "LevelReading.Level", What: "level", Low: 0, High: 2, Unit: "m",
		Below: "measure the level up from the bottom",
		Above: "check inches against feet"}
	addedRange = limit.Range{Arg: "LevelReading.Added", What: "sap poured in", Low: 0, High: 1000, Unit: "L", Per: float64(units.Liter),
		Below: "what was drawn off is not poured in: measure between draws",
		Above: "check the unit of the volume"}
)

// PanRate returns the evaporation of a pan of a kind and an area in plan, in
// cold sap, as it is printed: a first guess before the first boil. Your own rate,
// by [LevelRate] or from a past day, is better.
//
// Range: the kinds of [PanKinds], 0 to 1000 m2. Uncertainty: a half and more of
// a flat pan, for which one figure is printed and so both ends are the same;
// the ends for a flue pan are printed.
//
// Source: producers' manuals, from memory: 1 gal/ft2/h of flat pan; 2 gal/ft2/h
// of the plan area of a flue pan, 1.5 to 3 with forced draft. A corrugated pan of
// 4 by 16 ft that took 5 barrels an hour, 2.5 gal/ft2/h by barrels of 31.5 gal
// (Cyclopedia of Farm Crops, read), supports it. Check value: 20 US gal/h, from 15 to 30, of 10 ft2 of flue pan.
//
// Cites producers-manuals.
func PanRate(kind PanKind, area units.Area) (units.Span[units.VolumeRate], error) {
	const fn = "boil.PanRate"
	if err := panRange.Check(fn, area.SquareMeters()); err != nil {
		return limit.NoSpan[units.VolumeRate](), err
	}
	flux := func(low, middle, high float64) (units.Span[units.VolumeRate], error) {
		return units.Span[units.VolumeRate]{
			Low:    units.USGallonsPerSquareFootHour(low).Through(area),
			Middle: units.USGallonsPerSquareFootHour(middle).Through(area),
			High:   units.USGallonsPerSquareFootHour(high).Through(area),
		}, nil
	}
	switch kind {
	case FlatPan:
		return flux(1, 1, 1)
	case FluePan:
		return flux(1.5, 2, 3)
	}
	return limit.NoSpan[units.VolumeRate](), &units.RangeError{Func: fn, Arg: "kind", What: "kind of pan", Value: float64(kind), Low: float64(FlatPan), High: float64(FluePan),
		Hint: "say whether the pan has a flat bottom or flues, or measure your own rate"}
}

// A LevelReading is the level in the pan at a time after the fire was lit. Added
// is the cold sap poured in since the reading before.
type LevelReading struct {
	At    time.Duration
	Level units.Length
	Added units.Volume
}

// A MeasuredRate is an evaporation found by the falling level.
type MeasuredRate struct {
	Warm      units.MassRate // once it boils
	WarmBy    units.MassRate // standard uncertainty of it; NaN of two readings
	ColdStart units.Mass     // water lost before the first reading that counts
	Readings  int            // that count
}

// String prints the rate with its uncertainty, to the digit that it leaves;
// [MeasuredRate.Text] takes one system of units.
func (m MeasuredRate) String() string { return m.Text(units.Both) }

// Text prints the rate in one system of units, or both: "85 +/- 3 lb/h".
func (m MeasuredRate) Text(in units.System) string {
	if m.WarmBy != m.WarmBy { // two readings do not scatter
		return m.Warm.TextIn(in, 2)
	}
	return measure.Either(in,
		measure.PlusMinus(m.Warm.PoundsPerHour(), m.WarmBy.PoundsPerHour(), "lb/h"),
		measure.PlusMinus(m.Warm.KilogramsPerHour(), m.WarmBy.KilogramsPerHour(), "kg/h"))
}

// LevelRate returns the evaporation of a pan with straight sides from readings
// of its level. Those before the fire had burned for the time cold count as the
// cold start, which boils little and would spoil the rate. An hour is common
// for an arch of brick (common practice).
//
// Levels are read in boiling liquid, which takes 4 percent more room than cold:
// masses are right, and a gallon of the answer is a cold one through
// [units.MassRate.VolumeRate]. The liquid is taken as thin sap; in syrup the
// level falls slower for the same water by a percent or two.
//
// Range: areas over 0 to 1000 m2, levels of 0 to 2 m, sap added of 0 to 1000 m3;
// times that rise; two readings or more after the cold start. Uncertainty:
// WarmBy tells what the scatter about the steady rate allows.
//
// Source: least squares of the mass lost against time. Check value: an inch over
// a square foot is 0.623 US gal (computed), 4.98 lb of water at 212 F.
func LevelRate(area units.Area, cold time.Duration, readings ...LevelReading) (MeasuredRate, error) {
	const fn = "boil.LevelRate"
	bad := func(arg, what string, value, low, high float64, unit, hint string) (MeasuredRate, error) {
		return MeasuredRate{}, &units.RangeError{Func: fn, Arg: arg, What: what, Value: value, Low: low, High: high, Unit: unit, Hint: hint}
	}
	if err := panRange.Check(fn, area.SquareMeters()); err != nil {
		return MeasuredRate{}, err
	}
	if area == 0 {
		return bad(panRange.Arg, panRange.What, 0, 0, panRange.High, "m2", "a pan has an area: length times width")
	}
	boiling, err := density.Water(units.Celsius(100))
	if err != nil {
		return MeasuredRate{}, units.Under(fn, err)
	}
	poured, err := density.Solution(2, units.Celsius(4))
	if err != nil {
		return MeasuredRate{}, units.Under(fn, err)
	}
	var out MeasuredRate
	var lost, before float64 // kg since the first reading, and s of the one before
	var sum numeric.LineSum
	for i, r := range readings {
		if err := levelRange.CheckItem(fn, "readings", i, "Level", r.Level.Meters()); err != nil {
			return MeasuredRate{}, err
		}
		if err := addedRange.CheckItem(fn, "readings", i, "Added", r.Added.CubicMeters()); err != nil {
			return MeasuredRate{}, err
		}
		at := r.At.Seconds()
		if i > 0 {
			if !(at > before) {
				return bad(limit.Item("readings", i, "At"), "time of a reading", at, before, math.Inf(1), "s", "readings follow each other: sort them by time")
			}
			drop := readings[i-1].Level - r.Level
			lost += float64(boiling.Mass(area.Volume(drop))) + float64(poured.Mass(r.Added))
		}
		before = at
		if r.At < cold {
			continue
		}
		if out.Readings == 0 {
			out.ColdStart = units.Mass(lost)
		}
		out.Readings++
		sum.Add(at/3600, lost, 1)
	}
	if out.Readings < 2 {
		return bad("readings", "readings after the cold start", float64(out.Readings), 2, math.Inf(1), "", "read the level again, a good while later")
	}
	line := sum.Fit()
	out.Warm = units.KilogramsPerHour(line.Slope)
	out.WarmBy = units.KilogramsPerHour(line.SlopeError(sum.Scatter(line)))
	return out, nil
}
