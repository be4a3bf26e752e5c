package density

import (
	"example.org/sapreckoner/units"
)

// GlassExpansion is the conventional cubical expansion of a glass hydrometer,
// per kelvin. Source: ISO 1768:1975, clause 3.
const GlassExpansion = 25e-6

// Limits of an instrument.
const (
	minGraduatedC = 1.0
	maxGraduatedC = 40.0
	maxGlass      = 100e-6
	// A stem reads a little below its zero in warm water or cold: the scale is
	// continued so far.
	minReading units.Brix = -1
)

// A Hydrometer is a glass hydrometer with a Brix scale, a Baume scale or both.
//
// GraduatedAt is the temperature at which its scale is true: 20 C (68 F) and
// 60 F are in use for syrup, often 38 F for sap. It is printed on the scale and
// part of the instrument; a hydrometer without one is refused. At 66.9 Brix
// the scales of 60 F and 68 F differ by 0.34 Brix.
//
// Glass is the cubical expansion of the glass per kelvin; zero means the
// conventional [GlassExpansion].
//
// # How it works
//
// A hydrometer graduated at t0 and floating at t shows the solution whose
// density at t0 is
//
//	rho(reading, t0) = rho(b, t) (1 + gamma (t - t0))
//
// because the glass has grown by gamma (t - t0) and displaces more.
type Hydrometer struct {
	GraduatedAt units.Temperature
	Glass       float64
}

// glass checks the instrument and returns its expansion.
func (h Hydrometer) glass(fn string) (float64, error) {
	if c := h.GraduatedAt.Celsius(); !(c >= minGraduatedC && c <= maxGraduatedC) {
		return 0, &units.RangeError{Func: fn, Arg: "hydrometer graduation", Value: c, Low: minGraduatedC, High: maxGraduatedC, Unit: "C",
			Hint: "set GraduatedAt to the temperature printed on the scale, such as units.Fahrenheit(60) or units.Celsius(20)"}
	}
	if h.Glass == 0 {
		return GlassExpansion, nil
	}
	if !(h.Glass > 0 && h.Glass <= maxGlass) {
		return 0, &units.RangeError{Func: fn, Arg: "glass expansion", Value: h.Glass, Low: 0, High: maxGlass, Unit: "1/K",
			Hint: "leave it zero for the conventional 25e-6"}
	}
	return h.Glass, nil
}

// Brix returns the sugar content of a solution at temperature at in which the
// hydrometer reads reading.
//
// Range: readings and answers from -1 to 85 Brix (a result below zero says how
// far the instrument or the temperature is off), at from 0 to 110 C, graduation
// 1 to 40 C. Above 90 C the density is extrapolated: see [Extrapolated].
// Uncertainty: 370e-6 of the density or more in use, about 0.08 Brix at 66.9,
// from surface tension and temperature (Aguilera, Wright, Bean, Measurement
// Science and Technology 19 (2008) 015104, abstract). Outside the range the
// answer is NaN and a [units.RangeError].
//
// Check value: a 20 C scale that reads 65.0 at 30 C stands in 65.80 Brix
// (computed; NBS Circular C440 corrects by +0.80, from memory).
func (h Hydrometer) Brix(reading units.Brix, at units.Temperature) (units.Brix, error) {
	const fn = "density.Hydrometer.Brix"
	return h.convert(fn, "reading", reading, h.GraduatedAt, at, false)
}

// Reading returns what the hydrometer shows in a solution of b Brix at
// temperature at: the inverse of [Hydrometer.Brix], with the same range and
// uncertainty.
//
// Check value: 66.9 Brix at 211 F reads 59.00 on a 60 F scale (computed).
func (h Hydrometer) Reading(b units.Brix, at units.Temperature) (units.Brix, error) {
	const fn = "density.Hydrometer.Reading"
	return h.convert(fn, "sugar content", b, at, h.GraduatedAt, true)
}

// convert solves rho(to, toT) = rho(from, fromT) times the growth of the glass
// for to. Growth counts from the graduation to the bath, so that floating says
// whether from is the bath.
func (h Hydrometer) convert(fn, arg string, from units.Brix, fromT, toT units.Temperature, floating bool) (units.Brix, error) {
	gamma, err := h.glass(fn)
	if err != nil {
		return nan[units.Brix](), err
	}
	bath := toT
	if floating {
		bath = fromT
	}
	if c := bath.Celsius(); !(c >= minC && c <= maxC) {
		return nan[units.Brix](), tempError(fn, "cup temperature", c)
	}
	if !(from >= minReading && from <= maxBrix) {
		return nan[units.Brix](), &units.RangeError{Func: fn, Arg: arg, Value: float64(from), Low: float64(minReading), High: float64(maxBrix), Unit: "Brix",
			Hint: "check the reading and its scale: Brix near 66 is Baume near 36"}
	}
	growth := 1 + gamma*(bath.Celsius()-h.GraduatedAt.Celsius())
	if !floating {
		growth = 1 / growth
	}
	a, z := at(fromT.Celsius()), at(toT.Celsius())
	to := toBrix(z.fraction(a.rho(from.Fraction()) * growth))
	if !(to >= minReading && to <= maxBrix) {
		return nan[units.Brix](), &units.RangeError{Func: fn, Arg: "answer", Value: float64(to), Low: float64(minReading), High: float64(maxBrix), Unit: "Brix",
			Hint: "the float would sink below or rise above its scale: check the temperature, or let the cup cool"}
	}
	return to, nil
}
