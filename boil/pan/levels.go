package pan

import (
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Level is what is read of one compartment: how deep it stands, how strong it
// is and how warm, all at the same time. A record of the evening that has a row
// of them for each compartment is the start of the next day: see [Rig.FromLevels].
type Level struct {
	Depth       units.Length
	Brix        units.Brix
	Temperature units.Temperature
}

// What a level may be.
var (
	levelDepth = limit.Range{Arg: "Level.Depth", What: "depth in a compartment", Low: 0, Unit: "m",
		Below: "a depth cannot be negative", Above: "the sides of the pan are hardly so high: check inches against centimeters"}
	levelBrix = limit.Range{Arg: "Level.Brix", What: "sugar content of a compartment", Low: 0, High: thickest, Unit: "Brix",
		Below: "less than no sugar: check the instrument in plain water", Above: liquidBrix.Above}
)

// highestLevel is how high a compartment may stand, in depths of the full one.
const highestLevel = 3

// FromLevels returns the contents of the rig by what was read of each
// compartment, from the sap's end to the draw-off: how a pan that was left
// standing is told to [Day.Start].
//
// Range: a level for each compartment, depths of 0 to three times the full one,
// 0 to 75 Brix, 0 to 110 C. Uncertainty: that of the depth, an eighth of an
// inch of two is 6 percent; read it in a level pan that does not boil. A warped
// pan holds more or less.
//
// Method: area times depth times [example.org/sapreckoner/density.Solution].
// Check value: an inch over a square foot, 0.623 US gallon, of 20 Brix at 20 C
// holds 1.125 lb of sugar (computed).
func (r Rig) FromLevels(levels []Level) (Contents, error) {
	const fn = "pan.Rig.FromLevels"
	if err := r.check(fn, false); err != nil {
		return nil, err
	}
	if n := len(r.Compartments); len(levels) != n {
		return nil, &units.RangeError{Func: fn, Arg: "levels", What: "number of levels", Value: float64(len(levels)),
			Low: float64(n), High: float64(n), Hint: "give the depth and the strength of every compartment"}
	}
	c := make(Contents, len(levels))
	for i, l := range levels {
		deep := levelDepth
		deep.High = highestLevel * float64(r.Compartments[i].Depth)
		if err := deep.CheckItem(fn, "levels", i, "Depth", float64(l.Depth)); err != nil {
			return nil, err
		}
		if err := levelBrix.CheckItem(fn, "levels", i, "Brix", float64(l.Brix)); err != nil {
			return nil, err
		}
		if err := liquidTemp.CheckItem(fn, "levels", i, "Temperature", l.Temperature.Celsius()); err != nil {
			return nil, err
		}
		rho, err := density.Solution(l.Brix, l.Temperature)
		if err != nil {
			return nil, units.Under(fn, err)
		}
		m := rho.Mass(r.Compartments[i].Area.Volume(l.Depth))
		c[i].Sugar = l.Brix.Sugar(m)
		c[i].Water = m - c[i].Sugar
		c[i].Temperature = l.Temperature
	}
	return c, nil
}

// Levels returns how deep each compartment stands with what it holds at its
// temperature: the inverse of [Rig.FromLevels], for a record of the evening, or
// to hold a stick against in the morning. Sweet that has cooled stands lower, thin
// sweet by 4 percent from the boil to 68 F (computed).
//
// Range: contents of the rig, 0 to 75 Brix, 0 to 110 C. Uncertainty and method as
// there. Check value: an inch, for that of [Rig.FromLevels].
func (r Rig) Levels(held Contents) ([]Level, error) {
	const fn = "pan.Rig.Levels"
	if err := r.check(fn, false); err != nil {
		return nil, err
	}
	if err := held.check(fn, "held", len(r.Compartments)); err != nil {
		return nil, err
	}
	levels := make([]Level, len(r.Compartments))
	for i, l := range held {
		v, err := l.VolumeAt(l.Temperature)
		if err != nil {
			return nil, units.Under(fn, err)
		}
		levels[i] = Level{Depth: units.Length(float64(v) / float64(r.Compartments[i].Area)), Brix: l.Brix(), Temperature: l.Temperature}
	}
	return levels, nil
}

// Thawed returns the contents with every compartment that froze at 0 C and all
// its ice melted, as they may stand under the next fire. Let the ice melt before
// it is lit, by warm sap poured over it or in the sun: the fire does not melt
// it here, and must not there, since under the ice the metal may stand dry. The
// heat that melts it is in no balance: it comes from the sun or the sap.
func (c Contents) Thawed() Contents {
	thawed := make(Contents, len(c))
	for i, l := range c {
		thawed[i] = l
		if l.Temperature.Compare(units.Celsius(0)) < 0 {
			thawed[i].Temperature = units.Celsius(0)
		}
	}
	return thawed
}
