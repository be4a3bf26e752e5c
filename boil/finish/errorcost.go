package finish

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// ErrorCost returns by how much syrup misses a target if the thermometer that
// stops it is off by so much: positive where it reads too cold, since the boil
// then goes on.
//
// Range: 50 to 80 Brix, 20 to 120 kPa, errors of -5 to 5 C deg that do not
// exceed the rise.
//
// Source: [boil.Rise], turned round. Check value: 0.26 Brix for 0.1 F at 66 Brix and
// 1 atm (computed).
func ErrorCost(target units.Brix, pressure units.Pressure, off units.TempDiff) (units.Brix, error) {
	const fn = "finish.ErrorCost"
	if err := stopTarget.Check(fn, float64(target)); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := stopDiff.Check(fn, float64(off)); err != nil {
		return units.Brix(math.NaN()), err
	}
	missed, err := errorCost(fn, sugar.Solute{}, target, pressure, off)
	return missed, limit.Renamed(fn, err, "rise", "off")
}

func errorCost(fn string, s sugar.Solute, b units.Brix, p units.Pressure, d units.TempDiff) (units.Brix, error) {
	rise, err := rise(fn, s, b, p)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	off, err := strength(fn, s, rise+d, p)
	return off - b, err
}

// DepthCost returns by how much syrup misses a target if so much syrup stands
// over a probe that was calibrated at the surface of boiling water: negative,
// since the liquid around it is hotter than the surface and stops the boil too
// soon. A probe calibrated at the same depth keeps a quarter of it, by which
// syrup is heavier than water.
//
// Range: 50 to 80 Brix, 20 to 120 kPa, -0.5 to 0.5 m.
//
// Source: hydrostatics, with [example.org/sapreckoner/density.Solution] at the
// boiling point or 110 C. Check value: -0.86 Brix for 2 in at 66 Brix and 1 atm;
// by the slope at the target 0.8 (computed).
func DepthCost(target units.Brix, pressure units.Pressure, over units.Length) (units.Brix, error) {
	const fn = "finish.DepthCost"
	if err := stopTarget.Check(fn, float64(target)); err != nil {
		return units.Brix(math.NaN()), err
	}
	if err := stopDepth.Check(fn, over.Meters()); err != nil {
		return units.Brix(math.NaN()), err
	}
	missed, err := depthCost(fn, sugar.Solute{}, target, pressure, over)
	return missed, limit.Renamed(fn, err, "rise", "over")
}

func depthCost(fn string, s sugar.Solute, b units.Brix, p units.Pressure, over units.Length) (units.Brix, error) {
	at, err := point(fn, s, b, p)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	head, err := headOf(fn, b, at)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	return pressureCost(fn, s, b, p, units.Pascals(head*over.Meters()))
}

// pressureCost returns by how much the syrup misses b if the pressure at the
// probe is more by d than the stop was set for.
func pressureCost(fn string, s sugar.Solute, b units.Brix, p, d units.Pressure) (units.Brix, error) {
	set, err := point(fn, s, b, p)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	truth, err := point(fn, s, b, p+d)
	if err != nil {
		return units.Brix(math.NaN()), err
	}
	return errorCost(fn, s, b, p, set.Sub(truth))
}
