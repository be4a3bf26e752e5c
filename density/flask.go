package density

import (
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// A Flask is a vessel of known volume that is filled and weighed, net, on a
// scale in air: the instrument of whoever owns a good scale. The zero value is
// refused.
//
// CalibratedAt is the temperature at which Volume holds, mostly 20 C; weighing
// the water it takes is the best calibration. Expansion is the cubical
// expansion of its material per kelvin; zero means glass, [GlassExpansion].
// Steel is near 50e-6 (from memory).
type Flask struct {
	Volume       units.Volume
	CalibratedAt units.Temperature
	Expansion    float64
}

// Brix returns the strength of the solution at the given temperature whose net
// weight in air fills the flask.
//
// Range: answers from 0 to 85 Brix, at from 0 to 110 C, volume from 0.001 mL to
// 1e6 m3, calibration from 1 to 40 C. Uncertainty: one part in a thousand of
// weight or volume is 0.2 Brix; [Flask.Measure] works it out. Check value: a US
// gallon at 20 C that weighs 11.0759 lb is 66.9 Brix (computed).
func (f Flask) Brix(net units.Mass, at units.Temperature) (units.Brix, error) {
	const fn = "density.Flask.Brix"
	v, err := f.volume(fn, at)
	if err != nil {
		return nan[units.Brix](), err
	}
	b, err := BrixFromDensity(FromAir(units.Density(float64(net)/float64(v))), at)
	if err != nil { // only the density is left to be outside
		least, most := water(at.Celsius()), rho(maxBrix.Fraction(), at.Celsius())
		return b, &units.RangeError{Func: fn, Arg: "net", What: "net weight", Value: net.Kilograms(), Unit: "kg",
			Low: InAir(units.Density(least)).Mass(v).Kilograms(), High: InAir(units.Density(most)).Mass(v).Kilograms(),
			Hint: "full of water the flask weighs the least and full of 85 Brix the most: check the unit, the temperature and whether the flask's own weight was taken off"}
	}
	return b, nil
}

// Net returns what the flask full of the given strength at the given
// temperature weighs in air, the flask's own weight taken off: the inverse of
// [Flask.Brix], with the same range. Uncertainty: that of [Solution], and 0.06
// kg/m3 for the air of the day.
//
// Check value: a US gallon at 20 C of 66.9 Brix weighs 11.0759 lb (computed).
func (f Flask) Net(brix units.Brix, at units.Temperature) (units.Mass, error) {
	const fn = "density.Flask.Net"
	v, err := f.volume(fn, at)
	if err != nil {
		return nan[units.Mass](), err
	}
	m, err := WeightInAir(v, brix, at)
	if err != nil {
		return m, units.Under(fn, err)
	}
	return m, nil
}

const howCalibrated = "give the temperature at which the volume holds, such as 20 C"

var (
	// The least volume tells one that was set from one that was not.
	flaskRange = limit.Range{Arg: "Flask.Volume", What: "volume of the flask", Low: float64(units.Milliliter / 1000), High: float64(maxVolume), Unit: "L", Per: float64(units.Liter),
		Below: "give what the flask holds, such as 500 mL", Above: volumeRange.Above}
	calibrationRange = limit.Range{Arg: "Flask.CalibratedAt", What: "calibration temperature", Low: 1, High: 40, Unit: "C", Below: howCalibrated, Above: howCalibrated}
)

// volume guards the flask and the temperature and returns the volume there.
func (f Flask) volume(fn string, at units.Temperature) (units.Volume, error) {
	c, c0 := at.Celsius(), f.CalibratedAt.Celsius()
	if err := flaskRange.Check(fn, float64(f.Volume)); err != nil {
		return nan[units.Volume](), err
	}
	if err := calibrationRange.Check(fn, c0); err != nil {
		return nan[units.Volume](), err
	}
	if err := tempRange.Check(fn, c); err != nil {
		return nan[units.Volume](), err
	}
	if err := glassRange.CheckAs(fn, "Flask.Expansion", f.Expansion); err != nil {
		return nan[units.Volume](), err
	}
	return f.Volume * units.Volume(1+expansionOf(f.Expansion)*(c-c0)), nil
}
