package pan

import (
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Contents is what stands in the compartments of a rig, from the sap's end to
// the draw-off. The zero value is a rig that stands empty.
type Contents []Liquid

// Liquid is what stands in one compartment.
type Liquid struct {
	Sugar, Water units.Mass
	Temperature  units.Temperature
}

// Mass returns sugar and water together.
func (l Liquid) Mass() units.Mass { return l.Sugar + l.Water }

// Brix returns the sugar content; 0 of nothing.
func (l Liquid) Brix() units.Brix {
	if l.Mass() <= 0 { // NaN stays NaN
		return 0
	}
	return units.Brix(100 * float64(l.Sugar) / float64(l.Mass()))
}

// VolumeAt returns the volume of the liquid once it is at a temperature, as when
// syrup is measured at 68 F; 0 of nothing.
//
// Range: 0 to 1e8 kg, 0 to 85 Brix, 0 to 110 C.
func (l Liquid) VolumeAt(at units.Temperature) (units.Volume, error) {
	const fn = "pan.Liquid.VolumeAt"
	if err := liquidMass.CheckAs(fn, "Liquid.Sugar", l.Sugar.Kilograms()); err != nil {
		return units.Volume(math.NaN()), err
	}
	if err := liquidMass.CheckAs(fn, "Liquid.Water", l.Mass().Kilograms()); err != nil {
		return units.Volume(math.NaN()), err
	}
	d, err := density.Solution(l.Brix(), at)
	if err != nil {
		return units.Volume(math.NaN()), limit.Renamed(fn, units.Under(fn, err), "brix", "Liquid.Sugar")
	}
	return l.Mass().Volume(d), nil
}

// Sugar returns the sugar in all compartments: the sweet that is left.
func (c Contents) Sugar() units.Mass {
	var sum units.Mass
	for _, l := range c {
		sum += l.Sugar
	}
	return sum
}

// Mass returns sugar and water in all compartments.
func (c Contents) Mass() units.Mass {
	var sum units.Mass
	for _, l := range c {
		sum += l.Mass()
	}
	return sum
}

// Fill returns the contents of a rig that stands full of one liquid: water to
// start with, or sap.
//
// Full is the depth of the hot liquid under that pressure: a square meter 5 cm
// deep of thin sap holds 48 kg and not 50 (computed). Range: 0 to 75 Brix, 0 to
// 110 C, 50 to 110 kPa.
func (r Rig) Fill(brix units.Brix, at units.Temperature, pressure units.Pressure) (Contents, error) {
	const fn = "pan.Rig.Fill"
	if err := r.check(fn, false); err != nil {
		return nil, err
	}
	if err := sapBrix.CheckAs(fn, "brix", float64(brix)); err != nil {
		return nil, err
	}
	if err := liquidTemp.CheckAs(fn, "at", at.Celsius()); err != nil {
		return nil, err
	}
	h, err := newHot(fn, "pressure", pressure)
	if err != nil {
		return nil, err
	}
	l := h.at(brix.Fraction())
	c := make(Contents, len(r.Compartments))
	for i, k := range r.Compartments {
		m := units.Mass(float64(k.Area.Volume(k.Depth)) / l.volume)
		c[i].Sugar = brix.Sugar(m)
		c[i].Water = m - c[i].Sugar
		c[i].Temperature = at
	}
	return c, nil
}

// What may stand in a pan.
var (
	liquidMass = limit.Range{Arg: "Liquid.Water", What: "mass in a compartment", Low: 0, High: 1e8, Unit: "kg",
		Below: "a mass cannot be negative", Above: "check its unit"}
	liquidBrix = limit.Range{Arg: "Liquid.Sugar", What: "sugar content of a compartment", Low: 0, High: thickest, Unit: "Brix",
		Above: "thin it before a fire is lit under it"}
	liquidTemp = limit.Range{Arg: "Liquid.Temperature", What: "temperature of a compartment", Low: 0, High: 110, Unit: "C",
		Below: "thaw it before a fire is lit under it",
		Above: "check Fahrenheit against Celsius"}
)

// check tells what is wrong with the contents of n compartments, which the caller
// calls name.
func (c Contents) check(fn, name string, n int) error {
	if len(c) == 0 {
		return nil
	}
	if len(c) != n {
		return &units.RangeError{Func: fn, Arg: name, What: "number of compartments that hold something", Value: float64(len(c)),
			Low: float64(n), High: float64(n), Hint: "give the contents of every compartment of the rig, or of none"}
	}
	for i, l := range c {
		if err := liquidMass.CheckItem(fn, name, i, "Sugar", float64(l.Sugar)); err != nil {
			return err
		}
		if err := liquidMass.CheckItem(fn, name, i, "Water", float64(l.Water)); err != nil {
			return err
		}
		if err := liquidBrix.CheckItem(fn, name, i, "Sugar", float64(l.Brix())); err != nil {
			return err
		}
		if err := liquidTemp.CheckItem(fn, name, i, "Temperature", l.Temperature.Celsius()); err != nil {
			return err
		}
	}
	return nil
}
